/** Measured conductivities of single salts, 1 to 20 mmol/L, and what the model gives for them. */
import { conductivityOfSolution } from '../../src/conductivity/index.js';
import type { ComponentTotals } from '../../src/solution/index.js';
import type { SourceKey } from '../../src/sources.js';

export interface Point {
  /** Mol/kg. */
  readonly molality: number;
  readonly celsius: number;
  /** mS/cm. */
  readonly measured: number;
}

export interface SaltSeries {
  readonly name: string;
  /** Ions of one formula unit. */
  readonly ions: ComponentTotals;
  readonly points: readonly Point[];
  readonly source: SourceKey;
  readonly where: string;
  /** Largest miss asked for at any point. */
  readonly worst: number;
}

const celsius = [5, 15, 25, 35] as const;
const molalities = [0.001, 0.002, 0.005, 0.01, 0.02] as const;
/** kg/L of water at 25 °C: mol/L from mol/kg in dilute solution. */
const density25 = 0.997047;

/** Smoothed measurements: conductivity = n m [λ0(t) - A(t) √m/(1 + B √m)], λ0 and A quadratic in t. */
type Fit = readonly [a2: number, a1: number, a0: number, b2: number, b1: number, b0: number, B: number];
const fitted = ([a2, a1, a0, b2, b1, b0, B]: Fit, n: number, m: number, t: number): number =>
  n * m * ((a2 * t + a1) * t + a0 - (((b2 * t + b1) * t + b0) * Math.sqrt(m)) / (1 + B * Math.sqrt(m)));
const fromFit = (fit: Fit, n: number): Point[] => celsius.flatMap((t) => molalities.map((m) => ({ molality: m, celsius: t, measured: fitted(fit, n, m, t) })));

const fits = {
  KCl: [0.009385, 2.533, 81.17, 0.0139, 1.886, 44.11, 1.7],
  KNO3: [0.009117, 2.309, 80.33, 0.00909, 1.099, 49.12, 0.7],
  CaCl2: [0.01124, 2.224, 72.36, 0.03918, 3.905, 137.7, 3.8],
  K2SO4: [0.008819, 2.872, 83.72, 0.03799, 9.784, 247.1, 5.3],
} as const satisfies Record<string, Fit>;

/** A handbook's equivalent conductances at 25 °C (S cm2/eq) over eq/L; `charge` equivalents in a mole. */
const fromEquivalents = (charge: number, rows: readonly (readonly [normality: number, conductance: number])[]): Point[] =>
  rows.map(([normality, conductance]) => ({ molality: normality / charge / density25, celsius: 25, measured: conductance * normality }));

const fit = (name: keyof typeof fits, ions: ComponentTotals, n: number): SaltSeries =>
  ({ name, ions, points: fromFit(fits[name], n), source: 'mccleskey-2011', where: 'smoothed measurements, 5 to 35 °C', worst: 0.04 });

export const saltSeries: readonly SaltSeries[] = [
  fit('KNO3', { 'K+': 1, 'NO3-': 1 }, 1),
  {
    name: 'Ca(NO3)2', ions: { 'Ca2+': 1, 'NO3-': 2 }, source: 'mccleskey-2011', worst: 0.04,
    where: 'CaCl2 + 2 KNO3 - 2 KCl, each at the same ionic strength: the measurements of those three added up, none of this salt was found',
    points: celsius.flatMap((t) => molalities.map((m) => ({
      molality: m, celsius: t,
      measured: fitted(fits.CaCl2, 2, m, t) + (2 / 3) * (fitted(fits.KNO3, 1, 3 * m, t) - fitted(fits.KCl, 1, 3 * m, t)),
    }))),
  },
  {
    name: 'MgSO4', ions: { 'Mg2+': 1, 'SO4 2-': 1 }, source: 'tomsic-2002', where: '25 °C', worst: 0.04,
    points: fromEquivalents(2, [[1.029e-3, 109.23], [1.293e-3, 106.58], [1.567e-3, 104.23], [2.176e-3, 100.03], [3.138e-3, 95.009]].map(([m, conductance]) => [2 * density25 * m!, conductance!] as const)),
  },
  fit('K2SO4', { 'K+': 2, 'SO4 2-': 1 }, 2),
  {
    name: 'KH2PO4', ions: { 'K+': 1, 'H2PO4-': 1 }, source: 'crc-handbook', where: '20 °C, 0.5 and 1 % by mass (0.037 and 0.074 mol/kg, above the range asked for); from memory', worst: 0.06,
    points: [{ molality: 5 / 0.995 / 136.084, celsius: 20, measured: 3.0 }, { molality: 10 / 0.99 / 136.084, celsius: 20, measured: 5.9 }],
  },
  {
    name: 'NH4NO3', ions: { 'NH4+': 1, 'NO3-': 1 }, source: 'mccleskey-2011', worst: 0.04,
    where: 'measurements of KNO3: at infinite dilution ammonium conducts as potassium within 0.3 % (CRC Handbook); none of this salt was found',
    points: fromFit(fits.KNO3, 1),
  },
  {
    name: 'NaCl', ions: { 'Na+': 1, 'Cl-': 1 }, source: 'crc-handbook', where: 'equivalent conductances, 25 °C', worst: 0.04,
    points: fromEquivalents(1, [[0.001, 123.7], [0.005, 120.6], [0.01, 118.5], [0.02, 115.5]]),
  },
  {
    name: 'KCl', ions: { 'K+': 1, 'Cl-': 1 }, source: 'standard-methods-2510', where: 'meter standards, 25 °C', worst: 0.04,
    points: fromEquivalents(1, [[0.001, 146.9], [0.005, 143.6], [0.01, 141.2], [0.02, 138.2]]),
  },
];

/** Calculated over measured, less one, at every point of a series. */
export const missesOf = ({ ions, points }: SaltSeries): number[] =>
  points.map(({ molality, celsius: t, measured }) => {
    const totals = Object.fromEntries(Object.entries(ions).map(([ion, count]) => [ion, count * molality]));
    return (10 * conductivityOfSolution(totals, { temperature: t + 273.15 }).value) / measured - 1;
  });
