import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, type Reading, refuse } from '../reading.ts';
import { subjectBefore } from './body.ts';
import { isCalledOff, isToldOnly } from './called-off.ts';
import { costCues } from './cost-words.ts';
import { claimUnits } from './in-ounces.ts';
import type { Item } from './item.ts';
import { quantityTrouble } from './scale-target.ts';
import type { Wish } from './scale-wish.ts';
import { readAspects } from './workshop-aspects.ts';
import { readWhen } from './workshop-clock.ts';
import { type MakingRead, readMakings } from './workshop-makings.ts';
import { isKnown, isTarget, makingsOf, mergedMakings } from './workshop-merge.ts';
import { fieldsWith, lackOf, mostEach, type Parts, settle } from './workshop-settle.ts';
import { outside } from './workshop-spans.ts';
import {
  classCues,
  costsApart,
  lastWorkshop,
  notPlaced,
  peopleWords,
  planCues,
  whichMaking,
  workshopCues,
} from './workshop-words.ts';

/** "no, I meant 15 people": a correction takes nothing away. */
const withoutNo = (items: readonly Item[]): readonly Item[] =>
  items[0]?.letter === 'N' ? items.slice(1) : items;

const partsOf = (reading: Reading): Parts => {
  const when = readWhen(reading.text);
  const aspects = readAspects(reading, when.spans);
  const rest = outside(reading.items, [...when.spans, ...aspects.spans]);
  const made = readMakings(reading, lastWorkshop(reading) ? withoutNo(rest) : rest);
  const { start, day, minutes } = when;
  return {
    when,
    aspects,
    made,
    fields: {
      ...aspects.fields,
      ...defined({ start, day, minutes, stepG: made.stepG, lossPercent: made.lossPercent }),
    },
    ...defined({ quantity: quantityTrouble(outside(reading.items, when.spans)) }),
  };
};

/** The word itself, not as part of a saved recipe's name. */
const says = (reading: Reading, words: readonly string[]): boolean =>
  reading.items.some((item) => item.letter !== 'R' && words.includes(item.word));

const otherRequests =
  /\b(?:scale|convert|labels?|cost|costs|price|prices|save|rename|delete|swap|replace|substitute|melt|bought|poured|remind|claim|check)\b/i;

/** "workshop" itself: with people, with something for each, or asked to be planned. */
const saysWorkshop = (reading: Reading, people: boolean, each: boolean): boolean => {
  const plans = anyWord(reading, planCues) || /^\W*(?:an?\s+|the\s+|our\s+)?workshop/i.test(reading.text);
  return people || each || (plans && !otherRequests.test(reading.text));
};

/** "One pot for each of my nine girls, what do I weigh out": pots that are given, and nobody makes them. */
const onlyWeighed = (text: string): boolean =>
  /\bweigh\b/i.test(text) &&
  !/\b(?:makes?|making|buy|bring|plan|kits?|jugs?|shopping|timeline|handout|class|course|lesson|teach\w*|learn\w*|hob|hot ?plates?)\b/i.test(
    text,
  );

/** How sure a message is about a workshop: 3 by its own words, 2 by its shape, 0 not at all. */
const sureness = (reading: Reading, { aspects, made }: Parts): number => {
  const people = aspects.fields.people !== undefined;
  const makes = made.makings.length > 0;
  if (!makes && otherRequests.test(reading.text)) return 0;
  if (says(reading, workshopCues)) return saysWorkshop(reading, people, aspects.each) ? 3 : 0;
  if (!people) return 0;
  if (says(reading, classCues) && !/\bof course\b/i.test(reading.text)) return 3;
  if (onlyWeighed(reading.text)) return 0;
  return makes && (aspects.each || anyWord(reading, planCues)) ? 2 : 0;
};

const withBefore = (reading: Reading, makings: readonly MakingRead[]): readonly MakingRead[] => {
  const [only] = makings;
  if (makings.length > 1 || only?.recipe !== undefined || only?.lines !== undefined) return makings;
  const subject = subjectBefore(reading);
  return subject ? [{ ...only, ...subject }] : makings;
};

const claimNew = (reading: Reading, parts: Parts, sure: number): Claim | undefined => {
  const weight = sure === 3 ? 3.2 : 2.9;
  if (anyWord(reading, costCues)) return refuse(costsApart, 2.9);
  if (parts.quantity) return refuse(parts.quantity, weight - 0.1, parts.fields);
  const blocking = parts.made.blocking.map((item) => item.word);
  if (blocking.length > 0)
    return refuse(notPlaced(blocking), parts.aspects.fields.people === undefined ? 1.2 : 2.6);
  const makings = withBefore(reading, parts.made.makings);
  const { trouble } = parts.made;
  if (trouble) return refuse(trouble, weight - 0.1, fieldsWith(parts.fields, makings));
  return settle(parts, parts.fields, makings, weight, [...parts.when.assumed, ...parts.made.assumed]);
};

/** Words that join a message to the workshop before it. */
const joining =
  /\b(?:and|what about|how about|same|also|instead|now|make (?:it|that)|but|with|actually|no|change|for|start|we|only|meant)\b/i;

/** "Three dropped out, so it's only 9 people now": how many there are, and not by how many fewer. */
const isWhole = (text: string, people: number): boolean =>
  new RegExp(
    `\\b(?:only|now|leav\\w+|makes?|down to|it's|we are|we're|that's|so)\\s+(?:\\w+\\s+)?${people}\\b|\\b${people}\\s+(?:\\w+\\s+)?(?:now|left|remain\\w*)\\b`,
    'i',
  ).test(text);

/** "Two more people are coming", "three have cancelled": by how many the group grows or shrinks. */
const peopleMoved = (text: string, people: unknown): number | undefined => {
  if (typeof people !== 'number' || isWhole(text, people)) return undefined;
  if (/\b(?:cancel\w*|drop\w* out|can't come|cannot come|can't make it|fewer|less)\b/i.test(text))
    return -people;
  const more =
    /\b(?:more|another|extra|additional)\b/i.test(text) ||
    /\b(?:joining|joined|signed up) (?:too|as well|us)\b/i.test(text);
  return more ? people : undefined;
};

/** "Can everyone make 3?": a number alone is of tins where making is spoken of. */
const eachAsked =
  /\b(?:each|every\w*|they|people|all)\b.{0,20}\b(?:makes?|takes?|gets?|fills?|do|does|has|have)\b/i;

/** "and for 20?" is about people; "there are two children" tells of some of those who come. */
const followFields = ({ fields, made }: Parts, text: string, last: Wish): Wish => {
  const moved = peopleMoved(text, fields.people ?? made.lone);
  if (moved !== undefined && typeof last.people === 'number')
    return { ...fields, people: last.people + moved };
  if (made.lone !== undefined && eachAsked.test(text)) return fields;
  if (made.lone !== undefined && fields.people === undefined) return { ...fields, people: made.lone };
  const { people: _people, ...others } = fields;
  return /\bthere (?:are|is|will be)\b|\bof (?:them|us)\b|\b(?:is|are) (?:a )?(?:child|children|kids?|teens?|teenagers?)\b/i.test(
    text,
  ) && fields.children
    ? others
    : fields;
};

/** Asks for a part of the plan again, without changing it. */
const asksAgain =
  /\b(?:hot ?plates?|jugs?|kit list|kits?|shopping|timeline|schedule|handout|print|pdf|how long|what (?:do|should|must|shall) (?:i|we) (?:need|bring|buy|get in|take))\b/i;
const groupSettings = /\b(?:set|settings?|always|default)\b/i;

/** "5 oz in g" asks for a conversion, whatever was planned before. */
const asksUnit = ({ items }: Reading): boolean => items.some((item) => item.letter === 'u');

const isChange = (reading: Reading, parts: Parts, fields: Wish, last: Wish): boolean => {
  if (groupSettings.test(reading.text)) return false;
  if (lackOf(last, makingsOf(last)) || joining.test(reading.text)) return true;
  if (parts.made.infusion !== undefined) return true;
  if (parts.made.lone !== undefined && eachAsked.test(reading.text)) return true;
  if (parts.made.makings.some((making) => isTarget(making) && isKnown(making, last))) return true;
  return Object.keys(fields).some((key) => key !== 'room');
};

/** What is made, with a lone number of tins or an infusion for all of it. */
const followMakings = (
  { made, fields }: Parts,
  text: string,
  before: readonly MakingRead[],
): readonly MakingRead[] => {
  const { lone, infusion, makings } = made;
  if (makings.length > 0) return makings;
  if (lone !== undefined && fields.people === undefined && eachAsked.test(text)) return [{ each: lone }];
  return infusion ? before.map((making) => ({ ...making, infusion })) : makings;
};

/**
 * Somebody's allergy concerns the whole bench, before any recipe is changed for it; "what do I need to buy" right after a
 * plan is about the plan, not about what runs low.
 */
const followWeight = (fields: Wish, changes: boolean): number =>
  fields.allergies === undefined && changes ? 2.8 : 3.3;

/** "32 people liked our post": what people did, and none that come. */
const tellsOfPeople = new RegExp(
  `\\b(?:${peopleWords})\\s+(?:have |had |already )?(?!signed|registered|booked|joined|confirmed|cancel\\w+|dropp\\w+|enrol\\w+|invited|interested|expected|planned|turned|added|replied|called|wanted|needed)(?:[a-z]+ed|saw|read|bought|came to see|wrote)\\b`,
  'i',
);

const claimFollow = (reading: Reading, parts: Parts, last: Wish): Claim | undefined => {
  if (tellsOfPeople.test(reading.text)) return undefined;
  const fields = followFields(parts, reading.text, last);
  const { made, aspects } = parts;
  if (made.blocking.length > 0 || otherRequests.test(reading.text) || asksUnit(reading)) return undefined;
  const changes =
    Object.keys(fields).length > 0 ||
    made.makings.length > 0 ||
    made.infusion !== undefined ||
    made.lone !== undefined;
  if (changes ? !isChange(reading, parts, fields, last) : !asksAgain.test(reading.text)) return undefined;
  const trouble = parts.quantity ?? made.trouble;
  if (trouble) return refuse(trouble, 2.5, last);
  const makings = mergedMakings(
    makingsOf(last),
    followMakings(parts, reading.text, makingsOf(last)),
    reading.text,
  );
  if (!makings) return refuse(whichMaking, 2.5, last);
  const { makings: _makings, ...rest }: Wish = { ...last, ...fields };
  // "and for 40 tins?" after a workshop can only be all of them.
  const inAll = aspects.inAll || (!aspects.each && made.makings.some(({ each = 0 }) => each > mostEach));
  const weight = followWeight(fields, changes);
  return settle({ ...parts, aspects: { ...aspects, inAll } }, rest, makings, weight, [
    ...parts.when.assumed,
    ...made.assumed,
  ]);
};

const anyCue = [...workshopCues, ...classCues, ...planCues];
const counted = new RegExp(
  `\\b(?:${peopleWords}|each|every(?:one|body)|of us|we are|we're|crafters)\\b`,
  'i',
);

/** What a message would mean as a workshop to be planned, or as a change to the one planned before. */
export const claimWorkshop = (reading: Reading): Claim | undefined => {
  const units = claimUnits(reading, 'workshop');
  if (units) return units;
  const last = lastWorkshop(reading);
  if (!last && (isCalledOff(reading.text) || isToldOnly(reading.text))) return undefined;
  if (!last && !anyWord(reading, anyCue) && !counted.test(reading.text)) return undefined;
  const parts = partsOf(reading);
  const sure = sureness(reading, parts);
  // "the same workshop for 20 people" changes the last one; a request that names what is made stands for itself.
  const whole =
    sure > 0 && parts.made.makings.some(({ recipe, lines }) => recipe !== undefined || lines !== undefined);
  const follows =
    last && !(whole && parts.fields.people !== undefined) ? claimFollow(reading, parts, last) : undefined;
  if (follows) return follows;
  return sure > 0 ? claimNew(reading, parts, sure) : undefined;
};
