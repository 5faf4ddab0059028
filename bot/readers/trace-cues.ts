// What asks where a lot or batch came from or went to, and what asks for something else.

/** Asked of a lot or a batch these are about where it came from or went to; any other question of it is not ours. */
export const asksWay = new RegExp(
  [
    String.raw`\b(?:everyone|everybody|people) (?:with|who)\b`,
    String.raw`\bin any (?:batch|balm|pour|tin)\b`,
    String.raw`\bin how many\b`,
    String.raw`\b(?:which|what|how many) (?:of (?:our|the) )?(?:batch(?:es)?|pours|balms)\b.{0,24}\b(?:came|comes?|have|took)\b`,
    String.raw`\b(?:trac(?:e|es|ed|ing|eability)|recall(?:s|ed|ing)?|withdraw|affected|track(?:ed|ing)?|recipients?|whereabouts)\b`,
    String.raw`\bbatch(?:es)? (?:that )?(?:us(?:e|ed|es|ing)|with|contain(?:s|ing)?|from)\b`,
    String.raw`\b(?:which|what)\b.{0,40}\b(?:batch(?:es)?|tins?|jars?|pots?|sticks?|tubes?|balms?|salves?|recipes?|products?)\b.{0,40}\b(?:us(?:e|es|ed|ing)|contain(?:s|ed|ing)?|made|have|has|had|got|from|with|in|drew|hold(?:s|ing)?)\b`,
    String.raw`\bwhat\b.{0,30}\b(?:made|make|poured|pour)\b.{0,20}\b(?:with|from|out of|of|using)\b`,
    String.raw`\b(?:everything|all|anything) (?:(?:that|which|with) )?.{0,20}\b(?:has|have|contains?|containing|used|using|is made|made) `,
    String.raw`\b(?:where|who|whom)\b`,
    String.raw`\b(?:which|what) (?:of (?:our|the) )?(?:customers?|people|shops?|places?|buyers?|friends?|clients?|pupils?|schools?)\b`,
    String.raw`\b(?:buyers?|takers?|customers?|receivers?) (?:of|for|from)\b`,
    String.raw`\bhow many\b.{0,40}\b(?:with|at)\b`,
    String.raw`^\W*(?:does|do|has|have|did)\b.{3,40}\b(?:have|has|got|get|hold|holds?|took|take|any)\b`,
    String.raw`\b(?:did|has|have) (?:any(?:one|body)|some(?:one|body))\b.{0,20}\b(?:get|got|have|buy|bought|take|taken|receive|received)\b`,
    String.raw`\b(?:what|whatever) (?:became|has become|becomes|happened to|has happened to) (?=of|all|the|_)`,
    String.raw`\b(?:which|what)\b.{0,20}\blots?\b`,
    String.raw`\bwhat(?:'s| is| was| went| goes| came| has gone)?\b.{0,12}\b(?:in|into|inside)\b`,
    String.raw`\bmade (?:from|of|with)\b`,
    String.raw`\bhow many\b.{0,40}\b(?:contain|out there|used|with|from|of)\b`,
    String.raw`\b(?:used|went|go|goes|gone|going) (?:in|into|for|to)\b`,
    String.raw`\bwhat\b.{0,30}\b(?:did|have|do|has) (?:we|i|you|they|anyone)\b.{0,20}\bus(?:e|ed)\b`,
    String.raw`\b(?:what|which) (?:oils?|butters?|wax(?:es)?|ingredients?|lots?)\b.{0,30}\b(?:us(?:e|es|ed)|in|went|go)\b`,
    String.raw`\b(?:did|have|has) (?:we|i|you|they|anyone) .{0,20}\bused?\b.{0,30}\bin\b`,
    String.raw`\b(?:is|was|are) .{0,30}\bin (?:any|a|some|which|our|_)`,
    String.raw`\bcontains?\b`,
    String.raw`\bcall(?:s|ed|ing)? (?:it|them|all|_+) ?back\b`,
    String.raw`\b(?:in|into|for) (?:which|what)\b`,
    String.raw`\b(?:is|was|were|are) [^?]{1,30}\b(?:used|put) (?:in|into)\b`,
    String.raw`\b(?:end(?:s|ed)? up|landed|turned up) (?:in|at|with)\b`,
    String.raw`\b(?:made|poured) (?:any |anything |some |something )?(?:from|out of|of|with|using)\b`,
    String.raw`\bhow many\b.{0,30}\b(?:sold|sell|given|gave|hand(?:ed)? out|left (?:the|our) house|out|gone)\b`,
    String.raw`^\W*(?:was|is|were|has|have)\b.{0,30}\bused\b(?! up)`,
    String.raw`\b(?:everything|all|anything|something|tins|balms|batches|stuff) with _`,
    String.raw`^\W*(?:did|have|has) (?:we|i|you|they|anyone) (?:ever |already )?used? _`,
  ].join('|'),
  'i',
);

export const asksSheet = new RegExp(
  [
    String.raw`\brecall`,
    String.raw`\bwithdraw\b`,
    String.raw`\bsheet\b`,
    String.raw`\bnotify\b`,
    String.raw`\b(?:needs?|ought|has|have) to know\b`,
    String.raw`\b(?:must|should) (?:i |we )?(?:know|warn|inform|tell|be (?:told|warned|informed))\b`,
    String.raw`\bwarn(?:ed)?\b`,
    String.raw`\binform(?:ed)?\b`,
    String.raw`\bcall(?:s|ed|ing)? (?:it |them |_+ |all )*back\b`,
    String.raw`\bsomething wrong with\b`,
  ].join('|'),
  'i',
);

/** "What's in the tub of S3": that is the shelf's to say. */
export const ofVessel =
  /\bwhat(?:'s| is|s)? (?:still |left )?in (?:the|that|our|my) (?:tub|bag|bottle|jar|box|can|drum|packet|sack|bucket|canister|bin)\b|^\W*(?:from|of) whom\b/i;

const otherWords = [
  ...String.raw`labels? report(?:ed)? reaction reactions rash itch\w* swell\w* swollen opened correct scale cost
    costs price prices expire[sd]? remind export undo why will tomorrow maker in\b.{0,20}\bstill`.split(
    /\s+/,
  ),
  'note on',
  'poured(?! (?:with|from|using|out of))',
  String.raw`(?<!\bwho (?:has )?)bought`,
  'best before',
  'use[- ]by',
  String.raw`how many\b.{0,40}\bleft\b(?! (?:the|our) )`,
  String.raw`the (?:best[- ]before|date)s?\b`,
  String.raw`how many\b.{0,24}\b(?:did|have) (?:we|i|you|they) (?:make|made|pour|fill)\b`,
  'how much (?:is|was|do we have) (?:left|in stock)',
  String.raw`(?:how (?:much|many(?! (?:batch|pour)))|any|some)\b.{0,40}\b(?:do|have) (?:we|i) (?:still |now |yet )*(?:have|got)`,
  'when (?:was|did|were|is)',
  'who (?:has |have )?(?:made|filled)',
  String.raw`(?:is|are)\b.{0,16}\ball gone`,
].join('|');
/** What is done or told with a code is for other topics: "gave 6 tins", "label for", "report". */
export const elsewhere = new RegExp(
  [
    String.raw`\b(?:${otherWords})\b`,
    String.raw`^\W*(?:do|have) (?:we|i) (?:still |now |yet )*(?:have |got )?(?:any|some|enough)\b`,
    String.raw`\b(?:who|where|whom)\b.{0,30}\b(?:poured?|pour it|enter(?:ed)?|wrote|written)\b`,
    String.raw`\blost track\b`,
  ].join('|'),
  'i',
);

/** Where a lot came from is on the shelf's own page; a batch is bought by customers. */
export const ofPurchase =
  /\b(?:who|where|whom)\b.{0,30}\b(?:brought|bought|buy|order(?:ed)?|deliver(?:ed)?)\b|\bfrom whom\b.{0,12}\b(?:did|have|do) (?:we|i)\b/i;
