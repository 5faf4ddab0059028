import { describe, expect, it } from 'vitest';
import { answerOf, testHouse } from '../helpers/house.ts';

const told = async (say: string) => {
  const house = await testHouse();
  return answerOf(await house.say(say));
};

// From memory, as the fact tables mark it: no source here clears a balm for pregnancy, so the answer sends to who can.
describe('a look for somebody who is pregnant', () => {
  it.each([
    'is Fernlea mint lip balm ok for pregnant women',
    'My sister is pregnant. Can she use the mint lip balm?',
    'is 1% lavender essential oil ok in pregnancy',
  ])('should send to a midwife or doctor: %s', async (say) => {
    const answer = await told(say);
    expect(answer.warnings.map(({ code }) => code)).toContain('pregnancy');
    expect(JSON.stringify(answer)).toMatch(/ask a midwife or doctor/);
  });

  it('should name what the facts tell to leave out, marked as from memory', async () => {
    const answer = await told('is 1% sweet fennel essential oil ok in pregnancy');
    const text = answer.warnings.find(({ code }) => code === 'pregnancy')?.text ?? '';
    expect(text).toMatch(/leave out .+ \(from memory\)/i);
  });

  it('should say nothing of it to anybody else', async () => {
    const answer = await told('check Fernlea mint lip balm');
    expect(answer.warnings.map(({ code }) => code)).not.toContain('pregnancy');
  });
});
