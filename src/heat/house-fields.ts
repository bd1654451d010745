/** A house as heat sees it: its cover, its size, the air that leaks. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { area, density, heatTransfer, irradiance, temperature, volume } from '../units/dimensions.js';
import { covers, type CoverName } from './covers.js';

export const coverFields = () => ({
  cover: field.optional(field.choice(Object.keys(covers) as CoverName[])),
  coverHeatTransfer: field.optional(field.quantity(heatTransfer, { limits: ['0.1 W/(m²·K)', '15 W/(m²·K)'] })),
});

interface CoverSeen {
  readonly cover?: CoverName | undefined;
  readonly coverHeatTransfer?: number | undefined;
}

/** Finds a house without a cover. */
export function checkCover({ cover, coverHeatTransfer }: CoverSeen, problem: AddProblem): void {
  if (cover === undefined && coverHeatTransfer === undefined) problem(['cover'], 'a cover by name, or its coverHeatTransfer', 'neither');
}

/** Doubt in a heat transfer that is given as a number, either way: a judgement on wind, frame and age. */
const doubtInGiven = 0.15;

/** Heat transfer of a cover with what is to be expected of it, W/(m² K). A number goes before the name. */
export function coverOf({ cover, coverHeatTransfer }: CoverSeen) {
  if (cover !== undefined && coverHeatTransfer === undefined) return covers[cover];
  const heatTransfer = coverHeatTransfer ?? 0;
  return { heatTransfer, low: heatTransfer * (1 - doubtInGiven), high: heatTransfer * (1 + doubtInGiven) };
}

export const floorArea = () => field.quantity(area, { limits: ['0.5 m²', '100000 m²'] });
export const coverArea = () => field.quantity(area, { limits: ['0.5 m²', '200000 m²'] });
export const houseVolume = () => field.quantity(volume, { limits: ['0.1 m³', '1000000 m³'] });
export const airOutside = () => field.quantity(temperature, { limits: ['-40 °C', '60 °C'] });

/** Specific heat of air is the same everywhere; its density falls with warmth and height. */
export const airDensity = () => field.withDefault(field.quantity(density, { limits: ['0.5 kg/m³', '1.6 kg/m³'] }), '1.2 kg/m³');

/** Sun and crop. */
export const sunFields = () => ({
  globalRadiation: field.quantity(irradiance, { limits: ['0 W/m²', '1400 W/m²'] }),
  coverTransmission: field.withDefault(field.share(), 0.7),
  evaporativeShare: field.withDefault(field.share(), 0.5),
});

/** A house in the sun: that and the crop, its floor and its cover. */
export const sunlitHouseFields = () => ({ ...sunFields(), floorArea: floorArea(), coverArea: coverArea(), ...coverFields() });

/** Finds a cover that is smaller than the floor below it. */
export function checkAreas({ floorArea, coverArea }: { readonly floorArea: number; readonly coverArea: number }, problem: AddProblem): void {
  if (coverArea < floorArea) problem(['coverArea'], 'at least the area of the floor', 'less', 'walls, ends and roof together; houseHeatLoss works it out from a shape');
}
