import type { RuleSourceId, RuleStatus } from './sources.ts';

/**
 * Words that decide whether a wording reads as cosmetic or medicinal. Stems in lower case: `*` stands for any ending, a
 * hyphen also for a space or nothing. The judgement on each phrase is our own; no authority's list of phrases was seen.
 */
export interface ClaimWord {
  readonly stems: readonly string[];
  /** Why, for any region; the region's own rule is added to it. */
  readonly why: string;
  /** A cosmetic wording of the same wish; missing: better left out. */
  readonly instead?: string;
  /** No cosmetic wording keeps the wish, not even as a scent. */
  readonly leaveOut?: true;
  readonly source: readonly RuleSourceId[];
  readonly status: RuleStatus;
}

const letters: readonly RuleSourceId[] = ['MHRA-GN8', 'FDA-LETTERS'];

const word = (
  why: string,
  stems: string,
  instead?: string,
  source: readonly RuleSourceId[] = letters,
  status: RuleStatus = 'read',
): ClaimWord => ({
  stems: stems.split(',').map((stem) => stem.trim()),
  why,
  ...(instead ? { instead } : {}),
  source,
  status,
});

const leftOut = (row: ClaimWord): ClaimWord => ({ ...row, leaveOut: true });

/** Diseases and injuries: medicinal with any verb, because nothing else is meant by them. */
export const diseaseWords: readonly ClaimWord[] = [
  leftOut(
    word(
      'it names a disease or injury',
      `cold-sore*, herpes, fever-blister*, eczema, dermatitis, psoriasis, impetigo, cheilitis, thrush, acne, rosacea, rash, rashes, hives,
    infection*, infected, ulcer*, wound*, bruis*, swelling, swollen, burns, burn balm*, burn salve*, burn ointment*, burn cream*, burn gel*, burn relief, burn care, burned lip*, burnt lip*, sunburn*, sunburnt, blister*, scar, scars, scarring,
    fungal, fungus, candida, ringworm, athlete's foot, haemorrhoid*, hemorrhoid*, varicose*, shingles, scabies, head lice, hay fever, sore throat*, toothache*, gout, sciatica, rheumat*, cramp*, sprain*, flu, bronchi*, dandruff, keratosis, verruca*, teething, colic, hair loss, baldness, first aid, first-aider*, stings, frostbite, chilblain*, diabet*, lupus, mastitis, warts, wart, arthritis, asthma, migraine*, headache*, cough*, sinus, congestion, cancer, insomnia, anxiety, mouth sore*, canker sore*, nappy rash`,
    ),
  ),
];

/** Effects on a disease or on how the body works: medicinal by themselves. */
export const effectWords: readonly ClaimWord[] = [
  word('to heal is a medicinal claim', 'heal, heals, healing, healed, healer', 'Softens dry-feeling lips'),
  word('to cure is a medicinal claim', 'cure, cures, cured, curing, curative', 'Softens dry-feeling lips'),
  word('a remedy is a medicine', 'remed*', 'Care for dry-feeling lips'),
  word('therapy is medicinal', 'therap*, aromatherap*', 'A scent you may like'),
  leftOut(
    word(
      'it says it is a medicine',
      'medicat*, medicin*, medical*, pharmaceutical*, prescription, drug, drugs',
    ),
  ),
  word(
    'killing germs is medicinal, and in the EU a biocide',
    'anti-bacteria*, anti-microb*, anti-septic*, anti-fung*, anti-vir*, bactericid*, fungicid*, germ-kill*, kills germs, kills bacteria, germs, bacteria, viruses, disinfect*, sterilis*, steriliz*',
  ),
  word(
    'acting on inflammation is medicinal',
    'anti-inflam*, inflammation, inflamed, inflammatory',
    'Leaves lips feeling comfortable',
  ),
  word(
    'relief of pain is medicinal',
    'pain, pains, painful, painkill*, pain-reliev*, analges*, ache, aches, aching',
    'Gives a cool tingle',
  ),
  word(
    'to numb is what an anaesthetic does',
    'numb, numbs, numbing, anaesthe*, anesthe*',
    'Gives a cool tingle',
  ),
  word('it speaks of the immune system', 'immun*'),
  leftOut(word('to detoxify is a function of the body', 'detox*', undefined, ['OWN'], 'memory')),
  word(
    'it speaks of cells or tissue',
    'regenerat*, cell renewal, renews cells, cell turnover, skin cells, cell growth, tissue*, stem cell*',
    'Overnight softness',
  ),
  word(
    'it speaks of circulation or the structure of the body',
    'circulation, blood-flow, boosts collagen, boost collagen, collagen production, stimulat* collagen, builds collagen, increas* collagen, collagen boost*, makes collagen, make collagen, more collagen, produc* collagen, knits bone*, knit bone*, elastin, hormon*, metabol*',
    'For a fuller-looking shine',
  ),
];

/** A plant whose name sounds like a promise: fine as a plant, but a name may imply an effect. */
export const plantNameWords: readonly ClaimWord[] = [
  word(
    'the plant’s name sounds like a promise',
    'self-heal*, heal-all, all-heal, woundwort, feverfew, lungwort',
    'Prunella-infused balm',
    ['OWN'],
    'memory',
  ),
];

/** Verbs that are mild beside dryness and medicinal beside a condition. */
export const mildVerbs: readonly string[] = [
  'reliev*',
  // Slips that are words of their own and so are not put right.
  'relive*',
  'releiv*',
  'relief',
  'sooth*',
  'calm*',
  'repair*',
  'ease',
  'eases',
  'easing',
  'help*',
  'good for',
  'great for',
  'fix*',
  'mend*',
  'restor*',
  'rescu*',
  'treat*',
  'stop*',
  'end*',
  'clear*',
  'fight*',
  'prevent*',
  'reduc*',
  'banish*',
  'combat*',
  'gets rid of',
  'get rid of',
  'for',
];

/** Conditions that turn a mild verb medicinal everywhere. */
export const hardConditions: readonly string[] = [
  'crack',
  'cracks',
  'cracked',
  'cracking',
  'bleeding',
  'split',
  'splits',
  'splitting',
  'sore',
  'sores',
  'soreness',
  'itch*',
  'allerg*',
  'bites',
  'stings',
];
/** Drug wording in the US; a matter of judgement in the EU and UK. */
export const irritation: readonly string[] = ['irritat*'];
export const chapping: readonly string[] = ['chap', 'chaps', 'chapped', 'chapping'];
export const dryness: readonly string[] = [
  'dry',
  'dryness',
  'drying',
  'parched',
  'flaky',
  'rough',
  'damaged',
  'tired',
];

export const sunWord: ClaimWord = leftOut(
  word(
    'protection from the sun has its own law: a drug in the US and Canada; in the EU and UK it needs approved filters and a tested factor',
    'spf*, factor 15, factor 30, factor 50, sunscreen*, sun-screen*, sunblock*, sun-block*, sun-cream*, uv, uva, uvb, ultraviolet, sun protect*, protect* from the sun, protect* from sun, protect* against the sun, protect* against sun, protect* in the sun, sun damage, against the sun, sun-protecti*, sunshield*',
    undefined,
    ['OWN'],
    'memory',
  ),
);

/** Weather: a cosmetic purpose in the EU and UK, close to the skin-protectant drug in the US. */
export const shieldWord: ClaimWord = word(
  'protecting is a cosmetic purpose in the EU and UK, and close to skin-protectant drug wording in the US',
  'protect*, shield*, guards, barrier, defend*',
  'Helps lips stay soft on windy days',
  ['CFR347', 'OWN'],
  'memory',
);

const criteria: readonly RuleSourceId[] = ['EU655-2013'];
const own: readonly RuleSourceId[] = ['OWN'];

/** Cosmetic, but misleading, unproved or running others down. */
export const rewordWords: readonly ClaimWord[] = [
  word(
    '"chemical-free" and the like are false: everything is a chemical',
    'chemical-free, no chemicals, without chemicals, free of chemicals, free from chemicals, toxin-free, non-toxic, no toxins, no nasties',
    'List what is in it',
    criteria,
  ),
  word(
    'it has to be true of every ingredient, and proved',
    'natural*, all-natural, pure, purest, purely, 100 %, 100 percent, hundred percent, clean beauty',
    'Made with plant oils and beeswax',
    own,
    'memory',
  ),
  word(
    'the word "organic" on the front needs certification',
    'organic*',
    'With sunflower oil from an organic farm (if true)',
    own,
    'memory',
  ),
  word(
    'it needs evidence, and never means "no risk"',
    'hypo-allergenic, non-allergenic, allergen-free, allergy tested, fragrance-free, unscented, perfume-free',
    'Made without added fragrance (if true)',
    own,
    'memory',
  ),
  word(
    'only with a real test on the finished balm',
    'dermatologist*, dermatologic*, clinically, clinical, lab tested, laboratory tested, doctor*, scientifically, proven, tested by',
    undefined,
    criteria,
  ),
  word(
    'safety for somebody is what the assessment says, not the label',
    'safe for, safe to use, baby-safe, kid-safe, child-safe, completely safe, totally safe, gentle enough for babies, no side effects, suitable for babies, suitable for children',
    undefined,
    own,
    'memory',
  ),
  word(
    'no authority approves a cosmetic',
    'approved, approval, certified, accredited, authorised, authorized, licensed, fda, endorsed',
    undefined,
    criteria,
  ),
  word(
    'a legal duty sold as a virtue',
    'not tested on animals, cruelty-free, no animal testing, never tested on animals, not animal tested',
    undefined,
    criteria,
  ),
  word(
    'it runs down lawful ingredients or other makers',
    'free from parabens, paraben-free, without parabens, no parabens, preservative-free, no preservatives, unlike other*, unlike the, better than',
    'Made without added preservative',
    criteria,
  ),
  word(
    '"free" claims need proof, cross-contact included',
    'nut-free',
    'Made without nut oils',
    own,
    'memory',
  ),
  word(
    '"free from" something lawful or always absent misleads',
    'free from, free of, gluten-free, petroleum-free, silicone-free, sulphate-free, sulfate-free, palm-free, alcohol-free, lead-free',
    'Made with the oils and wax listed',
    criteria,
  ),
  word(
    'it is not made as food: food law would apply',
    'edible, eatable, food-grade, good enough to eat, you can eat',
    'Flavoured with …',
    own,
    'memory',
  ),
  word(
    'a number of hours needs a measurement',
    '\\d+-hours, \\d+-hour, \\d+-h, \\d+-hrs, all day, all night, twenty-four hours',
    'Long-lasting feel (if tried)',
    criteria,
  ),
  word(
    'it cannot be proved',
    'best, number one, no 1, number 1, miracle*, magic*, perfect*, guarantee*, instantly, forever, permanent*',
    undefined,
    criteria,
  ),
  word(
    'plumping speaks of the body; the look may be spoken of',
    'plump*, fuller lips',
    'For a fuller-looking shine',
    own,
    'memory',
  ),
  leftOut(
    word(
      'keeping insects away is what a registered repellent does (a biocide in the EU), not a cosmetic',
      'repel*, mosquito*, midges, insect*, bug-spray, anti-bug, keeps bugs away, keeps ticks away',
      undefined,
      own,
      'memory',
    ),
  ),
  word(
    'it speaks of the structure of skin or teeth; the look may be spoken of',
    'cellulite, stretch-mark*, whitening, whitens, lightening, lightens skin, brightens teeth, dark circles, puffiness, hair growth',
    'Leaves skin feeling smooth',
    own,
    'memory',
  ),
  word(
    'the look may be spoken of, with evidence',
    'anti-age*, anti-agi*, anti-wrinkle*, wrinkle*, fine lines, younger, youthful, rejuvenat*',
    'Smooths the look of lips',
    ['FDA-LETTERS', 'OWN'],
  ),
  word(
    '"lip treatment" may be read as treating something',
    'treatment*',
    'Care for dry-feeling lips',
    own,
    'memory',
  ),
];

/** Borderline words on which nothing was seen. */
export const unsureWords: readonly ClaimWord[] = [
  word(
    'I know no rule for this word: it may be read as an effect on the body',
    'repair*, restor*, rescu*, recover*, renew*, reviv*, healthy, health, antioxidant*, anti-oxidant*, probiotic*, vitamin-rich, nourishes deeply, penetrat*, deep-acting, balanc*, boost*, stress*, relax*, sleep*, energis*, energiz*, sanitis*, sanitiz*, hygienic, sterile, stimulat*, collagen, sensitive, reliev*, relief, treat, treats, cleans*, purif*, fixes, mends, strengthen*, active*, works, rub, vapour*, vapor*, muscle*, joint*, baby, babies, nipple*, protects skin, stops, prevent*, combats, fights, clears, cleared',
    'Leaves lips feeling soft',
    own,
    'memory',
  ),
];

/** Words of look, feel, scent, taste and care that carry no claim of effect. */
export const safeWords: readonly string[] =
  `soft* moistur* hydrat* condition* smooth* nourish* comfort* shin* gloss* glid* tint* tast* smell* scent* cool* warm* mint*
  vanilla orange honey cocoa rose lavender peppermint lip lips balm vegan handmade made feel* look* care cares caring colour* color* flavour* flavor* beeswax shea butter
  oil oils infused wax tingl* fresh* silky velvet* rich light creamy sooth* calm* dry fragran* sweet citrus lemon lime coconut almond gentle* wind cold weather
  tin stick everyday daily winter summer local small batch hand poured refill* plastic`.split(/\s+/);

/** Scents and herbs by which an ingredient's claim can be reworded as what it is. */
export const scentNames: readonly string[] = [
  'clove',
  'lavender',
  'peppermint',
  'spearmint',
  'eucalyptus',
  'rosemary',
  'vanilla',
  'orange',
  'lemon',
  'rose',
  'cinnamon',
];
export const herbNames: readonly string[] = [
  'calendula',
  'chamomile',
  'plantain',
  'marshmallow',
  'yarrow',
  'lemon balm',
  'elderflower',
];
