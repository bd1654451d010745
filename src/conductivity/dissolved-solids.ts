/**
 * Scales by which a meter shows conductivity as "ppm" of dissolved solids: so many for each mS/cm at 25 °C, a row a scale.
 *
 * None of them is a measurement of solids: the same water reads 1.4 times as much on the 700 scale as on the 500 scale. Common practice.
 */
export const dissolvedSolidsScales = {
  '500': { ppm: 500, likeness: 'sodium chloride' },
  '640': { ppm: 640, likeness: 'mixed salts of irrigation water' },
  '700': { ppm: 700, likeness: 'natural fresh water (sulfate, bicarbonate, chloride 4 : 4 : 2)' },
} as const;

/** Key of a scale of the table. */
export type DissolvedSolidsScale = keyof typeof dissolvedSolidsScales;
