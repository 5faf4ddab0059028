/** Ways of asking for what `design` answers; bot/likeness/sayings.ts says how they are written. */
export const design = `
= design a stick that survives {t}
invent a lip balm tube for {t}
i want a stick that won't melt at {t}
come up with a stick good up to {t}
lip stick recipe for a place with {t}
create a chapstick that stays firm in {t}
a tube balm that holds at {t}
what would make a stick stand {t}
find me a stick formula for {t} days
propose a lip balm that can take {t}
stick for {t} weather
develop a stick resisting {t}
suggest a twist-up that is solid at {t}
we have {t} here, dream up a stick
heat-proof stick, {t}
formulate a stick lasting through {t}
new stick recipe, must endure {t}
need a recipe idea, stick, stays up at {t}
stick not going soft until {t}
make up a lip balm for {t} heat
give me a stick which keeps shape at {t}
what recipe gives a stick fit for {t}
tube balm, hottest day {t}
build me a stick for {t}

= design a stick for hot weather
lip balm for summer, invent one
a stick that doesn't melt in the sun
create a heat-proof chapstick
recipe idea for a tropical climate stick
come up with a beach lip balm
what stick recipe suits hot countries
suggest a lip balm for a heatwave
formula for a stick for holidays in the sun
hot day stick, make one up
i sell at summer markets, propose a stick
lip stick that survives a warm pocket, new recipe
think up a summer stick
new stick for the desert
develop a tube balm for the hot season
a stick for indian summers
stick which stays hard in the heat
find me a summer-proof lip balm formula
build a stick that copes with hot days
formulate something in a tube against the heat

= design a vegan stick
invent a plant-based lip balm tube
vegan lip balm recipe, make one up
come up with a stick without animal products
create a vegan chapstick
i want a lip stick vegans can use
propose a plant only stick
new vegan stick formula
formulate an animal-free lip balm
suggest a vegan tube balm
a stick made of plants only
what would a vegan lip balm look like
vegan twist-up, give me an idea
recipe idea stick vegan
develop a vegan stick for my shop
lip balm for vegans, from scratch
dream up a stick with no animal stuff
build a vegan lip balm
think of a vegan stick
all-plant stick, compose one
find me a vegan chapstick recipe

= design a vegan stick that survives {t}
invent a plant-based lip balm for {t}
vegan chapstick that stays firm at {t}
come up with an animal-free stick good to {t}
i want a vegan tube which holds at {t}
vegans in a {t} climate, make up a stick
create a plant only stick for {t} days
vegan and heat-proof to {t}, a stick
propose a vegan lip balm that can take {t}
new vegan stick, must endure {t}
formulate a vegan stick for {t} heat
suggest a vegan stick not melting at {t}
plant stick, hottest day {t}
vegan tube balm resisting {t}
find me a vegan recipe, stick, {t}
stick vegan {t}
lip balm with no animal products that lasts in {t}
develop a vegan stick standing {t}
what vegan stick stays solid at {t}
build an all-plant stick for {t}
vegan twist-up for {t} weather

= design a tin balm that survives {t}
invent a salve for a tin that holds at {t}
i want a pot balm that won't run at {t}
create a balm in tins for {t}
come up with a jar balm good up to {t}
salve recipe, stays put at {t}, in a tin
tin balm for {t} weather
a potted balm that can take {t}
propose a tin salve resisting {t}
new recipe for tins, must stand {t}
formulate a tinned balm for {t} days
suggest something for tins that is not liquid at {t}
find a tin formula for {t} heat
what goes in a tin and lasts at {t}
develop a balm for pots, hottest day {t}
dream up a tin balm which keeps at {t}
balm to scoop from a tin, ok at {t}
build a salve in a tin for {t}
heat-stable tin balm {t}
tins on a {t} stall, compose a balm

= design a stick with {i}
invent a lip balm using {i}
i'd love a stick made with {i}
what lip balm can i make from {i}
come up with a tube recipe that has {i}
create a chapstick containing {i}
new stick around {i}
i got given {i}, dream up a stick
propose a stick based on {i}
{i} lip balm, from scratch
a stick which features {i}
find me a lip balm idea including {i}
formulate a stick on {i}
suggest a stick where {i} goes in
stick recipe idea, {i} in it
think up a tube balm having {i}
build a stick out of {i}
what stick would suit {i}
lip stick that puts {i} to use
develop an {i} stick
make up a new stick with {i} inside

= design a stick without {i}
i want a stick but no {i} in it
stick recipe avoiding {i}
chapstick free from {i}
new stick lacking {i}
think of a lip balm, {i} excluded
someone hates {i}, make up a stick for her
leave {i} out of a brand-new lip balm
stick minus {i}, compose one
lip balm not needing {i}
can't stand {i}, invent a tube balm
{i}-free lip balm, make one up
a stick of anything except {i}
my client is allergic to {i}, work out a lip balm stick
{i} shouldn't be in the stick
a new stick with everything but {i}
omit {i} and give me a tube recipe
{i} is not allowed in this stick
lip stick sans {i}
never {i}, otherwise free choice, a stick
skip {i}, tube formula wanted
other things than {i} for making a stick
rule out {i}, chapstick idea
don't use {i}, stick

= design a balm with {i}
invent a salve using {i}
what balm can i make from {i}
dream up a tin balm that has {i}
i have {i} and want ideas for a balm
create a new salve containing {i}
come up with a pot balm around {i}
{i} salve, from scratch
suggest a balm that uses {i}
balm recipe idea, {i} in it
propose a salve based on {i}
what salve would suit {i}
something for tins with {i} inside
formulate an ointment featuring {i}
a new balm putting {i} to use
think up a balm including {i}
build me a salve out of {i}
any balm ideas for {i}
got a bag of {i}, which balm shall i create
compose a balm having {i}
develop an {i} balm for the tin

= design a balm without {i}
i want a new balm but no {i} in it
tin balm idea avoiding {i}
salve free from {i}, invent it
pot balm lacking {i}
think of a salve, {i} excluded
someone reacts to {i}, make up a balm for him
leave {i} out of a brand-new salve
salve minus {i}, any suggestion
ointment not needing {i}
{i}-free salve, make one up
a balm of anything except {i}
our class bans {i}, compose a balm
{i} shouldn't be in the salve
a new salve with everything but {i}
omit {i} and give me a fresh balm recipe
{i} is not allowed in this new balm
hand salve sans {i}
never {i}, otherwise free choice, a balm
skip {i}, balm formula wanted
other things than {i} for making a salve
rule out {i}, balm idea
don't use {i}, create a balm

= design a balm with {i1} and {i2}
invent a salve using {i1} and {i2}
what balm can i make from {i1} plus {i2}
i have {i1} and {i2}, dream up a balm
create a new salve containing both {i1} and {i2}
come up with a balm around {i1}, {i2}
salve from scratch with {i1} as well as {i2}
suggest a balm that uses {i1} together with {i2}
propose something with {i1} and {i2} in it
balm idea, {i1} and {i2} inside
formulate a balm on {i1} and {i2}
what could {i1} and {i2} become as a salve
think up a balm including {i1} along with {i2}
a new pot balm that combines {i1} and {i2}
build a salve out of {i1}, {i2}
got {i1}, got {i2}, which balm shall i create
compose a balm having {i1} and {i2}
marry {i1} and {i2} in a new balm
find a recipe for {i1} with {i2}
develop a balm based on {i1} and {i2}
put {i1} and {i2} to use in a new balm

= design a stick with {i1} without {i2}
invent a lip balm using {i1} but no {i2}
stick from scratch, {i1} yes, {i2} no
come up with a tube that has {i1} and leaves out {i2}
create a chapstick containing {i1}, free from {i2}
i want {i1} in my stick and never {i2}
dream up a stick on {i1}, avoid {i2}
propose a lip balm featuring {i1}, {i2} excluded
suggest a stick, {i1} in, {i2} out
new stick around {i1} lacking {i2}
formulate a stick that uses {i1} and not {i2}
{i1} lip balm minus {i2}, make one up
she likes {i1}, reacts to {i2}, think up a stick
find a stick idea including {i1}, {i2} not allowed
build me a stick out of {i1} that doesn't contain {i2}
compose a tube balm having {i1} sans {i2}
stick idea: must {i1}, must not {i2}
a {i1} stick where {i2} isn't used
develop a stick with {i1}, skip {i2}
something in a tube from {i1} but {i2}-free

= design a balm with {%} {i}
invent a salve that has {%} {i}
new balm containing {%} of {i}
come up with a balm at {%} {i}
create a tin balm with a {i} share of {%}
i want {%} {i} in a balm, the rest is up to you
dream up a balm, {i} fixed at {%}
propose a salve having {i} {%}
{i} must be {%}, think up a balm
formulate around {%} {i}
balm from scratch, {%} being {i}
suggest a recipe in which {i} makes up {%}
build a balm on {%} {i}
find a balm idea where {%} is {i}
what balm could i do at {i} {%}
compose a salve, {i} to be {%}
develop a balm including {%} {i}
pot balm with as much as {%} {i}
fill in the rest around {%} {i} for a balm
something creamy at {%} {i}, new recipe

= design a tin balm with {i} that survives {t}
invent a salve using {i} that holds at {t}
new balm around {i}, must stand {t}
come up with something on {i} that won't melt at {t}
create a balm containing {i} for {t} days
i want {i} in a balm good up to {t}
dream up an {i} balm for {t} weather
propose a balm, {i} in it, firm at {t}
{i} salve that can take {t}, make one up
suggest a balm with {i} resisting {t}
formulate with {i} for {t} heat
find a recipe, {i}, not liquid at {t}
what balm has {i} and lasts in {t}
think up a balm featuring {i}, hottest day {t}
build a balm out of {i} that stays put at {t}
compose a heat-proof {i} balm, {t}
put {i} in a new balm which endures {t}
develop something with {i} stable at {t}
balm idea, {i}, ok at {t}
from scratch, {i} inside and solid at {t}

= design a nut-free stick
invent a lip balm without nuts
create a chapstick for people with nut allergy
come up with a stick that has no nut oils
lip balm for a school that bans nuts, make one up
new stick, no nuts
propose a stick safe for nut allergic kids
suggest a lip balm avoiding nuts
formulate a stick free from nuts
dream up a tube balm, nuts excluded
find me a nutless stick recipe
stick idea, nothing from nuts
i want a new stick my nut allergic son can use
think up a lip balm with no tree nuts
build a stick that doesn't contain nuts
compose a nut free tube
develop a stick without any nut in it
what stick could i create for a nut allergy
lip stick from scratch, leave out nuts
a new chapstick minus nuts

= design an unscented stick
invent a lip balm with no smell
create a fragrance-free chapstick
come up with a stick without perfume
new stick, no scent at all
propose a plain stick that smells of nothing
suggest a lip balm without essential oils
formulate a scentless stick
dream up an odourless tube balm
find me a neutral stick recipe, no aroma
stick idea for people who hate perfume
think up a lip balm with no fragrance
build a stick, essential oils left out
compose a perfume-free stick
i want a new stick without any scent
develop a stick free from aroma
what stick can i create for scent sensitive clients
lip stick from scratch, unperfumed
a new chapstick lacking smell
naked lip balm, nothing fragrant, make one up

= design a palm-free stick
invent a lip balm without palm oil
create a chapstick that contains no palm
come up with a stick avoiding palm
new stick, no palm
propose a rainforest friendly stick, palm excluded
suggest a lip balm free from palm
formulate a stick without anything from palm
dream up a palmless tube balm
find me a stick recipe that needs no palm
stick idea, zero palm
think up a lip balm for palm boycotters
build a stick, palm left out
compose a stick sans palm
i want a new stick with no palm fat
develop a lip balm lacking palm
lip stick from scratch, skip palm
a new chapstick minus palm
what stick can i create without palm
orangutan safe lip balm, make one up

= design a cheap stick
invent a low-cost lip balm
create a budget chapstick
come up with an inexpensive stick
new stick that costs little
propose an affordable stick recipe
suggest a lip balm made from cheap ingredients
formulate the most economical stick
dream up a bargain tube balm
find me a stick recipe for little money
stick idea for a tight budget
think up a lip balm with a low price
build a stick, as cheap as possible
compose a thrifty stick
what is the cheapest stick i could create
i want a new stick that saves money
develop a low price lip balm for the school fair
lip stick from scratch, inexpensive
give-away stick, cheap to make, invent one

= show me the second
@ design
the second one
number two
open the second suggestion
let me see option two
more about the second
what's in the second recipe
i like the middle one, show it
just number two
second proposal in detail
details of number two
tell me about the second idea
read out the second
that second
display choice two
take a look at the second
lines of the second
how is number two made up
give me the second in full

= and with {i}
@ design
put {i} in it
add {i}
it should have {i}
i'd like {i} in there
also {i} inside
include {i} too
could it contain {i}
use {i} as well
with some {i} now
must have {i}
plus {i}
and {i} in it
bring {i} into it
work {i} in
i forgot, {i} should be in
let there be {i}
throw in {i}
make them with {i}

= {tins} of the second
@ design
i choose the second, {tins} of it
second variant, fill {tins}
how much to weigh for {tins} of the second
the second looks good, {tins}
{tins} from suggestion two
portion the second into {tins}
scale the second one to {tins}
weigh out number two for {tins}
i take the second, {tins}
option two, {tins}
fill {tins} with the second
make {tins} from the middle one
{tins}, second recipe
that second one for {tins}
amounts of the second for {tins}
let's pour {tins} of number two
grams for {tins} using the second
i'll do {tins} of the second suggestion
second idea, batch of {tins}
go for the second, {tins}
work out the second to {tins}
produce {tins} following number two

= design a stick with {i} that survives {t}
invent a lip balm using {i} that holds at {t}
{i} chapstick for {t} days
a tube with {i} that can take {t}
come up with a stick on {i} good up to {t}
i want {i} in a stick which stays firm at {t}
create a twist-up containing {i}, not melting at {t}
stick, {i} inside, hottest day {t}
propose a lip balm featuring {i} for {t} heat
dream up an {i} stick for {t} weather
formulate a stick, {i}, must stand {t}
suggest a heat-proof stick that has {i}, {t}
new lip stick around {i} resisting {t}
find a tube recipe including {i} which lasts in {t}
build a stick out of {i} that endures {t}
think up a lip balm having {i} and solid at {t}
stick recipe idea, {i} goes in, {t} outside
what stick has {i} and keeps its shape at {t}
put {i} to use in a stick, stable up to {t}
compose a chapstick with {i}, ok at {t}
from scratch, stick, {i}, {t}

= design a stick without {i} that survives {t}
leave {i} out of a new stick that tolerates {t}
{i}-free and heat-resistant to {t}, a stick
avoid {i}, but the stick mustn't go soft at {t}
no {i} whatsoever and still hard at {t}, tube balm
skip {i}, stick for a {t} climate
lip balm minus {i} not running at {t}
exclude {i}, the tube should cope with {t}
never {i}, stick withstands {t}
she is allergic to {i} and lives where it's {t}, invent her a stick
sans {i} lip balm for {t}
a stick lacking {i} which won't droop at {t}
stick made of anything except {i}, unharmed by {t}
can't stand {i}, want a lip balm for {t} afternoons
omit {i}, heat limit {t}, stick
keep {i} away from my stick, it gets {t} here
stick free from {i} surviving up to {t}
i refuse {i}, give a stick recipe for {t}
rule out {i}, the chapstick faces {t}
{i} is forbidden, stick proof against {t}
other ingredients than {i} for a lip stick in {t}
none of that {i}, chapstick, {t} on the beach
don't use {i}, compose a stick firm to {t}

= design a vegan tin balm
invent a plant-based salve
vegan salve recipe, make one up
create a vegan balm for tins
come up with a balm in a pot without animal products
i want a salve vegans can use
propose a plant only tin balm
new vegan balm formula for jars
formulate an animal-free salve
suggest a vegan ointment
dream up a tinned balm with no animal stuff
what would a vegan salve look like
recipe idea, vegan, tin
develop a vegan hand salve for my shop
balm for vegans in tins, from scratch
build a vegan pot balm
think of a vegan salve
all-plant salve, compose one
find me a vegan tin recipe
something for vegans to scoop out of a tin

= design a nut-free balm
invent a salve without nuts
create a balm for people with nut allergy
come up with a tin balm that has no nut oils
salve for a school that bans nuts, make one up
new balm, no nuts
propose a salve safe for nut allergic kids
suggest an ointment avoiding nuts
formulate a salve free from nuts
dream up a pot balm, nuts excluded
find me a nutless salve recipe
balm idea, nothing from nuts
i want a new salve my nut allergic daughter can use
think up a balm with no tree nuts
build a balm that doesn't contain nuts
compose a nut free salve
develop a balm without any nut in it
what balm could i create for a nut allergy
salve from scratch, leave out nuts
a new tin balm minus nuts

= design a balm with only what is in stock
invent something from what is on our shelf
what new balm can we make out of our supplies
dream up a balm using just our stock
create a salve from the leftovers in the cupboard
come up with a balm we needn't shop for
propose a recipe from existing stock
i don't want to buy anything, think up a balm
new balm out of the store room only
suggest a balm from what we own
formulate a salve limited to our inventory
find a balm idea for the things lying around
balm from scratch, only stocked ingredients
compose a salve with everything already in house
any balm possible with the stock we have
build a balm on what's left here
use up our shelf, invent a balm
recipe idea with ingredients we hold
no shopping trip, create a salve
develop a balm from what is in the cupboard

= in a tin instead
@ design
make it a tin balm
rather for a pot
not a stick, a tin
as a salve for tins
change the form to tin
i want it in a jar not a tube
could that be a tin balm
tins not sticks
softer, for a tin
the tin kind
put those in tins
a balm to scoop, rather
same wishes but for a pot
tin version
no stick, i have tins
turn it into a pot balm
switch to tin
for tins then
a jar balm with the same wishes

= cheaper
@ design
what are the cheap ones
something less expensive
which of these costs least
sort by price
too dear
at a lower cost
can that be more affordable
bring the price down
a budget version
i can't pay so much
inexpensive ones
low-cost instead
more economical
find cheaper ones
save me money on it
less costly
the thrifty way
the price is too high
for less money
`;
