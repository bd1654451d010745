/**
 * Mass of a product in a volume of finished feed for a wanted concentration of one nutrient, kg: concentration · volume / fraction.
 *
 * In trade units this is the rule of 75: one ounce in 100 US gallons is 74.89 mg/L of product.
 *
 * @param concentration kg/m3 of the nutrient
 * @param massFraction of the nutrient in the product
 * @param volume m3
 * @example massForConcentration(0.04, 0.097, 0.3785) // 0.15608…
 */
export function massForConcentration(concentration: number, massFraction: number, volume: number): number {
  return (concentration * volume) / massFraction;
}

/**
 * How many times stronger than the feed a stock is that an injector takes up 1 : dilution: as many times.
 *
 * `1 : 100` is read as the trade does, one part of stock in 100 parts of feed. An injector that is marked by the water it adds to one part
 * of stock gives 101 parts of feed: pass 101.
 */
export function massForStock(concentration: number, massFraction: number, dilution: number, stockVolume: number): number {
  return massForConcentration(concentration * dilution, massFraction, stockVolume);
}
