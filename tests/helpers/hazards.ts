import { type Hazard, type HazardInput, hazardsOf } from '../../core/hazards.ts';

/** Nothing here stings, smells, is wet, grows next to something poisonous, or came from a nut, a bee or a sheep. */
export const clean: HazardInput = {
  lines: [
    { ingredient: 'candelilla-wax', percent: 20 },
    { ingredient: 'mango-butter', percent: 30 },
    { ingredient: 'high-oleic-sunflower-oil', percent: 50 },
  ],
  strained: [],
  tooSmall: [],
};

export interface Extra {
  readonly with?: HazardInput['lines'];
  readonly strained?: HazardInput['strained'];
  readonly tooSmall?: HazardInput['tooSmall'];
}

export const hazards = (extra: Extra): readonly Hazard[] =>
  hazardsOf({
    lines: [...clean.lines, ...(extra.with ?? [])],
    strained: extra.strained ?? [],
    tooSmall: extra.tooSmall ?? [],
  });

export const codes = (extra: Extra): readonly string[] => hazards(extra).map((hazard) => hazard.code);
