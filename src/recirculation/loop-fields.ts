import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { chargeBalanceOfIons, type IonAmounts } from '../solution/formulas/concentration.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import { ions, type Ion } from '../solution/ions.js';
import { volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { cropFields, limitsOf, noteCrop, uptakesOf, type SeenCrop } from './crop-fields.js';
import { bleedFromLostDrain } from './formulas/discharge.js';
import type { LoopIon } from './formulas/loop-run.js';

/** What is absent, or less than a molecule, is nothing: doubles that small have no digits left for a balance. */
export const orNothing = (amount = 0): number => (amount < 1e-30 ? 0 : amount);

/** More than this no feed can hold, mol/m3. */
const mostDissolved = 10_000;

/** Conductivity for each charge of the cations, in mS/cm for each meq/L; a tenth is common practice. */
export const conductivityPerChargeField = () => field.withDefault(field.number({ limits: [0.03, 0.2] }), 0.1);

/** The same in S/m for each mol/m3. */
const inSI = (conductivityPerCharge: number): number => conductivityPerCharge * 0.1;

/** S/m as mS/cm in a sentence. */
export const millisiemens = (conductivity: number): string => `${writeNumber(conductivity * 10)} mS/cm`;

/** Conductivity of a solution by the charge of its cations, S/m. */
export const conductivityOf = (amounts: IonAmounts, conductivityPerCharge: number): number => inSI(conductivityPerCharge) * chargeBalanceOfIons(amounts).cations;

/** Acid and air make and take these: a balance of what goes in and out says nothing of them. */
const notFollowed: ReadonlySet<string> = /* @__PURE__ */ new Set(['H+', 'OH-', 'HCO3-', 'CO3 2-'] satisfies Ion[]);

/** What is dissolved in one of the waters. */
export const composition = () => field.group(compositionFields(), checkComposition);

/** A loop: its volume, what comes in and what the plants take. */
export const loopFields = () => ({
  loopVolume: field.quantity(volume, { limits: ['0.1 L', '10000 m³'] }),
  sourceWater: field.optional(composition()),
  freshFeed: composition(),
  startingSolution: field.optional(composition()),
  ...cropFields(),
  drainShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0.3),
  caughtShare: field.withDefault(field.share(), 1),
  conductivityPerCharge: conductivityPerChargeField(),
});

export type SeenComposition = Parameters<typeof amountsSeen>[0];

export interface SeenLoop extends SeenCrop {
  readonly loopVolume: number;
  readonly sourceWater: SeenComposition | undefined;
  readonly freshFeed: SeenComposition;
  readonly startingSolution: SeenComposition | undefined;
  readonly drainShare: number;
  readonly caughtShare: number;
  readonly conductivityPerCharge: number;
}

/** What is followed of a composition; nothing where there is none. */
export const amountsIn = (seen: SeenComposition | undefined): IonAmounts => Object.fromEntries(Object.entries(seen ? amountsSeen(seen) : {}).filter(([ion]) => !notFollowed.has(ion)));

/** A loop as the formulas take it. */
export interface Loop {
  readonly volume: number;
  readonly names: readonly Ion[];
  readonly ions: readonly Omit<LoopIon, 'dumpLimit'>[];
  /** Drain that is lost, for each volume taken up. */
  readonly lost: number;
  /** S/m for each mol of cation charge in a m3. */
  readonly conductivityPerCharge: number;
}

/** What a loop is refilled with: what the feed says, and of what that does not name, what the water brings, mol/m3. */
export const refillOf = ({ sourceWater, freshFeed }: { readonly sourceWater: SeenComposition | undefined; readonly freshFeed: SeenComposition | undefined }): IonAmounts => ({ ...amountsIn(sourceWater), ...amountsIn(freshFeed) });

/** Puts a loop together. */
export function loopOf(seen: SeenLoop): Loop {
  const refill = refillOf(seen);
  const start = seen.startingSolution ? amountsIn(seen.startingSolution) : refill;
  const [uptakes, limits] = [uptakesOf(seen), limitsOf(seen)];
  const names = [...new Set([...Object.keys(refill), ...Object.keys(start)])] as Ion[];
  return {
    volume: seen.loopVolume,
    names,
    ions: names.map((ion) => ({
      refill: orNothing(refill[ion]), initial: orNothing(start[ion]), uptake: orNothing(uptakes[ion]), uptakeFactor: seen.uptakeFactors?.[ion] ?? 0,
      cationCharge: Math.max(0, ions[ion].charge), limit: limits[ion],
    })),
    lost: bleedFromLostDrain(seen.drainShare, seen.caughtShare),
    conductivityPerCharge: inSI(seen.conductivityPerCharge),
  };
}

/** What a loop is told beside its numbers: tables used, charges that do not balance, ions that nothing is known of. */
export function noteLoop(seen: SeenLoop, { names, ions: parts }: Loop, solving: Solving): void {
  const { note } = solving;
  noteCrop(seen, solving);
  const water = seen.sourceWater ? amountsSeen(seen.sourceWater) : {};
  if (names.length > 2) noteImbalance(chargeBalanceOfIons({ ...water, ...amountsSeen(seen.freshFeed) }), 'freshFeed', note);
  const below = names.filter((ion, i) => (water[ion] ?? 0) > parts[i]!.refill * 1.001);
  if (below.length > 0) note('caution', 'feed-below-water', 'freshFeed', `The source water alone holds more ${below.join(', ')} than the feed made with it: a figure or its unit is wrong, or the feed is made with other water.`);
  const untaken = names.filter((_, i) => parts[i]!.uptake === 0 && parts[i]!.uptakeFactor === 0 && parts[i]!.refill > 0);
  if (untaken.length > 0) note('info', 'no-uptake-stated', 'uptakeConcentrations', `No uptake is stated of ${untaken.join(', ')}: all that comes in is taken to stay, which is so of no nutrient.`);
  const unknown = Object.keys({ ...seen.uptakeConcentrations, ...seen.uptakeFactors }).filter((ion) => !names.includes(ion as Ion));
  if (unknown.length > 0) note('info', 'uptake-of-nothing', 'uptakeConcentrations', `Uptake is stated of ${unknown.join(', ')}, which nothing brings: it is left out.`);
  const unheld = Object.keys(seen.ionLimits ?? {}).filter((ion) => !names.includes(ion as Ion));
  if (unheld.length > 0) note('info', 'limit-of-nothing', 'ionLimits', `A limit is stated of ${unheld.join(', ')}, which nothing brings: it is never passed.`);
}

/** Salt that no feed is made with for its own sake. */
const salt: ReadonlySet<string> = /* @__PURE__ */ new Set(['Na+', 'Cl-'] satisfies Ion[]);

/** Says when an ion runs out, and what would keep a nutrient; `refill` in mol/m3. */
export function noteRunsOut(ion: Ion, days: number, refill: number, { note }: Solving): void {
  const remedy = salt.has(ion) ? 'They do without: all that comes in is taken up' : 'Raise it in the feed';
  note(salt.has(ion) ? 'info' : 'caution', 'ion-runs-out', `concentrations.${ion}`, `${ion} runs out after ${writeNumber(days)} days: plants would take up more than the refill of ${writeNumber(refill)} mmol/L brings. ${remedy}.`);
}

/** Refuses a loop that would hold more than dissolves. */
export function refuseCrystals(ion: Ion, highest: number, { refuse }: Solving): void {
  if (highest > mostDissolved) refuse('loopVolume', `a loop in which ${ion} stays below ${mostDissolved / 1000} mol/L`, `${writeNumber(highest / 1000)} mol/L`, 'state what the plants take up of it, let some out, or look at the volume of the loop and the water taken up in a day');
}
