import type { Settings } from '../../core/settings.ts';
import type { Tools } from '../topic.ts';

/** The tools for one answer, with the units that were asked for in place of the group's. */
export const toolsIn = (units: Settings['units'] | undefined, tools: Tools): Tools =>
  units === undefined ? tools : { ...tools, settings: { ...tools.settings, units } };
