import type { Reading } from '../reading.ts';

/** "Go over R", "anything in R that shouldn't be on lips", "is there a problem with R", "can I sell R": a look at a recipe. */
const looks =
  /\b(?:look|looks|looking|go|going|run|read|went) (?:it |this )?(?:over|through)\b|\b(?:is|are|would|will)\b[^.?!]{0,60}\ball ?right\b(?! to\b)|\b(?:look|looking) at\b|\b(?:anything|something|what(?:'s|s| is)?)\b.{0,40}\b(?:wrong|problem|bad|nutty|not allowed|worr(?:y|ied|ying)|amiss|(?:shouldn'?t|should not|must ?n[o']t|mustn'?t|can'?t) be)\b|\bproblems?\b(?! .{0,20}\b(?:melt|hard|soft|grain))|\btoo (?:much|strong|high|many drops)\b|\b(?:can|may|could|are|am) (?:i|we) (?:ok(?:ay)? to |allowed to )?(?:sell|give|hand out)\b(?=.{0,40}(?::|\b(?:this|it|that)\b|[A-Z]))|\bcompl(?:y|ies|iant)\b|\bpass(?:es)?\b|\bwho (?:can'?t|cannot|can not|shouldn'?t|should not|must not|mustn'?t)\b.{0,12}\b(?:use|have)\b|\bany allerg(?:y|ies|ens?)\b|\ballergic to\b|\bred flags?\b|\b(?:contain|contains|are there|is there) (?:any )?(?:tree )?nuts?\b|\b(?:does|do) .{0,40}\bhave (?:any )?(?:tree )?nuts?\b|(?<!\bwithout )\bany (?:tree )?nuts?\b|\bnut allerg\w+\b.{0,60}\b(?:does|do) (?:it|they|that) contain\b|(?<!\b(?:no|without) (?:tree )?)\bnuts? in\b|\b(?:is it|is that|is this|are they)(?: too)? (?:good|safe|fine|ok|okay|alright|allowed|suitable) (?:for|on) (?:the )?lips?\b/i;

/** "Nut allergy, can she use R?": whether somebody may, and nothing to be changed. */
const somebody =
  /\ballerg\w+.{0,60}\b(?:can|could|may|should|is|are) (?:she|he|they|i|we|it|people|someone|somebody|anyone)\b|\b(?:can|could|may|should) (?:\w+ ){1,4}with (?:\w+ ){0,3}allerg\w+.{0,24}\b(?:use|have|wear)\b|\ballerg\w+\b.{0,40}[.;,!]\s*(?:so |and )?(?:is|are|would|will)\b.{0,60}\b(?:all ?right|okay|ok|safe|fine|suitable|good)\b|\b(?:all ?right|ok|okay|fine|safe|suitable) for (?:her|him|them|someone|somebody|people|an? \w{2,12})\b.{0,30}\b(?:allerg|nut)/i;

const changes =
  /\b(?:instead|swap|replace|substitute|free|without|make|change|adapt|alter|version|variant|alternative|be made|made for|rework|take .{1,40} out|leave .{1,40} out|take out|leave out)\b/i;

/** "Is wheat germ oil something people are allergic to": about the oil by itself, and no look at a balm. */
const asksOfOne = (text: string, items: Reading['items']): boolean =>
  /\ballerg/i.test(text) &&
  items.filter(({ letter }) => letter === 'i').length === 1 &&
  !items.some(({ letter }) => /[RB]/.test(letter)) &&
  !/\b(?:lips?|it)\b/i.test(text);

/** Looser ways to hand a whole list over to be looked at: "is anything off", "a second pair of eyes", "good to go?". */
const handsOver =
  /\b(?:anything|something|what(?:'s| is)?)\b.{0,24}\b(?:off|odd|risky|unsafe|missing|fishy|dodgy|iffy|concerning|(?:i|we) should (?:change|know|fix|watch)|to (?:watch|fix|flag|mind|change|look out|avoid))\b|\b(?:look|looks|looking|cast an eye|run your eye|glance|peek|peep) (?:\w+ ){0,3}(?:over|through)\b|\bverdict\b|\bonce[- ]over\b|\bpairs? of eyes\b|\b(?:sanity|safety)[- ]check\b|\b(?:is|are) (?:it|this|that|these|they|everything|all of (?:it|this|that))(?: all)? (?:al(?:l ?)?right|ok|okay|fine|safe|good|sound|right|correct|suitable)\b|\b(?:can|could|may|will|would|do|does) (?:this|that|these|it|they|everything)(?: here| all| lot)?(?: go(?! (?:soft|hard|firm|solid|liquid|runny|grainy|sticky|cloudy|rancid|stale|bad|off|mouldy|out)\b)| be used| suit)\b|\bsuit(?:s|able)?\b.{0,12}\blips\b|\b(?:vet|verify|validate|confirm|inspect|audit|assess|evaluate|examine|scrutinise|scrutinize|proofread|judge|screen)\b|\bany (?:\w+ )?(?:troubles?|issues?|concerns?|worries|mistakes?|errors?|slips?|snags?|thoughts|objections?|faults?|dangers?|hazards?|warnings?)\b|\b(?:mistakes?|errors?) (?:in|here)\b|\blip[- ]safe\b|\bsafe (?:for|on) (?:the )?lips?\b|\bfit for (?:the )?lips?\b|\bgood to go\b|\bdoes (?:this|it|that|everything|all of it) (?:look|seem|sound)\b|\b(?:looks?|seems?|sounds?) (?:ok|okay|fine|right|alright|all right|good|sensible|safe)\s*\?|\bgot (?:this|it|that) (?:right|wrong)\b|\bwhat do you (?:think|make|say)\b|\b(?:tell me|see) (?:if|whether) (?:this|it|that|anything)\b|\bany good for (?:the )?lips?\b|\bwould (?:this|it|that) (?:do|pass|be (?:ok|okay|fine|safe|alright|all right))\b|\b(?:can|may|should) (?:i|we) (?:pour|make|use|give|sell) (?:this|it|that)\b/i;

/** "Is there anything I should change?" asks for no change yet. */
const toChange =
  /\b(?:anything|something|what)\b[^.?!\n]{0,24}\b(?:change|swap|leave out|take out|replace)\b(?=\s*[?.:\n]|\s+(?:here|in)\b)/i;

/** "Furocoumarin-free bergamot oil" is sold so. */
const madeFree =
  /\b(?:furocoumarin|bergapten\w*|fragrance|water|alcohol|solvent|hexane|palm|gluten)s?[- ]free\b/gi;

/** Lines written out: two names and an amount at least. */
export const isListed = (items: Reading['items']): boolean =>
  items.filter(({ letter }) => letter === 'i').length > 1 &&
  items.some(({ letter }) => /[gvdp%rn]/.test(letter));

/** True for a message that wants a recipe looked at, whatever its verb. */
export const asksLook = ({ text, items }: Reading): boolean =>
  (looks.test(text) || somebody.test(text) || (isListed(items) && handsOver.test(text))) &&
  !changes.test(text.replace(toChange, '').replace(madeFree, '')) &&
  !asksOfOne(text, items);

/** "Can arnica go in a lip balm", "is that too strong", "is that true", "is it a bad idea": a yes or no about one thing. */
const judged =
  /\b(?:can|could|may|should|would|will|does)\s+(?:\S+\s+){1,5}(?:go|go in|be put|be used|be in|be added|come|belong)\b|\b(?:can|could|may|should)\s+(?:\S+\s+){1,3}(?:have|use|wear|put)\b.{0,40}\blips\b|\bshould (?:i|we) avoid\b|\b(?:good|bad|great|sensible|wise|silly) idea\b|\btoo (?:strong|much|high|many)\b|\b(?:is|was) (?:that|it|this) (?:true|right|so|too|still|really|actually|ok|okay|safe|allowed|fine|alright|harmful|dangerous|a problem)\b|\b(?:isn't|isnt|is not|not|aren't) (?:good|safe|allowed|ok|okay|suitable)\b|\bcould i (?:add|use|put)\b/i;
const onLips = /\b(?:lip ?balms?|lips?|balms?|salves?|lip tints?)\b/i;

/** True for a question whether one thing, or a share of it, may be in a balm. */
export const asksWhether = ({ text, items }: Reading): boolean =>
  judged.test(text) && onLips.test(text) && items.some(({ letter }) => letter === 'i' || letter === 'w');

/** "And …", "what about …", "same for …": it goes on from the message before. */
export const goesOn =
  /^\W*(?:and|what about|how about|what if|or|then|same|also|but|ok|okay|would|could|is|only|at|with|so|even|under|by|in|for|now|hm+|right)\b|\b(?:instead|better)\b/i;
