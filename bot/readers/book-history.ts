import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { kindAsked, kindCues, wentOut } from './book-kind.ts';
import { subjectIn } from './book-subject.ts';
import { periodIn } from './book-when.ts';
import { lotsIn } from './lots.ts';
import { nextNamed } from './next-named.ts';

export const historyCues = [
  ...kindCues,
  ...'history put amended altered modified adjusted log journal write written entered entries logged noted changes changed change happened who did done touched edited wrote recorded older newer page opened threw binned weighed counted happening new more earlier last been'.split(
    ' ',
  ),
];

const verbs =
  '(?:changed?|opened|threw (?:away|out)|threw|binned|weighed|counted|gave out|amended|altered|modified|adjusted|edit(?:ed)?|touch(?:ed)?|saved?|wrote|updated?|record(?:ed)?|made|poured|bought|renamed|deleted|noted|corrected|gave away|did(?: the pour)?|brought|filled|entered|logged)';
const asked = new RegExp(
  [
    '^(?:(?:show|see|read|list|open|view|display|provide|produce|print|give|get|tell|look at)(?: the| our| me| us)* )?(?:the |our |full |whole )*(?:history|log|journal|log ?book|change log|(?:recent|last|latest)(?: (?:\\d+|few|two|three|four|five|ten|twenty|couple of))? (?:changes|entries)|changes|entries)(?: of| for| to| in| by| about| on| from| since)?(?: (?:the|our|batch|lot|recipe|book))*$',
    `^who(?: has| was it that)?(?: last)? ${verbs}(?: the| our| this| with| to| in| it| batch| lot| one)*$`,
    '^what (?:was|did (?:we|i)) (?:done|do|write|written|enter|entered|change|changed|record|recorded|note|noted)(?: down)? last$',
    '^what (?:was|is) (?:my|the|our) (?:very )?(?:last|latest) (?:entry|change|record|thing|one)(?: (?:i|we) (?:wrote|did|entered|said))?$',
    '^(?:everything|all|whatever)(?: that| which)? (?:was|were|has been|have been) (?:written|entered|recorded|changed|noted)(?: down)?$',
    '^(?:has|have|did) (?:any|some)(?:one|body) (?:changed?|edit(?:ed)?|touch(?:ed)?|altered|alter|written?|entered|noted?)(?: the| our| something| anything| things)*$',
    '^who was the (?:maker|pourer)(?: of)?(?: the| our| batch)*$',
    '^(?:which|what) (?:changes|entries|things) (?:were|have been|did we|have we|has anyone)(?: (?:made|make|written|write|entered|recorded|noted))?(?: down)?$',
    '^who(?: has)?(?: last)? (?:changed|did|done|wrote|written(?: down)?|recorded|entered|noted|logged)(?: things| everything| what| anything| something| this| that)?$',
    '^what(?: all| else)? (?:did|have|has) (?:we|i|you|they|anyone|everyone|everybody|people)? ?(?:all )?(?:do|done|did|put(?: in| down)?|record|recorded|write(?: down)?|written(?: down)?|note(?: down)?|enter|entered|log|change|changed|get up to)(?: to| with| in| about)?(?: (?:the|batch|lot|recipe|book))*$',
    "^what(?:'s| is| has| have|'ve| was| were| got)?(?: been)? ?(?:happened|happening|changed|new|going on|done|recorded|written(?: down)?|entered|noted|logged)(?: (?:here|in the book|to|with|in|about|on|of|lately|recently))*(?: (?:the|batch|lot|recipe))*$",
    '^when (?:did|was|were|has)(?: we| i| anyone| someone)?(?: the| our| this)*(?: last)? ?(?:changed?|edited?|touch(?:ed)?|saved?|updated?)?$',
  ].join('|'),
  'i',
);
/** "what did hazel do", "changes by hazel": a member by name, looked for among those who wrote. */
const member = '(?<who>\\p{L}[\\p{L}\\p{N} _.-]{0,39}?)';
const did =
  '(?:do|done|did|change|changed|record|recorded|write|wrote|written|enter|entered|note|noted|log|logged|make|made|put|touch|touched|edit|edited|update|updated)(?: (?:in|down|up|so far))*';
const things =
  '(?:changes|entries|records|things|history|log|edits|work|everything(?: (?:that|which))?|all(?: (?:that|which))?|the things|anything|something)';
const byMember = new RegExp(
  [
    `^(?:what(?: all)?|which|how many)(?: (?:changes|entries|things|records|edits))? (?:did|has|have|was|were) ${member} ${did}$`,
    `^(?:what|${things})(?: that)? ${member.replace('who', 'who2')} (?:has |have |had )?${did}$`,
    `^(?:the |all |all the |our )?${things}(?: (?:made|done|written|entered|recorded|noted|was done|were made))?(?: (?:by|of|from|for)) ${member.replace('who', 'who3')}$`,
    `^${member.replace('who', 'who4')}'s? ${things}$`,
    `^(?:what|all|everything|anything)(?: (?:that|which))? (?:(?:has|have|was|were|had)(?: been)? )?(?:all )?(?:done|changed|made|written|entered|recorded|noted)(?: (?:in|down))? by ${member.replace('who', 'who6')}$`,
    `^what (?:has|have) ${member.replace('who', 'who7')} been (?:up to|doing)(?: (?:in the book|lately|recently))*$`,
    `^(?:did|has) ${member.replace('who', 'who5')} ${did} (?:anything|something|things|any changes|any entries)$`,
  ].join('|'),
  'iu',
);

/** The member named in one of the ways above. */
const memberIn = (text: string): string | undefined => {
  const { who, who2, who3, who4, who5, who6, who7 } = byMember.exec(text.replace(showing, ''))?.groups ?? {};
  const name = (who ?? who2 ?? who3 ?? who4 ?? who5 ?? who6 ?? who7)?.trim();
  return name === undefined || noMember.test(name) ? undefined : name;
};
const showing =
  /^(?:(?:show|list|see|give|tell|get|read|find|look up|display|print)(?: (?:me|us))*|(?:what|whats|what's) (?:are|is|were) )\s*/i;
const noMember =
  /^(?:some(?:one|body)|any(?:one|body)|every(?:one|body)|nobody|were|was|are|is|been|have|has|had|ever|the|our|my|your|a|an|all|any|some|i|we|you|they|he|she|it|us|me|that|this|which|who|what|how|batch|lot|recipe)\b|\b(?:should|shall|do|does|did|can|could|will|would|must|might|may|to|for|with|of|and|from|recipes?|batch(?:es)?|lots?|prices?|balms?|salves?|week|month|year|today|yesterday|be|been|is|are|was)\b/i;
interface Days {
  readonly from?: string;
  readonly to?: string;
}

/** "Which batches did Tom pour", "what did we buy in March": entries of one kind. */
const kindClaim = (text: string, days: Days): Claim | undefined => {
  const bare = text.replace(showing, '');
  const found = (days.from === undefined ? undefined : wentOut(bare)) ?? kindAsked(bare);
  if (!found || (found.member !== undefined && noMember.test(found.member))) return undefined;
  return claim({ action: 'history', ...found, ...days }, 3.2);
};

/** A recipe that is off the list still has a history under its name. */
const whoChanged =
  /^who(?: has)?(?: last)? (?:changed?|amended|altered|modified|adjusted|edit(?:ed)?|saved?|updated?|renamed?|deleted?)(?: the| our)* (?<what>[\p{L}\p{N}' -]{2,80})$/iu;
const pageSaid =
  /^(?:(?:history|log)?,? ?page (?<page>\d{1,4})|(?<more>(?:show )?(?:more|older|earlier|next page|the next page|older (?:ones|entries|changes)|more history|go on)))$/i;

/** After a look at what was written. */
export const isHistory = (reading: Reading): boolean =>
  reading.last?.topic === 'book' && reading.last.request.action === 'history';

const claimPage = (text: string, reading: Reading): Claim | undefined => {
  const match = pageSaid.exec(text);
  if (!match) return undefined;
  const before = isHistory(reading) ? reading.last?.request : undefined;
  const page = match.groups?.page;
  if (page !== undefined && (before || /history|log/i.test(text)))
    return claim({ ...before, action: 'history', page: Math.max(1, Number(page)) }, 3.3);
  return before ? claim({ ...before, page: Number(before.page ?? 1) + 1 }, 3.3) : undefined;
};

/** "Who bought 26-KIVO": a batch is bought by customers, and a lot by one of us. */
const asksBuyers = (text: string, reading: Reading): boolean =>
  /^who(?: has)? bought\b/i.test(text) && lotsIn(reading)[0]?.kind === 'batch';

const squeezed = (text: string): string => text.replace(/\s+/g, ' ').replace(/^[\s,:]+|[\s,:.?]+$/g, '');

/** "who changed Winter balm in March", "history of 26-KIVO", "what did we do yesterday", "older". */
export const claimHistory = (text: string, reading: Reading): Claim | undefined =>
  asksBuyers(text, reading) ? undefined : claimPast(text, reading);

const andMember =
  /^(?:and|what about|how about|or) (?:what about |by |from |of )?(?<who>\p{Lu}[\p{L}\p{N}_.-]{0,39})$/u;

/** "And Tom?", "and in May?", "and of K12": the same question of another. */
const claimNext = (text: string, reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (!isHistory(reading) || !last) return undefined;
  const { page: _page, ...before } = last.request;
  const { about: _about, member: _member, ...same } = before;
  const { lot, recipe } = nextNamed(reading) ?? {};
  if ((lot ?? recipe) !== undefined) return claim({ ...same, about: defined({ lot, recipe }) }, 3.25);
  const who = andMember.exec(reading.text.replace(/[\s?.!]+$/, ''))?.groups?.who;
  if (who !== undefined && last.request.member !== undefined) return claim({ ...same, member: who }, 3.25);
  const period = periodIn(reading);
  const rest = period && squeezed(text.replace(period.said, ' '));
  if (!period || rest === undefined || !/^(?:(?:and|what about|how about|or|then)\b ?)*$/i.test(rest))
    return undefined;
  return claim({ ...before, ...defined({ from: period.from, to: period.to }) }, 3.25);
};

const claimPast = (text: string, reading: Reading): Claim | undefined => {
  const paged = claimPage(text, reading) ?? claimNext(text, reading);
  if (paged) return paged;
  const period = periodIn(reading);
  const undated = squeezed((period ? text.replace(period.said, ' ') : text).replace(/^\s*'s\s/, ''));
  const subject = subjectIn(reading, undated);
  const rest = squeezed(subject ? undated.replace(subject.said, ' ') : undated);
  const days = defined({ from: period?.from, to: period?.to });
  if (asked.test(rest) || asked.test(rest.replace(showing, ''))) {
    // The versions of one recipe, and the prices of one thing, have their own answers.
    const own =
      subject?.about.recipe !== undefined && /^(?:(?:show|see|the|our)\b ?)*history/i.test(rest) && !period;
    if (own) return undefined;
    return claim({ action: 'history', ...defined({ about: subject?.about }), ...days }, 3.25);
  }
  return subject ? undefined : withoutSubject(rest, days);
};

/** Of a recipe nobody has any more, of one kind of entries, or of a member. */
const withoutSubject = (rest: string, days: Days): Claim | undefined => {
  const gone = whoChanged.exec(rest)?.groups?.what;
  if (gone !== undefined) return claim({ action: 'history', about: { recipe: gone }, ...days }, 3.2);
  const ofKind = kindClaim(rest, days);
  if (ofKind) return ofKind;
  const member = memberIn(rest);
  return member === undefined ? undefined : claim({ action: 'history', member, ...days }, 3.2);
};
