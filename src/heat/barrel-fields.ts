/** A barrel as heat sees it: its surface and its wall. */
import * as field from '../calculation/field.js';
import { area, heatTransfer, length, thermalConductivity, velocity } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import type { BarrelWall } from './formulas/barrel-wall.js';
import { wallMaterials, type WallMaterialName } from './wall-materials.js';

export const barrelArea = () => field.quantity(area, { limits: ['10 cm²', '100 m²'] });

/** Heat transfer from the water to the air around it: from a thickly lagged barrel to a thin one in a gale. */
export const barrelHeatTransfer = () => field.quantity(heatTransfer, { limits: ['0.05 W/(m²·K)', '200 W/(m²·K)'] });

export const wallFields = () => ({
  barrelDiameter: field.optional(field.quantity(length, { limits: ['5 cm', '5 m'] })),
  barrelArea: field.optional(barrelArea()),
  wallMaterial: field.withDefault(field.choice(Object.keys(wallMaterials) as WallMaterialName[]), 'HDPE'),
  wallThickness: field.withDefault(field.quantity(length, { limits: ['0.1 mm', '10 cm'] }), '3 mm'),
  insulationThickness: field.withDefault(field.quantity(length, { limits: ['0 mm', '0.5 m'] }), '0 mm'),
  insulationConductivity: field.withDefault(field.quantity(thermalConductivity, { limits: ['0.01 W/(m·K)', '1 W/(m·K)'] }), '0.04 W/(m·K)'),
  insideFilm: field.withDefault(field.quantity(heatTransfer, { limits: ['20 W/(m²·K)', '5000 W/(m²·K)'], valid: ['200 W/(m²·K)', '350 W/(m²·K)'] }), '300 W/(m²·K)'),
  emissivity: field.withDefault(field.share({ limits: [0.02, 1] }), 0.9),
  windSpeed: field.withDefault(field.quantity(velocity, { limits: ['0 m/s', '40 m/s'] }), '0 m/s'),
  barrelHeatTransfer: field.optional(barrelHeatTransfer()),
});

/** Height of an upright barrel over its diameter where neither is known: common practice. */
const usualSlenderness = 1.5;

/** Diameter, height of the water and the surface that gives off heat: side and top, m and m². The bottom stands on something. */
export function barrelShape(waterMass: number, temperature: number, { barrelDiameter, barrelArea }: { readonly barrelDiameter?: number | undefined; readonly barrelArea?: number | undefined }) {
  const volume = waterMass / waterDensityIapws2008(temperature);
  const diameter = barrelDiameter ?? Math.cbrt((4 * volume) / (Math.PI * usualSlenderness));
  const base = (Math.PI / 4) * diameter ** 2;
  const height = volume / base;
  return { diameter, height, area: barrelArea ?? Math.PI * diameter * height + base };
}

interface WallSeen extends Pick<BarrelWall, 'insideFilm' | 'emissivity' | 'windSpeed'> {
  readonly wallMaterial: WallMaterialName;
  readonly wallThickness: number;
  readonly insulationThickness: number;
  readonly insulationConductivity: number;
}

/** The wall of a barrel of a shape. */
export const wallOf = ({ insideFilm, emissivity, windSpeed, ...seen }: WallSeen, { diameter, height }: { readonly diameter: number; readonly height: number }): BarrelWall => ({
  diameter, height, insideFilm, emissivity, windSpeed,
  layers: [
    { thickness: seen.wallThickness, conductivity: wallMaterials[seen.wallMaterial].conductivity },
    { thickness: seen.insulationThickness, conductivity: seen.insulationConductivity },
  ],
});
