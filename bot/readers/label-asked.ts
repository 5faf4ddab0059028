import { anyWord, type Reading } from '../reading.ts';
import { labelCues } from './label-words.ts';

/** "What would the label say": no wording of the maker's own. */
export const whatItSays = /\b(?:label|tin|lid|jar|pot|back|pack|sticker)s?\b.{0,60}\bsay\b/gi;

/** "INCI list of R": of one ingredient that is a question about it. */
export const isListQuestion = (reading: Reading): boolean =>
  anyWord(reading, ['inci', 'list']) &&
  /\binci\b|\bingredients? list\b|\blist of ingredients\b/i.test(reading.text) &&
  reading.items.some(({ letter }) => letter === 'R');

/** "In what order do I write the ingredients", "what must the tin say", "how do I write the net weight". */
const labelMatters =
  /\bwhat\b.{0,25}\b(?:have to|must|should|need to|has to|got to)\b.{0,12}\b(?:write|print|put|be written|be printed|stand|go|be)\b.{0,6}\bon (?:the|my|our|a)\b(?! (?:hob|stove|cooker|ring|table|tables|shelf|fire|list|bench|scale|tray|board)\b)|\b(?:what|which|right|correct) order\b(?!.{0,60}\b(?:pot|melt|melted|bath|add|jug|pan|heat|go(?:es)? in)\b)|\b(?:legal|falling|descending) order\b|\b(?:tin|lid|jar|pack|back|pot)\b.{0,25}\b(?:say|read|state|show)\b|\bwords?\b.{0,25}\bon (?:the|my|our|a) (?:tin|lid|jar|pot)\b|\b(?:stands?|goes|go|put|print|printed|write|written|be) on (?:the|my|our|a|every|each)? ?(?:tins?|lids?|jars?|pots?|packs?)\b|\b(?:tin|lid|jar|pot)s?\b.{0,140}\b(?:have|has|had) to (?:say|read|state|show)\b|\bnet (?:weight|contents?|wt)\b|\b(?:information|text|facts|details)\b.{0,30}\bon\b.{0,30}\b(?:tins?|lids?|jars?|pots?)\b|\b(?:how|where) (?:to|do i|do we|should i|must i) (?:list|write|name|order) (?:the )?ingredients\b|\bingredients? order\b|\border of (?:the |its )?ingredients\b|\bingredients?\b.{0,40}\b(?:be )?(?:listed|written|ordered)\b|\binci (?:list|names?)\b|\binci of (?:it|that|this)\b|\blist of ingredients\b|\bingredients? list\b/i;
/** Of one ingredient "INCI names" asks about that. */
const isOfBalm = ({ items, last }: Reading): boolean =>
  items.some(({ letter }) => letter === 'R') ||
  items.filter(({ letter }) => letter === 'i').length > 1 ||
  (last !== undefined && !items.some(({ letter }) => letter === 'i'));

/** True for a message that asks for a label, by its word or by what only a label has. */
export const isAsked = (reading: Reading): boolean =>
  anyWord(reading, labelCues) ||
  isListQuestion(reading) ||
  (labelMatters.test(reading.text) && isOfBalm(reading));
