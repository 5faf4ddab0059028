import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { amountsIn, linesAmong } from './list-lines.ts';

/** Asked for, and not told: "please keep", "can you note down", "save it", "recipe to remember". */
const asksToKeep =
  /\bnew recipe\b|\b(?:this|it|that)(?: one| recipe)? (?:kept|saved|noted|stored|recorded)\b|\b(?:in|into|to|for) (?:the|our|my) (?:recipe )?(?:book|recipes|collection|notebook)\b|\brecipe (?:that )?(?:i'm|i am|we|we're|i) call(?:ing|ed)?\b|\blet(?:'s|s| us) call\b|(?:^|[.!,;:–(-]\s*|\b(?:please|pls|you|(?:can|could|may|shall|let) (?:we|i|us|me)|now|and|hi|hello|hey|to|then|just)\s+)(?:save|define|log|set up|keep|store|note(?: down)?|write(?: (?:it|this|that))? down|jot(?: (?:it|this|that))? down|remember|add|put|record|enter|file)\b/i;
/** Of a recipe, or of something named like one. */
const ofRecipe =
  /%|\bper ?cent\b|\bformulas?\b|\bmix(?:ture)?\b|\bparts\b|\b(?:cream|rub|ointment|polish|paste|bar)\b|\brecipes?\b|\bbalms?\b|\bsalves?\b|\bsticks?\b|\bbook\b|\bsave\b|\bstore\b/i;
const elsewhere =
  /\b(?:bought|poured|lots?|tins? of|prices?|costs?|samples?|(?:came|sent|brought|gave|took|put|give) (?:\w+ ){0,3}back|back from|check|scale|label)\b/i;

const named =
  /\b(?:called|(?:has|have|having|with|gets?) the name|calling(?: it)?|named|names? it|name(?:\s*[:=]|\s+is|\s+will be)|call (?:it|this|(?:our|my|the|this) (?:new )?(?:recipe|balm|salve|one|mix))|(?:save|store|keep|record|enter|file) (?:it|this|that)(?: one)? (?:as|under)|(?:under|by|with) the name(?: of)?|under|as(?! (?:the|our|its) name\b| (?:well|a|an|follows|usual|before|always|it|we)\b))\s+["“']?([^:,\n("“”.;!?]{2,60}?)["”']?\s*(?=[:,\n(.;!?=]|\s[-–—]\s|\bwith\b|\bis\b|\bwhich\b|\b(?:in|at|for|from|to|into) (?:the|our|my|all|us|me)\b|\b(?:please|it|has|i|we|made|using|goes|thanks?)\b|$)/i;
/** 'Market morning': a name in quotes, wherever it stands. */
const quoted = /(?:^|[\s(:])["“'‘](\p{L}[^"“”'‘’\n:]{1,50})["”'’](?=[\s,.;:!?)]|$)/u;

/** Words around a name that are none of it. */
const lead =
  /^(?:(?:from now on|from today|as of now|(?:in|into|to|for) the (?:recipe )?book|is|define|log|set up|let's call|and|so|please|pls|can|could|would|will|you|hi|hello|now|just|save|keep|store|note|write|jot|remember|add|put|record|enter|file|down|in|into|the|book|this|that|it(?!['’])|one|a|an|my|our|new|recipe|version|of|to|for (?:me|us)|here is|here's|it's|it is)\b\s*)+/i;
const trail =
  /(?:\s*\b(?:(?:in|into|to|for|among) (?:the|our|my) (?:recipes?|recipe book|book|collection|notebook|list)|should be|belongs|goes like this|will be|now|equals|using|it's|it has|it is|for (?:me|us)|please|pls|is|are|has|with|made of|made from|of|again|anew|this time|from now on|once more|from today|a new version|as follows|goes|consists of|contains)\b)+\s*$/i;

const mostWords = 6;

const isName = (name: string): boolean => {
  const words = name.split(/\s+/);
  return /\p{L}{2}/u.test(name) && words.length <= mostWords && (/\p{Lu}/u.test(name) || ofRecipe.test(name));
};

const bare = (text: string): string => text.trim().replace(lead, '').replace(trail, '').trim();

const mostLowWords = 4;
/** "keep this recipe: market mint, …", typed in small letters. */
const isLowName = (name: string, text: string): boolean =>
  /\brecipe\b/i.test(text) &&
  name.split(/\s+/).length <= mostLowWords &&
  !/\b(?:time|only|now|it)\b/i.test(name);

const likeBalm =
  /\p{Lu}[\p{L}'’]*(?: (?!as\b|is\b|for\b)[\p{L}'’]+){0,4} (?:balm|salve|stick|cream|rub|ointment|polish|paste|bar|butter)\b/gu;
/** "They voted for Snowball stick as the name": what is written like one, from its last capital on. */
const nameInside = (text: string): string | undefined => {
  const found = [...text.matchAll(likeBalm)].at(-1)?.[0];
  return found?.replace(/^.*(?=\p{Lu}\p{L}*(?: \p{Ll}[\p{L}'’]*)* \p{L}+$)/u, '');
};

/** The name that stands before the lines, the nearest to them first. */
const nameBefore = (text: string): string | undefined => {
  const parts = text
    .split(/[:,\n(=]|\s[-–—]\s|[.!?;]\s/)
    .toReversed()
    .map(bare)
    .filter((name) => name !== '');
  const [nearest = ''] = parts;
  return parts.find(isName) ?? nameInside(text) ?? (isLowName(nearest, text) ? nearest : undefined);
};

const nameIn = (before: string, after: string): string | undefined => {
  const said = [named.exec(before), quoted.exec(before), named.exec(after), quoted.exec(after)]
    .flatMap((match) => (match?.[1] ? bare(match[1]) : []))
    .find((name) => /\p{L}{2}/u.test(name));
  return said ?? nameBefore(before);
};

/** "Beeswax 35, cocoa butter 25, jojoba 40": numbers beside every name that come to a hundred are percent. */
const withPercent = ({ text, items }: Reading): string | undefined => {
  const told = items.filter(({ letter }) => /^[ing%]$/.test(letter));
  const names = told.filter(({ letter }) => letter === 'i');
  const shares = told.filter(({ letter }) => letter === 'n' || letter === '%');
  const alternate = told.every(({ letter }, at) => (letter === 'i') !== (told[at - 1]?.letter === 'i'));
  const sum = shares.reduce((all, { value = 0 }) => all + value, 0);
  if (names.length < 2 || shares.length !== names.length || !alternate || sum !== 100) return undefined;
  const bare = shares.filter(({ letter }) => letter === 'n').toReversed();
  return bare.length === 0
    ? undefined
    : bare.reduce((said, { to }) => `${said.slice(0, to)}%${said.slice(to)}`, text);
};

/**
 * "Please keep this recipe for us: Garden salve, 20 g beeswax and 80 g olive oil", "… - please save": a recipe that is to be
 * written down, as a plain message would say it. Undefined where no name is plain.
 */
export const savedInTalk = (reading: Reading): string | undefined => {
  const percent = withPercent(reading);
  const { text, items } = percent === undefined ? reading : readAgain(percent, reading);
  if (!asksToKeep.test(text) || !ofRecipe.test(text) || elsewhere.test(text)) return undefined;
  const lines = linesAmong(text, amountsIn(items));
  if (lines.length < 2) return undefined;
  const from = Math.min(...lines.map((line) => line.from));
  const to = Math.max(...lines.map((line) => line.to));
  const name = nameIn(text.slice(0, from), text.slice(to));
  return name === undefined ? undefined : `save recipe ${name}: ${text.slice(from, to).trim()}`;
};
