import type { CrystalState } from '../../../core/melt/composition.ts';
import type { Recipe } from './blends.ts';

/**
 * What a prototype of the model printed for 14 blends. It checks the implementation and proves nothing about nature:
 * for that see tests/published/melt-*.test.ts.
 */
export interface GoldenRow {
  readonly name: string;
  readonly recipe: Recipe;
  readonly state: CrystalState;
  /** Percent solid at 20, 25 … 60 °C. */
  readonly solidPercent: readonly number[];
  readonly fullyMeltedC: number;
  readonly softensC: number;
  /** Structure at 20 °C. */
  readonly structure20: number;
  /** Firmness index at 20, 25 … 40 °C. */
  readonly firmness: readonly number[];
}

export const goldenRows: readonly GoldenRow[] = [
  {
    name: 'G01 plain salve 20/80',
    recipe: { beeswax: 20, 'sunflower-oil': 80 },
    state: 'aged',
    solidPercent: [17.18, 16.49, 15.04, 11.91, 9.33, 7.79, 4.71, 0.0, 0.0],
    fullyMeltedC: 54.82,
    softensC: 49.51,
    structure20: 0.17184,
    firmness: [100.0, 92.1, 76.6, 48.1, 29.5],
  },
  {
    name: 'G02 plain stick 31.5/68.5',
    recipe: { beeswax: 31.5, 'sunflower-oil': 68.5 },
    state: 'aged',
    solidPercent: [27.49, 26.88, 25.6, 22.84, 17.25, 14.1, 10.88, 4.57, 0.0],
    fullyMeltedC: 57.4,
    softensC: 54.71,
    structure20: 0.27492,
    firmness: [255.9, 244.7, 221.9, 176.7, 100.8],
  },
  {
    name: 'G03 butter stick',
    recipe: { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'sunflower-oil': 50 },
    state: 'aged',
    solidPercent: [29.72, 23.4, 15.79, 11.86, 9.32, 7.76, 4.68, 0.0, 0.0],
    fullyMeltedC: 54.77,
    softensC: 49.46,
    structure20: 0.21005,
    firmness: [149.4, 117.5, 78.9, 47.6, 29.4],
  },
  {
    name: 'G03 butter stick',
    recipe: { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'sunflower-oil': 50 },
    state: 'fresh',
    solidPercent: [23.72, 16.74, 15.04, 11.86, 9.32, 7.76, 4.68, 0.0, 0.0],
    fullyMeltedC: 54.77,
    softensC: 49.46,
    structure20: 0.19176,
    firmness: [124.5, 92.9, 76.4, 47.6, 29.4],
  },
  {
    name: 'G04 tin balm',
    recipe: { beeswax: 15, 'shea-butter': 35, 'sunflower-oil': 50 },
    state: 'aged',
    solidPercent: [25.25, 22.62, 14.87, 7.78, 6.59, 4.99, 2.54, 0.0, 0.0],
    fullyMeltedC: 53.05,
    softensC: 44.98,
    structure20: 0.16522,
    firmness: [92.4, 78.9, 47.4, 20.5, 14.7],
  },
  {
    name: 'G05 candelilla + cocoa',
    recipe: { 'candelilla-wax': 12, 'cocoa-butter': 30, 'sunflower-oil': 58 },
    state: 'aged',
    solidPercent: [25.45, 15.81, 8.49, 8.01, 6.95, 4.6, 1.17, 0.0, 0.0],
    fullyMeltedC: 51.93,
    softensC: 44.39,
    structure20: 0.20865,
    firmness: [147.4, 107.6, 79.1, 70.4, 53.1],
  },
  {
    name: 'G06 beeswax + carnauba + coconut',
    recipe: { beeswax: 10, 'carnauba-wax': 5, 'coconut-oil': 25, 'sunflower-oil': 60 },
    state: 'aged',
    solidPercent: [12.42, 11.6, 9.88, 8.75, 7.89, 6.57, 4.24, 3.68, 3.0],
    fullyMeltedC: 67.09,
    softensC: 50.15,
    structure20: 0.13269,
    firmness: [59.6, 52.5, 38.9, 31.1, 25.7],
  },
  {
    name: 'G07 thirds',
    recipe: { beeswax: 33.3, 'coconut-oil': 33.3, 'shea-butter': 33.4 },
    state: 'aged',
    solidPercent: [45.39, 38.46, 31.04, 23.6, 17.81, 14.65, 10.98, 4.16, 0.0],
    fullyMeltedC: 57.01,
    softensC: 54.48,
    structure20: 0.34009,
    firmness: [391.7, 335.0, 268.7, 188.5, 107.4],
  },
  {
    name: 'G08 no wax, cocoa + oil',
    recipe: { 'cocoa-butter': 60, 'sunflower-oil': 40 },
    state: 'aged',
    solidPercent: [41.37, 29.58, 6.08, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    fullyMeltedC: 32.13,
    softensC: 30.47,
    structure20: 0.1241,
    firmness: [52.2, 26.7, 1.1, 0.0, 0.0],
  },
  {
    name: 'G08 no wax, cocoa + oil',
    recipe: { 'cocoa-butter': 60, 'sunflower-oil': 40 },
    state: 'fresh',
    solidPercent: [25.47, 4.34, 0.21, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    fullyMeltedC: 32.08,
    softensC: 24.75,
    structure20: 0.07641,
    firmness: [19.8, 0.6, 0.0, 0.0, 0.0],
  },
  {
    name: 'G09 sunflower wax + mango + fractionated coconut',
    recipe: { 'sunflower-wax': 10, 'mango-butter': 30, 'fractionated-coconut-oil': 60 },
    state: 'aged',
    solidPercent: [18.47, 15.34, 9.47, 9.42, 9.3, 9.0, 8.3, 6.66, 2.8],
    fullyMeltedC: 62.02,
    softensC: 57.68,
    structure20: 0.21686,
    firmness: [159.3, 145.6, 121.5, 120.2, 117.2],
  },
  {
    name: 'G10 published lipstick optimum 2016',
    recipe: { beeswax: 19.58, 'cocoa-butter': 22.75, 'sunflower-oil': 57.67 },
    state: 'aged',
    solidPercent: [28.14, 19.14, 14.65, 11.5, 9.1, 7.55, 4.52, 0.0, 0.0],
    fullyMeltedC: 54.69,
    softensC: 49.18,
    structure20: 0.20264,
    firmness: [139.1, 98.5, 72.7, 44.8, 28.1],
  },
  {
    name: 'G11 pure coconut oil',
    recipe: { 'coconut-oil': 100 },
    state: 'aged',
    solidPercent: [36.58, 3.89, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    fullyMeltedC: 25.62,
    softensC: 24.82,
    structure20: 0.10973,
    firmness: [40.8, 0.5, 0.0, 0.0, 0.0],
  },
  {
    name: 'G12 salve with 2 % essential oil',
    recipe: { beeswax: 20, 'sunflower-oil': 78, 'peppermint-essential-oil': 2 },
    state: 'aged',
    solidPercent: [17.11, 16.34, 14.72, 11.23, 9.18, 7.48, 4.35, 0.0, 0.0],
    fullyMeltedC: 54.29,
    softensC: 48.96,
    structure20: 0.17113,
    firmness: [99.2, 90.4, 73.4, 42.7, 28.6],
  },
  {
    name: 'G13 soft salve 1:8',
    recipe: { beeswax: 11.1111, 'sunflower-oil': 88.8889 },
    state: 'aged',
    solidPercent: [9.22, 8.46, 6.88, 5.26, 4.5, 3.08, 0.97, 0.0, 0.0],
    fullyMeltedC: 51.38,
    softensC: 45.02,
    structure20: 0.09217,
    firmness: [28.8, 24.3, 16.0, 9.4, 6.8],
  },
  {
    name: 'G14 many parts',
    recipe: {
      beeswax: 20,
      'candelilla-wax': 3,
      'carnauba-wax': 2,
      'cocoa-butter': 15,
      'shea-butter': 15,
      'coconut-oil': 15,
      'mango-butter': 10,
      'peppermint-essential-oil': 1,
      'sunflower-oil': 19,
    },
    state: 'aged',
    solidPercent: [38.17, 30.54, 22.37, 14.55, 11.63, 9.5, 6.25, 1.17, 0.43],
    fullyMeltedC: 61.62,
    softensC: 51.5,
    structure20: 0.28319,
    firmness: [271.6, 218.8, 157.8, 88.2, 53.6],
  },
];
