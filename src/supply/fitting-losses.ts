import type { SourceKey } from '../sources.js';

/** What a fitting or valve costs, as a multiple of the velocity head in its pipe. */
export interface FittingLoss {
  readonly lossCoefficient: number;
  readonly source: SourceKey;
}

/** Loss coefficients of fittings and open valves by name. Makers' own figures go before them: threaded fittings of small bore cost up to twice as much. */
export const fittingLosses = {
  'square entrance': { lossCoefficient: 0.5, source: 'rossman-2020' },
  'projecting entrance': { lossCoefficient: 1, source: 'common-practice' },
  'exit': { lossCoefficient: 1, source: 'rossman-2020' },
  'short elbow': { lossCoefficient: 0.9, source: 'rossman-2020' },
  'medium elbow': { lossCoefficient: 0.8, source: 'rossman-2020' },
  'long elbow': { lossCoefficient: 0.6, source: 'rossman-2020' },
  'threaded elbow': { lossCoefficient: 1.5, source: 'munson' },
  '45° elbow': { lossCoefficient: 0.4, source: 'rossman-2020' },
  'return bend': { lossCoefficient: 2.2, source: 'rossman-2020' },
  'tee straight on': { lossCoefficient: 0.6, source: 'rossman-2020' },
  'tee into branch': { lossCoefficient: 1.8, source: 'rossman-2020' },
  'gate valve': { lossCoefficient: 0.2, source: 'rossman-2020' },
  'globe valve': { lossCoefficient: 10, source: 'rossman-2020' },
  'angle valve': { lossCoefficient: 5, source: 'rossman-2020' },
  'swing check valve': { lossCoefficient: 2.5, source: 'rossman-2020' },
} as const satisfies Readonly<Record<string, FittingLoss>>;

/** Name of a fitting of the table. */
export type Fitting = keyof typeof fittingLosses;
