/** Ways of asking for what `check` answers; bot/likeness/sayings.ts says how they are written. */
export const check = `
= check {R}
anything not allowed in {R}
are there things in {R} i should know about before i sell it
tell me if {R} has a problem
go over {R} before the market
is {R} alright
look over {R} for problems
anything wrong with {R}
safety check on {R}
go through {R} and tell me what does not belong on lips
is {R} safe to use
have a look at {R} for me
does {R} pass
would you approve {R}
vet {R}
any red flags in {R}
inspect my formula {R}
audit {R}
is {R} within limits
can people put {R} on their lips
examine {R}
proofread {R} before i pour it
am i doing something dangerous in {R}
is everything in {R} allowed
scan {R} for trouble
i want {R} looked through
run your eye down {R}
review of {R}
{R}: ok or not ok
any worries about {R}
will {R} harm anybody
is there something i should fix in {R}

= check {R} in {region}
i am selling {R} in {region} next month, anything not allowed in it
we want to sell {R} in {region}, is everything in it allowed
can {R} be sold in {region}
is there anything in {R} that {region} does not allow
i would like to bring {R} to {region}, does it keep the rules
what would {region} say about {R}
is {R} allowed in {region}
does {R} meet the rules of {region}
may i sell {R} in {region}
{R} under {region} rules
is {R} legal in {region}
would {R} pass in {region}
limits for {R} in {region}
anything {region} would object to in {R}
look over {R} by {region} law
i ship {R} to {region}, is it alright there
{R} at a market in {region}, is the formula permitted
go through {R} for {region}
vet {R} against {region}
can customers in {region} use {R}
how does {R} stand in {region}
is {R} within what {region} permits
compliance of {R} with {region}
inspect {R} as if i lived in {region}
does {region} ban something in {R}
{R} checked by the book of {region}
{region} restrictions that touch {R}
safe and allowed in {region}, {R}

= is {%} {aroma} ok in a lip balm
i want to add {aroma} to a lip balm, {%} of it, would that be all right
a student wants to add {aroma} to her lip balm, {%}, is that all right
she would put {aroma} in her balm, {%} of it, is this okay
someone in my class adds {%} of {aroma}, would that be fine
we plan to add {%} {aroma}, is that allowed
can i put {%} of {aroma} in
is {%} of {aroma} too much for lips
{aroma} at {%}, safe
would {%} {aroma} sting
{%} {aroma} on the mouth, alright
is {%} a sensible dose of {aroma}
my recipe says {%} {aroma}, fine or over the limit
{aroma} {%} in a lip stick
am i overdoing it with {%} {aroma}
may a lip balm hold {%} {aroma}
{%} {aroma}: within limits
does {%} {aroma} burn lips
is {%} of {aroma} allowed
too strong? {aroma} {%}
i scent with {%} {aroma}, ok
{%} of {aroma} in chapstick
lip product containing {%} {aroma}
would you use {%} {aroma} on lips
{aroma} dosed {%}, is that permitted
check {aroma} {%}
is {%} {aroma} harmless for lips
can lips stand {%} {aroma}
{%} {aroma} acceptable
somebody put {%} {aroma} in, is this dangerous

= is {%} {aroma} ok for children
{%} {aroma} in a balm for kids
can children have {%} {aroma}
is {%} of {aroma} safe for little ones
{aroma} at {%} on a child
may a school class use {%} {aroma}
my daughter will use it, {%} {aroma}
too strong for kids? {%} {aroma}
{%} {aroma} for toddlers' lips
kids balm with {%} {aroma}, fine
would {%} of {aroma} hurt a child
{aroma} {%}, children's workshop
is {%} {aroma} harmless to young children
for my son's lip balm i took {%} {aroma}
{%} {aroma} suitable for youngsters
child safe with {%} {aroma}
boys and girls wear it, {%} {aroma}
is it ok for my niece with {%} {aroma}
nursery children and {%} {aroma}
do kids tolerate {%} {aroma}
pupils will wear {%} {aroma}

= is {d} of {aroma} in {g} ok
{d} {aroma} to {g}, too much
can i add {d} of {aroma} to {g} of balm
{g} of balm with {d} {aroma}
is {d} of {aroma} safe in {g}
i dripped {d} {aroma} into {g}
what percent is {d} {aroma} in {g} and is it fine
{d} {aroma} per {g}, alright for lips
put {d} {aroma} in a {g} pot, too strong
would {d} of {aroma} in {g} sting
my grandmother takes {d} {aroma} for {g}
a {g} melt scented with {d} {aroma}, allowed
{aroma} {d} in {g} within the limit
am i over the limit with {d} of {aroma} in {g}
for {g} i count {d} {aroma}, ok
{d} of {aroma} dropped in {g}, safe on lips
does {g} stand {d} {aroma}
{g} batch, {d} {aroma}, is this permitted
scenting {g} by {d} of {aroma}
is {d} {aroma} into {g} overdone
{d} {aroma} for {g} wax mix, okay

= how many drops of {aroma} may i put in {g}
we make {g}, how many drops of {aroma} at most
{g} batch, how many drops of {aroma} at most
i have {g}, how many drops of {aroma} could i add
max drops of {aroma} for {g}
how many drops {aroma} does {g} take
drops of {aroma} allowed in {g}
what is the most {aroma} for {g}
how much {aroma} goes in {g} of balm
{g} of balm, how many drops of {aroma}
safe number of drops {aroma} in {g}
how far can i go with {aroma} in {g}
scenting {g} with {aroma}, drop count
limit of {aroma} for a {g} melt
{aroma} for {g}, at most
upper limit drops, {aroma}, {g}
count of drops of {aroma} into {g}
how generous may i be with {aroma} in {g}
permitted {aroma} in {g}
i melt {g}, {aroma} drops please
how many drips {aroma} in a {g} jug
{aroma} dose for {g}
when is {aroma} too much in {g}
the {aroma} that {g} of lip balm bears

= how many drops of {aroma} for {g} at {%}
i am making {g} and want {%} {aroma}, how many drops is that
{g} with {%} {aroma}, drops please
i want {%} {aroma} in my {g}, how many drops would that be
{%} of {aroma} in {g} is how many drops
my pot holds {g}, i like {%} {aroma}, count the drops
{%} {aroma} in {g} makes how many drops
drops for {%} of {aroma} in {g}
i want {%} {aroma} in {g}, count the drops
turn {%} {aroma} of {g} into drops
{g} with {%} {aroma}, drop count
dripping {aroma} to {%} in {g}
how many drops is {%} {aroma} for a {g} batch
{aroma} {%}, {g} balm, in drops
my scale is too coarse, {%} {aroma} in {g} as drops
pipette drops {aroma} to reach {%} of {g}
to get {%} {aroma} in {g} i drip how many
{%} of {g} in drops of {aroma}
drops needed: {aroma}, {%}, {g}
scent {g} at {%} with {aroma}, drops
for {g} at {%} how many {aroma} drops
number of drops making {%} {aroma} in {g}
{g} pot wants {%} {aroma}, how many drips
count {aroma} drops, {g} melt, {%}
dropper says what for {%} {aroma} in {g}

= what is the maximum for {aroma} in lip balm
how much {aroma} may i use
limit for {aroma}
highest percentage of {aroma} on lips
max {aroma}
how strong can {aroma} be
what percent {aroma} is allowed
ceiling for {aroma} in lip products
at most how much {aroma}
safe level of {aroma}
when is {aroma} too much
how far may i go with {aroma}
the {aroma} limit for lips
upper bound {aroma}
dosage of {aroma} for lip balm
how many percent {aroma} before it stings
{aroma} maximum
recommended top dose of {aroma}
permitted share of {aroma}
is there a cap on {aroma}
what do the rules say about amount of {aroma}
usual {aroma} strength for lips
{aroma} in lip balm, up to what

= what is the maximum for {aroma} in {region}
how much {aroma} may i use in {region}
{region} limit for {aroma}
highest percentage of {aroma} allowed in {region}
max {aroma} under {region} rules
what percent {aroma} does {region} permit
ceiling for {aroma} by {region} law
at most how much {aroma} in {region}
legal level of {aroma} in {region}
{region} cap on {aroma}
does {region} restrict {aroma}
i sell in {region}, how far may i go with {aroma}
upper bound {aroma} {region}
{aroma} dose allowed across {region}
how strong can {aroma} be for {region}
permitted share of {aroma}, {region}
what do {region} rules say on {aroma}
for {region} customers, {aroma} up to what
{aroma} restriction in {region}
{region}: {aroma} maximum

= is {aroma} safe on lips
can i use {aroma} in a lip balm
{aroma} near the mouth, ok
may {aroma} go on lips
is {aroma} harmful when licked
does {aroma} irritate lips
i was given {aroma}, can it go in lip balm
{aroma} in lip products allowed
should {aroma} stay away from lips
is {aroma} alright to kiss with
any danger from {aroma} on the lips
{aroma} as lip flavour, fine
is {aroma} edible enough for lip balm
warnings for {aroma} on lips
would {aroma} make lips sore
does {aroma} belong in chapstick
{aroma} on mouth, good idea
safety of {aroma} for lips
is {aroma} an irritant
{aroma} lip use, yes or no
can {aroma} be worn on lips

= is {aroma} light sensitising
do {aroma} and sunshine go together
is it true that {aroma} and the sun do not go together
may i wear {aroma} in the sun
does {aroma} react with sun
{aroma} and sunlight
does {aroma} burn skin in the sun
phototoxic? {aroma}
is {aroma} a problem at the beach
can i go outside with {aroma} on
wearing {aroma} in summer sun
does {aroma} cause sun spots
is {aroma} photosensitising
sunbathing with {aroma}
{aroma} under uv light
will {aroma} give marks after sun
{aroma} in daylight
lip balm with {aroma} on a ski trip in bright sun
is the sun an issue with {aroma}
{aroma} phototoxicity
are there sun burns from {aroma}
should {aroma} stay out of the sun
does light make {aroma} dangerous

= is {aroma} ok for children
can kids use {aroma}
{aroma} around little ones
is {aroma} safe for a child
may i use {aroma} with a school class
{aroma} for my daughter
my son wants {aroma}, may he
should children stay away from {aroma}
{aroma} kids
young children and {aroma}
is {aroma} harmful to youngsters
from what age {aroma}
would {aroma} hurt a child
{aroma} in children's lip balm
scout group using {aroma}, fine
{aroma} at a kids' birthday party
child safe {aroma}
does {aroma} suit a nursery
can pupils wear {aroma}
is {aroma} for grown ups only

= is {R} ok for children
can a year old use {R}
is {R} alright for a year old
could the little ones wear {R}
my kids want to use {R}, is that ok
may children have {R}
would {R} be suitable for school age children
can kids use {R}
is {R} safe for little ones
{R} on a child's lips
may i give {R} to a school class
my daughter loves {R}, is that fine
{R} for my son
does {R} suit youngsters
is {R} for grown ups only
children at the stall try {R}, alright
{R} kids
young children wearing {R}
would {R} harm a child
from what age is {R}
can i make {R} with scouts
is {R} kid friendly
a birthday party of children gets {R}
{R} as gift for my niece in primary school
pupils putting on {R}
{R} in the nursery
grandchildren and {R}, any worry

= is {R} ok for babies
can i put {R} on a baby
{R} for newborns
is {R} safe on my infant
baby cheeks and {R}
{R} for a nursing baby
a baby shower gift of {R}, can the baby wear it
does {R} suit an infant
may babies have {R}
{R} on a crawling baby
my newborn has dry skin, {R}
is {R} gentle enough for a baby
baby safe {R}
would {R} harm an infant
{R} as a baby balm
can mums use {R} on their babies
baby skin and {R}
toddler and baby use of {R}

= does {R} contain nuts
are there nuts in {R}
is there any nut in {R}
may somebody with a nut allergy wear {R}
my friend has a nut allergy, can she wear {R}
nuts in {R}
does {R} have almond or other nut oil
somebody allergic to nuts, {R}
any tree nut in {R}
my pupil reacts to nuts, can she have {R}
can a person with nut allergy use {R}
peanut or tree nut in {R}
is a nut hidden in {R}
which lines of {R} come from nuts
nut content of {R}
would {R} set off a nut allergy
traces from nuts, {R}
nut oils used in {R}
is {R} made with nuts
customer asks about nuts in {R}

= which allergens must I declare for {R}
allergens to name for {R}
what allergens are in {R}
fragrance allergens in {R}
list the allergens of {R}
does {R} have declarable allergens
which substances of {R} must be named as allergens
linalool and the like in {R}
{R} allergen list
what in {R} could cause allergy and must be named
allergens {R}
which allergens belong on the tin of {R}
have i got allergens to declare with {R}
scent allergens from {R}
tell me the allergen names for {R}
declare what allergens, {R}
allergic substances to be mentioned for {R}
someone with allergies asks what is in {R}
allergen declaration of {R}
does {R} go over the allergen thresholds

= which allergens must be declared for {R} in {region}
allergens to name for {R} in {region}
{region} allergen rules applied to {R}
fragrance allergens of {R} under {region} law
list the allergens of {R} for {region}
does {region} want allergens declared on {R}
which substances of {R} must be named as allergens in {region}
{R} allergen list {region}
selling {R} in {region}, which allergens do i name
allergens {R} {region}
have i got allergens to declare in {region} with {R}
tell me the allergen names {region} asks for on {R}
declare what allergens for {region}, {R}
allergen declaration of {R}, {region}
scent allergens from {R} that {region} wants named
going by {region}, allergens in {R}
{region} customers, allergens of {R}
what allergens does {region} make me print for {R}

= is {R} light sensitising
does {R} react with sun
{R} and sunlight
can i wear {R} in the sun
is {R} phototoxic
{R} at the beach, do the oils react with sun
does something in {R} make skin sensitive to light
is {R} alright in summer sun
photosensitising things in {R}
will {R} give sun spots
wearing {R} outdoors on a bright day
citrus in {R} and the sun
sunbathing with {R} on
{R} under uv
do i need a sun warning for {R}
skiing with {R} on my lips in strong sun
{R} phototoxicity
does light make {R} dangerous
should wearers of {R} stay out of the sun
is bright daylight a trouble with {R}

= add {%} {aroma} to {R} and check it
check {R} with {%} {aroma}
can {R} take {%} {aroma}
if i add {%} of {aroma} to {R}, is it still ok
{R} plus {%} {aroma}, safe
scenting {R} with {%} {aroma}, alright
would {%} {aroma} in {R} be too much
putting {%} {aroma} into {R}
is {R} fine with {%} of {aroma} in it
{%} {aroma} on top of {R}, limits
may {R} get {%} {aroma}
i want {%} {aroma} in {R}, any problem
does {R} stay within limits at {%} {aroma}
{R} scented {%} {aroma}
{aroma} {%} added to {R}, allowed
adding {aroma} at {%} in {R}
drop {%} {aroma} in {R}, would it sting
what happens to the limits of {R} with {%} more {aroma}
is {%} of {aroma} ok in {R}
{R} flavoured by {%} {aroma}
could {R} carry {%} {aroma}
stir {%} {aroma} through {R}, okay

= and if only {%}
@ check
and at {%}
what about {%}
with {%} then
say i drop to {%}
{%} instead
and {%}
would {%} be fine
lower it to {%}
suppose {%}
i could go down to {%}
cut back to {%}
try {%}
is {%} better
make that {%}
just {%} then
how is {%}
and when it is {%}
a weaker {%}
reduce to {%}
change to {%}

= and for children
@ check
what about kids
and on a child
would that go for little ones
fine for kids too
and if children wear it
is that for youngsters as well
and my daughter
also for pupils
and a school class
can kids have it
little ones too
for my niece in primary school
and with children around
does it hold for kids
my son as well

= and in {region}
@ check
what about {region}
and under {region} rules
does {region} see it the same
same for {region}
now for {region}
i also sell to {region}
how is it in {region}
would {region} allow it
and over in {region}
check it for {region}
if i lived in {region}
and by {region} law
{region} too
and customers from {region}
also by the rules of {region}
is it allowed in {region}
for shops in {region}
{region} as well
`;
