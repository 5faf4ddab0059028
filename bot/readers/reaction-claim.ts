import { plusMonths } from '../../core/bench/days.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { batchMeant } from './batch-meant.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { pointedAtSpoken } from './of-spoken-lot.ts';
import { listClaim, listedAgain, othersToo } from './reaction-asked.ts';
import { reactionCues, signs, signWords } from './reaction-words.ts';

/** "Can peppermint cause a rash", "is it itchy for some": a question, and nothing that happened. */
const asks =
  /^\W*(?:so |and |please )?(?:any|who|whom|whose|show|list|name|tell (?:me|us)|give (?:me|us)|can|could|does|do|is|are|will|would|may|might|what|why|how|which|should)\b|^\W*(?:has|have|had|did|was|were) (?:any|some|we|you|there|it|the|_|people|customers?)|\?\s*$/i;
const someone = /\b(?:after|from|using|used|since|reacted|customer|buyer|neighbou?r|balm|salve|tin)\b/i;
const listed =
  /\bincidents?\b.{0,20}\b(?:for|of|to|with|on|about)\b|\breactions?\b.{0,20}\b(?:for|of|to|with|on|about)\b|\b(?:list|show|any|all|which|see|open)\b.{0,12}\breactions?\b|^\W*reactions?\W*$|\bhow many\b.{0,20}\breactions?\b|\b(?:has|have|did|does|do|is|are|was|were|had)\b.{0,30}\b(?:any(?:one|body|thing)?|some(?:one|body)|people|customers?|we|there)\b.{0,30}\b(?:react(?:ed|ion|ions)?|report(?:ed)?|complain(?:ed|ts?)?)\b|\babout (?:the |our |all )?reactions\b|\breactions? (?:log|book|list|record|so far|noted|reported)\b|\b(?:any|which|what|all|how many|list|show|the)\b.{0,20}\bcomplaints?\b|\bcomplaints? (?:about|on|for|against|so far|list)\b/i;
const record = /\b(?:R\d{1,6})\b/i;

const contactSaid = /[;,.]?\s*\bcontact(?:\s+(?:is|details|them|her|him))?\s*[:=]?\s+([^;\n]{3,200})/i;
const address =
  /\b(?:phone|tel|email|e-mail|mail|reach (?:her|him|them) (?:at|on))\s*[:.]?\s+([^;\n,]{5,100})/i;
const useSaid =
  /\b((?:(?:she|he|they|it|who|i|we|the (?:customer|product|balm|salve)|product|balm|salve) (?:has |have |had |was |only )*)?(?:used|using|applied|put it on|put on|wore)\b[^;.\n]{0,200})/i;
const noSerious =
  /\b(?:not|nothing|never|isn't|wasn't|is no|no longer|hardly|less) (?:\w+ ){0,2}serious\b|\bserious\s*[:=]?\s*no\b/i;
const isSerious = /\bserious(?:\s*[:=]?\s*yes)?\b/i;

const seriousIn = (text: string): boolean | undefined => {
  if (noSerious.test(text)) return false;
  return isSerious.test(text) ? true : undefined;
};

/** What leads up to a code that was read: "after __", "from batch __". */
const beforeCode = /(?:\b(?:after|from|to|with|using|of|on|the|batch|lot)\s+){1,4}_+/gi;

interface Told {
  readonly signs: string;
  readonly use?: string;
  readonly contact?: string;
  readonly serious?: boolean;
}

const opening =
  /^[\s,:;.-]*(?:(?:please|hi|hello|pipkin|log|note|record|write down|we have|there (?:is|was)|i (?:want|need|would like) to|to|an?|the|new)\b[\s,:;-]*){0,6}(?:report(?:ed)?|reactions?)?\b[\s,:;-]*/i;
/** "Report a skin reaction:" says what comes, and what stands behind it is what happened. */
const heading =
  /^[\s,:;.-]*(?:(?:please|hi|hello|pipkin|can you|could you|i (?:want|need|would like) to|we (?:have|had|got)|there (?:is|was|has been))\b[\s,]*)*(?:(?:report|record|note|log|write down|put down|enter)\b[\s,]*)?(?:(?:an?|the|another|new|one more|skin|adverse|allergic|bad|mild|customer)\b\s*)*(?:reaction|incident|complaint)s?\b(?:\s*(?:to|from|with|after|of|for|on|about|report|record|note|entry))*\s*[:;,.-]+\s*(?=\S)/i;
const loose = /(?:[\s,;:.-]|\b(?:after|from|to|with|using|of|on|the|batch|lot|tin|a|an|for)\b)+$/i;

/** "Please make a note of it": said of a reaction, it is no note of the batch. */
const toBeNoted =
  /[\s,;.]*\b(?:and |so )?(?:(?:can|could|would|will) (?:you|we) )?(?:please |kindly )?(?:(?:make|take|jot|put) (?:down )?a note of (?:it|that|this)|(?:write|put|note|jot) (?:it|that|this) down|(?:record|log|file|register|enter) (?:it|that|this)|note (?:it|that|this)(?: down)?)\b(?: as an? (?:adverse )?reaction)?(?: please)?\??/i;

/** What happened in the maker's words, without codes, dates, contact and the words that only ask to write it down. */
const toldIn = (text: string): Told => {
  const contact = (contactSaid.exec(text) ?? address.exec(text))?.[1]?.trim();
  const bare = text
    .replace(/[,;]?\s*\bserious\s*[:=]?\s*(?:no|yes)\b/gi, ' ')
    .replace(contactSaid, ' ')
    .replace(address, ' ')
    .replace(beforeCode, ' ')
    .replace(/_+/g, ' ');
  const use = useSaid.exec(bare)?.[1]?.replace(/[\s,;.]+(?:on|since|and)?[\s,;.]*$/i, '');
  const said = bare
    .replace(useSaid, ' ')
    .replace(noSerious, ' ')
    .replace(toBeNoted, ' ')
    .replace(heading, '')
    .replace(opening, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([,;])(?: ?[,;])+/g, '$1')
    .replace(/ (?=[,;:.])/g, '')
    .trim()
    .slice(0, 500);
  return { signs: said.replace(loose, '').trim(), ...defined({ use, contact, serious: seriousIn(text) }) };
};

const onlyAsks = /^(?:(?:an?|the|new|report|reaction|reactions|please|to|on|for|it|this)\b\W*)*$/i;

const nothingSaid: Trouble = {
  code: 'missing',
  text: 'What happened, and after which batch? For example "report: itching lips after 26-BAFO, used twice". Trouble breathing or a swollen tongue: call the emergency number first.',
};

const dayAlone = /\b(?:since|on|from) the (\d{1,2})(?:st|nd|rd|th)\b/i;

/** "Since the 24th": the last one there was. */
const lastSuch = (text: string, today: string): string | undefined => {
  const day = dayAlone.exec(text)?.[1]?.padStart(2, '0');
  if (day === undefined || Number(day) < 1 || Number(day) > 28) return undefined;
  const inMonth = `${today.slice(0, 8)}${day}`;
  return inMonth <= today ? inMonth : plusMonths(inMonth, -1);
};

const onDay = ({ days, rest, today }: BenchReading): string | undefined =>
  days.find(({ role }) => role === 'on')?.past ?? lastSuch(rest.text, today);

const noted = (reading: Reading, bench: BenchReading, weight: number): Claim => {
  const told = toldIn(bench.rest.text);
  if (onlyAsks.test(told.signs) || !/\p{L}{3}/u.test(told.signs)) return refuse(nothingSaid, weight);
  const meant = batchMeant(reading, bench);
  const lot = meant.lot ?? bench.lots[0]?.code;
  return claim({ action: 'note', ...defined({ lot, on: onDay(bench) }), ...told }, weight, meant.assumed);
};

/** "R3: better after two days", "R3 was serious", "close R3", "R3 was 26-KIVO", "forget the contact of R3". */
const followed = (bench: BenchReading, id: string): Claim | undefined => {
  const rest = bench.rest.text.replace(record, ' ').replace(/_+/g, ' ');
  const closed = /\b(?:close|closed|settled|resolved|sorted(?: out)?)\b/i.test(rest) ? true : undefined;
  const contact = /\b(?:forget|remove|delete|erase)\b.{0,20}\bcontact\b/i.test(rest)
    ? null
    : contactSaid.exec(rest)?.[1]?.trim();
  const serious = seriousIn(rest);
  const lot = bench.lots.find(({ code }) => code.toUpperCase() !== id)?.code;
  const told = rest
    .replace(contactSaid, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,:;.-]+|[\s,:;.?-]+$/g, '');
  const bare =
    /^(?:(?:show|see|which|batch|doing|going|who|whose|where|when|what|what's|do|does|did|we|know|about|is|was|me|please|reaction|the|with|how|update|on|up|tell|of|happened|became|come|of|it|read|open|has|have|there|any|news|for|to)\b[\s?]*)*$/i.test(
      told,
    );
  if (bare && closed === undefined && contact === undefined && lot === undefined && serious === undefined)
    return claim({ action: 'show', id }, 3);
  if (asks.test(bench.rest.text) && closed === undefined && contact === undefined) return undefined;
  const plain = closed !== undefined || contact === null || lot !== undefined;
  const text = (plain && told.length < 40) || told === '' ? undefined : told.slice(0, 500);
  // "It cleared up in three days" names no day ahead.
  const said = onDay(bench);
  const on = said !== undefined && said <= bench.today ? said : undefined;
  return claim({ action: 'follow', id, ...defined({ closed, contact, serious, lot, signs: text, on }) }, 3);
};

/** Said of oneself without a batch: nothing is written down, but nobody is left without the first advice. */
const ownBody = /\b(?:my|i|i'm|i've|me|her|his)\b/i;

/** "From her hives" are bees', "spots on the salve" the salve's, and a splash of hot oil is for first aid. */
const noSigns =
  /\b(?:from|of|by|at|near) (?:(?:her|his|their|our|my|the|own|two|three|local) )+hives\b|\b(?:spots?|flare|bumps)\b[^.;\n]{0,20}\b(?:on|in|inside|over|under) (?:the |my |our |top of )*(?:salves?|balms?|tins?|jars?|surface|lids?|oil|wax|butter|top)\b/gi;
const hotSplash = /\b(?:hot|melted|boiling) (?:oil|wax|balm|butter|fat|steam|water)\b|\b(?:oil|wax) splash/i;

const hasSigns = (reading: Reading, bench: BenchReading): boolean =>
  signs.test(reading.text.replace(noSigns, ' ')) &&
  !hotSplash.test(reading.text) &&
  !asks.test(reading.text.replace(toBeNoted, ' ')) &&
  (bench.lots.length > 0 || someone.test(reading.text));

/** The record a message names: "R3", where it is no lot of the group. */
const recordIn = ({ text, bench }: Reading): string | undefined => {
  const id = record.exec(text)?.[0].toUpperCase();
  return id !== undefined && bench.reactions.has(id) ? id : undefined;
};

/** "She is well again, you may close the report." */
const namesReport = /\bclose (?:the|that|this) (?:report|reaction|record|case)\b/i;
const onlyOpen = ({ reactions }: Reading['bench'], lot?: unknown): string | undefined => {
  const open = [...reactions.values()].filter(
    (each) => !each.closed && (lot === undefined || each.lot === lot),
  );
  return open.length === 1 ? open[0]?.id : undefined;
};

/** The reaction noted, shown or followed just before in this channel. */
const spokenOf = ({ last, bench, text }: Reading): string | undefined => {
  if (last?.topic !== 'reaction') return namesReport.test(text) ? onlyOpen(bench) : undefined;
  const { id, action, signs: told, lot } = last.request;
  if (typeof id === 'string') return id;
  if (action === 'list') return onlyOpen(bench, lot);
  if (action !== 'note') return undefined;
  const same = [...bench.reactions.values()].filter((each) => each.signs === told);
  return same.toSorted((a, b) => Number(b.id.slice(1)) - Number(a.id.slice(1)))[0]?.id;
};

const goesOn =
  /\b(?:better|worse|fine|well|ok|okay|gone|healed|cleared|recovered|over|again|doctor|still|closed?|settled|resolved|serious|contact|stopped|faded|calmed|(?:(?:she|he|they|mum|dad|her \w+|his \w+) (?:also |only |had |has )*(?:said|says|told|used|uses|put|puts|applied|noticed|felt))|(?:once|twice|three times|every) (?:a )?(?:day|night|morning|evening|hour)s?)\b/i;

/** "No, it was 26-VOKI", "it was on 20 November". */
const putRight =
  /^\W*(?:(?:no|sorry|oops|wait|actually|oh)\b\W*)*(?:it|that|this) (?:was|happened)\b|^\W*(?:no|sorry|oops|actually)\W+(?:the |batch |after |from )*_*\d{2}-/i;

/** "She is fine again", "close it": of the reaction spoken of just before. */
const followedOn = (reading: Reading): Claim | undefined => {
  const id = spokenOf(reading);
  if (id === undefined || asks.test(reading.text)) return undefined;
  if (!goesOn.test(reading.text.replace(/^\W*ok(?:ay)?\b[.,!]*/i, '')) && !putRight.test(reading.text))
    return undefined;
  const bench = readBench(reading);
  const rightened = putRight.test(reading.text) && reading.last?.request.action !== 'list';
  const others =
    (bench.lots.length > 0 && !rightened) || reading.items.some(({ letter }) => /[Ricgv%]/.test(letter));
  const made = others || reading.tokens.length > 24 ? undefined : followed(bench, id);
  return made?.kind === 'request'
    ? { ...made, weight: 2.85, assumed: [`I took ${id}, which we spoke of.`] }
    : undefined;
};

/** "Report from the kitchen: 11 jars of it made": of a pour, and nobody's skin. */
const isOfPour = ({ rest }: BenchReading): boolean =>
  /\b(?:made|poured|filled)\b/i.test(rest.text) &&
  rest.items.some(({ letter }) => letter === 'R') &&
  rest.items.some(({ letter }) => letter === 'c') &&
  !signs.test(rest.text);

/** "Report the lots in stock": what there is. */
const isOfShelf =
  /^\W*report\b[\s:]*(?:(?:on|of|about|the|our|all|my|current|present)\b\s*)*(?:stock|shelf|lots?|inventory|batches|store|cupboard)\b/i;

const isReport = (bench: BenchReading): boolean =>
  /^\W*(?:report|reaction)\b/i.test(bench.rest.text) && !isOfPour(bench) && !isOfShelf.test(bench.rest.text);

/** A question, whether it begins with the code of a batch or not. */
const isAsked = (reading: Reading, { rest }: BenchReading): boolean =>
  asks.test(reading.text.replace(toBeNoted, ' ')) || asks.test(rest.text.replace(toBeNoted, ' '));

/** "Somebody had an allergic reaction to 26-KIVO". */
const hadOne =
  /\b(?:had|has|got|gets|suffered|developed|having)\b.{0,30}\breactions?\b|^\W*(?:an? )?(?:allergic|skin|bad|strong|mild) reaction\b/i;
const isEntry = /^\W*(?:adverse )?reaction (?:record|report|entry|note)\s*[:.,-]/i;
const asksList = ({ rest, lots }: BenchReading): boolean =>
  listed.test(rest.text.replace(toBeNoted, ' ')) &&
  !isEntry.test(rest.text) &&
  !signs.test(rest.text) &&
  (lots.length === 0 || asks.test(rest.text) || !hadOne.test(rest.text));

const signWeight = ({ lots, rest }: BenchReading, cued: boolean): number => {
  if (lots.length === 0 && !cued) return 2.6;
  return toBeNoted.test(rest.text) ? 3.55 : 3.45;
};

/** Where the message is about a reaction but the batch alone would make it another topic's. */
const about = (reading: Reading, bench: BenchReading, cued: boolean): Claim | undefined => {
  if (asksList(bench)) return listClaim(reading, bench);
  if (isAsked(reading, bench)) return othersToo(reading, bench);
  if (isReport(bench)) return noted(reading, bench, 3.6);
  // What was used on skin, or a telephone number, is no count of tins.
  if (hasSigns(reading, bench)) return noted(reading, bench, signWeight(bench, cued));
  if (cued && bench.lots.length > 0) return noted(reading, bench, hadOne.test(bench.rest.text) ? 3.3 : 3);
  return signs.test(reading.text) && ownBody.test(reading.text) ? refuse(nothingSaid, 1.2) : undefined;
};

const redWords = [
  'burn',
  'burns',
  'red',
  'sore',
  'raw',
  'puffy',
  'swollen',
  'cracked',
  'dry',
  'flaky',
  'scaly',
  'patches',
  'patch',
];

/** "She got itchy spots from it". */
const fromIt =
  /\b(?:from|after|using|used|with|to|of|applying|trying|tried) (?:it|them|that one|this one|these|those)\b/i;

/** What a message would mean as a reaction told, or a question about those written down. */
export const claimReaction = (reading: Reading): Claim | undefined => {
  const id = record.test(reading.text) ? recordIn(reading) : undefined;
  const cued = anyWord(reading, reactionCues);
  const on = id === undefined ? (listedAgain(reading) ?? followedOn(reading)) : undefined;
  if (on) return on;
  if (id === undefined && !cued && !anyWord(reading, signWords) && !anyWord(reading, redWords))
    return undefined;
  if (id !== undefined) return followed(readBench(reading), id);
  // "Any reactions to it?"
  const points = asks.test(reading.text) || fromIt.test(reading.text);
  const meant = (points ? pointedAtSpoken(reading) : undefined) ?? reading;
  return about(meant, readBench(meant), cued);
};
