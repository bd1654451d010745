/** Nitrogen and phosphorus that are let out, altogether and by the floor that the plants stand on. */
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { area, mass, massPerArea } from '../units/dimensions.js';

export const floorAreaField = () => field.optional(field.quantity(area, { limits: ['0.1 m²', '1000 ha'] }));

export const nutrientOutputs = () => ({
  nitrogenMass: output.quantity(mass, 'g'),
  phosphorusMass: output.quantity(mass, 'g'),
  nitrogenPerArea: output.optional(output.quantity(massPerArea, 'g/m²')),
  phosphorusPerArea: output.optional(output.quantity(massPerArea, 'g/m²')),
});

/** The same by area, kg/m²; nothing where none is given. */
export const nutrientsByFloor = ({ nitrogenMass, phosphorusMass }: { readonly nitrogenMass: number; readonly phosphorusMass: number }, floorArea: number | undefined) => ({
  nitrogenPerArea: floorArea && nitrogenMass / floorArea,
  phosphorusPerArea: floorArea && phosphorusMass / floorArea,
});
