/** The way of a tank's pressure from one value to another, at nodes, from its start on. Gauge pressures, Pa. */
export interface PressureTravel {
  readonly pressures: Float64Array;
  /** s. */
  readonly times: Float64Array;
  /** dp/dt, Pa/s. */
  readonly speeds: Float64Array;
  /** Flow that is drawn, m3/s. */
  readonly demands: Float64Array;
  /** Volume drawn since the start, m3. */
  readonly drawn: Float64Array;
  /** Integral of the pressure over time since the start, Pa s. */
  readonly pressureTimes: Float64Array;
}

/** What moves a tank's pressure, as functions of it. */
export interface PressureMovers {
  /** Flow into the tank less that out of it, m3/s; of one sign on the way. */
  readonly net: (pressure: number) => number;
  /** Flow that is drawn, m3/s. */
  readonly demand: (pressure: number) => number;
  /** Water that the tank takes for a rise of pressure, dW/dp, m3/Pa. */
  readonly compliance: (pressure: number) => number;
}

/** Nodes on the way, each nearer to its end by the same ratio: 2^-40 of the way is left for the last cell. */
const nodesOnTheWay = 160;
const nearer = 2 ** -0.25;

/** Five-point Gauss-Legendre rule on -1 to 1. */
const gauss = [
  [0, 0.5688888888888889], [0.5384693101056831, 0.47862867049936647], [-0.5384693101056831, 0.47862867049936647],
  [0.906179845938664, 0.23692688505618908], [-0.906179845938664, 0.23692688505618908],
] as const;

/**
 * How a tank's pressure goes from one value to another: t = integral of (dW/dp)/(Q_in - Q_out) dp, and the water drawn meanwhile.
 *
 * The pressure of a tank with a pump and a demand that answer to that pressure alone has only one variable, so its course is an integral and needs
 * no steps in time. The nodes crowd towards the end of the way, where the pump comes near to what is drawn and the pressure creeps.
 *
 * @param breaks pressures where a curve has a corner, or that are to be nodes
 */
export function pressureTravel(from: number, to: number, { net, demand, compliance }: PressureMovers, breaks: readonly number[]): PressureTravel {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const inner = new Set(breaks);
  if (from !== to) for (let k = 1; k <= nodesOnTheWay; k++) inner.add(to + (from - to) * nearer ** k);
  const between = [...inner].filter((p) => p > low && p < high).sort((a, b) => (to > from ? a - b : b - a));
  const pressures = Float64Array.from(from === to ? [from] : [from, ...between, to]);
  const [times, drawn, pressureTimes] = [new Float64Array(pressures.length), new Float64Array(pressures.length), new Float64Array(pressures.length)];
  for (let i = 1; i < pressures.length; i++) {
    const middle = (pressures[i - 1]! + pressures[i]!) / 2;
    const half = (pressures[i]! - pressures[i - 1]!) / 2;
    let [time, volume, pressureTime] = [0, 0, 0];
    for (const [at, weight] of gauss) {
      const p = middle + half * at;
      const seconds = (weight * half * compliance(p)) / net(p);
      time += seconds;
      volume += seconds * demand(p);
      pressureTime += seconds * p;
    }
    times[i] = times[i - 1]! + time;
    drawn[i] = drawn[i - 1]! + volume;
    pressureTimes[i] = pressureTimes[i - 1]! + pressureTime;
  }
  return { pressures, times, speeds: pressures.map((p) => net(p) / compliance(p)), demands: pressures.map(demand), drawn, pressureTimes };
}

/** Pressure (Pa), volume drawn (m3) and integral of the pressure (Pa s) at a time on a travel, s; at its end after that. */
export function placeOnTravel(travel: PressureTravel, time: number): { readonly pressure: number; readonly drawn: number; readonly pressureTime: number } {
  const { pressures, times, speeds, demands, drawn, pressureTimes } = travel;
  let [low, high] = [0, times.length - 1];
  if (time >= times[high]!) return { pressure: pressures[high]!, drawn: drawn[high]!, pressureTime: pressureTimes[high]! };
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle;
  }
  const at = (values: Float64Array, slopes: Float64Array): number => cubicBetween(times[low]!, times[high]!, values[low]!, values[high]!, slopes[low]!, slopes[high]!, time);
  return { pressure: at(pressures, speeds), drawn: at(drawn, demands), pressureTime: at(pressureTimes, pressures) };
}

/** The cubic through two points with the slopes there. */
function cubicBetween(x0: number, x1: number, y0: number, y1: number, slope0: number, slope1: number, x: number): number {
  const width = x1 - x0;
  const s = (x - x0) / width;
  return y0 + s * s * (3 - 2 * s) * (y1 - y0) + s * (1 - s) * ((1 - s) * slope0 - s * slope1) * width;
}
