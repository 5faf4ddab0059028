/** Words around a question about replacing something that ask for nothing more. */
export const substituteWords: ReadonlySet<string> = new Set(
  `swap swaps swapped swapping swop exchange exchanged switch switching trade replace replaces replaced replacing replacement replacements
  substitute substitutes substituted substituting substitution substitutions sub alternative alternatives equivalent instead rather place lieu stand
  what whats what's which else use used uses using put putting add adding take taking leave out leaving work works working fit fits suit
  might could would good best better do does would should may could if happens happen happened when how much many need make making made turn version versions variant
  kind type sort like similar close closest nearest as to other another different something anything option options idea ideas suggest suggestion
  suggestions recommend recommended run ran runs short lack lacking missing then now only about change changes changing remove omit drop skip
  give show find list keep keeping firmness same set that it off up mine also wax waxes oil oils butter butters ingredient ingredients me person someone
  somebody people suitable possible moment way mostly quite ok customer friend child kids free based plant gone finished goes or left besides try more equal ladies lady members round through becomes become all too also either both trade trading`.split(
    /\s+/,
  ),
);
