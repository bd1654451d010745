"""Check values for records of the air: readings joined by straight lines, cut at every moment at which something changes sides, and summed piece by piece.

    python3 tests/makers/air-record.py > tests/references/vapour/air-record-by-pieces.json

Shares no code with src/: saturation by IF97 (equation 30), Murphy and Koop 2005 (equation 10), IAPWS R14-08 and FAO-56 (equation 11), typed in; crossings by scipy's brentq.
"""
import json
import math

import scipy
from scipy.optimize import brentq

DAY = 86400
CUT = f'straight lines cut where they cross, by brentq of scipy {scipy.__version__}'


def if97(T):
    n = [0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
         0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3]
    th = T + n[8] / (T - n[9])
    a, b, c = th * th + n[0] * th + n[1], n[2] * th * th + n[3] * th + n[4], n[5] * th * th + n[6] * th + n[7]
    return 1e6 * (2 * c / (-b + math.sqrt(b * b - 4 * a * c))) ** 4


def supercooled(T):
    return math.exp(54.842763 - 6763.22 / T - 4.21 * math.log(T) + 0.000367 * T
                    + math.tanh(0.0415 * (T - 218.8)) * (53.878 - 1331.22 / T - 9.44523 * math.log(T) + 0.014025 * T))


def ice(T):
    th = T / 273.16
    return 611.657 * math.exp((-0.212144006e2 * th ** 0.333333333e-2 + 0.273203819e2 * th ** 1.20666667 - 0.61059813e1 * th ** 1.70333333) / th)


def fao56(T):
    return 610.8 * math.exp(17.27 * (T - 273.15) / (T - 273.15 + 237.3))


def over_water(T, by):
    return fao56(T) if by == 'FAO-56' else if97(T) if T >= 273.16 else supercooled(T)


def on_surface(T, by):
    return fao56(T) if by == 'FAO-56' else if97(T) if T > 273.16 else ice(T)


def record(t, air, humidity, by='IAPWS', warmer=0, moister=0, leaf=None, leaf_offset=None, cover=None, outside=None, ratio=None, light=None, sun=None,
           day=(6, 18), day_light=None, bands=(), gap=3600, base=None, upper=math.inf):
    """Sums and means: times in s since midnight, Celsius, fractions; light at the plants in mol/(m2 s), sun in W/m2; None where a reading is lost."""
    rows = []
    for i, now in enumerate(t):
        if air[i] is None or humidity[i] is None:
            continue
        T = air[i] + warmer + 273.15
        e = (humidity[i] + moister) * over_water(T, by)
        own = leaf[i] if leaf else None
        L = own + 273.15 if own is not None else T + leaf_offset if leaf_offset is not None else None
        own = cover[i] if cover else None
        C = own + 273.15 if own is not None else T - ratio * (T - outside[i] - 273.15) if outside else None
        rows.append({'t': now, 'T': T, 'D': over_water(T, by) - e, 'leaf': None if L is None else on_surface(L, by) - e,
                     'cover': None if C is None else on_surface(C, by) - e, 'light': light[i] if light else None, 'sun': max(0, sun[i]) if sun and sun[i] is not None else None})
    total = {'covered': 0, 'uncovered': 0, 'D': 0, 'T': 0, 'bands': [0] * (len(bands) + 1), 'day': [0, 0, 0], 'night': [0, 0, 0], 'leaf': {}, 'cover': {}, 'warmth': {}, 'photons': {}, 'sun': {}, 'lit': {}}
    for a, b in zip(rows, rows[1:]):
        length = b['t'] - a['t']
        if length > gap:
            total['uncovered'] += length
            continue

        def at(key, x):
            return None if a[key] is None or b[key] is None else a[key] + (b[key] - a[key]) * (x - a['t']) / length

        cuts = {a['t'], b['t']}
        cuts |= {m for d in range(int(a['t'] // DAY), int(b['t'] // DAY) + 2) for h in (0, *day) if a['t'] < (m := d * DAY + h * 3600) < b['t']}
        for key, level in [('D', edge) for edge in bands] + [('leaf', 0), ('cover', 0), ('T', base), ('T', upper), ('light', day_light)]:
            if level is not None and a[key] is not None and b[key] is not None and (a[key] - level) * (b[key] - level) < 0:
                cuts.add(brentq(lambda x: at(key, x) - level, a['t'], b['t'], xtol=1e-12, rtol=1e-15))
        cuts = sorted(cuts)
        for begin, end in zip(cuts, cuts[1:]):
            middle, time = (begin + end) / 2, end - begin
            of = int(middle // DAY)
            clock = middle % DAY / 3600
            D, T = at('D', middle), at('T', middle)
            total['covered'] += time
            total['D'] += D * time
            total['T'] += T * time
            total['bands'][sum(D >= edge for edge in bands)] += time
            if day_light is not None:
                bright = None if at('light', middle) is None else at('light', middle) > day_light
            else:
                bright = day[0] <= clock < day[1] if day[0] < day[1] else clock >= day[0] or clock < day[1]
            if bright is not None:
                part = total['day' if bright else 'night']
                for k, value in enumerate((1, D, T)):
                    part[k] += value * time
            for key in ('leaf', 'cover'):
                margin = at(key, middle)
                total[key][of] = total[key].get(of, 0) + (time if margin is not None and margin < 0 else 0)
            if base is not None:
                total['warmth'][of] = total['warmth'].get(of, 0) + max(0, min(T, upper) - base) * time
            if light and at('light', middle) is not None and (not sun or at('sun', middle) is not None):
                for key, value in (('lit', 1), ('photons', at('light', middle)), ('sun', at('sun', middle) if sun else 0)):
                    total[key][of] = total[key].get(of, 0) + value * time
    return total


def column(unit, values):
    return {'unit': unit, 'values': values}


def expected(got, days, more):
    value = {
        'coveredTime': f"{got['covered'] / 3600:.9f} h", 'uncoveredTime': f"{got['uncovered'] / 3600:.9f} h",
        'meanDeficit': f"{got['D'] / got['covered'] / 1000:.9f} kPa", 'meanAirTemperature': f"{got['T'] / got['covered'] - 273.15:.9f} °C",
        'dayDeficit': f"{got['day'][1] / got['day'][0] / 1000:.9f} kPa", 'nightDeficit': f"{got['night'][1] / got['night'][0] / 1000:.9f} kPa",
    }
    for i, time in enumerate(got['bands']):
        value[f'bands[{i}].bandTime'] = f'{time / 3600:.9f} h'
    for i, of in enumerate(days):
        if 'leaf' in more:
            value[f'wholeDays.leafWetTime[{i}]'] = f"{got['leaf'][of] / 3600:.9f} h"
        if 'cover' in more:
            value[f'wholeDays.coverWetTime[{i}]'] = f"{got['cover'][of] / 3600:.9f} h"
        if 'warmth' in more:
            value[f'wholeDays.degreeDays[{i}]'] = f"{got['warmth'][of] / DAY:.9f} K·d"
    if 'light' in more:
        lit = [of for of in days if got['lit'].get(of, 0) > 0]
        for i, of in enumerate(lit):
            value[f'lightDays.coveredTime[{i}]'] = f"{got['lit'][of] / 3600:.9f} h"
            value[f'lightDays.dailyLight[{i}]'] = f"{got['photons'][of]:.9f} mol/(m²·d)"
            if 'sun' in more:
                value[f'lightDays.radiationSum[{i}]'] = f"{got['sun'][of] / 1e6:.9f} MJ/m²"
    return value


def check(name, given, got, days, more, where):
    return {'id': name, 'of': 'vapour/airRecord', 'input': given, 'expect': expected(got, days, more), 'tolerance': 1e-8,
            'source': {'kind': 'independent calculation', 'where': f'{where}; {CUT}'}}


def swing(x, mean, amplitude, hottest=14.5):
    return mean + amplitude * math.cos(2 * math.pi * (x / 3600 - hottest) / 24)


checks = []

# From an afternoon to the small hours two days on, at uneven steps: frost, a cover by the temperature outside, leaves colder than the air.
t = [51600]
for k in range(64):
    t.append(t[-1] + [1200, 1500, 2700, 3300, 1800, 900, 3600, 2100][k % 8])
air = [round(swing(x, 5.5, 8.3) + 0.7 * math.sin(k), 2) for k, x in enumerate(t)]
humidity = [round(0.83 - 0.16 * math.cos(2 * math.pi * (x / 3600 - 14.5) / 24) + 0.02 * math.cos(2 * k), 3) for k, x in enumerate(t)]
outside = [round(swing(x, 0.5, 5) - 0.5 * math.cos(k), 2) for k, x in enumerate(t)]
flux = [round(max(-2, 520 * math.sin(math.pi * (x % DAY / 3600 - 6.8) / 11.3)), 1) for x in t]
got = record(t, air, humidity, leaf_offset=-1.2, outside=outside, ratio=6.5 / 8, light=[max(0, x) * 1e-6 for x in flux], day=(7, 17.5), bands=(100, 250, 500), base=278.15, upper=284.15)
checks.append(check('frost-in-the-tunnel', {
    'readingTime': column('s', t), 'airTemperature': column('°C', air), 'relativeHumidity': column('fraction', humidity), 'leafTemperatureOffset': '-1.2 K',
    'outsideTemperature': column('°C', outside), 'coverHeatTransfer': '6.5 W/(m²·K)', 'insideFilmCoefficient': '8 W/(m²·K)', 'photonFlux': column('µmol/(m²·s)', flux),
    'dayBegins': '7 h', 'nightBegins': '17.5 h', 'deficitBands': ['0.1 kPa', '0.25 kPa', '0.5 kPa'], 'baseTemperature': '5 °C', 'upperTemperature': '11 °C',
}, got, [0, 1, 2], ('leaf', 'cover', 'warmth', 'light'), 'es over water less e, over ice on frozen leaves and cover; ti - U/h (ti - to)'))

# Sensor offsets, lost readings, a day that runs over midnight; the same rows with a short and a long longestGap.
t = [0]
for k in range(70):
    t.append(t[-1] + [600, 1200, 1800, 2400, 600, 3000, 5400][k % 7])
air = [None if k in (9, 10, 33) else round(swing(x, 17, 6.5) + 0.4 * math.cos(3 * k), 2) for k, x in enumerate(t)]
humidity = [None if k in (20, 33, 51) else round(0.75 - 0.19 * math.cos(2 * math.pi * (x / 3600 - 14.5) / 24) + 0.02 * math.sin(5 * k), 3) for k, x in enumerate(t)]
for minutes in (40, 150):
    got = record(t, air, humidity, by='FAO-56', warmer=-0.4, moister=0.03, leaf_offset=-1.5, day=(20, 4), bands=(300, 700), gap=minutes * 60, base=283.15)
    checks.append(check(f'offsets-and-lost-readings-{minutes}-min', {
        'readingTime': column('s', t), 'airTemperature': column('°C', air), 'relativeHumidity': column('fraction', humidity), 'correlation': 'FAO-56', 'temperatureOffset': '-0.4 K',
        'humidityOffset': 0.03, 'leafTemperatureOffset': '-1.5 K', 'dayBegins': '20 h', 'nightBegins': '4 h', 'longestGap': f'{minutes} min', 'deficitBands': ['0.3 kPa', '0.7 kPa'], 'baseTemperature': '10 °C',
    }, got, sorted(got['warmth']), ('leaf', 'warmth'), 'FAO-56 equation 11, offsets added to the readings, nothing summed across longer gaps'))

# Day by the light at the plants, from a sensor outside; leaves and cover measured, but not in every row.
t = [16200 + 2400 * k for k in range(62)]
air = [round(swing(x, 14.5, 5.2) + 0.6 * math.sin(2 * k), 2) for k, x in enumerate(t)]
humidity = [round(0.84 - 0.13 * math.cos(2 * math.pi * (x / 3600 - 14.5) / 24) + 0.02 * math.cos(3 * k), 3) for k, x in enumerate(t)]
leaf = [None if k % 9 == 4 else round(x - 1.4 + 0.9 * math.sin(k), 2) for k, x in enumerate(air)]
cover = [None if k % 11 == 7 else round(x - 3.4 + 1.3 * math.cos(k), 2) for k, x in enumerate(air)]
sun = [None if k == 40 else round(max(0, 610 * math.sin(math.pi * (x % DAY / 3600 - 5.4) / 14.2)), 1) for k, x in enumerate(t)]
got = record(t, air, humidity, leaf=leaf, leaf_offset=-1.5, cover=cover, light=[None if x is None else x * 0.68 * 2.06e-6 for x in sun], sun=sun, day_light=40e-6, bands=(200,))
checks.append(check('day-by-the-light', {
    'readingTime': column('s', t), 'airTemperature': column('°C', air), 'relativeHumidity': column('fraction', humidity), 'leafTemperature': column('°C', leaf), 'leafTemperatureOffset': '-1.5 K',
    'coverTemperature': column('°C', cover), 'globalRadiation': column('W/m²', sun), 'coverTransmission': 0.68, 'photonYield': '2.06 µmol/J', 'dayLight': '40 µmol/(m²·s)', 'deficitBands': ['0.2 kPa'],
}, got, [0, 1], ('leaf', 'cover', 'light', 'sun'), 'day where 0.68 · 2.06 µmol/J of the radiation is above the threshold; rows without a reading join none to the next'))

body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Records of the air, summed piece by piece",\n  "checks": [\n' + body + '\n  ]\n}')
