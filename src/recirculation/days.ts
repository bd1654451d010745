import * as field from '../calculation/field.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import type { Column } from '../units/column.js';
import { share, volume } from '../units/dimensions.js';
import type { LoopTask } from './formulas/loop-run.js';
import { orNothing } from './loop-fields.js';

export const secondsInDay = 86_400;

/** The longest run, ten years. */
export const mostDays = 3650;

/** What all plants of a loop take up in a day. */
export const dailyWaterUseField = () => field.quantity(volume, { limits: ['0.01 mL', '10000 m³'] });

/** The days of a run: what the plants take up, the same every day or day by day, and how much they eat of it. */
export const dayFields = () => ({
  dailyWaterUse: field.optional(dailyWaterUseField()),
  dailyWaterUses: field.optional(field.column(volume, { limits: ['0 L', '10000 m³'] })),
  uptakeRatios: field.optional(field.column(share, { limits: ['0 %', '300 %'] })),
  days: field.optional(field.count({ limits: [1, mostDays] })),
});

export interface SeenDays {
  readonly dailyWaterUse: number | undefined;
  readonly dailyWaterUses: Column<'volume'> | undefined;
  readonly uptakeRatios: Column<'share'> | undefined;
  readonly days: number | undefined;
}

/** Finds a use of water that is given twice or not at all, and columns that are not of the days. */
export const checkDays: field.GroupCheck<SeenDays> = (seen, problem) => {
  expectExactlyOne({ dailyWaterUse: seen.dailyWaterUse, dailyWaterUses: seen.dailyWaterUses }, ['dailyWaterUse', 'dailyWaterUses'], problem);
  const days = daysOf(seen);
  for (const name of ['dailyWaterUses', 'uptakeRatios'] as const) {
    const column = seen[name];
    if (!column) continue;
    if (column.length === 0 || column.length > mostDays) problem([name], `1 to ${mostDays} days`, `${column.length} values`);
    else if (column.length !== days) problem([name], `${days} values, one for each day`, `${column.length} values`, 'give `days`, or as many values in each column');
    const gap = column.si.findIndex(Number.isNaN);
    if (gap >= 0) problem([name], 'a value for every day', `none for day ${gap + 1}`, 'put in the mean of the days around it');
  }
};

const daysOf = ({ days, dailyWaterUses, uptakeRatios }: SeenDays): number => days ?? dailyWaterUses?.length ?? uptakeRatios?.length ?? 365;

/** The days as the formulas take them. */
export const daysTask = (seen: SeenDays): Pick<LoopTask, 'waterUses' | 'uptakeRatios'> => ({
  waterUses: seen.dailyWaterUses?.si.map((one) => orNothing(one)) ?? new Float64Array(daysOf(seen)).fill(seen.dailyWaterUse!),
  uptakeRatios: seen.uptakeRatios?.si,
});
