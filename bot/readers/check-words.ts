/** Words that ask whether something may be in a balm. */
export const strongCues =
  `check checks checked checking chek chekc cehck safe safely safety allowed legal permitted prohibited banned forbidden restricted limit limits
  phototoxic photosensitising light-sensitising sensitising compliant comply complies dangerous harmful irritating faults fault max maximum maximal biggest largest`.split(
    /\s+/,
  );
export const mildCues =
  `ok okay fine alright acceptable suitable good use allergens allergen declare problem problems wrong worry worried most
  much many strong put add good list sun sunlight sunshine burn burns burning colour color contain contains look pass passes nuts nut allergy does`.split(
    /\s+/,
  );

/** Words around such a question that ask for nothing more. */
export const checkWords = new Set([
  ...strongCues,
  ...mildCues,
  ...`is are be it this that my our the a an recipe recipes balm lip lips on in for against rules rule law laws everything anything all of
  whether if what whats which how too high strong enough can could may might should would put add adding using used go goes please full look over
  make makes making made sold supplied given out placed poured tint gloss leave-on leave on rinse off stick scrub product products finished
  percent percentage percentages share highest lipbalm yes summer winter every everyday tinted out friend's drops drop am i we you there or not isn't aren't without against under region at level dose amount quantity have has need needs to
  name be named label declared list any with do does will within exceed exceeds over oil oils essential scent aroma fragrance as
  first sell skin contain contains inside eu uk us kid kids children still right and now quick quickly then safer sensitive unrefined refined colour color called
  labelled fresh freshly leaf leaves people someone user users adults adult me tell about than more really dried petals pass passes apply applies light sensitising change changed problem too fair market stall nut nuts free allergy allergies its ok still then legally anyone anybody puts uses adds has red flags flag labels print before recommended suggested usual poisonous toxic wear at most old who can't cannot upper top their his her avoid allergies was look looks looking through read run before shouldn't shouldnt mustn't must wrong nutty amiss bad idea true told heard said go going sell give hand selling workshop class course children's comply complies compliant review verify test here new own whole safety wise sensible belong belongs come safe'd percent allergic nobody somebody many little bit so because should that's isnt customer customers client mine her him she he friend lady woman man neighbour stand stands of too going into onto works work stand stands carry carries bear bears hold holds take takes allow allows against objection thinking really actually`.split(
    /\s+/,
  ),
]);
