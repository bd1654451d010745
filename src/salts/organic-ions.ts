import { ions, type DissolvedParticle, type Ion } from '../solution/ions.js';

/** Organic ions that salts bring along and that no equilibrium of the feed needs, a row each, as they stand at pH 5 to 6.5. Structures from memory. */
export const organicIons = {
  'FeHDTPA-': { name: 'iron(III) chelate of DTPA', charge: -1, composition: { Fe: 1, C: 14, H: 19, N: 3, O: 10 } },
  'FeEDDHA-': { name: 'iron(III) chelate of EDDHA', charge: -1, composition: { Fe: 1, C: 18, H: 16, N: 2, O: 6 } },
  'FeHBED-': { name: 'iron(III) chelate of HBED', charge: -1, composition: { Fe: 1, C: 20, H: 20, N: 2, O: 6 } },
  'C6H6O7 2-': { name: 'hydrogen citrate', charge: -2, composition: { C: 6, H: 6, O: 7 } },
} as const satisfies Readonly<Record<string, DissolvedParticle>>;

/** Key of an ion or molecule that a salt may give to the water. */
export type SaltIon = Ion | keyof typeof organicIons;

/** Row of an ion or molecule that a salt may give to the water. */
export function saltIon(ion: SaltIon): DissolvedParticle {
  return Object.hasOwn(ions, ion) ? ions[ion as Ion] : organicIons[ion as keyof typeof organicIons];
}
