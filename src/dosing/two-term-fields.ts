/** What the model of transpiration by radiation and deficit asks for, of a moment and of a day. */
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import { coverTransmissionField } from '../light/site-fields.js';
import { deficitResponse } from '../units/dimensions.js';

const uncalibrated = { radiationCoefficient: 0.6, deficitCoefficient: 14e-3 };

/** Leaves of a crop on its area. */
export const leafAreaIndexField = () => field.number({ limits: [0, 10] });

export const deficitCoefficientField = () => field.quantity(deficitResponse, { limits: ['0 W/(m²·kPa)', '60 W/(m²·kPa)'] });

/** The crop, and the cover above it. */
export const twoTermFields = () => ({
  coverTransmission: coverTransmissionField(),
  leafAreaIndex: leafAreaIndexField(),
  radiationCoefficient: field.withDefault(field.number({ limits: [0, 1] }), uncalibrated.radiationCoefficient),
  deficitCoefficient: field.withDefault(deficitCoefficientField(), '14 W/(m²·kPa)'),
  extinctionCoefficient: field.withDefault(field.number({ limits: [0.1, 1.5] }), 0.64),
});

/** Latent heat beyond the radiation that may well come from warm air, and the most that can, W/m2. */
const fromAir = { usual: 150, most: 1000 };

/** Says so where a crop is to give off so much more heat than the radiation above it brings, in W/m2, and refuses what no air could give. */
export function noteExcess(excess: number, note: AddNote, refuse: Solving['refuse']): void {
  const more = `${Math.round(excess)} W/m² more than the radiation brings`;
  if (excess > fromAir.most) refuse('deficitCoefficient', 'a crop that takes its heat from radiation, and at most 1000 W/m² from the air', more, 'look at deficit, leaf area index and coefficient');
  if (excess > fromAir.usual) note('caution', 'more-than-radiation', 'deficitCoefficient', `The crop would take ${more}: the air would have to give it and would cool. Look at deficit and coefficients.`);
}

/** A note for each coefficient that nobody has measured for the crop. */
export function noteUncalibrated({ radiationCoefficient, deficitCoefficient }: typeof uncalibrated, note: AddNote): void {
  const say = (field: string, value: string, found: string): void => note('caution', 'uncalibrated', field, `${field}, ${value}, belongs to no crop in particular (over nine ornamentals ${found}): weigh a few plants for a day and set it.`);
  if (radiationCoefficient === uncalibrated.radiationCoefficient) say('radiationCoefficient', '0.6', '0.12 to 0.67');
  if (deficitCoefficient === uncalibrated.deficitCoefficient) say('deficitCoefficient', '14 W/(m²·kPa)', '14 to 37');
}
