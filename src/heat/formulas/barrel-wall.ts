/** The wall of a barrel between its water and the air. */
import { airProperties } from './air-heat.js';
import { heatTransferInSeries, nusseltCrossFlowChurchillBernstein1977, nusseltUprightPlateChurchillChu1975, radiationFilmBetween, rayleighNumberOfGas } from './films.js';

/** An upright barrel as heat sees it. */
export interface BarrelWall {
  /** Of the water, m. */
  readonly height: number;
  /** m */
  readonly diameter: number;
  readonly layers: readonly { readonly thickness: number; readonly conductivity: number }[];
  /** Film of the water, W/(m² K). */
  readonly insideFilm: number;
  readonly emissivity: number;
  /** m/s */
  readonly windSpeed: number;
}

/** Heat transfer of a barrel, and the two films outside that it has by now, W/(m² K). */
export interface WallTransfer {
  readonly transfer: number;
  readonly convection: number;
  readonly radiation: number;
}

/**
 * Heat transfer from the water of a barrel to the air, by both temperatures in K: film of the water, wall, and outside free convection, wind and radiation
 * side by side, at the temperature that the outside of the wall comes to.
 *
 * Free convection as at an upright plate (Churchill and Chu 1975), wind as across a cylinder (Churchill and Bernstein 1977), together the cube root of the
 * sum of their cubes. Good to about a fifth.
 */
export function barrelTransfer({ height, diameter, layers, insideFilm, emissivity, windSpeed }: BarrelWall, water: number, air: number): WallTransfer {
  const within = 1 / heatTransferInSeries([insideFilm], layers);
  const { kinematicViscosity, thermalDiffusivity, thermalConductivity } = airProperties((water + air) / 2);
  const prandtl = kinematicViscosity / thermalDiffusivity;
  const wind = windSpeed === 0 ? 0 : (nusseltCrossFlowChurchillBernstein1977((windSpeed * diameter) / kinematicViscosity, prandtl) * thermalConductivity) / diameter;
  const filmsAt = (surface: number): WallTransfer => {
    const rayleigh = rayleighNumberOfGas(Math.abs(surface - air), height, (surface + air) / 2, kinematicViscosity, thermalDiffusivity);
    const free = (nusseltUprightPlateChurchillChu1975(rayleigh, prandtl) * thermalConductivity) / height;
    const convection = Math.cbrt(free ** 3 + wind ** 3);
    const radiation = radiationFilmBetween(surface, air, emissivity);
    return { transfer: 1 / (within + 1 / (convection + radiation)), convection, radiation };
  };
  // Each round leaves less than half of what was off, behind the thickest lagging; far less behind a bare wall.
  let films = filmsAt(water);
  for (let round = 0; round < 40; round++) {
    const before = films.transfer;
    films = filmsAt(air + (water - air) * (1 - before * within));
    if (Math.abs(films.transfer - before) < 1e-8 * before) break;
  }
  return films;
}
