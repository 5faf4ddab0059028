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
  /\b(?:anything|something|what(?:'s| is)?)\b.{0,24}\b(?:off|odd|risky|unsafe|missing|fishy|dodgy|iffy|concerning|(?:i|we) should (?:change|know|fix|watch)|to (?:watch|fix|flag|mind|change|look out|avoid))\b|\b(?:look|looks|looking|cast an eye|run your eye|glance|peek|peep) (?:\w+ ){0,3}(?:over|through)\b|\bverdict\b|\b(?:should|could|must|ought|had better) (?:i |we |be )?(?:to )?(?:leave|left|take|taken) (?:\w+ )?out\b(?=\s*\?)|\bonce[- ]over\b|\bpairs? of eyes\b|\b(?:sanity|safety)[- ]check\b|\b(?:is|are) (?:it|this|that|these|they|everything|all of (?:it|this|that))(?: all)? (?:al(?:l ?)?right|ok|okay|fine|safe|good|sound|right|correct|suitable)\b|\b(?:can|could|may|will|would|do|does) (?:this|that|these|it|they|everything)(?: here| all| lot)?(?: go(?! (?:soft|hard|firm|solid|liquid|runny|grainy|sticky|cloudy|rancid|stale|bad|off|mouldy|out)\b)| be used| suit)\b|\bsuit(?:s|able)?\b.{0,12}\blips\b|\b(?:vet|verify|validate|confirm|inspect|audit|assess|evaluate|examine|scrutinise|scrutinize|proofread|judge|screen)\b|\bany (?:\w+ )?(?:troubles?|issues?|concerns?|worries|mistakes?|errors?|slips?|snags?|thoughts|objections?|faults?|dangers?|hazards?|warnings?)\b|\b(?:mistakes?|errors?) (?:in|here)\b|\blip[- ]safe\b|\bsafe (?:for|on) (?:the )?lips?\b|\bfit for (?:the )?lips?\b|\bgood to go\b|\bdoes (?:this|it|that|everything|all of it) (?:look|seem|sound)\b|\b(?:looks?|seems?|sounds?) (?:ok|okay|fine|right|alright|all right|good|sensible|safe)\s*\?|\bgot (?:this|it|that) (?:right|wrong)\b|\bwhat do you (?:think|make|say)\b|\b(?:tell me|see) (?:if|whether) (?:this|it|that|anything)\b|\bany good for (?:the )?lips?\b|\bwould (?:this|it|that) (?:do|pass|be (?:ok|okay|fine|safe|alright|all right))\b|\b(?:can|may|should) (?:i|we) (?:pour|make|use|give|sell) (?:this|it|that)\b/i;

/** "Is this one sound for lips?", "would you put that on your lips?": a yes or no about a list, whatever its words. */
const ofLips =
  /(?:^|[.!?:;,\n(–—-]\s*)(?:(?:so|and|but|well|please|now|tell me),?\s+){0,2}(?:is|are|am|does|do|can|could|would|will|may|might|should|shall|have|has|did|any|anything|fit|ok|okay|safe|fine|too|good|suitable|allowed|alright|sound|wise|fancy)\b[^.!?\n]{0,90}\blips?\b[^.!?\n\d]{0,60}\?/i;
/** What is asked of the pot, the purse or the shelf. */
const otherwise =
  /\b(?:melt\w*|surviv\w*|heat|hot|soft\w*|hard\w*|firm\w*|runny|set|sets|keeps?|lasts?|costs?|prices?|charge|swap\w*|replac\w*|instead|scale\w*|labels?|vegan|how|what|which|when|where|who|why|moistur\w*|heals?|cures?|protects?|spf|colou?rs?|tastes?|smells?|shiny|glossy|plump\w*|tins?|jars?|pots?|tubes?|enough)\b/i;
const asksOfLips = (text: string): boolean => {
  const asked = ofLips.exec(text)?.[0];
  return asked !== undefined && !otherwise.test(asked);
};

/** "Run your rules over this", "put it past the rules". */
const byRules =
  /\b(?:your|the|all) (?:\w+ )?rules\b|\bnasty surprises?\b|\bnot (?:right|quite right|as it should be)\b/i;

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

/** "Review my lip balm: …", "what is your opinion of it", "tell me the truth", "good to pour?". */
const judgesList =
  /^\W*(?:(?:please|pls|could you|can you|would you|hi|hello|pipkin|do|now)\W+){0,3}(?:test|review|proof|prove|rate|grade|mark|assess)\b[^:?\n]{0,60}\b(?:balm|salve|stick|gloss|recipe|blend|mix)s?\b|\bopinion\b|\bwhat (?:do |would |can )?you (?:think|make|say)\b|\b(?:could|might|may|can|will|would) (?:hurt|harm|upset|irritate|bother)\b|\bmake sure\b[^.?!\n]{0,40}\b(?:fine|ok|okay|safe|right|sound|good)\b|\bthe truth about\b|\b(?:cast|run|throw) (?:your|an|one) eyes?\b|\bgood to (?:pour|make|use|sell|give)\b|\b(?:was|is) (?:that|it|this) (?:wise|sensible|foolish|silly|a mistake)\b|\ball ?right for (?:the |my |our )?lips\b|\bquick one\b|\bworr(?:y|ies|ied|ying)\b|\bgot everything right\b|\b(?:can|could|may|might|should) (?:i|we|one) (?:use|wear|put|sell|give)\b[\s\S]{0,300}\b(?:as an? lip|on (?:the |my |our )?lips)\b|\bharmless\b|\b(?:is|are|be) (?:that|this|it) an? (?:safe|sound|good|fine|proper|okay|ok) (?:lip )?(?:balm|salve)\b/i;

const asksOfList = (text: string): boolean =>
  handsOver.test(text) || judgesList.test(text) || asksOfLips(text) || byRules.test(text);

/** True for a message that wants a recipe looked at, whatever its verb. */
export const asksLook = ({ text, items }: Reading): boolean =>
  (looks.test(text) || somebody.test(text) || (isListed(items) && asksOfList(text))) &&
  !changes.test(text.replace(toChange, '').replace(madeFree, '')) &&
  !asksOfOne(text, items);

/** "Can arnica go in a lip balm", "is that too strong", "is that true", "is it a bad idea": a yes or no about one thing. */
const judged =
  /\b(?:can|could|may|should|would|will|does)\s+(?:\S+\s+){1,5}(?:go|go in|be put|be used|be in|be added|come|belong)\b|\b(?:can|could|may|should)\s+(?:\S+\s+){1,3}(?:have|use|wear|put)\b.{0,40}\blips\b|\bshould (?:i|we) avoid\b|\b(?:good|bad|great|sensible|wise|silly) idea\b|\btoo (?:strong|much|high|many)\b|\b(?:is|was) (?:that|it|this) (?:true|right|so|too|still|really|actually|ok|okay|safe|allowed|fine|alright|harmful|dangerous|a problem)\b|\b(?:isn't|isnt|is not|not|aren't) (?:good|safe|allowed|ok|okay|suitable)\b|\bcould i (?:add|use|put)\b/i;
const onLips = /\b(?:lip ?balms?|lips?|balms?|salves?|lip tints?)\b/i;

/** "Can a lip balm take 0.3 % patchouli oil?", "what about 2 % honey on lips?": one share of one thing, and a question. */
const startsAsking =
  /^\W*(?:(?:hi|hello|hey|pipkin|please|so|and|but|well|tell me|now)\W+){0,3}(?:is|are|am|does|do|can|could|would|will|may|might|should|shall|has|have|what about|how about|thinking of|any|anything)\b|\?\W*$/i;
const otherWish =
  /\b(?:how (?:much|many|long|do|does|can|should|strong)|(?<!too )much|many|drops|melt\w*|surviv\w*|design|invent|make me|recipe|swap|replac\w*|instead|substitut\w*|infus(?:e|ing)|costs?|prices?|labels?|names?|declare|called|why|when|where|which|vegan|keeps?|lasts?|colou?r|heals?|cures?)\b/i;
const asksOfShare = ({ text, items }: Reading): boolean =>
  items.filter(({ letter }) => letter === '%').length === 1 &&
  items.filter(({ letter }) => letter === 'i').length <= 1 &&
  !items.some(({ letter }) => /[gvdpcR]/.test(letter)) &&
  startsAsking.test(text) &&
  !otherWish.test(text);

/** True for a question whether one thing, or a share of it, may be in a balm. */
export const asksWhether = (reading: Reading): boolean =>
  (judged.test(reading.text) || asksOfShare(reading)) &&
  onLips.test(reading.text) &&
  reading.items.some(({ letter }) => letter === 'i' || letter === 'w');

/** "And …", "what about …", "same for …": it goes on from the message before. */
export const goesOn =
  /^\W*(?:and|what about|how about|what if|or|then|same|also|but|ok|okay|would|could|is|only|at|with|so|even|under|by|in|for|now|hm+|right)\b|\b(?:instead|better)\b/i;
