/** Ways containers leave the house, are kept, or come back. */
export type How = 'given' | 'sold' | 'used' | 'wasted' | 'kept' | 'back';

/** Most telling first: "2 broken ones came back" came back. */
const verbs: readonly (readonly [How, RegExp])[] = [
  ['given', /\b(?:put|set)\b.{1,40}\baside\b.{0,40}\b(?:given|sent|handed|donated) to\b/i],
  [
    'kept',
    /\b(?:keep(?:ing)?|kept|h[eo]ld(?:ing)?|set|put)\s+(?:[^\s.;!?]{1,20}\s+){0,6}back\b(?! (?:from|in)\b)/i,
  ],
  [
    'back',
    /^\W*back\s*:|\b(?:returned(?! (?:ones|tins|jars|pots|tubes|sticks)\b)|returns|(?:came|come|got|took|taken|brought|bringing|gave|give|given|handed|sent|posted|mailed|shipped|sending|passed|are|is|were|was|has|have)\b.{0,60}\bback(?! (?:in|as(?! (?:she|he|it|they|we|i)\b)|for)\b)|back from|(?:picked|collected|fetched|took|taken|got)\b.{0,40}\b(?:up |down )?(?:again from|from\b.{0,30}\bagain)|(?:come|came|are|is) (?:back )?home from|(?:took|brought|carried|got)\b.{0,40}\bhome (?:again )?from|unsold\b.{0,30}\bfrom (?:the|our)|(?:was|were) (?:sent|brought|taken|handed) back)\b|\d+ (?:(?:tins?|jars?|pots?|sticks?|tubes?)\b|of _|_).{0,30}\bback\W*$/i,
  ],
  [
    'kept',
    /\b(?:(?:put|putting|set|setting)\b.{1,40}\b(?:aside|by|away)|keep|keeping|kept|retain|retained|retaining|reserve|reserved|reserving|hold(?:ing)? back|hold(?:ing)?\b.{1,40}\bback|held\b.{0,40}\bback|h[eo]ld(?:ing|s)? on to|put aside|set aside|put by|(?:put|set)\b.{1,40}\baside|retention|(?:reference|control) sample|(?:sample|archive|retention) (?:box|drawer|shelf|cupboard|tin)\b|\b(?:as|is|thats|that's) (?:the|a|our|my) control\b|\bfor (?:the|our|my) (?:drawer|archives?|records|files?|retention \w+)\b|(?:is|are) (?:a |an |the |our )?(?:retention |reference |control |retained )*samples?\b|^\W*(?:_+\W*)?samples?\W*\d|\d\W*(?:_+\W*)?samples?\W*$|as (?:an? |the |our )?(?:retention |reference |control |retained )*samples?)\b/i,
  ],
  [
    'wasted',
    /\b(?:in|into|to) (?:the|our) (?:bin|rubbish|trash|garbage|compost|skip)\b|\b(?:had to (?:bin|throw|discard|chuck)|threw|thrown|binned|scrap(?:ped)?|destroy(?:ed)?|dispos(?:e|ed|ing) of|rejected|condemned|wasted|waste(?=\s*:)|discard(?:ed)?|chucked|(?:wrote|written|write|writing) off|written off|out of the (?:count|book|stock)|straight in(?:to)? the bin)\b/i,
  ],
  [
    'sold',
    /\b(?:(?<!\b(?:they|she|he|it|who)(?:'d| had|'ve| have|'s| has| is| are| was| were)? (?=sold out))sold|flogged|shifted|offloaded|raffled|auctioned|(?:was|were|been|got) (?:all )?(?:bought|snapped up)|sell|sells|selling|sale of|customers? bought|people bought)\b|\b(?:took|made|got|earned|brought in) (?:[€£$] ?\d[\d.,]*|\d[\d.,]*(?: ?(?:€|£|\$|euros?|eur|pounds?|quid|dollars?))?)(?: each)? for\b/i,
  ],
  [
    'given',
    /^\W*out\s*:|\b(?:gave|given|give|gives|giving|gifts?|gifted|(?:was|were|been|is|are|got) (?:all )?(?:taken|collected|picked up|fetched|claimed) by|issued|dispensed|distributed|allocated|dished out|doled out|donated|donate|donating|sending|handing|bringing|delivering|handed|hand out|lent|(?:went|gone) (?:home|off|away|out) with|went(?: out| off)?(?: by (?:post|parcel|mail|courier|train|van|bus))? to|(?:took|taken|taking|takes|carried|brought|drove|walked|dropped|passed|moved)\b(?!.{0,40}\b(?<!\b(?:care|nursing|rest|retirement|children's|people's|residential|funeral|foster) )home\b).{0,60}\b(?:to|round to|over to|along to)\b|(?:gone|going|off) to|sent|send|mailed|shipped|posted|delivered|dropped (?:[^,.;]{1,40} )?(?:off|round|in|over|by)(?= (?:at|to|with|for)\b)|dropped off|dropped (?:it|them|those|these|both|all) (?:off|round|over)\b|left with|\d+ (?:more )?(?:tins?|jars?|pots?|sticks?|tubes?)\b.{0,30}\b(?:are|is|stand|sit|lie) (?:now |still )?(?:at|with) (?=\w)|(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|a dozen) (?:more )?(?:(?:tins?|jars?|pots?|sticks?|tubes?) (?:of |from |out of )?|of |from |out of )?_+ (?:are|is|stands?|sits?|lies?|lives?) (?:now |already |all )*(?:(?:over|up|down|out) )?(?:(?:at|with) (?!(?:us|me|home|risk|room|ease|best|least|rest|once|hand|my|our|label\w*|lids?|the (?:ready|moment|back|front|top|bottom|end))\b)(?=\w)|(?:on|in) (?=(?:the|her|his|their|ward|room|unit|class|group)\b)(?!the (?:shelf|shelves|cupboard|drawer|box|house|fridge|bench|kitchen|table|rack|tray|book|way|mo[ou]lds?|post|mail|oven|freezer|cellar|attic|larder|pantry|shed|garage|bag|car|sun|cold|same|right|middle|tins?|end|whole|list|record|stock)\b))|put (?:another )?(?:\d+|_+|an?|one|two|three|four|five|six|seven|eight|nine|ten|a dozen|some)\b.{0,40}\b(?:in|into|on|at) (?:the|our|a|my) (?:[\w'’-]+ ){0,2}(?:shop|store|cafe|café|salon|deli|library|office|school|tea ?room|hall|raffle|tombola|auction|lottery|basket|stocking|hamper|stall|gift|church|counter|surgery|window)|left (?:another |the |her |him |them )?(?:\d+|_+|an?|one|two|three|four|five|six|seven|eight|nine|ten|a dozen|some)|brought (?:him|her|them|over|round)|(?:he|she|they|who) (?:also |has |have |then )?(?:took|taken|takes)\b.{0,40}\bhome|(?<!\b(?:i|we|i've|we've)\b.{0,30})(?:took|taken)\b.{0,40}\bhome|(?:left|came away|went away|drove off|walked out) with|(?:re)?stocked (?:the|our|my) |filled up the |supplied (?:the|our) |shared (?:out )?(?:\d+|_+|an?|one|two|three|four|five|six|seven|eight|nine|ten)|on (?:commission|consignment|sale or return)\b|in the post to|popped (?:\d+|_+|an?|one|two|three|four|five|six)|free (?:tins|samples|jars|sticks|pots)\b|found (?:their|its) way|made (?:their|its) way|passed on|traded|swapped)\b/i,
  ],
  [
    'wasted',
    /\b(?:dropped(?! (?:it|them|those|these|both|all) (?:off|round|over)\b)(?! (?:[^,.;]{1,40} )?(?:off|round|in|over|by) (?:at|to|with|for)\b)|(?:dog|cat|puppy|toddler|baby|goat|mouse|hens?|chickens?) (?:has |had |have )?(?:ate|eaten|eats|got)|broke|broken|spilled|spilt|ruined|smashed|cracked|crushed|squashed|slipped|in pieces|to pieces|to bits|shattered|fell|fallen|leaked|melted|spoiled|spoilt|lost|damaged|went (?:under|overboard|mouldy|rancid|astray|walkabout)|(?:run|ran) over|stolen|stole|nicked|pinched|swiped|missing|dented|bent|scratched|sank|burst|flattened|exploded|nibbled|gnawed|(?:mice|rats|ants|moths) (?:got|ate|had|were)|froze|soaked|snapped(?! up)|snapping|rusted|went rusty|emptied|tipped over|chewed|licked|trodden on|(?:sat|stood|trod|stepped|sitting|landed|bit) (?:down )?(?:on|into)|caught fire|got wet|went off|gone off|went bad)\b/i,
  ],
  [
    'used',
    /\b(?:used|using|for (?:my|our) own use|opened|finished|tried|(?:is|are|as) (?:my |our |a |the |an )*(?:open )?testers?|tested|ate|(?:took|taken)\b.{0,40}\b(?:myself|ourselves|test|testing|tester|testers)|(?:took|taken)\b.{0,40}\bhome)\b/iu,
  ],
];

/** Which way a stretch of text tells of; `taken` where somebody is said to have taken or bought some. */
export const howIn = (text: string, taken: boolean): How | undefined => {
  const found = verbs.find(([, pattern]) => pattern.test(text))?.[0];
  if (found !== undefined) return found;
  if (!taken) return undefined;
  return /\b(?:bought|purchased|buys)\b/i.test(text) ? 'sold' : 'given';
};
