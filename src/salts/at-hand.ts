import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { mass } from '../units/dimensions.js';
import { checkProduct, productFields, type SeenProduct } from './product.js';

type NamedProduct = SeenProduct & { readonly name: string | undefined };

/** Step of a scale. */
const scaleDivision = () => field.writtenQuantity(mass, { limits: ['0.01 mg', '1 kg'] });

/** A product under a name of its own. */
export const namedProductFields = () => ({ name: field.optional(field.text(60)), ...productFields() });

/** Finds what is wrong with a product, and a label without a name. */
export function checkNamedProduct(product: NamedProduct, problem: AddProblem): void {
  checkProduct(product, problem);
  if (product.label !== undefined && product.name === undefined) problem(['name'], 'a name for a product known by its label', 'nothing');
}

/** Products at hand, each under a name of its own, with what there is of it, the scale for it alone and its price. */
export const productsAtHand = () =>
  field.list(
    field.group({
      ...namedProductFields(),
      mostMass: field.optional(field.quantity(mass, { limits: ['0 g', '1 t'] })),
      division: field.optional(scaleDivision()),
      pricePerKilogram: field.optional(field.number({ limits: [0, 100_000] })),
    }, checkNamedProduct),
    { limits: [1, 50] },
  );

/** The name of a product at hand; a salt may go by its key. */
export const nameOf = ({ name, salt }: NamedProduct): string => name ?? salt ?? '';

/** Finds two products of one name. */
export function checkNames(products: readonly NamedProduct[], problem: AddProblem, path = 'salts'): void {
  const names = products.map(nameOf);
  names.forEach((name, i) => {
    if (names.indexOf(name) < i) problem([path, i, 'name'], 'a name of its own', `'${name}' for the second time`);
  });
}

/** Scales at hand. */
export const scalesAtHand = () =>
  field.list(
    field.group(
      { division: scaleDivision(), maximumLoad: field.optional(field.quantity(mass, { limits: ['1 mg', '1 t'] })) },
      ({ division, maximumLoad = Infinity }, problem) => {
        if (maximumLoad < division.si) problem(['maximumLoad'], 'at least one division', 'less', 'swap them?');
      },
    ),
    { limits: [1, 10] },
  );
