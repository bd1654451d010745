"""Check values for what a lateral gives in a shot: the front that fills it, and the surface that sinks in it, in some thousands of small steps, and nothing of the library.

    python3 tests/makers/line-filling.py > tests/references/laterals/line-filling.json

The pipe, its friction and its emitters are those of lateral-design.py beside this.
"""
import importlib
import math

design = importlib.import_module('lateral-design')
G, KPA, LPH = design.G, design.KPA, design.LPH
STEPS = 4000


def places(case):
    """Of each outlet: distance and height from the inlet, and the reach that leads to it."""
    at, height, found = 0.0, 0.0, []
    for reach in design.reaches(case):
        for i in range(reach['n']):
            length = reach.get('first', reach['s']) if i == 0 else reach['s']
            at, height = at + length, height + reach.get('slope', 0) * length
            found.append((at, height, reach))
    return found


def area(reach):
    return math.pi / 4 * (reach['d'] / 1000) ** 2


def lost(case, reach, length, flow, with_connection=True):
    """Head lost along a piece of pipe."""
    k, extra = design.losses(reach) if with_connection else (0.0, 0.0)
    return design.gradient(case, reach['d'] / 1000, flow) * (length + extra) + k * (flow / area(reach)) ** 2 / (2 * G)


def root(f, low, high):
    """Where a growing function is none: false position, and every third time halving."""
    below, above = f(low), f(high)
    for turn in range(200):
        middle = (low + high) / 2 if turn % 3 == 2 else low - below * (high - low) / (above - below)
        value = f(middle)
        if value < 0:
            low, below = middle, value
        else:
            high, above = middle, value
        if high - low <= 1e-12 * high or value == 0:
            break
    return middle


def filled(case, inlet_head, supply, until):
    """When the water comes to each outlet, what each gives by `until` or by when the line is full, when that is, and its volume."""
    outlets, pascals = places(case), design.pascals_of(case)
    step = outlets[-1][0] / STEPS
    time, line, volumes, arrivals, flow = 0.0, 0.0, [0.0] * len(outlets), [], None
    for j in range(STEPS):
        front = (j + 0.5) * step
        behind = [i for i, (at, _, _) in enumerate(outlets) if at <= front]
        reach = outlets[min(len(behind), len(outlets) - 1)][2]

        def state(at_front):
            """Head and flow at the inlet, and of each emitter: the air's pressure at the front, and what the water moves with."""
            tail = front - (outlets[behind[-1]][0] if behind else 0.0)
            head, flow, given = lost(case, reach, tail, at_front, False) + reach.get('slope', 0) * tail, at_front, {}
            for i in reversed(behind):
                at, height, own = outlets[i]
                given[i] = design.emitted(own, head, pascals)
                flow += given[i]
                before, low = outlets[i - 1][:2] if i else (0.0, 0.0)
                head += lost(case, own, at - before, flow) + height - low
            return head + (at_front / area(reach)) ** 2 / (2 * G), flow, given

        over = lambda q: max(state(q)[0] / inlet_head, state(q)[1] / supply) - 1
        high = flow or area(reach) * math.sqrt(2 * G * inlet_head)
        while over(high) < 0:
            high *= 1.1
        low = high * 0.9
        while over(low) > 0:
            low *= 0.8
        flow = root(over, low, high)
        took, given = area(reach) * step / flow, state(flow)[2]
        while len(arrivals) < len(outlets) and outlets[len(arrivals)][0] <= (j + 1) * step * (1 + 1e-12):
            arrivals.append(time + (outlets[len(arrivals)][0] / step - j) * took)
        for i, q in given.items():
            volumes[i] += q * max(0.0, min(time + took, until) - max(time, arrivals[i]))
        time, line = time + took, line + area(reach) * step
    return arrivals, volumes, time, line


def drained(case):
    """What each outlet gives after the inlet is shut, and when a volume has drained: from the high end the surface sinks to the last outlet of the low one."""
    outlets, pascals = places(case), design.pascals_of(case)
    numbered = [(at, height, i) for i, (at, height, _) in enumerate(outlets)]
    pipes = [reach for _, _, reach in outlets]
    if outlets[-1][1] > 0:
        # From the far end down; the pipe before the first outlet keeps its water.
        numbered = [(outlets[-1][0] - at, height, i) for at, height, i in reversed(numbered)]
        pipes = [outlets[-1][2]] + pipes[:0:-1]
    step, start = numbered[-1][0] / STEPS, max(0.0, numbered[0][1])
    volumes, course, time, total = [0.0] * len(outlets), [(0.0, 0.0)], 0.0, 0.0
    for j in range(STEPS):
        surface = (j + 0.5) * step
        first = next(k for k, (at, _, _) in enumerate(numbered) if at > surface)
        at_before, high_before = numbered[first - 1][:2] if first else (0.0, start)
        # Where the surface is, between the two outlets about it.
        share = (surface - at_before) / (numbered[first][0] - at_before)
        level = high_before + share * (numbered[first][1] - high_before)

        def state(end_head):
            """Head at the surface, the flow, and of each emitter."""
            head, flow, given = end_head, 0.0, {}
            for k in reversed(range(first, len(numbered))):
                at, height, i = numbered[k]
                given[i] = design.emitted(outlets[i][2], head, pascals)
                flow += given[i]
                before, above = numbered[k - 1][:2] if k > first else (surface, level)
                head += lost(case, pipes[k], at - before, flow) - (above - height)
            return head, flow, given

        fall = level - numbered[-1][1]
        _, flow, given = state(root(lambda head: state(head)[0], 0.0, fall * (1 + 1e-12)))
        if flow <= 0:
            break
        took = area(pipes[first]) * step / flow
        for i, q in given.items():
            volumes[i] += q * took
        time, total = time + took, total + flow * took
        course.append((time, total))

    def when(volume):
        (t0, v0), (t1, v1) = next(((before, after) for before, after in zip(course, course[1:]) if after[1] >= volume), ((time, total), (time, total + 1)))
        return t0 + (t1 - t0) * (volume - v0) / (v1 - v0)
    return volumes, when


def level_drained(case):
    """Each outlet has the water of its own length of pipe."""
    found = places(case)
    return [area(reach) * (at - before) for (at, _, reach), before in zip(found, [0.0] + [at for at, _, _ in found])]


def low_quarter(case, volumes):
    return design.measures([v / reach['q'] for v, (_, _, reach) in zip(volumes, places(case))])['lowQuarterUniformity']


# The library takes two hundred pieces of pipe where there are four thousand here, each with the flow at its middle: of what drains, and what is kept, a part of one counts.
TIMES, SHARES, PIECE = '0.1 %', 0.05, 0.005


def check(id, input, expect, tolerance, where):
    design.checks.append({'id': id, 'of': 'laterals/lineFilling', 'input': input, 'expect': expect, 'tolerance': tolerance, 'source': {'kind': 'independent calculation', 'where': where}})


def shot(id, case, inlet, run, where, supply=None, full=False, drains=True):
    inlet_head = inlet * KPA / design.pascals_of(case)
    arrivals, volumes, time, line = filled(case, inlet_head, supply / 60000 if supply else math.inf, run)
    flows = design.along(case, inlet_head)[1]
    if full:
        volumes, time = [0.0] * len(flows), 0.0
    in_shot = [v + q * max(0.0, run - time) for v, q in zip(volumes, flows)]
    last, middle = len(flows) - 1, len(flows) // 2
    expect, tolerance = {}, {}

    def put(path, value, unit, near, scale=1.0):
        expect[path] = f'{value * scale:.8f} {unit}'
        tolerance[path] = near

    def put_each(name, values, unit, near, scale):
        for i in (0, middle, last):
            put(f'{name}[{i}]', values[i], unit, near if values[i] else 1e-9, scale)
    if not full:
        put('fillTime', time, 's', TIMES)
        put(f'arrivalTimes[{middle}]', arrivals[middle], 's', TIMES)
        put(f'arrivalTimes[{last}]', arrivals[last], 's', TIMES)
    put('lineVolume', line, 'L', TIMES if 'further' in case else '1e-6 %', 1000)
    put_each('shotVolumes', in_shot, 'mL', TIMES, 1e6)
    put('lowQuarterUniformity', low_quarter(case, flows), '%', 0.0005, 100)
    if run >= time and drains:
        given, near = level_drained(case), PIECE / 10 * line
        if any(reach.get('slope') for reach in design.reaches(case)):
            given, when = drained(case)
            nearly, slack = 0.95 * sum(given), 0.005
            if any(reach.get('range', (0, 0, 0))[2] for reach in design.reaches(case)):
                # Where seals close is told to half a piece.
                near = PIECE / 2 * line
                slack = (when(nearly + near) - when(nearly - near)) / 2 / when(nearly) if nearly else 0
            if nearly:
                put('drainTime', when(nearly), 'min', f'{100 * slack:.2g} %', 1 / 60)
        near *= 1e6
        put_each('drainVolumes', given, 'mL', near, 1e6)
        put('keptVolume', line - sum(given), 'L', PIECE * line * 1000, 1000)
        total = [a + b for a, b in zip(in_shot, given)]
        put('firstEmitterVolume', total[0], 'mL', near + 0.001 * in_shot[0] * 1e6, 1e6)
        put('lastEmitterVolume', total[-1], 'mL', near + 0.001 * in_shot[-1] * 1e6, 1e6)
        put('shotUniformity', low_quarter(case, total), '%', SHARES, 100)
        put('uniformityTaken', low_quarter(case, flows) - low_quarter(case, total), '%', SHARES, 100)
    input = {**design.given(case), 'inletPressure': f'{inlet} kPa', **({'supplyFlow': f'{supply} L/min'} if supply else {}), 'runTime': f'{run} s', **({'startsFull': True} if full else {})}
    check(id, input, expect, tolerance, f'tests/makers/line-filling.py: {where}')


ROW = {'n': 28, 's': 0.25, 'd': 13.6, 'q': 2, 'p': 100, 'x': 0.5}


def main():
    front = 'the front in 4000 steps'
    surface = ', the sinking surface in 4000'
    anti_drain = {**ROW, 'x': 0.02, 'range': (60, 350, 8), 'slope': -0.05}
    shot('level-own-pressure', ROW, 100, 120, front)
    shot('level-supply', ROW, 100, 60, front + ', as fast as the supply gives', supply=2.5)
    shot('level-hazen-williams', {**ROW, 'n': 60, 'c': 140}, 50, 300, front)
    shot('ends-before-full', {**ROW, 'n': 100}, 60, 20, front + ', counted until the shot ends', supply=3)
    shot('downhill', {**ROW, 'n': 40, 'slope': -0.02}, 60, 180, front + surface, supply=4)
    shot('uphill', {**ROW, 'n': 40, 'slope': 0.03, 'first': 2}, 60, 180, front + surface + ' from the far end to the first outlet', supply=4)
    shot('uphill-hazen-williams-barbs', {**ROW, 'n': 40, 's': 0.4, 'slope': 0.02, 'c': 140, 'connection': {'barb': 'standard'}}, 80, 240, front + surface + '; numbers of the barb from memory', supply=6)
    shot('downhill-two-sizes', {**ROW, 'n': 20, 'slope': -0.01, 'further': [{'n': 16, 'd': 10.2, 's': 0.3}]}, 60, 200, front + surface, supply=3)
    shot('uphill-two-slopes', {**ROW, 'n': 20, 'slope': 0.01, 'further': [{'n': 16, 's': 0.4, 'slope': 0.04, 'first': 0.2}]}, 60, 200, front + surface, supply=3)
    shot('uphill-two-sizes', {**ROW, 'n': 10, 'd': 20, 'slope': 0.01, 'further': [{'n': 10, 'd': 10, 'first': 20}]}, 80, 300, front + surface, supply=3)
    shot('laminar-emitters-downhill', {**ROW, 'x': 1, 'slope': -0.05}, 80, 120, front + surface, supply=3)
    shot('compensating-downhill', {**ROW, 'x': 0.02, 'range': (50, 350, 0), 'slope': -0.05}, 120, 120, front + surface, supply=3)
    shot('anti-drain-keeps-all', anti_drain, 120, 120, front + '; a fall of 0.34 m opens no seal', supply=3)
    shot('anti-drain-starts-full', anti_drain, 120, 60, 'steady flow from the first second on; a fall of 0.34 m opens no seal', supply=3, full=True)
    shot('anti-drain-keeps-half', {**anti_drain, 's': 0.5, 'slope': -0.1}, 120, 120, front + surface + ' until the seals close', supply=3)
    shot('climbs-and-falls', {**ROW, 'n': 14, 'slope': 0.03, 'further': [{'n': 14, 'slope': -0.03}]}, 60, 120, front + '; draining is not told', supply=3, drains=False)

    plain = {'outlets': 1, 'spacing': '20 m', 'diameter': '16 mm', 'emitterFlow': '2 L/h', 'emitterPressure': '100 kPa', 'emitterExponent': 0.5, 'inletPressure': '100 kPa', 'runTime': '300 s'}
    volume = math.pi / 4 * 0.016 ** 2 * 20
    exact = lambda expect: {path: '1e-6 %' for path in expect}
    expect = {'fillTime': f'{volume / 5 * 60000:.8f} s', 'lineVolume': f'{volume * 1000:.8f} L', 'drainVolumes[0]': f'{volume * 1e6:.5f} mL'}
    check('plain-pipe-supply', {**plain, 'supplyFlow': '5 L/min'}, expect, exact(expect), 'by hand: pi/4 D^2 L at 5 L/min, and all of it drains through the one emitter')
    expect = {f'drainVolumes[{i}]': f'{math.pi / 4 * 0.016 ** 2 * (3 if i == 0 else 0.5) * 1e6:.6f} mL' for i in range(4)}
    check('level-drains-by-length', {**plain, 'outlets': 4, 'spacing': '50 cm', 'firstSpacing': '3 m'}, expect, exact(expect), 'by hand: on the level each emitter is left the water of its own length of pipe')
    for slope, name in ((-0.55, 'half'), (-1, 'one')):
        whole = math.pi / 4 * 0.02 ** 2 * 27.5 * 1000
        check(f'falls-then-level-{name}-percent', {**plain, 'outlets': 10, 'spacing': '25 cm', 'diameter': '20 mm', 'slope': f'{slope} %', 'furtherReaches': [{'outlets': 100, 'slope': '0 %'}], 'runTime': '30 min'},
              {'keptVolume': '0 L', 'lineVolume': f'{whole:.8f} L'}, {'keptVolume': '1e-6 L', 'lineVolume': '1e-6 %'}, 'by hand: what falls drains, and what is level too, so nothing is kept')
    volumes = [math.pi / 4 * d ** 2 * length for d, length in ((0.02, 2), (0.02, 9 * 0.25), (0.01, 20), (0.01, 9 * 0.25))]
    check('climbing-keeps-the-pipe-before-the-first', {**plain, 'outlets': 10, 'spacing': '25 cm', 'firstSpacing': '2 m', 'diameter': '20 mm', 'slope': '1 %', 'furtherReaches': [{'outlets': 10, 'diameter': '10 mm', 'firstSpacing': '20 m'}], 'runTime': '30 min'},
          {'keptVolume': f'{volumes[0] * 1000:.8f} L', 'lineVolume': f'{sum(volumes) * 1000:.8f} L'}, {'keptVolume': '1e-6 %', 'lineVolume': '1e-6 %'}, 'by hand: pi/4 D^2 2 m lie below the first outlet')
    # An emitter so slow that the pipe rubs nothing off: A dx/dt = k sqrt(s x).
    slope, length, section, k = 0.5, 20.0, math.pi / 4 * 0.05 ** 2, 0.1 * LPH / math.sqrt(100 * KPA / design.pascals_of({}))
    time = 2 * section / (k * math.sqrt(slope)) * (math.sqrt(length) - math.sqrt(length / 20))
    check('steep-pipe-drains', {**plain, 'diameter': '50 mm', 'slope': '-50 %', 'emitterFlow': '0.1 L/h', 'supplyFlow': '50 L/min', 'runTime': '1 h'},
          {'drainTime': f'{time / 60:.5f} min', 'keptVolume': '0 L'}, {'drainTime': '0.5 %', 'keptVolume': '1e-6 L'}, 'by hand: t = (2 A/(k sqrt s)) (sqrt L - sqrt(L/20)) until 95 % is out')
    design.print_ledger('What a lateral gives in a shot')


if __name__ == '__main__':
    main()
