import { describe, expect, it } from 'vitest';
import { plantRows } from '../../core/data/rules/plant-names.ts';
import { answerOf, testHouse } from '../helpers/house.ts';

/** Names the rules speak of, the forms they are bought in, and what has to be told. `source` says where that stands. */
const rows: readonly {
  readonly names: readonly string[];
  readonly forms: readonly string[];
  readonly code: string;
  readonly source: string;
}[] = [
  {
    names: plantRows.flatMap(({ names, any }) => (any === 'peru-balsam' ? [] : names)),
    forms: ['10 g freshly picked X', '6 g X hydrosol', '5 g X tincture'],
    code: 'brings-water',
    source: 'common practice, no source: what is wet goes mouldy',
  },
  {
    names: ['comfrey', 'Symphytum officinale', 'knitbone'],
    forms: ['6 g dried X leaves', '30 g X infused oil', '5 g X root powder', '8 g X tea', '3 g X extract'],
    code: 'not-for-lips',
    source: 'Norwegian risk profile of comfrey, read',
  },
  {
    names: ['coltsfoot', 'Tussilago farfara', 'alkanet', 'borage leaf'],
    forms: ['6 g X', '20 g X infused oil', '6 g my own X'],
    code: 'not-for-lips',
    source: 'the same alkaloids: read second-hand and memory',
  },
  {
    names: ['arnica', 'Arnica montana'],
    forms: ['6 g X flowers', '30 g X oil', '1 g X essential oil', '5 g fresh X'],
    code: 'not-for-lips',
    source: 'European herbal monograph, memory',
  },
  {
    names: ['lemon verbena', 'Lippia citriodora', 'Aloysia citrodora'],
    forms: ['0.2 g X essential oil', '0.2 g X oil', '0.3 g X CO2 extract'],
    code: 'prohibited',
    source: 'Annex II 450 of Regulation (EC) 1223/2009, read',
  },
  {
    names: ['Tagetes erecta', 'African marigold'],
    forms: ['1 g X extract', '0.1 g X oil', '0.1 g X absolute', '5 g X petals'],
    code: 'prohibited',
    source: 'Annex II 1383 of Regulation (EC) 1223/2009, read',
  },
  {
    names: ['Peru balsam', 'balsam of Peru', 'Myroxylon pereirae resin'],
    forms: ['0.5 g X', '0.5 g crude X', '0.5 g raw X'],
    code: 'prohibited',
    source: 'Annex II 1136 of Regulation (EC) 1223/2009, read',
  },
  {
    names: ['Peru balsam'],
    forms: ['0.6 g X oil', '0.6 g X extract'],
    code: 'over-limit',
    source: 'Annex III 154 of Regulation (EC) 1223/2009, read: 0.4 %',
  },
  {
    names: [
      'pennyroyal',
      'Mentha pulegium',
      'thuja',
      'wormwood',
      'Ruta graveolens',
      'sassafras',
      'horseradish',
    ],
    forms: ['0.5 g X oil', '5 g dried X leaves', '5 g X leaves', '20 g X infused oil', '0.5 g X'],
    code: 'not-for-lips',
    source: 'IFRA prohibitions and toxicity literature, memory',
  },
  {
    names: ['wintergreen', 'Gaultheria procumbens'],
    forms: ['0.3 g X essential oil', '0.3 g X leaf oil', '0.3 g X oil'],
    code: 'over-limit',
    source: 'Annex III 324 of Regulation (EC) 1223/2009 as changed by (EU) 2022/1531, read second-hand',
  },
  {
    names: ['cedar', 'bay', 'marigold', 'chamomile'],
    forms: ['0.2 g X essential oil', '0.2 g X oil'],
    code: 'wrong-species',
    source: 'look-alikes and restricted kin: memory',
  },
  {
    names: ['hydrous lanolin', 'lanolin (hydrous)', 'hydrous wool fat'],
    forms: ['15 g X'],
    code: 'wool-allergen',
    source: 'lanolin as a contact allergen, memory',
  },
];

const asked = rows.flatMap(({ names, forms, code, source }) =>
  forms.map((form) => [form, code, source, names] as const),
);

describe('a line of a recipe that is checked', () => {
  it.each(asked)('should be told by every name: %s, %s (%s)', async (form, code, _source, names) => {
    const house = await testHouse();
    const silent: string[] = [];
    for (const name of names) {
      const reply = await house.say(`check 20 g beeswax, 70 g olive oil, ${form.replace('X', name)}`);
      const codes =
        reply.topic === 'check' && 'answer' in reply ? reply.answer.warnings.map((each) => each.code) : [];
      if (!codes.includes(code)) silent.push(name);
    }
    expect(silent).toEqual([]);
    expect(house.faults).toEqual([]);
  });

  it('should judge each thing an open name can be, and say so', async () => {
    const house = await testHouse();
    const { warnings } = answerOf(
      await house.say('check 20 g beeswax, 78 g walnut oil, 2 g mint essential oil'),
    );
    expect(warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['nut-allergen', 'aroma-too-high']),
    );
  });

  it.each(['unicorn tears', 'stardust', 'glitter dust'])('should never be left out: %s', async (thing) => {
    const house = await testHouse();
    for (const amount of ['10 g', '10 %', '1 part']) {
      const unit = amount.replace(/^\d+ /, '');
      const reply = await house.say(
        `check my spring salve, for lips: 4 ${unit} beeswax, 8 ${unit} olive oil, ${amount} ${thing}`,
      );
      expect('error' in reply).toBe(true);
    }
  });

  it('should be kept in a saved recipe as it was written, marked, and found by its check', async () => {
    const house = await testHouse();
    const saved = answerOf(
      await house.say(
        'save recipe Pantry pot: beeswax 20%, sweet almond oil 72%, aloe juice 5%, vitamin E 3%',
      ),
    );
    expect(saved.warnings.map(({ code }) => code)).toContain('brings-water');
    const { warnings } = answerOf(await house.say('check Pantry pot'));
    expect(warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['brings-water', 'nut-allergen', 'dose-over-usual']),
    );
    const scaled = answerOf(await house.say('scale Pantry pot to 500 g'));
    expect(scaled.warnings.map(({ code }) => code)).toContain('brings-water');
  });
});
