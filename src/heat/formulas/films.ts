/** Heat between a surface and what is around it: convection, radiation, and walls between. */

/** Gravity, m/s²: that of middle latitudes, to the digits that convection deserves. */
export const gravity = 9.81;

/** Stefan-Boltzmann constant, W/(m² K⁴), exact to the digits given (SI of 2019). */
const stefanBoltzmann = 5.670374419e-8;

/**
 * Rayleigh number of a gas beside a surface that is warmer or colder by a difference in K: Ra = g ΔT L³/(Tm ν α).
 *
 * L height of the surface, m; Tm mean temperature of surface and gas, K; ν kinematic viscosity and α thermal diffusivity, m²/s. By definition.
 *
 * @example rayleighNumberOfGas(12, 0.8, 287, 1.46e-5, 2.06e-5) // => 6.9826e8
 */
export const rayleighNumberOfGas = (difference: number, height: number, meanTemperature: number, kinematicViscosity: number, thermalDiffusivity: number): number =>
  (gravity * difference * height ** 3) / (meanTemperature * kinematicViscosity * thermalDiffusivity);

const churchillChu = (base: number, prandtlFactor: number, rayleigh: number, prandtl: number): number =>
  (base + (0.387 * rayleigh ** (1 / 6)) / (1 + (prandtlFactor / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;

/**
 * Nusselt number of free convection at an upright plate, by Rayleigh and Prandtl number.
 *
 *   Nu = {0.825 + 0.387 Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}²
 *
 * For an upright barrel too, where its diameter is at least 35/Gr^(1/4) of its height. Range: every Rayleigh number up to 1e12.
 * Source: Churchill and Chu (1975), Correlating equations for laminar and turbulent free convection from a vertical plate; as the program ht carries it.
 *
 * @example nusseltUprightPlateChurchillChu1975(0.69 * 2.63e9, 0.69) // => 147.1619
 */
export const nusseltUprightPlateChurchillChu1975 = (rayleigh: number, prandtl: number): number => churchillChu(0.825, 0.492, rayleigh, prandtl);

/**
 * Nusselt number of free convection at a lying cylinder, by Rayleigh (with its diameter) and Prandtl number: a pipe, a barrel on its side.
 *
 *   Nu = {0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}²
 *
 * Range: Rayleigh numbers up to 1e12. Source: Churchill and Chu (1975), for a horizontal cylinder; as the program ht carries it.
 *
 * @example nusseltLyingCylinderChurchillChu1975(0.69 * 2.63e9, 0.69) // => 139.1349
 */
export const nusseltLyingCylinderChurchillChu1975 = (rayleigh: number, prandtl: number): number => churchillChu(0.6, 0.559, rayleigh, prandtl);

/**
 * Nusselt number of free convection at a level plate, by the Rayleigh number.
 *
 *   buoyancy helping (warm side up or cold side down): Nu = 0.54 Ra^(1/4) up to Ra 1e7, 0.15 Ra^(1/3) above;  opposing: Nu = 0.27 Ra^(1/4)
 *
 * Range: 1e4 to 1e11 helping, 1e5 to 1e10 opposing. Source: McAdams (1954), Heat Transmission; as the program ht carries it.
 *
 * @example nusseltLevelPlateMcAdams1954(5.54 * 3.21e8, true) // => 181.7312
 */
export const nusseltLevelPlateMcAdams1954 = (rayleigh: number, helping: boolean): number =>
  helping ? (rayleigh <= 1e7 ? 0.54 * rayleigh ** 0.25 : 0.15 * Math.cbrt(rayleigh)) : 0.27 * rayleigh ** 0.25;

/**
 * Nusselt number of a cylinder in wind across it, by Reynolds and Prandtl number.
 *
 *   Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4) [1 + (Re/282000)^(5/8)]^(4/5)
 *
 * Range: Re Pr above 0.2; within about 20 %. Source: Churchill and Bernstein (1977), Journal of Heat Transfer 99, 300-306, from memory.
 *
 * @example nusseltCrossFlowChurchillBernstein1977(10000, 0.7) // => 53.33
 */
export const nusseltCrossFlowChurchillBernstein1977 = (reynolds: number, prandtl: number): number =>
  0.3 + ((0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25) * (1 + (reynolds / 282_000) ** 0.625) ** 0.8;

/**
 * Film of air at an upright wall by the short rules, in W/(m² K): laminar c (ΔT/L)^(1/4), turbulent c ΔT^(1/3), whichever is the larger.
 *
 * ΔT in K, L height in m. For the back of an envelope; a few tens of percent. Coefficients from memory: pass others as the last arguments.
 *
 * @example airFilmByShortRules(12, 0.8) // => 2.999
 */
export const airFilmByShortRules = (difference: number, height: number, laminar = 1.42, turbulent = 1.31): number =>
  Math.max(laminar * (difference / height) ** 0.25, turbulent * Math.cbrt(difference));

/**
 * Film of radiation between a surface and all around it, in W/(m² K), linear about their mean temperature in K: h = 4 ε σ Tm³.
 *
 * ε emissivity: about 0.9 of paint, plastic, glass and wet things. Follows from the law of Stefan and Boltzmann; 0.1 % low at 18 K of difference.
 *
 * @example radiationFilm(287, 0.9) // => 4.8257
 */
export const radiationFilm = (meanTemperature: number, emissivity: number): number => 4 * emissivity * stefanBoltzmann * meanTemperature ** 3;

/**
 * Film of radiation between a surface and all around it, in W/(m² K), from both temperatures in K: h = ε σ (Ts² + Ta²)(Ts + Ta). Exact for grey
 * surfaces in large surroundings.
 *
 * @example radiationFilmBetween(287, 287, 0.9) // => 4.8257
 */
export const radiationFilmBetween = (surface: number, surroundings: number, emissivity: number): number =>
  emissivity * stefanBoltzmann * (surface ** 2 + surroundings ** 2) * (surface + surroundings);

/**
 * Heat transfer through films and layers one behind the other, in W/(m² K): 1/U = Σ 1/h + Σ s/k.
 *
 * @param films W/(m² K) each
 * @param layers thickness in m over conductivity in W/(m K), each
 * @example heatTransferInSeries([300, 8.2898], [{ thickness: 0.003, conductivity: 0.5 }]) // => 7.6945
 */
export const heatTransferInSeries = (films: readonly number[], layers: readonly { readonly thickness: number; readonly conductivity: number }[]): number =>
  1 / (films.reduce((sum, film) => sum + 1 / film, 0) + layers.reduce((sum, { thickness, conductivity }) => sum + thickness / conductivity, 0));

/**
 * Biot number of a stirred body behind its wall: the heat transfer from its wall outwards over the film inside. Where it is below about 0.1, one temperature
 * describes the body.
 *
 * @param transfer from body to air, W/(m² K), film inside included; less than that film
 * @example biotNumberBehindWall(7.6944, 300) // => 0.02632
 */
export const biotNumberBehindWall = (transfer: number, insideFilm: number): number => 1 / (insideFilm / transfer - 1);
