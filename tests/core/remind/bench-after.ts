import type { BenchEvent } from '../../../core/bench/events.ts';
import { afterBenchEvent } from '../../../core/bench/fold.ts';
import { type Bench, emptyBench } from '../../../core/bench/state.ts';

/** The bench after some events, numbered from 1. */
export const benchAfter = (events: readonly BenchEvent[], bench: Bench = emptyBench): Bench =>
  events.reduce((all, event, index) => afterBenchEvent(all, event, index + 1), bench);
