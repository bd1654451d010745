/** What can hurt someone: the standard cautions. A calculation that touches one lists it, and every result of it carries it. */
import type { Note } from './note.js';

export const acid: Note = {
  code: 'acid', severity: 'caution',
  text: 'Concentrated acid burns: add acid to water and never water to acid, wear eye protection and gloves, work in moving air, and follow the safety data sheet and local rules for keeping it.',
};

export const lye: Note = {
  code: 'lye', severity: 'caution',
  text: 'Lye (potassium hydroxide, potassium silicate) burns eyes and skin and heats as it dissolves: wear eye protection and gloves, add it to water slowly, never mix it with acid, and follow the safety data sheet.',
};

export const mainsElectricity: Note = {
  code: 'mains-electricity', severity: 'caution',
  text: 'Mains electricity near water kills: pump, switch and wiring belong behind a residual-current device and in the hands of a licensed electrician, under the local code.',
};

export const pressureVessel: Note = {
  code: 'pressure-vessel', severity: 'caution',
  text: 'A pressure tank stores energy: release the pressure before working on it, keep its relief valve and its rating, and follow the local code for pressure vessels.',
};

export const backflow: Note = {
  code: 'backflow', severity: 'caution',
  text: 'Feed must never reach drinking water: use an air gap or the backflow preventer that the local code asks for.',
};

export const discharge: Note = {
  code: 'discharge', severity: 'caution',
  text: 'Feed and drain carry nitrate and phosphate: spread them only where plants can use them, never into a ditch, well or sewer without permission; ask the local authority for its rules.',
};

export const pumpSuction: Note = {
  code: 'pump-suction', severity: 'caution',
  text: 'A pump that starts by itself catches fingers and hair, and its suction holds what lies on it: guard the inlet with a strainer, and switch off and lock the supply before reaching in.',
};
