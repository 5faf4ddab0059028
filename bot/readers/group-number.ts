import type { Item } from './item.ts';
import { letters } from './lexicon.ts';

const groupBefore =
  /\b(?:at|from|in|to|of) (?:house )?(?:number|no\.?|nr\.?) $|\b(?:groups?|class|classes|teams?|tables?|years?|grades?|rooms?|forms?|bench|session|course|wards?|units?)\s+(?:no\.? ?|number )?(?:\w{1,6}(?:,|\s*&|\s+and)\s*)*$/i;

const peopleAfter =
  /^ (?:(?:of (?:us|them)|little|young|new|eager|other) )*(?:pupils?|students?|children|kids|people|persons?|participants?|guests?|learners?|makers?|women|men|ladies|girls|boys|friends|members?|helpers?|volunteers?|beginners?|scouts?|guides|brownies|colleagues|teenagers|adults|of us)\b/i;

/** "12 people", whatever they do. */
const isOfPeople = ({ letter, to }: Item, text: string): boolean =>
  letter === letters.number && peopleAfter.test(text.slice(to, to + 40));
const forEach = /\b(?:each|apiece|per)\b/i;

/** "My eight pupils poured": how many did it. */
export const countsPeople = (item: Item, text: string): boolean =>
  isOfPeople(item, text) && !forEach.test(text);

/** "Ten of us, two tins apiece": so many for each of so many people. */
export const isPerPerson = (item: Item, text: string): boolean =>
  isOfPeople(item, text) && forEach.test(text);

/** "Group 7 poured", "groups 4 and 5": which of several groups it was, and no count of anything. */
export const isGroupNumber = ({ letter, from, to }: Item, text: string): boolean =>
  letter === letters.number &&
  !/^ (?:tins?|jars?|pots?|tubes?|sticks?)\b/i.test(text.slice(to, to + 8)) &&
  // "5 to class 4 and 3 to class 5".
  !(
    /(?:\band|[,&])\s*$/.test(text.slice(0, from)) &&
    /^ (?:more )?(?:to|for)\b/i.test(text.slice(to, to + 10))
  ) &&
  groupBefore.test(text.slice(Math.max(0, from - 30), from));

/** "Between two classes I poured 24 jars": no containers, where those are counted by themselves. */
export const countsOthers = (items: readonly Item[], at: number): boolean =>
  items[at]?.letter === letters.number &&
  items[at + 1]?.letter === letters.unknown &&
  /[a-z]s$/.test(items[at + 1]?.word ?? '') &&
  items.some(
    ({ letter }, other) => letter === letters.number && items[other + 1]?.letter === letters.container,
  );
