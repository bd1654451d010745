/** Inputs that the temperature of a cover follows from. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { heatTransfer } from '../units/dimensions.js';

/** U-value of the cover. */
export const coverHeatTransfer = () => field.quantity(heatTransfer, { limits: ['0.1 W/(m²·K)', '15 W/(m²·K)'] });

/** Between the air inside and the cover; 7 to 9 W/(m²·K) in still air is from memory. */
export const insideFilmCoefficient = () => field.withDefault(field.quantity(heatTransfer, { limits: ['1 W/(m²·K)', '50 W/(m²·K)'], valid: ['4 W/(m²·K)', '20 W/(m²·K)'] }), '8 W/(m²·K)');

/** What is wrong with the two together. */
export function checkFilm(
  cover: number | undefined, film: number, problem: AddProblem,
): void {
  if (cover !== undefined && cover >= film) {
    problem(['insideFilmCoefficient'], 'more than the U-value of the cover', `${film} W/(m²·K), and the cover has ${cover}`, 'the film of air inside is a part of what the U-value counts: a U-value above 7 W/(m²·K) needs more wind inside than still air');
  }
}
