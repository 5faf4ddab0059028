import { describe, expect, it } from 'vitest';
import { benchHouse } from '../../helpers/bench-house.ts';
import { describeBenchPhrases } from '../../helpers/bench-phrases.ts';
import { answerOf, anyone, troubleIn } from '../../helpers/house.ts';

describeBenchPhrases('phrases about reactions', new URL('./reaction.json', import.meta.url));

describe('a contact', () => {
  const told = 'report: itch after 26-BAFO; contact: 01234 567890';

  it('should be shown to writers and kept from everybody else', async () => {
    const house = await benchHouse();
    answerOf(await house.say('only role Bench may write'));
    answerOf(await house.say(told));
    const reader = { ...anyone, id: 'm2', manages: false };
    for (const text of ['show R1', 'list reactions', 'reactions for 26-BAFO', 'trace 26-BAFO']) {
      const reply = await house.say(text, { member: reader });
      expect(JSON.stringify(reply)).not.toContain('567890');
    }
    const writer = { ...reader, roles: ['bench'] };
    expect(JSON.stringify(await house.say('show R1', { member: writer }))).toContain('567890');
    expect(troubleIn(await house.say('close R1', { member: reader })).code).toBe('not-allowed');
  });

  it('should be gone from what stands in the book once it is taken away', async () => {
    const house = await benchHouse();
    answerOf(await house.say(told));
    answerOf(await house.say('forget the contact of R1'));
    const book = await house.keeper.open('local');
    expect(JSON.stringify([...(book.state.bench?.reactions ?? [])])).not.toContain('567890');
  });
});

describe('a reaction', () => {
  it('should be told privately, with the deadline of the region', async () => {
    const house = await benchHouse();
    const eu = answerOf(await house.say('report: rash after 26-KIVO'));
    expect(eu.quiet).toBe(true);
    expect(eu.figures.tell_by).toBe('2026-12-15');
    answerOf(await house.say('region us'));
    // 15 business days after Wednesday 25 November 2026, Thanksgiving left out.
    expect(answerOf(await house.say('show R1')).figures.tell_by).toBe('2026-12-17');
  });

  it('should not lie in the future', async () => {
    const house = await benchHouse();
    expect(troubleIn(await house.say('report: rash after 26-KIVO on 2026-12-24')).code).toBe('out-of-range');
  });
});
