import type { DesignLine } from '../../core/design/sketch.ts';
import { shortName } from './warnings.ts';

/** A line of a proposal as a maker would write it: "calendula-infused olive oil". */
export const lineName = ({ ingredient, infusedWith }: DesignLine): string =>
  infusedWith ? `${shortName(infusedWith)}-infused ${shortName(ingredient)}` : shortName(ingredient);
