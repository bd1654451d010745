/** Size and heat loss of a house. */

/** Outer area and volume of a house. */
export interface HouseSize {
  /** m² */
  readonly floorArea: number;
  /** Walls, ends and roof, m². */
  readonly coverArea: number;
  /** m³ */
  readonly volume: number;
}

/** A house with upright walls of a height and a roof above them of a cross-section and a length across. */
const sized = (width: number, length: number, eaves: number, roofSection: number, roofLine: number): HouseSize => ({
  floorArea: width * length,
  coverArea: 2 * eaves * (width + length) + 2 * roofSection + roofLine * length,
  volume: (width * eaves + roofSection) * length,
});

/**
 * Size of a house with a ridge in its middle, all in m. From the geometry; ends are upright.
 *
 * @example gableHouse(3, 6, 2, 2.8).coverArea // => 58.8
 */
export const gableHouse = (width: number, length: number, eaves: number, ridge: number): HouseSize =>
  sized(width, length, eaves, (width * (ridge - eaves)) / 2, 2 * Math.hypot(width / 2, ridge - eaves));

/**
 * Size of a house under an arc of a circle, on upright walls or (eaves 0) on the ground: a tunnel. All in m; at most a half circle.
 *
 * @example archedHouse(5, 8, 0, 2.5).coverArea // => 82.467
 */
export function archedHouse(width: number, length: number, eaves: number, ridge: number): HouseSize {
  const rise = ridge - eaves;
  if (rise === 0) return flatHouse(width, length, eaves);
  const angle = 4 * Math.atan2(2 * rise, width);
  const radius = width / 2 / Math.sin(angle / 2);
  // The difference of angle and sine loses its digits in a flat arc; its series does not.
  const segment = angle < 0.05 ? angle ** 3 / 6 - angle ** 5 / 120 : angle - Math.sin(angle);
  return sized(width, length, eaves, (radius ** 2 * segment) / 2, radius * angle);
}

/**
 * Size of a house with a flat roof, all in m.
 *
 * @example flatHouse(5, 8, 2.5).volume // => 100
 */
export const flatHouse = (width: number, length: number, height: number): HouseSize => sized(width, length, height, 0, width);

/**
 * Heat that goes through the cover, in W: U A ΔT.
 *
 * @example transmissionLoss(3.7, 58.8, 20) // => 4351.2
 */
export const transmissionLoss = (transfer: number, area: number, difference: number): number => transfer * area * difference;

/** Heat that a volume of air holds per kelvin, J/(m³ K): 1.2 kg/m³ of 1006 J/(kg K), which is 0.335 Wh/(m³ K). */
export const airHeatCapacity = 1207.2;

/**
 * Heat that leaves with the air, in W: n V ρcp ΔT.
 *
 * @param airChanges 1/s
 * @example infiltrationLoss(1 / 3600, 43.2, 20) // => 289.73
 */
export const infiltrationLoss = (airChanges: number, volume: number, difference: number, heatCapacity: number = airHeatCapacity): number =>
  airChanges * volume * heatCapacity * difference;

/** Covers that Mihara and Hayashi measured: transfer in still air and its rise per m/s of wind, in the unit of their abstract. */
const miharaHayashi = {
  'glass': [4.41, 0.40],
  'PVC': [4.87, 0.54],
  'glass with curtain': [3.00, 0.16],
  'PVC with curtain': [3.15, 0.17],
} as const;

/**
 * Heat transfer of the cover in wind, in W/(m² K), from the wind in m/s: k = k0 + c w.
 *
 * Houses of glass and of PVC film, bare and with an inner curtain of polyethylene. The abstract does not state its unit; for its year it is probably
 * kcal/(m² h K), hence the factor of 1.163: pass another as the last argument.
 * Source: Mihara and Hayashi (1979), Journal of Agricultural Meteorology 35, 13 (abstract).
 *
 * @example coverHeatTransferMiharaHayashi1979('glass', 3, 1) // => 5.61
 */
export function coverHeatTransferMiharaHayashi1979(cover: keyof typeof miharaHayashi, windSpeed: number, unit = 1.163): number {
  const [still, rise] = miharaHayashi[cover];
  return unit * (still + rise * windSpeed);
}
