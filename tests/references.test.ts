import { describe, expect, test } from 'vitest';
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
