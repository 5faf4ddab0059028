/** Ways of asking for what `ingredient` answers; bot/likeness/sayings.ts says how they are written. */
export const ingredient = `
= what is {i}
tell me about {i}
never heard of {i}
what does {i} do
info on {i}
explain {i}
describe {i}
what kind of stuff is {i}
facts about {i}
{i}, what's that
data sheet for {i}
everything you know on {i}
who is {i} anyway, a wax or an oil
i want to learn about {i}
properties of {i}
what sort of ingredient is {i}
{i} profile
characteristics of {i}
give me the lowdown on {i}
is {i} an oil, a butter or something else
background of {i}
look up {i}
teach me {i}
a student asked me what {i} might be
what am i looking at when the recipe says {i}
details of {i}
introduce {i} to beginners
{i} in a nutshell
more about {i}
what is meant by {i}

= density of {i}
how heavy is {i}
what does a ml of {i} weigh
specific gravity of {i}
{i} grams per millilitre
g/ml for {i}
weight by volume of {i}
is {i} lighter than water
how dense is {i}
{i} density
how many grams in one ml of {i}
does {i} float on water
mass per ml, {i}
litre weight of {i}
what is the volume weight of {i}
relative density {i}
how much does a millilitre {i} weigh
i need the density figure of {i}
{i} g per ml
one cubic centimetre of {i} weighs
is {i} heavy for its size

= INCI name of {i}
what do i write on the label for {i}
latin name of {i}
official cosmetic name for {i}
how is {i} called in the ingredients list
{i} inci
label name of {i}
international nomenclature for {i}
what's {i} on a packet
botanical name for {i}
how must {i} be declared
proper name of {i} on packaging
{i} in inci language
scientific name {i}
declare {i} as
what is the legal name of {i}
how do i list {i} on the tin
ingredient list wording for {i}
{i} under which name on the label
translate {i} into inci
cosmetic labelling term, {i}
name to print for {i}

= is {i} vegan
does {i} come from an animal
can vegans use {i}
is {i} plant-based
{i}, animal or plant
{i} ok for vegans
is there anything animal in {i}
may i call {i} vegan
{i} suitable for vegans
is {i} of animal origin
my vegan friend asks about {i}
{i} vegan or not
are animals involved in {i}
is {i} vegetable
would a vegan accept {i}
does {i} count as vegan
{i} is it from plants
where is {i} from, beast or plant
can i put {i} in a vegan product
vegan status {i}
is {i} animal derived
do vegans avoid {i}

= shelf life of {i}
how long does {i} keep
when does {i} go rancid
{i} lasts how many months
how long can i store {i}
keeping time of {i}
how soon does {i} spoil
is {i} long lasting or does it turn quickly
{i} storage life
how many months is {i} good
durability of {i}
will {i} stay fresh a year
how quickly does {i} oxidise
how long before {i} smells off
typical life of {i} in the bottle
can {i} be kept for years
usable period of {i}
how stable is {i} in storage
{i} stays good for how long
how old may {i} get
up to when is {i} normally usable
{i} rancidity time
unopened {i} keeps how long

= iodine value of {i}
iodine number {i}
how unsaturated is {i}
{i} iodine
iv of {i}
what is the iodine figure for {i}
is {i} a drying oil by iodine
degree of unsaturation, {i}
{i} iodine index
iodine test value of {i}
iodine index of {i}
i need {i}'s iodine number
how high is the iodine of {i}
number of iodine for {i}
what iodine has {i}
unsaturation of {i}
iodine data for {i}
iodine absorption of {i}
tell the iodine value for {i}

= is {i} an allergen
does {i} cause allergies
are people allergic to {i}
{i} allergy risk
is {i} allergenic
{i} and allergies
does {i} count as an allergen
any allergy with {i}
is {i} known to trigger allergy
allergen status {i}
should i warn allergic customers about {i}
is {i} risky for allergy sufferers
allergic to {i}, is that possible
can {i} give an allergic reaction
{i} allergen info
{i} a problem for allergic people
has {i} allergen warnings
is {i} hypoallergenic
allergies and {i}, what is known
tell me whether {i} is an allergen

= what is {i} used for
why do people put {i} in a balm
purpose of {i}
how much {i} do i use
what is {i} good for
usual percentage of {i}
role of {i}
what does one do with {i}
typical dose of {i}
{i} usage rate
how much {i} is normal
job of {i} in a balm
which share of {i} is usual
function of {i}
recommended amount of {i}
why would i add {i}
uses of {i}
what use has {i}
in what proportion is {i} normally taken
common level of {i}
what's the point of {i}
standard quantity of {i} in general
when would i reach for {i}

= is it vegan
@ ingredient
does it have animal parts
for vegans okay
is it a plant thing
did an animal make it
vegan status
does it come from an animal
can vegans use it
plant or animal
ok for vegans
anything animal in it
vegan or not
from plants
is that one of animal origin
would a vegan take it
does it count as vegan
suitable for a vegan
are animals involved
may i call it vegan
is it vegetable

= and {i}
@ ingredient
what about {i}
now {i}
and what is {i} then
same for {i}
{i} too
next {i}
also {i}
how about {i}
then {i}
likewise {i}
and tell me {i}
no, {i}
sorry, i meant {i}
the same on {i}
{i} as well
one more, {i}
repeat that for {i}
i'd also like {i}

= what is its density
@ ingredient
specific weight
heavier or lighter than water
what about density
how heavy per spoon
how heavy is it
and the density
what does a ml of it weigh
its specific gravity
grams per ml
is it lighter than water
how dense is that
weight per millilitre
does it float
its g/ml
how much does one ml weigh
how dense
mass by volume
density of that one
and its weight per volume
litre weight

= how long does it keep
@ ingredient
how long is it usable
spoils after how long
does it keep well
how soon rancid
its shelf life
when does it go rancid
how many months is it good
does it spoil quickly
can i store it for long
how fast does it go off
keeping time
does it last
is it long lasting
how soon does it turn
how old may it get
and storage life
will it stay fresh
how durable is it
does that one oxidise fast
can it be kept for years

= what is its INCI name
@ ingredient
what should the ingredient list say
official label wording
international name for that
how do i declare it
translate it into label language
and on the label
how do i write it on the label
latin name
its official name
inci
what is it called in the ingredients list
how must it be declared
scientific name of that
the proper cosmetic name
label name
what goes on the packet for it
name to print on the tin
botanical name
how is that listed
its inci

= what is its melting point
@ ingredient
when is it molten
how much heat for it to run
liquid from which degree
soft at what heat
what degree melts it
when does that go liquid
how hot to melt it
its melt temp
where does it melt
at which degree is it liquid
how warm before it runs
melting range
melts at
how many celsius to liquefy it
does it need high heat
and melting
temperature where it becomes fluid
is it solid at room temperature
mp
how easily does it melt

= is it an allergen
@ ingredient
an allergy risk
could my customers react
allergic people and this
does it trigger reactions
must allergy sufferers avoid it
does it cause allergies
can someone react to it
any allergy with that
is it allergenic
allergic to it, possible
risky for allergy sufferers
and allergies
does that count as an allergen
should i warn allergic customers
hypoallergenic or not
can it trigger an allergy
its allergen status
are people allergic to that
allergen info
a problem for allergic people
`;
