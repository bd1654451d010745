"""Check values for laterals and their design: outlet by outlet, every number by halving an interval, every size or count tried in turn, and nothing of the library.

    python3 tests/makers/lateral-design.py > tests/references/laterals/design.json

Friction is Darcy-Weisbach: 64/Re up to Re 2000, Colebrook-White (its fixed point, until it no longer moves) from Re 4000, and between them both, mixed by
t^2 (3 - 2t), t = (Re - 2000)/2000; or Hazen-Williams. Other laws of friction stand in a table of their own.
"""
import json
import math
import sys

G = 9.80665
LPH = 1 / 3.6e6
KPA = 1000.0
ROUGH = 1.5e-6
# Density of water at 101 325 Pa, kg/m3: IAPWS-95, by CoolProp 8.0.
DENSITY = {10: 999.7025, 20: 998.2072, 30: 995.6495}


def viscosity(celsius):
    """m2/s; IAPWS SR6-08, equation 7."""
    terms = [(280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.45903, -40)]
    return 1e-6 * sum(a * ((celsius + 273.15) / 300) ** b for a, b in terms) / DENSITY[celsius]


def colebrook(reynolds, rough):
    root, before = 8.0, 0.0
    while abs(root - before) > 1e-14 * root:
        root, before = -2 * math.log10(rough / 3.7 + 2.51 * root / reynolds), root
    return root ** -2


def darcy(reynolds, rough, law=colebrook):
    if reynolds <= 2000:
        return 64 / reynolds
    turbulent = law(reynolds, rough)
    t = min(1.0, (reynolds - 2000) / 2000)
    return (1 - t * t * (3 - 2 * t)) * 64 / reynolds + t * t * (3 - 2 * t) * turbulent


def churchill(reynolds, rough):
    a, b = (2.457 * math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * rough))) ** 16, (37530 / reynolds) ** 16
    return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)


# Of Darcy-Weisbach.
FACTORS = {
    'Colebrook-White': darcy,
    'Blasius': lambda re, rough: darcy(re, 0, lambda re, _: 0.3164 * re ** -0.25),
    'Bagarello': lambda re, rough: darcy(re, 0, lambda re, _: 0.302 * re ** -0.25),
    'Churchill': churchill,
}


def gradient(case, diameter, flow):
    if flow <= 0:
        return 0.0
    if case.get('law') == 'Watters-Keller':
        return 7.89e-4 * flow ** 1.75 * diameter ** -4.75
    if 'law' in case:
        return FACTORS[case['law']](4 * flow / (math.pi * diameter * case['viscosity']), case['rough'] / diameter) * 8 * flow ** 2 / (math.pi ** 2 * G * diameter ** 5)
    if 'c' in case:
        return 4.727 * 0.3048 ** -0.685 * (flow / case['c']) ** 1.852 * diameter ** -4.871
    reynolds = 4 * flow / (math.pi * diameter * viscosity(case.get('t', 20)))
    return darcy(reynolds, ROUGH / diameter) * 8 * flow ** 2 / (math.pi ** 2 * G * diameter ** 5)


def emitted(reach, head, pascals, share=1.0):
    """m3/s. Compensating: by the square root of the head below its range, less the closing head, and above it."""
    if head <= 0:
        return 0.0
    nominal = share * reach['q'] * LPH
    power = lambda h: nominal * (h * pascals / (reach['p'] * KPA)) ** reach['x']
    if 'range' not in reach:
        return power(head)
    opening, highest, closing = (p * KPA / pascals for p in reach['range'])
    if head < opening:
        return 0.0 if head <= closing else power(opening) * math.sqrt((head - closing) / (opening - closing))
    return power(head) if head <= highest else power(highest) * math.sqrt(head / highest)


def losses(reach):
    """Coefficient and length of pipe that a connection loses."""
    diameter, k = reach['d'] / 1000, reach.get('connection', {})
    if 'barb' in k:
        factor, power = {'large': (23.04, 1.84), 'standard': (18.91, 1.87), 'small': (14.38, 1.89)}[k['barb']]
        return 0.0, factor * reach['d'] ** -power
    if 'barbArea' in k:
        r = 1 - float(k['barbArea'].split()[0]) * 1e-6 / (math.pi / 4 * diameter ** 2)
        index = ((1 - r) / r) ** 2
        return (1.68 * index ** 0.645 if k.get('barbFormula') == 'Bagarello' else 1.23 * index ** 0.51), 0.0
    if 'passageDiameter' in k:
        return 0.056 * ((reach['d'] / float(k['passageDiameter'].split()[0])) ** 17.83 - 1), 0.0
    return k.get('lossCoefficient', 0.0), 0.0


def reaches(case):
    """What a further reach leaves out is as before it, but its first spacing."""
    before, found = case, [case]
    for more in case.get('further', []):
        before = {**{key: before[key] for key in ('s', 'd', 'slope', 'q', 'p', 'x', 'range', 'connection') if key in before}, **more}
        found.append(before)
    return found


def pascals_of(case):
    return DENSITY[case.get('t', 20)] * G


def warmth(case, exponent):
    if 'stated' not in case or exponent <= 0.5:
        return 1.0
    return (viscosity(case['stated']) / viscosity(case.get('t', 20))) ** (2 * exponent - 1)


def upstream(case, end_head, end_flow=0.0):
    """Heads, flows, inlet head and inlet flow."""
    pascals, running = pascals_of(case), 1 - case.get('clogged', 0)
    head, flow, moving = end_head, end_flow, 0.0
    heads, flows = [], []
    for reach in reversed(reaches(case)):
        diameter = reach['d'] / 1000
        area = math.pi / 4 * diameter ** 2
        k, extra = losses(reach)
        for i in reversed(range(reach['n'])):
            q = emitted(reach, head, pascals, running * warmth(case, reach['x']))
            heads.append(head)
            flows.append(q)
            flow += q
            length = reach.get('first', reach['s']) if i == 0 else reach['s']
            velocity_head = (flow / area) ** 2 / (2 * G)
            head += gradient(case, diameter, flow) * (length + extra) + k * velocity_head + reach.get('slope', 0) * length
            if case.get('velocity'):
                # The pressure is lower by what the water moves with.
                head += moving - velocity_head
                moving = velocity_head
    return heads[::-1], flows[::-1], head, flow


def halve(wanted, low, high):
    """Where a growing function is none."""
    for _ in range(100):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        low, high = (middle, high) if wanted(middle) < 0 else (low, middle)
    return high


def along(case, inlet_head):
    rise = sum(reach.get('slope', 0) * (reach.get('first', reach['s']) + (reach['n'] - 1) * reach['s']) for reach in reaches(case))
    end = halve(lambda head: upstream(case, head)[2] - inlet_head, 0.0, inlet_head + abs(rise) + 1)
    return upstream(case, end)


def measures(flows, clogged=0.0):
    """Of emitters, a tenth part of each clogged where that is so: every flow stands ten times, as often none as emitters are clogged."""
    least, most = min(flows), max(flows)
    if clogged:
        none = round(10 * clogged)
        flows = [q for flow in flows for q in [0.0] * none + [flow] * (10 - none)]
    n, mean = len(flows), sum(flows) / len(flows)
    quarter = sorted(flows)[:max(1, n // 4)]
    return {'flowVariation': (most - least) / most,
            'lowQuarterUniformity': sum(quarter) / len(quarter) / mean,
            'christiansenUniformity': 1 - sum(abs(q - mean) for q in flows) / n / mean,
            'statisticalUniformity': 1 - math.sqrt(sum((q - mean) ** 2 for q in flows) / n) / mean}


# What the library is given ------------------------------------------------------------------------------------------------------------

def compensation(reach):
    opening, highest, closing = reach['range']
    return {'openingPressure': f'{opening} kPa', 'regulatedUpTo': f'{highest} kPa', 'closingPressure': f'{closing} kPa'}


def emitter(reach):
    return {'emitterFlow': f"{reach['q']} L/h", 'emitterPressure': f"{reach['p']} kPa", 'emitterExponent': reach['x'], **({'compensation': compensation(reach)} if 'range' in reach else {})}


def pipe(reach):
    words = {'outlets': reach.get('n'), 'spacing': f"{reach['s']} m" if 's' in reach else None, 'firstSpacing': f"{reach['first']} m" if 'first' in reach else None,
             'diameter': f"{reach['d']} mm" if 'd' in reach else None, 'slope': f"{reach['slope'] * 100:.6g} %" if 'slope' in reach else None, 'connection': reach.get('connection')}
    return {name: value for name, value in words.items() if value is not None}


def given(case):
    further = [{**pipe(reach), **({'emitter': emitter(reach)} if 'q' in reach else {})} for reach in case.get('further', [])]
    return {**pipe(case), **emitter(case), **({'furtherReaches': further} if further else {}),
            **({'friction': 'Hazen-Williams', 'hazenWilliamsCoefficient': case['c']} if 'c' in case else {}),
            **({'waterTemperature': f"{case['t']} °C"} if 't' in case else {}), **({'emitterTemperature': f"{case['stated']} °C"} if 'stated' in case else {}),
            **({'velocityHeadCounts': True} if case.get('velocity') else {}), **({'cloggedShare': case['clogged']} if 'clogged' in case else {})}


WHERE = 'tests/makers/lateral-design.py: '
checks = []


def check(id, of, input, expect, tolerance, where):
    checks.append({'id': id, 'of': 'laterals/' + of, 'input': input, 'expect': expect, 'tolerance': tolerance, 'source': {'kind': 'independent calculation', 'where': WHERE + where}})


ROW = {'n': 100, 's': 0.5, 'd': 13.6, 'q': 4, 'p': 100, 'x': 0.5}
# What the digits of the water's density are good for, and that it is taken at 100 kPa there.
CLOSE = '0.0005 %'


def lateral(id, case, where, inlet=None, mean=None):
    pascals = pascals_of(case)
    if mean is None:
        inlet_head = inlet * KPA / pascals
    else:
        count = sum(reach['n'] for reach in reaches(case))
        inlet_head = halve(lambda head: along(case, head)[3] / count - mean * LPH, 0.1, 100.0)
    heads, flows, _, inlet_flow = along(case, inlet_head)
    nominal = [reach['q'] for reach in reaches(case) for _ in range(reach['n'])]
    even = measures([q / wanted for q, wanted in zip(flows, nominal)], case.get('clogged', 0))
    shown = sorted({0, len(heads) // 3, 2 * len(heads) // 3, len(heads) - 1})
    expect = {'inletFlow': f'{inlet_flow / LPH:.6f} L/h', 'inletPressure': f'{inlet_head * pascals / KPA:.6f} kPa'}
    for i in shown:
        expect[f'pressures[{i}]'] = f'{heads[i] * pascals / KPA:.6f} kPa'
        expect[f'flows[{i}]'] = f"{flows[i] / LPH / (1 - case.get('clogged', 0)):.6f} L/h"
    tolerance = {path: CLOSE for path in expect}
    for name, value in even.items():
        expect[name] = f'{100 * value:.5f} %'
        tolerance[name] = 0.0005
    how = {'inletPressure': f'{inlet} kPa'} if mean is None else {'meanEmitterFlow': f'{mean} L/h'}
    check(id, 'lateral', {**given(case), **how}, expect, tolerance, where)


# Design -------------------------------------------------------------------------------------------------------------------------------

def unevenness(case, inlet_head, limit):
    """As a share of what is allowed; None where water does not reach every emitter."""
    heads, flows, _, inlet_flow = along(case, inlet_head)
    if min(heads) < 1e-3 * case['p'] * KPA / pascals_of(case) or min(flows) <= 0:
        return None
    if 'mostFlowVariation' in limit:
        return measures(flows)['flowVariation'] / limit['mostFlowVariation']
    return (1 - evenness(flows, limit)) / (1 - limit['leastEmissionUniformity'])


def evenness(flows, limit):
    return (1 - 1.27 * limit.get('manufacturingVariation', 0) / math.sqrt(limit.get('emittersPerPlant', 1))) * min(flows) * len(flows) / sum(flows)


def keeps(case, inlet_head, limit):
    found = unevenness(case, inlet_head, limit)
    return found is not None and found <= 1


def described(case, inlet_head, limit):
    heads, flows, _, inlet_flow = along(case, inlet_head)
    return {'length': f"{case.get('first', case['s']) + (case['n'] - 1) * case['s']:.6f} m", 'inletFlow': f'{inlet_flow / LPH:.6f} L/h',
            'endPressure': f'{heads[-1] * pascals_of(case) / KPA:.6f} kPa', 'lowestFlow': f'{min(flows) / LPH:.6f} L/h', 'highestFlow': f'{max(flows) / LPH:.6f} L/h',
            'flowVariation': f"{100 * measures(flows)['flowVariation']:.5f} %", 'emissionUniformity': f'{100 * evenness(flows, limit):.5f} %'}


def tolerances(expect, shares=0.0005):
    return {path: shares if path in ('flowVariation', 'emissionUniformity') else CLOSE for path in expect if path not in ('outlets', 'diameter')}


def longest(id, case, inlet, limit, where):
    inlet_head = inlet * KPA / pascals_of(case)
    n = 1
    while keeps({**case, 'n': n + 1}, inlet_head, limit):
        n += 1
    expect = {'outlets': n, **described({**case, 'n': n}, inlet_head, limit)}
    input = {**given(case), 'inletPressure': f'{inlet} kPa', **limit}
    del input['outlets']
    check(id, 'longestLateral', input, expect, tolerances(expect), where)


def barb_fits(case, d):
    return 'barbArea' not in case.get('connection', {}) or float(case['connection']['barbArea'].split()[0]) <= 0.8 * math.pi / 4 * d ** 2


def smallest(id, case, inlet, limit, diameters, where, series=None):
    inlet_head = inlet * KPA / pascals_of(case)
    d = next(d for d in sorted(diameters) if barb_fits(case, d) and keeps({**case, 'd': d}, inlet_head, limit))
    found = described({**case, 'd': d}, inlet_head, limit)
    expect = {'diameter': f'{d} mm', **found}
    input = {**given(case), 'inletPressure': f'{inlet} kPa', **limit, **({'pipeSeries': series} if series else {'diameters': {'unit': 'mm', 'values': diameters}})}
    del input['diameter']
    check(id, 'smallestPipe', input, expect, {**tolerances(expect), 'diameter': '1e-9 %'}, where)


def pressures(id, case, limit, where):
    """The first range from 1 kPa up, in steps of a hundredth, its ends then closed in."""
    pascals = pascals_of(case)
    good = lambda kpa: keeps(case, kpa * KPA / pascals, limit)
    def close(bad, kept):
        for _ in range(40):
            middle = (bad * kept) ** 0.5
            bad, kept = (bad, middle) if good(middle) else (middle, kept)
        return kept
    steps = [1000 ** (i / 700) for i in range(701)]
    kept = [good(kpa) for kpa in steps]
    first = kept.index(True)
    lowest = close(steps[first - 1], steps[first]) if first else 1.0
    expect = {'inletPressure': f'{lowest:.6f} kPa'}
    if False in kept[first:]:
        last = first + kept[first:].index(False)
        expect['highestInletPressure'] = f'{close(steps[last], steps[last - 1]):.6f} kPa'
    expect.update(described(case, lowest * KPA / pascals, limit))
    # The library closes in to a millionth of the pressure.
    check(id, 'inletPressureForUniformity', {**given(case), **limit}, expect, tolerances(expect), where)


def flushing(id, case, inlet, velocity, where):
    pascals = pascals_of(case)
    diameter = reaches(case)[-1]['d'] / 1000
    area = math.pi / 4 * diameter ** 2
    def open_end(speed):
        """At the end the pressure is that of the air, and what the water moves with is lost."""
        _, _, head, flow = upstream(case, 0.0, speed * area)
        return head + speed ** 2 / (2 * G), flow
    head, flow = open_end(velocity)
    reached = halve(lambda speed: open_end(speed)[0] - inlet * KPA / pascals, 0.0, 100.0)
    expect = {'flushing.flushingFlow': f'{velocity * area / LPH:.6f} L/h', 'flushing.flushingInletFlow': f'{flow / LPH:.6f} L/h',
              'flushing.flushingInletPressure': f'{head * pascals / KPA:.6f} kPa', 'flushing.reachedVelocity': f'{reached:.7f} m/s'}
    check(id, 'lateral', {**given(case), 'inletPressure': f'{inlet} kPa', 'flushingVelocity': f'{velocity} m/s'}, expect, {path: CLOSE for path in expect}, where)


def friction_choice(id, case, where):
    """The plain formula, in m and m3/s, 10 m at the inlet."""
    case = {**case, 'p': 10 * pascals_of(case) / KPA}
    heads, _, _, inlet_flow = along(case, 10.0)
    law = case['law']
    choice = {'law': law} if law == 'Watters-Keller' else {'law': 'Darcy-Weisbach', 'frictionFactor': law, 'viscosity': case['viscosity'], 'roughness': case['rough']}
    layout = {'outlets': case['n'], 'spacing': case['s'], 'diameter': case['d'] / 1000, 'emitter': {'flow': case['q'] * LPH, 'head': 10, 'exponent': case['x']}, 'friction': choice}
    # The library meets the head at the inlet to a hundred-millionth of it.
    check(id, 'lateralFromInletHead', [layout, 10], {f"heads[{case['n'] - 1}]": heads[-1], 'inletFlow': inlet_flow}, {f"heads[{case['n'] - 1}]": 2e-7, 'inletFlow': '2e-6 %'}, where)


TROUGHS = {'n': 40, 's': 0.25, 'd': 13.6, 'q': 2, 'p': 100, 'x': 0.5}
COMPENSATING = {'n': 120, 's': 0.4, 'd': 13.6, 'q': 3, 'p': 100, 'x': 0.03, 'range': (60, 350, 0)}


def main():
    march = 'the lateral outlet by outlet from its end, the head there by halving'
    lateral('level-own-friction', ROW, march, inlet=100)
    lateral('cold-water', {**ROW, 't': 10, 'slope': -0.01}, march + '; water of 10 °C', inlet=80)
    lateral('laminar-emitters-warm', {**ROW, 'x': 1, 'n': 60, 't': 30, 'stated': 20}, march + '; the flow grows by the viscosity at 20 °C over that at 30 °C', inlet=100)
    lateral('vortex-passages-warm', {**ROW, 'x': 0.8, 'n': 60, 't': 30, 'stated': 10}, march + '; the flow grows by 0.6 power of the viscosities', inlet=70)
    lateral('turbulent-emitters-warm', {**ROW, 'n': 60, 't': 30, 'stated': 10}, march + '; turbulent emitters know no viscosity', inlet=70)
    lateral('three-reaches', {**ROW, 'n': 40, 'slope': 0.02, 'first': 3, 'further': [
        {'n': 30, 'd': 10.2, 'slope': -0.03, 'first': 0.2}, {'n': 25, 's': 0.3, 'q': 2, 'p': 100, 'x': 0.6}]}, march + ', reach by reach', inlet=150)
    lateral('three-reaches-hazen-williams', {**ROW, 'c': 140, 'n': 40, 'slope': 0.02, 'first': 3, 'further': [
        {'n': 30, 'd': 10.2, 'slope': -0.03, 'first': 0.2}, {'n': 25, 's': 0.3, 'q': 2, 'p': 100, 'x': 0.6}]}, march + ', reach by reach', inlet=150)
    lateral('velocity-head', {**ROW, 'n': 30, 'q': 40, 's': 0.2, 'velocity': True}, march + '; the water gains the head by which it slows down', inlet=100)
    lateral('velocity-head-two-sizes', {**ROW, 'n': 20, 'q': 30, 's': 0.2, 'velocity': True, 'further': [{'n': 10, 'd': 10.2}]}, march + '; the water gains the head by which it slows down', inlet=120)
    lateral('compensating-in-range', {**COMPENSATING, 'n': 60}, march, inlet=150)
    lateral('compensating-out-of-range', {**COMPENSATING, 'n': 200, 'range': (80, 160, 30)}, march + '; the far end is below the range, the near one above', inlet=200)
    lateral('anti-drain-uphill', {**COMPENSATING, 'n': 60, 'slope': 0.1, 'range': (50, 300, 20)}, march + '; the far end is below the range', inlet=64)
    lateral('barb-area-default', {**ROW, 'connection': {'barbArea': '25 mm²'}}, march + '; K = 1.23 IO^0.51', inlet=100)
    lateral('barb-area-bagarello', {**ROW, 'connection': {'barbArea': '25 mm²', 'barbFormula': 'Bagarello'}}, march + '; K = 1.68 IO^0.645, numbers from memory', inlet=100)
    lateral('in-line-passage', {**ROW, 'connection': {'passageDiameter': '12.8 mm'}}, march + '; K = 0.056 ((D/d)^17.83 - 1), numbers from memory', inlet=100)
    lateral('barbs-in-two-sizes', {**ROW, 'n': 40, 'connection': {'barb': 'large'}, 'further': [{'n': 40, 'd': 11.7}]}, march + '; fe = 23.04 D^-1.84 of each diameter, numbers from memory', inlet=100)
    lateral('clogged-tenth', {**ROW, 'clogged': 0.1}, march + ', each emitter giving nine tenths to the pipe; of ten emitters like it one gives nothing', inlet=100)
    lateral('wanted-mean-flow', {**ROW, 'slope': 0.02}, march + ', the head at the inlet by halving too', mean=3.5)
    lateral('wanted-mean-flow-two-reaches', {**ROW, 'n': 50, 'further': [{'n': 30, 'd': 10.2, 'q': 2, 'p': 100, 'x': 0.5}]}, march + ', the head at the inlet by halving too', mean=3)

    for law in [*FACTORS, 'Watters-Keller']:
        where = f'{march}; {law}' + (', factors from memory' if law in ('Bagarello', 'Watters-Keller') else '')
        friction_choice(f'row-of-100-{law}', {**ROW, 'law': law, 'viscosity': 1.02193e-6, 'rough': 1.5e-6}, where)
        friction_choice(f'fifty-compensating-{law}', {'n': 50, 's': 0.3, 'd': 13.6, 'q': 2, 'x': 0, 'law': law, 'viscosity': 1.0034e-6, 'rough': 0}, where)

    flushing('flush-level', {**ROW, 'n': 60}, 100, 0.5, 'the lateral from its open end')
    flushing('flush-two-sizes-uphill', {**ROW, 'n': 30, 'slope': 0.02, 'further': [{'n': 20, 'd': 10.2}]}, 60, 0.3, 'the lateral from its open end')
    flushing('flush-weak', {**ROW, 'd': 10.2, 'n': 120}, 100, 0.5, 'the lateral from its open end; the pressure given does not do')

    tried = 'one outlet more at a time until the limit is broken'
    variation, uniformity = {'mostFlowVariation': 0.1}, {'leastEmissionUniformity': 0.85, 'manufacturingVariation': 0.05, 'emittersPerPlant': 2}
    longest('longest-level', TROUGHS, 100, variation, tried)
    longest('longest-hazen-williams', {**TROUGHS, 'c': 150}, 100, variation, tried)
    longest('longest-uphill', {**TROUGHS, 'slope': 0.03}, 100, variation, tried)
    longest('longest-downhill', {**TROUGHS, 'slope': -0.02}, 60, {'mostFlowVariation': 0.05}, tried)
    longest('longest-for-emission-uniformity', TROUGHS, 100, uniformity, tried)
    longest('longest-barbs', {**TROUGHS, 'connection': {'barb': 'standard'}}, 100, variation, tried)
    longest('longest-compensating', COMPENSATING, 150, variation, tried)
    longest('longest-laminar', {**TROUGHS, 'x': 1, 'first': 1}, 80, {'mostFlowVariation': 0.2}, tried)

    sizes = 'the diameters from the smallest on until one keeps the limit'
    smallest('smallest-drip-tubing', {**TROUGHS, 'n': 200}, 100, variation, [10.2, 13.6, 17], sizes, series='drip tubing')
    smallest('smallest-sdr-11', {**TROUGHS, 'n': 200, 'q': 8}, 150, variation, [16, 20.4, 26, 32.6, 40.8, 51.4], sizes, series='PE SDR 11')
    smallest('smallest-of-a-list', {**TROUGHS, 'n': 100, 'slope': 0.01}, 100, {'leastEmissionUniformity': 0.95}, [20.4, 9, 11.7, 8, 16, 10.4], sizes)
    smallest('smallest-downhill', {**TROUGHS, 'n': 100, 'slope': -0.02}, 60, {'mostFlowVariation': 0.08}, [6, 7, 8, 9, 10, 11, 12], sizes)

    smallest('smallest-that-barbs-fit', {**TROUGHS, 'connection': {'barbArea': '80 mm²'}}, 100, variation, [8, 10.2, 13.6, 17], sizes + '; a barb of more than four fifths of the pipe does not fit')

    ranges = 'pressures from 1 kPa on in steps of a hundredth, the ends of the first range that keeps the limit by halving'
    pressures('pressure-uphill', {**TROUGHS, 'slope': 0.05}, variation, ranges)
    pressures('pressure-emission-uniformity', {**TROUGHS, 'slope': 0.03, 'n': 60}, uniformity, ranges)
    pressures('pressure-compensating-uphill', {**COMPENSATING, 'slope': 0.1}, variation, ranges)
    pressures('pressure-level-laminar', {**TROUGHS, 'x': 1, 'n': 20, 'q': 40}, variation, ranges)
    pressures('pressure-laminar-emitters', {**TROUGHS, 'x': 1, 'n': 100, 'slope': 0.01, 'q': 4}, {'mostFlowVariation': 0.3}, ranges)

    print_ledger('Laterals, and their design')


def print_ledger(title):
    lines = ',\n'.join('    ' + json.dumps(check, ensure_ascii=False) for check in checks)
    sys.stdout.write('{\n  "title": "' + title + '",\n  "checks": [\n' + lines + '\n  ]\n}\n')


if __name__ == '__main__':
    main()
