import { wordSet } from './word-list.ts';

/**
 * Everyday words that a maker talks with and that mean nothing to the bench: what people do and are, and the things of
 * a house, a school, a shop. No substance, plant, vessel, unit, colour, ailment or part of the body is among them, nothing
 * that counts, compares or leaves out, and no word of any topic. Each stands for its other forms too (`formsOf`).
 */
const verbs = wordSet(`
  achieve admire admit advise afford amaze amuse announce annoy apologise apologize appeal applaud appoint approach argue assist assure
  attempt attract babble beg behold bet blame boast borrow bow brag brave browse bump celebrate challenge chase chatter cheer cherish
  chuckle circulate clap clarify climb collaborate commence compliment concern confess confuse congratulate connect consult continue
  convince cooperate correspond crave cuddle curse cycle dabble dance dawdle daydream debate dedicate demonstrate depend deserve desire
  determine devote dictate dig disappoint discover dither doodle dread dress drift drive dwell educate elaborate embark embarrass embrace
  emigrate encourage enquire entertain entrust envy estimate evolve examine excite excuse exhaust exist experience experiment explore fail
  fascinate fear fetch fiddle flatter flick focus fool foresee forgive fret frown fuss gamble gather giggle glance glare gossip grab
  graduate greet grin groan grumble hassle haunt hesitate hug hum hunt identify impress improve improvise inherit inquire insist inspire
  instruct interest interrupt introduce investigate involve jog journey juggle jumble jump kiss knock laugh launch lecture lend linger
  marry meddle mess moan mock motivate mumble nag natter nod obey oblige observe occur operate overdo overhear overlook panic park
  participate peek peer perform persuade pester play plead plod plot ponder pootle pop possess potter praise prattle pray preach preen
  pretend prevail proceed pronounce protest prove puzzle quarrel queue quiz ramble realise realize reassure recognise recognize refer
  reflect regard regret rehearse relate rely repay require research respond retire reveal reward sail satisfy scare scold scramble scream
  scribble seek sense shame shiver shrug sigh signal sing smile sneak snuggle spark specialise specialize specify spell spot sprint
  squabble squeal stammer stare startle stroll struggle stumble stutter succeed support surrender swear sympathise tackle tease tempt tend
  tip toil treasure trust tutor twiddle unpack urge vote vow wake wander wave whine whisper whistle witness worship wriggle yawn yearn
  yell
`);

/** Forms of verbs that no rule makes. */
const irregular = wordSet(`
  bitten clung crept drank dreamt driven dug fled flew flown forgiven fought froze gotten grew hid hidden hung knew knows laid lain led
  overheard rang ridden rode sang shaken shone shook sings sleeping sleeps slept sought stole struck sung swam swim swimming swims swore
  sworn swung tore torn trodden undertaken undertook woke woken worn
`);

const nouns = wordSet(`
  ability accent activity actor adventure affair airport amusement ancestor apartment appetite appointment apprentice argument armchair
  army artist aspect assembly assignment assistant association attic attitude audience author award babysitter badge baker bakery balcony
  ball bank barber barista baron bed bedtime beekeeping behalf belief bell benefit bicycle bingo biology birth blog blogpost board boatman
  bookshop boot borough boutique brain branch bridge brigade broadcast brochure buddy bungalow butcher campaign campsite captain career
  caretaker carpenter catalogue cellar ceremony chairman chairwoman chaos chapel charity chatterbox chef chemist chemistry chimney
  choir chore chum cinema citizen clash classmate clerk clinic coach collaborator comedian commitment commotion companion company
  competition computer concert confidence confusion congregation consultant contest convent conversation corner corridor costume couch
  council councillor countryside courage coursework court courtyard crafter craftsman craze creche crew crisis critic culture curiosity
  curtain dancer dawn daylight dean deck demonstration dentist department deputy desk diary difference difficulty dilemma diploma
  direction director disaster disco discovery discussion district diva diver divorce donor doorstep drama driver drummer duke dusk
  education effort election electrician elephant elevenses embroidery employee employer encouragement enemy energy engagement engineer
  enquiry enthusiasm enthusiast entrance environment episode errand essay estate exam excitement exercise exhibition expectation expert
  explanation expo failure faith fan fashion fate fence fiance fisherman flat fleet fog football footballer foreman fortune foyer freedom
  freelancer freshman friendship gallery gang genius getaway ghost glimpse goal god godmother goodness government grandparent grief grocer
  guardian guestbook guesthouse guilt guitar gym gymnast habit hallway handwriting hardship headmaster headmistress headteacher helpdesk
  hero hesitation highlight hill historian homework hospice hostel hotel housemate housewarming humour hurdle idiot impression improvement
  inbox incident indication influence initiative inspiration instinct instructor interview intro invitation ironmonger jet jogger
  journalist junction junior justice kindergarten kindness king knack knitting knowledge ladder landlady landlord lane laptop laughter
  laundry lawn league lecturer leisure librarian lift likelihood link listener logger logic loneliness lounge lunchbreak madness magician
  maid mailbox manager manner mansion marathon marriage maths matron mayor mentor merchant messenger midweek milkman minister minority
  mirror misery misfortune mission mixup monk mood moral motive motorbike motto mouthful movement movie music musician mystery nanny
  nation neighbourhood nerve network news newsletter newspaper nightmare noise northerner notebook notion novel novice nuisance nun
  nursery occasion occupation officer opera opponent opportunity orchestra organisation organiser organizer outfit outing pace
  paddock painter painting pal parade parent parish parishioner parking parliament partnership passage passenger passion
  passport patience pattern pavement payday peace peculiarity pen pencil pensioner performance personality perspective philosopher
  photocopy photograph photographer physics pianist piano picnic pilgrim pilot pinboard pity planet player playground playgroup playtime
  plumber poet poetry police policeman politeness politician poll pool position possibility postbox postcard postie posture preparation
  presence president pride priest prince princess principle printer prison privacy prize probability procedure profession professional
  professor progress promotion prospect province psychologist publication publicity publisher punishment queen race radio railway rat
  reader reality rebel receptionist recruit refreshment refugee registrar rehab relation relationship reputation researcher resident
  respect response responsibility restaurant retirement reunion revenge rhythm riddle rider road romance roofer rota route routine
  rugby rumour sailor sake sanctuary scenario scene scholar schoolboy schoolgirl schoolteacher scientist scrapbook script sculptor seaside
  semester seminar senior sequence sergeant series servant service shelter shepherd sheriff shift shopkeeper shopper sibling sight
  situation skill skipper slot snow soccer society solution soul speaker specialist speech spinster spokesman sport squad staff stage
  stairs standstill station statue stepdaughter stepmother steward strategy stunt suburb success supermarket supervisor suppertime surfer
  surgery surname surrounding suspicion swimmer syllabus sympathy tailor tale talent taxi teabreak technique technology television
  temptation tenant tendency tennis terrace theatre theory therapist thief threat thrill throne ticket tide timetable tomboy tour
  tourist tournament toy tradition traffic trainee trainer training traveller tribe trick trolley troop trophy trucker truth tuition
  tune typist uniform upbringing vehicle venture verse vet veteran victim victory video villager violin vision vocabulary voice
  voyage wagon waiter waitress wardrobe warrior weakness wealth webshop welder wheelchair whim widow widower wilderness winner wisdom
  wizard workbook workmate zoo
`);

const others = wordSet(`
  aboard absurd academic accidental actual admittedly adorable afterward ahoy alas aloud amazed ambitious amid amongst ancient angry
  anxious anyways apologetic artistic ashamed asleep astonished attractive automatic awake aware awful awkward barely beloved bewildered
  blimey blind blunt brief brisk brutal bye capable careless casual cautious charming chatty cheeky cheerful cheerio chief childish ciao
  civil clever clumsy colossal comic commercial competent competitive complex concerned confident conscious considerable constant
  convenient convinced cosy courageous crafty crazy creative crikey critical crowded crucial cruel cultural cute damned daring deaf
  dedicated delicate delightful demanding democratic desirable devoted difficult digital diligent diplomatic disappointed distant distinct
  doubtful downstairs dramatic dreadful dreary eccentric educational efficient eighty elderly eldest elegant eligible embarrassed eminent
  emotional endless energetic enormous enthusiastic eternal evident evil exceptional exhausted exotic experienced extraordinary extreme
  fabulous faithful familiar farther fascinating fashionable fatal feeble fellow fierce financial firsthand fond foolish foremost
  forgetful formal forthcoming fortunate frank frantic frequent frightened frustrated funny furious furthermore futile genuine ghastly
  gigantic glamorous gloomy glorious golly gosh gracious gradual grandiose greedy grumpy guilty handsome happier hasty heavens hectic
  helpless hence historic homely honourable hopeless horrible hospitable hostile humble humongous hungry hurrah hurray idle ignorant
  imaginary immediate impatient imperfect important impressed impressive incredible independent indoor inevitable informal innocent
  inquisitive intelligent intense intensive interested intimate inward ironic jealous jolly joyful knowledgeable legendary leisurely
  likewise lively lonely loud loyal lucky mad magical magnificent marvellous marvelous medieval memorable merry messy mighty miserable
  modern modest moody moreover muddled mutual mysterious naive namely nationwide naughty neighbourly nervy nevertheless newcomer nifty
  noble noisy nonetheless nostalgic notable noticeable notwithstanding oblivious obscure observant obvious occasional offhand offline
  optimistic orderly organised organized ouch outdoor outgoing outrageous outstanding overjoyed overseas overwhelmed pathetic peaceful
  peculiar persistent pessimistic petite phew playful pleasant plucky poetic polite political poor pops positive powerful practical
  precious premature presently prestigious pretty prim privileged probable productive profound prominent prosperous psst punctual puzzled
  quaint quirky random rapid rational realistic reckless regretful relevant reliable religious reluctant remarkable remote residential
  resourceful respectable respectful restless ridiculous robust romantic royal rural rusty sacred sane scarce scarcely scared scary
  secluded seldom selfish sentimental serene seventy shabby shocking shy significant sincere skilful skilled sleepy slick sloppy smart
  smug sober sociable social solemn solitary someday somehow sometime sophisticated southern spectacular speechless splendid spontaneous
  stern straightforward strategic strenuous stubborn stunning stylish subtle suburban successful sudden superb superior supportive swift
  sympathetic systematic talented talkative tempting tense terrible terrific terrified theoretical thereafter thereby therein thirsty
  thorough thoughtful thoughtless thrilled thus timely timid tiresome toodle tough towards tragic tremendous trendy troubled trusty
  truthful ugh ultimate unable unaware unbelievable uncomfortable unconscious underneath uneasy unemployed unexpected unfair unfamiliar
  unforgettable unfortunate ungrateful unhappy unique universal unkind unlikely unlucky unnecessary unpleasant unprepared unreal
  unreasonable unreliable unusual unwilling upon upstairs urban urgent useless utter vacant vague vain valuable vast vicious victorious
  violent virtual visible visual vivid wealthy weary weird western whereas whereby whichever whoa whopping wicked widespread willing
  withal witty worldwide worthwhile worthy wow wretched yikes yippee
`);

/** What is more than one of these. */
const more = wordSet(`
  act agree album alive apology apparent approve area art article athlete beauty begun blanket bold bore bright cardigan category chapter
  character coast college comfortable community conference connection consider context custom dare delay demo determined differ disagree
  duty ease editor effect escape everywhere external fame favour field fight flexible florist forever game gate gaze goat goods grand
  greeting guarantee guidance guild harsh hearing household introduction invite keeper knit knowing lamp language legend machine
  magazine magic mainland math memory met miracle muddle muse national nature neat opening opinion outcome owner paste
  permanent poke policy presentation principal process proverb public quiet recover reply rescue resolve ride rude sad scheme science
  scientific scope screen search secret section silent sketch sofa spoken star street stress structure surf survey symbol temper textbook
  traditional trivial university virtue welcome worker yard
`);

const all = new Set([...more, ...verbs, ...irregular, ...nouns, ...others]);

/** What an inflected word may be a form of: "wondering" of "wonder", "carries" of "carry", "stopped" of "stop". */
const formsOf = (word: string): readonly string[] => {
  const stem = /^(.{2,}?)(?:ing|ed|er|est|ly|es|s|ers|ings)$/.exec(word);
  const ends = [word.replace(/(?:s|es)$/, ''), word.replace(/(?:ed|ing|ly|er|est)$/, '')];
  if (!stem) return ends;
  return [
    ...ends,
    ...ends.map((end) => `${end}e`),
    ...ends.map((end) => end.replace(/i$/, 'y')),
    ...ends.map((end) => end.replace(/([a-z])\1$/, '$1')),
    ...[word.replace(/ies$/, 'y'), word.replace(/ied$/, 'y'), word.replace(/ily$/, 'y')],
  ];
};

/** True for an everyday word in any of its forms. */
export const isEveryday = (word: string): boolean =>
  all.has(word) || formsOf(word).some((form) => all.has(form));
