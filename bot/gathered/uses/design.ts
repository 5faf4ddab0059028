/** What a new balm is to be, whatever it is poured into. */
const wishes =
  '<vegan* nothing_from_animals nothing_animal no_animal plant-based: vegan><allergic_to_nuts nut_allerg* nut-allerg* no_nuts nut-free nut_free nut nuts without_nuts: nut-free><palm: palm-free>';
const heat = '[ that survives {t}]';
const talk = 'sell selling gift school who where send';

/** The plain forms of a design of one kind, with and without ingredients. */
const formsOf = (kind: string): string =>
  [
    ` with {i1} and {i2}${heat}<${talk}: >`,
    ` with {i}${heat}<${talk}: >`,
    ` with {i1} without {i2}${heat}<without no not free ${talk}: >`,
    ` with {i1} and {i2} without {i3}${heat}<without no not free ${talk}: >`,
    ` without {i1}, without {i2}${heat}<without no not free ${talk}: >`,
    ` without {i}${heat}<without no not free ${talk}: >`,
    `<heatwave hot_weather hot_day* summer: for hot weather>${heat}<${talk}: >`,
  ]
    .map((rest) => `= design a${wishes} ${kind}${rest}`)
    .join('\n');

const asked =
  "? design* come_up invent* create* make_up make_me dream_up suggest* think_up new_recipe something_for something_in something_with something_out devise* work_out put_together brand_new new formulat* compose* stick_that_can stick_that_will stick_that_stands stick_that_holds stick_that_survives stick_that_takes stick_that_won't stick_that_keeps stick_that_copes balm_that_can balm_that_will balm_that_stands balm_that_holds balm_that_survives balm_that_takes balm_that_won't balm_that_keeps balm_that_copes draw_up whip_up knock_up recipe_for looking_for from_scratch";
const isBalm = '? balm balms salve* ointment* lip lips recipe skin hands something vegan* formula*';
const never = 'made melted had bought have_a poured swap instead';
const others = 'cost* price* label* weigh*';

/** What `design` does with the things in a message; bot/gathered/use.ts says how this is written. */
export const design = `
~ region size tins n

${formsOf('stick')}
${asked}
? stick sticks
! ${never} tin tins pot jar ${others}

${formsOf('tin balm')}
${asked}
? tin tins pot pots jar jars
${isBalm}
! ${never} stick tube ${others}

${formsOf('tube balm')}
${asked}
? tube tubes squeeze*
${isBalm}
! ${never} stick tin ${others}
`;
