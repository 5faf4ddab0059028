/** Ways of asking for what `substitute` answers; bot/likeness/sayings.ts says how they are written. */
export const substitute = `
= what can replace {i} in {R}
i ran out of {i}, what else works in {R}
alternatives to {i} in {R}
{R} calls for {i} and i have none, what now
substitute for {i} when making {R}
what do i put in {R} in place of {i}
someone is allergic to {i}, what else could {R} have
which other ingredient does the job of {i} in {R}
stand-in for {i}, {R}
can't get {i} here, options for {R}
{i} is sold out, what may i use in {R}
what is similar to {i} for {R}
{i} has gone off, {R} needs something else
good swaps for {i} in {R}
instead of {i}, {R}, which ones suit
possible replacements for {i} inside {R}
my shop has no {i}, {R} must be made tonight, suggestions
{i} in {R} could be exchanged for what
don't like the smell of {i}, what would do in {R}
what comes closest to {i} in {R}
candidates to take over from {i} in {R}
best alternative for {i}, recipe {R}
which one would you recommend over {i} in {R}
anything i can use rather than {i} in {R}
{i} not available, {R}, tell me what else
equivalent of {i} for {R}
how else could i do {R} if there's no {i} in the house
what shall stand in for {i} in {R}
missing {i} for {R}, which thing instead

= what can replace {i}
i've run out of {i}, what else can i use
alternative to {i}
substitute for {i}
something that resembles {i}
what is close to {i}
other ingredient in place of {i}
{i} equivalent
no {i} in the shops, what then
good stand-in for {i}
what works as {i} does
which one behaves like {i}
options besides {i}
replacement {i}
what would you take rather than {i}
my student reacts to {i}, what else is there
{i} is too expensive, what similar thing exists
ideas for replacing {i}
can't buy {i} in my country, what instead
{i} is finished, what may be used
what do people use when they have no {i}
closest match to {i}
similar to {i}
swap for {i}
the next best thing after {i}
anything that does the same job as {i}
could something else do the work of {i}

= swap {i1} for {i2} in {R}
use {i2} instead of {i1} in {R}
replace {i1} by {i2} in {R}
{R} but {i2} rather than {i1}
take {i1} out of {R} and put {i2} in
how much {i2} do i need in {R} if i leave out {i1}
exchange {i1} with {i2} in {R}
i only have {i2}, {R} says {i1}
change {i1} to {i2} in {R}
can {i2} stand in for {i1} in {R}
{R}, {i1} out, {i2} in
does {R} work with {i2} where {i1} was
i'd rather have {i2} than {i1} in {R}
rework {R} with {i2} in place of {i1}
turn the {i1} in {R} into {i2}
what happens to {R} when {i1} becomes {i2}
substitute {i2} where {R} has {i1}
no {i1} left, {i2} is here, fix {R}
trade {i1} against {i2} in {R}
rebalance {R} for {i2} replacing {i1}
would {i2} do as well as {i1} in {R}
switch {i1} over to {i2}, {R}
drop {i1}, add {i2}, keep {R} as firm
we bought {i2} by mistake, need it to act as {i1} in {R}
{i2} to be used for {i1} in {R}, new percentages
is it possible to make {R} from {i2} and not {i1}
put {i2} where {i1} is in {R}
give me {R} having {i2} as substitute of {i1}

= swap half the {i1} for {i2} in {R}
half {i1} half {i2} in {R}
{R} with one half of the {i1} as {i2}
i want to exchange only half of the {i1} with {i2} in {R}
take out half the {i1} from {R} and put {i2}
share it equally between {i1} and {i2} in {R}
keep half the {i1}, the other half {i2}, {R}
split {i1} in {R}, half becomes {i2}
{i1} is short by half, top up {R} using {i2}
{R}, {i1} halved, {i2} for the rest
half and half, {i1} with {i2}, in {R}
i have just half the {i1}, make up {R} with {i2}
partly {i2}, half of the {i1} in {R}
cut the {i1} of {R} by half in favour of {i2}
{i2} for one half of {i1}, {R}
go fifty-fifty {i1} {i2} in {R}
use up my {i2} as half of {i1} in {R}
{R} where {i2} replaces half of {i1}
mix {i1} and {i2} half each in {R}
substitute half {i1} by {i2} in {R}

= swap {%} of the {i1} for {i2} in {R}
replace {%} of {i1} by {i2} in {R}
{R} with {%} of the {i1} turned into {i2}
exchange {%} from the {i1} with {i2} in {R}
take {%} of the {i1} out of {R}, {i2} in there
{i2} for {%} of the {i1} in {R}
only {%} of {i1} should become {i2} in {R}
partial change in {R}, {%} of {i1} to {i2}
a {%} share of {i1} gives way to {i2} in {R}
i'm short of {%} of the {i1} for {R}, fill with {i2}
substitute {i2} into {R} for {%} of its {i1}
part swap {%} {i1} against {i2}, {R}
cut {i1} by {%} and use {i2}, {R}
let {i2} take the place of {%} of {i1} in {R}
try {R} with {i2} replacing {%} of {i1}
{%} less {i1} of what is in {R}, {i2} to make up
{R}: trade {%} of {i1} for {i2}
move {%} of the {i1} over to {i2} in {R}
can i switch {%} of {i1} to {i2} in {R}
blend {i2} in {R} as {%} of the {i1}
{R} having {%} of {i1} given over to {i2}

= swap {i1} for {i2} in {R} gram for gram
same weight of {i2} as {i1} in {R}
replace {i1} by {i2} one to one in {R}
{R}, equal grams of {i2} instead of {i1}
straight swap {i1} to {i2} in {R}, weight unchanged
put exactly as much {i2} as there was {i1} in {R}
{i2} for {i1} in {R}, same amount
don't rebalance, just {i2} in place of {i1} in {R}
identical weight, {i1} becomes {i2}, {R}
{R} with {i2} for {i1}, keep the number
like for like, {i1} out {i2} in, {R}
g for g {i2} instead of {i1} in {R}
what if i simply use as much {i2} as {i1} in {R}
direct replacement by weight, {i1} {i2}, {R}
leave the percentage, only change {i1} into {i2} in {R}
ounce for ounce, {i1} to {i2}, {R}
one-for-one {i1} to {i2} in {R}
use the {i1} quantity of {R} for {i2}
no adjusting, {i2} at the weight of {i1}, {R}
equal mass {i2} replacing {i1}, {R}

= swap {i1} for {i2} in {R} and make {tins}
{tins} of {R} with {i2} instead of {i1}
fill {tins} with {R}, {i2} in place of {i1}
weigh {R} for {tins} but {i2} rather than {i1}
{R}, {i1} replaced by {i2}, {tins}
i need {tins} of {R} made from {i2} not {i1}
out with {i1}, in with {i2}, {R}, {tins}
{tins}, {R}, use {i2} where it says {i1}
exchange {i1} against {i2} and scale {R} to {tins}
order of {tins}, {R}, substitute {i2} for {i1}
how do i weigh {tins} of {R} if {i2} takes over from {i1}
change {i1} to {i2} in {R}, then amounts for {tins}
grams for {tins} of {R} having {i2} as the stand-in for {i1}
no {i1} so {i2} goes in, {tins} of {R}
produce {tins} from {R} with {i1} switched to {i2}
{tins} of the {i2} version of {R}, {i1} out
{R} rebalanced from {i1} to {i2} for {tins}
put {i2} for {i1} in {R}, pour {tins}
make {tins}, {R}, {i1} swapped out for {i2}
the batch is {tins}, {R}, replacing {i1} by {i2}
want {tins} of {R} where {i1} turns to {i2}

= {R} without {i}
leave {i} out of {R}
drop the {i} from {R}
take {i} away in {R}
make {R} but no {i}
{R} minus {i}
{i}-free {R}
how do i do {R} if i may not use {i}
get rid of {i} in {R}
a version of {R} that has no {i}
allergic to {i}, adapt {R}
what happens to {R} when {i} is left out
remove {i}, rebalance {R}
i hate {i}, fix {R}
{R} excluding {i}
omit {i} in {R}
skip {i} in {R}
{R} for a person who can't have {i}
rework {R} so {i} isn't in it
can i make {R} with none of the {i}
{R} sans {i}
cut {i} from {R}
avoid {i}, recipe {R}
{R} should contain no {i} any more
my customer cannot stand {i}, do {R} for her
{R} lacking {i}
do away with {i} in {R}
keep {i} out of {R}
eliminate {i} from {R}

= {R} without {i1} and {i2}
leave both {i1} and {i2} out of {R}
{R} with neither {i1} nor {i2}
drop {i1} plus {i2} from {R}
no {i1}, no {i2}, {R}
{R} minus {i1} minus {i2}
take {i1} and {i2} away in {R}
i can't have {i1} or {i2}, adapt {R}
remove {i1} as well as {i2}, rebalance {R}
{R} free from {i1} and {i2}
skip {i1} and also {i2} in {R}
do {R} avoiding {i1} and {i2}
omit {i1}, {i2} in {R}
client reacts to {i1} and {i2}, rework {R}
a version of {R} that has no {i1} and no {i2}
cut {i1} and {i2} out of {R}
{R} excluding {i1}, {i2}
get {i1} and {i2} out of {R}
neither {i1} nor {i2} may be in {R}
{R} lacking both {i1} and {i2}
make {R} but keep out {i1} and {i2}

= make {R} vegan
{R} for vegans
plant-based {R}
no animal products in {R}
turn {R} into something vegan
{R} without anything from animals
animal-free version of {R}
veganise {R}
vegan version of {R}
can {R} be done vegan
my niece is vegan, adapt {R} for her
{R} all from plants
cruelty-free plant only {R}
how would {R} look as vegan
rework {R} so vegans can use it
only plant ingredients in {R}
i want to sell {R} at the vegan fair, change it
strictly vegetable {R}
replace whatever is animal in {R}
{R} suitable for a vegan customer
vegan {R} what do i change
take the animal stuff out of {R}
pure vegetarian {R}, nothing from animals
a vegan take on {R}
convert {R} to vegan
{R} in a vegan edition
nothing animal derived in {R}

= nut-free {R}
{R} without nuts
no nut oils in {R}
make {R} safe from nuts
take all nuts out of {R}
{R} for a school with a nut ban
nutless {R}
version of {R} that has no nuts
replace the nut oil in {R}
my boy can't have tree nuts, adapt {R}
avoid nuts in {R}
{R} nuts excluded
rework {R} for nut allergies
can {R} be done without nuts
tree nut free {R}
get rid of everything nutty in {R}
{R} containing no nuts
swap out nuts from {R}

= palm-free {R}
{R} without palm oil
no palm in {R}
take palm out of {R}
make {R} free from palm
rainforest friendly {R}, nothing from palm
{R} for people who boycott palm
replace whatever comes from palm in {R}
palm oil excluded {R}
orangutan safe {R}, no palm
version of {R} lacking palm
can {R} be made without palm
avoid palm derivatives in {R}
{R} containing zero palm
rework {R} so there is no palm
get the palm out of {R}
customers refuse palm, adapt {R}
{R} sans palm
palmless {R}
leave palm fat out of {R}
is there a palm free way to do {R}

= coconut-free {R}
{R} without coconut
no coconut in {R}
take coconut out of {R}
{R} for a coconut allergy
make {R} free from coconut
customer reacts to coconut, {R}
coconut excluded from {R}
version of {R} lacking coconut
replace the coconut stuff in {R}
avoid anything coconut in {R}
can {R} be done without coconut
{R} containing no coconut
rework {R} so there's no coconut
leave coconut out, {R}
{R} sans coconut
get rid of the coconut in {R}
my sister cannot tolerate coconut, adapt {R}
nothing from coconuts in {R}
{R} with coconut removed
coconut allergy version {R}

= unscented {R}
{R} without any smell
fragrance-free {R}
no scent in {R}
leave out the essential oils in {R}
take the aroma away from {R}
{R} plain, no perfume
scentless {R}
{R} for someone sensitive to perfume
drop the fragrance from {R}
odourless {R}
make {R} neutral smelling
baby version of {R}, no essential oil
{R} with no aroma added
without perfume {R}
skip the scent in {R}
remove essential oils, {R}
naked {R}, nothing fragrant
migraine sufferer wants {R} without smell
no flavour no scent {R}
perfume free {R}
{R} that doesn't smell of anything
omit the scented part of {R}

= bee-free {R}
{R} without anything from bees
no bee products in {R}
bee allergy version of {R}
make {R} free of hive products
{R} for someone allergic to propolis
take out everything the bees made in {R}
leave the bees alone, {R}
hive-free {R}
{R} nothing from the hive
replace bee stuff in {R}
avoid bee ingredients in {R}
{R} excluding bee products
propolis allergic customer, {R}
rework {R} so no bees are involved
can {R} be done without bees
beeless {R}
bee product free {R}
{R} with the bee things removed

= a cheaper {R}
make {R} cost less
{R} on a budget
bring the price of {R} down
low-cost version of {R}
{R} is too dear, economise
how can i save money on {R}
{R} with less expensive ingredients
reduce what {R} costs
{R} but affordable
cut the ingredient bill of {R}
swap pricey stuff in {R}
thrifty {R}
bargain version {R}
{R} more economical
can {R} be made for less
lower the cost in {R}
find savings for {R}
{R} inexpensive variant
i can't afford {R} like this, trim it
where could {R} be made less costly

= {R} with only what is in stock
make {R} out of what we have
{R} from my cupboard
use what's on the shelf for {R}
{R} with whatever is left in the stockroom
no shopping, adapt {R} to our stock
adapt {R} to the ingredients at hand
{R} using only things we own
can't go to the shop, do {R} with what's here
only from our supplies, {R}
{R} limited to our inventory
replace what's missing in {R} from the shelf
rework {R} to what's in the house
fit {R} to the stock
without buying anything, {R}
{R} from existing stocks
what's in the store must do for {R}
{R} made of what is lying around
work {R} out from our stock only
change {R} so nothing has to be ordered

= cheapest instead of {i} in {R}
least expensive replacement for {i} in {R}
{i} is dear, what is the cheapest thing for {R}
lowest priced alternative to {i} in {R}
save money on the {i} in {R}, what is cheapest
cheap stand-in for {i}, {R}
what costs least in place of {i} in {R}
budget option to replace {i} in {R}
{R}, rank swaps for {i} by price
which substitute of {i} in {R} is the most economical
{i} costs a fortune, cheaper choice for {R}
bargain alternative {i} {R}
price-wise best exchange for {i} in {R}
more affordable than {i} for {R}
low-cost swap of {i} in {R}
by price, what could take over from {i} in {R}
who is cheapest to stand in for {i} in {R}
inexpensive option instead of {i} in {R}
{i} got pricey, for {R} find something cheap
thriftiest replacement of {i}, {R}
cut cost, {R}, {i} replaced by the cheapest

= what can replace {i}, vegan
vegan alternative to {i}
plant-based substitute for {i}
what do vegans use in place of {i}
animal-free replacement {i}
{i} but plant, what is there
something vegetable that works like {i}
vegan stand-in for {i}
plant option besides {i}
no animal stuff, what may i take for {i}
which vegan ingredient comes close to {i}
{i} is not for vegans, what then
vegetable substitute of {i}
for my vegan customers, other than {i}
vegan equivalent of {i}
replacing {i} with something from plants
plants only, what does the job of {i}
a vegan swap for {i}
ideas instead of {i} that are vegan
non-animal thing similar to {i}
what from the plant world substitutes {i}

= {R} without {i}, {tins}
{tins} of {R} but no {i}
leave {i} out of {R} and fill {tins}
weigh {R} for {tins}, {i} omitted
{R} minus {i}, make {tins}
drop {i} from {R}, amounts for {tins}
{i}-free {R} in {tins}
i need {tins} of {R} for a customer who can't have {i}
no {i}, {R}, {tins}
grams for {tins} of {R}, skip the {i}
take {i} away and scale {R} to {tins}
produce {tins} of {R} excluding {i}
{tins}, {R}, avoid {i}
order for {tins} of {R} lacking {i}
remove {i} in {R}, then work out {tins}
do {R} with none of the {i}, {tins}
{tins} from {R} once {i} is gone
fill {tins} with {R} that has no {i}
quantities of {R} sans {i} for {tins}
{R} for {tins}, allergic to {i}
pour {tins} of {R}, keep {i} out

= vegan {R} for {tins}
{tins} of {R}, plant-based
fill {tins} with a vegan {R}
make {R} vegan and scale to {tins}
{R} without animal products, {tins}
{tins} for the vegan fair, {R}
weights for {tins} of animal-free {R}
vegan version of {R}, amounts for {tins}
plant only {R} in {tins}
{tins} of {R} for vegan customers
i need {tins}, {R}, all plants
veganise {R} and pour {tins}
{tins} from {R}, nothing animal
no animal stuff in {R}, {tins} wanted
turn {R} vegan, grams for {tins}
{R} as vegan batch of {tins}
order, vegan, {R}, {tins}
work out {tins} of the vegan {R}
vegans want {tins} of {R}
{R} converted to plants, {tins}
produce {tins} of {R} suitable for vegans

= and with {i} instead
@ substitute
what about {i} instead
try {i} rather
or {i}
use {i} in its place
and if i take {i}
how would {i} do
would {i} work better
now with {i}
let me see {i} as the stand-in
then do it with {i}
no, {i} as replacement
could it be {i}
i only found {i}, how is that
make that {i}
the same swap using {i}
{i} rather than that one
or should i go for {i}
suppose i put {i} there
how about {i} for it
replace it by {i} then

= and without {i}
@ substitute
also leave out {i}
no {i} either
drop {i} as well
minus {i} too
take {i} out also
skip the {i} now
the same but no {i}
and {i} removed
what if there is no {i}
oh and avoid {i}
{i} is not allowed
i can't use {i}
get rid of the {i} too
keep {i} out of it
neither {i}
exclude {i} from that
and {i}-free
lose the {i}
someone is allergic to {i}, change it

= and vegan
@ recipe
make it vegan
plant-based then
can that be vegan
without animal stuff
now for vegans
the vegan version of it
veganise that
is there a vegan way to do it
animal-free
all plants instead
turn it vegan
a vegan one
for my vegan friend
but no animal products
change it to be vegan
same but plant only
and as vegan
vegan edition of this
nothing from animals in it

= only half of it
@ substitute
keep some, exchange half
one half stays as it was
a half swap
make the swap halfway
replace just half
half will be enough to swap
exchange only the half
keep half the old one
fifty-fifty instead
not all, half
leave half in
half and half
swap one half
partly, the half
half of that only
split it half each
just half replaced
do half the exchange
i'd keep one half
half the swap

= gram for gram
@ substitute
same number of grams
at equal weight
unchanged weight
plain exchange by weight
same weight instead
one to one
don't rebalance it
straight swap by weight
equal grams
keep the amount unchanged
like for like
the identical weight
as much as there was before
simple exchange, same number
no adjusting
one for one
leave the grams as they were
use the same quantity
direct by weight
weight for weight

= show the scores
@ substitute
what are those numbers
why that order
points for each
the ratings
how good is each match
how were they rated
how did you rank these
explain the ranking
why is the first one best
show the points
what are the marks made of
where does that score come from
details of the rating
break down the scores
how alike are they
show how you compared them
reasons for the ranking
more about the points
what counts in the score
scoring details
full rating table

= and instead of {i}
@ substitute
what could take the place of {i} there
and if {i} runs out
now alternatives for {i}
same for {i}, what replaces it
options for {i} as well
what else than {i} in it
substitutes of {i} too
and in place of {i}
how would i replace {i}
stand-ins for {i} then
the same question for {i}
ran out of {i} also
something for {i}
suggestions rather than {i}
other than {i}
how about replacing {i}
{i} is missing as well, what then

= and make {tins}
@ substitute
with that fill {tins}
then {tins} of the changed one
weigh that for {tins}
portion it into {tins}
now pour {tins} of that
scale the changed one to {tins}
weights of it for {tins}
{tins} from that version
fill {tins} with the new one
give grams for {tins}
i'll make {tins} of it
and {tins}
how much to weigh for {tins} then
{tins} of the swapped one
let's do {tins} with it
amounts in {tins}
turn that into {tins}
i want {tins} of this
produce {tins} of that
take it to {tins}
work it out to {tins}

= what can replace {i} in {R}, vegan
vegan alternatives to {i} in {R}
plant-based stand-in for {i} in {R}
what do vegans put in {R} in place of {i}
animal-free substitute of {i} for {R}
{R} needs something other than {i}, vegan
no animal stuff, what may take over from {i} in {R}
which vegan ingredient does the job of {i} in {R}
plant option for {i}, recipe {R}
for my vegan buyers, what replaces {i} in {R}
vegan swap suggestions, {i}, {R}
from plants only, what works as {i} in {R}
vegetable replacement of {i} in {R}
{i} isn't for vegans, what else in {R}
list vegan candidates for {i} in {R}
what vegan thing comes closest to {i} in {R}
instead of {i} in {R}, but vegan
non-animal options besides {i}, {R}
{i} out of {R}, vegan ideas
vegan equivalent of {i} for {R}
{R}, stand in for {i}, all plants

= what can replace {i} in {R}, nut-free
nut-free alternatives to {i} in {R}
stand-in for {i} in {R} that has no nuts
customer with a nut allergy, what else than {i} in {R}
substitute of {i} without nuts for {R}
{R} needs something other than {i}, no nuts
which non-nut ingredient does the job of {i} in {R}
not from nuts, what may take over from {i} in {R}
nut allergic child, options for {i} in {R}
nutless swap suggestions, {i}, {R}
safe from nuts, what works as {i} in {R}
{i} out of {R}, ideas minus nuts
list candidates for {i} in {R}, nuts excluded
what comes closest to {i} in {R} but isn't a nut
instead of {i} in {R}, avoiding nuts
options besides {i}, {R}, free from nuts
nut free equivalent of {i} for {R}
school bans nuts, replace {i} in {R} by what
no tree nuts, what could i take rather than {i} in {R}
{R}, stand in for {i}, never nuts
what nut-safe thing replaces {i} in {R}

= what can replace {i}, nut-free
nut-free alternative to {i}
substitute for {i} without nuts
what do nut allergy people use in place of {i}
{i} but not from nuts, what is there
something with no nuts that works like {i}
nutless stand-in for {i}
nut allergic customer, other than {i}
no nuts, what may i take for {i}
which non-nut ingredient comes close to {i}
nut free equivalent of {i}
safe from nuts and similar to {i}
swap for {i} avoiding nuts
ideas instead of {i}, nuts excluded
my boy can't have nuts, what does the job of {i}
replacing {i} with something free of nuts
nut-safe option besides {i}
{i} is out because of nuts, what then
tree nut free thing like {i}
what can stand in for {i} in a nut ban
another one than {i}, never a nut

= {R} to {g} without {i}
{g} of {R} but no {i}
leave {i} out of {R}, total {g}
weigh out {g} of {R}, {i} omitted
{R} minus {i}, make {g}
drop {i} from {R}, amounts for {g}
{i}-free {R}, batch of {g}
i need {g} of {R} for someone who can't have {i}
no {i}, {R}, {g} altogether
skip the {i}, {g} of {R}
take {i} away and bring {R} to {g}
produce {g} of {R} excluding {i}
{g}, {R}, avoid {i}
{R} lacking {i}, {g} in the pot
remove {i} in {R}, then work out {g}
do {g} of {R} with none of the {i}
{g} from {R} once {i} is gone
quantities of {R} sans {i} coming to {g}
allergic to {i}, {g} of {R}
{g} lot of {R}, keep {i} out
eliminate {i}, {R} at {g}

= and nut-free
@ recipe
make it without nuts
no nuts
for a nut allergy
take the nuts out
nutless then
can that be nut free
nuts excluded
for someone allergic to nuts
but no nut oils in it
avoid nuts
safe from nuts
and minus the nuts
a version lacking nuts
the school bans nuts
my boy can't have nuts
same but no nuts
drop all nuts
free of tree nuts
nothing from nuts in it

= and unscented
@ recipe
make it without scent
no smell
fragrance-free then
leave the essential oil out
drop the perfume
can that be scentless
plain, no aroma
for a sensitive nose
but no fragrance in it
skip the scent
odourless
the same not perfumed
without the smell
nothing that smells
take the aroma away
perfume-free
unperfumed
no essential oils
neutral smelling
`;
