/** Ways of asking for what `batch` answers; bot/likeness/sayings.ts says how they are written. */
export const batch = `
= list batches
what have we poured so far
what did we pour so far
show me every batch
show all the batches please
i want to see our batches
which batches are there
which batches do we have
which batches have we made
what batches exist
what did we make so far
what did we make this season
all our pours
overview of our pours
batches so far
a list of everything we poured
list of what we poured
tell me all batches we made
give me the batch overview
batch overview please
can i see all the pours in the book
what has been poured up to now
everything we have poured

= list batches of {R}
which batches of {R} are there
which batches of {R} have we made
which batches of {R} do we have
show every batch of {R}
all pours of {R}
how often did we make {R}
how often have we poured {R}
how many times did we pour {R}
when did we pour {R}
when did we make {R}
when was {R} poured
{R} batches
{R} batches so far
what batches do we have of the {R}
list everything poured of {R}

= batch {lot}
tell me about {lot}
tell me everything on {lot}
what do we know about {lot}
what is {lot}
what was {lot}
show {lot}
details of {lot} please
look up {lot}
pull up {lot}
pull up the page of {lot}
all you know of {lot}
everything you have on {lot}
let me see {lot}
information on {lot}
give me the record of {lot}
open the record for {lot}
how many tins of {lot} are left
how many jars of {lot} are left
how many pots of {lot} are left
how many sticks of {lot} are left
how many tubes of {lot} are left
how many tins remain of {lot}
how many are left from {lot}
how many tins of {lot} are still here
how many jars of {lot} are still in the house
are there still tins of {lot}
do we still have tins of {lot}
is there any {lot} left to sell
when was {lot} made
when did we make {lot}
what day was {lot} made
which recipe is {lot}
what went wrong with {lot}
what notes are there on {lot}
what did we note about {lot}
any notes on {lot}
read me the notes for {lot}

= list open batches
how many of each are left
how many of each are still here
how many do we have left of each
what is left of each batch
which batches still have tins
which batches have tins left
which batches still have something left
which batches are not empty
what balm do we still have in tins
what do we have ready to sell
what can i take to the market
which tins are left over
what finished tins are left
how many tins are left in all
how many tins do we have altogether
finished goods in the house
which batches are not sold out
what is there left to sell

= how many tins of {R} are left
how many tins of {R} do we still have
how many {R} are left
how many {R} tins remain
how many jars of {R} do we still have
have we any tins of {R} left
do we still have {R} in tins
is there any {R} left to sell
are there any {R} tins left
do i have {R} left for the stall
how much {R} is left
tins of {R} left
`;
