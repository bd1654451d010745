"""Check values for closed loops, by brute force: each day in a thousand Runge-Kutta steps of the balance, a dump in the evening where one is due.

    python3 tests/makers/loops.py > tests/references/recirculation/loops-by-steps.json

Shares no code with src/.
"""
import json

CATIONS = {'Na+': 1, 'K+': 1, 'Ca2+': 2}  # charges that count for the conductivity
STEPS = 1000


def run(volume, uses, ratios, feed, start, uptake, factor, drain, caught, discharge, rule):
    """Concentrations of each evening before a dump, days of dumps, and by ion what came in, was taken up and let out, mmol per litre of the loop."""
    bleed = (1 - caught) * drain / (1 - drain) + discharge / (1 - discharge)
    now, dumps = dict(start), []
    evenings = {ion: [c] for ion, c in start.items()}
    sums = {ion: [0.0, 0.0, 0.0] for ion in start}
    let_out = 0.0
    for day, (use, ratio) in enumerate(zip(uses, ratios), 1):
        h = use / volume / STEPS
        for ion in now:
            s = feed[ion] * (1 + bleed) - uptake.get(ion, 0) * ratio
            k = factor.get(ion, 0) * ratio + bleed
            slope = lambda c: s - k * c
            c = now[ion]
            for _ in range(STEPS):
                k1 = slope(c)
                k2 = slope(c + h * k1 / 2)
                k3 = slope(c + h * k2 / 2)
                k4 = slope(c + h * k3)
                after = c + h * (k1 + 2 * k2 + 2 * k3 + k4) / 6
                mean = (c + after) / 2 - h * (slope(after) - k1) / 12
                gone = bleed * mean * h
                if after < 0:  # none is left: plants get what comes in
                    after, gone = 0.0, 0.0
                sums[ion][0] += feed[ion] * (1 + bleed) * h
                sums[ion][1] += feed[ion] * (1 + bleed) * h - gone - (after - c)
                sums[ion][2] += gone
                c = after
            now[ion] = c
            evenings[ion].append(c)
        let_out += bleed * use
        meter = 0.1 * sum(charge * now[ion] for ion, charge in CATIONS.items() if ion in now)  # mS/cm
        due = ('days' in rule and day - (dumps[-1] if dumps else 0) >= rule['days'] or 'meter' in rule and meter >= rule['meter']
               or any(now[ion] >= most for ion, most in rule.get('most', {}).items()))
        if due:
            dumps.append(day)
            let_out += rule['share'] * volume
            for ion in now:
                sums[ion][0] += rule['share'] * feed[ion]
                sums[ion][2] += rule['share'] * now[ion]
                now[ion] += rule['share'] * (feed[ion] - now[ion])
    return evenings, dumps, sums, let_out, now


def mmol(values):
    return {ion: f'{value} mmol/L' for ion, value in values.items()}


MASS = {'Na+': 22.98976928, 'NO3-': 14.007 + 3 * 15.999}  # abridged weights of 2021


def check(name, volume, uses, ratios, feed, start, uptake, factor, drain, caught, discharge, rule, days, where):
    evenings, dumps, sums, let_out, last = run(volume, uses, ratios, feed, start, uptake, factor, drain, caught, discharge, rule)
    strategy = {'dumpShare': rule['share'], 'dischargeShare': discharge}
    if 'days' in rule:
        strategy['dumpInterval'] = rule['days']
    if 'meter' in rule:
        strategy['dumpConductivity'] = f"{rule['meter']} mS/cm"
    if 'most' in rule:
        strategy['dumpLimits'] = mmol(rule['most'])
    given = {'loopVolume': f'{volume} L', 'freshFeed': {'ions': mmol(feed)}, 'startingSolution': {'ions': mmol(start)}, 'uptakeConcentrations': mmol(uptake), 'uptakeFactors': factor,
             'drainShare': drain, 'caughtShare': caught, 'dailyWaterUses': {'unit': 'L', 'values': uses}, 'uptakeRatios': {'unit': 'fraction', 'values': ratios}, 'strategy': strategy}
    expect = {'dischargeEvents.length': len(dumps), **{f'dischargeEvents[{i}].day': day for i, day in enumerate(dumps)}, 'dischargedVolume': f'{let_out:.9f} L'}
    tolerance = {'dischargedVolume': 1e-8}
    for ion in feed:
        for day in days:
            expect[f'concentrations.{ion}.{day}'] = f'{evenings[ion][day]:.9f} mmol/L'
            tolerance[f'concentrations.{ion}.{day}'] = 1e-8
    for ion, mass in MASS.items():
        for key, value in zip(('suppliedMass', 'takenUpMass', 'dischargedMass'), sums[ion]):
            expect[f'ionMasses.{ion}.{key}'] = f'{value * volume * mass / 1000:.6f} g'
            tolerance[f'ionMasses.{ion}.{key}'] = '0.0001 %'
    return {'id': name, 'of': 'recirculation/loopRun', 'input': given, 'expect': expect, 'tolerance': tolerance, 'source': {'kind': 'independent calculation', 'where': f'{where}; the balance in {STEPS} steps a day'}}


month = [round(14 + 5 * ((d * 7) % 5 - 2) / 2 + 0.2 * d, 2) for d in range(30)]
feed = {'Na+': 1.2, 'K+': 5.4, 'Ca2+': 2.6, 'NO3-': 9.8}
checks = [
    check('lost-drain-and-dumps-by-the-meter', 180, month, [1.0] * 20 + [0.6] * 10, feed, feed, {'Na+': 0.35, 'K+': 5.1, 'Ca2+': 1.9, 'NO3-': 9.1}, {'Na+': 0.11}, 0.3, 0.85, 0, {'share': 0.6, 'meter': 1.45}, (1, 9, 20, 30),
          'constant uptake and a factor on sodium together, 15 % of the drain lost, 60 % let out at 1.45 mS/cm'),
    check('bleed-and-sodium-limit', 95, month, [round(0.8 + 0.05 * (d % 9), 2) for d in range(30)], feed, {'Na+': 3.1, 'K+': 4.2, 'Ca2+': 3.9, 'NO3-': 8.4}, {'K+': 5.6, 'NO3-': 8.8}, {'Na+': 0.18, 'Ca2+': 0.7}, 0.25, 1, 0.08, {'share': 0.35, 'most': {'Na+': 3.8}},
          (1, 8, 17, 30), '8 % of the supply let out all the time, 35 % of the loop at 3.8 mmol/L of sodium'),
    check('every-six-days-with-potassium-running-out', 120, [0 if d % 11 == 5 else use for d, use in enumerate(month)], [1.0] * 12 + [1.7] * 18, feed, {'Na+': 1.2, 'K+': 1.4, 'Ca2+': 2.6, 'NO3-': 9.8},
          {'Na+': 0.2, 'K+': 6.1, 'Ca2+': 2.2, 'NO3-': 8.2}, {'NO3-': 0.08}, 0.35, 0.9, 0.03, {'share': 0.5, 'days': 6}, (2, 6, 7, 19, 30), 'half let out every six days; plants ask for more potassium than comes in; two days without water'),
]
body = ',\n'.join('    ' + json.dumps(one, ensure_ascii=False) for one in checks)
print('{\n  "title": "Closed loops by small steps",\n  "checks": [\n' + body + '\n  ]\n}')
