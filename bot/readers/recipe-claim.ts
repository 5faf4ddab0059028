import { watchedThing } from '../../core/check/composition.ts';
import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { saidBesides } from './check-doubts.ts';
import { doubtfulNames, withWatched } from './check-parts.ts';
import { leftover } from './leftover.ts';
import { withNameLedIn } from './recipe-equals.ts';
import { savedInTalk } from './recipe-in-talk.ts';
import { cleanName, type NamedLines, readNamedLines } from './recipe-reading.ts';
import { versionsSeen } from './recipe-seen.ts';
import { findNamed, type RecipeTarget, recipeTarget, recipeWords } from './recipe-target.ts';
import { quantityTrouble } from './scale-target.ts';
import { boardOf } from './target.ts';

export const saveExample = 'save recipe Winter balm: 20 g beeswax, 30 g shea butter, 50 g olive oil';

const has = (reading: Reading, ...list: readonly string[]): boolean =>
  list.some((word) => reading.words.has(word));

const missing = (text: string): Trouble => ({ code: 'missing', text });

const saving = ['remember', 'save', 'store', 'record', 'add', 'create', 'new', 'enter', 'keep'];
const updating = ['update', 'edit', 'change', 'revise', 'amend', 'replace'];

const notPlaced = (words: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I could not place "${words.slice(0, 4).join(' ')}" in that recipe. Write one amount and one ingredient for each line, for example "${saveExample}".`,
});

const holdsWatched = ({ lines }: NamedLines): boolean =>
  lines.lines.some(({ ingredient }) => watchedThing(ingredient) !== undefined);

/** "Rose petals, fresh", "spearmint oil infusion": a plant in another form than its plain name says. */
const isOtherPlant = (named: NamedLines, again: NamedLines): boolean =>
  again.lines.lines.some(({ fresh, infusedWith }, at) => {
    const plain = named.lines.lines[at];
    return (fresh ?? false) !== (plain?.fresh ?? false) || infusedWith !== plain?.infusedWith;
  });

/**
 * A recipe as it was written, though a line of it does not belong in a balm: it is kept, marked, and a check finds it. Where
 * the lines cannot be read without, or would be read as something better: borage leaf is no borage oil.
 */
const withBadLines = (reading: Reading, named: NamedLines): NamedLines => {
  if (!named.hasLines) return named;
  const again = readNamedLines({
    ...reading,
    items: saidBesides(withWatched(reading.items, reading.text), reading.text),
  });
  if (again?.name !== named.name || linesTrouble(reading, again) !== undefined) return named;
  const fine = named.lines.trouble === undefined && named.lines.loose.length === 0;
  return !fine || holdsWatched(again) || isOtherPlant(named, again) ? again : named;
};

/** What a name that may be a restricted plant is taken as. */
const takenAs: Readonly<Record<string, string>> = { marigold: 'calendula', bay: 'bay', verbena: 'verbena' };

/** Lines with the doubtful name they were written by, so that a check finds it later. */
const withDoubts = (lines: readonly RecipeLine[], text: string): readonly RecipeLine[] => {
  const [said = ''] = doubtfulNames(text);
  const id = takenAs[said];
  return id === undefined
    ? lines
    : lines.map((line) =>
        line.ingredient === id || line.infusedWith === id ? { ...line, doubtful: said } : line,
      );
};

const linesTrouble = (reading: Reading, { lines }: NamedLines): Trouble | undefined => {
  const loose = lines.loose.map((item) => item.word);
  return quantityTrouble(reading.items) ?? lines.trouble ?? (loose.length > 0 ? notPlaced(loose) : undefined);
};

/** "save this as Winter balm" after a scaling of a written-out recipe. */
const linesBefore = (reading: Reading): unknown =>
  has(reading, 'this', 'that', 'it', 'as')
    ? (reading.last?.made?.[0]?.lines ?? reading.last?.request.lines)
    : undefined;

const nothingToSave = (reading: Reading): Claim | undefined => {
  const asks =
    reading.words.has('recipe') && has(reading, 'save', 'store', 'update', 'edit', 'add', 'create', 'new');
  return asks
    ? refuse(missing(`What is in it? Write its lines after the name, for example "${saveExample}".`), 1.1)
    : undefined;
};

/** "If it should keep a year": how long, and nothing to be written down. */
const isAboutKeeping = ({ corrected }: Reading): boolean =>
  /\bkeeps?\b(?: for)?(?: at least| about| around)? (?:\d+|an?|one|two|three|six|nine|twelve|eighteen|half a) ?(?:years?|months?|weeks?)\b/i.test(
    corrected,
  ) && !/\b(?:save|store|record|add|create|enter)\b/i.test(corrected);

/** "Is my new recipe all right? 18 % candelilla …" asks about a recipe. */
const onlyAsks = ({ corrected }: Reading): boolean =>
  /^\W*(?:is|are|does|do|what|what's|which|how|will|why|when|where)\b/i.test(corrected) &&
  !/\b(?:save|store|record|enter|remember|keep)\b/i.test(corrected);

/** "Shea butter 500 g 9.80", "tubes 0.28 each": a receipt or a price list, and no recipe. */
const priced =
  /(?:\d ?(?:g|kg|ml|l|oz|lb)|\b(?:gram|kilo|lit(?:re|er)|ounce|pound)s?)\b(?: [a-z' -]{1,30}?)? ?[€£$]? ?\d{1,4}[.,]\d\d\b(?! ?(?:g|kg|ml|l|oz|lb|%))|\d[.,]\d\d each\b/i;
const isPriced = ({ text }: Reading): boolean =>
  priced.test(text) && !/\brecipes?\b|\bbatch(?:es)?\b/i.test(text);

/** "Add 3 hours of labour" has nothing of a recipe. */
const nameless = (reading: Reading): Claim | undefined =>
  reading.words.has('recipe') || reading.items.some((item) => item.letter === 'i')
    ? refuse(missing(`What shall the recipe be called? For example "${saveExample}".`), 2.6)
    : undefined;

/** "Save recipe Poured gold: …": whatever the name would mean to another topic. */
const saysSave =
  /^\W*(?:(?:please|hi|hello|pipkin|now|and|then|ok)\W+){0,3}save (?:(?:the|a|my|our|new|this)\W+){0,2}recipe\b[^\n:]{1,80}:/i;
const surelySaved = 3.5;

const claimSave = (reading: Reading, existing: boolean): Claim | undefined => {
  if (isAboutKeeping(reading) || onlyAsks(reading) || isPriced(reading)) return undefined;
  const plain = readNamedLines(reading);
  if (!plain) return undefined;
  const named = withBadLines(reading, plain);
  const lines = named.hasLines ? withDoubts(named.lines.lines, reading.text) : linesBefore(reading);
  if (lines === undefined) return nothingToSave(reading);
  if (named.name === '') return nameless(reading);
  const trouble = named.hasLines ? linesTrouble(reading, named) : undefined;
  if (trouble) return refuse(trouble, 2.6);
  const request = {
    action: 'save',
    name: named.name,
    lines,
    ...defined({ existing: existing || undefined, seen: versionsSeen(reading, named.name) ?? 0 }),
  };
  return claim(request, 3, named.lines.assumed);
};

const surely = (made: Claim | undefined, { corrected }: Reading): Claim | undefined =>
  made?.kind === 'request' && saysSave.test(corrected) ? { ...made, weight: surelySaved } : made;

type OnTarget = 'show' | 'delete' | 'versions' | 'restore';

const onTarget = (action: OnTarget, reading: Reading): Claim | undefined => {
  const target = recipeTarget(reading);
  return target.clear
    ? targetClaim(action, target, has(reading, 'recipe', 'version', 'versions'), reading)
    : undefined;
};

/** What is shown is the latest, so much of it is seen. */
const shownOf = (action: OnTarget, name: string, { recipes }: Reading): number | undefined =>
  action === 'show' ? recipes.exact(name)?.versions.length : undefined;

const targetClaim = (
  action: OnTarget,
  target: RecipeTarget,
  spoken: boolean,
  reading: Reading,
): Claim | undefined => {
  if (target.trouble) return spoken || action === 'delete' ? refuse(target.trouble, 1.3) : undefined;
  if (target.name === undefined) {
    const example = action === 'show' ? 'show recipe' : action;
    return spoken
      ? refuse(missing(`Which recipe? For example "${example} Fernlea hand balm".`), 1.1)
      : undefined;
  }
  if (action === 'restore' && target.version === undefined) {
    return refuse(missing('Which version? For example "restore version 1 of Fernlea hand balm".'), 1.4);
  }
  const request = {
    action,
    name: target.name,
    ...defined({ version: target.version, seen: shownOf(action, target.name, reading) }),
  };
  return claim(request, target.assumed.length > 0 ? 1.8 : 2.4, target.assumed);
};

/** A recipe to be renamed that is not saved under quite these words. */
const renameNear = (reading: Reading, newName: string): Claim => {
  const old = /\brename\b\s*(?:the\s+)?(?:recipe\s+)?(.+?)\s+(?:to|as|into)\b/is.exec(reading.text)?.[1];
  const found = findNamed(reading, cleanName(old ?? '').toLowerCase());
  if (found.trouble) return refuse(found.trouble, 2.4);
  if (found.name === undefined || newName === '') {
    return refuse(
      missing('Rename which recipe to what? For example "rename Winter balm to Frost balm".'),
      1.1,
    );
  }
  return claim({ action: 'rename', name: found.name, newName }, 2.4, found.assumed);
};

/** "Tea balm should be called Milking balm from now on". */
const shallBeCalled =
  /\b(?:should|shall|will|must|is to|ought to)(?: now| from now on)? be (?:called|named) (.{2,60}?)(?:\s+(?:from now on|now|in future|instead))?(?:\s*[,.;!?]|$)/i;

const claimRename = (reading: Reading): Claim => {
  const item = reading.items.find((each) => each.letter === 'R');
  const said = shallBeCalled.exec(reading.text)?.[1];
  if (said !== undefined && item)
    return claim({ action: 'rename', name: item.recipe, newName: cleanName(said) }, 3);
  const tail = /\b(?:to|as|into)\b\s*(.+)$/is.exec(reading.text.slice(item?.to ?? 0));
  const newName = cleanName(tail?.[1] ?? '');
  if (!item) return renameNear(reading, newName);
  if (newName !== '') return claim({ action: 'rename', name: item.recipe, newName }, 3);
  return refuse(
    missing(`What shall "${item.recipe}" be called? For example "rename ${item.recipe} to Frost balm".`),
    2,
  );
};

const claimList = (reading: Reading): Claim | undefined => {
  const board = boardOf(reading.items);
  const other = board.items.some(
    (item) => item.letter === 'R' || (item.letter === 'b' && !item.word.startsWith('recipe')),
  );
  if (other || leftover(board, recipeWords, false).blocking.length > 0) return undefined;
  return claim({ action: 'list' }, 2.4);
};

const negations = ['not', "don't", 'dont', 'never', "didn't", "doesn't", "won't"];

/** A name and nothing that would make it a weigh-out: show it. */
const isShown = (reading: Reading): boolean => {
  const letters = reading.items.map((item) => item.letter);
  return letters.includes('R') && !letters.some((letter) => /[gvdpcMLNtr%]/.test(letter));
};

/** "Half the hand balm recipe" is weighed out. */
const isPart = ({ items }: Reading): boolean =>
  items.some(({ fraction, letter }) => fraction || letter === 'M');

const claimShow = (reading: Reading): Claim | undefined => {
  if (isPart(reading)) return undefined;
  const asks = has(reading, 'recipe', 'version', 'show', 'open', 'display', 'view', 'see');
  return asks || isShown(reading) ? onTarget('show', reading) : undefined;
};

const savesMoney = /\bsav(?:e|es|ing) (?:me |us )?(?:some |any |a bit of )?(?:money|cash|costs?)\b/i;
/** "Recipe to check:" is the name of none. */
const headed =
  /^\s*(?:new\s+)?recipe\b(?![^\n:]{0,60}\b(?:check|look|vet|review|safe|safety|judge)\w*)[^\n:]*[:\n]/i;

const deletes = (reading: Reading): boolean =>
  has(reading, 'delete', 'remove', 'discard', 'erase', 'bin') || /\bget rid of\b/i.test(reading.text);

const restores = (reading: Reading): boolean =>
  has(reading, 'restore', 'revert') ||
  /\b(?:go|roll|switch|change|back) (?:back )?to (?:the )?(?:version|first|old|previous)|\bversion \d{1,3}\b.{0,80}\b(?:back|in force|again|valid)\b|\b(?:bring|take|put|get) back (?:the )?(?:version|first|old|previous)/i.test(
    reading.text,
  );

const listsVersions = (reading: Reading): boolean =>
  has(reading, 'versions', 'history') || (has(reading, 'version') && has(reading, 'list', 'every', 'all'));

const asksForNone = (reading: Reading): boolean =>
  has(reading, ...negations) || savesMoney.test(reading.text);

/** Nothing to be saved was read, or talk got into its name. */
const isOddSave = (save: Claim | undefined): boolean =>
  save?.kind !== 'request' ||
  /\b(?:me|us|please|it's|called|name|named|under|version|recipe|again|anew|this time|is|it|has|have|we|i|i'm|which|goes|contains|made of|made from|in the|at the)\b|[?!;]\s|\.\s(?!\d)|[(,-]$|^\W|^(?:that|this|it)$/i.test(
    String((save.request as { name?: unknown }).name),
  );

const isRenamed = ({ text, items }: Reading): boolean =>
  shallBeCalled.test(text) &&
  items.some(({ letter }) => letter === 'R') &&
  !items.some(({ letter }) => /[gv%]/.test(letter));

/** A recipe that is to be written down. */
const saved = (reading: Reading): Claim | undefined => {
  const saves = has(reading, ...saving);
  const updates = !saves && has(reading, ...updating);
  const heads = headed.test(reading.text) && !reading.items.some((item) => item.letter === 'c');
  const save = saves || updates || heads ? surely(claimSave(reading, updates), reading) : undefined;
  const spoken = isOddSave(save) ? savedInTalk(reading) : undefined;
  return spoken === undefined ? save : (claimSave(readAgain(spoken, reading), false) ?? save);
};

/** What a message would mean to the recipe shelf. */
export const claimRecipe = (message: Reading): Claim | undefined => {
  const reading = withNameLedIn(message);
  if (asksForNone(reading)) return undefined;
  if (has(reading, 'rename', 'retitle') || isRenamed(reading)) return claimRename(reading);
  const save = saved(reading);
  if (save) return save;
  if (deletes(reading)) return onTarget('delete', reading);
  if (restores(reading)) return onTarget('restore', reading);
  if (listsVersions(reading)) return onTarget('versions', reading);
  if (has(reading, 'recipes', 'list')) return claimList(reading) ?? onTarget('show', reading);
  return claimShow(reading);
};
