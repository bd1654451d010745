"""Coefficients of src/laterals/formulas/wright-omega.ts: Wright's omega, omega + ln(omega) = x, as a polynomial of t = (x - 9.6)/3 for x from 6.6 to 12.6.

Chebyshev series of the Lambert W function in 40 digits, cut after the 14th power; needs mpmath.
"""
import mpmath

mpmath.mp.dps = 40
DEGREE = 14
NODES = 60


def omega(t):
    return mpmath.lambertw(mpmath.exp(mpmath.mpf("9.6") + 3 * t)).real


angles = [(j + mpmath.mpf(1) / 2) * mpmath.pi / NODES for j in range(NODES)]
values = [omega(mpmath.cos(angle)) for angle in angles]
series = [2 * sum(v * mpmath.cos(m * a) for v, a in zip(values, angles)) / NODES for m in range(DEGREE + 1)]
series[0] /= 2

powers = [[mpmath.mpf(1)], [mpmath.mpf(0), mpmath.mpf(1)]]
for m in range(2, DEGREE + 1):
    nxt = [mpmath.mpf(0)] + [2 * c for c in powers[m - 1]]
    for i, c in enumerate(powers[m - 2]):
        nxt[i] -= c
    powers.append(nxt)

coefficients = [mpmath.mpf(0)] * (DEGREE + 1)
for weight, polynomial in zip(series, powers):
    for i, c in enumerate(polynomial):
        coefficients[i] += weight * c
for i, c in enumerate(coefficients):
    print(i, repr(float(c)))
worst = max(abs(sum(float(c) * t**i for i, c in enumerate(coefficients)) / omega(mpmath.mpf(t)) - 1) for t in [k / 500 - 1 for k in range(1001)])
print("largest error, as a share:", mpmath.nstr(worst, 3))
