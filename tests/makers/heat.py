"""Check values for barrels followed through time, by a general integrator of differential equations or by quadrature, and nothing of the library.

    python3 tests/makers/heat.py > tests/references/heat/barrel-course.json
"""
import json
import math

import scipy
from scipy.integrate import quad, solve_ivp

DAY = 86400
WITH = f'scipy {scipy.__version__}'


def linear(tau, start, forcing, hours, breaks=()):
    """dT/dt = (F(t) - T)/tau by its integral, Celsius."""
    end = hours * 3600
    total = start * math.exp(-end / tau)
    edges = [0, *[b for b in breaks if 0 < b < end], end]
    for a, b in zip(edges, edges[1:]):
        pieces = max(1, math.ceil((b - a) / 7200))
        for i in range(pieces):
            low, high = a + (b - a) * i / pieces, a + (b - a) * (i + 1) / pieces
            total += quad(lambda s: math.exp(-(end - s) / tau) * forcing(s) / tau, low, high, epsabs=1e-14, epsrel=1e-13)[0]
    return total


def swing(high, low, at, start):
    return lambda t: (high + low) / 2 + (high - low) / 2 * math.cos(2 * math.pi * (start * 3600 + t - at * 3600) / DAY)


def straight(hours, temperatures, start):
    def at(t):
        x = t / 3600 + start
        for (a, b), (p, q) in zip(zip(hours, hours[1:]), zip(temperatures, temperatures[1:])):
            if a <= x <= b:
                return p + (q - p) * (x - a) / (b - a)
        raise ValueError(x)
    return at


def films(water, air, height, diameter, wall, inside, emissivity, wind):
    """Heat transfer through water film, wall, and outside films at the temperature of the outside, by bisection for that temperature. Kelvin."""
    mean = (water + air) / 2
    density = 101325 / (287.042 * mean)
    viscosity = 1.458e-6 * mean ** 1.5 / (mean + 110.4) / density
    k = 2.64638e-3 * mean ** 1.5 / (mean + 245.4 * 10 ** (-12 / mean))
    diffusivity = k / density / 1006
    pr = viscosity / diffusivity
    blown = 0.0
    if wind:
        re = wind * diameter / viscosity
        blown = k / diameter * (0.3 + 0.62 * re ** 0.5 * pr ** (1 / 3) / (1 + (0.4 / pr) ** (2 / 3)) ** 0.25 * (1 + (re / 282000) ** 0.625) ** 0.8)

    def outside(surface):
        ra = 9.81 * abs(surface - air) / ((surface + air) / 2) * height ** 3 / (viscosity * diffusivity)
        free = k / height * (0.825 + 0.387 * ra ** (1 / 6) / (1 + (0.492 / pr) ** (9 / 16)) ** (8 / 27)) ** 2
        radiation = emissivity * 5.670374419e-8 * (surface ** 4 - air ** 4) / (surface - air) if surface != air else 4 * emissivity * 5.670374419e-8 * air ** 3
        return (free ** 3 + blown ** 3) ** (1 / 3) + radiation

    if water == air:
        return 1 / (1 / inside + wall + 1 / outside(air))
    low, high = 0.0, 1.0
    for _ in range(60):
        share = (low + high) / 2
        through = (1 - share) / (1 / inside + wall)
        if outside(air + share * (water - air)) * share > through:
            high = share
        else:
            low = share
    return (1 - share) / (1 / inside + wall)


def nonlinear(mass, diameter, height, area, start, air, hours, power=0, wall=0.003 / 0.5, inside=300, emissivity=0.9, wind=0):
    def slope(t, y):
        a = air(t) + 273.15
        return [(films(y[0], a, height, diameter, wall, inside, emissivity, wind) * area * (a - y[0]) + power) / (mass * 4186)]
    found = solve_ivp(slope, (0, hours * 3600), [start + 273.15], method='DOP853', rtol=1e-11, atol=1e-9, max_step=300)
    return found.y[0, -1] - 273.15


def check(name, given, celsius, digits, how):
    return {'id': name, 'of': 'heat/barrelWarmUp', 'input': given, 'expect': {'endTemperature': f'{celsius:.{digits + 1}f} °C'}, 'tolerance': f'{10 ** -digits:.{digits}f} °C',
            'source': {'kind': 'independent calculation', 'where': f'{how} ({WITH})'}}


EXACT = 'm cp dT/dt = U A (Ta - T) + P by quadrature of its integral'
FILMS = 'the same films and wall, with the temperature outside by bisection, in a Runge-Kutta of order 8'
checks = []

for mass, u, area, start, high, low, at, begin, hours, power in [
    (200, 8, 1.64, 9, 24, 12, 15, 8, 24, 0), (200, 8, 1.64, 9, 24, 12, 15, 8, 48, 0), (60, 9, 0.85, 22, 8, -2, 14, 18, 12, 0), (1000, 6, 5.5, 15, 30, 10, 15, 6, 120, 0), (200, 8, 1.64, 9, 18, 6, 15, 20, 10, 300),
]:
    tau = mass * 4186 / (u * area)
    air = swing(high, low, at, begin)
    celsius = linear(tau, start, lambda t: air(t) + power / (u * area), hours)
    given = {'waterMass': f'{mass} kg', 'barrelHeatTransfer': f'{u} W/(m²·K)', 'barrelArea': f'{area} m²', 'waterTemperature': f'{start} °C', 'highestAirTemperature': f'{high} °C',
             'lowestAirTemperature': f'{low} °C', 'timeOfHighest': f'{at} h', 'startTime': f'{begin} h', 'lookAhead': f'{hours} h', 'heaterPower': f'{power} W'}
    checks.append(check(f'swing-{mass}-kg-{hours}-h', given, celsius, 7, EXACT))

hours, temperatures = [0, 3, 5.5, 6, 9, 13, 13.5, 17, 22, 30], [11, 9, 8, 8.5, 15, 24, 22, 21, 14, 10]
for mass, u, area, start, begin, ahead, step in [(200, 8, 1.64, 9, 6, 12, '4 h'), (200, 8, 1.64, 9, 4.75, 25, '15 min'), (40, 10, 0.6, 30, 0, 30, '1 h')]:
    tau = mass * 4186 / (u * area)
    celsius = linear(tau, start, straight(hours, temperatures, begin), ahead, [(h - begin) * 3600 for h in hours])
    given = {'waterMass': f'{mass} kg', 'barrelHeatTransfer': f'{u} W/(m²·K)', 'barrelArea': f'{area} m²', 'waterTemperature': f'{start} °C', 'startTime': f'{begin} h', 'lookAhead': f'{ahead} h', 'stepLength': step,
             'readingTime': {'unit': 'h', 'values': hours}, 'airTemperatures': {'unit': '°C', 'values': temperatures}}
    checks.append(check(f'readings-{mass}-kg-{ahead}-h', given, celsius, 7, EXACT))

for name, mass, diameter, height, area, start, air, told, ahead, extra, more in [
    ('steady-air-films', 200, 0.58, 0.76, 1.64, 8, lambda t: 20, {'airTemperature': '20 °C'}, 24, {}, {}),
    ('cooling-films', 200, 0.58, 0.76, 1.64, 22, lambda t: 5, {'airTemperature': '5 °C'}, 10, {}, {}),
    ('swing-films', 200, 0.58, 0.76, 1.64, 9, swing(24, 12, 15, 8), {'highestAirTemperature': '24 °C', 'lowestAirTemperature': '12 °C', 'startTime': '8 h'}, 36, {}, {}),
    ('windy-films', 200, 0.58, 0.76, 1.64, 9, lambda t: 18, {'airTemperature': '18 °C'}, 12, {'wind': 2}, {'windSpeed': '2 m/s'}),
    ('lagged-films', 200, 0.58, 0.76, 1.64, 20, lambda t: 2, {'airTemperature': '2 °C'}, 48, {'wall': 0.003 / 0.5 + 0.05 / 0.04}, {'insulationThickness': '5 cm'}),
    ('bright-steel-films', 60, 0.4, 0.48, 0.85, 10, lambda t: 25, {'airTemperature': '25 °C'}, 6, {'wall': 0.001 / 50, 'emissivity': 0.2}, {'wallMaterial': 'steel', 'wallThickness': '1 mm', 'emissivity': 0.2}),
    ('heated-films', 200, 0.58, 0.76, 1.64, 8, lambda t: 6, {'airTemperature': '6 °C'}, 12, {'power': 300}, {'heaterPower': '300 W'}),
]:
    density = {8: 999.849, 9: 999.781, 10: 999.702, 20: 998.207, 22: 997.770}[start]  # IAPWS-95 at one atmosphere
    height = mass / density / (math.pi / 4 * diameter ** 2)
    celsius = nonlinear(mass, diameter, height, area, start, air, ahead, **extra)
    given = {'waterMass': f'{mass} kg', 'barrelDiameter': f'{diameter} m', 'barrelArea': f'{area} m²', 'waterTemperature': f'{start} °C', 'lookAhead': f'{ahead} h', **told, **more}
    checks.append({**check(name, given, celsius, 3, FILMS)})

body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Barrels through time",\n  "checks": [\n' + body + '\n  ]\n}')
