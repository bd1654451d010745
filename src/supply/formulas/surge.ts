/**
 * Speed of a pressure wave in a full pipe: a = √(K/ρ)/√(1 + K D/(E e)).
 *
 * Some 1400 m/s in steel, 300 in polyethylene, whose wall gives way. Thin wall (e well below D), pipe free to stretch.
 * Source: Joukowsky and Allievi, as in Subramanya, chapter 14.
 *
 * @param bulkModulus K of the liquid, Pa: 2.18e9 for water at 20 °C
 * @param density ρ, kg/m³
 * @param diameter D, inside, m
 * @param wallThickness e, m
 * @param elasticModulus E of the wall, Pa; Infinity for a rigid pipe
 * @returns m/s
 * @example pressureWaveSpeed(2.18e9, 998.2072, 0.016, 0.002, 1e9) // => 344.1
 */
export function pressureWaveSpeed(bulkModulus: number, density: number, diameter: number, wallThickness: number, elasticModulus: number): number {
  return Math.sqrt(bulkModulus / density / (1 + (bulkModulus * diameter) / (elasticModulus * wallThickness)));
}

/**
 * Rise of pressure where water is stopped at once: Δp = ρ a ΔV.
 *
 * "At once" is before the wave has run to the far end and back: in less than 2 L/a.
 * Source: Joukowsky (1898), as in Subramanya, chapter 14.
 *
 * @param density ρ, kg/m³
 * @param waveSpeed a, m/s
 * @param velocityChange ΔV, m/s
 * @returns Pa
 */
export function surgePressureJoukowsky(density: number, waveSpeed: number, velocityChange: number): number {
  return density * waveSpeed * velocityChange;
}

/** Time in which a pressure wave runs to the far end of a pipe and back: 2 L/a, s. */
export function waveReturnTime(length: number, waveSpeed: number): number {
  return (2 * length) / waveSpeed;
}

/**
 * Rise of pressure where a valve takes its time: that of Joukowsky up to 2 L/a, then Δp = Δp_J (2 L/a)/t = 2 ρ L ΔV/t.
 *
 * The usual estimate for a valve that slows the water evenly. Most valves do most of their closing at the very end: count only the part of their
 * time in which the flow really falls.
 *
 * @param density ρ, kg/m³
 * @param waveSpeed a, m/s
 * @param length L of the pipe up to where the pressure is held, m
 * @param velocityChange ΔV, m/s
 * @param closingTime t, s
 * @returns Pa
 */
export function surgePressure(density: number, waveSpeed: number, length: number, velocityChange: number, closingTime: number): number {
  const atOnce = surgePressureJoukowsky(density, waveSpeed, velocityChange);
  const returnTime = waveReturnTime(length, waveSpeed);
  return closingTime <= returnTime ? atOnce : (atOnce * returnTime) / closingTime;
}

/**
 * Pressure that a plastic pipe is rated for: p = 2 σ/(SDR − 1), SDR being outside diameter over wall.
 *
 * σ is 8 MPa for PE 100 and 6.3 MPa for PE 80 (the strength at 20 °C over 50 years, 10 and 8 MPa, over 1.25); warmer pipes bear less.
 *
 * @param dimensionRatio SDR
 * @param designStress σ, Pa
 * @returns Pa
 * @example pipePressureRating(11, 8e6) // => 1600000
 */
export function pipePressureRating(dimensionRatio: number, designStress: number): number {
  return (2 * designStress) / (dimensionRatio - 1);
}
