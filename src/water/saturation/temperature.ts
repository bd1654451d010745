import type { Root } from '../../numerics/roots.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { triplePointPressure } from '../constants.js';
import { magnusBuck1996, magnusBuck1996Ice } from './buck-1996.js';
import { saturationTemperatureIapws1997 } from './iapws-1997.js';
import { magnusFao56, magnusWmo, magnusWmoIce, saturationTemperatureMagnus } from './magnus.js';
import { saturationEquationsOverIce, type IceSaturationCorrelation } from './over-ice.js';
import {
  saturationEquationOverWater, saturationEquationsOverWater, supercooledSaturationEquation, type SaturationCorrelation, type SaturationEquation,
} from './over-water.js';

type Inverse = (pressure: number) => number;

/** Inverses in closed form, over water. */
const inversesOverWater: { readonly [Name in SaturationCorrelation]?: Inverse } = {
  'IAPWS': saturationTemperatureIapws1997,
  'FAO-56': (p) => saturationTemperatureMagnus(p, magnusFao56),
  'WMO': (p) => saturationTemperatureMagnus(p, magnusWmo),
  'Buck 1996': (p) => saturationTemperatureMagnus(p, magnusBuck1996),
};

/** Inverses in closed form, over ice. */
const inversesOverIce: { readonly [Name in IceSaturationCorrelation]?: Inverse } = {
  'WMO': (p) => saturationTemperatureMagnus(p, magnusWmoIce),
  'Buck 1996': (p) => saturationTemperatureMagnus(p, magnusBuck1996Ice),
};

/** ln p is nearly straight in 1/T, so the root is sought there. */
function invert(pressure: number, equation: SaturationEquation, low = equation.range[0]): Root {
  const { value, steps } = bracketedRoot((x) => Math.log(equation.pressure(1 / x) / pressure), 1 / equation.range[1], 1 / low);
  return found(1 / value, steps, pressure, equation);
}

function found(value: number, steps: number, pressure: number, equation: SaturationEquation): Root {
  return { value, residual: Math.abs(equation.pressure(value) - pressure), steps };
}

/**
 * Temperature in K at which the vapour pressure over liquid water is the one given in Pa: the dew point, or the boiling point.
 *
 * Below 0.01 °C this is the dew point over supercooled water; saturationTemperatureOverIce gives the frost point, which lies above it.
 * In closed form where the equation has one (IAPWS from 0.01 °C up, FAO-56, WMO, Buck 1996; `steps` is 0), else by iteration
 * over the equation's range and at least from -100 to 100 °C. `residual` is in Pa. A pressure outside throws ConvergenceError,
 * and 0 Pa has no dew point.
 *
 * @example saturationTemperatureOverWater(101325).value // => 373.124
 */
export function saturationTemperatureOverWater(pressure: number, correlation: SaturationCorrelation = 'IAPWS'): Root {
  if (correlation === 'IAPWS' && pressure < triplePointPressure) return invert(pressure, supercooledSaturationEquation);
  const inverse = inversesOverWater[correlation];
  if (!inverse) return invert(pressure, saturationEquationsOverWater[correlation], 173.15);
  const value = inverse(pressure);
  return found(value, 0, pressure, saturationEquationOverWater(value, correlation));
}

/**
 * Temperature in K at which the vapour pressure over ice is the one given in Pa: the frost point.
 *
 * In closed form where the equation has one (WMO, Buck 1996; `steps` is 0), else by iteration. `residual` is in Pa.
 * There is none above the triple point's 611.657 Pa: the iterated equations throw ConvergenceError.
 *
 * @example saturationTemperatureOverIce(259.8738).value // => 263.15
 */
export function saturationTemperatureOverIce(pressure: number, correlation: IceSaturationCorrelation = 'IAPWS'): Root {
  const ice = saturationEquationsOverIce[correlation];
  const inverse = inversesOverIce[correlation];
  return inverse ? found(inverse(pressure), 0, pressure, ice) : invert(pressure, ice);
}
