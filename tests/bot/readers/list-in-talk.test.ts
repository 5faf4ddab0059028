import { describe, expect, it } from 'vitest';
import { listInTalk, lookInTalk } from '../../../bot/readers/list-in-talk.ts';
import { understand } from '../../../bot/understand.ts';
import { emptyBook } from '../../../core/book.ts';
import { answerOf, now, testHouse, troubleIn } from '../../helpers/house.ts';

const reading = (text: string) => understand(text, emptyBook, emptyBook.settings, undefined, now);

describe('a recipe in the midst of talk', () => {
  it.each([
    [
      'I have lemon verbena oil left over, can it go in? 20% beeswax, 79.7% olive oil, 0.3% lemon verbena essential oil, all for lips',
      '20% beeswax, 79.7% olive oil, 0.3% lemon verbena essential oil',
    ],
    [
      'For 200 g of lip balm I have 40 g beeswax, 60 g kokum butter, 99 g olive oil and 1 g ginger oil (the essential one). Would you check that?',
      '40 g beeswax, 60 g kokum butter, 99 g olive oil, 1 g ginger essential oil',
    ],
    [
      'Citrus one\n\nbeeswax 24 g\nrice bran oil 75.4 g\ndistilled lemon EO 0.6 g\n\nok to give away?',
      '24 g beeswax, 75.4 g rice bran oil, 0.6 g distilled lemon EO',
    ],
    [
      'retinol 0.2 g in a lip balm of 20 g beeswax, 30 g cocoa butter, 49.8 g olive oil - under the limit, right?',
      '0.2 g retinol, 20 g beeswax, 30 g cocoa butter, 49.8 g olive oil',
    ],
    [
      'second go, only 0.1 g now. 20 g beeswax, 79.9 g olive oil, 0.1 g sweet fennel essential oil. ok on lips?',
      '20 g beeswax, 79.9 g olive oil, 0.1 g sweet fennel essential oil',
    ],
    [
      'First time maker. Melt 20 g beeswax, 30 g cocoa butter and 50 g olive oil in a water bath, pour into tins. Is that safe on lips?',
      '20 g beeswax, 30 g cocoa butter, 50 g olive oil',
    ],
  ])('should be found: %s', (text, list) => {
    expect(listInTalk(reading(text))).toBe(list);
  });

  it.each([
    ['something in it without an amount', '20% beeswax, 80% olive oil and a splash of milk. ok for lips?'],
    ['a name among the lines alone', '20% beeswax, honey, 80% olive oil, ok for lips?'],
    ['shares that are no whole', '20% beeswax, 60% olive oil, ok for lips?'],
    ['containers to be filled', '20% beeswax, 80% olive oil, 24 tins of 15 ml, ok for lips?'],
    ['another question', '20% beeswax, 80% olive oil for lips, what does it cost?'],
    ['nothing asked', 'we had 20 g beeswax, 80 g olive oil'],
    ['an amount without a name', '20 g beeswax, 80 g olive oil, 40 g, ok for lips?'],
  ])('should be left alone with %s', (_what, text) => {
    expect(listInTalk(reading(text))).toBeUndefined();
  });

  it('should keep whom it is for and where', () => {
    const text =
      'for my children, it is 20% beeswax, 79% olive oil, 1% lavender essential oil, ok in Canada?';
    expect(lookInTalk(reading(text))).toBe(
      'check 20% beeswax, 79% olive oil, 1% lavender essential oil for children in ca',
    );
  });
});

describe('a recipe handed over in talk', () => {
  it('should be looked at, and be told so', async () => {
    const house = await testHouse();
    const reply = await house.say(
      'I have lemon verbena oil left over, can it go in? 20% beeswax, 79.7% olive oil, 0.3% lemon verbena essential oil, all for lips',
    );
    const { warnings, blocks } = answerOf(reply);
    expect(reply.topic).toBe('check');
    // Regulation (EC) No 1223/2009, Annex II 450: verbena essential oils (Lippia citriodora) are prohibited.
    expect(warnings.map(({ code }) => code)).toContain('prohibited');
    expect(JSON.stringify(blocks)).toContain('passed over the talk around it');
  });

  it('should not be looked at where something has no amount', async () => {
    const house = await testHouse();
    const reply = await house.say('my aunt has 20% beeswax, honey, 80% olive oil, grand for lips, eh?');
    if ('answer' in reply) expect(JSON.stringify(reply.answer.blocks)).not.toContain('passed over the talk');
    else expect(troubleIn(reply).text).not.toBe('');
  });
});
