/** Ways of asking for what `bench` answers; bot/likeness/sayings.ts says how they are written. */
export const bench = `
= dilute {%1} alcohol to {%2}
how do i get from {%1} alcohol down to {%2}
turn {%1} spirit into {%2}
i have {%1} ethanol, want {%2}
water down {%1} alcohol to {%2}
my bottle says {%1} alcohol, i need {%2}
bring {%1} spirits to {%2}
thin {%1} isopropanol to {%2}
{%1} alcohol plus water makes {%2}, how much
mixing {%1} ethanol so it is {%2}
{%1} rubbing alcohol to {%2} for wiping
weaken {%1} alcohol until {%2}
how much water turns {%1} into {%2} alcohol
from {%1} to {%2} spirit
cut {%1} alcohol to {%2}
lower {%1} ethanol to {%2}
chemist sold me {%1} alcohol, make {%2}
reduce {%1} surgical spirit to {%2}
the {%1} stuff should become {%2} alcohol
alcohol {%1}, target {%2}
make {%2} alcohol from {%1}
{%2} disinfecting alcohol out of {%1}
i need {%2} spirit and only have {%1}

= dilute {v} of {%1} alcohol to {%2}
how much water into {v} of {%1} alcohol for {%2}
i have {v} of {%1} ethanol, want it {%2}
water down {v} {%1} spirit to {%2}
my bottle holds {v} at {%1} alcohol, bring it to {%2}
turn {v} of {%1} alcohol into {%2}
there is {v} {%1} isopropanol, thin to {%2}
add water to {v} {%1} ethanol until {%2}
weaken {v} of {%1} alcohol to {%2}
{v} {%1} alcohol to be cut to {%2}
what do i add to {v} of {%1} spirit so it is {%2}
{v} of rubbing alcohol {%1}, reduce to {%2}
use up {v} {%1} alcohol as {%2}
lower {v} ethanol {%1} to {%2}
top up {v} {%1} alcohol to get {%2}
all {v} of my {%1} spirit down to {%2}

= make {v} of {%1} alcohol from {%2}
i need {v} of {%1} alcohol, have {%2}
{v} {%1} spirit out of {%2}
mix {v} {%1} ethanol, starting with {%2}
fill a {v} spray bottle with {%1} alcohol using {%2}
want {v} finished at {%1}, stock alcohol {%2}
prepare {v} {%1} disinfecting alcohol from {%2}
{v} of {%1} to be made with {%2} alcohol and water
for {v} {%1} how much {%2} alcohol do i take
how much {%2} spirit gives {v} {%1}
a {v} bottle of {%1} alcohol, i own {%2}
get {v} at {%1} out of alcohol {%2}
to have {v} of {%1} isopropanol from {%2}
produce {v} {%1} spirit by thinning {%2}
end with {v} alcohol {%1}, begin with {%2}
fill up to {v} of {%1}, starting with {%2} alcohol
{v} spray at {%1} mixed from {%2}
how do i mix {v} {%1} out of {%2} alcohol
{v} of disinfectant at {%1} from {%2} spirit

= wax is on fire
my pot is burning
flames in the melting pot
the oil caught fire
how do i put out burning wax
the melt is in flames
fire on the stove, wax
wax ignited
what to do if wax catches fire
the jug is alight
smoke and flames from my wax
grease fire in the balm pot
help the wax burns with flame
how to smother a wax fire
can i pour water on burning wax
pot went up in flames
extinguish flaming wax
what if the melt starts to burn in the pan
fire drill for wax
my beeswax pot is ablaze
it is smoking hard and caught alight
which extinguisher for a wax fire
burning oil on the hob, quick
teacher asks: fire in the pot, what do we do

= i burned my hand with wax
hot wax splashed onto my hand, help
hot balm splashed on my arm what now
i got hot wax on me
a child got melted wax on her fingers
somebody spilled hot oil over their hand
hot salve on the skin what do i do
hot wax on my skin
scalded by melted balm
i spilled molten wax on my arm
burnt finger from the pot
wax dripped on a child's hand
first aid for wax burns
somebody got burned at the class
how do i treat a wax scald
blister after hot oil splash
hot balm splashed on me
ouch, hot wax on my wrist
do i peel wax off a burn
a pupil has wax stuck to burnt skin
molten oil ran over my foot
what to do for a burn
scald first aid
burnt myself while pouring
my thumb got scorched by the jug
hand under cold water after a burn, how many minutes
skin burn from candle hot wax
i touched the hot plate and hurt myself
injury by hot melt

= how do I disinfect my tins
cleaning tins before filling
how should i sterilise my jars
must tins be sanitised
wash and disinfect containers
how do i get the pots clean enough
sanitising the lip balm tubes
sterilising my tools
new tins straight from the box, do i clean them
how to clean jugs and spoons
hygiene for containers
what do i wipe the tins with
prepare clean jars for pouring
can i boil the tins to sterilise
dishwasher enough for jars
sterile tins how
cleaning routine before a pour
get old wax out of the jug and disinfect
do i need to sterilise sticks
make equipment hygienic
germ free tins
how clean must my bench be
steps for sanitising utensils
tins dusty, how do i make them hygienic
reusing old tins, cleaning them

= can I use alcohol near a flame
is alcohol near the stove dangerous
wiping with alcohol while the hob is on
spraying ethanol beside the hot plate
may i disinfect next to a gas burner
alcohol fumes and a lit ring
sprayed spirit, may i light the stove now
when can i switch the hob on after alcohol
alcohol vapour by an open flame
is ethanol flammable at the bench
candle burning while i wipe with spirit
how far from the cooker do i keep alcohol
fire danger of disinfecting spray
rubbing alcohol around heat
can spirit fumes catch fire
is it safe to wipe tools with alcohol at the cooker
alcohol spray and a camping stove
open flame and isopropanol

= can I melt wax in the microwave
do i melt in a bain marie or straight on the flame
bain marie or straight on the flame
should i use a water bath or the hob
pan on the flame or water bath
is it ok to heat the wax straight on the stove
melting over direct heat, yes or no
do i need a water bath
is a double boiler needed
may i melt directly on the hob
melting straight in a pan
bain marie or microwave
is the microwave ok for melting balm
how does a double boiler work for balm
why not heat the wax direct
wax in a saucepan without water
slow cooker for melting wax
safe way of melting in general
setting up a bain marie
microwave melting
can i put the jug right on the ring
do people microwave their balm
water bath rules

= mould in my balm
there is fuzz on my salve
something furry grows on my balm
my lip balm smells funny
the oil in it turned
is my old balm still good, it smells odd
my balm smells rancid
has my balm gone off
it smells like old crayons
fuzzy spots on the salve
is my balm spoiled
green dots in the tin
it went bad
black specks growing on the lip balm
balm tastes sharp and smells of putty
how do i know if balm is rancid
the salve turned yellow and stinks
something grows in my jar
off smell from an old tin
signs of a balm that is spoiled
can i scrape mould off
musty smell in the pot

= is a {g1} tin that holds {g2} ok
i filled {g2} into tins that say {g1}, can i sell them
i put {g2} into tins marked {g1}, is that allowed
we poured only {g2} into our {g1} tins, may we sell them
is it ok to sell a {g1} tin with only {g2} inside
may i sell tins of {g1} that have {g2} in them
my tins say {g1} and have {g2} inside, is that allowed
a tin labelled {g1} weighs {g2}, is it still fine to sell
there is {g2} in a tin that should have {g1}, can it be sold
the label promises {g1} but i only got {g2} in, is this ok
tin declared {g1} but weighs {g2}, allowed
label says {g1}, inside is {g2}
i filled {g2} in a {g1} tin
{g1} printed, {g2} in it, too little
is {g2} enough for a tin sold as {g1}
my {g1} tin has only {g2}
short weight? {g1} stated, {g2} found
weighed {g2} in a tin marked {g1}
may i sell {g2} as {g1}
inspector weighs {g2}, the tin claims {g1}
a {g1} tin contains {g2}, will i be fined
underfilled: says {g1}, holds {g2}
{g1} nominal, {g2} real fill
tin marked {g1} came to {g2} on the scale
{g2} instead of {g1} in the tin, fine

= and for {v}
@ bench
i need {v} of it
make {v}
for a {v} bottle
how much for {v}
to fill {v}
{v} in all
enough for {v}
my spray bottle takes {v}
if i want {v}
now {v} of it
and {v}
scaled for {v}

= tolerance of a {g} tin
how full does a {g} tin have to be
how full must a {g} tin be
how much less may be in a {g} tin
what is the least that may be in a {g} tin
how far under may a {g} tin be filled
how much may a {g} tin be short
how many grams under is allowed for {g}
minimum fill for a {g} tin
allowed shortfall at {g}
how exact does the fill of a {g} tin have to be
lowest weight a {g} tin may have
what deviation is permitted in {g} packs
may a {g} tin be a little underfilled
how precise must i fill {g}
legal tolerance for {g} of balm

= do I need gloves when filling the tins
should i wear gloves when filling
gloves or bare hands at the bench
must my helpers wear gloves and hair nets
hygiene rules at the bench
what about hair and jewellery when we pour
do we need aprons and hair tied back
how clean do we have to work
basic cleanliness when making balm
can someone with a cold help filling
a helper has a cold sore, may she fill tins
may i pour when i am ill
someone with a cut on the finger wants to help
what hygiene do i tell the volunteers
washing hands before we start, is that enough
do the kids need gloves

= how do I do a patch test
patch test how
what is a patch test
how should people try the balm first
test on the inner arm before use
how can i test a balm on skin
how long do i wait after a patch test
trying a new balm on skin safely
should customers patch test
first try on a small spot of skin
skin test instructions
testing for a skin reaction before using it
where on the arm do i patch test

= why did my glass jar crack
my jar cracked when i poured the balm
glass jars break when i pour
the glass shattered from the hot balm
how do i stop jars from cracking
should i warm the jars before i pour
do jars need warming up
can i pour hot balm into cold glass
pouring into a cold jar, will it crack
why do my jars break
how warm must glass jars be for pouring
preheat jars or not
a jam jar burst when i filled it

= are oily rags dangerous
what do i do with oily rags
can cloths with oil in them catch fire
rags soaked with linseed oil
where do i put the oily paper towels
is it true that oily cloths can burn by themselves
how to throw away oily rags
wiping cloths full of oil, are they a danger
do i have to wet oily rags before the bin

= can I close the lids while the balm is warm
can i put lids on while the balm is warm
do i close the tins hot or cold
leave the lids off until set
when may the tins be closed
how long do tins stay open after the pour
lids on at once or later
water drops under my lids, did i close too early
why should i leave the tins open to cool
shut the tins when they are cold
do i cover the tins while they set
`;
