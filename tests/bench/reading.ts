import { jsonLine } from '../../bot/render/json.ts';
import { testHouse } from '../helpers/house.ts';
import { cpuTimes, median, timed } from './measure.ts';
import { below, type Found, ratio, spread, time } from './report.ts';

const warmUps = 5000;
const runs = 10_000;
const batches = { batches: 60, size: 200 };

/** Reading and answering in memory: no store, no front-end. */
export const reading = async (): Promise<Found> => {
  const { say, faults } = await testHouse();
  // The counts differ, so that no two messages in a row are the same.
  const scale = (at: number) => say(`scale Fernlea hand balm to ${1 + (at % 500)} tins of 15 ml`);
  const inline = (at: number) =>
    say(`scale 20 g beeswax, 30 g shea butter, 50 g olive oil to ${1 + (at % 500)} tins of 15 g`);
  const written = async (at: number) => jsonLine(await scale(at), []);
  const plain = () => say('what is candelilla wax');
  const slipped = () => say('what is candellila wax');
  const sample = await scale(24);
  const copy = () => JSON.parse(JSON.stringify(sample));

  for (const work of [scale, inline, written, plain, slipped, copy]) await timed(warmUps, work);

  const copied = await timed(runs, copy);
  const scaled = await timed(runs, scale);
  const cpu = median(await cpuTimes(batches, scale));
  const copyCpu = median(await cpuTimes(batches, copy));
  const inlined = await timed(runs, inline);
  const rendered = await timed(runs, written);
  const known = await timed(runs, plain);
  const guessed = await timed(runs, slipped);
  const base = 'JSON there and back of the reply';
  return {
    rows: [
      { measure: base, ...spread(copied) },
      {
        measure: 'read + answer: scale, saved recipe',
        ...spread(scaled),
        ratio: ratio(median(scaled), median(copied)),
        baseline: base,
      },
      {
        measure: '… the same in CPU time of all threads',
        median: time(cpu),
        ratio: ratio(cpu, copyCpu),
        baseline: base,
        aim: below(cpu, 0.06, '< 60 µs'),
      },
      {
        measure: '… with the JSON line written',
        ...spread(rendered),
        ratio: ratio(median(rendered), median(copied)),
        baseline: base,
      },
      {
        measure: 'read + answer: scale, inline recipe',
        ...spread(inlined),
        ratio: ratio(median(inlined), median(copied)),
        baseline: base,
      },
      { measure: 'ingredient look-up, spelt right', ...spread(known) },
      {
        measure: 'ingredient look-up, with a slip',
        ...spread(guessed),
        ratio: ratio(median(guessed), median(known)),
        baseline: 'the same spelt right',
      },
    ],
    faults: faults.map(String),
  };
};
