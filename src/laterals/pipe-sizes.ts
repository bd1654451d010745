import type { SourceKey } from '../sources.js';

/** A pipe as it is sold: diameters in mm. */
export interface PipeSize {
  readonly series: 'drip tubing' | 'PE SDR 9' | 'PE SDR 11' | 'PE SDR 13.6' | 'PE SDR 17';
  readonly outside: number;
  /** Nominal; of drip tubing the lower end of what is usual. */
  readonly inside: number;
  readonly source: SourceKey;
}

/**
 * Polyethylene pipes, each series from small to large. Drip tubing: common practice, no source; it differs from maker to maker, so measure yours.
 * SDR series: outside diameter less twice the least wall thickness.
 */
export const pipeSizes: readonly PipeSize[] = [
  { series: 'drip tubing', outside: 12, inside: 10.2, source: 'common-practice' },
  { series: 'drip tubing', outside: 16, inside: 13.6, source: 'common-practice' },
  { series: 'drip tubing', outside: 20, inside: 17, source: 'common-practice' },
  { series: 'PE SDR 9', outside: 20, inside: 15.4, source: 'iso-4427-2' },
  { series: 'PE SDR 9', outside: 25, inside: 19, source: 'iso-4427-2' },
  { series: 'PE SDR 9', outside: 32, inside: 24.8, source: 'iso-4427-2' },
  { series: 'PE SDR 9', outside: 40, inside: 31, source: 'iso-4427-2' },
  { series: 'PE SDR 9', outside: 50, inside: 38.8, source: 'iso-4427-2' },
  { series: 'PE SDR 9', outside: 63, inside: 48.8, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 20, inside: 16, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 25, inside: 20.4, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 32, inside: 26, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 40, inside: 32.6, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 50, inside: 40.8, source: 'iso-4427-2' },
  { series: 'PE SDR 11', outside: 63, inside: 51.4, source: 'iso-4427-2' },
  { series: 'PE SDR 13.6', outside: 25, inside: 21, source: 'iso-4427-2' },
  { series: 'PE SDR 13.6', outside: 32, inside: 27.2, source: 'iso-4427-2' },
  { series: 'PE SDR 13.6', outside: 40, inside: 34, source: 'iso-4427-2' },
  { series: 'PE SDR 13.6', outside: 50, inside: 42.6, source: 'iso-4427-2' },
  { series: 'PE SDR 13.6', outside: 63, inside: 53.6, source: 'iso-4427-2' },
  { series: 'PE SDR 17', outside: 32, inside: 28, source: 'iso-4427-2' },
  { series: 'PE SDR 17', outside: 40, inside: 35.2, source: 'iso-4427-2' },
  { series: 'PE SDR 17', outside: 50, inside: 44, source: 'iso-4427-2' },
  { series: 'PE SDR 17', outside: 63, inside: 55.4, source: 'iso-4427-2' },
];

export const pipeSeries = ['drip tubing', 'PE SDR 9', 'PE SDR 11', 'PE SDR 13.6', 'PE SDR 17'] as const satisfies readonly PipeSize['series'][];
