import { isChatter } from './lexicon.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

export const remindCues =
  'daily ahead advance beforehand warn warned reminding remember remind reminds reminded reminding reminder reminders lead'.split(
    ' ',
  );
export const expiryCues =
  'left finishes ending stops has got less running expire expires expired expiring expiry expiries due overdue date dated dates stale off best bbe bb near good ok okay safe usable keep keeps last long sold sell using needs must use use-by using goes shelf up bad old becomes become ends ending end finish eat'.split(
    ' ',
  );
export const answerCues =
  'postpone leave park wait ask back done used finished again snooze later off sorted dealt gone'.split(' ');

/** Words around a question of what expires. */
export const dueWords = set(`
  older sooner jar jars bottle bottles may balms balm salves salve what'll what've finishes ending stop stops what's anything's past-it over during use-by home ought products product longer becomes become becoming getting too date's look looking find check their tidy what what's whats which when anything something everything things thing any all everything's list show see me us give tell
  expire expires expired expiring expiry expiries due overdue out of date dates dated past its their it's best before bbe bb use by going goes go gone
  went off stale ending ends end run runs running over old soon next this coming upcoming following month months week weeks day days year years quarter
  today tomorrow now in on at the a an and or is are be will has have had got do does did we i our my mine ours stock lots lot batches batch tins tin jars oils oil
  ingredients ingredient things stuff items item shelf cupboard book to for from until till up within about first soonest need needs using used
  should must be-used up date still left already not yet between during fair market event workshop sale show day start weekend please
  ahead then there those these that how many much long until keep keeps good check whole short nearest closest near close reach reaches reaching reached hit hits
  can could would you get pipkin of these with last latest earliest anymore any-more ones one
  christmas xmas easter new halloween say let know tell quick question pipkin hi hello hey there's there use-by best-before turn turns turned turning bad rancid lapse lapses lapsed perish
  fall older somethin 's house less than may running sell come comes befores won't doesn't will not last alright right fortnight falls june's whatever whose beyond passed mean wise reaches has has' week's month's date lies falls runs see everything's i
  sold sell selling sells needed need finishing near nearing close closer approaching edge end ends up stale must fine usable safe sellable fresh finish finishes whose where how long many tins end-of-month still further later further left list open opened both every each made poured some having reached come comes coming become past-date safe fine ok okay okay? wondering might may watch careful attention priority prioritise
`);

/** Words around setting, showing or stopping the reminder. */
export const remindWords = set(`
  have list go goes off warning warnings shift shifted send wake write going what's about to remind reminds reminded reminding reminder reminders us me everyone all the group of about what's what whats is that goes going out date expires expiring
  expire expiry due best before things stuff lots batches stock daily day days every each morning mornings evening evenings afternoon night nightly at in on
  here this channel to into for time timezone zone local set setting settings change move make it them put switch turn start begin please
  and a an our my we i you want need like would can could send post give message messages note notice notices ping tell by with from now on
  ahead advance beforehand prior early earlier notice lead leads again also as well same just only instead o'clock when then do does did will be it's its
  once per should which show how often currently currently set whatever anything something soon
  old new hour clock is are use using around about better would rather instead prefer if possible could maybe like actually think that's thats sorry no not too early late later earlier for time this that and so us bit than works work suits suit best everybody team please thanks let's let lets us know half past quarter back every's kindly ok okay hi hello pipkin hey them keep keeping always from going forward onwards hereafter warning warn
  be come comes arrive arrives enough heads heads-up anything things thing expire expires expired ready good fine before it's wants want wanted does start starting again restart resume resumed
  run runs running nvm nevermind grateful glad happy pleased appreciate obliged enough should two three both members others everybody quarter morning arrange arranged provide schedule required advance around about summer winter also how's both those up any one ones usual alert alerts nudge
`);

/** Words around an answer to something due. */
export const answerWords = set(`
  am i'm need mention bother more anymore further reminder reminders message done with is are was were it's its used up use finished finish all gone empty now lot lots batch batches no number the a an of and we i have has had been
  remind reminded us me ask asked again about in on for until till after next week weeks day days month months later snooze put off postpone dealt sorted
  please it them those everything every everyone due items item things thing tick cross mark as completely just that's that this these one ones today already
  have has looked look checked check seen see over at into from list tins tin off to another leave wait let can may should must present not yet time few couple more come back hide skip till
`);

/** True for a word that adds nothing: small talk, or one of the topic's own. */
export const isAround = (own: ReadonlySet<string>, word: string): boolean => own.has(word) || isChatter(word);

export const expiryOwnWords: ReadonlySet<string> = new Set([
  ...remindCues,
  ...expiryCues,
  ...answerCues,
  ...remindWords,
  ...answerWords,
  ...dueWords,
]);
