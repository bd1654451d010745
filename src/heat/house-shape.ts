/** The size of a house: given, or worked out from its shape. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { length } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { archedHouse, flatHouse, gableHouse, type HouseSize } from './formulas/house.js';
import { checkAreas, coverArea, floorArea, houseVolume } from './house-fields.js';

const shapes = ['gable', 'arch', 'flat'] as const;

const side = () => field.optional(field.quantity(length, { limits: ['0.3 m', '300 m'] }));

export const shapeFields = () => ({
  houseShape: field.optional(field.choice(shapes)),
  houseWidth: side(),
  houseLength: side(),
  eavesHeight: field.optional(field.quantity(length, { limits: ['0 m', '20 m'] })),
  ridgeHeight: field.optional(field.quantity(length, { limits: ['0.3 m', '30 m'] })),
  floorArea: field.optional(floorArea()),
  coverArea: field.optional(coverArea()),
  houseVolume: field.optional(houseVolume()),
});

const sides = ['houseWidth', 'houseLength', 'eavesHeight', 'ridgeHeight'] as const;
const sizes = ['floorArea', 'coverArea', 'houseVolume'] as const;

type ShapeSeen = { readonly houseShape?: (typeof shapes)[number] | undefined } & { readonly [K in (typeof sides)[number] | (typeof sizes)[number]]?: number | undefined };

/** Finds a shape without its measures, measures without a shape, and a roof that cannot stand. */
export function checkShape(seen: ShapeSeen, problem: AddProblem): void {
  const { houseShape, houseWidth = 0, eavesHeight = 0, ridgeHeight = 0 } = seen;
  if (houseShape === undefined) {
    const missing = sizes.filter((name) => seen[name] === undefined);
    for (const name of missing) problem([name], 'a value, or a houseShape with its measures', 'nothing');
    for (const name of sides) if (seen[name] !== undefined) problem([name], 'a houseShape with it', 'none', "such as 'arch' for a tunnel");
    if (missing.length === 0) checkAreas(sizeOf(seen), problem);
    return;
  }
  const wanted = sides.filter((name) => houseShape !== 'flat' || name !== 'ridgeHeight');
  const missing = wanted.filter((name) => seen[name] === undefined);
  for (const name of missing) problem([name], `a length, for a house of the shape '${houseShape}'`, 'nothing', name === 'eavesHeight' ? "'0 m' where the roof starts on the ground" : undefined);
  if (missing.length > 0) return;
  if (houseShape === 'flat' && eavesHeight < 0.3) problem(['eavesHeight'], 'at least 0.3 m below a flat roof', 'less');
  else if (houseShape === 'flat' && seen.ridgeHeight !== undefined) problem(['ridgeHeight'], 'none over a flat roof', 'one');
  else if (houseShape !== 'flat' && ridgeHeight < eavesHeight) problem(['ridgeHeight'], 'at least the height of the eaves', 'less', 'are the two swapped?');
  else if (houseShape === 'arch' && ridgeHeight - eavesHeight > houseWidth / 2) {
    problem(['ridgeHeight'], `at most ${writeNumber(houseWidth / 2)} m above the eaves, a half circle`, `${writeNumber(ridgeHeight - eavesHeight)} m`, `hoops that start upright have eaves: ${writeNumber(ridgeHeight - houseWidth / 2)} m here`);
  } else checkAreas(sizeOf(seen), problem);
}

/** The size that follows from a shape, m² and m³. */
function sizeOfShape({ houseShape, houseWidth = 0, houseLength = 0, eavesHeight = 0, ridgeHeight = 0 }: ShapeSeen): HouseSize {
  if (houseShape === 'gable') return gableHouse(houseWidth, houseLength, eavesHeight, ridgeHeight);
  if (houseShape === 'arch') return archedHouse(houseWidth, houseLength, eavesHeight, ridgeHeight);
  return flatHouse(houseWidth, houseLength, eavesHeight);
}

/** The size of a house, m² and m³: what is given goes before what follows from the shape. */
export function sizeOf({ floorArea, coverArea, houseVolume, ...shape }: ShapeSeen): HouseSize {
  const worked = sizeOfShape(shape);
  return { floorArea: floorArea ?? worked.floorArea, coverArea: coverArea ?? worked.coverArea, volume: houseVolume ?? worked.volume };
}
