import type { AddProblem } from '../calculation/problem.js';
import type { AddNote } from '../calculation/note.js';
import * as field from '../calculation/field.js';
import { shot } from './shot.js';
import { substrateOf, substrates, type SubstrateName } from './substrates.js';

/** What calculations ask of the substrate to a plant. */
export const substrateFields = () => ({
  substrateVolume: shot.inputs.substrateVolume,
  substrate: field.optional(field.choice(Object.keys(substrates) as SubstrateName[])),
  waterHoldingShare: field.optional(field.share({ limits: [0.05, 0.98] })),
  easilyAvailableShare: field.optional(field.share({ limits: [0.005, 0.98] })),
});

interface SeenSubstrate {
  readonly substrate: SubstrateName | undefined;
  readonly waterHoldingShare: number | undefined;
  readonly easilyAvailableShare: number | undefined;
}

/** What a substrate holds, of its volume: figures given go before those of the table. */
export function heldBy({ substrate, waterHoldingShare, easilyAvailableShare }: SeenSubstrate): { readonly water: number; readonly easy: number | undefined } {
  const table = substrate && substrateOf(substrate);
  const water = waterHoldingShare ?? table!.water;
  return { water, easy: easilyAvailableShare ?? (table?.easy === undefined ? undefined : Math.min(table.easy, water)) };
}

/** A substrate that holds something known, and no more easily than at all. */
export function checkSubstrate(seen: SeenSubstrate, problem: AddProblem): void {
  const { substrate, waterHoldingShare, easilyAvailableShare } = seen;
  if (substrate === undefined && waterHoldingShare === undefined) {
    problem(['waterHoldingShare'], 'the water that the drained substrate holds, or a substrate of the table', 'neither', 'substrateByWeight finds it from two weighings');
  } else if (easilyAvailableShare !== undefined && easilyAvailableShare > heldBy(seen).water) {
    problem(['easilyAvailableShare'], 'no more than the drained substrate holds', 'more');
  }
}

/** Says where figures come from the table. */
export function noteSubstrate({ substrate, waterHoldingShare, easilyAvailableShare }: SeenSubstrate, note: AddNote): void {
  if (substrate === undefined) return;
  const { easy, basis } = substrateOf(substrate);
  if (waterHoldingShare !== undefined && (easilyAvailableShare ?? easy) === easilyAvailableShare) return;
  note('info', 'table-figures', 'substrate', `Figures of ${substrate} are ${basis}: weigh a bag dry and drained (substrateByWeight) for your own.`);
}
