import type { Facet } from './facet.ts';
import { changesIn, dueIn } from './stretches.ts';

const out =
  /\bwho\b.{0,20}\b(?:had|has|got|took|have)\b.{0,20}\b(?:some|any|tins|jars|pots|sticks|tubes|from (?:me|us))\b|\btotal\b.{0,12}\bout\b|\b(?:left|out of|outside) (?:the|our|my) (?:house|school|shop|building|kitchen|hall|workshop)\b|\b(?:gone|handed|given) out\b/i;

const lowSurely =
  /\bre-?(?:stock|order)\w*|\b(?:below|under) (?:(?:the|a|our|their|its) )?(?:warning|limit|minimum|marks?)\b|\brunning (?:low|short)\b/i;
const toSell =
  /\b(?:which|what|how many)\b.{0,24}\b(?:tins|jars|pots|sticks|tubes|batch(?:es)?|balms?|salves?)\b.{0,30}\b(?:to sell|for sale|in stock)\b/i;

/** What is asked where nothing is named; the surest words first. */
export const facetsOfAll: readonly Facet[] = [
  { cue: out, of: { none: () => ({ topic: 'trace', request: {} }) } },
  {
    cue: /\b(?:pass(?:es|ing)? (?:its|their|the) (?:dates?|best)|(?:won't|will not|doesn't|not) (?:make it|last|keep|see)|no longer (?:be )?(?:good|usable|fine|safe|ok|okay)|(?:days|weeks|months?) or less|items?|com(?:es?|ing) to (?:its|their|an) end|laps\w+|perish\w*|spoil\w*|use up|used up|goes first|go first|first to|(?:be|is|are) (?:over|off|gone)\b.{0,12}\b(?:by|before|on)|over (?:its |their |the )?(?:best|date)|go(?:es|ing)? stale|date-?wise|oldest|must use|have to use|becom\w+ (?:too )?old|run(?:s|ning)? out\b|must be used|has to be used|have to be used|need(?:s)? (?:to be )?us(?:ed|ing)|go(?:es|ing)? (?:off|bad|out of date)|expir\w+|best[- ]before|use[- ]by|dates?|due|last day)\b/i,
    sure: /\brun(?:s|ning)? out\b|(?<!\bin stock )\bover (?:its |their |the )?date\b|\b(?:must|have to) use\b|\boldest\b|\b(?:won't|will not) (?:make|last|keep|see)|\bpass(?:es|ing)? (?:its|their)\b/i,
    never: /\b(?:poured?|made|bought|out of stock|remind\w*|price|cost|workshop)\b/i,
    of: { none: dueIn },
  },
  {
    cue: /\b(?:throw|chuck|bin|toss)\b.{0,16}\b(?:away|out|anything|something)\b/i,
    sure: /\bthrow|\bchuck|\bbin|\btoss/i,
    never: /\b(?:threw|thrown)\b/i,
    of: { none: () => ({ topic: 'expiry', request: { action: 'due', period: 'overdue' } }) },
  },
  {
    cue: toSell,
    sure: toSell,
    never: /\b(?:price|charge|cost|recipe)\b/i,
    of: { none: () => ({ topic: 'batch', request: { action: 'list', which: 'open' } }) },
  },
  {
    cue: /\b(?:which|what|how many|any|list|show)\b.{0,24}\b(?:batch(?:es)?|balms?|salves?)\b.{0,40}\b(?:still|left|unsold|not (?:empty|gone|sold)|tins|jars|pots|sticks|tubes)\b/i,
    never: /\b(?:who|whom|where|out|given|gave|sold to|expir\w+|past|best)\b/i,
    of: { none: () => ({ topic: 'batch', request: { action: 'list', which: 'open' } }) },
  },
  {
    cue: /\b(?:stock|shelf|shelves|inventory|supplies|raw materials?)\b/i,
    never: /\b(?:out of|life|tins?|jars?|pots?|batch(?:es)?)\b/i,
    of: { none: () => ({ topic: 'stock', request: { action: 'list' } }) },
  },
  {
    cue: /\b(?:re-?order\w*|(?:running|runs?|getting|gets?) (?:low|short|out)|(?:buy|order|re-?stock|replenish|top up)\b.{0,20}\b(?:soon|again|more|anything|something|next|now)|(?:anything|something|what)\b.{0,30}\b(?:to (?:buy|order)|buy|order|restock|replenish)|low on|(?:below|under) (?:(?:the|a|our|their|its) )?(?:warning|limit|minimum|marks?)|(?:below|under) (?:its|their|the|our) marks?|short of|shopping list)\b/i,
    sure: lowSurely,
    never: /\b(?:class|workshop|recipe|tins|jars|to make)\b/i,
    of: { none: () => ({ topic: 'stock', request: { action: 'list', which: 'low' } }) },
  },
  {
    cue: /\b(?:extract|entries|log|journal|history|written|entered|record(?:ed)?|write down|enter|note down|changes?|changed|happened)\b/i,
    sure: /\bwhat (?:did|have|has|was) (?:we|i|you|they)\b/i,
    of: { none: changesIn },
  },
];
