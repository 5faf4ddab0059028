/** Ways of asking for what `melt` answers; bot/likeness/sayings.ts says how they are written. */
export const melt = `
= melting point of {i}
when does {i} go liquid
at what temperature does {i} turn to liquid
how hot before {i} melts
{i} melts at what degree
melt temp {i}
temperature where {i} starts running
what heat does {i} need to become liquid
at how many degrees is {i} melted
how warm must {i} be to melt
melting range for {i}
does {i} need a lot of heat to liquefy
{i}, from solid to liquid, which temperature
fusion temperature of {i}
drop point of {i}
{i} mp
at which point will {i} soften and run
is {i} solid at room temperature
when is {i} completely molten
why won't my {i} melt, how hot must it get
what celsius for melting {i}
{i} becomes fluid at
set point of {i}
how high do i heat {i} till it is clear
teacher asks where {i} melts
{i} melting temperature
the heat at which {i} gives way
how many celsius till {i} turns runny

= when does {R} melt
at what temperature does {R} go liquid
{R} melting point
how hot can it get before {R} turns runny
softening temperature of {R}
when will {R} start to soften
{R} liquefies at
how many degrees until {R} is oil
at which heat does {R} lose its shape
melt temp {R}
{R}, from solid to liquid, where is that
what is the melting range of {R}
i want to know where {R} gives way
how warm before {R} becomes a puddle
is {R} heat stable, up to where
forecast the melt of {R}
temperature at which {R} is fully molten
the point {R} begins to run
{R} goes soft at what degree
how heat resistant is {R}
up to which temperature does {R} remain solid
when would {R} collapse
what does heat do to {R}
{R} melts how easily
predict softening and melting for {R}
thermal behaviour of {R}
does {R} melt early or late
how much warmth can {R} take

= will {R} survive {t}
will {R} hold up in {t} heat
is {t} too much for {R}
i want to leave {R} somewhere it gets {t}, will it stay in shape
{R} at {t}, puddle or fine
can {R} take {t}
does {R} stand {t}
we get {t} in summer here, is {R} ok
{R} left in a van at {t}, what happens
how does {R} behave at {t}
does {R} go runny at {t}
is {R} still solid at {t}
{t} forecast for the fair, does {R} keep its form
would {R} slump at {t}
{R} in {t} weather
can i ship {R} when it's {t}
stall table reaches {t}, will {R} last
what becomes of {R} at {t}
{R} resist to {t}
does {t} ruin {R}
{t} in the shed, {R} on the shelf, any trouble
is {R} stable up to {t}
storing {R} at {t}, does it leak
customers in hot places, {t}, is {R} firm enough
{R} heat test {t}
the warehouse touched {t}, did {R} melt
{R} tolerates {t}
how soft does {R} get at {t}
would {R} make it through a {t} afternoon
will {t} turn {R} into oil
in the sun {t}, {R} okay or not
at {t} does {R} dent or drip
my kitchen is {t}, can {R} stay on the counter
endure {t}, will {R}

= will {R} survive a hot pocket
{R} in a trouser pocket, does it melt
can i carry {R} in my jeans
is {R} pocket proof
body heat and {R}, will it soften
does {R} melt against the leg
kept in the pocket all day, is {R} still a stick
{R} carried close to the body
my son keeps {R} in his shorts, does it go runny
will {R} stay solid in a coat pocket
next to my hip the whole day, {R} okay
does {R} leak in the pocket
{R} in a back pocket
children put {R} in their pockets, does it survive
safe to walk around with {R} on me
handbag or pocket, is {R} going to be mush
{R} inside a bra or pocket, melts or not
pocket test for {R}
does warmth from the body turn {R} soft
a farmer has {R} in his overalls, will it hold
running with {R} in the shorts pocket, still firm
will {R} be goo after a day in jeans

= will {R} survive a parked car
{R} forgotten in the car, what happens
is {R} ok on the dashboard
can {R} stay in the glove box
i leave {R} in my car in july, will it be liquid
{R} in a hot vehicle
does {R} melt behind the windscreen
car in the sun with {R} inside
glovebox test for {R}
will {R} turn to soup in the boot
{R} locked in the trunk at noon
does {R} cope with a closed car
kept in the ute all day, is {R} still good
{R} on the back seat while we are at the beach
{R} in the cup holder of a sun-baked car
can drivers keep {R} in the cab of the lorry
is it fine leaving {R} in the motor
would {R} ooze in an automobile under full sun
car heat against {R}
dash of a parked van, {R}, disaster or not
{R} inside the car during summer shopping

= will {R} melt in the post
is {R} safe to mail
can i send {R} by parcel in summer
{R} travelling with the courier, does it go liquid
shipping {R} in warm weather
will {R} arrive as a puddle
does {R} endure the delivery van
posting {R} to a hot place
{R} in a mailbox in august
does {R} get through transport in one piece
letterbox heat and {R}
will customers receive {R} melted
airmail {R}, does it stay hard
summer shipping of {R}, is it risky
{R} in a padded envelope, melts or not
can the postman carry {R} without it leaking
{R} sent by royal mail in a heatwave
is {R} fit for transit
does {R} need a cool pack for delivery
parcel depot in july, will {R} be solid

= will {R} survive summer
is {R} good for hot weather
{R} in a heatwave
{R} on the beach, does it stay firm
can i sell {R} at an outdoor stall in july
in the tropics is {R} going to melt
holiday in the sun with {R}
market table in full sun, {R} ok
{R} beside a radiator
do i have to stop selling {R} in the warm months
will {R} stand the indian summer
{R} on a windowsill
is {R} suitable for a hot climate
{R} hot day behaviour
does {R} go mushy when the weather turns warm
{R} left out in sunshine
open air fair in august, is {R} safe
gets sticky weather {R} down
how does {R} fare on hot days
will {R} hold on a hiking trip in the heat

= how firm is {R}
is {R} hard or soft
hardness of {R}
what consistency does {R} have
how stiff will {R} be
will {R} be too soft
does {R} come out too hard
texture of {R}, firm or squishy
i want to know how solid {R} sets
firmness number for {R}
{R} when set, can i press a finger in
is {R} scoopable
is {R} more like butter or like a crayon
does {R} dent easily
how tough is {R} at room temperature
{R} feels firm or mushy
will {R} spread well or drag
set {R}, is it rigid
stiffness of {R}
how much give has {R}
is {R} spreadable on the finger
what hardness can i expect of {R}
{R} too waxy and hard or not
rate the firmness of {R}

= is {R} firm enough for a stick
can {R} go in a lip balm tube
will {R} hold as a stick
{R} in twist-up tubes, does that work
is {R} stiff enough to twist up
stick or tin for {R}
does {R} break off when used as a stick
is {R} too soft for tubes
can i pour {R} in chapstick tubes
would {R} stand up out of a push-up tube
{R} suitable for a roll-up stick
{R} as a solid bar
does {R} keep upright when wound out
is {R} hard enough to glide as a stick
put {R} in paper tubes, firm enough
could {R} be a lotion bar
{R} better in a pot or a stick
does {R} squash in a stick
i only have tubes, will {R} do
chapstick from {R}, will it stay up

= pour temperature for {R}
how hot should {R} be when i pour
at what degree do i fill {R} in the containers
when is {R} ready for pouring
pouring heat of {R}
{R} pour at
let {R} cool to what before filling
best temperature to decant {R}
how warm must {R} be going into the tubes
i want to fill {R}, which temperature
thermometer should show what when pouring {R}
filling temp {R}
too hot or too cool to pour {R}, what is right
take {R} off the heat and pour at
{R} goes in the moulds at which degree
do i wait before pouring {R}
jug temperature for filling {R}
{R} is to be poured at how many celsius
coolest i can still pour {R}
recommended pour point of {R}
when to tip {R} into the pots

= bath temperature for {R}
how hot should the water be to melt {R}
water bath setting for {R}
double boiler heat for {R}
bain-marie degrees for {R}
what do i set the hob to for melting {R}
{R} in a warm water bath, how many degrees
how far do i heat the pan for {R}
max heat while making {R}
slow cooker warm enough for {R}, which temperature
keep the water at what for {R}
steam pot temperature, {R}
which heat melts {R} gently
should the water simmer or boil for {R}
{R} heating range on the stove
wax melter setting for {R}
how hot do i get everything to melt {R} together
is boiling water needed for {R}
what degree must the bain marie have for {R}
heater target for {R}

= heat plan for {R}
melting steps for {R}
walk me through heating {R}
how do i melt {R} properly
procedure for melting and pouring {R}
heating instructions {R}
method for {R} on the hob, temperatures and all
{R}, how is it cooked
what do i do at the stove for {R}
how to make {R} step by step with the heat
temperature schedule {R}
stages of heating for {R}
instructions to melt {R} for beginners
how should i warm up {R}
melting and cooling procedure of {R}
guide to melting {R}
process temperatures for {R}
how do you make {R} in the double boiler
teach me to heat {R}
{R} on the stove, the plan
the making method of {R}
bench instructions with temperatures for {R}

= in which order do I melt {R}
what goes in the pot first for {R}
melting sequence of {R}
{R}, wax first or oil first
order of adding ingredients for {R}
do i melt everything in {R} at once
which part of {R} is melted first
first, second, third into the jug, {R}
sequence for {R} in the double boiler
what comes after the wax in {R}
when do the butters go in for {R}
when do i put the oils in {R}
should all of {R} be thrown in together
what do i start with when making {R}
in {R} what is melted last
steps of adding things to {R}, which before which
phase order {R}
who goes in first, wax or butter, for {R}
list the order to melt {R}
the right succession for melting {R}

= at what temperature does the scent go in {R}
when do i drop the essential oil in {R}
how cool must {R} be before the aroma goes in
adding fragrance to {R}, how warm
essential oils in {R}, at which heat
{R} scent goes in below what degree
will the smell evaporate if i add it to hot {R}, when should i
how long to wait before perfuming {R}
flavour oil into {R}, at how many celsius
stir the aroma in {R} at what point
when is it safe to put drops in {R}
what heat kills the scent in {R}
{R} add the aroma at
aromatics into {R} when it has cooled to
i don't want to lose the smell of {R}, add it when
temperature for mixing the essential oil in {R}
last step of {R}, fragrance, how hot
when does the flavouring go into {R}
right moment for perfume in {R}
at which warmth can i scent {R}

= how do I keep {R} from going grainy
why is {R} grainy
{R} has gone gritty
{R} feels like sand, why
my {R} has little lumps
bits in {R} after cooling
stop {R} turning grainy
{R} crystallised, how to cool it right
how should {R} be cooled
crystals in {R}, what went wrong
cool {R} fast or slowly
smooth {R} without grains
do i put {R} in the fridge to set
{R} set with a rough texture
avoid sandy texture in {R}
how to cool {R} so it's silky
{R} gets granules on standing
cooling advice for {R}
should {R} set in the freezer
fix a gritty {R}
leave {R} on the counter or chill it to set
tiny beads formed in {R}

= melt chart of {R}
show {R} as a curve
graph of {R} against heat
picture how solid {R} is by temperature
plot {R} softening
solid fat curve for {R}
draw the melting diagram of {R}
chart me {R}
temperature curve {R}
diagram of {R} going soft
visual of how {R} melts
solids profile of {R}
i'd like to see the graph for {R}
{R} melt graph
the melting curve of {R}
show how much of {R} is solid along the temperatures
percent solid table for {R}
illustration of {R} in heat
see {R} melting as a chart
{R} solid percent over temperature

= how much of {R} is solid at {t}
percent solid of {R} at {t}
solid share of {R} at {t}
what part of {R} is still solid when it's {t}
at {t} how liquid is {R}
solids in {R} at {t}
{R} solid fat content {t}
fraction of {R} not melted at {t}
how far is {R} melted at {t}
consistency of {R} at {t}
how stiff is {R} at {t}
{R} hardness when it is {t}
{t}, is {R} half liquid or what
tell how many percent of {R} stay hard at {t}
at {t} what remains solid in {R}
is {R} mostly liquid at {t}
firmness of {R} measured at {t}
state of {R} at {t}
{R} at {t}, solid percentage
how runny would {R} be at {t}

= does {i} melt at {t}
is {i} liquid at {t}
{i} at {t}, solid or liquid
is {t} enough to melt {i}
will {i} turn liquid at {t}
heated to {t}, is {i} molten
my bath is {t}, does {i} go liquid
can i melt {i} at {t}
{t} hot enough for {i}
does {i} stay hard at {t}
will {i} dissolve in heat of {t}
{i} in a {t} pan, melts or not
{i} still solid at {t}
is {i} runny when it's {t}
would {t} liquefy {i}
what state is {i} in at {t}
does {t} suffice to melt {i}
will {i} be fluid in {t} water
{i}, melted already at {t}
at {t} has {i} become liquid

= and at {t}
@ melt
what if it's {t}
and when it gets {t}
how about {t}
make it {t}
then {t}
now {t}
suppose {t} outside
and on a {t} day
hotter, {t}
even {t}
what happens at {t} then
or rather {t}
if it climbs to {t}
same question with {t}
the forecast says {t} now
no, i meant {t}
and {t}
would {t} change that
also {t}
change the temperature to {t}

= and {i}
@ melt
and how is it with {i}
where does {i} melt then
at which heat {i}
and melting {i}
how hot for {i}
the melting point of {i} also
{i}, how many degrees
what temperature for {i} then
is {i} higher or lower
for {i} as well
the same question about {i}
and {i}
how about {i} then
no, i meant {i}
sorry, {i}
what is it for {i}
i'd like {i} as well
likewise for {i}
repeat for {i}
tell me that for {i}

= will it survive {t}
@ scale
does it hold at {t}
is {t} too hot for it
and in {t} heat does it last
it sits at {t}, any danger
can it take {t}
is it still solid at {t}
would it go runny at {t}
does that one stand {t}
how does it do at {t}
{t} day, will it keep its shape
will that melt at {t}
what becomes of it at {t}
fine at {t} or not
does it stay put at {t}
store it at {t}, okay
could it be shipped at {t}
{t} on the stall, does it hold
the room gets {t}, will it be a puddle
does it slump at {t}
safe up to {t}

= when does it melt
@ scale
at what temperature does that go liquid
how heat proof is it
melting point of this one
and how firm is it
will it be hard or soft
where does it soften
what does heat do to it
its melting point
how hot before it runs
softening point of it
when will that turn soft
does it go soft easily
how stable is it in the heat
how many degrees can it take
is it firm enough
and the melt
when would this one liquefy
is it going to be runny in summer
show its melting curve

= what is the pour temperature
@ scale
how hot do i pour it
when can i fill it in
at how many degrees do i pour this
how hot should the bath be for that
and the heat plan
in what order do i melt it
how do i melt it
when do i add the scent to it
how should i cool it
steps for heating it
what goes in the pot first
filling temperature
let it cool to what before pouring
pour at
how warm should it be in the jug
melting method for it
and how is it heated
take it off the hob when
water bath for it, which heat
`;
