"""Saturation indices for tests/references/solution/saturation.json, worked out apart from src/.

Plain substitution instead of Newton steps; constants typed in from wateq4f.dat (Ball and Nordstrom 1991, as in PHREEQC 3) with
the database's own activity coefficients (extended Debye-Hueckel for the major ions, Davies for the rest) and all of its species of
these elements, more than src/ has; solids that it lacks from minteq.v4.dat (octacalcium phosphate, beta-tricalcium phosphate,
newberyite), Dorozhkin 2010 (brushite, monetite) and Ronteltap et al. 2007 (struvite). Run: python3 tests/makers/saturation.py
"""
from math import log10, sqrt

# Debye-Hueckel A and B as PHREEQC 3 prints them, and the density of water (Kell 1975), by temperature in C.
WATER = {10: (0.49786, 0.32615, 0.99970), 15: (0.50170, 0.32692, 0.99910), 20: (0.50576, 0.32770, 0.99821),
         25: (0.51002, 0.32849, 0.99705), 30: (0.51451, 0.32930, 0.99565)}

KCAL = 4184.0

def K(log25, dh=0.0):
    """log K by van 't Hoff, dh in J/mol."""
    return lambda T: log25 - dh / (2.302585 * 8.31446) * (1 / T - 1 / 298.15)

def A(a1, a2=0, a3=0, a4=0, a5=0):
    """log K by the database's analytic expression."""
    return lambda T: a1 + a2 * T + a3 / T + a4 * log10(T) + a5 / T**2

# name: (charge, log K of formation from the master species, {master species: number})
SPECIES = {
    'OH': (-1, A(-283.971, -0.05069842, 13323, 102.24447, -1119669), {'H': -1}),
    'HPO4': (-2, K(12.346, -3.53 * KCAL), {'H': 1, 'PO4': 1}),
    'H2PO4': (-1, K(19.553, -4.52 * KCAL), {'H': 2, 'PO4': 1}),
    'H3PO4': (0, K(2.168, 7900), {'H': 1, 'H2PO4': 1}),
    'HCO3': (-1, A(107.8871, 0.03252849, -5151.79, -38.92561, 563713.9), {'H': 1, 'CO3': 1}),
    'CO2': (0, A(464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9), {'H': 2, 'CO3': 1}),
    'NH3': (0, A(0.6322, -0.001225, -2835.76), {'NH4': 1, 'H': -1}),
    'HSO4': (-1, A(-56.889, 0.006473, 2307.9, 19.8858), {'H': 1, 'SO4': 1}),
    'NaCO3': (-1, K(1.27, 8.91 * KCAL), {'Na': 1, 'CO3': 1}),
    'NaSO4': (-1, K(0.7, 1.12 * KCAL), {'Na': 1, 'SO4': 1}),
    'KSO4': (-1, A(3.106, 0, -673.6), {'K': 1, 'SO4': 1}),
    'NH4SO4': (-1, K(1.11), {'NH4': 1, 'SO4': 1}),
    'CaSO4': (0, K(2.3, 1.65 * KCAL), {'Ca': 1, 'SO4': 1}),
    'CaHSO4': (1, K(1.08), {'Ca': 1, 'HSO4': 1}),
    'CaOH': (1, K(-12.78), {'Ca': 1, 'H': -1}),
    'CaHCO3': (1, A(1209.12, 0.31294, -34765.05, -478.782), {'Ca': 1, 'HCO3': 1}),
    'CaCO3': (0, A(-1228.732, -0.299444, 35512.75, 485.818), {'Ca': 1, 'CO3': 1}),
    'CaHPO4': (0, K(2.739, 3.3 * KCAL), {'Ca': 1, 'HPO4': 1}),
    'CaH2PO4': (1, K(1.408, 3.4 * KCAL), {'Ca': 1, 'H2PO4': 1}),
    'CaPO4': (-1, K(6.459, 3.1 * KCAL), {'Ca': 1, 'PO4': 1}),
    'MgSO4': (0, K(2.37, 4.55 * KCAL), {'Mg': 1, 'SO4': 1}),
    'MgOH': (1, K(-11.44, 15.952 * KCAL), {'Mg': 1, 'H': -1}),
    'MgCO3': (0, A(0.991, 0.00667), {'Mg': 1, 'CO3': 1}),
    'MgHCO3': (1, A(-59.215, 0, 2537.455, 20.92298), {'Mg': 1, 'HCO3': 1}),
    'MgHPO4': (0, K(2.87, 3.3 * KCAL), {'Mg': 1, 'HPO4': 1}),
    'MgH2PO4': (1, K(1.513, 3.4 * KCAL), {'Mg': 1, 'H2PO4': 1}),
    'MgPO4': (-1, K(6.589, 3.1 * KCAL), {'Mg': 1, 'PO4': 1}),
    'NaHCO3': (0, K(-0.25), {'Na': 1, 'HCO3': 1}),
    'NaHPO4': (-1, K(0.29), {'Na': 1, 'HPO4': 1}),
    'KHPO4': (-1, K(0.29), {'K': 1, 'HPO4': 1}),
    'FeOH': (1, K(-9.5, 13.2 * KCAL), {'Fe': 1, 'H': -1}),
    'FeSO4': (0, K(2.25, 3.23 * KCAL), {'Fe': 1, 'SO4': 1}),
    'FeHSO4': (1, K(1.08), {'Fe': 1, 'HSO4': 1}),
    'FeHPO4': (0, K(3.6), {'Fe': 1, 'HPO4': 1}),
    'FeH2PO4': (1, K(2.7), {'Fe': 1, 'H2PO4': 1}),
    'MnCl': (1, K(0.61), {'Mn': 1, 'Cl': 1}),
    'MnOH': (1, K(-10.59, 14.4 * KCAL), {'Mn': 1, 'H': -1}),
    'MnSO4': (0, K(2.25, 3.37 * KCAL), {'Mn': 1, 'SO4': 1}),
    'Mn(NO3)2': (0, K(0.6, -0.396 * KCAL), {'Mn': 1, 'NO3': 2}),
    'MnHCO3': (1, K(1.95), {'Mn': 1, 'HCO3': 1}),
    'ZnCl': (1, K(0.43, 7.79 * KCAL), {'Zn': 1, 'Cl': 1}),
    'ZnOH': (1, K(-8.96, 13.4 * KCAL), {'Zn': 1, 'H': -1}),
    'ZnSO4': (0, K(2.37, 1.36 * KCAL), {'Zn': 1, 'SO4': 1}),
    'Zn(SO4)2': (-2, K(3.28), {'Zn': 1, 'SO4': 2}),
    'CuCl': (1, K(0.43, 8.65 * KCAL), {'Cu': 1, 'Cl': 1}),
    'CuOH': (1, K(-8.0), {'Cu': 1, 'H': -1}),
    'CuSO4': (0, K(2.31, 1.22 * KCAL), {'Cu': 1, 'SO4': 1}),
    'CuCO3': (0, K(6.73), {'Cu': 1, 'CO3': 1}),
}
MASTER = {'H': 1, 'Na': 1, 'K': 1, 'NH4': 1, 'Ca': 2, 'Mg': 2, 'Fe': 2, 'Mn': 2, 'Zn': 2, 'Cu': 2, 'Cl': -1, 'NO3': -1, 'SO4': -2, 'CO3': -2, 'PO4': -3}
ION_SIZE = {'H': (9.0, 0.0), 'Ca': (5.0, 0.165), 'Mg': (5.5, 0.20), 'Na': (4.0, 0.075), 'K': (3.5, 0.015), 'Cl': (3.5, 0.015),
            'SO4': (5.0, -0.04), 'HCO3': (5.4, 0.0), 'CO3': (5.4, 0.0)}

# name: (log K, {species: number}, molecules of water)
SOLIDS = {
    'gypsum': (A(68.2401, 0, -3221.51, -25.0627), {'Ca': 1, 'SO4': 1}, 2),
    'anhydrite': (A(197.52, 0, -8669.8, -69.835), {'Ca': 1, 'SO4': 1}, 0),
    'calcite': (A(-171.9065, -0.077993, 2839.319, 71.595), {'Ca': 1, 'CO3': 1}, 0),
    'aragonite': (A(-171.9773, -0.077993, 2903.293, 71.595), {'Ca': 1, 'CO3': 1}, 0),
    'dolomite': (K(-17.09, -9.436 * KCAL), {'Ca': 1, 'Mg': 1, 'CO3': 2}, 0),
    'brushite': (None, {'Ca': 1, 'HPO4': 1}, 2),
    'monetite': (None, {'Ca': 1, 'HPO4': 1}, 0),
    'octacalcium-phosphate': (K(-47.08), {'Ca': 4, 'H': 1, 'PO4': 3}, 3),
    'beta-tricalcium-phosphate': (K(-28.92), {'Ca': 3, 'PO4': 2}, 0),
    'hydroxyapatite': (K(-3.421, -36.155 * KCAL), {'Ca': 5, 'HPO4': 3, 'H': -4}, 1),
    'struvite': (K(-13.26, 22600), {'Mg': 1, 'NH4': 1, 'PO4': 1}, 6),
    'newberyite': (K(-18.175), {'Mg': 1, 'H': 1, 'PO4': 1}, 3),
    'vivianite': (K(-36.0), {'Fe': 3, 'PO4': 2}, 8),
    'siderite': (K(-10.89, -2.48 * KCAL), {'Fe': 1, 'CO3': 1}, 0),
    'manganese-hydrogen-phosphate': (K(-12.947), {'Mn': 1, 'HPO4': 1}, 0),
    'rhodochrosite': (K(-11.13, -1.43 * KCAL), {'Mn': 1, 'CO3': 1}, 0),
    'zinc-phosphate-tetrahydrate': (K(-32.04), {'Zn': 3, 'PO4': 2}, 4),
}
BETWEEN_25_AND_37 = {'brushite': (-6.59, -6.63), 'monetite': (-6.90, -7.02)}


def log_k(solid, T):
    if solid not in BETWEEN_25_AND_37:
        return SOLIDS[solid][0](T)
    at25, at37 = BETWEEN_25_AND_37[solid]
    return at25 + (at37 - at25) * (1 / T - 1 / 298.15) / (1 / 310.15 - 1 / 298.15)


def masters(name):
    """A species in master species, with its log K, at a temperature."""
    charge, log, parts = SPECIES[name]
    total, constants = {}, [log]
    for part, number in parts.items():
        if part in MASTER:
            total[part] = total.get(part, 0) + number
        else:
            inner, more = masters(part)
            for key, value in inner.items():
                total[key] = total.get(key, 0) + number * value
            constants += more
    return total, constants


def solve(totals, celsius, pH):
    """Activities and molalities; totals by master species (PO4, SO4 and CO3 for all of their species), mol/kg."""
    T = celsius + 273.15
    a, b, _ = WATER[celsius]
    present = {key: value for key, value in totals.items() if value > 0}
    rows = []
    for name in SPECIES:
        parts, constants = masters(name)
        if all(key == 'H' or key in present for key in parts):
            rows.append((name, SPECIES[name][0], sum(one(T) for one in constants), parts))
    free = dict(present)
    strength = 0.01

    def gamma(name, charge):
        if charge == 0:
            return 10 ** (0.1 * strength)
        root = sqrt(strength)
        if name in ION_SIZE:
            size, slope = ION_SIZE[name]
            return 10 ** (-a * charge**2 * root / (1 + b * size * root) + slope * strength)
        return 10 ** (-a * charge**2 * (root / (1 + root) - 0.3 * strength))

    for _ in range(20000):
        activity = {key: value * gamma(key, MASTER[key]) for key, value in free.items()}
        activity['H'] = 10**-pH
        molality = {**free, 'H': activity['H'] / gamma('H', 1)}
        sums = dict(free)
        for name, charge, log, parts in rows:
            act = 10**log
            for key, number in parts.items():
                act *= activity[key] ** number
            activity[name] = act
            molality[name] = act / gamma(name, charge)
            for key, number in parts.items():
                if key in sums:
                    sums[key] += number * molality[name]
        charge_of = {**MASTER, **{name: charge for name, charge, _, _ in rows}}
        new = 0.5 * sum(value * charge_of[key] ** 2 for key, value in molality.items())
        worst = max([abs(sums[key] / present[key] - 1) for key in present] + [abs(new / strength - 1)])
        if worst < 1e-11:
            return activity, molality, strength
        for key in present:
            free[key] *= (present[key] / sums[key]) ** 0.4
        strength += 0.3 * (min(new, 5) - strength)
    raise RuntimeError('not solved')


# Charge that a species adds to a titration that ends at CO2, H2PO4-, NH4+ and SO4--.
TITRATED = {'OH': 1, 'H': -1, 'HSO4': -1, 'CaHSO4': -1, 'FeHSO4': -1, 'HPO4': 1, 'PO4': 2, 'H3PO4': -1, 'HCO3': 1, 'CO3': 2, 'NH3': 1, 'NaCO3': 2, 'NaHCO3': 1,
            'CaOH': 1, 'CaHCO3': 1, 'CaCO3': 2, 'CaHPO4': 1, 'CaPO4': 2, 'MgOH': 1, 'MgCO3': 2, 'MgHCO3': 1, 'MgHPO4': 1, 'MgPO4': 2, 'NaHPO4': 1,
            'KHPO4': 1, 'FeOH': 1, 'FeHPO4': 1, 'MnOH': 1, 'MnHCO3': 1, 'ZnOH': 1, 'CuOH': 1, 'CuCO3': 2}


def with_alkalinity(totals, celsius, pH, alkalinity):
    """Finds the carbon that makes the alkalinity."""
    low, high = 1e-9, 0.2
    for _ in range(60):
        middle = sqrt(low * high)
        found = solve({**totals, 'CO3': middle}, celsius, pH)
        if sum(TITRATED.get(key, 0) * value for key, value in found[1].items()) < alkalinity:
            low = middle
        else:
            high = middle
    return found


def indices(mmol_per_litre, celsius, pH):
    density = WATER[celsius][2]
    totals = {key: value / 1000 / density for key, value in mmol_per_litre.items()}
    alkalinity = totals.pop('HCO3', None)
    activity, molality, strength = solve(totals, celsius, pH) if alkalinity is None else with_alkalinity(totals, celsius, pH, alkalinity)
    water = 1 - 0.017 * sum(molality.values())
    T = celsius + 273.15
    result = {}
    for solid, (_, gives, waters) in SOLIDS.items():
        if all(activity.get(key, 0) > 0 for key in gives):
            result[solid] = sum(n * log10(activity[key]) for key, n in gives.items()) + waters * log10(water) - log_k(solid, T)
    return strength, result


TAP = {'Ca': 2.4, 'Mg': 0.6, 'Na': 0.9, 'K': 0.1, 'Cl': 0.8, 'NO3': 0.3, 'SO4': 0.6, 'HCO3': 4.7}
FEED = {'NO3': 10, 'NH4': 0.6, 'PO4': 1.3, 'K': 5.6, 'Ca': 3.0, 'Mg': 1.15, 'SO4': 1.25, 'Na': 0.5, 'Cl': 0.5, 'Fe': 0.02, 'Mn': 0.01, 'Zn': 0.005, 'Cu': 0.001}
DRAIN = {'NO3': 16, 'NH4': 2, 'PO4': 2.5, 'K': 9, 'Ca': 4.5, 'Mg': 2.4, 'SO4': 3.5, 'Na': 2, 'Cl': 1.8, 'HCO3': 2.5}
CONCENTRATE = {'NO3': 10, 'Ca': 3, 'K': 6.5, 'Mg': 1.15, 'SO4': 1.9, 'Cl': 1.0}
CASES = {
    'tap-water-15C': (TAP, 15, 7.4), 'feed-pH-5.8-20C': (FEED, 20, 5.8), 'feed-pH-6.5-20C': (FEED, 20, 6.5), 'warm-feed-pH-7.2-30C': (FEED, 30, 7.2),
    'drain-pH-7.6-25C': (DRAIN, 25, 7.6),
    'calcium-sulfate-concentrate-1:10': ({key: 10 * value for key, value in CONCENTRATE.items()}, 25, 5.5),
    'calcium-sulfate-concentrate-1:20': ({key: 20 * value for key, value in CONCENTRATE.items()}, 25, 5.5),
    'calcium-sulfate-concentrate-1:100': ({key: 100 * value for key, value in CONCENTRATE.items()}, 25, 5.5),
}

if __name__ == '__main__':
    for name, (amounts, celsius, pH) in CASES.items():
        strength, result = indices(amounts, celsius, pH)
        print(f'{name}: ionic strength {strength:.4f}', {solid: round(value, 3) for solid, value in result.items()})
    print('gypsum in pure water, mmol/kg:')
    for celsius in (10, 20, 25, 30):
        low, high = 0.001, 0.05
        for _ in range(60):
            middle = (low + high) / 2
            value = indices({'Ca': 1000 * middle * WATER[celsius][2], 'SO4': 1000 * middle * WATER[celsius][2]}, celsius, 7)[1]['gypsum']
            low, high = (middle, high) if value < 0 else (low, middle)
        print(celsius, round(1000 * low, 2))
