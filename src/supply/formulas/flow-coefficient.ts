/**
 * Pressure that water loses in a valve of a flow coefficient: Δp = 1 bar · (ρ/1000) (3600 Q/Kv)².
 *
 * Kv is the flow in m³/h at a loss of 1 bar; Cv, in US gal/min at 1 psi, is 1.1561 Kv. Turbulent flow, as in every open valve with water.
 * Source: IEC 60534-2-1.
 *
 * @param flow Q, m³/s
 * @param flowCoefficient Kv
 * @param density ρ, kg/m³
 * @returns Pa
 * @example pressureLossAtFlowCoefficient(2 / 3600, 4, 1000) // => 25000
 */
export function pressureLossAtFlowCoefficient(flow: number, flowCoefficient: number, density: number): number {
  return 100 * density * ((3600 * flow) / flowCoefficient) ** 2;
}

/** 2 · 100 · 3600² (π/4)²: what Kv² K comes to in a pipe of 1 m. */
const unitPipe = 200 * 3600 ** 2 * (Math.PI / 4) ** 2;

/**
 * Loss coefficient, a multiple of the velocity head in a pipe, of a valve of a flow coefficient: K = 1.599·10⁹ D⁴/Kv².
 *
 * Exact by the two definitions; IEC 60534-2-1 prints the factor as 1.60·10⁻³ for D in mm.
 *
 * @param flowCoefficient Kv, m³/h at 1 bar
 * @param diameter D of the pipe, inside, m
 */
export function lossCoefficientFromFlowCoefficient(flowCoefficient: number, diameter: number): number {
  return (unitPipe * diameter ** 4) / flowCoefficient ** 2;
}

/** Flow coefficient Kv (m³/h at 1 bar) that loses as much as a loss coefficient K does in a pipe of an inside diameter (m): the formula above turned round. */
export function flowCoefficientFromLossCoefficient(lossCoefficient: number, diameter: number): number {
  return Math.sqrt(unitPipe / lossCoefficient) * diameter ** 2;
}
