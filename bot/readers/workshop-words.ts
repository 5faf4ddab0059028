import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { echo } from './ask-back.ts';
import type { Wish } from './scale-wish.ts';

export const workshopExample = 'workshop for 12 people, 2 tins of 15 ml each, Fernlea hand balm';

/** Words that mean a workshop by themselves, and words that may mean one where people are counted. */
export const workshopCues = ['workshop', 'workshops', 'masterclass'];
export const classCues =
  'class classes course session sessions lesson lessons party evening afternoon morning event meeting meetup day club'.split(
    ' ',
  );
export const planCues =
  'plan planning planned organise organize organising organizing run running hold holding host hosting teach teaching schedule timeline handout shopping kits'.split(
    ' ',
  );

/** People who come, as they are called. */
export const peopleWords =
  'people|ppl|pers|peeps|persons?|participants?|makers?|attendees?|guests?|students?|pupils?|learners?|adults?|grown-?ups?|children|child|kids?|teens?|teenagers?|members?|beginners?|ladies|women|men|folks?|friends?|visitors?|customers?|crafters?|neighbou?rs?|volunteers?|trainees?|scouts?|girls?|boys?|heads?|pax|seats?|sign-?ups?|bookings?|mums?|mothers?|dads?|parents?|seniors?|colleagues?|families|knitters?|gardeners?|villagers?|campers?|hikers?|walkers?|nurses?|weavers?|quilters?|spinners?|beekeepers?|teachers?|helpers?|nieces|nephews|cousins|sisters|brothers|aunts|grannies|brownies|cubs';

/** Words around a workshop that ask for nothing more. */
export const workshopWords = new Set([
  ...workshopCues,
  ...classCues,
  ...planCues,
  ...`people person persons participant participants maker makers attendee attendees guest guests student students pupil pupils learner learners adult adults
  child children kid kids teen teens member members beginner beginners make makes making made take takes taking home get gets goes go gone bring brings need needs
  hour hours hr hrs minute minutes min mins start starts starting begin begins beginning from until till kit kits per head list lists want
  what what's whats how much many when set up out with each everyone total altogether all leader leaders lead leading come comes came coming turned attend attending attends join joining
  joins recipe balm balms give gives group circle village hall room hot plate plates hob hobs jug jugs spare extra reserve and or use using used
  work works calculate figure prepare prepared preparing buy long safety sheet pdf print printable same instead change changed but also then other both
  apiece kits weigh weighed fill fills pour pours sheet programme program prep agenda plans next learn learning first second incl too well point print meant one incl including included scale scaling let's sat sun together
  new more now please yourself ourselves themselves own only just still expecting expect invited booked signed fully their person's for at by one ones o'clock
  cancelled cancel cancelling drop dropped dropping after fewer less extra everything anything know where everybody everyone else should degrees cold warm chilly put hen sister's birthday giving
  it's there's they're we're lasts last lasting hour's about around meet meets meeting bring coming beginners crafting balm-making ppl pers peeps can have letter paper lady`.split(
    /\s+/,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const noPeople = missing(`How many people come? For example "${workshopExample}".`);
export const noMaking = missing(`Which recipe does everybody make? For example "${workshopExample}".`);
export const noTins = missing(
  'How many does each person make, and how big? For example "2 tins of 15 ml each".',
);
export const whichMaking = missing(
  'Which of the recipes do you mean? Say the whole line again, for example "1 stick of 5 g of Fernlea mint lip balm".',
);
export const notShared = (count: number, people: number): Trouble => ({
  code: 'bad-quantity',
  text: `${count} containers do not share out evenly over ${people} people. Say how many each person makes, for example "2 tins of 15 ml each".`,
});
export const unknownMaking = (said: string): Trouble => ({
  code: 'unknown-recipe',
  text: `I know no recipe called "${echo(said)}". Ask "list recipes" to see what is saved, or write it out: "workshop for 12 people, 2 tins of 15 ml each, 20 % beeswax, 30 % shea butter, 50 % olive oil".`,
});
export const costsApart = missing(
  'I plan a workshop first; then ask for its cost by the number of containers, for example "cost of Fernlea hand balm for 24 tins of 15 ml".',
);
export const infusionApart = missing(
  'Which herb, and how much oil to it? I plan with one herb in one oil of the recipe, for example "workshop for 10 people, 2 tins of 15 ml each, Fernlea hand balm, olive oil infused with calendula 1:8".',
);
export const notPlaced = (words: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I see a workshop, but not what to do about "${echo(words.slice(0, 4).join(' '))}". Ask for example "${workshopExample}".`,
});

/** The last request for a workshop, whole or with something missing, if that is what the member asked last. */
export const lastWorkshop = (reading: Reading): Wish | undefined =>
  reading.last?.topic === 'workshop' ? reading.last.request : undefined;
