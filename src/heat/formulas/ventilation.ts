/** Air through a house: what it takes to carry heat away, and what vents let through. */
import { bracketedRoot, type Root } from '../../numerics/roots.js';
import { gravity } from './films.js';
import { airHeatCapacity } from './house.js';

/**
 * Heat of the sun that warms the air of a house, in W: τ I A (1 - E).
 *
 * τ share of the sun that comes in, I on level ground in W/m², A floor in m², E share that the crop turns into vapour: about 0.5 of a full crop that is well
 * watered, 0 of an empty house (ASAE EP406, from memory).
 *
 * @example solarGain(800, 18, 0.7, 0) // => 10080
 */
export const solarGain = (irradiance: number, floorArea: number, transmission: number, evaporativeShare: number): number =>
  transmission * irradiance * floorArea * (1 - evaporativeShare);

/**
 * Air that carries a surplus of heat away at a rise in temperature, in m³/s: q = (G - U A ΔT)/(ρcp ΔT); 0 where the cover alone does it.
 *
 * Exact for the air that comes in where ρcp is that of the air outside; 1.2 kg/m³ is 3 to 5 % off in heat or height. Source: ASAE EP406, from memory.
 *
 * @param conductance of the cover, U A, W/K
 * @example ventilationForRiseEp406(10080, 217.56, 5) // => 1.489761
 */
export const ventilationForRiseEp406 = (gain: number, conductance: number, rise: number, heatCapacity: number = airHeatCapacity): number =>
  Math.max(0, gain - conductance * rise) / (heatCapacity * rise);

/**
 * Flow of air that warmth drives through vents, in m³/s: Q = Cd A √(2 g H |Ti - To|/Ti).
 *
 * A area of the openings that air comes in by, and as much that it leaves by, m²; H height from the middle of the opening to the neutral level, m: half
 * the height between two equal openings. Temperatures in K. For one opening that breathes both ways, take half its area, two ninths of its height, and
 * the coefficient of dischargeCoefficientTwoWayAshrae1997. Source: ASHRAE Handbook Fundamentals (1997), chapter 25 (second-hand); Cd 0.65 of openings
 * with flow one way is from memory.
 *
 * @example stackVentilation(1, 1.5, 308.15, 301.15, 0.65) // => 0.531467
 */
export const stackVentilation = (area: number, height: number, inside: number, outside: number, dischargeCoefficient: number, g: number = gravity): number =>
  dischargeCoefficient * area * Math.sqrt((2 * g * height * Math.abs(inside - outside)) / inside);

/**
 * Discharge coefficient of one opening with air both ways, from the difference of temperature in K: Cd = 0.40 + 0.0045 |Ti - To|.
 *
 * Source: ASHRAE Handbook Fundamentals (1997), chapter 25, equation 38 (second-hand).
 *
 * @example dischargeCoefficientTwoWayAshrae1997(10) // => 0.445
 */
export const dischargeCoefficientTwoWayAshrae1997 = (difference: number): number => 0.4 + 0.0045 * Math.abs(difference);

/**
 * Flow of air that wind drives through vents, in m³/s: Q = Cv A u.
 *
 * Cv 0.5 to 0.6 for wind straight on, 0.25 to 0.35 (from memory) aslant; A area of the openings to windward, m²; u m/s.
 *
 * @example windVentilation(0.5, 2, 0.55) // => 0.55
 */
export const windVentilation = (area: number, windSpeed: number, windCoefficient: number): number => windCoefficient * area * windSpeed;

/**
 * Flow of air where warmth and wind work together, in m³/s: √(Qs² + Qw²).
 *
 * @example ventilationOfBoth(0.3, 0.4) // => 0.5
 */
export const ventilationOfBoth = (stack: number, wind: number): number => Math.hypot(stack, wind);

/**
 * Whether wind rather than warmth governs the air through vents, from the wind in m/s and the difference of temperature in K: u/√ΔT > 1.
 *
 * Source: Kittas et al. (1997), abstract.
 *
 * @example windGovernsKittas1997(3, 4) // => true
 */
export const windGovernsKittas1997 = (windSpeed: number, difference: number): boolean => windSpeed > Math.sqrt(Math.abs(difference));

/**
 * Two openings in one: the area of each of two equal ones that let as much through as these, m²: √2 A1 A2/√(A1² + A2²).
 *
 * @example equalVentArea(1, 1) // => 1
 */
export const equalVentArea = (inlet: number, outlet: number): number => (inlet === 0 || outlet === 0 ? 0 : (Math.SQRT2 * inlet * outlet) / Math.hypot(inlet, outlet));

/**
 * Rise of a house above the air outside, in K, at which what comes in goes out again: G = U A ΔT + ρcp Q(ΔT) ΔT.
 *
 * @param conductance of the cover, U A, W/K; more than nothing, unless air flows at no rise too
 * @param ventilation flow of air in m³/s at a rise; must not fall with it
 * @example balancedRise(10080, 217.56, () => 1.489761).value // => 5.0000
 */
export function balancedRise(gain: number, conductance: number, ventilation: (rise: number) => number, heatCapacity: number = airHeatCapacity): Root {
  if (gain === 0) return { value: 0, residual: 0, steps: 0 };
  const lost = (rise: number): number => (conductance + heatCapacity * ventilation(rise)) * rise;
  const most = gain / (conductance + heatCapacity * ventilation(0));
  return bracketedRoot((rise) => lost(rise) - gain, 0, most * (1 + 1e-12), { tolerance: 1e-12 });
}
