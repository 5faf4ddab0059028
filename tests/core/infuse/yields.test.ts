import { describe, expect, it } from 'vitest';
import { afterEntries, type BookEntry, type BookEvent, bookState, emptyBook } from '../../../core/book.ts';
import { uptakeFor } from '../../../core/infuse/uptake.ts';
import { weighedUptake } from '../../../core/infuse/yields.ts';
import { ingredientById, isHerb } from '../../../core/ingredients.ts';

const entries = (events: readonly BookEvent[]): BookEntry[] =>
  events.map((event, at) => ({
    v: 1,
    group: 'local',
    seq: at + 1,
    at: '2026-11-25T09:00:00.000Z',
    who: 'me',
    event,
  }));

const noted = (oilOutG: number, herb = 'calendula'): BookEvent => ({
  kind: 'yield-noted',
  herb,
  herbG: 40,
  oilInG: 320,
  oilOutG,
});

const calendula = ingredientById('calendula');
const uptakeAfter = (events: readonly BookEvent[]) =>
  uptakeFor(
    calendula && isHerb(calendula) ? calendula : undefined,
    afterEntries(emptyBook, entries(events)).yields,
  );

describe('a weighed yield', () => {
  it('should become the figure of its herb: 60 g kept by 40 g is 1.5 to the gram', () => {
    expect(uptakeAfter([noted(260)])).toEqual({ value: 1.5, low: 1.35, high: 1.65, weighings: 1 });
  });

  it('should be averaged with the others of that herb, and leave other herbs alone', () => {
    const uptake = uptakeAfter([noted(260), noted(280), noted(200, 'plantain')]);
    expect(uptake).toMatchObject({ value: 1.25, low: 1, high: 1.5, weighings: 2 });
  });

  it('should drop out after five newer ones', () => {
    const uptake = uptakeAfter([noted(100), ...Array.from({ length: 5 }, () => noted(260))]);
    expect(uptake).toMatchObject({ value: 1.5, weighings: 5 });
  });

  it('should keep the book valid', () => {
    const state = afterEntries(emptyBook, entries([noted(260)]));
    expect(bookState.parse(JSON.parse(JSON.stringify(state)))).toEqual(state);
  });

  it('should be refused when more came out than went in, or more was kept than a herb can hold', () => {
    expect(weighedUptake({ herbG: 40, oilInG: 320, oilOutG: 330 })).toMatchObject({
      problem: { code: 'more-out-than-in' },
    });
    expect(weighedUptake({ herbG: 40, oilInG: 320, oilOutG: 10 })).toMatchObject({
      problem: { code: 'too-much-kept' },
    });
  });
});
