/** Vents that warmth and wind drive air through. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { area, length, velocity } from '../units/dimensions.js';
import { dischargeCoefficientTwoWayAshrae1997, stackVentilation, ventilationOfBoth, windVentilation } from './formulas/ventilation.js';

export const ventArea = () => field.quantity(area, { limits: ['0 m²', '10000 m²'] });

/** Where the vents are, what they resist, and the wind on them. */
export const ventPlaceFields = () => ({
  neutralHeight: field.optional(field.quantity(length, { limits: ['0 m', '15 m'] })),
  heightBetweenVents: field.optional(field.quantity(length, { limits: ['0 m', '30 m'] })),
  bothWays: field.withDefault(field.flag(), false),
  dischargeCoefficient: field.optional(field.number({ limits: [0.1, 1] })),
  windSpeed: field.withDefault(field.quantity(velocity, { limits: ['0 m/s', '40 m/s'] }), '0 m/s'),
  windCoefficient: field.withDefault(field.number({ limits: [0, 1] }), 0.3),
});

interface Place {
  readonly neutralHeight?: number | undefined;
  readonly heightBetweenVents?: number | undefined;
  readonly bothWays: boolean;
  readonly dischargeCoefficient?: number | undefined;
  readonly windSpeed: number;
  readonly windCoefficient: number;
}

/** Finds a height that is stated twice. */
export function checkPlace({ neutralHeight, heightBetweenVents, bothWays }: Place, problem: AddProblem): void {
  if (neutralHeight !== undefined && heightBetweenVents !== undefined) problem(['heightBetweenVents'], 'one of neutralHeight and heightBetweenVents', 'both');
  if (bothWays && heightBetweenVents !== undefined) problem(['bothWays'], 'neutralHeight for one opening that breathes both ways', 'heightBetweenVents', 'half its area, with two ninths of its height as neutralHeight');
}

/** Coefficient of openings with air one way, from memory. */
const oneWay = 0.65;

/** Flows through vents of an area, m³/s: by warmth, by wind, and both together. */
export function flowThroughVents(area: number, { neutralHeight, heightBetweenVents = 0, bothWays, dischargeCoefficient, windSpeed, windCoefficient }: Place, inside: number, outside: number) {
  const height = neutralHeight ?? heightBetweenVents / 2;
  const coefficient = dischargeCoefficient ?? (bothWays ? Math.min(1, dischargeCoefficientTwoWayAshrae1997(inside - outside)) : oneWay);
  const stackFlow = stackVentilation(area, height, inside, outside, coefficient);
  const windFlow = windVentilation(area, windSpeed, windCoefficient);
  return { stackFlow, windFlow, ventilationFlow: ventilationOfBoth(stackFlow, windFlow) };
}
