/** Ways of asking for what `book` answers; bot/likeness/sayings.ts says how they are written. */
export const book = `
= history
what has happened so far
what was written down lately
what was entered last
what were the last entries
what were the last changes
what was the last thing we wrote down
what is new in the book
what changed in the book
what changed lately
what has been changed lately
what has been recorded recently
who wrote what
who changed what
who did what in the book
who has written in the book
show the latest entries
show what was entered recently
show me the last changes
show me the record of changes
list the recent changes
list of all entries
list all the changes made
let me see the last entries
the log of the book please
change log please
recent entries in the book
i want to look back at the entries
everything that was written down

= who changed {R}
who has changed {R} so far
who was it that changed {R}
who last changed {R}
who made changes to {R}
who has been changing {R}
who altered {R}
who has been fiddling with {R}
who has been messing with {R}
who's been at the {R} again
who has altered {R}
who edited {R}
who has worked on {R}
who wrote {R}
who wrote down {R}
who entered {R}
who touched {R}
which of us changed {R}
which member changed {R}
changes to {R} and by whom
who is behind the change of {R}
whose change was {R}
somebody changed {R}, who
when was {R} changed and by whom
when did somebody change {R}

= history of {lot}
what happened to {lot}
what has happened with {lot} so far
what was done with {lot}
what did we do with {lot}
what has been written about {lot}
who changed {lot}
who wrote down {lot}
who entered {lot}
who corrected {lot}
who has touched {lot}
who made the entry for {lot}
all entries about {lot}
every entry on {lot}
the log of {lot}
changes to {lot}
`;
