import type { SourceKey } from '../sources.js';

/** Lux for each µmol m-2 s-1 of a light. */
export interface LuxPerPhotonFlux {
  readonly luxPerFlux: number;
  readonly source: SourceKey;
  readonly mark: 'second-hand' | 'from memory';
}

/** What a lux meter shows for photons that plants use, by kind of light. For anything that matters borrow a quantum sensor. */
export const luxPerPhotonFlux = {
  'daylight': { luxPerFlux: 54, source: 'thimijan-heins-1983', mark: 'second-hand' },
  'high-pressure sodium': { luxPerFlux: 82, source: 'thimijan-heins-1983', mark: 'from memory' },
  'metal halide': { luxPerFlux: 71, source: 'thimijan-heins-1983', mark: 'from memory' },
  'cool white fluorescent': { luxPerFlux: 74, source: 'thimijan-heins-1983', mark: 'from memory' },
  'incandescent': { luxPerFlux: 50, source: 'thimijan-heins-1983', mark: 'second-hand' },
} as const satisfies Readonly<Record<string, LuxPerPhotonFlux>>;

/** Lux for each µmol m-2 s-1 of a kind of light of the table. */
export const luxPerPhotonFluxOf = (light: keyof typeof luxPerPhotonFlux): number => luxPerPhotonFlux[light].luxPerFlux;
