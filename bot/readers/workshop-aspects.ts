import { defined } from '../../core/defined.ts';
import { convertTemperature } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import { sizeOf } from './target.ts';
import { nothing, peopleIn, type Said } from './workshop-people.ts';
import { after, before, type Figure, figuresIn, overlaps, type Span } from './workshop-spans.ts';
import { peopleWords } from './workshop-words.ts';

const plateShape =
  /^[\s-]*(?:(?:electric|single|small|portable|induction|camping|working)[\s-]+){0,2}(?:hot[\s-]?plates?|plates?|hobs?|hob rings?|rings?|burners?|cookers?|stoves?|water baths?|baths?|bain[\s-]maries?|pans?)\b/i;

const platesIn = (text: string, figures: readonly Figure[]): Said<number> => {
  for (const figure of figures) {
    const found = after(text, figure.to, plateShape);
    if (found)
      return { value: figure.value, spans: [{ from: figure.from, to: figure.to + found[0].length }] };
  }
  const one =
    /\b(?:a|one|a single)\s+(?:electric\s+|small\s+)?(?:hot[\s-]?plate|hob|burner|cooker|stove)\b/i.exec(
      text,
    );
  return one ? { value: 1, spans: [{ from: one.index, to: one.index + one[0].length }] } : nothing;
};

const jugWord = String.raw`(?:(?:glass|steel|metal|enamel|heat-?proof|measuring|melting|pouring|small|big|large)\s+){0,2}(?:jugs?|pitchers?|beakers?)`;
const jugAfter = new RegExp(`^[\\s-]*(?:each\\s+)?${jugWord}\\b`, 'i');
const jugBefore = new RegExp(`\\b${jugWord}\\s*(?:of|holding|hold|take|at|with|:|=|,)?\\s*$`, 'i');
const jugCount = new RegExp(
  `^\\s*(?:(?:[x×*]\\s*)?\\d+(?:[.,]\\d+)?\\s*(?:ml|l|cl|litres?|liters?)\\s+)?${jugWord}\\b`,
  'i',
);

interface Jugs {
  readonly ml?: number;
  readonly count?: number;
}

const jugsIn = (reading: Reading, figures: readonly Figure[]): Said<Jugs> => {
  const { text, settings } = reading;
  const spans: Span[] = [];
  const volume = reading.items.find(
    (item) => item.letter === 'v' && (after(text, item.to, jugAfter) ?? before(text, item.from, jugBefore)),
  );
  if (volume) {
    const tail = after(text, volume.to, jugAfter)?.[0].length ?? 0;
    const head = tail > 0 ? 0 : (before(text, volume.from, jugBefore)?.[0].length ?? 0);
    spans.push({ from: volume.from - head, to: volume.to + tail });
  }
  const counted = figures.find(
    (figure) => !(volume && overlaps(figure, volume)) && after(text, figure.to, jugCount),
  );
  if (counted) {
    const length = after(text, counted.to, jugCount)?.[0].length ?? 0;
    spans.push({ from: counted.from, to: counted.to + length });
  }
  const size = volume && sizeOf(volume, settings.region);
  return { value: defined({ ml: size?.amount, count: counted?.value }), spans };
};

const spareWord = '(?:spare|extra|reserve|surplus|buffer)';
const spareAfter = new RegExp(
  `^\\s*(?:%|per ?cent)\\s*(?:(?:as|of|for|in|a|the)\\s+){0,2}${spareWord}s?\\b`,
  'i',
);
const spareBefore = new RegExp(`\\b${spareWord}\\s*(?:of|:|=|at|is|about)?\\s*$`, 'i');
const noSpare = new RegExp(`\\b(?:no|without(?: any)?|zero)\\s+${spareWord}s?\\b`, 'i');

const spareIn = (text: string, figures: readonly Figure[]): Said<number> => {
  const none = noSpare.exec(text);
  if (none) return { value: 0, spans: [{ from: none.index, to: none.index + none[0].length }] };
  for (const figure of figures) {
    const tail = after(text, figure.to, spareAfter);
    if (tail) return { value: figure.value, spans: [{ from: figure.from, to: figure.to + tail[0].length }] };
    const head = before(text, figure.from, spareBefore);
    if (!head) continue;
    const percent = after(text, figure.to, /^\s*(?:%|per ?cent)/i)?.[0].length ?? 0;
    return { value: figure.value, spans: [{ from: figure.from - head[0].length, to: figure.to + percent }] };
  }
  return nothing;
};

const places =
  'hall|kitchen|room|classroom|studio|library|barn|garage|church|school|cent(?:re|er)|shed|tent|marquee|garden|shop|caf[eé]|canteen|workroom|clubhouse|pavilion|museum|farm|barn|conservatory|scout hut|hut';
const roomShape = new RegExp(
  `\\b(?:in|at)\\s+(?:the\\s+|our\\s+|my\\s+|a\\s+)?((?:[\\p{L}'-]+\\s+){0,3}?(?:${places})(?:\\s+(?:hall|room|kitchen|cent(?:re|er)|hut))?(?:\\s+(?:\\d{1,3}|[a-z])\\b)?)`,
  'iu',
);
const roomNamed = /\b(?:room|venue|place|where|location)\s*[:=]\s*([^,;.\n]{1,60})/i;

const roomIn = (text: string): Said<string> => {
  const found = roomNamed.exec(text) ?? roomShape.exec(text);
  const name = found?.[1]?.trim();
  return found && name
    ? { value: name.slice(0, 60), spans: [{ from: found.index, to: found.index + found[0].length }] }
    : nothing;
};

const warmth = new RegExp(`\\b(?:${places}|indoors|outside|outdoors|inside)\\b`, 'i');

/** "The hall is only 14 degrees": without a scale named it is °C, as nobody meets in a room of 60. */
const degreesShape = new RegExp(
  `\\b(?:room|it|${places})\\b[^.;!?\\d]{0,30}?(\\d{1,2})\\s*degrees?\\b(?!\\s*(?:f|fahrenheit))|(\\d{1,2})\\s*degrees?\\s+(?:in there|in the (?:${places}))`,
  'i',
);

const degreesIn = (text: string): Said<number> => {
  const found = degreesShape.exec(text);
  return found
    ? {
        value: Number(found[1] ?? found[2]),
        spans: [{ from: found.index, to: found.index + found[0].length }],
      }
    : nothing;
};

/** A temperature beside the word of a room; any other temperature is not ours. */
const roomTemperature = ({ items, text }: Reading): Said<number> => {
  const item = items.find(({ letter }) => letter === 't');
  if (item?.value === undefined) return degreesIn(text);
  const around = text.slice(Math.max(0, item.from - 30), item.to + 25);
  if (!warmth.test(around)) return nothing;
  const unit = item.unit === 'F' ? 'F' : 'C';
  const lead = before(
    text,
    item.from,
    /\b(?:room|hall|it|kitchen|studio)?\s*(?:is|at|of|:|temperature|about|,)*\s*$/i,
  );
  return {
    value: Math.round(convertTemperature(item.value, unit, 'C')),
    spans: [{ from: item.from - (lead?.[0].length ?? 0), to: item.to }],
  };
};

const allergens =
  'nuts?|tree nuts?|almonds?|peanuts?|bee products?|bees?|beeswax|propolis|honey|daisy|daisies|ragweed|chamomile|wool|lanolin|sesame|soya?|wheat|gluten';
const allergyShape = new RegExp(
  `(?:\\b(?:one|two|three|someone|somebody|a|\\d{1,3})\\s+(?:of (?:them|us)\\s+)?(?:(?:person|participant|maker|guest|people|girl|boy|lady|woman|man|child|kid|pupil|student|scout|member|friend|colleague)\\s+)?(?:(?:is|are|has|have|with)\\s+)?(?:an?\\s+)?)?(?:(${allergens})\\s+)?\\ballerg(?:y|ies|ic)\\b(?:\\s+(?:to|against|:)\\s*(?:the\\s+)?((?:${allergens})(?:(?:\\s*,\\s*|\\s+and\\s+|\\s+or\\s+)(?:${allergens})\\b)*))?`,
  'i',
);

const someone =
  '(?:one|two|three|someone|somebody|a|\\d{1,3})\\s+(?:of (?:them|us|the \\w+)\\s+)?(?:(?:person|participant|maker|guest|people|lady|woman|man|child|girl|boy|student)\\s+)?';
/** "One of them cannot have nuts", "somebody reacts to lanolin", "one is intolerant to soy". */
const avoidShape = new RegExp(
  `(?:\\b${someone})?\\b(?:(?:can't|cannot|can not|mustn't|must not|may not|shouldn't|doesn't|don't) (?:have|touch|use|tolerate|eat|go near|be near|do)|avoids?|must avoid|has to avoid|reacts? (?:badly )?to|(?:is|are)\\s+(?:very )?(?:intolerant|sensitive) (?:to|of)|comes? out in a rash (?:from|with))\\s+(?:any |the |all )?((?:${allergens})(?:(?:\\s*,\\s*|\\s+and\\s+|\\s+or\\s+)(?:${allergens})\\b)*)\\b`,
  'i',
);

type Allergy = 'nuts' | 'bee' | 'daisy' | 'wool' | 'food';

const kinds: readonly (readonly [Allergy, RegExp])[] = [
  ['nuts', /nut|almond/i],
  ['bee', /bee|propolis|honey/i],
  ['daisy', /dais|ragweed|chamomile/i],
  ['wool', /wool|lanolin/i],
  ['food', /sesame|soy|wheat|gluten/i],
];

const allergiesIn = (text: string): Said<readonly Allergy[]> => {
  const found = allergyShape.exec(text) ?? avoidShape.exec(text);
  const said = `${found?.[1] ?? ''} ${found?.[2] ?? ''}`;
  const value = kinds.filter(([, shape]) => shape.test(said)).map(([kind]) => kind);
  return found && value.length > 0
    ? { value, spans: [{ from: found.index, to: found.index + found[0].length }] }
    : nothing;
};

const perPerson = new RegExp(
  `\\b(?:per|each|every)\\s+(?:${peopleWords})\\b|\\ba\\s+head\\b|\\bper\\s+head\\b`,
  'gi',
);
const children =
  /\b(?:child|children|kids?|toddlers?|teens?|teenagers?|pupils|scouts|schoolchildren|girls|boys|families)\b/i;
const inAllShape = /\b(?:in all|altogether|in total|all together|overall)\b/i;

/** "A workshop where each person makes …", "people who each make …": joins, asks nothing. */
const clauseStart =
  /\b(?:where|who|whom|which|whose|when|that)\b(?=\s+(?:(?:each|every|everyone|everybody|all|people|they|we|will|want|would|make|makes|take|takes|get|gets|\d|one|two|three|four|five|six|eight|ten|twelve)\b))/gi;
/** "I'm short of shea", "we are low on tins": why something is asked for. */
const ownStock =
  /\b(?:(?:because|since|as)\s+)?(?:i am|i'm|im|we are|we're)\s+(?:a bit |rather |very )?(?:short (?:of|on)|low on|running low on)\s+[a-z][a-z ]{1,30}(?=[.,;!?\n]|$)/gi;

/** What a message says about a workshop apart from what is made. */
export interface Aspects {
  readonly fields: Readonly<Record<string, unknown>>;
  readonly spans: readonly Span[];
  /** The number of containers said is for everybody together. */
  readonly inAll: boolean;
  /** Something is said to be for each person. */
  readonly each: boolean;
}

const spansOf = (shape: RegExp, text: string): Span[] =>
  [...text.matchAll(shape)].map((found) => ({ from: found.index, to: found.index + found[0].length }));

/** Reads people, plates, jugs, spare, room and allergies; `taken` is what is spoken for already, clock times above all. */
export const readAspects = (reading: Reading, taken: readonly Span[]): Aspects => {
  const { text } = reading;
  const free = figuresIn(reading).filter((figure) => !taken.some((span) => overlaps(span, figure)));
  const allergies = allergiesIn(text);
  const figures = free.filter((figure) => !allergies.spans.some((span) => overlaps(span, figure)));
  const people = peopleIn(text, figures);
  const others = figures.filter((figure) => !people.spans.some((span) => overlaps(span, figure)));
  const plates = platesIn(text, others);
  const jugs = jugsIn(reading, others);
  const spare = spareIn(text, others);
  const room = roomIn(text);
  const warm = roomTemperature(reading);
  const talk = [...spansOf(clauseStart, text), ...spansOf(ownStock, text)];
  const inAll = inAllShape.exec(text);
  return {
    fields: defined({
      people: people.value,
      hotPlates: plates.value,
      jugMl: jugs.value?.ml,
      jugs: jugs.value?.count,
      sparePercent: spare.value,
      room: room.value,
      roomC: warm.value,
      allergies: allergies.value,
      children: children.test(text) || undefined,
    }),
    spans: [
      ...[allergies, people, plates, jugs, spare, room, warm].flatMap(({ spans }) => spans),
      ...spansOf(perPerson, text),
      ...talk,
      ...(inAll ? [{ from: inAll.index, to: inAll.index + inAll[0].length }] : []),
    ],
    inAll: inAll !== null,
    each: /\b(?:each|every|everyone|everybody|per|apiece|takes?|they)\b/i.test(text),
  };
};
