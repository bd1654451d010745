import { standardGravity } from '../../laterals/formulas/head-loss.js';
import { standardAtmosphere } from '../../water/constants.js';
import { practicalSuctionLifts } from '../practical-suction-lifts.js';

/**
 * Head of a pressure in a column of water: h = p/(ρ g), m.
 *
 * @param pressure p, Pa
 * @param density ρ, kg/m³
 * @param gravity g, m/s²
 */
export function headOfPressure(pressure: number, density: number, gravity = standardGravity): number {
  return pressure / (density * gravity);
}

/**
 * Net positive suction head that an installation has at the inlet of its pump: NPSH = (ps − pv)/(ρ g) − z − hf.
 *
 * What is left, above boiling, of the pressure on the water once it has climbed to the pump. The pump needs as much as its data sheet says at that
 * flow, and something over; with less the water boils in the impeller (cavitation), which wears it and costs flow.
 * With what the pump needs in place of z, the result is the greatest z.
 * Source: the definition, as in Bachus & Custodio (2003).
 *
 * @param surfacePressure ps on the water, absolute, Pa: the atmosphere where it lies open
 * @param vapourPressure pv of the water, Pa
 * @param lift z from the water's surface up to the pump, m; negative where the water stands higher
 * @param headLoss hf in the suction pipe and its fittings, m
 * @param density ρ, kg/m³
 * @param gravity g, m/s²
 * @returns m
 * @example netPositiveSuctionHead(101325, 2339.3, 3, 0.5, 998.2) // => 6.612
 */
export function netPositiveSuctionHead(
  surfacePressure: number, vapourPressure: number, lift: number, headLoss: number, density: number, gravity = standardGravity,
): number {
  return headOfPressure(surfacePressure - vapourPressure, density, gravity) - lift - headLoss;
}

/**
 * Altitude of the standard atmosphere, m, that has a pressure: z = (1 − (P/101325)^(1/5.2559))/2.25577e-5.
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 3, solved for the altitude.
 *
 * @param atmosphericPressure P, Pa
 * @example pressureAltitude(89876.3) // => 1000
 */
export function pressureAltitude(atmosphericPressure: number): number {
  return (1 - (atmosphericPressure / standardAtmosphere) ** (1 / 5.2559)) / 2.25577e-5;
}

/**
 * Suction lift of cold water that well-kept pumps manage in practice, m, at an altitude in m: a table, straight between its rows and past its ends.
 *
 * Two thirds of what the atmosphere could push up, for the air that water gives off under suction and for joints that leak a little.
 * Range of the table: 0 to 3219 m. Source: Engineering ToolBox, suction lift of pumps and altitude.
 *
 * @example practicalSuctionLift(1609) // => 5.2
 */
export function practicalSuctionLift(altitude: number): number {
  const rows = practicalSuctionLifts;
  const above = Math.max(1, rows.findIndex((row) => row.altitude >= altitude));
  const [low, high] = altitude > rows.at(-1)!.altitude ? [rows.at(-2)!, rows.at(-1)!] : [rows[above - 1]!, rows[above]!];
  return low.lift + ((altitude - low.altitude) / (high.altitude - low.altitude)) * (high.lift - low.lift);
}
