import { meltComponents } from '../data/melt/components.ts';
import type { CrystalState, Mixture } from './composition.ts';

/** Molar gas constant in J/(mol K): exact since the SI of 2019. */
const gasConstant = 8.314462618;

/** 0 °C in kelvin: exact by definition. */
export const zeroCelsiusK = 273.15;

/** Heats of fusion are tabulated in kJ/mol, the gas constant is in J. */
const jouleFromKilojoule = 1000;

/**
 * One component of a blend that can freeze. The mole fraction it may have in the liquid at x = 1/T (1/K) is
 * K(x) = exp(atMelting − heatK · x), with heatK = ΔH/R and atMelting = heatK/T_melt: ideal solubility.
 */
export interface Freezer {
  readonly index: number;
  /** Moles in one gram of blend. */
  readonly moles: number;
  readonly molarMassGMol: number;
  /** Mean strength of the ingredients that bring it. */
  readonly strength: number;
  readonly wax: boolean;
  readonly heatK: number;
  readonly atMelting: number;
  /** ln(moles) − atMelting, so that ln(moles / K) = keyBase + heatK · x. */
  readonly keyBase: number;
}

/** What of one gram of blend can freeze, and the moles of everything in it. */
export interface Freezing {
  readonly freezers: readonly Freezer[];
  readonly totalMoles: number;
}

/** A change to one component's figures, to see how much the answer hangs on them. */
export interface Tweak {
  readonly index: number;
  readonly meltShiftC: number;
  readonly heatFactor: number;
}

interface Figures {
  readonly meltC: number;
  readonly heatKJMol: number;
  readonly freshShiftC: number;
}

const freezer = (
  index: number,
  row: { readonly molarMassGMol: number; readonly family: 'wax' | 'fat' } & Figures,
  grams: number,
  strengthGrams: number,
  state: CrystalState,
  tweak: Tweak | undefined,
): Freezer => {
  const tweaked = tweak?.index === index ? tweak : undefined;
  const shiftC = (state === 'fresh' ? row.freshShiftC : 0) + (tweaked?.meltShiftC ?? 0);
  const heatK = ((row.heatKJMol * jouleFromKilojoule) / gasConstant) * (tweaked?.heatFactor ?? 1);
  const atMelting = heatK / (row.meltC + shiftC + zeroCelsiusK);
  const moles = grams / row.molarMassGMol;
  return {
    index,
    moles,
    molarMassGMol: row.molarMassGMol,
    strength: strengthGrams / grams,
    wax: row.family === 'wax',
    heatK,
    atMelting,
    keyBase: Math.log(moles) - atMelting,
  };
};

/** Prepares a mixture for the solver. Components that are absent or never freeze count as liquid only. */
export const freezingOf = (mixture: Mixture, state: CrystalState, tweak?: Tweak): Freezing => {
  const freezers: Freezer[] = [];
  let totalMoles = 0;
  for (const [index, row] of meltComponents.entries()) {
    const grams = mixture.mass[index] ?? 0;
    if (grams <= 0) continue;
    totalMoles += grams / row.molarMassGMol;
    if (row.family === 'never') continue;
    freezers.push(freezer(index, row, grams, mixture.strengthMass[index] ?? 0, state, tweak));
  }
  return { freezers, totalMoles };
};

/**
 * Temperature in °C at which the last crystal of one substance dissolves when it makes up `moleFraction` of the whole:
 * the ideal solubility line, T = ΔH / (ΔH/T_melt − R ln x). At a mole fraction of 1 that is its melting point.
 */
export const dissolvesAtC = (meltC: number, heatKJMol: number, moleFraction: number): number => {
  const heatK = (heatKJMol * jouleFromKilojoule) / gasConstant;
  return heatK / (heatK / (meltC + zeroCelsiusK) - Math.log(moleFraction)) - zeroCelsiusK;
};

/** The component that melts last, with the temperature in °C above which all is liquid; nothing if nothing freezes. */
export const lastToMelt = (
  freezing: Freezing,
): { readonly index: number; readonly celsius: number } | undefined => {
  let last: { index: number; celsius: number } | undefined;
  for (const { index, moles, heatK, atMelting } of freezing.freezers) {
    const celsius = heatK / (atMelting - Math.log(moles / freezing.totalMoles)) - zeroCelsiusK;
    if (!last || celsius > last.celsius) last = { index, celsius };
  }
  return last;
};
