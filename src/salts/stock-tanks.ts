import { calculation, type Solving } from '../calculation/calculation.js';
import { backflow } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { saturationIndices } from '../solution/formulas/saturation.js';
import { speciate } from '../solution/formulas/speciation.js';
import { speciationTask } from '../solution/formulas/stated-solution.js';
import { noteSaturation, noteStrongSolution } from '../solution/saturation-notes.js';
import type { SolidKey } from '../solution/solids.js';
import { dilution, mass, share, temperature, volume } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { nameOf } from './at-hand.js';
import { decimalQuantity } from './decimal-quantity.js';
import { noteProducts, refuseImpossible } from './feed-notes.js';
import { allocateToTanks, type Placement } from './formulas/allocation.js';
import { dissolvePortions } from './formulas/dissolve.js';
import { amountsInStock, stockSolution } from './formulas/stock-solution.js';
import { dissolvingRank } from './formulas/stock-traits.js';
import { productOf } from './product.js';
import { amountsInWater, checkWater, noteWater, waterFields, waterOf } from './source-water.js';
import { noteDissolving, noteSolubilities, noteTank } from './stock-notes.js';
import { checkStockPortions, coolsWater, inPart, isRoughlyKnown, stockPortions, stockProduct, tankNames, type SeenPortion, type StockProduct } from './stock-product.js';

/**
 * How to share a recipe out over the stock tanks of an injector: what goes together, whether it dissolves, what settles out, in what order to dissolve it.
 *
 * In: the recipe as `portions` for a `volume` of feed, each a `mass` of a `salt` or of a product known by its `label`, with the `solubility` (g/L of water)
 * that its data sheet gives where no table has it; the `dilution` of the injector (`1:100` is one part of each stock in 100 parts of feed);
 * the `stockVolume` of a tank, and how many tanks there are (`tanksAvailable`, 1 to 4); the `tankTemperature` at its coldest (0 to 40 °C); the `water`; the `pH` that
 * the feed is kept at (4 to 9) and its `waterTemperature`. Where every portion says `intoTank`, that allocation is checked instead of one being proposed.
 * Out: `tanks`, each with its portions in the order of dissolving, the share of its solubility that each takes up and their sum, `pH` and `saturationIndices`;
 * and the `saturationIndices` of the diluted feed.
 *
 * The proposal never puts calcium with sulfate or phosphate; alkali (silicate, carbonate, hydroxide) with acid, calcium, magnesium, ammonium, phosphate or trace
 * elements; acid with chelates; or calcium with molybdate. It takes the fewest tanks, more than are at hand if it must (with a note of danger), evens out what
 * dissolves, and splits what one tank would not hold. Whatever the allocation, calcium with sulfate or phosphate in one tank is a note of danger.
 * What separates products and in what order they dissolve is common practice. Saturation indices of a tank are rough: it is far above 0.5 mol/kg.
 * An InputError where a name stands twice, only some portions say `intoTank`, or more is in a tank than a litre can hold, 2 kg.
 *
 * The injector needs a backflow preventer between it and drinking water.
 * Source: CRC Handbook of Chemistry and Physics, 98th edition, for solubilities; saturation as in `saturation`.
 * @example
 * const stocks = stockTanks({
 *   volume: '1000 L', dilution: '1:100', stockVolume: '10 L', tankTemperature: '8 °C',
 *   portions: [{ salt: 'calcium-nitrate-tetrahydrate', mass: '600 g' }, { salt: 'potassium-nitrate', mass: '300 g' }, { salt: 'magnesium-sulfate-heptahydrate', mass: '250 g' }],
 * });
 * stocks.tanks.map(({ portions }) => portions.map(({ name }) => name)) // => [['calcium-nitrate-tetrahydrate'], ['magnesium-sulfate-heptahydrate', 'potassium-nitrate']]
 * stocks.tanks[1].portions[1].solubilityShare.in('%') // => 17.3
 */
export const stockTanks = /* @__PURE__ */ calculation({
  id: 'stockTanks',
  title: 'A recipe shared out over stock tanks',
  inputs: () => ({
    volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    portions: stockPortions(),
    dilution: field.quantity(dilution, { limits: ['1:2000', '1:1'] }),
    stockVolume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    tanksAvailable: field.withDefault(field.count({ limits: [1, 4] }), 2),
    tankTemperature: field.quantity(temperature, { limits: ['0 °C', '40 °C'] }),
    ...waterFields(),
    pH: field.withDefault(field.number({ limits: [4, 9] }), 6),
    waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '40 °C'] }), '25 °C'),
  }),
  outputs: () => ({
    tanks: output.list(output.group({
      name: output.text(),
      portions: output.list(output.group({ name: output.text(), mass: decimalQuantity(mass, 'g'), solubilityShare: output.optional(output.quantity(share, '%')) })),
      solubilityShare: output.quantity(share, '%'),
      pH: output.optional(output.number()),
      saturationIndices: output.record<SolidKey, number, number>(output.number()),
    })),
    saturationIndices: output.record<SolidKey, number, number>(output.number()),
  }),
  equation: 'strength = mass / (volume × dilution); share = strength / saturated strength; SI = log10(Π activities / K)',
  sources: ['common-practice', 'crc-handbook', 'ball-nordstrom-1991', 'plummer-busenberg-1982', 'allison-1991', 'dorozhkin-2010', 'ronteltap-2007', 'davies-1962'],
  cautions: [backflow],
  example: {
    volume: '1000 L',
    portions: [
      { salt: 'calcium-ammonium-nitrate-decahydrate', mass: '530 g' },
      { salt: 'potassium-nitrate', mass: '320 g' },
      { salt: 'monopotassium-phosphate', mass: '165 g' },
      { salt: 'magnesium-sulfate-heptahydrate', mass: '250 g' },
      { salt: 'nitric-acid', purity: '60 %', mass: '120 g' },
      { name: 'iron chelate', label: { Fe: '6 %' }, mass: '25 g', solubility: '90 g/L' },
      { salt: 'boric-acid', mass: '1.5 g' },
    ],
    dilution: '1:100',
    stockVolume: '20 L',
    tankTemperature: '8 °C',
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
  },
  check: (inputs, problem) => {
    checkWater(inputs, problem);
    checkStockPortions(inputs.portions, problem);
  },
  solve: (inputs, solving) => {
    const parts = 1 / inputs.dilution;
    refuseImpossible((parts * inputs.portions.reduce((sum, portion) => sum + portion.mass, 0)) / inputs.volume, 'dilution', solving);
    const water = amountsInWater(inputs);
    const weighed = inputs.portions.filter((portion) => portion.mass > 0);
    const products = weighed.map((portion) => stockProduct(portion, (parts * portion.mass) / inputs.volume, inputs.tankTemperature));
    const allocation = weighed[0]?.intoTank === undefined ? proposed(products, inputs.tanksAvailable, solving) : given(weighed);

    const tanks = allocation.map(({ name, placements }, i) => {
      const place = `tanks[${i}]`;
      const placed = placements
        .map(({ name: product, fraction }) => inPart(products.find((one) => one.name === product)!, fraction))
        .sort((a, b) => dissolvingRank(a.traits) - dissolvingRank(b.traits) || (b.solubilityShare ?? 0) - (a.solubilityShare ?? 0) || (a.name < b.name ? -1 : 1));
      noteTank(name, placed, parts, place, solving);
      const stock = stockSolution(amountsInStock(placed.map(({ product, strength }) => ({ ...product, mass: strength })), 1, water), inputs.tankTemperature);
      if (stock) {
        noteSaturation(stock.indices, `Tank ${name}`, place, solving.note);
        noteStrongSolution(stock.ionicStrength, `Tank ${name}`, place, solving.note);
      } else {
        solving.note('caution', 'beyond-saturation-indices', place, `Tank ${name} has less water than ions: what settles out of it cannot be told.`);
      }
      return {
        name,
        portions: placed.map(({ name: product, strength, solubilityShare }) => ({ name: product, mass: strength * inputs.stockVolume, solubilityShare })),
        solubilityShare: placed.reduce((sum, { solubilityShare = 0 }) => sum + solubilityShare, 0),
        pH: stock?.pH,
        saturationIndices: stock?.indices ?? {},
      };
    });

    noteSolubilities(products.filter(({ solubilityShare }) => solubilityShare === undefined).map(({ name }) => name), weighed.filter(isRoughlyKnown).map(nameOf), solving);
    noteDissolving(products, weighed.filter(coolsWater).map(nameOf), solving);
    noteProducts(weighed, 'portions', solving);
    noteWater(inputs, solving);
    return { tanks, saturationIndices: saturationOfFeed(inputs, solving) };
  },
});

interface AllocatedTank {
  readonly name: string;
  readonly placements: readonly Placement[];
}

function proposed(products: readonly StockProduct[], available: number, { note }: Solving): readonly AllocatedTank[] {
  const tanks = allocateToTanks(products.map(({ name, traits, solubilityShare = 0 }) => ({ name, traits, share: solubilityShare })), available);
  if (tanks.length > available) {
    note('danger', 'too-few-tanks', 'tanksAvailable', `These products need ${tanks.length} tanks to stay apart from what they must not meet, and there ${available === 1 ? 'is 1' : `are ${available}`}: leave out what stands in the last of them, or feed it at another time.`);
  }
  return tanks.map((placements, i) => ({ name: tankNames[i] ?? String(i + 1), placements }));
}

function given(portions: readonly SeenPortion[]): readonly AllocatedTank[] {
  const tanks = tankNames.map((name) => ({ name, placements: portions.filter(({ intoTank }) => intoTank === name).map((portion) => ({ name: nameOf(portion), fraction: 1 })) }));
  return tanks.filter(({ placements }) => placements.length > 0);
}

/** Saturation indices of the feed that all tanks and the water make together. */
function saturationOfFeed(inputs: Parameters<typeof waterOf>[0] & { readonly portions: readonly SeenPortion[]; readonly volume: number; readonly pH: number; readonly waterTemperature: number }, { note }: Solving) {
  const { portions, volume: feedVolume, pH, waterTemperature } = inputs;
  const feed = dissolvePortions(portions.map((portion) => ({ ...productOf(portion), mass: portion.mass })), feedVolume, waterOf(inputs));
  const { totals, conditions } = speciationTask(feed.amountConcentrations, pH, waterTemperature, waterDensityIapws2008(waterTemperature));
  const indices = saturationIndices(speciate(totals, conditions), waterTemperature);
  noteSaturation(indices, 'The diluted feed', 'saturationIndices', note);
  return indices;
}
