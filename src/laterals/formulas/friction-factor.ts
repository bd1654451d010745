import { wrightOmega } from './wright-omega.js';

/**
 * Friction factor of laminar flow in a round pipe (Hagen-Poiseuille), Darcy's form (four times Fanning's).
 *
 * f = 64 / Re
 *
 * Range: Re below 2000; beyond it the formula goes on falling while real flow turns turbulent. Exact for a long straight pipe.
 *
 * @param reynolds Re, Reynolds number of the pipe (velocity x diameter / kinematic viscosity)
 * @example frictionFactorLaminar(128) // => 0.5
 */
export function frictionFactorLaminar(reynolds: number): number {
  return 64 / reynolds;
}

/**
 * Friction factor of turbulent flow in a smooth pipe, power form.
 *
 * f = c Re^-0.25
 *
 * Range: 3000 < Re < 2e5. Against Colebrook-White for a smooth pipe 2.8 % high near Re 1.7e4 and 4.3 % low at 2e5; above that too low.
 * Source: Blasius (1913); 0.316 is also printed for c.
 *
 * @param coefficient c
 * @example frictionFactorBlasius1913(10000) // => 0.03164
 */
export function frictionFactorBlasius1913(reynolds: number, coefficient = 0.3164): number {
  return coefficient / Math.sqrt(Math.sqrt(reynolds));
}

/**
 * Friction factor of small smooth polyethylene tubing as measured, about 5 % below Blasius.
 *
 * f = c Re^-0.25
 *
 * Range: drip tubing of some 10 to 20 mm, turbulent flow up to Re 7e4: there 1.8 to 4.9 % below Colebrook-White for a smooth pipe.
 * Source: Bagarello, Ferro, Provenzano & Pumo (1995); the coefficient is from memory, so pass your own where it matters. A choice
 * in data takes this one: for another, give the lateral a friction law that is a plain function.
 *
 * @param coefficient c
 * @example frictionFactorBagarello1995(10000) // => 0.0302
 */
export function frictionFactorBagarello1995(reynolds: number, coefficient = 0.302): number {
  return frictionFactorBlasius1913(reynolds, coefficient);
}

/** Natural logarithm of 10. */
const ln10 = 2.302585092994046;

/** An error of the Colebrook-White equation that one more step takes to the last digits of the factor. */
const smallEnough = 4e-3;

/**
 * Friction factor of turbulent flow in smooth and rough pipes: the Colebrook-White equation, solved to the last digits.
 *
 * 1/sqrt(f) = -2 log10( (e/D)/3.7 + 2.51/(Re sqrt(f)) )
 *
 * With y = ln(10)/(2 sqrt(f)) this is y + ln(r + y) = ln(Re ln(10)/5.02), r = (e/D) Re ln(10)/18.574. So r + y is Wright's omega function of
 * r + ln(Re ln(10)/5.02), which is known where small pipes are. Elsewhere the iteration of Clamond (2009) finds y; each of its steps leaves about the
 * fifth power of the error, so the step from an error that is small enough is the last.
 * Range: Re above 4000, e/D up to 0.05. The equation itself follows measured pipes to some 5 to 10 %.
 * Source: Colebrook (1939); Clamond (2009).
 *
 * @param relativeRoughness e/D, height of the wall's roughness over the inside diameter
 * @example frictionFactorColebrook1939(1e5, 1e-4) // => 0.0185138660774716
 */
export function frictionFactorColebrook1939(reynolds: number, relativeRoughness: number): number {
  const { rough, smooth } = colebrookTerms(reynolds, relativeRoughness);
  return (halfLn10 / colebrookRoot(rough, smooth)) ** 2;
}

/** ln(10)/2, which is y sqrt(f). */
export const halfLn10 = 1.151292546497023;

/** What the equation is left with: r, and the logarithm on its right. */
export function colebrookTerms(reynolds: number, relativeRoughness: number): { readonly rough: number; readonly smooth: number } {
  return { rough: relativeRoughness * reynolds * (ln10 / 18.574), smooth: Math.log(reynolds * (ln10 / 5.02)) };
}

/** The y of y + ln(rough + y) = right. */
export function colebrookRoot(rough: number, right: number): number {
  const both = rough + right;
  return both > 6.6 && both < 12.6 ? wrightOmega(both) - rough : clamondRoot(rough, right);
}

/** The same step by step. */
function clamondRoot(rough: number, right: number): number {
  let y = right - Math.log(rough + right);
  let error: number;
  do {
    const sum = rough + y;
    const square = (1 + sum) * (1 + sum);
    error = Math.log(sum) + y - right;
    y -= (error * sum * (square + error / 2)) / ((1 + sum) * (square + error) + (error * error) / 3);
  } while (Math.abs(error) > smallEnough);
  return y;
}

/**
 * Explicit stand-in for Colebrook-White.
 *
 * f = 0.25 / log10( (e/D)/3.7 + 5.74/Re^0.9 )^2
 *
 * Range: 5e3 <= Re <= 1e8, 1e-6 <= e/D <= 0.05. From 0.7 % below Colebrook-White to 3.0 % above, the latter in rough pipes near Re 5000. The 1 % that is
 * claimed for it up to e/D 0.01 (from memory) is 1.2 % from Re 5e4 on, and 2.8 % at Re 5000.
 * Source: Swamee & Jain (1976).
 *
 * @example frictionFactorSwameeJain1976(1e4, 1e-2) // => 0.044041795
 */
export function frictionFactorSwameeJain1976(reynolds: number, relativeRoughness: number): number {
  return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

/**
 * Explicit stand-in for Colebrook-White.
 *
 * 1/sqrt(f) = -1.8 log10( ((e/D)/3.7)^1.11 + 6.9/Re )
 *
 * Range: 4e3 <= Re <= 1e8, e/D up to 0.05; within 1.5 % of Colebrook-White.
 * Source: Haaland (1983).
 *
 * @example frictionFactorHaaland1983(1e4, 1e-2) // => 0.043044904
 */
export function frictionFactorHaaland1983(reynolds: number, relativeRoughness: number): number {
  return (1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2;
}

/**
 * Explicit stand-in for Colebrook-White by Steffensen's acceleration, never above it and at most 0.0032 % below.
 *
 * A = -2 log10( (e/D)/3.7 + 12/Re ), B = -2 log10( (e/D)/3.7 + 2.51 A/Re ), C = -2 log10( (e/D)/3.7 + 2.51 B/Re ),
 * f = ( A - (B - A)^2/(C - 2B + A) )^-2
 *
 * Range: Re above 4000, any e/D up to 0.05. Source: Serghides (1984).
 *
 * @example frictionFactorSerghides1984(1e5, 1e-4) // => 0.0185135898
 */
export function frictionFactorSerghides1984(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const a = -2 * Math.log10(rough + 12 / reynolds);
  const b = -2 * Math.log10(rough + (2.51 * a) / reynolds);
  const c = -2 * Math.log10(rough + (2.51 * b) / reynolds);
  return (a - (b - a) ** 2 / (c - 2 * b + a)) ** -2;
}

/**
 * Explicit stand-in for Colebrook-White, never below it and less than 1 % above.
 *
 * S = 0.124 (e/D) Re + ln(0.4587 Re), 1/sqrt(f) = 0.8686 ln( 0.4587 Re / S^(S/(S+1)) )
 *
 * Range: 4e3 <= Re <= 1e8, 0 <= e/D <= 0.05. Source: Sonnad & Goudar (2006).
 *
 * @example frictionFactorSonnadGoudar2006(1e4, 1e-2) // => 0.043285288
 */
export function frictionFactorSonnadGoudar2006(reynolds: number, relativeRoughness: number): number {
  const s = 0.124 * relativeRoughness * reynolds + Math.log(0.4587 * reynolds);
  return (0.8686 * Math.log((0.4587 * reynolds) / s ** (s / (s + 1)))) ** -2;
}

/**
 * One equation for laminar, critical and turbulent flow.
 *
 * f = 8 [ (8/Re)^12 + (A + B)^-1.5 ]^(1/12), A = { 2.457 ln[ 1/((7/Re)^0.9 + 0.27 e/D) ] }^16, B = (37530/Re)^16
 *
 * The 8/Re is taken out of the bracket here, so that no power overflows at a trickle.
 * Range: any Re (64/Re below about 1500); stays laminar longer than other choices, so it reads low between Re 2000 and 3500. From Re 4000 on from 0.7 % below
 * Colebrook-White to 3.2 % above.
 * Source: Churchill (1977).
 *
 * @example frictionFactorChurchill1977(1e4, 1e-2) // => 0.044043623
 */
export function frictionFactorChurchill1977(reynolds: number, relativeRoughness: number): number {
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const b = (37530 / reynolds) ** 16;
  return (64 / reynolds) * (1 + (reynolds / 8) ** 12 * (a + b) ** -1.5) ** (1 / 12);
}

/** What Swamee & Jain add to the roughness at Re 4000: 5.74/4000^0.9. */
const swameeJainAt4000 = 0.0032889547634539903;

/**
 * Friction factor between laminar and turbulent flow: a cubic that leaves 64/Re at Re 2000 and meets Swamee-Jain at Re 4000
 * with the same value and slope at both ends.
 *
 * f = X1 + R (X2 + R (X3 + R X4)), R = Re/2000, X1 = 7FA - FB, X2 = 0.128 - 17FA + 2.5FB, X3 = -0.128 + 13FA - 2FB,
 * X4 = 0.032 - 3FA + 0.5FB, FA = Y3^-2, FB = FA (2 - 0.00514215/(Y2 Y3)), Y2 = (e/D)/3.7 + 5.74/4000^0.9, Y3 = -0.86859 ln(Y2).
 * 0.00514215 is 3.6/ln(10) x 5.74/4000^0.9 and 0.86859 is 2/ln(10); both are carried in full here.
 *
 * Range: 2000 < Re < 4000 only. Source: Dunlop (1991), as given by Rossman et al. (2020), chapter 12.
 */
export function frictionFactorDunlop1991(reynolds: number, relativeRoughness: number): number {
  const y2 = relativeRoughness / 3.7 + swameeJainAt4000;
  const y3 = -2 * Math.log10(y2);
  const fa = y3 ** -2;
  const fb = fa * (2 - ((3.6 / ln10) * swameeJainAt4000) / (y2 * y3));
  const r = reynolds / 2000;
  return 7 * fa - fb + r * (0.128 - 17 * fa + 2.5 * fb + r * (-0.128 + 13 * fa - 2 * fb + r * (0.032 - 3 * fa + 0.5 * fb)));
}

/**
 * Friction factor in all regimes as the public-domain network solver EPANET takes it: 64/Re below Re 2000, the cubic of Dunlop (1991) to Re 4000,
 * Swamee & Jain (1976) above.
 *
 * Source: Rossman et al. (2020), chapter 12.
 */
export function frictionFactorRossman2020(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= 2000) return frictionFactorLaminar(reynolds);
  return (reynolds < 4000 ? frictionFactorDunlop1991 : frictionFactorSwameeJain1976)(reynolds, relativeRoughness);
}

/**
 * Darcy friction factor in all regimes: 64/Re up to Re 2000, a turbulent correlation (Colebrook-White unless another is given) from
 * Re 4000, and between them the two mixed with the smooth weight s = t^2 (3 - 2t), t = (Re - 2000)/2000:
 *
 * f = (1 - s) 64/Re + s f_turbulent(Re)
 *
 * The mixture is our own and has no source. It needs no slope of the turbulent correlation, so it serves any of them; f and its slope have no step at either end. Head loss
 * grows with flow throughout: Re f'/f is never below -1 because f_turbulent > 64/Re there, and loss goes as f Re^2.
 * Real flow between Re 2000 and 4000 flickers between both states, so no formula is better than some 10 to 20 % there.
 *
 * @example darcyFrictionFactor(1000, 1e-4) // => 0.064
 */
export function darcyFrictionFactor(
  reynolds: number,
  relativeRoughness: number,
  turbulent: (reynolds: number, relativeRoughness: number) => number = frictionFactorColebrook1939,
): number {
  const laminar = frictionFactorLaminar(reynolds);
  return reynolds <= 2000 ? laminar : blended(reynolds, laminar, turbulent(reynolds, relativeRoughness));
}

/** Above Re 2000, the friction factor, or the loss, from what it would be in laminar and in turbulent flow. */
export function blended(reynolds: number, laminar: number, turbulent: number): number {
  if (reynolds >= 4000) return turbulent;
  const t = reynolds / 2000 - 1;
  const weight = t * t * (3 - 2 * t);
  return (1 - weight) * laminar + weight * turbulent;
}
