import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { diameter, refuseRacing, waterTemperature } from '../laterals/pipe.js';
import { flow, length, pressure, time, velocity } from '../units/dimensions.js';
import { kilopascals } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { standardAtmosphere } from '../water/constants.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { saturationPressureOverWater } from '../water/saturation/over-water.js';
import { pipePressureRating, pressureWaveSpeed, surgePressure, surgePressureJoukowsky, waveReturnTime } from './formulas/surge.js';
import { pipeMaterials, type PipeMaterial, type PipeMaterialName } from './pipe-materials.js';
import { dust, roundedUp } from '../numerics/round-outward.js';

const materials = /* @__PURE__ */ Object.keys(pipeMaterials) as PipeMaterialName[];

/** From here on, K, plastic pipes bear clearly less than their rating. Common practice, no source. */
const warmPipe = 298.15;

/**
 * Rise of pressure when a valve closes on running water, against what the pipe bears.
 *
 * Takes the flow (0 to 10 000 m³/h), the pipe by its inside diameter (1 mm to 1 m), wall (0.1 to 100 mm), length up to where the pressure is held
 * (0.1 m to 10 km) and material (PE 100 by default) or modulus of elasticity (10 to 300 000 MPa), the time in which the valve closes (0 s to 1 h), the
 * pressure with nothing flowing (0 to 2 MPa, gauge), the rating of the pipe, where it is known (of PE 100 and PE 80 it follows from the wall),
 * the bulk modulus of the water (2180 MPa by default; undissolved air lowers it) and the water temperature (20 °C by default). Gives the speed of the
 * pressure wave, the time it takes there and back, the rise at once and with this closing time, the highest and the lowest pressure, and where there is
 * a rating the closing time that keeps to it, absent where any does or none.
 * @throws InputError for input outside these limits, for a wall as thick as the bore is wide, and for water faster than 30 m/s.
 * @example
 * const shut = surge({ flow: '18 L/min', diameter: '20.4 mm', wallThickness: '2.3 mm', length: '12 m', closingTime: '0.02 s', staticPressure: '3 bar' });
 * shut.waveSpeed.in('m/s') // => 327.7
 * shut.highestPressure.in('bar') // => 6.002
 */
export const surge = /* @__PURE__ */ calculation({
  id: 'surge',
  title: 'Pressure surge when a valve closes',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
    diameter: diameter(),
    wallThickness: field.quantity(length, { limits: ['0.1 mm', '100 mm'] }),
    length: field.quantity(length, { limits: ['0.1 m', '10 km'] }),
    pipeMaterial: field.withDefault(field.choice(materials), 'PE 100'),
    elasticModulus: field.optional(field.quantity(pressure, { limits: ['10 MPa', '300000 MPa'] })),
    closingTime: field.quantity(time, { limits: ['0 s', '1 h'] }),
    staticPressure: field.quantity(pressure, { limits: ['0 kPa', '2 MPa'] }),
    pressureRating: field.optional(field.quantity(pressure, { limits: ['10 kPa', '10 MPa'] })),
    bulkModulus: field.withDefault(field.quantity(pressure, { limits: ['10 MPa', '5000 MPa'] }), '2180 MPa'),
    waterTemperature: waterTemperature(),
  }),
  outputs: () => ({
    velocity: output.quantity(velocity, 'm/s'),
    waveSpeed: output.quantity(velocity, 'm/s'),
    waveReturnTime: output.quantity(time, 's'),
    surgeAtOnce: output.quantity(pressure, 'kPa'),
    surgePressure: output.quantity(pressure, 'kPa'),
    highestPressure: output.quantity(pressure, 'kPa'),
    lowestPressure: output.quantity(pressure, 'kPa'),
    pressureRating: output.optional(output.quantity(pressure, 'kPa')),
    closingTimeForRating: output.optional(output.quantity(time, 's')),
  }),
  equation: 'a = √(K/ρ)/√(1 + K D/(E e)); Δp = ρ a V, and (2 L/a)/t of it where t > 2 L/a',
  sources: ['subramanya', 'pe-pressure-pipe', 'iapws-sr6-08'],
  example: { flow: '18 L/min', diameter: '20.4 mm', wallThickness: '2.3 mm', length: '12 m', closingTime: '0.02 s', staticPressure: '3 bar' },
  check: ({ wallThickness, diameter }, problem) => {
    if (wallThickness > diameter / 2) problem(['wallThickness'], 'at most half the inside diameter', `${writeNumber(wallThickness * 1000)} mm`, 'are the units right?');
  },
  solve: (seen, solving) => {
    const { flow, diameter, wallThickness, length, closingTime, staticPressure, bulkModulus, waterTemperature } = seen;
    const material: PipeMaterial = pipeMaterials[seen.pipeMaterial];
    const velocity = pipeVelocity(flow, diameter);
    refuseRacing(velocity, solving.refuse);
    const density = waterDensityIapws2008(waterTemperature);
    const waveSpeed = pressureWaveSpeed(bulkModulus, density, diameter, wallThickness, seen.elasticModulus ?? material.elasticModulus);
    const atOnce = surgePressureJoukowsky(density, waveSpeed, velocity);
    const rise = surgePressure(density, waveSpeed, length, velocity, closingTime);
    const emptiest = saturationPressureOverWater(waterTemperature) - standardAtmosphere;
    const pressureRating = seen.pressureRating ?? (material.designStress && pipePressureRating(diameter / wallThickness + 2, material.designStress));
    const returnTime = waveReturnTime(length, waveSpeed);
    const spare = pressureRating === undefined ? undefined : pressureRating - staticPressure;
    const closingTimeForRating = spare !== undefined && spare > 0 && atOnce > spare ? (atOnce * returnTime) / spare : undefined;
    if (pressureRating === undefined) solving.note('info', 'no-rating', 'pressureRating', `What the pipe bears is not known, so the ${kilopascals(staticPressure + rise)} that it has to bear are not judged: give the rating printed on it.`);
    else noteRating(staticPressure, rise, pressureRating, closingTimeForRating, solving);
    const bearable = staticPressure - emptiest;
    if (rise > bearable * (1 + dust)) solving.note('caution', 'column-parts', 'lowestPressure', `The wave comes back as so low a pressure that the water column parts; where it closes again the blow can be harder than the first, and dirt may be drawn in through drippers: close the valve in no less than ${roundedUp((atOnce * returnTime) / bearable)} s.`);
    if (material.designStress && waterTemperature > warmPipe) solving.note('caution', 'warm-pipe', 'waterTemperature', 'Polyethylene is rated at 20 °C: a pipe this warm bears less, some 13 % less at 30 °C and 26 % at 40 °C (from memory).');
    return {
      velocity, waveSpeed, waveReturnTime: returnTime, surgeAtOnce: atOnce, surgePressure: rise,
      highestPressure: staticPressure + rise, lowestPressure: Math.max(staticPressure - rise, emptiest),
      pressureRating, closingTimeForRating,
    };
  },
});

/** Says so where the pressure passes the rating of the pipe, and what would keep to it. */
function noteRating(staticPressure: number, rise: number, rating: number, closingTime: number | undefined, { note }: Solving): void {
  const highest = staticPressure + rise;
  if (staticPressure >= rating) note('danger', 'above-rating', 'staticPressure', `The pressure with nothing flowing, ${kilopascals(staticPressure)}, is not below the rating of the pipe, ${kilopascals(rating)}: lower it, or take a stronger pipe.`);
  else if (highest > rating * (1 + dust)) note('danger', 'surge-above-rating', 'highestPressure', `The pressure rises to ${kilopascals(highest)}, above the rating of the pipe, ${kilopascals(rating)}: close the valve in no less than ${roundedUp(closingTime!)} s, or take a wider or stronger pipe.`);
}
