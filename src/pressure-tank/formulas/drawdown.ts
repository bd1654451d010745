/**
 * Share of a tank's volume that is water at a pressure: w = 1 - (P1/P)^(1/n), none where P is not above P1.
 *
 * The air fills the whole tank at its pre-charge P1 and is squeezed by Boyle's law, on absolute pressures. n = 1 while heat has time to
 * pass (filling over minutes); up to 1.4 when the tank empties so fast that the air cools.
 *
 * @param pressure gauge, Pa
 * @param preCharge gauge, Pa, with the tank empty of water; 0 for a plain tank whose air starts at the atmosphere
 * @param atmosphere absolute pressure at the site, Pa
 * @param exponent n, 1 to 1.4
 */
export function waterShareOfTank(pressure: number, preCharge: number, atmosphere: number, exponent = 1): number {
  return Math.max(0, 1 - ((preCharge + atmosphere) / (pressure + atmosphere)) ** (1 / exponent));
}

/**
 * Water that a tank takes for a rise of pressure, as a share of its volume: dw/dP = (P1/P)^(1/n)/(n P), absolute; 1/Pa.
 *
 * @param pressure gauge, Pa, not below the pre-charge
 */
export function tankCompliance(pressure: number, preCharge: number, atmosphere: number, exponent = 1): number {
  const absolute = pressure + atmosphere;
  return ((preCharge + atmosphere) / absolute) ** (1 / exponent) / (exponent * absolute);
}

/**
 * Acceptance factor: water delivered between cut-out and cut-in over the tank's volume.
 *
 * Vd/V = (P1/P2)^(1/n) - (P1/P3)^(1/n), absolute; with the pre-charge P1 above the cut-in P2 the tank is empty before the pump starts
 * and the first term is 1.
 *
 * Take the pressures as gauge and the atmosphere of the site: 300 m of height is worth 3.5 kPa. Any one unit serves for all four.
 * The usual pre-charge is 2 psi (14 kPa) below the cut-in; some printed tables take it equal to the cut-in and read up to 5 % higher.
 * Source: Boyle's law as in Pelikan (2006).
 *
 * @param preCharge P1, gauge, Pa
 * @param cutIn P2, gauge, Pa
 * @param cutOut P3, gauge, Pa
 * @param atmosphere absolute, Pa
 * @param exponent n, 1 to 1.4
 * @example acceptanceFactor(28, 30, 50, 14.7) // => 0.29529
 */
export function acceptanceFactor(preCharge: number, cutIn: number, cutOut: number, atmosphere: number, exponent = 1): number {
  return waterShareOfTank(cutOut, preCharge, atmosphere, exponent) - waterShareOfTank(cutIn, preCharge, atmosphere, exponent);
}

/**
 * Acceptance factor of a plain tank: air over water without a bladder, the air starting at the atmosphere.
 *
 * Vd/V = Pa/P2 - Pa/P3. Such tanks lose air into the water, so this is what they give when freshly aired.
 *
 * @example plainTankAcceptanceFactor(50, 70, 14.7) // => 0.05365
 */
export function plainTankAcceptanceFactor(cutIn: number, cutOut: number, atmosphere: number, exponent = 1): number {
  return acceptanceFactor(0, cutIn, cutOut, atmosphere, exponent);
}

/**
 * Acceptance factor when the tank filled slowly and empties fast: the air reaches cut-out at the temperature of the room and then expands
 * with exponent n: Vd/V = (P1/P3) [ (P3/P2)^(1/n) - 1 ], and no more than the tank holds.
 *
 * @param exponent n, 1.4 where no heat passes at all
 * @example fastDrainAcceptanceFactor(28, 30, 50, 14.7) // => 0.19951
 */
export function fastDrainAcceptanceFactor(preCharge: number, cutIn: number, cutOut: number, atmosphere: number, exponent = 1.4): number {
  const held = waterShareOfTank(cutOut, preCharge, atmosphere);
  return Math.min(held, (1 - held) * (((cutOut + atmosphere) / (cutIn + atmosphere)) ** (1 / exponent) - 1));
}

/**
 * Pre-charge of a tank without water that the air in it stands for: P1 = a^n P, where the air takes the share a of the tank at the pressure P.
 *
 * Below zero where the tank holds less air than it would open to the atmosphere.
 *
 * @param airShare a, 0 to 1
 * @param pressure gauge, Pa
 * @returns gauge, Pa
 */
export function preChargeFromAirShare(airShare: number, pressure: number, atmosphere: number, exponent = 1): number {
  return airShare ** exponent * (pressure + atmosphere) - atmosphere;
}

/** The two pre-charges that one drawdown can come from, gauge, Pa; undefined where that one is impossible. */
export interface PossiblePreCharge {
  /** The tank still holds water at cut-in: the ordinary case, and what a tank that lost air shows. */
  readonly belowCutIn: number | undefined;
  /** The tank runs empty before the pump starts. */
  readonly aboveCutIn: number | undefined;
}

/**
 * Pre-charge that explains a drawdown seen: the formula of the acceptance factor solved for P1.
 *
 * P1 = (a/(P2^(-1/n) - P3^(-1/n)))^n where the tank holds water at cut-in, P1 = (1 - a)^n P3 where it is empty there; a = Vd/V.
 * A drawdown above the largest possible one (pre-charge equal to cut-in) leaves both undefined: one of the readings is wrong.
 *
 * @param acceptance a, water delivered over tank volume
 * @param exponent n, 1 to 1.4
 */
export function preChargeFromAcceptance(acceptance: number, cutIn: number, cutOut: number, atmosphere: number, exponent = 1): PossiblePreCharge {
  const low = cutIn + atmosphere;
  const high = cutOut + atmosphere;
  const below = (acceptance / (low ** (-1 / exponent) - high ** (-1 / exponent))) ** exponent - atmosphere;
  const above = Math.max(0, 1 - acceptance) ** exponent * high - atmosphere;
  return {
    belowCutIn: below <= cutIn ? below : undefined,
    aboveCutIn: above >= cutIn ? above : undefined,
  };
}

/**
 * Pre-charge of a closed tank without water at another place and temperature: the air keeps its volume, so P/T stays.
 *
 *   p2 = (p1 + Pa1) T2/T1 - Pa2
 *
 * @param preCharge p1, gauge, Pa, as it was set
 * @param atmosphereWhenSet Pa1, absolute, Pa
 * @param temperatureWhenSet T1, K
 * @param atmosphere Pa2, absolute, Pa
 * @param temperature T2, K
 * @returns gauge, Pa
 * @example preChargeElsewhere(38, 14.7, 293.15, 12.2, 293.15) // => 40.5
 */
export function preChargeElsewhere(preCharge: number, atmosphereWhenSet: number, temperatureWhenSet: number, atmosphere: number, temperature: number): number {
  return ((preCharge + atmosphereWhenSet) * temperature) / temperatureWhenSet - atmosphere;
}
