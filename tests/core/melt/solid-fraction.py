"""Prints the rows of scipy-rows.ts: solids and end of melting of three blends by SciPy's general root finder.

Run with SciPy 1.17: python3 tests/core/melt/solid-fraction.py
The solver under test uses closed forms; this one only knows the mass balance of an ideal liquid and looks for its root.
"""

from math import exp, log

from scipy.optimize import brentq

R = 8.314462618
# Molar mass in g/mol, melting point in deg C, heat of fusion in kJ/mol; no melting point: never freezes.
COMPONENTS = {
    "bwHi": (690, 70.5, 140), "bwLo": (650, 57, 115), "hc29": (415, 63.5, 98), "acid26": (400, 80, 92),
    "acid30": (452, 90, 105), "crn": (900, 87, 172), "soft": (650, None, None), "oil": (872, None, None),
    "unsap": (450, None, None), "pop": (833.4, 37.2, 140), "pos": (861.4, 36.8, 150), "sos": (889.5, 42, 155),
    "sls": (858, 25, 120), "soo": (887.4, 23, 110), "poo": (859.4, 18.5, 100), "trimix": (870, 60, 155),
    "lauLo": (555, 20.9, 80), "lauMid": (625, 27.3, 99), "lauHi": (700, 34.5, 117), "lauXh": (790, 43.2, 140),
}
MAKE_UPS = {
    "beeswax": {"bwHi": .42, "bwLo": .2, "hc29": .15, "acid26": .12, "soft": .11},
    "carnauba-wax": {"crn": .82, "acid30": .03, "soft": .15},
    "cocoa-butter": {"pop": .153, "oil": .113, "pos": .36, "sos": .252, "sls": .055, "soo": .035, "poo": .022,
                     "trimix": .01},
    "shea-butter": {"pop": .0045, "oil": .1475, "pos": .054, "sos": .369, "sls": .055, "soo": .27, "poo": .025,
                    "trimix": .015, "unsap": .06},
    "coconut-oil": {"lauLo": .16, "lauMid": .36, "lauHi": .28, "lauXh": .05, "soft": .15},
    "sunflower-oil": {"oil": 1},
}
BLENDS = [
    {"beeswax": 20, "cocoa-butter": 15, "shea-butter": 15, "sunflower-oil": 50},
    {"beeswax": 10, "carnauba-wax": 5, "coconut-oil": 25, "sunflower-oil": 60},
    {"beeswax": 34, "coconut-oil": 33, "shea-butter": 33},
]
CELSIUS = [-10, 5, 15, 20, 27.5, 33, 41, 48, 53]


def moles(blend):
    whole = sum(blend.values())
    found = {}
    for name, share in blend.items():
        for component, fraction in MAKE_UPS[name].items():
            found[component] = found.get(component, 0) + share / whole * fraction / COMPONENTS[component][0]
    return found


def held(component, kelvin):
    _, melt, heat = COMPONENTS[component]
    return None if melt is None else exp(-heat * 1000 / R * (1 / kelvin - 1 / (melt + 273.15)))


def in_liquid(n, fraction, liquid):
    return n if fraction is None else min(n, fraction * liquid)


def solid_percent(found, kelvin):
    total = sum(found.values())
    share = {c: held(c, kelvin) for c in found}
    # The liquid is what its parts add up to; the trivial root at 0 lies outside the bracket.
    excess = lambda liquid: sum(in_liquid(n, share[c], liquid) for c, n in found.items()) - liquid
    liquid = total if excess(total) >= 0 else brentq(excess, 1e-9, total, xtol=1e-18, rtol=1e-14)
    solid = {c: n - in_liquid(n, share[c], liquid) for c, n in found.items()}
    return 100 * sum(n * COMPONENTS[c][0] for c, n in solid.items())


def end_of_melting(found):
    total = sum(found.values())
    most = lambda kelvin: max(log(n / total) - log(held(c, kelvin)) for c, n in found.items() if COMPONENTS[c][1])
    return brentq(most, 250, 400, xtol=1e-12) - 273.15


for blend in BLENDS:
    found = moles(blend)
    points = [[t, round(solid_percent(found, t + 273.15), 9)] for t in CELSIUS]
    print({"blend": blend, "endC": round(end_of_melting(found), 9), "solidPercent": points})
