"""Check values for houses: their size by quadrature of the roof's shape, their temperature in the sun by root finding.

    python3 tests/makers/houses.py > tests/references/heat/houses-by-quadrature.json

Shares no code with src/.
"""
import json
import math

import scipy
from scipy.integrate import quad
from scipy.optimize import brentq

WITH = f'scipy {scipy.__version__}'


def loss(name, shape, width, length, eaves, ridge, transfer, changes, inside, outside, screen, frame, density):
    rise = ridge - eaves
    if shape == 'arch':
        radius = (rise ** 2 + width ** 2 / 4) / (2 * rise)
        roof = lambda x: math.sqrt(radius ** 2 - x ** 2) + rise - radius
        line = 2 * quad(lambda y: radius / math.sqrt(radius ** 2 - y ** 2), 0, width / 2)[0]
    else:
        roof = lambda x: rise * (1 - 2 * abs(x) / width)
        line = 2 * math.hypot(width / 2, rise)
    section = 2 * quad(roof, 0, width / 2, epsabs=1e-13)[0]
    cover, volume = 2 * eaves * (width + length) + 2 * section + line * length, (width * eaves + section) * length
    through, leaked = (1 + frame) * (1 - screen) * transfer * cover * (inside - outside), changes / 3600 * volume * density * 1006 * (inside - outside)
    return {'id': name, 'of': 'heat/houseHeatLoss', 'input': {
        'houseShape': shape, 'houseWidth': f'{width} m', 'houseLength': f'{length} m', 'eavesHeight': f'{eaves} m', 'ridgeHeight': f'{ridge} m', 'coverHeatTransfer': f'{transfer} W/(m²·K)',
        'airChanges': f'{changes} 1/h', 'houseTemperature': f'{inside} °C', 'outsideTemperature': f'{outside} °C', 'screenSaving': screen, 'frameAllowance': frame, 'airDensity': f'{density} kg/m³',
    }, 'expect': {'coverArea': f'{cover:.8f} m²', 'houseVolume': f'{volume:.8f} m³', 'transmissionLoss': f'{through:.6f} W', 'infiltrationLoss': f'{leaked:.6f} W', 'heatLoss': f'{through + leaked:.6f} W'},
        'tolerance': '1e-6 %', 'source': {'kind': 'independent calculation', 'where': f'area and volume by quadrature of the roof ({WITH}), U A ΔT and n V ρcp ΔT'}}


def balance(name, sun, transmission, evaporated, shade, floor, cover, transfer, outside, inlet, outlet, height, both, wind, wind_coefficient, fan, volume, changes, density):
    area = inlet if outlet is None else math.sqrt(2) * inlet * outlet / math.hypot(inlet, outlet)
    gain = (1 - shade) * transmission * sun * floor * (1 - evaporated)

    def flow(rise):
        coefficient, neutral = (0.40 + 0.0045 * rise, height) if both else (0.65, height / 2)
        stack = coefficient * area * math.sqrt(2 * 9.81 * neutral * rise / (outside + 273.15 + rise))
        return math.hypot(stack, wind_coefficient * area * wind) + fan + changes / 3600 * volume

    rise = brentq(lambda x: transfer * cover * x + density * 1006 * flow(x) * x - gain, 0, 200, xtol=1e-13)
    given = {'globalRadiation': f'{sun} W/m²', 'coverTransmission': transmission, 'evaporativeShare': evaporated, 'shadingShare': shade, 'floorArea': f'{floor} m²', 'coverArea': f'{cover} m²',
             'coverHeatTransfer': f'{transfer} W/(m²·K)', 'outsideTemperature': f'{outside} °C', 'ventArea': f'{inlet} m²', 'windSpeed': f'{wind} m/s', 'windCoefficient': wind_coefficient,
             'fanFlow': f'{fan} m³/s', 'houseVolume': f'{volume} m³', 'airChanges': f'{changes} 1/h', 'airDensity': f'{density} kg/m³',
             **({'bothWays': True, 'neutralHeight': f'{height} m'} if both else {'heightBetweenVents': f'{height} m'}), **({'outletArea': f'{outlet} m²'} if outlet else {})}
    return {'id': name, 'of': 'heat/houseTemperature', 'input': given, 'expect': {'temperatureRise': f'{rise:.9f} K', 'ventilationFlow': f'{flow(rise):.9f} m³/s', 'solarGain': f'{gain:.6f} W', 'ventilationLoss': f'{density * 1006 * flow(rise) * rise:.6f} W'},
            'tolerance': '1e-6 %', 'source': {'kind': 'independent calculation', 'where': f'gain = U A ΔT + ρcp Q(ΔT) ΔT by brentq of {WITH}'}}


checks = [
    loss('low-arch-on-walls', 'arch', 5, 8, 0.9, 2.6, 6.8, 1.05, 6, -7, 0, 0.1, 1.27),
    loss('flat-arch-with-a-screen', 'arch', 6.4, 12, 1.8, 2.9, 4, 0.8, 12, -2, 0.3, 0.05, 1.24),
    loss('lean-gable', 'gable', 3.2, 8, 1.9, 3.1, 3.7, 0.7, 10, -4, 0.3, 0.08, 1.25),
    balance('side-and-ridge-vents', 780, 0.68, 0.45, 0, 40, 82.5, 6.8, 24, 2.4, 1.6, 1.9, False, 1.2, 0.3, 0, 78.5, 1, 1.17),
    balance('two-doors-in-still-air', 690, 0.7, 0.2, 0.35, 40, 82.5, 6.8, 22, 1.9, None, 0.42, True, 0, 0.3, 0, 78.5, 2, 1.18),
    balance('fan-and-cracks', 560, 0.6, 0.5, 0.2, 40, 85.7, 4, 17, 0.5, 0.5, 1.5, False, 2.5, 0.3, 0.4, 82.7, 0.8, 1.2),
]
body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Houses by quadrature and root finding",\n  "checks": [\n' + body + '\n  ]\n}')
