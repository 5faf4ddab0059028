import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { claimHistory, historyCues, isHistory } from './book-history.ts';
import { claimUndo, undoCues } from './book-undo.ts';
import { confirmHow, exportHow, forgetWhat, importWhat, tablesOf } from './book-words.ts';
import { pointedAtSpoken } from './of-spoken-lot.ts';

/** Longest message that can be about the book itself, in characters. */
const longest = 300;

const before =
  /^(?:(?:hi|hello|hey|hiya|ok|okay|oh|so|um|well|right|and|now|please|pls|pipkin|just|quick|can|could|would|will|you|kindly|i'd|we'd|let|i|we|want|wanna|need|like|to|have|let's|lets|us|me|my|dear|good|morning|evening)\b[\s,.!:]*)+/i;
const after =
  /(?:[\s,.!?]+(?:so far|until now|till now|up to now|to date|lately|please|pls|plz|thanks|thank you|thx|cheers|ta|now|then|for (?:me|us)|pipkin|mate|asap|right away|would you|will you))+$/i;

/** What a message asks for, without greeting, politeness and closing signs. */
export const bare = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\s.!?,;:]+$/, '')
    .replace(after, '')
    .replace(before, '')
    .replace(/^(["'])([^"']*)\1$/, '$2')
    .replace(/^\s+|[\s.!?,;:]+$/g, '');

const whole =
  "(?:everything|all|all of it|it all|all (?:of )?(?:our|my|the) (?:data|records?|stuff)|(?:the|our|my|this) (?:whole |entire |full )?(?:book|bench book|records?|data|lot|group(?:'s)? (?:data|records?))|(?:all )?(?:of )?(?:the |our )?(?:data|records))";
const form =
  '(?:(?:as|to|in|into|for|using) (?:a |an |one )?)?(?<form>json|csvs?|spreadsheets?|excel|tables?|files?|json file|csv files?|csv tables?|backup)';
const exporting = new RegExp(
  `^(?:(?:make|do|create|give|send|get|save|take|run)(?: me| us)? )?(?:an? |the |our )?(?:(?:full|complete|whole) )?(?:export|backup|back up|download|data export)(?: of)?(?: ${whole})?(?: ${form})?$`,
  'i',
);
const asFile = new RegExp(
  `^(?:(?:give|send|get|save|hand|show|let)(?: me| us)?(?: have)?)? ?${whole} ${form}$`,
  'i',
);
const copying = new RegExp(
  `^(?:(?:give|send|get|save|make|have)(?: me| us)? )?a (?:full )?copy of ${whole}(?: ${form})?$`,
  'i',
);
const formExport = /^(?<form>json|csv|spreadsheet|excel) (?:export|backup|download)$/i;
const tableExport =
  /^(?:export|download)(?: (?:all|the|our|my))* (?<what>[a-z-]+)(?:(?: (?:as|to|in|into|for))?(?: an?)? (?<form>csv|spreadsheet|excel|tables?|json|file))?$/i;

const tablesAsked =
  /^(?:(?:give|send|get|make|show)(?: me| us)? )?(?:an? |the )?(?:spreadsheet|csv|excel(?: file| sheet)?|table)s? (?:of|with|for|from) (?:(?:all|the|our|my) )*(?<what>[a-z-]+)$/i;
const dataAsked =
  /^(?:give|send|get|hand|let)(?: me| us)? (?:have )?(?:all )?(?:our|my|the) (?:data|records?)$/i;

const isTables = (said: string | undefined): boolean => /^(?:csv|spreadsheet|excel|table)/i.test(said ?? '');

const claimExport = (text: string): Claim | undefined => {
  const match =
    exporting.exec(text) ??
    asFile.exec(text) ??
    copying.exec(text) ??
    formExport.exec(text) ??
    dataAsked.exec(text);
  if (match) {
    const tables = isTables(match.groups?.form) ? 'all' : undefined;
    return claim({ action: 'export', ...defined({ tables }) }, 3.3);
  }
  const table = tableExport.exec(text) ?? tablesAsked.exec(text);
  const named = tablesOf(table?.groups?.what ?? '');
  if (named && !/^json$/i.test(table?.groups?.form ?? ''))
    return claim({ action: 'export', tables: named }, 3.3);
  return /^(?:export|backup|back up)\b/i.test(text) ? refuse(exportHow, 2.6) : undefined;
};

const path = '(?:"(?<quoted>[^"]{1,250})"|(?<plain>\\S(?:[^"]{0,240}\\S)?\\.(?:json\\.gz|json|csv|txt)))';
const importing = new RegExp(
  `^(?:import|restore(?: from)?|load|read in|bring in)(?: (?:from|the|this|that|it|my|our|a|attached|file|files|book|export|backup|everything|all|called|named|here))*(?:[: ]+${path})?(?: (?:file|attached))?$`,
  'i',
);
const word = '(?<code>[A-Z]{6})';
const taking =
  "(?<take>[ ,]*(?:and |but )?(?:take|use|prefer|with) (?:the )?(?:file'?s?|theirs|new)(?: (?:ones|one|values|version))?)";
const confirming = new RegExp(
  `^(?:confirm|yes,?|ok,?)(?: the)? import(?: of)?(?: ${path})? ${word}${taking}?$`,
  'i',
);

const pathIn = (match: RegExpExecArray | null): string | undefined =>
  match?.groups?.quoted ?? match?.groups?.plain;

const isBookFile = (name: string): boolean => /\.json(?:\.gz)?$/i.test(name);

const claimImport = (text: string, { attached = [] }: Reading): Claim | undefined => {
  const confirmed = confirming.exec(text);
  if (confirmed) {
    const code = confirmed.groups?.code?.toUpperCase();
    const conflicts = confirmed.groups?.take ? 'take' : 'keep';
    return claim({ action: 'import', code, conflicts, ...defined({ path: pathIn(confirmed) }) }, 3.4);
  }
  const asked = importing.exec(text);
  const file = attached.some(isBookFile);
  const named = pathIn(asked);
  const speaks = /^(?:import|restore from|read in|bring in)\b/i.test(text);
  if (asked && (file || named !== undefined || /^import\b/i.test(text)))
    return claim({ action: 'import', ...defined({ path: named }) }, 3.3);
  if (text === '' && file) return claim({ action: 'import' }, 3.3);
  if (/^(?:confirm|yes,?) (?:the )?import\b/i.test(text)) return refuse(confirmHow, 2.8);
  return speaks ? refuse(importWhat, 2.6) : undefined;
};

const forgetting = new RegExp(
  `^(?:forget|delete|erase|wipe|remove|destroy|clear)(?: out)? ${whole}(?: (?:you (?:know|have)(?: (?:of|about|on) us)?|about us|we (?:ever )?(?:recorded|told you|wrote)))?$`,
  'i',
);
const forgetConfirmed =
  /^(?:confirm|yes,?)(?: to)? (?:forget|forgetting)(?: everything)?,? (?<code>[A-Z]{6})$/i;
const keeping =
  /^(?:keep (?:everything|it all|the book|our book)|(?:do not|don't|dont|never mind,? (?:do not|don't)) forget(?: everything| anything| it)?|(?:stop|cancel|call off)(?: the)? (?:forgetting|forget)(?: everything)?|cancel forget everything)$/i;
const contact =
  '(?:contacts?|contact details?|details|phone(?: numbers?)?|e-?mail(?: address(?:es)?)?|address|number)';
const forgetContact = new RegExp(
  `^(?:forget|delete|remove|erase|drop)(?: the| all)? ${contact}(?: (?:of|for|from|in|on|with))?(?: the)?(?: reaction)? (?<id>R ?\\d{1,6})$`,
  'i',
);
const forgetOwned = new RegExp(
  `^(?:forget|delete|remove|erase|drop) (?<id>R ?\\d{1,6})'?s? ${contact}$`,
  'i',
);
const alone =
  /^(?:forget|erase|wipe)(?:$| (?:me|us|my|our|all|the|it|everything|what(?! (?:i|we) (?:just )?(?:said|did|wrote|told)))\b)|^delete (?:me|us|my data|our data|my account|account|everything|all)\b/i;

const claimForget = (text: string): Claim | undefined => {
  if (keeping.test(text)) return claim({ action: 'keep' }, 3.3);
  const confirmed = forgetConfirmed.exec(text);
  if (confirmed) return claim({ action: 'forget', code: confirmed.groups?.code?.toUpperCase() }, 3.4);
  if (/^(?:confirm|yes,?) forget/i.test(text)) return refuse(confirmHow, 2.8);
  if (forgetting.test(text)) return claim({ action: 'forget' }, 3.3);
  const one = forgetContact.exec(text) ?? forgetOwned.exec(text);
  const id = one?.groups?.id?.toUpperCase().replace(/\s/g, '');
  if (id) return claim({ action: 'forget-contact', reaction: id }, 3.3);
  return alone.test(text) ? refuse(forgetWhat, 2.6) : undefined;
};

const cues = [
  ...'data records spreadsheet export exports exporting backup back copy download csv excel spreadsheet json file import confirm yes restore load read bring'.split(
    ' ',
  ),
  ...'forget forgetting erase wipe delete remove destroy clear keep cancel stop drop'.split(' '),
  ...undoCues,
  ...historyCues,
];

/** "Who poured it": of the batch that was spoken of. */
const historyOf = (meant: string, reading: Reading): Claim | undefined => {
  const pointed = pointedAtSpoken(reading);
  const of = pointed && claimHistory(bare(pointed.corrected), pointed);
  return of ?? claimHistory(meant, reading);
};

/** What a message would mean to the book itself: to export it, take a file in, undo, look back, forget. */
export const claimBook = (reading: Reading): Claim | undefined => {
  const { text, corrected, attached = [] } = reading;
  if (text.length > longest) return undefined;
  if (attached.length === 0 && !isHistory(reading) && !anyWord(reading, cues)) return undefined;
  // Codes and paths are read as typed: a word put right could be part of either.
  const typed = bare(text);
  const meant = bare(corrected);
  return (
    claimImport(typed, reading) ??
    claimForget(typed) ??
    claimUndo(meant, reading) ??
    claimExport(meant) ??
    historyOf(meant, reading)
  );
};
