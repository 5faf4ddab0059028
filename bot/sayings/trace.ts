/** Ways of asking for what `trace` answers; bot/likeness/sayings.ts says how they are written. */
export const trace = `
= trace {lot}
where did {lot} go
where has {lot} gone
where has {lot} gone so far
where is {lot} now
where are the tins of {lot}
where are the jars of {lot}
where did the tins of {lot} end up
where did everything from {lot} end up
where did all of {lot} go
where all of {lot} has gone
which batches have {lot} in them
which batches contain {lot}
which batches are made with {lot}
which batches used {lot}
which batch used {lot}
which balms used {lot}
what did we use {lot} for
what was {lot} used for
what was {lot} used in
what was {lot} put into
what was made with {lot}
what was made from {lot}
what is {lot} in
what contains {lot}
what did {lot} go into
in which tins is {lot}
in which batches is {lot}
in what products did {lot} end up
is {lot} in any of our balms
has {lot} been used anywhere
was {lot} used in anything
who has {lot}
who got {lot}
who got tins of {lot}
who got some of {lot}
who has tins from {lot}
who has jars from {lot}
who received {lot}
who was given {lot}
who holds {lot} now
to whom did {lot} go
whom did we give {lot} to
whom did {lot} go to
tell me the way of {lot}
follow {lot}
follow {lot} to its end
track down {lot}
the path of {lot} please
which wax is in {lot}
what went into {lot}
which lots went into {lot}
what is {lot} made of
state the lots used in {lot}
which oil is in {lot}
what did we put in {lot}
from what lots comes {lot}
where does {lot} come from
origin of {lot}
how many of {lot} have we given away

= recall {lot}
{lot} is bad, we must call it back
{lot} was bad, who do we warn
we must warn everybody who has {lot}
we must get {lot} back
i have to call back {lot}
we need all of {lot} back
need to pull {lot}
pull {lot} from the shops
the supplier is calling back {lot}
the supplier recalls {lot}, what now
the supplier has recalled {lot}
supplier says {lot} is contaminated
who do we have to warn about {lot}
who must be told about {lot}
whom must i inform about {lot}
recall sheet for {lot}
a recall list for {lot}
print the recall for {lot}
make a recall of {lot}
start a recall of {lot}
what if {lot} must come back
withdraw {lot}
there is something wrong with {lot}, who has it
{lot} turned out to be bad, who should know

= what is out of the house
what has left the house so far
what has left the kitchen up to now
what tins have gone out so far
how many tins are out there
how many tins are out there altogether
how many tins have we given away
how many tins have we sold
how many jars have we sold altogether
how many have we given away in total
where are all our tins
where did all our tins go
who has our tins
who has tins from us
who has got our balms
who has received something from us
who did we give tins to
who did we sell to
everything that went out
list everything that has gone out
list all the places our tins went to
which shops have our tins
which places have our balm
all tins that are with other people
tins with other people
what have we given out up to now
`;
