import * as field from '../calculation/field.js';
import { mass } from '../units/dimensions.js';
import { checkProduct, productFields, type AddProblem, type SeenProduct } from './product.js';

type NamedProduct = SeenProduct & { readonly name: string | undefined };

/** Products at hand, each under a name of its own. */
export const productsAtHand = () =>
  field.list(
    field.group({ name: field.optional(field.text(60)), ...productFields() }, (product, problem) => {
      checkProduct(product, problem);
      if (product.label !== undefined && product.name === undefined) problem(['name'], 'a name for a product known by its label', 'nothing');
    }),
    { limits: [1, 50] },
  );

/** The name of a product at hand; a salt may go by its key. */
export const nameOf = ({ name, salt }: NamedProduct): string => name ?? salt ?? '';

/** Finds two products of one name. */
export function checkNames(products: readonly NamedProduct[], problem: AddProblem): void {
  const names = products.map(nameOf);
  names.forEach((name, i) => {
    if (names.indexOf(name) < i) problem(['salts', i, 'name'], 'a name of its own', `'${name}' for the second time`);
  });
}

/** Scales at hand. */
export const scalesAtHand = () =>
  field.list(
    field.group(
      { division: field.writtenQuantity(mass, { limits: ['0.01 mg', '1 kg'] }), maximumLoad: field.optional(field.quantity(mass, { limits: ['1 mg', '1 t'] })) },
      ({ division, maximumLoad = Infinity }, problem) => {
        if (maximumLoad < division.si) problem(['maximumLoad'], 'at least one division', 'less', 'swap them?');
      },
    ),
    { limits: [1, 10] },
  );
