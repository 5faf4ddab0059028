import { isEveryday } from './talk-words.ts';
import { wordsOf } from './word-list.ts';

/**
 * Words of talk around a request: people, places, days, feelings, and the verbs of getting things done. They ask for
 * nothing, name no ingredient, and change no amount. Only a second look at a message that nobody understood passes
 * over them, and says so; a word that could turn one request into another does not belong here.
 */
const background = new Set(
  wordsOf(`
  mum mums mom mother mothers dad father sister sisters brother brothers daughter daughters son sons aunt auntie uncle nan nana gran granny
  grandma grandad grandpa nephew niece cousin cousins wife husband partner girlfriend boyfriend fiancee bride groom family families relative
  relatives teenager teenagers teen teens grandchildren grandson granddaughter neighbour neighbours neighbor neighbors
  colleague colleagues boss teacher teachers pupil pupils student students lady ladies gentleman gentlemen woman women man men girl girls boy boys
  person guest guests visitor visitors customer customers client clients stranger beginner beginners newbie volunteer volunteers helper helpers
  member members committee chair treasurer secretary vicar nurse midwife gardener beekeeper beekeepers farmer farmers gardeners nurses cyclist cyclists climber climbers hiker hikers runner runners builder builders hairdresser hairdressers knitter knitters scouts guides brownies
  everyone everybody nobody anybody anyone myself yourself himself herself ourselves themselves yours ours theirs hers
  christmas xmas easter halloween hanukkah diwali eid valentine valentines birthday birthdays wedding weddings anniversary christening funeral
  party parties fair fairs fayre fete fetes fêtes market markets stall stalls shop shops event events bazaar fundraiser festival festivals
  open-day retreat camp camping camper hike hiking walk walking skiing ski beach school schools church village town hall halls library café cafe
  pub garden gardens allotment hob stove oven microwave fridge freezer rush hurry wholesaler supplier kitchen kitchens house home homes bathroom bedroom cupboard shed garage van car cars train bus plane flight suitcase
  luggage rucksack backpack jeans trousers coat purse drawer counter window windowsill tent caravan boat cottage farm abroad
  holiday holidays vacation trip trips travel travels travelling traveling commute
  spring summer autumn winter
  monday tuesday wednesday thursday friday saturday sunday weekend weekends morning mornings lunchtime evening evenings night nights nowadays
  recently lately finally eventually usually normally generally typically often sometimes always ever yet still soon early earlier late later
  meanwhile afterwards beforehand
  happy glad pleased excited nervous worried worrying worry unsure sure curious confused stuck lost desperate keen eager afraid annoyed proud
  tired busy bored grateful hopeful lazy fussy picky silly stupid daft dumb basic simply easy easily tricky honest honestly
  frankly seriously actually basically literally obviously clearly apparently supposedly hopefully luckily unfortunately sadly thankfully
  absolutely totally definitely certainly probably presumably surely truly quite rather fairly somewhat slightly
  lovely nice beautiful gorgeous wonderful fantastic brilliant amazing awesome excellent favourite favorite popular famous fancy posh
  new brand-new old usual regular normal ordinary typical standard own personal private special proper decent
  think thinks thought thoughts thinking believe believes guess suppose supposed reckon imagine figure feel feels feeling felt wish wishes wished
  wonder wonders like likes liked love loves loved adore prefer prefers hate hates dislike enjoy enjoys
  look looks looking see sees seen hear hears heard listen read reads reading watched watch ask asks asked asking answer answers
  tell tells told telling talk talks talking speak speaks said says explain explains mention mentions mentioned discuss
  planning plans planned intend intends hoping aim aims decide decides decided deciding
  come comes came coming went gone leave arrive arrives arrived arriving visit visits visiting
  bring brings brought bringing carry carries carrying taking took
  start starts started starting begin begins began beginning
  work works worked working job jobs task tasks project projects hobby hobbies business businesses
  happen happens happened happening seem seems seemed appear appears
  ended ends sit sits sitting sat lie lies lying lay stood
  sort sorts sorting helping helped helps
  teach teaches teaching taught learn learns learning learnt learned study studying practise practice
  internet online web forum
  phone message messages chat group groups circle
  idea ideas question questions reason reasons problem problems trouble matter matters way ways case cases chance luck
  thing stuff things kind type types bit bits piece pieces several
  time times moment while days weeks months years year
  since until till during through throughout within after when whenever although though however therefore anyway anyhow besides
  even previously
  lastly firstly secondly
  then else ahead inside outside near nearby behind along across among between
  most almost nearly exactly precisely roughly
  badly well properly correctly nicely carefully quickly slowly fast quick
  found shopping weather generous bees sunny rain rainy
  big small large little tiny huge
  yes yeah yup nah aye course indeed alright great perfect
  cheers brill ta thankyou sirs madam yous
  copy copies hm hmm settle settles settled settling
  gift gifts present presents souvenir favours favors stockings
  kettle kettles
  fun joy pleasure delight surprise
  help helpful useful handy
  `),
);

const months = new Set(
  wordsOf(
    'january february march april may june july august september october november december jan feb mar apr jun jul aug sept sep oct nov dec',
  ),
);

/** A month is talk where no day or year stands with it ("the July fair"). */
export const isMonth = (word: string): boolean => months.has(word);

export const isBackground = (word: string): boolean => background.has(word) || isEveryday(word);
