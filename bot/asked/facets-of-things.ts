import { lotKey } from '../../core/bench/codes.ts';
import type { Reading } from '../reading.ts';
import {
  batchesList,
  batchPage,
  due,
  dueOfCode,
  dueOfCodes,
  type Facet,
  history,
  ifPointed,
  lotPage,
  lotsList,
  ofBatch,
  reactions,
  sheet,
  trace,
  type Wish,
} from './facet.ts';
import type { Subject } from './subject.ts';

const people =
  "(?:who|whom|who's|whos|who've|where|where's|wheres|where'd|whereabouts|which (?:people|shops?|customers?|places?|friends?|families))";
const made = '(?:pour(?:ed|ing)?|made|make|fill(?:ed)?|cast|mix(?:ed)?|cook(?:ed)?|brewed|produced)';
const goods =
  '(?:lots?|oils?|wax(?:es)?|butters?|supplies|ingredients?|materials?|bags?|bottles?|tubs?|stuff|purchases|deliver(?:y|ies)|herbs?)';

/** What an oil of one's own was made from, where that alone is asked. */
const ifMade = (subject: Subject, reading: Reading): Wish | undefined =>
  reading.bench.lots.get(lotKey(subject.name))?.draws ? trace(subject) : undefined;

/** When it ends, and how many there are: a batch's own page tells both. */
const twoOfBatch = new RegExp(
  [
    '^(?=.*\\b(?:expir\\w+|best[- ]before|use[- ]by|(?:good|keep|keeps|last|lasts) (?:until|till|for|to)|(?:until|till) when|end(?:s)?|go(?:es)? off)\\b)',
    '(?=.*\\b(?:how (?:many|much)|left|still have|have (?:we|i)|(?:we|i) have|remain\\w*|made|poured|how old|in stock)\\b)',
  ].join(''),
  'i',
);
const grams =
  /\b(?:how many (?:grams?|g|kilos?|kg|ml)|(?:grams?|weight|amount|quantity) (?:in|of|left|there))\b/i;

/** The surest words first: of two things asked at once the first that fits is answered. */
export const facetsOfThings: readonly Facet[] = [
  {
    cue: twoOfBatch,
    never: /\b(?:who|whom|where|react\w*|rash|recall)\b/i,
    sure: twoOfBatch,
    of: { batch: batchPage, lot: lotPage, recipe: ofBatch(batchPage) },
  },
  {
    cue: /\b(?:is|are)\b.{0,30}\bback (?:to|at|as|on|up to) (?:what|where|how|its|their|the old|normal)\b|\b(?:as|what|how) (?:it|they) (?:was|were|had been) before\b|\b(?:right|correct|in order) again\b/i,
    sure: /\b(?:back|again|before)\b/i,
    of: { lot: lotPage, batch: batchPage },
  },
  {
    cue: grams,
    never: /\b(?:used|went|into|out of|per|each|price|cost)\b/i,
    sure: grams,
    of: { lot: lotPage },
  },
  {
    cue: /\b(?:react\w*|rash(?:es)?|itch\w*|complain\w*|complaints?|swell\w*|sore|trouble with|problems? with|bad skin|happened before)\b/i,
    of: { batch: reactions, recipe: ofBatch(reactions) },
  },
  {
    cue: /\brecall|\bcall(?:s|ed|ing)?\b.{0,24}\bback\b|\bwithdraw\w*|\bsheet\b|\b(?:have|need|ought|must|should|would)\b.{0,20}\b(?:call|ring|phone|warn|inform|tell|notify|contact)\b/i,
    sure: /\brecall|\bcall(?:s|ed|ing)?\b.{0,24}\bback\b|\bwithdraw/i,
    of: { lot: sheet, batch: sheet, recipe: ofBatch(sheet) },
  },
  {
    cue: /\b(?:under|below) (?:its|the|our|a) (?:mark|minimum|limit|warning)\b|\brunning (?:low|short|out)\b/i,
    of: { ingredient: () => ({ topic: 'stock', request: { action: 'list', which: 'low' } }) },
  },
  {
    cue: /\b(?:worry|worried|worries|concerned|affected|in danger|suspect)\b|\b(?:still )?out (?:there|in the (?:world|open))\b|\bwhat (?:has |have )?(?:happened|became|become) (?:to|of) (?:the |our |all )*(?:tins|jars|pots|sticks|tubes)\b/i,
    never: /\bbest before\b|\bdates?\b|\breactions?\b/i,
    sure: /\b(?:worry|worried|affected|concerned)\b|\bout there\b|\b(?:tins|jars|pots|sticks|tubes)\b/i,
    of: { lot: trace, batch: trace, recipe: ofBatch(trace) },
  },
  {
    cue: /\b(?:why|how come|what makes|reason|decides?|responsible for|sets? (?:the|its|their|that|this)|limits?|shortens?)\b/i,
    never: /\bwhy not\b/i,
    of: { batch: batchPage, recipe: ofBatch(batchPage), lot: lotPage },
  },
  {
    cue: /\b(?:history|log|journal|story|changes?|changed|entries)\b|\bwho(?: has| was it that| was it who)? (?:last )?(?:wrote|written|entered|edited|touched|altered|recorded|noted|weighed|opened|counted|corrected)\b|\bwho did\b.{0,16}\b(?:write|enter|record|note|change)\b|\bwritten (?:down )?(?:about|of|on|for)\b|\bwhat(?:'s| has| was)? (?:all )?(?:happened|been done|done) (?:to|with)\b|\bby whom\b.{0,24}\b(?:entered|written|changed|opened|recorded)\b/i,
    sure: /\bwho\b|\b(?:been|was) done (?:to|with)\b/i,
    of: {
      lot: history,
      batch: history,
      recipe: ({ name }) => ({ topic: 'book', request: { action: 'history', about: { recipe: name } } }),
    },
  },
  {
    cue: new RegExp(
      `\\b(?:who|whose|when|the (?:day|date)|what day|which day|what date|which date|how long ago|on what|by whom)\\b.{0,40}\\b${made}\\b|\\b${made}\\b.{0,30}\\b(?:when|by whom|what day|which day|how long ago|who by)\\b|\\bhow old\\b|\\bmanufactur\\w*|\\bproduction date\\b|\\bdate of (?:making|pouring)\\b`,
      'i',
    ),
    sure: /\b(?:day|date|when)\b/i,
    never: /\bmade (?:from|of|with|out of)\b/i,
    of: { batch: batchPage, recipe: ofBatch(batchPage) },
  },
  { cue: /\b(?:samples?|retention|kept back)\b/i, of: { batch: batchPage, recipe: ofBatch(batchPage) } },
  {
    cue: /\b(?:open|opened|unopened|sealed|started|broken into|broached)\b/i,
    sure: /\bopened\b/i,
    of: { lot: lotPage },
  },
  {
    cue: /\b(?:pay|paid|cost|costs|price|spend|spent|charged?|set (?:me|us) back|supplier|bought|buy|came from|come from|arrive[ds]?|delivered)\b/i,
    of: { lot: lotPage },
  },
  {
    cue: new RegExp(
      `\\b${people}\\b|\\b(?:recipients|receivers|buyers|holders|takers|distribution|distributed)\\b|\\b(?:any|some)(?:one|body)\\b.{0,20}\\b(?:had|has|have|got|get|taken?|took|received?|bought)\\b|\\bin (?:whose|what|which) hands\\b`,
      'i',
    ),
    never:
      /\b(?:where (?:can|could|do|should)|supplied|supplies|brought|bought|delivered|sold us)\b|\bbest before\b|\bwhere\b.{0,20}\b(?:kept|stored|shelf|put it)\b|\bwho\b.{0,20}\b(?:should|could|can|will)\b/i,
    sure: /\b(?:who|whom|who's|whos|where|distribution|distributed)\b/i,
    of: {
      lot: trace,
      batch: trace,
      recipe: ofBatch(trace),
      place: ({ name }) => ({ topic: 'trace', request: { to: name } }),
    },
  },
  {
    cue: /\b(?:its|their|which|what|the) dates?\b|(?:^|: )dates?\b|\b(?:keep|last|hold|stay)s?\b.{0,16}\b(?:till|until|to|through|beyond|past)\b|\bhow many (?:days|weeks|months)\b|\b(?:until|till|up to|by) (?:when|what|which)\b|\b(?:when|how long|what date|which date|what day|what's the date|how soon|by when|what month)\b.{0,50}\b(?:good|expir\w+|goe?s?|go off|ends?|out|keeps?|lasts?|last|use|used|off|over|finish|bad|till|until|use[- ]by|best|sell|last|turn)\b|\b(?:best[- ]before|use[- ]by|sell[- ]by|shelf[- ]life|expiry|expir\w+|out of date|past (?:its|their|it)|(?:good|fit|fine|safe|okay|ok)\b.{0,24}\b(?:until|till|through)|still (?:good|ok|okay|fine|usable|safe|in date|alright)|good (?:until|till|for)|ok(?:ay)? to (?:use|sell|give)|go(?:es|ne|ing)? off|(?:with)?in date|(?:all right|alright|ok|okay|fine|good|safe|fit) (?:to|for) (?:us|use|sell|give|another))\b/i,
    sure: /\b(?:until|till|up to|by|to) (?:when|(?:what|which) (?:date|day|month))\b|^\W*(?:and )?(?:its|their) dates?\b|^\W*(?:[\w-]+: )?dates?\W*$|\b(?:keep|last|hold|stay)s?\b.{0,16}\b(?:till|until|through|beyond|past)\b|\b(?:good|fit|fine|safe|okay|ok)\b.{0,24}\b(?:until|till|through)\b|\bstill (?:good|ok|okay|fine|usable|safe)\b|\b(?:all right|alright|ok|okay|fine|safe|fit) (?:to|for) (?:use|sell|another)\b/i,
    of: {
      lot: dueOfCode,
      lots: dueOfCodes,
      batches: dueOfCodes,
      batch: dueOfCode,
      ingredient: ({ name }) => due({ ingredient: name }),
      recipe: ({ name, batch }) => (batch === undefined ? undefined : due({ recipe: name })),
    },
  },
  {
    cue: new RegExp(
      `\\b(?:which|what|whose|list|name|all|every|the)\\b.{0,24}\\b${goods}\\b.{0,40}\\b(?:in|into|used?|went|go|made|make|for|from|behind|contain\\w*)\\b|\\b(?:lots? (?:of|for|behind|in)|made (?:from|of|with|out of|up of)|consists?|composed|composition|ingredients (?:of|in)|contents? of|makeup|backward|contain(?:s|ed)?|all the way back|in contact with|touched|comes? from|went (?:into|in)|go(?:es)? into|put (?:into|in)|what(?:'s|s| is| was) (?:inside|in)|inside|draw|drew|drawn)\\b`,
      'i',
    ),
    never: /\b(?:recipe|version|left|remain\w*|how much)\b/i,
    sure: /\b(?:list|name|tell|show)\b.{0,16}\blots\b|\binside\b|\blots? (?:of|for|behind|in)\b|\b(?:which|what|the)\b.{0,24}\b(?:lots?|supplies|ingredients)\b.{0,24}\b(?:into|in|used?)\b/i,
    of: { batch: trace, recipe: ofBatch(trace), lot: ifMade },
  },
  {
    sure: /\bhow many (?:tins|jars|pots|tubes|sticks) (?:made|poured|filled) (?:with|from|of|out of)\b|\b(?:which|what|how many) (?:batch(?:es)?|pours)\b(?! (?:are there|do we have|have we)\b)|\bwhat (?:is|are|was|were)\b[^?]{0,40} in(?=\W*$|, | besides| else| too)/i,
    cue: /\b(?:batch(?:es)?|pours?|balms?|salves?|products?|anything|everything|what (?:is|are|was|were)\b[^?]{0,40} in(?=\W*$|, | besides| else| too)|into (?:what|which)|used (?:in|for|up in)|uses?|used|went (?:into|in)|go(?:ne)? (?:into|in)|end(?:ed)? up|made (?:from|with|out of)|contain\w*|in (?:any|which|what)|for what|what for)\b/i,
    never: /\b(?:left(?! (?:the|our|my|us)\b)|remain\w*|still(?! (?:out|outside|away)\b))\b|\bhow much\b/i,
    of: { lot: trace },
  },
  {
    cue: /\bleft us\b|\bleft (?:the|our|my) (?:house|school|shop|building|kitchen|hall|shed|stall|workshop|bench)\b|\b(?:given|gave|give|sold|sell|handed|donated|out|outside|gone|gifted|went|passed on)\b/i,
    sure: /\boutside (?:the|our)\b|\bleft (?:the|our|my|us)\b|\bgone out\b|\bhanded out\b/i,
    never:
      /\bhow much\b(?!.*\bout of (?:the|our) house)|\bout of (?:the|my|our|those) (?:tins|jars|pots|sticks|tubes)\b|\bhow many\b.{0,24}\bwith (?:me|us)\b|\bleft\b(?! (?:the|our|my|us)\b)|\bremain\w*|\bsold out\b|\ball (?:sold|gone|given away)\b|\bout of (?:date|stock)\b/i,
    of: {
      lot: trace,
      batch: trace,
      recipe: ofBatch(trace),
    },
  },
  {
    sure: /\bhow many\b.{0,60}\b(?:should find|should be|i have|have i|we have|in (?:the|my|our) (?:drawer|cupboard|box|shed|house|bag|basket|larder))\b|\bhow (?:much|many)\b.{0,40}\b(?:left|remain\w*|still|with (?:me|us)|on (?:the|my|our) shelf)\b/i,
    cue: /\b(?:left|remain\w*|still|sold out|all (?:sold|gone|given away)|rest|stock|here|at home|with (?:me|us)|should find|in (?:the|my|our) (?:own )?\w+|balance|total|reserves?|supply|summary|amount|quantity|status|level|enough|empty|finished|used up|in (?:the )?(?:house|stock|cupboard|store|shelf)|on (?:the|my|our) (?:shelf|bench)|how (?:much|many|full|far)|how(?:'s| is| are|s)\b.{0,40}\b(?:doing|looking|holding up|going|getting on)|have (?:we|i)|do (?:we|i) have|got|any)\b/i,
    never:
      /\b(?:price|cost|pay|worth|substitute|instead|replace|melt\w*|need|should|take|per|recipe|workshop|class|people|loss|drops?|outside|out of (?:the|our) (?:house|hands))\b/i,
    of: {
      lot: lotPage,
      lots: lotsList,
      batch: batchPage,
      batches: batchesList,
      ingredient: ({ name }) => ({ topic: 'stock', request: { action: 'list', ingredient: name } }),
      recipe: (subject) =>
        ofBatch(batchPage)(subject) ?? { topic: 'batch', request: { action: 'list', recipe: subject.name } },
    },
  },
  {
    cue: /\b(?:tins?|jars?|pots?|sticks?|tubes?|how many|holds?|get|got|have|has|receive[d]?|bought|take|took|list)\b/i,
    of: { place: ({ name }) => ({ topic: 'trace', request: { to: name } }) },
  },
  {
    cue: /\b(?:show|details?|page|summary|look up|look at)\b/i,
    of: { lot: ifPointed(lotPage), batch: ifPointed(batchPage) },
  },
  {
    cue: /\b(?:tell|about|record|everything|how (?:is|was|did)|what (?:is|was|about))\b/i,
    faint: true,
    of: { lot: ifPointed(lotPage), batch: ifPointed(batchPage) },
  },
];
