import { localDay } from '../../core/bench/days.ts';
import type { Tools } from '../topic.ts';

/** The group's own day at the instant of the message, ISO; UTC until a zone is set. */
export const groupDay = ({ at, settings }: Pick<Tools, 'at' | 'settings'>): string =>
  localDay(at, settings.zone ?? 'UTC');
