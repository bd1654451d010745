/**
 * Standard atomic weights, g/mol, as decimal strings so that sums and oxide factors can be formed exactly.
 *
 * The conventional value is taken where the standard weight is an interval (H, B, C, N, O, Mg, Si, S, Cl).
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021 (IUPAC Technical Report),
 * Pure and Applied Chemistry 94, 573; conventional values after Meija et al. 2016.
 */
export const atomicWeights = {
  H: '1.008',
  B: '10.81',
  C: '12.011',
  N: '14.007',
  O: '15.999',
  F: '18.99840316',
  Na: '22.98976928',
  Mg: '24.305',
  Al: '26.9815384',
  Si: '28.085',
  P: '30.973762',
  S: '32.06',
  Cl: '35.45',
  K: '39.0983',
  Ca: '40.078',
  Mn: '54.938043',
  Fe: '55.845',
  Co: '58.933194',
  Ni: '58.6934',
  Cu: '63.546',
  Zn: '65.38',
  Mo: '95.95',
  Se: '78.971',
  I: '126.90447',
} as const;

/** Symbol of an element of the table. */
export type Element = keyof typeof atomicWeights;
