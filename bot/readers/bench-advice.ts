/** How each piece of advice is asked for, most pressing first. Every pattern is bounded, so a wall of text costs little. */
const asked: readonly (readonly [string, RegExp])[] = [
  [
    'wax-fire',
    /\b(?:wax|oil|pan|pot|jug|melt|beeswax|balm|butter|kitchen|hob|bath)\b.{0,40}\b(?:on fire|caught fire|catches fire|burning|in flames|in a blaze|is smoking|smokes|starts? to smoke)\b|\b(?:put out|extinguish|stop)\b.{0,30}\b(?:fire|flames?|burning wax)\b|\b(?:wax|oil|fat|pan|chip pan) fire\b|\bburning (?:bees)?(?:wax|oil|fat|balm|butter)\b|^\W*(?:help\W+)?(?:fire|it'?s on fire|something'?s burning)\W*$/i,
  ],
  [
    'burn',
    /\b(?:i|we|she|he|they|someone|somebody|member|child)\b.{0,30}\b(?:burnt|burned|burns?|scalded|splashed)\b|\b(?:hot )?(?:wax|balm|oil)\b.{0,20}\bon (?:my|her|his|the|your|a) (?:hand|skin|arm|finger|fingers|face|leg|foot|eye)\b|\b(?:wax|skin) burn\b|\boil burn\b(?! (?:the |my |your |on )?(?:lips?|skin|mouth))|\bburn(?:t|ed)? (?:my|her|his|the) (?:hand|arm|finger|fingers|skin|face)\b|\bfirst aid\b.{0,30}\bburns?\b|\bburn from\b|\b(?:blister\w*|burns?|burnt|burned|scald\w*)\b.{0,40}\b(?:hot|melted|boiling) (?:oil|wax|balm|fat|butter|steam|water)\b|\b(?:hot|melted|boiling) (?:oil|wax|balm|fat|butter|water)\b.{0,40}\b(?:blister\w*|burns?|burnt|burned|scald\w*|splash\w*|my (?:hand|arm|finger|skin|face)|her (?:hand|arm|finger|face)|his (?:hand|arm|finger|face))\b/i,
  ],
  [
    'alcohol-and-flame',
    /\b(?:alcohol|disinfect\w*|ethanol|isopropanol|ipa|spirit)\b.{0,80}\b(?:flames?|burner|candle|hob|stove|torch|lighter|fire|hot ?plate|light)\b|\b(?:flames?|burner|candle|hob|stove|torch|hot ?plate)\b.{0,80}\b(?:alcohol|disinfect\w*|ethanol|isopropanol|ipa|spirit)\b/i,
  ],
  [
    'disinfect',
    /\b(?:disinfect|saniti[sz]|sterili[sz])\w*|\b(?:how|best way|should)\b.{0,30}\b(?:clean|wash)(?:ing)?\b.{0,40}\b(?:tins?|jars?|jugs?|pots?|tools?|spoons?|moulds?|molds?|containers?|equipment|tubes?|lids?|wax)\b|\b(?:tins?|jars?|jugs?|pots?|tools?|containers?|tubes?)\b.{0,40}\bhow\b.{0,20}\b(?:clean|wash)\b/i,
  ],
  [
    'disinfect',
    /\b(?:alcohol|ethanol|isopropanol|ipa|spirit)\b.{0,60}\b(?:wet|wipe|wiping|clean|tools?|jars?|tins?|bench|table|surfaces?|evaporate|dry)\b|\b(?:jugs?|tins?|jars?|tools?|spoons?|pots?|containers?)\b.{0,25}\b(?:be|is|are|still|stay) (?:fully |completely |all )?(?:dry|wet|damp)\b|\bdry(?:ing)?\b.{0,20}\b(?:tins?|jars?|jugs?|tools?|spoons?|containers?)\b.{0,30}\bwash/i,
  ],
  [
    'children',
    /\b(?:essential oils?|scents?|fragrances?)\b.{0,50}\b(?:bab(?:y|ies)|toddlers?|child(?:ren)?|kids?|little ones?|newborns?|infants?)\b|\b(?:bab(?:y|ies)|toddlers?|child(?:ren)?|kids?)\b.{0,30}\bessential oils?\b/i,
  ],
  ['patch-test', /\bpatch[- ]?test\w*/i],
  [
    'glass',
    /\b(?:jar|jars|glass|jug|bottle|pot)\b.{0,40}\b(?:cracked|cracks?|broke|broken|shatter\w*|breaks?)\b|\b(?:cracked|broken|shattered)\b.{0,20}\b(?:jar|glass|jug)\b|\bthermal shock\b|\b(?:hot|warm|melted)\b.{0,30}\bcold\b.{0,12}\b(?:glass|jars?|pots?)\b|\bhow (?:warm|hot)\b.{0,20}\b(?:jars?|glass)\b|\b(?:pre-?)?(?:warm|heat)(?:ing)?(?: up)? (?:the |my |our |glass )*(?:jars?|glass|glasses)\b/i,
  ],
  [
    'water-bath',
    /\b(?:water[- ]?bath|bain[- ]?marie|double boiler)\b.{0,60}\b(?:dry|how (?:do|to|should)|safe|safely|top up|level|boil)\b|\bhow\b.{0,30}\b(?:use|set up|run)\b.{0,20}\b(?:water[- ]?bath|bain[- ]?marie|double boiler)\b|\b(?:in|with|use) (?:the|a|my|our) microwave\b/i,
  ],
  [
    'rags',
    /\b(?:oily|oil-soaked|linseed|flax(?:seed)?|soaked)\b.{0,20}\b(?:rags?|cloths?)\b|\b(?:rags?|cloths?)\b.{0,30}\b(?:catch fire|self-heat|oily)\b/i,
  ],
  [
    'spoiled',
    /\b(?:is|are|has|have|how|why|my|our|the)\b.{0,50}\b(?:mou?ldy|rancid|gone off|white bloom|(?:smell|taste)(?:s|ing)? (?:of|like) (?:old |stale |wax |rotten )?(?:crayons?|nuts|putty|yeast|paint|crisps))\b|\bis (?:it|this|that) (?:mou?ld|rancid|off)\b|\b(?:white|fuzzy|furry|green|black|grey|gray|dark|blue|hairy|woolly) (?:stuff|spots?|film|powder|dots?|layer|patch(?:es)?|bits|specks?|fluff|growth)\b.{0,20}\b(?:on|in|inside|under|over)\b|\b(?:mou?ld|bloom|fuzz)\b.{0,20}\b(?:on|in|under|inside|round|around)\b.{0,20}\b(?:balm|salve|ointment|tins?|jar|oil|lid)\b/i,
  ],
  [
    'lids',
    /\b(?:close|closing|shut|put|putting|screw|lids?)\b.{0,30}\b(?:lids?|on|close|closed)\b.{0,40}\b(?:warm|hot|cool|cools|cooled|set|soft)\b|\b(?:cool|set|leave)\b.{0,30}\b(?:uncovered|open|without (?:a |the )?lids?|lids? (?:off|on))\b/i,
  ],
  [
    'hygiene',
    /\b(?:cold sore|stomach (?:bug|upset)|sick|ill|open (?:cut|sore)|a cold|flu|covid)\b.{0,60}\b(?:help|fill|make|making|pour|join|work|take part)\w*\b|\bhygiene\b|\bclean(?:liness)? (?:rules|at the bench)\b|\bgloves\b.{0,30}\b(?:need|wear|filling|balm)\b|\b(?:need|wear)\b.{0,20}\bgloves\b/i,
  ],
];

/** Stocks, recipes, labels and dates are other topics' words. */
const elsewhere =
  /\b(?:scale|recipe|lots?|batch(?:es)?|workshop|reaction|report|rash|cost|price|how (?:long|soon|quickly|fast)|expires?|what else|instead|swap|substitute|infus\w*|check)\b/i;
/** "Between batches" is when one cleans, and alcohol is kept wet for a while: neither is about a batch or a shelf life. */
const benchTalk =
  /\bbetween (?:the |two )?batches\b|\bhow long\b(?=.{0,30}\b(?:alcohol|ethanol|wet|dry|disinfect))/gi;

/** What light does to skin that has a citrus oil on it is the check's. */
const inTheSun =
  /\b(?:burns?|burnt|burned)\b(?=[^.!?]{0,30}\b(?:sun\w{0,6}|daylight|uv)\b)|(?<=\b(?:sun|sunlight|sunshine|daylight)\b[^.!?]{0,30})\b(?:burns?|burnt|burned)\b/gi;

/** The advice a message asks for, by its id; undefined when it asks for none. */
export const readAdvice = (text: string): string | undefined => {
  const head = text.slice(0, 400).replace(inTheSun, ' ');
  const found = asked.find(([, pattern]) => pattern.test(head))?.[0];
  const pressing = found === 'wax-fire' || found === 'burn' || found === 'alcohol-and-flame';
  return found !== undefined && !pressing && elsewhere.test(head.replace(benchTalk, '')) ? undefined : found;
};
