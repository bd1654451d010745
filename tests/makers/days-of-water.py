"""Check values for days of irrigation and for barrels that take turns, by brute force: followed in steps of a twentieth of a second (days) and of a second (barrels).

    python3 tests/makers/days-of-water.py > tests/references/dosing/days-by-brute-force.json

Shares no code with src/. Takes about a minute.
"""
import json
import math

import numpy as np

STEP = 0.05


def follow(t, radiation, rate, density, shot, drippers, flow, fill, capacity, begin, plan):
    """One plant through a day. SI units; rate in m/s or None where it is `plan['water']` times the radiation. Gives starts, drains and sums."""
    edges = np.arange(t[0], t[-1] + STEP / 2, STEP)
    middle = (edges[:-1] + edges[1:]) / 2
    light = np.interp(middle, t, radiation)
    asked = (np.interp(middle, t, rate) if rate is not None else light * plan['water']) / density * STEP
    signal = (light * STEP if plan['by'] == 'radiation' else asked).tolist()
    giving = shot / (drippers * flow)
    whole = giving + fill
    shortest, longest = plan.get('shortest', whole), plan.get('longest', math.inf)
    earliest, latest = max(plan.get('earliest', 0), t[0]), min(plan.get('latest', math.inf), t[-1] - whole)
    starts, sum_so_far = [], 0.0
    for now, more in zip(edges[1:].tolist(), signal):
        before, sum_so_far = sum_so_far, sum_so_far + more
        due = sum_so_far >= plan['step'] or now >= (starts[-1] if starts else earliest) + longest
        if due and earliest <= now <= latest and (not starts or now >= starts[-1] + shortest):
            # What came after the step was full within this step counts for the next shot; what came while a shot had to wait does not.
            sum_so_far = sum_so_far - plan['step'] if before < plan['step'] <= sum_so_far else 0.0
            starts.append(now)
    water, drained, taken, drains, driest = begin, 0.0, 0.0, [0.0] * len(starts), begin
    shot_now = 0
    for low, need in zip(edges[:-1].tolist(), asked.tolist()):
        while shot_now < len(starts) and low >= starts[shot_now] + whole - STEP / 2:
            shot_now += 1
        runs = shot_now < len(starts) and low >= starts[shot_now] + fill - STEP / 2
        water += shot * STEP / giving if runs else 0.0
        uptake = min(water, need)
        water -= uptake
        taken += uptake
        if water > capacity:
            drained += water - capacity
            if runs:
                drains[shot_now] += water - capacity
            water = capacity
        driest = min(driest, water)
    return starts, drains, taken, drained, driest


def day(name, t, radiation, rate, density, volume, holding, starting, millilitres, drippers, flow, fill, plan, told, where):
    capacity = volume * 1e-3 * holding
    starts, drains, taken, drained, driest = follow(
        [x * 3600 for x in t], radiation, None if rate is None else [x / 3.6e6 for x in rate], density, millilitres * 1e-6, drippers, flow / 3.6e6, fill, capacity, starting * capacity, plan)
    last, middle = len(starts) - 1, len(starts) // 2
    first_drain = next((i for i, drain in enumerate(drains) if drain > 1e-9), None)
    readings = {'readingTime': {'unit': 'h', 'values': t}, 'globalRadiation': {'unit': 'W/m²', 'values': radiation}}
    if rate is not None:
        readings['transpirationRate'] = {'unit': 'mm/h', 'values': rate}
    given = {'dayReadings': readings, 'plantDensity': density, 'substrateVolume': f'{volume} L', 'waterHoldingShare': holding, 'startingShare': starting, 'shotVolume': f'{millilitres} mL',
             'drippersPerPlant': drippers, 'dripperFlow': f'{flow} L/h', 'fillTime': f'{fill} s', 'shotPlan': told}
    if rate is None:
        given['waterPerRadiation'] = f"{plan['water'] * 1e10:g} mL·cm²/(J·m²)"
    expect = {'shotsPerDay': len(starts), **({} if first_drain is None else {'firstDrainShot': first_drain + 1})}
    tolerance = {}
    for path, value, unit, allowed in [
        *((f'shots[{i}].shotTime', starts[i] / 3600, 'h', 0.0001) for i in sorted({0, 1, middle, last})),
        *((f'shots[{i}].shotDrain', drains[i] * 1e6, 'mL', 0.1) for i in sorted({first_drain or 0, middle, last})),
        ('uptakeVolume', taken * 1e3, 'L', 0.00001), ('drainPerPlant', drained * 1e3, 'L', 0.0001), ('driestWater', driest * 1e3, 'L', 0.0001),
    ]:
        expect[path] = f'{value:.6f} {unit}'
        tolerance[path] = allowed
    return {'id': name, 'of': 'dosing/irrigationDay', 'input': given, 'expect': expect, 'tolerance': tolerance, 'source': {'kind': 'independent calculation', 'where': where}}


def barrels(name, litres, now, reserve, zones, pattern, start, preparation, vessels, days, told, where):
    """Barrels second by second; the volume used is spread over the day by `pattern` (moments in s, volumes since midnight)."""
    moments = np.arange(0, 86401)
    spread = np.diff(np.interp(moments, *pattern)) / (pattern[1][-1] - pattern[1][0])
    spread = spread.tolist()
    use = lambda of: sum(zone[min(of, len(zone) - 1)] for zone in zones)
    left, ready, free, fills, waited = now - reserve * litres, start, start, [], 0.0
    second = start
    while second <= days * 86400:
        wanted = use(second // 86400) * spread[second % 86400]
        if second < ready:
            second += 1
            continue
        left -= wanted
        second += 1
        if left > 0 or wanted == 0:
            continue
        empty = second + left / wanted
        if empty > days * 86400:
            break
        ready = max(empty, (empty if vessels == 1 else free) + preparation)
        fills.append((empty, empty - preparation, ready))
        waited += ready - empty
        # What was used beyond the barrel in that second comes from the next, if it is ready.
        left = litres * (1 - reserve) + (left if ready == empty else 0.0)
        free = empty
    expect, tolerance = {'usedUpAfter': f'{(fills[0][0] - start) / 3600:.6f} h', 'timeWithoutFeed': f'{waited / 3600:.6f} h', 'fills.length': len(fills)}, {'usedUpAfter': 0.001, 'timeWithoutFeed': 0.005}
    for i, (empty, mix, ready) in enumerate(fills):
        for key, value in (('emptyTime', empty), ('mixBy', mix), ('readyTime', ready)):
            if value >= 0:
                expect[f'fills[{i}].{key}'] = f'{value / 3600:.6f} h'
                tolerance[f'fills[{i}].{key}'] = 0.001
    given = {'barrelVolume': f'{litres} L', 'presentVolume': f'{now} L', 'reserveShare': reserve, 'zones': [{'dailyVolumes': {'unit': 'L', 'values': zone}} for zone in zones],
             'planStart': f'{start / 3600:g} h', 'warmUpTime': f'{preparation / 3600:g} h', 'barrels': vessels, 'days': days, **told}
    return {'id': name, 'of': 'dosing/barrelPlan', 'input': given, 'expect': expect, 'tolerance': tolerance, 'source': {'kind': 'independent calculation', 'where': where}}


DAYS = 'water of one plant followed in steps of a twentieth of a second'
BARRELS = 'use of the barrels followed second by second'
checks = [
    day('strawberries-by-the-light', [0, 6, 8.5, 10, 12.25, 13, 15.5, 18, 20.75, 24], [0, 15, 210, 430, 700, 380, 560, 190, 5, 0], None, 8, 3.2, 0.62, 0.95, 45, 0.5, 2, 20,
        {'by': 'radiation', 'water': 1.5e-10, 'step': 120e4, 'earliest': 7.5 * 3600, 'latest': 18 * 3600},
        {'radiationStep': '120 J/cm²', 'earliestShot': '7.5 h', 'latestShot': '18 h'}, f'{DAYS}; a shot at each 120 J/cm² between 7:30 and 18:00'),
    day('aubergines-by-uptake', [5, 7.5, 9, 11, 13.5, 14, 16, 19, 22], [20, 150, 320, 610, 750, 300, 520, 160, 0], [0.01, 0.06, 0.15, 0.31, 0.44, 0.2, 0.33, 0.12, 0.02], 2.5, 10, 0.65, 0.97, 200, 1, 4, 0,
        {'by': 'uptake', 'step': 150e-6, 'earliest': 8 * 3600, 'shortest': 2400, 'longest': 5400, 'latest': 17.5 * 3600},
        {'uptakeStep': '150 mL', 'earliestShot': '8 h', 'latestShot': '17.5 h', 'shortestPause': '40 min', 'longestPause': '90 min'}, f'{DAYS}; a shot at each 150 mL taken up, 40 to 90 min apart'),
    day('basil-that-runs-dry', [0, 7, 10, 13, 16, 19, 24], [0, 90, 420, 640, 450, 110, 0], [0.02, 0.1, 0.5, 0.9, 0.6, 0.15, 0.02], 20, 0.5, 0.55, 0.4, 40, 1, 1, 30,
        {'by': 'radiation', 'step': 700e4, 'latest': 16 * 3600}, {'radiationStep': '700 J/cm²', 'latestShot': '16 h'}, f'{DAYS}; the pot is dry at times, when plants get what is given'),
    barrels('two-barrels-by-day', 120, 70, 0.05, [[34, 41, 38], [45, 52, 60, 47], [4]], ([28800, 64800], [0, 1]), 9 * 3600, 14 * 3600, 2, 6,
            {'dayUse': {'useFrom': '8 h', 'useUntil': '18 h'}}, f'{BARRELS}; a vessel is mixed again once it is empty'),
    barrels('one-barrel-by-a-schedule', 200, 200, 0.1, [[60, 75, 30]], ([0, 27000, 27900, 43200, 44100, 57600, 58500, 86400], [0, 0, 25, 25, 70, 70, 90, 90]), 0, 20 * 3600, 1, 14,
            {'dayUse': {'readingTime': {'unit': 's', 'values': [0, 27000, 27900, 43200, 44100, 57600, 58500, 86400]}, 'givenVolumes': {'unit': 'L', 'values': [0, 0, 25, 25, 70, 70, 90, 90]}}},
            f'{BARRELS}; mixed anew when empty, and 20 h later plants get feed again'),
]
body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Days of water by brute force",\n  "checks": [\n' + body + '\n  ]\n}')
