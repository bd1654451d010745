"""Check values for the sun and for evapotranspiration outdoors after FAO-56, with the sun summed by quadrature instead of in closed form.

    python3 tests/makers/evapotranspiration.py > tests/references/dosing/evapotranspiration-by-quadrature.json

Shares no code with src/. Equations by their numbers in Allen et al. 1998.
"""
import json
import math

import scipy
from scipy.integrate import quad

QUAD = f'radiation outside the atmosphere by quadrature of the sun\'s height (scipy {scipy.__version__})'


def sun(latitude, day, first=-math.pi, last=math.pi):
    """Radiation outside the atmosphere between two hour angles, MJ/m2, and the sunset angle (equations 23 to 25)."""
    phi, delta = math.radians(latitude), 0.409 * math.sin(2 * math.pi * day / 365 - 1.39)
    sunset = math.acos(-math.tan(phi) * math.tan(delta))
    height = lambda w: max(0.0, math.sin(phi) * math.sin(delta) + math.cos(phi) * math.cos(delta) * math.cos(w))
    edges = sorted({first, last, *(w for turn in (-2 * math.pi, 0, 2 * math.pi) for w in (turn - sunset, turn + sunset) if first < w < last)})
    whole = sum(quad(height, a, b, epsabs=1e-13)[0] for a, b in zip(edges, edges[1:]))
    return 12 * 60 / math.pi * 0.0820 * (1 + 0.033 * math.cos(2 * math.pi * day / 365)) * whole, sunset


def saturation(t):
    return 0.6108 * math.exp(17.27 * t / (t + 237.3))  # 11


def penman(t, deficit, altitude, wind, energy, numerator):
    gamma = 0.665e-3 * 101.3 * ((293 - 0.0065 * altitude) / 293) ** 5.26  # 7, 8
    slope = 4098 * saturation(t) / (t + 237.3) ** 2  # 13
    return (0.408 * slope * energy + gamma * numerator / (t + 273) * wind * deficit) / (slope + gamma * (1 + 0.34 * wind))


def longwave(fourth_powers, vapour, clear):
    return fourth_powers * (0.34 - 0.14 * math.sqrt(vapour)) * (1.35 * min(1, clear) - 0.35)  # 39


def daily(latitude, day, altitude, high, low, vapour, wind, height, soil, albedo, sunshine=None, radiation=None):
    outside, sunset = sun(latitude, day)
    daylight = 24 / math.pi * sunset
    clear = (0.75 + 2e-5 * altitude) * outside
    ground = (0.25 + 0.5 * sunshine / daylight) * outside if sunshine is not None else radiation
    lost = longwave(4.903e-9 * ((high + 273.16) ** 4 + (low + 273.16) ** 4) / 2, vapour, ground / clear)
    net = (1 - albedo) * ground - lost
    at_two = wind if height == 2 else wind * 4.87 / math.log(67.8 * height - 5.42)  # 47
    mean = (high + low) / 2
    return {
        'extraterrestrialRadiation': f'{outside:.8f} MJ/m²', 'daylight': f'{daylight:.8f} h', 'radiationSum': f'{ground:.8f} MJ/m²', 'netLongwave': f'{lost:.8f} MJ/m²', 'netRadiation': f'{net:.8f} MJ/m²',
        'referenceEvapotranspiration': f'{penman(mean, (saturation(high) + saturation(low)) / 2 - vapour, altitude, at_two, net - soil, 900):.8f} mm/d',
        'hargreavesEvapotranspiration': f'{0.0023 * (mean + 17.8) * math.sqrt(high - low) * outside * 0.408:.8f} mm/d',
    }


def hourly(latitude, longitude, ahead, day, middle, altitude, t, humidity, radiation, wind, at_night=None):
    b = 2 * math.pi * (day - 81) / 364
    season = 0.1645 * math.sin(2 * b) - 0.1255 * math.cos(b) - 0.025 * math.sin(b)  # 32
    w = math.pi / 12 * (middle + 0.06667 * (longitude - 15 * ahead) + season - 12)  # 31, both longitudes counted to the east
    outside, sunset = sun(latitude, day, w - math.pi / 24, w + math.pi / 24)
    is_day = abs((w + math.pi) % (2 * math.pi) - math.pi) < sunset
    ground = radiation * 0.0036
    vapour = humidity * saturation(t)
    clear = ground / ((0.75 + 2e-5 * altitude) * outside) if is_day else at_night
    net = 0.77 * ground - longwave(2.043e-10 * (t + 273.16) ** 4, vapour, clear)
    soil = (0.1 if is_day else 0.5) * net  # 45, 46
    return {
        'extraterrestrialRadiation': f'{outside:.8f} MJ/m²', 'netRadiation': f'{net:.8f} MJ/m²', 'soilHeat': f'{soil:.8f} MJ/m²',
        'referenceEvapotranspiration': f'{penman(t, saturation(t) - vapour, altitude, wind, net - soil, 37):.8f} mm/h',
    }


def check(name, of, given, expect, where):
    return {'id': name, 'of': f'dosing/{of}', 'input': given, 'expect': expect, 'tolerance': 1e-8, 'source': {'kind': 'independent calculation', 'key': 'fao56', 'where': f'{where}; {QUAD}'}}


checks = []
for name, latitude, day, altitude, high, low, humidity, wind, height, soil, albedo, sunny in [
    ('spring-day', 51.2, 112, 85, 16.4, 5.1, ('highestRelativeHumidity', 0.93, 'lowestRelativeHumidity', 0.47), 3.4, 10, 0, 0.23, {'sunshine': 8.25}),
    ('high-summer', 51.2, 192, 85, 29.7, 16.2, ('dewPoint', 14.1), 1.6, 2, 0.3, 0.23, {'radiation': 26.4}),
    ('winter-south', -37.8, 185, 310, 13.9, 6.6, ('meanRelativeHumidity', 0.78), 2.2, 3, -0.2, 0.2, {'sunshine': 3.1}),
    ('mountain', 27.5, 75, 2350, 21.3, 4.9, ('highestRelativeHumidity', 0.71), 1.1, 2, 0, 0.25, {'radiation': 22.9}),
    ('far-north-in-june', 64.9, 170, 20, 19.8, 9.4, ('vapourPressure', 1.12), 4.0, 10, 0, 0.23, {'sunshine': 13.0}),
]:
    known = dict(zip(humidity[::2], humidity[1::2]))
    vapour = {
        'lowestRelativeHumidity': lambda: (saturation(low) * known['highestRelativeHumidity'] + saturation(high) * known['lowestRelativeHumidity']) / 2,  # 17
        'highestRelativeHumidity': lambda: saturation(low) * known['highestRelativeHumidity'],  # 18
        'meanRelativeHumidity': lambda: known['meanRelativeHumidity'] * (saturation(high) + saturation(low)) / 2,  # 19
        'dewPoint': lambda: saturation(known['dewPoint']),  # 14
        'vapourPressure': lambda: known['vapourPressure'],
    }[humidity[-2]]()
    units = {'dewPoint': ' °C', 'vapourPressure': ' kPa'}
    given = {'latitude': f'{latitude} °', 'dayOfYear': day, 'elevation': f'{altitude} m', 'highestAirTemperature': f'{high} °C', 'lowestAirTemperature': f'{low} °C',
             **{key: f'{value}{units[key]}' if key in units else value for key, value in known.items()},
             'windSpeed': f'{wind} m/s', 'windHeight': f'{height} m', 'soilHeat': f'{soil} MJ/m²', 'albedo': albedo,
             **({'sunshine': f"{sunny['sunshine']} h"} if 'sunshine' in sunny else {'radiationSum': f"{sunny['radiation']} MJ/m²"})}
    checks.append(check(name, 'referenceEvapotranspiration', given, daily(latitude, day, altitude, high, low, vapour, wind, height, soil, albedo, **sunny), 'equations 6 to 52 of a day'))

for name, latitude, longitude, ahead, day, middle, altitude, t, humidity, radiation, wind, at_night in [
    ('noon', 51.2, 3.7, 1, 192, 13.5, 85, 27.8, 0.46, 745, 1.9, None),
    ('hour-of-sunset', 51.2, 3.7, 1, 112, 19.5, 85, 11.2, 0.71, 31, 2.6, None),
    ('clear-night', 51.2, 3.7, 1, 112, 2.5, 85, 9.4, 0.68, 0, 2.8, 0.72),
    ('morning-far-from-its-zone', -37.8, 140.8, 10, 350, 7.5, 310, 14.6, 0.83, 356, 1.2, None),
]:
    given = {'latitude': f'{latitude} °', 'longitude': f'{longitude} °', 'hoursAheadOfUtc': ahead, 'dayOfYear': day, 'middleOfHour': f'{middle} h', 'elevation': f'{altitude} m',
             'airTemperature': f'{t} °C', 'relativeHumidity': humidity, 'globalRadiation': f'{radiation} W/m²', 'windSpeed': f'{wind} m/s', **({'relativeRadiation': at_night} if at_night else {})}
    checks.append(check(name, 'hourlyReferenceEvapotranspiration', given, hourly(latitude, longitude, ahead, day, middle, altitude, t, humidity, radiation, wind, at_night), 'equations 28 to 53 of an hour'))

body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Evapotranspiration outdoors, with the sun by quadrature",\n  "checks": [\n' + body + '\n  ]\n}')
