/**
 * Temperature of the inner surface of a cover in K, from the temperatures inside and outside in K, the U-value of the cover and the film
 * coefficient between the air inside and the cover in W/(m² K).
 *
 *   Ts = Ti - (U/h) (Ti - To)
 *
 * The heat that goes through the cover has to come to it through the film of air inside. A film coefficient is 7 to 9 W/(m² K) in still air (from
 * memory). A clear sky takes away more, and the cover is then colder. Steady heat flow through a plane wall.
 *
 * @example innerCoverTemperature(288.15, 273.15, 6, 8) - 273.15 // => 3.75
 */
export function innerCoverTemperature(inside: number, outside: number, heatTransfer: number, film: number): number {
  return inside - heatTransfer / film * (inside - outside);
}

/**
 * Temperature outside in K at which the inner surface of a cover has a temperature in K: the inverse of innerCoverTemperature.
 *
 *   To = Ti - (h/U) (Ti - Ts)
 *
 * @example outsideTemperatureForCover(288.15, 276.9, 6, 8) - 273.15 // => 0
 */
export function outsideTemperatureForCover(inside: number, surface: number, heatTransfer: number, film: number): number {
  return inside - film / heatTransfer * (inside - surface);
}
