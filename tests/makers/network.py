"""Check values for networks of pipes: rings by loop corrections until nothing moves, the rest by hand, and nothing of the library.

    python3 tests/makers/network.py > tests/references/supply/network.json
"""
import json
import math

G = 9.80665
WATER_20 = 998.2065464  # kg/m3, as in the check values of laterals
WATER_EPANET = 998.358456  # where water has the viscosity of EPANET, 1.02193e-6 m2/s: 19.24969412 degC

# Three rings of ten pipes, of which each flow is counted in the direction of the first ring that holds its pipe (Maurer, example 4.7).
DIAMETERS = [0.3, 0.2, 0.2, 0.2, 0.2, 0.15, 0.25, 0.15, 0.15, 0.25]
LENGTHS = [250, 100, 125, 125, 100, 100, 125, 100, 100, 125]
RINGS = [[(1, 1), (2, 1), (3, 1), (4, 1), (5, 1)], [(4, -1), (6, 1), (7, 1), (8, 1)], [(3, -1), (9, 1), (10, 1), (6, -1)]]
STARTS = [0.040, 0.040, 0.02, -0.02, -0.04, 0, 0, -0.02, 0.02, 0]
# The same as places: a feeds 0.08 m3/s; d, g and h draw.
ENDS = [(0, 1), (1, 2), (2, 3), (3, 4), (4, 0), (3, 5), (5, 6), (6, 4), (2, 7), (7, 5)]
DRAWN = {3: 0.04, 6: 0.02, 7: 0.02}
ROUGH = 0.25e-3
PRINTED = {
    'rough': [.0383, .0383, .0232, -.0258, -.0417, .0090, .0041, -.0159, .0151, -.0049],
    'colebrook': [.0382, .0382, .0230, -.0258, -.0418, .0088, .0040, -.0160, .0152, -.0048],
}


def fully_rough(diameter, flow, viscosity):
    return (2 * math.log10(3.7 * diameter / ROUGH)) ** -2


def colebrook(diameter, flow, viscosity):
    reynolds = 4 * abs(flow) / (math.pi * diameter * viscosity)
    if reynolds < 2000:
        return 64 / max(reynolds, 1e-9)
    root = 8.0
    for _ in range(60):
        root = -2 * math.log10(ROUGH / (3.7 * diameter) + 2.51 * root / reynolds)
    return root ** -2


def ring_flows(factor, viscosity, rounds):
    """Hardy Cross: each ring is corrected by the sum of its losses over that of their slopes, all from the flows before the round."""
    flows = list(STARTS)
    loss = lambda i: (8 * factor(DIAMETERS[i], flows[i], viscosity) * LENGTHS[i] / (math.pi ** 2 * G * DIAMETERS[i] ** 5)) * flows[i] * abs(flows[i])
    def correction(ring):
        lost = sum(sign * loss(pipe - 1) for pipe, sign in ring)
        return lost / sum(2 * abs(loss(pipe - 1) / flows[pipe - 1]) for pipe, _ in ring if flows[pipe - 1] != 0)
    for _ in range(rounds):
        for ring, back in [(ring, correction(ring)) for ring in RINGS]:
            for pipe, sign in ring:
                flows[pipe - 1] -= sign * back
    return flows


checks = []


def check(id, of, input, expect, tolerance, kind, where, key=None, mark=None):
    source = {'kind': kind, **({'key': key} if key else {}), 'where': where, **({'mark': mark} if mark else {})}
    checks.append({'id': id, 'of': 'supply/' + of, 'input': input, 'expect': expect, 'tolerance': tolerance, 'source': source})


def pipe(ends, length, diameter, more={}):
    return {'kind': 'pipe', 'from': ends[0], 'to': ends[1], 'length': length, 'diameter': diameter, **more}


def darcy(roughness, viscosity):
    return {'law': 'Darcy-Weisbach', 'roughness': roughness, 'viscosity': viscosity}


rings = {
    'nodes': [{'elevation': 0, **({'head': 100} if i == 0 else {}), **({'demand': DRAWN[i]} if i in DRAWN else {})} for i in range(8)],
    'links': [pipe(ends, length, diameter) for ends, length, diameter in zip(ENDS, LENGTHS, DIAMETERS)],
}
for name, factor, viscosity, said in [('rough', fully_rough, 1e-15, 'friction factors fixed at their fully rough values for 0.25 mm, here by a viscosity of all but nothing'),
                                      ('colebrook', colebrook, 1.023e-6, 'Colebrook-White at 0.25 mm and 1.023e-6 m2/s')]:
    network = {**rings, 'friction': darcy(ROUGH, viscosity)}
    at = lambda flows: {f'flows[{i}]': q for i, q in enumerate(flows)}
    third, last = ring_flows(factor, viscosity, 3), ring_flows(factor, viscosity, 300)
    off = max(abs(a - b) for a, b in zip(third, PRINTED[name]))
    assert off <= 0.00005, off
    left = max(abs(a - b) for a, b in zip(third, last))
    check(f'three-rings-{name}', 'solveNetwork', [network], at(PRINTED[name]), float('%.2g' % (left + 0.00005)), 'published',
          f'example 4.7, table after three rounds of corrections, from where further rounds move flows by up to {left:.2g} m3/s (tests/makers/network.py); {said}', 'maurer-hydraulics', 'seen')
    check(f'three-rings-{name}-to-the-end', 'solveNetwork', [network], {k: float('%.9g' % v) for k, v in at(last).items()}, 2e-8,
          'independent calculation', f'the same after 300 rounds by tests/makers/network.py, of which three give the published table; {said}')

check('two-parallel-pipes', 'solveNetwork', [{
    'nodes': [{'elevation': 0, 'head': 100}, {'elevation': 0, 'demand': 0.5}],
    'links': [pipe((0, 1), 400, 0.2), pipe((0, 1), 600, 0.3)], 'friction': darcy(0.025e-3, 3.029e-7),
}], {'flows[0]': 0.15, 'flows[1]': 0.35, 'heads[1]': 70.0}, {'flows[0]': 0.005, 'flows[1]': 0.005, 'heads[1]': 0.05}, 'published',
    'example 4.6: 0.5 m3/s through 400 m of 0.2 m and 600 m of 0.3 m, 0.025 mm rough, water of 100 degC: 0.15 and 0.35 m3/s, 30.0 m lost', 'maurer-hydraulics', 'seen')

# A pump, a main, a manifold and four laterals, run in EPANET 2.3.
ROW = {'outlets': 20, 'spacing': '0.35 m', 'diameter': '13.6 mm', 'emitterFlow': '8 L/h', 'emitterExponent': 0.5, 'zone': 'troughs'}
CURVE = [{'flow': '0 L/min', 'head': '35 m'}, {'flow': '20 L/min', 'head': '28 m'}, {'flow': '40 L/min', 'head': '12 m'}]


def garden(density, more, ring=()):
    at = lambda name: {'name': name, 'height': '1 m'}
    return {
        'nodes': [{'name': 'barrel', 'height': '0.5 m', 'keptPressure': '0 kPa'}, at('pump outlet'), at('end of the main'), *[at(f'm{i}') for i in range(1, 5)]],
        'pumps': [{'name': 'pump', 'from': 'barrel', 'to': 'pump outlet', 'pumpCurve': CURVE, 'curveShape': 'power law'}],
        'pipes': [
            {'name': 'main', 'from': 'pump outlet', 'to': 'end of the main', 'length': '8 m', 'diameter': '20.4 mm', 'lossCoefficient': 5},
            *[{'name': f'manifold {i}', 'from': 'end of the main' if i == 1 else f'm{i - 1}', 'to': f'm{i}', 'length': '0.6 m' if i == 1 else '1.2 m', 'diameter': '16 mm'} for i in range(1, 5)],
            *ring,
        ],
        'dripLaterals': [{'name': f'row {i}', 'from': f'm{i}', 'emitterPressure': f'{density * G * 10 / 1000:.6f} kPa', **ROW} for i in range(1, 5)],
        **more,
    }


def garden_tolerances(expect):
    return {k: ('0.005 m' if v.endswith(' m') else '0.0002 %' if k.endswith('Uniformity') else '0.05 %') for k, v in expect.items()}


def garden_check(id, input, heads, flows, pump, total, uniformity, pipes, where):
    expect = {'pumps[0].flow': f'{pump[0]} L/min', 'pumps[0].head': f'{pump[1]} m', **{f'nodes[{3 + i}].hydraulicHead': f'{round(h + 1, 5)} m' for i, h in enumerate(heads)},
              'dripLaterals[0].flows[0]': f'{flows[0]} L/h', 'dripLaterals[0].flows[19]': f'{flows[1]} L/h', 'dripLaterals[3].flows[19]': f'{flows[2]} L/h',
              'zones[0].zoneFlow': f'{total} L/h', 'zones[0].lowQuarterUniformity': f'{uniformity} %', **{f'pipes[{i}].flow': f'{q} L/min' for i, q in pipes.items()}}
    check(id, 'pipeNetwork', input, expect, garden_tolerances(expect), 'independent program', where, 'epanet-2.3', 'seen')


garden_check('garden-hazen-williams-ring', garden(WATER_20, {'friction': 'Hazen-Williams', 'hazenWilliamsCoefficient': 150},
             [{'name': 'ring', 'from': 'end of the main', 'to': 'm4', 'length': '5 m', 'diameter': '16 mm'}]),
             [28.08251, 28.04078, 28.03231, 28.03362], [13.40395, 13.38881, 13.37715], (17.84617, 29.24333), 1070.770, 99.9472, {5: 5.65319, 4: -1.19273},
             'EPANET 2.3 (build 473b87d) run on the same network, Hazen-Williams with C = 150 and a ring')
garden_check('garden-darcy-weisbach', garden(WATER_EPANET, {'frictionFactor': 'Swamee-Jain', 'waterTemperature': '19.24969412 °C'}),
             [28.02099, 27.89498, 27.83286, 27.81401], [13.38873, 13.36996, 13.32048], (17.79194, 29.27331), 1067.517, 99.8436, {1: 17.79194, 2: 13.33357, 3: 8.88524, 4: 4.44187},
             'EPANET 2.3 (build 473b87d) run on the same network, Darcy-Weisbach at 0.0015 mm, at the temperature where water has its viscosity; its gravity of 32.2 ft/s2 makes 0.08 % less friction, which is 1.2 mm of head and 0.00013 % of uniformity')

kilopascals = lambda metres, density=WATER_20: f'{metres * density * G / 1000:.6f} kPa'
check('lateral-hazen-williams', 'pipeNetwork', {
    'nodes': [{'name': 'inlet', 'keptPressure': kilopascals(10)}], 'friction': 'Hazen-Williams', 'hazenWilliamsCoefficient': 150,
    'dripLaterals': [{'name': 'row', 'from': 'inlet', 'outlets': 100, 'spacing': '0.5 m', 'diameter': '13.6 mm', 'emitterFlow': '4 L/h', 'emitterPressure': kilopascals(10), 'emitterExponent': 0.5}],
}, {'dripLaterals[0].inletFlow': '385.4209 L/h', 'dripLaterals[0].endPressure': kilopascals(9.04253), 'dripLaterals[0].pressures[9]': kilopascals(9.75034), 'dripLaterals[0].flows[0]': '3.99455 L/h', 'dripLaterals[0].flows[49]': '3.83157 L/h', 'dripLaterals[0].flows[99]': '3.80369 L/h'},
      {'dripLaterals[0].inletFlow': '0.0024 L/h', 'dripLaterals[0].endPressure': '1.5e-4 kPa', 'dripLaterals[0].pressures[9]': '1.5e-4 kPa', **{f'dripLaterals[0].flows[{i}]': '2.9e-5 L/h' for i in (0, 49, 99)}},
      'independent program', 'EPANET 2.3 (build 473b87d) run on the same lateral, its pressures as those of water of 998.2065464 kg/m3; flows allow for its 28.317 L in a cubic foot (6e-6), pressures for what that does to friction', 'epanet-2.3', 'seen')

# A pump between two open waters 10 m apart, through 100 m of 50 mm with a Darcy factor of 0.02 and the velocity head at its end: 41 velocity heads.
duty = {
    'nodes': [{'name': 'lower', 'keptPressure': '0 kPa'}, {'name': 'outlet'}, {'name': 'upper', 'height': '10 m', 'keptPressure': '0 kPa'}],
    'pumps': [{'name': 'pump', 'from': 'lower', 'to': 'outlet', 'pumpCurve': [{'flow': f'{q} m³/s', 'head': f'{h} m'} for q, h in zip([0, .002, .004, .006, .008, .01], [40, 39.5, 38, 35, 30, 20])]}],
    'pipes': [{'name': 'rising main', 'from': 'outlet', 'to': 'upper', 'length': '0 m', 'diameter': '50 mm', 'lossCoefficient': 41}],
}
check('pump-duty', 'pipeNetwork', duty, {'pumps[0].flow': '0.0066 m³/s', 'pumps[0].head': '34 m'}, {'pumps[0].flow': '0.00005 m³/s', 'pumps[0].head': '0.5 m'}, 'published',
      'example 9.10: H = 10 + 5.42·10⁵ Q², duty at 0.0066 m³/s and 34 m, read off a drawing; its pipe here as its 40 velocity heads and one at the end', 'schaschke', 'seen')
head_at = lambda q: 12 - 70 * q - 4300 * q * q
recycled = 2 * math.pi / 4 * 0.1 ** 2
check('pump-recycling', 'pipeNetwork', {
    'nodes': [{'name': 'tank', 'keptPressure': '0 kPa'}, {'name': 'inlet'}, {'name': 'outlet'}],
    'pumps': [{'name': 'pump', 'from': 'inlet', 'to': 'outlet', 'pumpCurve': [{'flow': f'{q:.9f} m³/s', 'head': f'{head_at(q):.9f} m'} for q in [0, 0.004, 0.008, 0.012, recycled, 0.02, 0.024]]}],
    'pipes': [{'name': 'suction', 'from': 'tank', 'to': 'inlet', 'length': '0 m', 'diameter': '100 mm', 'lossCoefficient': 0.4}, {'name': 'return', 'from': 'outlet', 'to': 'tank', 'length': '0 m', 'diameter': '100 mm', 'lossCoefficient': 47.863}],
}, {'pumps[0].flow': '0.0157 m³/s', 'pipes[1].velocity': '2 m/s'}, {'pumps[0].flow': '0.00005 m³/s', 'pipes[1].velocity': '0.05 %'}, 'worked intermediate',
      'example 9.2: a restriction of K = 44.863 lets 2 m/s run in a circle of 2 m and 10 m of 100 mm, f = 0.02, and one velocity head; pipes here as their velocity heads, and at 9.80665 m/s² for its 9.81', 'schaschke', 'seen')

by_hand = lambda id, input, expect, tolerance, where: check(id, 'pipeNetwork', input, expect, tolerance, 'independent calculation', where + ', by hand')
emitters = lambda count: {'emitterCount': count, 'emitterFlow': '2 L/h', 'emitterPressure': '1 bar', 'emitterExponent': 0.5}
bare = {'length': '0 m', 'diameter': '20 mm'}
by_hand('barrel-above-emitters', {
    'nodes': [{'name': 'barrel', 'height': '1.2 m', 'keptPressure': '0 kPa'}, {'name': 'bench', 'emitters': emitters(24)}], 'pipes': [{'name': 'hose', 'from': 'barrel', 'to': 'bench', **bare}],
}, {'nodes[1].pressure': kilopascals(1.2), 'nodes[1].outflow': f'{48 * math.sqrt(1.2 * WATER_20 * G / 1e5):.9f} L/h'}, '1e-5 %', '24 · 2 L/h √(1.2 m of water of 998.2065464 kg/m³ over 1 bar), nothing lost on the way')
by_hand('barrel-through-a-valve', {
    'nodes': [{'name': 'barrel', 'height': '1.5 m', 'keptPressure': '0 kPa'}, {'name': 'can', 'keptPressure': '0 kPa'}], 'valves': [{'name': 'tap', 'from': 'barrel', 'to': 'can', 'flowCoefficient': '2 Kv'}],
}, {'valves[0].flow': f'{2 * math.sqrt(1.5 * G * 1000 / 1e5):.9f} m³/h'}, '0.0001 %', 'Q = Kv √(Δp/(ρ/1000)) with Δp in bar of 1.5 m of water: 2 √0.14709975 m³/h, whatever the density')
by_hand('valve-by-kv', {
    'nodes': [{'name': 'main', 'keptPressure': '300 kPa'}, {'name': 'tap', 'demand': '2 m³/h'}], 'valves': [{'name': 'valve', 'from': 'main', 'to': 'tap', 'flowCoefficient': '4 Kv'}],
}, {'valves[0].pressureDrop': f'{25 * WATER_20 / 1000:.9f} kPa', 'nodes[1].pressure': f'{300 - 25 * WATER_20 / 1000:.9f} kPa'}, '1e-5 %', '1 bar · 0.9982065464 · (2/4)²')
regulated = lambda kept: {
    'nodes': [{'name': 'main', 'keptPressure': kept}, {'name': 'zone', 'emitters': emitters(50)}], 'regulators': [{'name': 'regulator', 'from': 'main', 'to': 'zone', 'setPressure': '1.2 bar'}],
}
by_hand('regulator-regulates', regulated('4 bar'), {'regulators[0].outletPressure': '120 kPa', 'regulators[0].pressureDrop': '280 kPa', 'nodes[1].outflow': f'{100 * math.sqrt(1.2):.9f} L/h'}, '1e-5 %', '4 bar down to 1.2 bar: 100 L/h √1.2')
by_hand('regulator-open', regulated('0.8 bar'), {'regulators[0].outletPressure': '80 kPa', 'nodes[1].outflow': f'{100 * math.sqrt(0.8):.9f} L/h'}, '1e-5 %', '0.8 bar is below the 1.2 bar that it is set to: 100 L/h √0.8')
fast = 4 * (20 / 60000) / (math.pi * 0.026 ** 2)
by_hand('suction-side', {
    'nodes': [{'name': 'sump', 'keptPressure': '0 kPa'}, {'name': 'inlet', 'height': '3 m'}, {'name': 'outlet', 'height': '3 m', 'demand': '20 L/min'}],
    'pipes': [{'name': 'suction', 'from': 'sump', 'to': 'inlet', 'length': '0 m', 'diameter': '26 mm', 'lossCoefficient': 10}],
    'pumps': [{'name': 'pump', 'from': 'inlet', 'to': 'outlet', 'pumpCurve': CURVE, 'curveShape': 'power law'}],
}, {'nodes[1].pressure': kilopascals(-3 - 10 * fast ** 2 / (2 * G)), 'nodes[2].pressure': kilopascals(25 - 10 * fast ** 2 / (2 * G)), 'pumps[0].head': '28 m'}, '1e-5 %',
        '3 m up and ten velocity heads at 20 L/min in 26 mm; the pump has 28 m there')

print('{\n  "title": "Networks of pipes",\n  "checks": [\n' + ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks) + '\n  ]\n}')
