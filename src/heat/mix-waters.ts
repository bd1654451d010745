import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { bracketedRoot } from '../numerics/roots.js';
import { blendTemperature } from '../solution/formulas/blending.js';
import { temperature, temperatureDifference, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { zeroCelsius } from '../water/constants.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { hotWater, scalding } from './cautions.js';
import { waterEnthalpyIapws2008 } from './formulas/water-heat.js';

/** A difference between the two reckonings that is worth telling, K. */
const worthTelling = 0.1;

/**
 * What temperature waters have when they are poured together, or how much of the last of them makes a wanted temperature.
 *
 * Takes two to ten waters, each with its temperature (0 to 100 °C) and volume (1 mL to 1000 m³); with a wanted temperature, the volume of one is left out,
 * and it is worked out: how much hot water to pour into the barrel. Gives the temperature by volume, as if all waters weighed the same by
 * volume and took the same heat per kelvin; beside it that by their heat content, where hot water is lighter and the volumes are measured at their own
 * temperatures; the volumes, and all of them together.
 * The vessel, and what is lost on the way, are not counted.
 * @throws InputError for input outside these limits, unless one volume is left out for a wanted temperature and none without, and for a wanted temperature
 * that the waters cannot make.
 * @example
 * mixWaters({ waters: [{ volume: '180 L', waterTemperature: '8 °C' }, { volume: '20 L', waterTemperature: '90 °C' }] }).mixedTemperature.in('°C') // => 16.2
 * mixWaters({ waters: [{ volume: '180 L', waterTemperature: '8 °C' }, { waterTemperature: '60 °C' }], wantedTemperature: '15 °C' }).addedVolume?.in('L') // => 28
 */
export const mixWaters = /* @__PURE__ */ calculation({
  id: 'mixWaters',
  title: 'Waters of several temperatures poured together',
  inputs: () => ({
    waters: field.list(
      field.group({
        volume: field.optional(field.quantity(volume, { limits: ['1 mL', '1000 m³'] })),
        waterTemperature: field.quantity(temperature, { limits: ['0 °C', '100 °C'] }),
      }),
      { limits: [2, 10] },
    ),
    wantedTemperature: field.optional(field.quantity(temperature, { limits: ['0 °C', '100 °C'] })),
  }),
  outputs: () => ({
    mixedTemperature: output.quantity(temperature, '°C'),
    temperatureByHeatContent: output.quantity(temperature, '°C'),
    addedVolume: output.optional(output.quantity(volume, 'L')),
    mixedVolume: output.quantity(volume, 'L'),
    convergence: output.group({ temperatureResidual: output.quantity(temperatureDifference, 'K'), steps: output.number() }),
  }),
  equation: 'T = Σ V T/Σ V; by heat content Σ ρ V h(T_i) = h(T) Σ ρ V; V = Σ V_i (T − T_i)/(T_j − T)',
  sources: ['definition', 'iapws-sr6-08'],
  example: { waters: [{ volume: '180 L', waterTemperature: '8 °C' }, { volume: '25 L', waterTemperature: '60 °C' }] },
  check: ({ waters, wantedTemperature }, problem) => {
    const open = waters.flatMap((water, i) => (water.volume === undefined ? [i] : []));
    if (wantedTemperature === undefined) for (const i of open) problem(['waters', i, 'volume'], 'a volume, or a wantedTemperature to work it out from', 'none');
    else if (open.length !== 1) problem(['waters'], 'one water without a volume, to be worked out for the wanted temperature', `${open.length} of them`);
  },
  solve: ({ waters, wantedTemperature }, { note, refuse }) => {
    const known = waters.flatMap(({ volume, waterTemperature }) => (volume === undefined ? [] : [{ volume, temperature: waterTemperature }]));
    const open = waters.find(({ volume }) => volume === undefined);
    const addVolume = (wanted: number, added: number): number => {
      const lacking = known.reduce((sum, { volume, temperature }) => sum + volume * (wanted - temperature), 0);
      const most = 1e4 * known.reduce((sum, { volume }) => sum + volume, 0);
      if (lacking === 0) return 0;
      const needed = lacking / (added - wanted);
      if (!(needed >= 0 && needed <= most)) {
        refuse('wantedTemperature', `one between ${writeNumber(blendTemperature(known) - zeroCelsius)} °C, that of the others, and ${writeNumber(added - zeroCelsius)} °C, that of what is added`,
          `${writeNumber(wanted - zeroCelsius)} °C`, needed < 0 ? (lacking > 0 ? 'take hotter water' : 'take colder water') : 'take water further from the wanted temperature');
      }
      return needed;
    };
    const addedVolume = open && wantedTemperature !== undefined ? addVolume(wantedTemperature, open.waterTemperature) : undefined;
    const all = addedVolume === undefined ? known : [...known, { volume: addedVolume, temperature: open!.waterTemperature }];
    const mixedTemperature = blendTemperature(all);
    const masses = all.map(({ volume, temperature }) => ({ mass: volume * waterDensityIapws2008(temperature), heat: waterEnthalpyIapws2008(temperature) }));
    const heat = masses.reduce((sum, { mass, heat }) => sum + mass * heat, 0) / masses.reduce((sum, { mass }) => sum + mass, 0);
    const temperatures = all.map(({ temperature }) => temperature);
    const [coldest, hottest] = [Math.min(...temperatures), Math.max(...temperatures)];
    const { value, residual, steps } = coldest === hottest ? { value: coldest, residual: 0, steps: 0 } : bracketedRoot((t) => (waterEnthalpyIapws2008(t) - heat) / 4186, coldest - 1e-6, hottest + 1e-6);
    if (Math.max(...waters.map(({ waterTemperature }) => waterTemperature)) > scalding) note('caution', hotWater.code, 'waters', hotWater.text);
    if (Math.abs(value - mixedTemperature) > worthTelling) {
      note('info', 'hot-water-is-lighter', 'temperatureByHeatContent', `Measured while hot, the hot water weighs less: the mix has ${writeNumber(value - zeroCelsius)} °C rather than ${writeNumber(mixedTemperature - zeroCelsius)} °C.`);
    }
    return {
      mixedTemperature, temperatureByHeatContent: Math.min(hottest, Math.max(coldest, value)), addedVolume,
      mixedVolume: all.reduce((sum, { volume }) => sum + volume, 0),
      convergence: { temperatureResidual: residual, steps },
    };
  },
});
