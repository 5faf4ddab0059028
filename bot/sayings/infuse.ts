/** Ways of asking for what `infuse` answers; bot/likeness/sayings.ts says how they are written. */
export const infuse = `
= infuse {g} {herb} in {oil}
i want to steep {g} of {herb} in {oil}
soaking {g} {herb} in {oil} what amounts
got {g} of {herb}, making a macerate with {oil}
herbal oil from {g} {herb} and {oil}
turn {g} {herb} into infused oil using {oil}
my jar takes {g} {herb}, top it with {oil}, quantities
macerating {g} of {herb} with {oil}
we are brewing {g} {herb} in {oil} this week
{g} {herb} goes into {oil} to draw, give me the numbers
{oil} infusion made with {g} of {herb}
here is {g} of {herb}, walk me through the {oil} steep
make a {herb} oil from my {g} using {oil}
let {g} {herb} sit in {oil}
{g} of {herb} to be extracted in {oil}
class will steep {g} {herb} in {oil}
i picked and weighed {g} {herb} for a {oil} infusion
oil maceration, {herb} {g}, base {oil}
{g} {herb} is to be soaked in {oil}, tell the weights
how do i steep {g} {herb} in {oil}
kilner jar job: {g} {herb} covered with {oil}
preparing an infusion with {g} {herb} and {oil}
{herb} {g} infusing in {oil} please do the sums
i have to draw {g} {herb} out into {oil}

= how much {oil} for {g} {herb}
i have {g} {herb} and intend to put it in {oil}, how much of the oil will i need to buy
{g} of {herb} is lying here, how much {oil} should i get for it
somebody left me {g} of {herb}, it shall go into {oil}, how much of that
how many bottles of {oil} do i buy for {g} {herb}
i bought a bag of {g} {herb} and would like to put all of it into {oil}, how much oil should i use
i have {g} {herb} and want to put it in {oil}, how much
my bag of {g} {herb} should go into {oil}, how many grams of oil
{g} {herb} picked, i will use {oil}, how much oil do i need
all my {g} {herb} into {oil}, which amount of oil do i use
i would like to use up {g} of {herb} in {oil}, how much oil is right
someone gave me {g} {herb}, i want to put them in {oil}, how much oil
what quantity of {oil} covers {g} {herb}
{g} of {herb} needs how many grams {oil}
how far do i top up with {oil} over {g} {herb}
{oil} needed to soak {g} {herb}
tell me the {oil} i must pour over {g} {herb}
i weighed {g} {herb}, so the {oil} should be what
amount of {oil} that goes with {g} {herb}
enough {oil} to cover {g} of {herb}
how many grams of {oil} do i measure on {g} {herb}
what weight of {oil} belongs on {g} {herb}
{oil} quantity against {g} {herb}
for {g} {herb} give the {oil}
how big a bottle of {oil} do i open for steeping {g} {herb}
my {g} of {herb} wants how much {oil}
pour what amount {oil} onto {g} {herb}
{oil} requirement for macerating {g} {herb}
with {g} of {herb} in the jar, what {oil} goes on top
how much {oil} should be poured over {g} {herb}
there is {g} {herb} in my jar, {oil} to be added how many
what do {g} of {herb} take in {oil}
the right measure of {oil} to {g} {herb}

= infuse {g1} {herb} in {g2} {oil}
i was given {g1} of {herb} and have {g2} {oil}, would you work out the infusion
mum gave me {g1} of {herb} and i have {g2} {oil}, work out the infusion
there is {g1} {herb} and {g2} {oil}, work out the oil
steeping {g1} {herb} with {g2} of {oil}
i put {g1} of {herb} and {g2} {oil} in a jar to draw
{g1} {herb} soaked in {g2} {oil}
macerate made of {g1} {herb} plus {g2} {oil}
my jar holds {g1} {herb} and {g2} {oil}, is that a sensible macerate
{g1} {herb} to {g2} {oil}, what ratio does that make
covering {g1} of {herb} with {g2} {oil}
we steep {g1} {herb}, {g2} {oil} on it
{g1} of {herb} sits in {g2} of {oil}
combining {g1} {herb} and {g2} {oil} as herbal oil
i weighed {g1} {herb} and {g2} {oil} for an infusion
pour {g2} {oil} over {g1} {herb}
{g2} {oil} poured on {g1} of {herb} to steep
jar with {g2} {oil} and {g1} {herb} left to draw
macerating {g1} {herb} in {g2} of {oil}
extract {g1} {herb} with {g2} {oil}
an infused oil from {g1} {herb} and {g2} {oil}
kids filled {g1} {herb} and {g2} {oil} in the glass to soak
{g1} {herb} drawn in {g2} {oil}
got {g1} {herb}, got {g2} {oil}, steep them together
{herb} {g1}, {oil} {g2}, macerate

= how much oil comes out of {g1} {herb} in {g2} {oil}
what will be left over after straining {g1} of {herb} out of {g2} {oil}
how much will be left after straining {g1} {herb} from {g2} {oil}
after straining {g1} {herb} out of {g2} {oil}, how much do i have
i put {g1} of {herb} in {g2} of {oil}, how much oil will i get when i press it
{g1} {herb} is standing in {g2} {oil}, how much will i have when i strain it
i have {g1} {herb} in {g2} {oil} on the sill, how much comes out
what will i get back after straining {g1} {herb} from {g2} {oil}
yield from {g1} {herb} soaked in {g2} {oil}
how many grams do i strain off {g1} {herb} in {g2} {oil}
{g1} {herb} in {g2} {oil}, what is left after pressing
once squeezed, {g1} of {herb} and {g2} {oil} leave how much
expected yield when {g1} {herb} steeps in {g2} {oil}
how much is lost to the plant if {g1} {herb} soaks in {g2} {oil}
after filtering {g1} {herb} out of {g2} {oil} what remains
what can i decant from {g1} {herb} steeped in {g2} {oil}
finished oil i will have from {g1} {herb} and {g2} {oil}
the muslin has {g1} {herb} that sat in {g2} {oil}, how much runs through
strained weight for {g1} {herb} with {g2} {oil}
i steep {g1} {herb} in {g2} {oil}, how much do i end up with
pressed out yield, {g1} {herb}, {g2} {oil}
how much usable oil results from {g1} {herb} plus {g2} {oil}
how many grams will drip out of {g1} {herb} after {g2} {oil}
from {g2} {oil} on {g1} {herb} how much do i recover
what does {g1} {herb} leave me of {g2} {oil}
recovering oil from {g1} {herb} in {g2} {oil}, what figure
filtered amount when {g1} {herb} drank from {g2} {oil}
how much will there be in the bottle from {g1} {herb} and {g2} {oil}

= infuse {g} {herb} in {oil} at {r}
we are going to infuse {g} of {herb} in class, oil is {oil}, {r}, how much oil must we buy
the school has {g} {herb}, oil is {oil}, ratio {r}, how much oil to buy
steeping {g} of {herb} in {oil}, ratio {r}
{g} {herb} with {oil} {r}
a {r} macerate of {herb} from {g}, base {oil}
how much {oil} do i pour on {g} {herb} for {r}
{oil} for {g} {herb} if i go {r}
{r} strength, {g} {herb}, {oil}
i follow {r} with {g} {herb} and {oil}
soak {g} of {herb} in {oil} in the proportion {r}
for {r} i have {g} {herb}, what {oil} goes on
{g} of {herb} drawn {r} into {oil}
my book says {r}, i own {g} {herb}, carrier {oil}
herb to oil {r}, {herb} {g}, {oil}
jar of {herb} {g} topped {r} with {oil}
{oil} needed at {r} against {g} {herb}
weigh {oil} to {g} {herb} as {r}
teacher told us {r}, we have {g} {herb} and {oil}
what {oil} amount makes {g} {herb} a {r} infusion
{g} {herb} should be macerated {r} in {oil}
{r} by weight, {g} {herb} into {oil}
make {r} infused {oil} out of {g} {herb}
turn my {g} {herb} to a {r} oil with {oil}

= how much {herb} for {g} {oil} at {r}
our bottle has {g} {oil} in it, at {r}, how much {herb} does that take
the bottle holds {g} {oil}, how much {herb} does it take at {r}
{herb} needed for {g} of {oil}, ratio {r}
{g} {oil} in the jar, going {r}, weigh how much {herb}
what quantity {herb} makes {g} {oil} a {r} macerate
{r} with {g} {oil}, so {herb} is what
i poured {g} {oil} and want {r}, {herb} amount
how many grams of {herb} go in {g} {oil} for {r}
{g} of {oil} steeped {r}, tell the {herb}
the {herb} to drop in {g} {oil} in proportion {r}
{herb} weight against {g} {oil} at strength {r}
my bottle has {g} {oil}, {r} infusion, how many {herb}
a {r} infusion from {g} {oil}, {herb} required
use up {g} {oil} {r} with {herb}
got {g} {oil} left, how much {herb} at {r}
to {g} {oil} add which weight of {herb} for {r}
{herb} portion when {g} of {oil} is infused {r}
i keep to {r}, {oil} is {g}, what about {herb}
weigh out {herb} for {g} {oil}, {r}
for steeping {r} in {g} {oil}, {herb} must be
{r} herb to oil, {g} {oil}, find {herb}
how much {herb} do i buy to infuse {g} {oil} {r}

= how much {herb} for {v} {oil} at {r}
turn {v} {oil} into {herb} oil at {r}, how much dried herb do i need for it
somebody gave me {v} of good {oil}, make herbal oil of it with {herb} {r}, which weight of herb
{herb} needed for {v} of {oil}, ratio {r}
{v} {oil} in the jar, going {r}, weigh how much {herb}
what quantity {herb} makes {v} {oil} a {r} macerate
{r} with {v} {oil}, so {herb} is what
i measured {v} {oil} and want {r}, {herb} amount
how many grams of {herb} go in {v} {oil} for {r}
{v} of {oil} steeped {r}, tell the {herb}
the {herb} to drop in {v} {oil} in proportion {r}
bottle of {v} {oil}, {r} infusion, {herb} how many
a {r} infusion from {v} {oil}, {herb} required
use up {v} {oil} {r} with {herb}
got {v} {oil} left, how much {herb} at {r}
to {v} {oil} add which weight of {herb} for {r}
i keep to {r}, {oil} is {v}, what about {herb}
weigh out {herb} for {v} {oil}, {r}
for steeping {r} in {v} {oil}, {herb} must be
filling a {v} kilner with {oil} at {r}, {herb} weight
{r} herb to oil, {v} {oil}, find {herb}
how much {herb} do i buy to infuse {v} {oil} {r}
a jam jar of {v} {oil} macerated {r} wants how much {herb}

= how much {herb} for {g} {oil}
{herb} needed for {g} of {oil}
what quantity {herb} do i steep in {g} {oil}
i have {g} {oil}, how many {herb} do i put in to draw
{g} {oil} in the jar, weigh how much {herb}
how many grams of {herb} go in {g} {oil}
{herb} portion for infusing {g} {oil}
my bottle has {g} {oil}, {herb} to add
to {g} {oil} add which weight of {herb}
{g} of {oil} takes what {herb}
a macerate from {g} {oil}, {herb} required
usual {herb} amount in {g} {oil}
weigh out {herb} against {g} {oil}
handfuls apart, {herb} weight to steep in {g} {oil}
how strong do i pack {herb} in {g} {oil}
got {g} {oil} left over, infuse it with {herb}
{g} {oil} to be infused, what {herb} goes in
soak {herb} in my {g} {oil}
steeping {herb} in {g} of {oil}, give amounts
how much {herb} do i buy to infuse {g} {oil}
{herb} that belongs in {g} {oil}

= how much oil for {g} infused oil at {r}
i need {g} of finished infusion at {r}, how much oil do i start with
{g} strained macerate wanted, ratio {r}
to end up with {g} of herbal oil {r}, what goes in
starting amounts so that {g} infused oil comes through at {r}
working backwards from {g} of strained oil, {r}
want {g} in the bottle after straining, {r}
{r} and {g} finished, herb and oil to weigh
what do i put in the jar to get {g} out at {r}
aiming at {g} macerated oil {r}, starting oil
to have {g} after the cloth, {r}, pour in what
{g} of ready infused oil made {r}, how much must go in
begin with how much oil for {g} macerate at strength {r}
my goal is {g} infused oil in proportion {r}
if {g} of infused oil must be left over at {r}
the balm wants {g} infused oil {r}, how much do i steep
{g} net infused oil {r}, gross oil
how much plain oil becomes {g} of infusion at {r}
oil to pour in so {g} drips out, {r}
{r} infusion yielding {g}
we need {g} infused oil for class, herb to oil {r}

= how much {herb} for {g} infused {oil} at {r}
{herb} to steep so i get {g} strained {oil} at {r}
i need {g} of finished {herb} infused {oil}, ratio {r}
to end up with {g} {herb} macerate in {oil} {r}
starting {herb} and {oil} for {g} out at {r}
working backwards, {g} strained {oil}, {r}, how many {herb}
want {g} of {herb} oil in the bottle, base {oil}, {r}
{g} finished {oil} infused {r}, weigh which {herb}
{r} and {g} yield, {herb} in {oil}, what to weigh
what {herb} do i put in the jar to get {g} infused {oil} at {r}
aiming at {g} ready {herb} infused {oil} {r}
to have {g} after the cloth, {r}, {herb} and {oil}
how many {herb} makes {g} of strained infused {oil} {r}
balm calls for {g} {herb} infused {oil} {r}
net {g} of infused {oil}, {herb}, {r}
{herb} required when {g} of macerated {oil} is wanted {r}
if {g} infused {oil} must be left over at {r}, {herb} is
{herb} going in so {g} {oil} drips out, {r}
{g} of {herb} infusion to yield from {oil} at {r}
my goal is {g} infused {oil} with {herb} in proportion {r}
{g} {oil} macerate wanted, {r}, tell {herb}

= infuse {herb} in {oil}
how do i make {herb} infused {oil}
{herb} macerated in {oil}, method
steeping {herb} in {oil}, what is the way
making herbal oil with {herb} and {oil}
i would like to draw {herb} into {oil}
the steps for {herb} in {oil}
teach me to soak {herb} in {oil}
{oil} with {herb} in it, how is it prepared
instructions, {herb} steeped in {oil}
how to get the goodness of {herb} into {oil}
beginner macerating {herb} with {oil}
{herb} oil recipe using {oil} as carrier
how should i prepare {herb} infused in {oil}
what is done to extract {herb} with {oil}
{herb} and {oil} in a jar, what then
guide for {herb} macerate with {oil}
putting {herb} petals to soak in {oil}
i would make a {herb} infusion, base {oil}
how do people steep {herb} in {oil}
can you infuse {herb} with {oil}
{oil} infusion of {herb}

= infuse {herb} in {oil} cold
cold method for {herb} in {oil}
windowsill steep of {herb} in {oil}
{herb} in {oil} with no heat
{herb} macerated the slow way in {oil}
how do i leave {herb} in {oil} unheated
solar style {herb} soak in {oil}, no cooking
{herb} steeping in {oil} at room temperature
folk method, {herb} in {oil}, jar in the cupboard
{oil} and {herb} without warming
slow infusion of {herb} in {oil} on the shelf
raw unheated {herb} infused {oil}
cold process {herb} into {oil}
i have no stove, steep {herb} in {oil}
cool maceration {herb} {oil}
weeks in a dark jar, {herb} in {oil}, how
steep {herb} in {oil} off the hob
i want it cold, {herb} with {oil}
long patient soak of {herb} in {oil}, no bain marie
on the sill, {herb} sitting in {oil} for weeks
{herb} left standing cold in {oil}

= does {herb} have to be dry for infusing
is it ok if my {herb} is still a bit damp when it goes in the oil
my {herb} still feels damp, may it go in the oil
the {herb} is not quite dry yet, is that a problem for the oil
what happens if the {herb} is slightly moist when i infuse it
{herb} from the airer is a bit soft still, can it go in oil
dried or fresh {herb} for my oil
should {herb} be dried before steeping
must the {herb} be bone dry
is it better to steep {herb} dried or fresh
fresh from the garden or dried {herb}, which for oil
do i dry {herb} first
{herb} wilted or crisp before it goes in oil
how dry should {herb} be for a macerate
is damp {herb} a worry in oil
moisture in {herb} for infusion
i picked {herb} this morning, do i dry it before the oil
{herb}: fresh or dry
need {herb} drying before soaking in oil
does {herb} go in the jar dried
which state should {herb} be in, fresh or dry
dried {herb} necessary for infused oil
why is dried {herb} recommended for oil
do i use my {herb} dried or straight off the plant
does water in {herb} spoil the infusion
{herb} dryness for macerating
are dried {herb} flowers a must in herbal oil

= is fresh {herb} ok in infused oil
would my class be able to use fresh {herb} in the infused oil
the pupils want to pick fresh {herb} for the oil, may they
could we use {herb} leaves straight from the plant in oil
i have fresh {herb} only, is it a bad idea to steep it in oil
can i use fresh {herb} in oil
fresh {herb} in my macerate
may i steep {herb} fresh from the garden
just picked {herb} into oil, is that safe
is it fine to put fresh green {herb} in oil
juicy fresh {herb} for an infused oil
{herb} freshly cut, does it work for infusing
would fresh {herb} go mouldy in oil
i only have fresh {herb}, may it go in the oil
using fresh instead of dried {herb}
fresh {herb} straight in the jar of oil
undried {herb} in oil, allowed
{herb} still wet with dew in oil
can the children bring fresh {herb} to steep
is undried {herb} alright to infuse
does fresh {herb} turn the oil bad
raw fresh {herb} soaking in oil, okay
garden fresh {herb} to infuse
may fresh {herb} be used

= how long and how warm to infuse {herb}
for the slow cold way, how many weeks does {herb} stay in the oil
how many weeks does {herb} stay in the oil
how many hours in the water bath for {herb} and at what temperature
hours and degrees for {herb} in the water bath
{herb}: how long in the bath, how hot
can i do the {herb} in the slow cooker or should i do it cold
{herb} in the slow cooker or cold on the windowsill
warm or cold for {herb}
is it better to heat {herb} in oil or leave it on the sill
shall i do {herb} the warm way or the cold way
how many weeks should {herb} stand in the oil
time and temperature for {herb} oil
how many hours does {herb} steep and at what heat
for how long do i leave {herb} in the oil and how hot
{herb} steeping time and bath temperature
how many weeks must {herb} sit
when is {herb} done drawing
at what temperature should i keep {herb} in oil
how hot may {herb} oil get in the bain marie
{herb} in the slow cooker, how many hours
steeping duration for {herb}
how warm should the water bath be for {herb}
how long does {herb} need in the oil
days or hours for {herb}
what heat draws {herb} best and how many hours
till when do i shake the {herb} jar
{herb} warm method hours
gentle heat for {herb}: how hot, how long
when can i strain {herb}
{herb} macerating period
how much time must pass before i strain the {herb}
what degrees for steeping {herb}
yogurt maker for {herb}, which temperature and hours

= how much oil does {g} {herb} keep back
how much oil stays in {g} of {herb}
how much oil stays behind in {g} {herb}
how much oil will be lost in {g} of {herb}
how much oil will {g} of {herb} soak up
oil lost in {g} {herb}
what stays in {g} {herb} after straining
{g} {herb} drinks how much oil
absorption of {g} {herb}
how thirsty is {g} {herb}
oil trapped by {g} of {herb}
how many grams are held by {g} {herb}
uptake, {g} {herb}
{g} {herb} swallows what amount of oil
what do i lose in the cloth with {g} {herb}
how much oil remains stuck in {g} {herb}
retained oil for {g} {herb}
when i press {g} {herb}, what stays behind
{g} of {herb} retains how much
how much does {g} {herb} suck up
loss through {g} {herb}
squeezed {g} {herb} still holds what
the {g} {herb} holds on to how many grams of oil
oil swallowed in {g} of {herb}

= is {herb} safe on lips
somebody told me {herb} doesn't belong on lips, true
i heard {herb} doesn't belong on lips
is it true that {herb} must stay off the lips
can {herb} go on lips
may i use {herb} in a lip balm
is it ok to put {herb} near the mouth
{herb} in lip product, allowed
would {herb} hurt if someone licks it
any danger with {herb} on the lips
{herb} lip balm, is it harmless
does {herb} belong in something for lips
should i worry about {herb} in a lip salve
{herb} on lips, yes or no
is {herb} poisonous in a chapstick
is {herb} suitable for lips
people lick their lips, is {herb} fine then
can you eat {herb} off your lips
{herb} lip use, warnings
i was told {herb} is bad for mouths
is {herb} alright in lip care
safety of {herb} for lip
are lips ok with {herb}
would you let {herb} on kissing lips

= which plant is {herb}
right species of {herb}
which {herb} is the proper plant
botanical name of the {herb} i should buy
are several plants sold as {herb}
what species is meant by {herb}
how do i know i have the true {herb}
which kind of {herb} do i pick
true {herb} or a lookalike
{herb} variety to get
which sort of {herb} is correct
{herb} in the field guide, what plant is it
what plant does {herb} come from
exact plant behind {herb}
identify the {herb} plant
the shop has several {herb}, which is the real plant
which latin plant do we call {herb}
proper botanical {herb}
{herb}: which species
what flower is {herb}
of what plant is {herb}

= I got {g1} out of {g2} {herb} in {g3} {oil}
strained {g1} from {g2} {herb} in {g3} {oil}
{g1} came through the cloth, {g2} {herb} in {g3} {oil}
i recovered {g1} from {g2} {herb} and {g3} {oil}
my yield was {g1}, {g2} {herb}, {g3} {oil}
we pressed {g1} out of {g2} {herb} with {g3} {oil}
{g1} left after straining {g2} {herb} in {g3} {oil}
ended up with {g1} from {g2} {herb} steeped in {g3} {oil}
{g1} ran out of {g2} {herb} in {g3} {oil}
weighed {g1} after filtering {g2} {herb} from {g3} {oil}
note {g1} back, {g2} {herb} in {g3} {oil}
{g1} squeezed from {g2} of {herb} soaked in {g3} of {oil}
the jar of {g2} {herb} in {g3} {oil} gave {g1}
{g2} {herb} in {g3} {oil} yielded {g1}
out of {g2} {herb} and {g3} {oil} i had {g1}
{g2} {herb} plus {g3} {oil}, {g1} strained
from {g2} {herb} in {g3} {oil} we have filtered {g1}
{g2} of {herb} steeped in {g3} {oil} left me {g1}
i steeped {g2} {herb} in {g3} {oil} and bottled {g1}
macerate of {g2} {herb} and {g3} {oil} weighed {g1} after the sieve
{g1} dripped out, used {g2} {herb} on {g3} {oil}

= our yields
what have our own infusions given back
show the noted strainings
list how much oil each herb kept for us
our own uptake figures
how thirsty were our herbs so far
my measured herb losses
record of what we strained
yields so far
which herb yields did we note
table of our infusion yields
past infusion results
what did the herbs hold back in our weighings
how good are our infusions giving
my yield history for herbal oils
our weighed uptake per herb
infusion yields we wrote down
let me see the yields we measured
own yield numbers
herb by herb, what we got out

= {tins} of {R}, oil infused {r} with {herb}
{tins} of {R} with the oil steeped {r} in {herb}
make {tins} {R}, first infusing its oil {r} with {herb}
i want a {herb} version of {R}, {tins}, infusion {r}
{R} with {herb} infused oil at {r} for {tins}
for {tins} of {R} how much {herb} do i steep at {r}
{herb} {r} macerate for {tins} of {R}
{tins}, {R}, herbal oil {r} {herb}
how much infused oil goes in {tins} of {R} at {r} {herb}
pouring {tins} {R} whose oil has {herb} in it {r}
steep {herb} {r} to fill {tins} of {R}
what {herb} is needed so {tins} of {R} have {r} infused oil
{R} {tins} using {herb} oil {r}
use oil drawn {r} from {herb} in {R}, {tins}
the oil in {R} should be infused {r} by {herb}, {tins}
infuse the oil of {R} with {herb} at {r} for {tins}
{herb} infused {R}, {r}, {tins}
prepare macerate {r} of {herb} enough for {tins} {R}
weigh {herb} and oil {r} ahead of {tins} of {R}
replace the plain oil in {R} by {herb} oil {r}, {tins}
{tins} of {herb} flavoured {R}, steeping {r}

= put {g} {herb} straight into the melted {R}, {tins}
stir {g} {herb} right into the melt of {R}, {tins}
{g} {herb} steeped directly in molten {R} for {tins}
can i drop {g} {herb} in the warm {R} before filling {tins}
skip the oil jar, {g} {herb} in liquid {R}, {tins}
{g} of {herb} thrown in the pot with {R}, {tins}
{tins} of {R} with {g} {herb} cooked in the melt
tip {g} {herb} in hot {R} then strain, {tins}
macerate {g} {herb} in the melted {R} itself, {tins}
{R} melted with {g} {herb} in it, {tins}
add {g} {herb} direct to the pot of {R} for {tins}
{tins}, {R}, {g} {herb} straight in the jug while liquid
{g} {herb} simmering in the molten balm {R}, {tins}
let {g} {herb} draw in the liquid {R}, makes {tins}
infusing {g} {herb} within {R} when melted, {tins}
directly into {R} once molten goes {g} {herb}, {tins}
{tins} {R} where {g} {herb} sits in the hot melt
chuck {g} {herb} into the melting {R} for {tins}
we put {g} {herb} in the melted mix {R} to fill {tins}
single pot way: {R} and {g} {herb} melted together, {tins}

= and at {r}
@ infuse
same but {r}
what if the ratio is {r}
try {r} instead
make it {r}
stronger, {r}
weaker, {r}
and with {r}
change the ratio to {r}
at {r} then
now {r}
how about {r}
suppose i go {r}
do it {r}
and in proportion {r}
i would rather steep {r}
{r} instead of that
redo with {r}
my friend swears by {r}
use {r}
and if herb to oil is {r}

= and in {oil}
@ infuse
same herb but with {oil}
what if i take {oil}
use {oil} for it
i only have {oil}
and with {oil} as carrier
try {oil} as the base
swap the carrier to {oil}
steep it in {oil} this time
how about {oil}
suppose the base is {oil}
{oil} then
now in {oil}
can it be done in {oil}
redo with {oil}
in {oil} what does it look like
i would like {oil} better
my shelf only has {oil}
and if i pour {oil} on it

= i got {g} out
@ infuse
{g} came out
strained {g}
i ended up with {g}
my yield was {g}
it gave {g}
{g} after pressing
we recovered {g}
{g} ran through the cloth
weighed {g} once filtered
it left me {g}
{g} in the bottle now
squeezed {g} from it
got {g} back
there was {g} after straining
{g} dripped through
i have {g} of it strained
yielded {g}
bottled {g} of it

= infuse {g1} {herb1} and {g2} {herb2} in {oil}
steeping {g1} {herb1} together with {g2} {herb2} in {oil}
herb pair macerate: {g1} {herb1}, {g2} {herb2}, base {oil}
a mixed herbal oil from {g1} {herb1} plus {g2} {herb2} using {oil}
{g1} of {herb1} and {g2} of {herb2} soak in {oil}
my blend is {g1} {herb1} with {g2} {herb2}, drawn into {oil}
combine {g1} {herb1} and {g2} {herb2} and cover with {oil}
jar holds {g1} {herb1}, {g2} {herb2}, topped by {oil}
how much {oil} over {g1} {herb1} and {g2} {herb2}
mixing herbs, {g1} {herb1} along with {g2} {herb2}, carrier {oil}
macerating {g1} {herb1} mixed with {g2} {herb2} in {oil}
both {g1} {herb1} and {g2} {herb2} go in the same {oil} jar
draw {g1} {herb1} plus {g2} {herb2} out into {oil}
{oil} infusion made with {g1} {herb1} and {g2} {herb2}
{g1} {herb1}, {g2} {herb2}, steep them in {oil}
kids picked {g1} {herb1} and {g2} {herb2}, we soak them in {oil}
herb mix {g1} {herb1} / {g2} {herb2} in {oil}

= and for {g}
@ infuse
what if i have {g} of it
now with {g} of the herb
make it {g} of herb
the jar gets {g} instead
suppose i picked {g}
{g} instead
i found {g} in the end
it turned out {g}
and {g} then
change the herb to {g}
same for {g}
we dried {g}
redo it with {g}
if it were {g}
let us take {g}

= and for {herb}
@ infuse
sorry {herb}
sorry, {herb}
oh, {herb}
i meant {herb}
sorry i meant {herb}
i meant {herb} sorry
no i said {herb}
it was {herb}
{herb} not that
with {herb} instead
same but with {herb}
sorry, i meant {herb}
i meant {herb}
no, {herb}
i mean {herb}
make that {herb}
what if i take {herb}
same with {herb}
do {herb} instead
use {herb} for it
how about {herb}
now with {herb}
i picked {herb} rather
{herb} in place of that
steep {herb} that way
swap the herb to {herb}
and {herb}
would {herb} be different
suppose the plant is {herb}
the same jar but {herb}
redo for {herb}

= cold
@ infuse
without heat
slowly on the windowsill
and the cold way
do it unheated
no cooking please
what about the slow method
room temperature way
i would rather not warm it
folk method then
weeks on a shelf instead
solar method
and if i leave it cold

= infuse {g1} {herb1} and {g2} {herb2} in {v} {oil}
we have {g1} {herb1} and {g2} {herb2} for {v} of {oil}
{g1} {herb1} and {g2} {herb2} go into {v} {oil}
{v} {oil} with {g1} {herb1} and {g2} {herb2} to steep
a jar of {v} {oil}, {g1} {herb1}, {g2} {herb2}
mixing {g1} {herb1} with {g2} {herb2} in {v} of {oil}
`;
