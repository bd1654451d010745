/** What must and must not compile. Checked by `npm run types`: an expectation that no longer errs is an error. */
import { column, quantity, type Column, type Dimension, type Quantity, type QuantityInput, type ShareInput } from '../../src/units/index.js';

const pressure: Quantity<'pressure'> = quantity('60 psi', 'pressure');
const kilopascals: number = pressure.in('kPa');
const shown: Quantity<'pressure'> = pressure.as('m H2O');
const plainKeyboard: QuantityInput<'temperature'> = '21 degC';
const shares: readonly ShareInput[] = [0.65, '65 %'];
const dilution: QuantityInput<'dilution'> = '1:100';
const temperatures: Column<'temperature'> = column([20, null], '°C', 'temperature');

// @ts-expect-error a flow is not a pressure
const flowForPressure: QuantityInput<'pressure'> = '60 L/h';
// @ts-expect-error a slip of the keyboard
const slip: QuantityInput<'pressure'> = '60 pis';
// @ts-expect-error the space is missing
const noSpace: QuantityInput<'pressure'> = '60psi';
// @ts-expect-error a decimal comma
const comma: QuantityInput<'pressure'> = '1,5 bar';
// @ts-expect-error a bare number has no unit
const bare: QuantityInput<'pressure'> = 60;
// @ts-expect-error whose gallon?
const gallon: QuantityInput<'volume'> = '5 gal';
// @ts-expect-error gauge and absolute pressure differ
const gaugeForAbsolute: Quantity<'absolutePressure'> = pressure;
// @ts-expect-error a temperature is not a difference of temperatures
const notADifference: Quantity<'temperatureDifference'> = quantity('20 °C', 'temperature');
// @ts-expect-error mg/L and mmol/L differ
const notAnAmount: QuantityInput<'amountConcentration'> = '20 mg/L';
// @ts-expect-error not a unit of pressure
pressure.in('°C');
// @ts-expect-error not a dimension
const nonsense: Dimension = 'loudness';
// @ts-expect-error what the compiler cannot see goes through `.try`
const unseen: QuantityInput<'pressure'> = String('60 psi');

export { bare, comma, dilution, flowForPressure, gallon, gaugeForAbsolute, kilopascals, noSpace, nonsense, notADifference, notAnAmount, plainKeyboard, shares, shown, slip, temperatures, unseen };
