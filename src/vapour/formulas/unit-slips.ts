/** What readings as a whole say against their unit. */
export interface UnitSlip {
  readonly received: string;
  /** What was most likely meant. */
  readonly hint: string;
}

/** Temperatures of a house that are never below 40 °C, as those in °F mostly are; the lowest in K. */
export function fahrenheitSlip(coldest: number): UnitSlip | undefined {
  if (!(coldest > 313.15 && coldest < Infinity)) return undefined;
  const lowest = Number((coldest - 273.15).toFixed(1));
  return { received: `no reading below ${lowest} °C`, hint: `is the column in °F? ${lowest} °F is ${((lowest - 32) / 1.8).toFixed(1)} °C` };
}

/** Relative humidities that are never above 1.02 %, as fractions of up to 102 % are not; the highest, 0 to 1. */
export function fractionSlip(moistest: number): UnitSlip | undefined {
  if (!(moistest > 0 && moistest <= 0.0102)) return undefined;
  const highest = Number((moistest * 100).toPrecision(4));
  return { received: `no reading above ${highest} %`, hint: `in % or a fraction? ${highest} as a fraction is ${Number((highest * 100).toPrecision(4))} %` };
}
