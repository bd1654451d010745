/**
 * Lux for each µmol m-2 s-1, by kind of light: what a lux meter shows of it. Daylight and incandescent second-hand, the others from memory
 * (Thimijan and Heins 1983): for anything that matters borrow a quantum sensor.
 */
export const luxPerPhotonFlux = {
  'daylight': 54,
  'high-pressure sodium': 82,
  'metal halide': 71,
  'cool white fluorescent': 74,
  'incandescent': 50,
} as const;

/** Lux for each µmol m-2 s-1 of a kind of light of the table. */
export const luxPerPhotonFluxOf = (light: keyof typeof luxPerPhotonFlux): number => luxPerPhotonFlux[light];
