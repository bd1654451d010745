/** Quantities and columns made by the name of their dimension. Reaches the whole table of units. */
import type { DimensionDefinition } from './dimension.js';
import {
  absoluteHumidity, absolutePressure, airExchange, alkalinity, amountConcentration, angle, area, chargeConcentration, conductivity, dailyLight,
  deficitResponse, density, dilution, dissolvedSolidsReading, dynamicViscosity, energy, energyPerVolume, evaporationRate, flow, flowCoefficient,
  frequency, hardness, head, heatTransfer, humidityRatio, irradiance, kinematicViscosity, length, mass, massConcentration, massPerArea, molarMass,
  photonFlux, photonYield, power, pressure, pressurePerTemperature, radiationSum, share, slope, specificEnthalpy, specificHeat, specificVolume,
  temperature, temperatureDifference, temperatureTime, thermalConductance, thermalConductivity, time, transferResistance, velocity, volume,
  waterPerArea, waterPerRadiation,
} from './dimensions.js';
import { columnIn, type Column } from './column.js';
import { unitOf, type Dimension, type Quantity, type QuantityInput, type UnitOf } from './quantity.js';
import { quoted } from './quoted.js';
import { isRead, readQuantity } from './read.js';

/** Every dimension. An object of its own, not the module's, so that bundlers can drop it where nobody asks by name. */
const table = {
  absoluteHumidity, absolutePressure, airExchange, alkalinity, amountConcentration, angle, area, chargeConcentration, conductivity, dailyLight,
  deficitResponse, density, dilution, dissolvedSolidsReading, dynamicViscosity, energy, energyPerVolume, evaporationRate, flow, flowCoefficient,
  frequency, hardness, head, heatTransfer, humidityRatio, irradiance, kinematicViscosity, length, mass, massConcentration, massPerArea, molarMass,
  photonFlux, photonYield, power, pressure, pressurePerTemperature, radiationSum, share, slope, specificEnthalpy, specificHeat, specificVolume,
  temperature, temperatureDifference, temperatureTime, thermalConductance, thermalConductivity, time, transferResistance, velocity, volume,
  waterPerArea, waterPerRadiation,
} satisfies { readonly [D in Dimension]: DimensionDefinition<D> };

/** The definition of a dimension. @throws RangeError for a name that is none. */
export function dimensionNamed<D extends Dimension>(name: D): DimensionDefinition<D> {
  if (!Object.hasOwn(table, name)) throw new RangeError(`'${String(name)}' is not a dimension; there are ${Object.keys(table).join(', ')}`);
  return table[name] as unknown as DimensionDefinition<D>;
}

/**
 * A quantity from a text or from another quantity.
 * @throws RangeError where the text is not a number, one space and a unit of the dimension; the message says what to write.
 * @example
 * quantity('60 psi', 'pressure').in('kPa') // => 413.6854375901
 */
export function quantity<D extends Dimension>(value: QuantityInput<D>, dimension: D): Quantity<D> {
  const reading = readQuantity(dimensionNamed(dimension), value);
  if (isRead(reading)) return reading;
  const hint = reading.hint === undefined ? '' : ` (${reading.hint})`;
  throw new RangeError(`${quoted(value)} for ${dimension}: expected ${reading.expected}${hint}`);
}

/**
 * A column of numbers in a unit; `null` or NaN stands for a missing reading.
 * @throws RangeError for a unit of another dimension.
 * @example
 * column([20, 22.5, null], '°C', 'temperature').in('°F')[1] // => 72.5
 */
export function column<D extends Dimension>(values: ArrayLike<number | null>, unit: UnitOf<D>, dimension: D): Column<D> {
  const definition = dimensionNamed(dimension);
  return columnIn(definition, values, unitOf(definition, unit));
}

/** The symbols of a dimension's units; the first is the one shown by default. */
export const unitsOf = (dimension: Dimension): readonly string[] => Object.keys(dimensionNamed(dimension).units);

/** The names of all dimensions. */
export const dimensionNames = (): readonly Dimension[] => Object.keys(table) as Dimension[];
