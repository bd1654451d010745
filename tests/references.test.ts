import { describe, expect, test } from 'vitest';
import { catalogue } from '../src/catalogue.js';
import { nameOf, readDisagreements, readNamed, type Reference, referenceNames, runCheck } from './support/ledger.js';

const ledger: Reference[] = [];
for (const name of referenceNames()) {
  try {
    ledger.push(readNamed(name));
  } catch (error) {
    test(`${name} can be read`, () => {
      throw error;
    });
  }
}
const disagreements = readDisagreements(ledger);

for (const reference of ledger) {
  describe(reference.name, () => {
    for (const check of reference.checks) {
      test(check.id, async () => {
        const misses = (await runCheck(check)).filter(({ agrees }) => !agrees);
        if (disagreements.has(nameOf(reference, check))) {
          expect(misses, 'agrees now: take it out of tests/disagreements.json').not.toEqual([]);
        } else {
          expect(misses).toEqual([]);
        }
      });
    }
  });
}

/** Made of other calculations, and tested as a whole in tests/greenhouse/. */
const composed = ['assessGreenhouse'];

test('every calculation has a check value', () => {
  const checked = new Set(ledger.flatMap(({ checks }) => checks.map(({ of }) => of.split('/')[1])));
  expect(catalogue().map(({ id }) => id).filter((id) => !checked.has(id) && !composed.includes(id))).toEqual([]);
});
