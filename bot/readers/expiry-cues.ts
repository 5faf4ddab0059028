// What asks for dates, and what speaks of the daily reminder.

const months =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?';

/** Speaks of the daily reminder. */
export const remindCue = new RegExp(
  [
    String.raw`\b(?:send|tell|give|show|message|wake|nudge|ping|write) (?:us|me|everyone)\b.{0,40}\b(?:(?:every|each) (?:day|morning|evening|night)|daily)\b`,
    String.raw`\bwarnings?\b.{0,20}\b(?:days?|weeks?|fortnight|months?) (?:before|ahead|in advance)\b`,
    String.raw`\b(?:days?|weeks?|fortnight) (?:ahead|before(?:hand)?|in advance)(?: (?:is|are|would be|will be))? (?:enough|plenty|fine|better|sufficient|will do)\b`,
    String.raw`\b(?:want|need|like|wish) to (?:know|be told|hear)\b.{0,40}\b(?:days?|weeks?|fortnight) (?:ahead|before|in advance)\b`,
    String.raw`\bremind(?:s|ed|ing|ers?)?\b`,
    String.raw`\bremember (?:us|me)\b(?=.*\d)`,
    String.raw`\b(?:tell|warn|alert|notify|let|give|ping|nudge|message) (?:us|me|everyone)\b(?: know| a heads[- ]up| notice| warning)?.{0,60}\b(?:before|ahead|in advance|beforehand|within)\b`,
    String.raw`\blead (?:days?|times?)\b`,
    String.raw`\bdaily (?:message|note|notice)s?\b`,
  ].join('|'),
  'i',
);

/** Asks what goes out of date, and when. */
export const dueCue = new RegExp(
  [
    String.raw`\b(?:can|may|could|should) (?:i|we) still use\b`,
    String.raw`_.{0,40}\b(?:first|sooner|older|oldest|soonest)\b.{0,12}$`,
    String.raw`\b(?:which|what|does|do|should)\b.{0,40}\b(?:first|sooner|older|oldest|soonest)\b.{0,6}_`,
    String.raw`\b(?:what|what's|which|anything|something|everything|lots?|batch(?:es)?|things?|tins)\b.{0,30}\b(?:finish(?:es|ing)?|stops?|ends?|ending|running out|runs? out)\b(?! up)(?=.{0,14}\b(?:in|by|soon|this|next|before|over|during)\b)`,
    String.raw`\bpast it\b`,
    String.raw`^\W*(?:so |and )?(?:what|which lots?|which (?:batches|things)|anything) needs? (?:using|finishing|selling)(?: up)?\W*$`,
    String.raw`\bdo (?:i|we) (?:use|finish|sell)(?: up)? (?:first|next|soonest)\b`,
    String.raw`\buse[- ]by (?:date )?(?:of|for|on)\b`,
    String.raw`\bhow (?:long have (?:i|we) got|many (?:days|weeks|months) (?:has|do (?:i|we) have))\b`,
    String.raw`\bshould have been (?:used|sold|finished)\b`,
    String.raw`\bwhatever (?:is|falls|comes) due\b`,
    String.raw`\b(?:everything|anything|what|whatever|which|things?|stuff|all|list|lots?|batch(?:es)?|items?|ones?)\b.{0,60}\b(?:(?:best[- ]before|use[- ]by)(?: dates?)?|dates?) (?:is |are |lies |falls |comes )?(?:in|this|next|within|during|until|till|up to|by|between|before)\b`,
    String.raw`\bbest[- ]befores\b`,
    String.raw`\b(?:which|lots?|things?|batch(?:es)?|items?|all)\b.{0,24}\b(?:ends?|ending)\b(?! up)(?=.{0,14}\b(?:in|by|soon|this|next|before)\b)`,
    String.raw`\b(?:won't|will not|doesn't) (?:last|keep)\b`,
    String.raw`\b(?:go|goes|gone|going|be|is) (?:bad|off)\b(?=.{0,16}\b(?:in|by|this|next|soon|before)\b)`,
    String.raw`\b(?:${months}) (?:best[- ]befores?|dates?)\b`,
    String.raw`\bdates?\b.{0,12}\b(?:in (?:${months})|this|next)\b`,
    String.raw`\bto (?:finish|use up|sell)\b(?=.{0,20}\b(?:this|next|by|before|in)\b)`,
    String.raw`\brunning out\b(?=.{0,20}\b(?:before|by|until|this|next|in)\b)`,
    String.raw`\bless than\b.{0,20}\b(?:days?|weeks?|months?) (?:left|to go)\b`,
    String.raw`\bhow long may\b`,
    String.raw`\bwhat(?:'s| is| are)? (?:its|their) (?:best[- ]before|dates?|expiry)\b`,
    String.raw`\bsomething\b.{0,24}\b(?:ends?|goes|expires)\b(?=.{0,14}\b(?:in|by|this|next|soon)\b)`,
    String.raw`\bgoes over\b(?=.{0,14}\b(?:in|by|this|next)\b)`,
    String.raw`\bolder than (?:its|their|the) (?:best[- ]before|date)\b`,
    String.raw`\bno longer (?:use|sell)\b`,
    String.raw`\bstill (?:alright|all right)\b`,
    String.raw`\bhow much longer\b`,
    String.raw`\b(?:best[- ]before|use[- ]by)s? (?:dates? )?(?:in|this|next|within|during|between) `,
    String.raw`\b(?:over|beyond|passed) (?:its|their|the) (?:best[- ]before |use[- ]by )?(?:dates?|best[- ]before)\b`,
    String.raw`\b(?:week|month)'s (?:best[- ]before|dates?)\b`,
    String.raw`\bwhat\b.{0,12}\b(?:ends?|runs? out|ends? soonest)\b(?=.{0,14}\b(?:in|soon|soonest|this|next|by)\b)`,
    String.raw`\bexpir(?:e|es|ed|ing|y|ies)\b`,
    String.raw`\bout of date\b`,
    String.raw`\boverdue\b`,
    String.raw`\bover due\b`,
    String.raw`\b(?:what|anything|which|lots?|batch(?:es)?|list|everything|all|things?|stuff|items?)\b.{0,40}\bdue\b`,
    String.raw`^\W*due\b`,
    String.raw`\bbest[- ]before (?:dates?|list)\b`,
    String.raw`\b(?:go|goes|going|gone|went) (?:off|out of date|stale|past (?:its|their))\b`,
    String.raw`\bpast (?:its|their|the)?\s*(?:best[- ]before|best|date|use[- ]by)\b`,
    String.raw`\b(?:needs?|should|must|to)\b.{0,25}\b(?:using|use|used) (?:up|first|soonest)\b`,
    String.raw`\brun(?:s|ning)? out of date\b`,
    String.raw`\bdates?\b.{0,8}\b(?:coming up|coming|running out)\b`,
    String.raw`\bup for use\b`,
    String.raw`\b(?:needs? (?:using|to be used|to go)|(?:must|should|has to|have to|needs to|need to) be (?:used|sold|finished)|(?:have|has|need|ought) to (?:use|sell|finish))\b(?=.{0,40}\b(?:by|before|this|next|until|within|first|soon|in the)\b)`,
    String.raw`\b(?:near|close to|nearing|approaching|reach(?:es|ing|ed)?|hits?|come(?:s)? to|at the end of) (?:its|their|the) (?:best[- ]before |use[- ]by )?(?:dates?|ends?)\b`,
    String.raw`\bhow long (?:is|are|does|do|will|can)\b.{0,40}\b(?:good|keep|last|usable|used|fine)\b`,
    String.raw`\b(?:until|till|up to) when\b`,
    String.raw`\b(?:what|which) date\b`,
    String.raw`\b(?:what|whats|what's|tell|show)\b.{0,20}\bdate (?:on|of|for)\b`,
    String.raw`\bbest[- ]before (?:date )?(?:of|for|on)\b`,
    String.raw`^\W*what(?:'s|s| is)? best[- ]before\b`,
    String.raw`\b(?:should|must|needs? to|has to|have to|ought to) be (?:used|sold|eaten|finished)\b(?=.{0,30}\b(?:by|before|until|this|next|within|soon)\b)`,
    String.raw`\b(?:what|anything|something|which|lots?|things?)\b.{0,30}\b(?:end|ends|ending|must go|has to go|have to go|needs? to go)\b(?=.{0,20}\b(?:this|next|before|by|until|within|in the|soon)\b)`,
    String.raw`\b(?:becom\w+|turns?|gets?|is getting|goes) (?:too )?(?:bad|old|stale|rancid|off)\b`,
    String.raw`\b(?:no longer|not|no) (?:good|usable|fine)\b(?=.{0,8}\b(?:any ?more|$))`,
    String.raw`\b(?:(?:must|should|shall|ought) (?:i|we) (?:to )?|do (?:i|we) (?:have|need) to )(?:use|finish|sell)\b(?=.{0,30}\b(?:in the|within|by|before|until|this|next|first|soon)\b)`,
    String.raw`\bgetting old\b`,
    String.raw`\bstill (?:good|ok|okay|fine|usable|in date|safe|sellable|fresh|saleable)\b`,
    String.raw`\bhow many (?:days|weeks|months)\b.{0,30}\bleft\b`,
    String.raw`\b(?:must|should|has to|have to)\b.{0,24}\bbe (?:used|sold|finished|eaten)\b`,
    String.raw`\bruns? out\b(?=.{0,20}\b(?:before|by|until|this|next|in)\b)`,
    String.raw`\b(?:everything|all)\b.{0,20}\b(?:end|ends|ending)\b(?=.{0,20}\b(?:this|next|before|by|until|within|in the|soon)\b)`,
    String.raw`\btoo old\b`,
    String.raw`\b(?:is|are) .{1,40} still (?:good|ok|okay|fine|usable|in date|safe)\b`,
  ].join('|'),
  'i',
);

const otherWords = [
  ...`bought pour gave label labels scale cost prices? workshop claim save recipe melts? limit sets?
    limits decides? determines? change correct`.split(/\s+/),
  'poured(?! on)',
  'give away',
  '(?<!be )sold',
  String.raw`say(?! (?:by|before|until|till|on|in|within)\b)`,
  'keep (?:every|all)',
  'how long (?:does|do|will|would|is|are|can|could|should)',
  'shelf life',
  'keeps? for',
  'should be(?! (?:used|sold|finished|eaten|gone))',
].join('|');
/** These belong to other topics: how long something keeps, setting a date, what a pour was. */
export const elsewhere = new RegExp(
  [String.raw`\bhow many\b.{0,60}\b(?:sell|sold|left|there|out)\b`, String.raw`\b(?:${otherWords})\b`].join(
    '|',
  ),
  'i',
);

export const showAll =
  /^\W*(?:what(?:'s| is)? due|show all(?: (?:that is|of what is)? ?due)?|expiry(?: list)?|due(?: list)?|best[- ]before (?:dates?|list))\W*$/i;
