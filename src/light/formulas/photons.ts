/**
 * Photons of light that plants use, in mol m-2 s-1, from radiation in W/m2 and the photons that each joule of it brings, in mol/J.
 *
 * @example photonFluxFromRadiation(500, 2.3e-6) // => 1150e-6
 */
export function photonFluxFromRadiation(irradiance: number, photonYield: number): number {
  return irradiance * photonYield;
}

/**
 * Photons in a joule of one colour, in mol/J, from the wavelength in m.
 *
 *   1/E = λ/(NA h c): λ/119.6266 µmol/J, λ in nm
 *
 * From the exact constants of the SI (2019).
 *
 * @example photonYieldAtWavelength(550e-9) // => 4.598e-6
 */
export function photonYieldAtWavelength(wavelength: number): number {
  return wavelength / (6.02214076e23 * 6.62607015e-34 * 299792458);
}

/**
 * Daily light in mol/m2 from a constant flux, in mol m-2 s-1, over a time in s.
 *
 * @example dailyLightFromFluxAndTime(200e-6, 16 * 3600) // => 11.52
 */
export function dailyLightFromFluxAndTime(photonFlux: number, time: number): number {
  return photonFlux * time;
}

/**
 * Time in s for lamps to bring what the sun leaves wanting: (wanted - sun)/lamps; 0 where the sun brings enough.
 *
 * @param wanted daily light aimed at, mol/m2
 * @param natural daily light from the sun where the plants are, mol/m2
 * @param lampFlux what the lamps give there, mol m-2 s-1
 * @example lampTimeForDailyLight(17, 9, 120e-6) // => 66667: 18.519 h
 */
export function lampTimeForDailyLight(wanted: number, natural: number, lampFlux: number): number {
  return Math.max(0, wanted - natural) / lampFlux;
}

/**
 * Photons of light that plants use, in mol m-2 s-1, from a reading of a lux meter. Only as good as the lamp's spectrum is known: no lux meter tells it.
 *
 * @param luxPerFlux lux for each µmol m-2 s-1 of this light, as in luxPerPhotonFlux
 * @example photonFluxFromIlluminance(54000, 54) // => 1000e-6
 */
export function photonFluxFromIlluminance(illuminance: number, luxPerFlux: number): number {
  return illuminance / luxPerFlux * 1e-6;
}
