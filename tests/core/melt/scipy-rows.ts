import type { Recipe } from './blends.ts';

/** Printed by solid-fraction.py, which solves the same mass balance with SciPy's general root finder (brentq). */
export const scipyRows: readonly {
  readonly blend: Recipe;
  readonly endC: number;
  readonly solidPercent: readonly (readonly [number, number])[];
}[] = [
  {
    blend: { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'sunflower-oil': 50 },
    endC: 54.774561159,
    solidPercent: [
      [-10, 41.990710479],
      [5, 36.698985011],
      [15, 33.729356445],
      [20, 29.721427743],
      [27.5, 20.64753924],
      [33, 13.42094313],
      [41, 9.094645884],
      [48, 6.071279209],
      [53, 2.206677543],
    ],
  },
  {
    blend: { beeswax: 10, 'carnauba-wax': 5, 'coconut-oil': 25, 'sunflower-oil': 60 },
    endC: 67.091393289,
    solidPercent: [
      [-10, 33.244291834],
      [5, 27.483439092],
      [15, 17.300907982],
      [20, 12.42136164],
      [27.5, 10.900894893],
      [33, 8.973227618],
      [41, 7.64211845],
      [48, 5.414413709],
      [53, 3.813128139],
    ],
  },
  {
    blend: { beeswax: 34, 'coconut-oil': 33, 'shea-butter': 33 },
    endC: 57.129388385,
    solidPercent: [
      [-10, 83.751603309],
      [5, 76.844618612],
      [15, 57.027112899],
      [20, 45.822960782],
      [27.5, 36.300391102],
      [33, 25.847588219],
      [41, 17.552741243],
      [48, 13.194870627],
      [53, 7.319471155],
    ],
  },
];
