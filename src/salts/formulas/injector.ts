/**
 * Mass of a product for a wanted concentration of one nutrient, kg: concentration · volume / fraction.
 *
 * In US trade units this is the rule of 75: an ounce in 100 US gal makes 74.89 mg/L, rounded to 75.
 *
 * @param concentration kg/m3 of the nutrient
 * @param massFraction of the nutrient in the product
 * @param volume m3 of feed
 * @example massForConcentration(0.04, 0.097, 0.3785); // => 0.15608…
 */
export function massForConcentration(concentration: number, massFraction: number, volume: number): number {
  return (concentration * volume) / massFraction;
}

/**
 * Mass of a product in a stock for an injector, kg: concentration · dilution · volume / fraction.
 *
 * An injector of `1 : 100` is taken as one part of stock in 100 parts of feed, as the trade counts, so the stock is 100 times as strong as
 * the feed. Where it is marked by the water that joins one part of stock, 100 parts of water make 101 of feed: pass 101.
 *
 * @param concentration kg/m3 of the nutrient in the feed
 * @param dilution parts of feed from one part of stock
 * @param stockVolume m3
 * @example massForStock(0.2, 0.2, 100, 0.01); // => 1
 */
export function massForStock(concentration: number, massFraction: number, dilution: number, stockVolume: number): number {
  return massForConcentration(concentration * dilution, massFraction, stockVolume);
}
