"""Check values for the pH of water with acid, from the textbook equations and nothing of the library.

For every case: the ions in the water that do not change with pH are one unknown charge, found from pH and alkalinity (or from alkalinity and
the carbon dioxide of the air); acid adds its total and takes no charge in; the pH after is bisected for on the balance of charges. Activity
coefficients after Davies with the slope of the Debye-Hückel law as water-treatment texts give it, the same for every species at one ionic strength,
which is brought to rest at each pH. No ion pairs, so the cases hold sodium and potassium, which hardly pair, and no calcium.

Constants: carbonic acid, ammonium and water after Plummer and Busenberg 1982 and WATEQ4F (Ball and Nordstrom 1991), phosphoric acid after
WATEQ4F, citric acid after MINTEQA2 (Allison et al. 1991); heat capacity of the second step of phosphoric acid from memory, enthalpies and heat capacities of citric acid after
Bénézeth, Palmer and Wesolowski 1997.

    python3 tests/makers/acid-dose.py > tests/references/salts/acid-charge-balance.json
"""
import json
import math

ATM = 101325.0


def analytic(t, a1, a2=0.0, a3=0.0, a4=0.0, a5=0.0):
    return a1 + a2 * t + a3 / t + a4 * math.log10(t) + a5 / t ** 2


def vant_hoff(t, log25, joule, heat_capacity=0.0):
    """Constant at t (K) from 25 C, with an enthalpy (J/mol) that changes by a heat capacity (J/(mol K))."""
    base = 8.314462618 * math.log(10)
    return log25 - joule / base * (1 / t - 1 / 298.15) + heat_capacity / base * (math.log(t / 298.15) + 298.15 / t - 1)


def constants(t):
    """pK of every step, at zero ionic strength, T in K."""
    pk2 = analytic(t, 107.8871, 0.03252849, -5151.79, -38.92561, 563713.9)
    return {
        'w': -analytic(t, -283.971, -0.05069842, 13323.0, 102.24447, -1119669.0),
        'c1': analytic(t, 464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9) - pk2,
        'c2': pk2,
        'henry': -analytic(t, 108.3865, 0.01985076, -6919.53, -40.45154, 669365.0),
        'n': -analytic(t, 0.6322, -0.001225, -2835.76),
        'p1': vant_hoff(t, 2.168, 7900), 'p2': vant_hoff(t, 7.207, -4142, 226), 'p3': vant_hoff(t, 12.346, -14800),
        's': analytic(t, -56.889, 0.006473, 2307.9, 19.8858),
        'z1': vant_hoff(t, 3.128, -4100, 162), 'z2': vant_hoff(t, 4.761, -2200, 192), 'z3': vant_hoff(t, 6.396, 3600, 231),
    }


def slope(t):
    d = t - 298.0
    permittivity = 78.54 * (1 - 0.004579 * d + 11.9e-6 * d ** 2 + 28e-9 * d ** 3)
    return 1.29e6 * math.sqrt(2) / (permittivity * t) ** 1.5


def species(t, ph, totals, gas, inert):
    """Molality of every species at a pH. `gas` in Pa, or None for a closed water; `inert` is the molality of ions of charge one."""
    k = constants(t)
    strength = 0.01
    for _ in range(200):
        root = math.sqrt(strength)
        davies = -slope(t) * (root / (1 + root) - 0.3 * strength)
        g = {z: 10 ** (davies * z * z) for z in (1, 2, 3)}
        g[0] = 10 ** (0.1 * strength)
        h = 10 ** -ph
        m = {'H': h / g[1], 'OH': 10 ** -k['w'] / h / g[1]}

        def ladder(names, charges, pks, total):
            """Shares of an acid's steps, from the one with all its protons down."""
            weights, log = [], 0.0
            for i, charge in enumerate(charges):
                if i:
                    log += ph - pks[i - 1]
                weights.append(10 ** log / g[abs(charge)])
            for name, weight in zip(names, weights):
                m[name] = total * weight / sum(weights)

        if gas is None:
            ladder(('CO2', 'HCO3', 'CO3'), (0, -1, -2), (k['c1'], k['c2']), totals.get('C', 0.0))
        else:
            dissolved = 10 ** -k['henry'] * gas / ATM
            m['CO2'] = dissolved / g[0]
            m['HCO3'] = dissolved * 10 ** (ph - k['c1']) / g[1]
            m['CO3'] = dissolved * 10 ** (2 * ph - k['c1'] - k['c2']) / g[2]
        ladder(('NH4', 'NH3'), (1, 0), (k['n'],), totals.get('N', 0.0))
        ladder(('H3PO4', 'H2PO4', 'HPO4', 'PO4'), (0, -1, -2, -3), (k['p1'], k['p2'], k['p3']), totals.get('P', 0.0))
        ladder(('HSO4', 'SO4'), (-1, -2), (k['s'],), totals.get('S', 0.0))
        ladder(('H3Z', 'H2Z', 'HZ', 'Z'), (0, -1, -2, -3), (k['z1'], k['z2'], k['z3']), totals.get('Z', 0.0))
        m['NO3'] = totals.get('NO3', 0.0)
        found = 0.5 * (inert + sum(molality * CHARGE[name] ** 2 for name, molality in m.items()))
        if abs(found - strength) < 1e-15:
            break
        strength = found
    return m


CHARGE = {'H': 1, 'OH': -1, 'CO2': 0, 'HCO3': -1, 'CO3': -2, 'NH4': 1, 'NH3': 0, 'H3PO4': 0, 'H2PO4': -1, 'HPO4': -2, 'PO4': -3,
          'HSO4': -1, 'SO4': -2, 'H3Z': 0, 'H2Z': -1, 'HZ': -2, 'Z': -3, 'NO3': -1}
ALKALINITY = {'OH': 1, 'HCO3': 1, 'CO3': 2, 'NH3': 1, 'HPO4': 1, 'PO4': 2, 'Z': 1, 'H': -1, 'HSO4': -1, 'H3PO4': -1, 'H2Z': -1, 'H3Z': -2}


def charge(m):
    return sum(CHARGE[name] * molality for name, molality in m.items())


def bisect(f, low, high):
    rising = f(high) > f(low)
    for _ in range(200):
        middle = (low + high) / 2
        if (f(middle) > 0) == rising:
            high = middle
        else:
            low = middle
    return (low + high) / 2


def ph_after(t, totals, alkalinity, ph, gas, acid, dose, cation):
    """pH after `dose` (mol/kg) of an acid whose anion is counted as `acid`. `cation`: molality of the sodium or potassium in the water."""
    totals = dict(totals)

    def alkalinity_of(at, some):
        m = species(t, at, some, gas, cation)
        return sum(weight * m[name] for name, weight in ALKALINITY.items()), charge(m)

    if gas is None:
        totals['C'] = bisect(lambda carbon: alkalinity_of(ph, {**totals, 'C': carbon})[0] - alkalinity, 0.0, 0.1)
        before = ph
    else:
        before = bisect(lambda at: alkalinity_of(at, totals)[0] - alkalinity, 3.0, 11.0)
    fixed = alkalinity_of(before, totals)[1]
    after = {**totals, acid: totals.get(acid, 0.0) + dose}
    return bisect(lambda at: charge(species(t, at, after, gas, cation)) - fixed, 1.0, before + 1)


# name, °C, totals (mmol/kg), alkalinity (meq/kg), pH or None, carbon dioxide (Pa) or None, cation and its mmol/kg, acid, dose (mmol/kg)
CASES = [
    ('nitric-closed-5C', 5, {}, 3, 7.6, None, ('Na+', 3.0), 'NO3', 2.2),
    ('nitric-closed-35C', 35, {}, 3, 7.6, None, ('Na+', 3.0), 'NO3', 2.2),
    ('sulfuric-closed-20C', 20, {}, 5, 7.2, None, ('K+', 5.0), 'S', 2.0),
    ('sulfuric-beyond-20C', 20, {}, 2, 7.2, None, ('K+', 2.0), 'S', 3.0),
    ('phosphoric-closed-5C', 5, {}, 4, 7.4, None, ('K+', 4.0), 'P', 3.0),
    ('phosphoric-closed-35C', 35, {}, 4, 7.4, None, ('K+', 4.0), 'P', 3.0),
    ('citric-closed-5C', 5, {}, 3, 7.5, None, ('Na+', 3.0), 'Z', 1.0),
    ('citric-closed-20C', 20, {}, 3, 7.5, None, ('Na+', 3.0), 'Z', 1.0),
    ('citric-closed-35C', 35, {}, 3, 7.5, None, ('Na+', 3.0), 'Z', 1.0),
    ('citric-strong-20C', 20, {}, 3, 7.5, None, ('Na+', 3.0), 'Z', 4.0),
    ('nitric-in-ammonium-and-phosphate-20C', 20, {'N': 2.0, 'P': 1.5}, 4, 8.2, None, ('K+', 3.5), 'NO3', 2.0),
    ('nitric-in-ammonium-9-35C', 35, {'N': 3.0}, 3, 8.8, None, ('Na+', 0.0), 'NO3', 1.0),
    ('nitric-open-5C', 5, {}, 3, None, 42.5565, ('Na+', 3.0), 'NO3', 2.5),
    ('nitric-open-20C', 20, {}, 3, None, 42.5565, ('Na+', 3.0), 'NO3', 2.5),
    ('nitric-open-35C', 35, {}, 3, None, 42.5565, ('Na+', 3.0), 'NO3', 2.5),
    ('phosphoric-open-20C', 20, {}, 4, None, 101.325, ('K+', 4.0), 'P', 3.0),
    ('citric-open-20C', 20, {}, 3, None, 42.5565, ('Na+', 3.0), 'Z', 1.2),
    ('sulfuric-open-in-phosphate-5C', 5, {'P': 1.0, 'N': 1.0}, 2, None, 42.5565, ('K+', 2.0), 'S', 0.8),
]
IONS = {'P': 'H2PO4-', 'N': 'NH4+'}
PRODUCTS = {'NO3': 'nitric-acid', 'S': 'sulfuric-acid', 'P': 'phosphoric-acid', 'Z': 'citric-acid-anhydrous'}
# Density of water, kg/L, from handbooks.
DENSITY = {5: 0.99997, 20: 0.99821, 35: 0.99403}


def main():
    checks = []
    for name, celsius, totals, alkalinity, ph, gas, (cation, amount), acid, dose in CASES:
        milli = {key: value / 1000 for key, value in totals.items()}
        after = ph_after(celsius + 273.15, milli, alkalinity / 1000, ph, gas, acid, dose / 1000, amount / 1000)
        litre = lambda per_kilogram, unit: f'{per_kilogram * DENSITY[celsius]:.6g} {unit}/L'
        water = {'volume': '1 L', 'alkalinity': litre(alkalinity, 'meq'),
                 'ions': {ion: litre(value, 'mmol') for ion, value in [(cation, amount), *((IONS[key], value) for key, value in totals.items())]},
                 'waterTemperature': f'{celsius} °C',
                 **({'pH': ph} if gas is None else {'exposure': 'open', 'carbonDioxide': round(gas / ATM, 9)}),
                 'acid': PRODUCTS[acid], 'purity': 1}
        where = f'{dose} mmol/kg of acid in {alkalinity} meq/kg at {celsius} °C by tests/makers/acid-dose.py: charge balance with Davies, no ion pairs'
        source = {'kind': 'independent calculation', 'where': where}
        checks.append({'id': f'{name}-pH', 'of': 'salts/titrationCurve', 'input': {**water, 'mostAcidConcentration': litre(dose, 'mmol'), 'points': 2},
                       'expect': {'pHValues[1]': round(after, 4)}, 'tolerance': 0.005, 'source': source})
        checks.append({'id': f'{name}-dose', 'of': 'salts/acidDose', 'input': {**water, 'targetPH': round(after, 4)},
                       'expect': {'acidConcentration': litre(dose, 'mmol')}, 'tolerance': '0.2 %', 'source': source})
    lines = ',\n'.join('    ' + json.dumps(check, ensure_ascii=False) for check in checks)
    print('{\n  "title": "Acid in water, by the balance of charges",\n  "checks": [\n' + lines + '\n  ]\n}')


if __name__ == '__main__':
    main()
