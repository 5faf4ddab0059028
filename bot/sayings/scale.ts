/** Ways of asking for what `scale` answers; bot/likeness/sayings.ts says how they are written. */
export const scale = `
= scale {R} to {tins}
weigh-out sheet for {R} filling {tins}
i need to fill {tins} with {R}, what do i weigh
how many grams of everything so that {R} gives {tins}
blow {R} up until it does {tins}
{tins} of {R}, the gram table
market order is {tins}, product is {R}, work out the amounts
recalculate {R} for a run of {tins}
we are making {tins} of {R} tonight, quantities
enlarge the formula {R} so it yields {tins}
what goes on the scale for {tins} of {R}
customer ordered {tins} and wants {R}, give me the weights
adjust {R} to suit {tins}
amounts to make {tins} of {R}
i have {tins} standing empty here and {R} on paper, do the sums
let us produce {tins}, formula {R}
size up {R} for {tins}
batch sheet {R}, {tins}
how big a batch of {R} do {tins} take
what total must i melt of {R} to end up with {tins}
grams per ingredient, {R}, {tins}
the class is going to pour {tins} of {R}, tell us each weight
{R} is to be portioned into {tins}, ingredient masses wanted
stretch {R} across {tins}
work {R} out to {tins} for me
need enough {R} for {tins}
how much stuff do i measure if i want {tins} of {R}
quantity calculation for {tins} using {R}
want to do {tins} of {R} for christmas presents, how much of each
multiply {R} up so all {tins} are full
upscale {R}, target {tins}
prepare the weighing list, {tins}, {R}
bring {R} to the amount that {tins} hold
{tins} to be reckoned with {R}

= scale {R} to {g}
weigh out {g} of {R}
{g} batch of {R}, what are the amounts
i want {g} in the pot, made like {R}
make exactly {g} from {R}
break {g} of {R} down into its ingredients
total of {g}, following {R}
resize {R} so the whole comes to {g}
how do i get {g} out of {R}
recalculate {R}, total weight {g}
grams of each thing in a {g} lot of {R}
bring {R} up to {g} altogether
my pan only takes {g}, adapt {R} to it
trial amount of {g} of {R}, weights
sums for {g} of {R}
bulk order {g}, formula {R}
convert {R} into a {g} weigh sheet
someone wants {g} of {R}, how much of every part
{R} at a finished mass of {g}
put {R} on a {g} basis
{g} altogether of {R}, list the quantities
prepare {g} worth of {R}
the melt shall be {g}, ratio as in {R}
if i make {g} of {R} how much goes in of each
cut {R} to fit {g}
split {g} according to {R}
measure-out list for {R} coming to {g}
need about {g} of {R}, what to weigh

= scale {R} to {v}
{v} of {R}, what do i weigh out
i need {v} volume of {R}
my jug holds {v}, fill it with {R}
a pot of {v} filled with {R}, grams of each
recalculate {R} so it takes up {v}
how much of each for {v} liquid {R}
make {v} of {R} altogether
{R} enough to occupy {v}
bottle of {v}, contents {R}, weights
the mould has {v} capacity and shall hold {R}
work out {R} for a total of {v}
quantities for {v} worth of {R}
resize {R} to a volume of {v}
measure for {v} using the formula {R}
i am after {v} in all of {R}
bring {R} up to {v}
give amounts so that {R} makes {v}
batch volume {v}, recipe {R}
one big {v} vessel of {R}, ingredient weights
adapt {R} for {v} total
how many grams go into {v} of {R}

= scale {R} with my {g} of {i}
i only have {g} of {i}, how big can {R} get
{g} of {i} left in the bag, use it all in {R}
stretch {g} {i} as far as it goes in {R}
{i} is the bottleneck, {g}, work out {R} around it
use up {g} of {i} making {R}
what else do i weigh beside {g} {i} for {R}
{R} based on {g} of {i}
all the {i} i own is {g}, size {R} to that
my {i} weighs {g}, match the rest of {R} to it
starting from {g} {i}, the other amounts for {R}
there is {g} of {i} and no more, how much {R} does that make
make as much {R} as {g} of {i} allows
limited by {g} {i}, calculate {R}
i weighed {g} {i} already by accident, adjust {R} to fit
block of {i} came to {g}, i'd like it all to go in {R}
how far will {g} of {i} go in {R}
finish off my {g} of {i} with {R}
we have {g} {i} remaining, biggest batch of {R}
given {g} of {i} what is the total of {R}
{R} around the {g} of {i} in my cupboard
tipped in {g} of {i} for {R}, now the others in proportion
fix {i} at {g} and balance {R} around it
got {g} {i} in hand, {R}, how much comes out

= scale {R} with my {g} of {i}, {size} each
{g} of {i} is all i have, number of {size} of {R}
with {g} {i}, {R} gives how many {size}
count of {size} from {R} if {i} is limited to {g}
my {g} of {i} makes how many {size} of {R}
i own {g} {i}, filling {size} with {R}, how many come out
will {g} of {i} stretch to plenty of {size} of {R}, tell me the count
{R} in {size}, only {g} of {i} available, maximum count
last {g} of {i}, how many {size} of {R} before i run out
how far does {g} {i} go when i fill {size} with {R}
number of {size} {R} yields from {g} of {i}
having {g} {i}, how much {size} i can do with {R}
most {size} possible of {R} given {g} {i}
{i} stands at {g}, {R} goes in {size}, what quantity can be produced
how many {size} of {R} until my {g} of {i} is gone
{g} {i} used up in {R}, {size} each, how many pieces
before reordering {i}, {g} left, {size} of {R} still possible
tell me how many {size} i get, {R}, {i} {g}
for {R} i hold {g} of {i}, {size} obtainable
{size} count for {R} out of {g} {i}
can do how many {size} of {R} from {g} of {i}

= scale {R} to {g}, {size} each
{g} of {R} is melted, how many {size} does it fill
i have {g} {R} in the jug, number of {size}
count {size} out of {g} {R}
dividing {g} of {R} into {size} gives how many
{R}, {g} batch, {size}, how many do i need ready
if i cook {g} of {R} how many {size} come out
how many {size} should i set out for {g} of {R}
{g} {R} portioned into {size}, the count
yield in {size} of {g} {R}
how far does {g} of {R} go in {size}
{g} of {R} makes what number of {size}
how many {size} can be filled by {g} of {R}
pouring {g} {R} into {size}, how many will be full
wash how many {size} for a {g} pot of {R}
{size} wanted for {g} of {R}, tell the number
will be left with how many {size} after pouring {g} {R}
{g} {R} will do how many {size}
kids ask how many {size} come from {g} of {R}
split {g} of {R} between {size}, how many
got {g} worth of {R}, {size}, how many pieces
number of {size} per {g} lot of {R}
from one {g} pan of {R} how many {size}

= double {R}
a batch of {R} that is twice as large
{R} again on top of itself, so twice
second helping, {R} doubled in one melt
twice the quantity of {R}
{R} times two
make {R} twice as big
two batches of {R} in one go
a doubled {R}
i want {R} but two times the amount
multiply {R} by two
{R}, both quantities twice over
double up {R} for me
make two lots of {R} together
do {R} twofold
duplicate the amounts in {R}
everything in {R} twice
{R} double batch, the weights
increase {R} to twice its size
we need twice {R} this week
{R} two times over
take {R} and double all the weights
repeat {R} twice in one pot

= half of {R}
only make half the {R}
{R}, one half of the quantity
half a batch of {R}
cut {R} in half
halve the amounts in {R}
{R} but only half as much
i want to try {R} at half size
divide {R} by two
make {R} half as big
reduce {R} by half
half quantity {R}
smaller, the half of {R}
i don't need so much {R}, half will do
{R} halved, the weights
do {R} in half measure
{R} over two
everything in {R} at one half
a half portion of {R}
bring {R} down to half its size
{R} is too much for me, split it in two

= {n} times {R}
{R} multiplied by {n}
{n} batches of {R} in one pot
make {R} {n}-fold
{n}x {R}
{R} x {n}
increase {R} by a factor of {n}
multiply everything in {R} with {n}
i want {n} lots of {R} at once
{R} {n} times over
factor {n} on {R}
{n} rounds of {R} together, the weights
repeat {R} {n} times as a single batch
{R} bigger, {n} times as much
all the amounts of {R} times {n}
{n} times the usual {R}
do {R} {n} times larger
enlarge {R}, multiplier {n}
scale up {R} by {n}
we will need {n} times the quantity of {R}
{n} multiples of {R}
{R} with every figure times {n}

= {R} to {tins}, no loss
{tins} of {R} without any allowance for waste
fill {tins} with {R}, zero extra
weights of {R} for {tins}, nothing added for the jug
exactly {tins} of {R}, no spare
{R} into {tins}, leave out the wastage
net amounts only, {R}, {tins}
{tins} of {R} and do not add a safety margin
no surplus, {R} for {tins}
{R}, {tins}, assume i scrape the pot perfectly clean
don't reckon any spillage, {tins} of {R}
zero loss on {tins} of {R}
{tins}, {R}, allowance nil
just what ends in {tins} of {R}, nothing for the spoon
without extra percent, {R}, {tins}
i lose nothing when pouring, {R} to {tins}
skip the overage, {tins} of {R}
bare quantity of {R} for {tins}, no overage
{tins} of {R}, loss off
exact fill of {tins}, {R}, no wastage added

= {R} to {tins}, loss {%}
{tins} of {R} allowing {%} for waste
add {%} extra for spillage, {R}, {tins}
weigh {R} for {tins} with {%} allowance
{R}, {tins}, wastage {%}
i usually lose {%} in the jug, {tins} of {R}
{tins} of {R} plus {%} margin
allow for {%} sticking to the pot, {R} into {tins}
overage of {%} on {tins} of {R}
{%} spare when making {tins} of {R}
my pouring wastes {%}, {R}, {tins}
fill {tins} with {R} and count {%} as lost
{tins} from {R} including {%} surplus
reckon {%} losses, {R} to {tins}
with beginners {%} gets spilled, {tins} of {R}
{R} for {tins}, safety {%}
expect {%} to stay on the spoons, {tins}, {R}
put {%} on top for what gets left behind, {tins} of {R}
shrinkage {%}, {R}, {tins}
{%} buffer, {tins}, {R}
set aside {%} for residue, {tins} of {R}

= {R} to {tins}, to the nearest {g}
{tins} of {R}, round to {g}
my scale shows steps of {g}, {R} for {tins}
{R} for {tins}, rounded to {g}
weights for {tins} of {R} in {g} steps
balance reads {g}, {tins} of {R}
accuracy {g}, {R}, {tins}
{R}, {tins}, precision of {g}
give {tins} of {R} to an exactness of {g}
kitchen scale resolution is {g}, do {tins} of {R}
rounding of {g}, {tins}, {R}
figures accurate to {g} for {tins} of {R}
jeweller scale with {g} readability, {R} into {tins}
show {tins} of {R} at {g} resolution
smallest step i can weigh is {g}, {tins} of {R}
{tins} of {R}, no finer than {g}
work to {g} for {tins} of {R}
increments of {g}, {R}, {tins}
round everything off at {g}, {tins}, {R}
as precise as {g}, {tins} of {R}
weighing in {g} intervals, {R}, {tins}

= how much {i} if I scale {R} to {tins}
{i} needed to fill {tins} with {R}
amount of {i} that goes into {tins} of {R}
for {tins} of {R} what quantity of {i}
weight of {i} in {tins} worth of {R}
{R}, {tins}, just tell me the {i}
how many grams of {i} do {tins} of {R} take
if i make {tins} of {R} how much {i} is used
{i} required, {tins}, {R}
i am shopping {i} for {tins} of {R}, how much
{tins} of {R} eat up how much {i}
the {i} portion for {tins} of {R}
what do i weigh of {i} when making {tins} of {R}
grams {i}, {R}, {tins}
how much {i} should be melted for {tins} of {R}
will use what weight of {i} in {R} for {tins}
{i} consumption for {tins} of {R}
tell the {i} figure in {R} for {tins}
before i pour {tins} of {R}, how much {i} do i want
{tins} made after {R} contain how much {i}
quantity {i} going in {R}, {tins}

= how much {i} if I scale {R} to {g}
{i} in a {g} batch of {R}
how many grams {i} go into {g} of {R}
for {g} {R} what weight of {i}
{g} of {R}, just the {i} amount
making {g} of {R}, how much {i} is used
amount of {i} inside {g} {R}
{i} needed for {g} of {R}
if the pot is {g} of {R} then {i} is how much
weigh how much {i} when {R} totals {g}
{R} at {g}, the {i} share in grams
what does {g} of {R} take of {i}
quantity of {i}, {R}, total {g}
{g} altogether of {R}, {i} is what weight
how much {i} belongs in {g} of {R}
grams of {i} to make {g} {R}
{g} of {R} uses up how much {i}
tell me {i} only, {g} lot of {R}
how heavy is the {i} part in {g} {R}
{i} required per {g} of {R}
{R}, batch weight {g}, measure of {i}

= what jug do I need for {tins} of {R}
size of jug for {tins} of {R}
which beaker is big enough for {tins} of {R}
how large a pouring vessel for {tins} of {R}
{tins} of {R}, what pitcher holds that
melting jug capacity, {R}, {tins}
will need a pot of which volume to melt {tins} of {R}
how big must the saucepan be for {tins} of {R}
smallest pyrex that takes {tins} of {R}
double boiler insert size for {tins} of {R}
which measuring jug do i get out for {tins} of {R}
{R} for {tins}, jug size
is my beaker large enough for {tins} of {R}, what volume should it be
so it doesn't slop over, jug for {tins} of {R}
vessel volume to melt {R} for {tins}
litre jug or half litre jug for {tins} of {R}
what container do i melt {tins} of {R} in, how big
pitcher for pouring {tins} of {R}
capacity of the jug, {tins}, {R}
how roomy a bain-marie bowl for {tins} of {R}
choose a jug for {tins} of {R}

= how much is the first pour for {tins} of {R}
{tins} of {R}, hot fill and top up per piece
how much to top up {tins} of {R} after the dent forms
first pour weight each, {tins}, {R}
{R} sinks in the middle, how much refill for {tins}
grams hot to the fill line, {tins} of {R}
second pour for {tins} of {R}
top-up amount when {R} shrinks in {tins}
{tins} of {R}, how far do i fill at first and how much afterwards
how many grams initially into each, {R}, {tins}
the dimple on cooling, {R}, {tins}, what to hold back
keep how much back for topping off {tins} of {R}
initial fill, {tins} of {R}
pouring {R} in two goes, {tins}, how much each go
sinkhole refill for {tins} of {R}
how much do i pour at the start in {tins} of {R}
two-stage pour of {R} into {tins}, both weights
topping off {tins} of {R}, the grams
reserve for the shrink hole, {tins}, {R}
level with the rim, first pouring of {R} in {tins}
what goes in hot and what goes in later, {tins} of {R}

= and for {tins}
@ scale
what about {tins} then
make it {tins} instead
no, i meant {tins}
same again with {tins}
how would it look with {tins}
change that to {tins}
{tins} this time
now do {tins}
rather {tins}
sorry, {tins} it is
suppose i want {tins}
switch to {tins}
the order changed, it is {tins} now
and if it were {tins}
redo it for {tins}
the same thing in {tins}
could it be {tins} too
actually we have {tins}
recount with {tins}
update it, {tins}
let's go for {tins}
also {tins}
next one, {tins}
correction {tins}

= and for {g}
@ scale
what about {g} then
make it {g} instead
same again at {g}
change the total to {g}
now {g} altogether
rather {g}
redo it for {g}
how would that be with {g}
switch to {g}
actually only {g}
suppose the batch is {g}
if i make {g} of it
no, {g} in total
a {g} pot this time
the same mixture, {g}
correction, {g} in all
bump it to {g}
bring it to {g}
also for {g}
recalculate it with {g} total
sorry, should be {g}

= and at {size} each
@ scale
same number but {size}
use {size} instead
what if i fill {size}
change the size to {size}
we only have {size}
swap the container, {size}
no, {size} they are
with {size} then
the supplier sent {size}
put it in {size} rather
if they were {size}
make those {size}
i was wrong, it's {size}
now with {size}
containers are {size} really
bigger or smaller, take {size}
and when {size} are used
same count in {size}
different packaging, {size}
{size} this time

= and for {n} tins
@ scale
{n} of them instead
make it {n}
what if there are {n}
just {n} this time
{n} pieces rather
change the count to {n}
now {n} of those
no, {n} of them
same size but {n}
i need {n} after all
how about {n}
only {n} are wanted
{n} would be better
the number is {n}
let it be {n}
suppose we fill {n}
increase or reduce to {n}
redo with {n}
there are {n} people now
actually {n}

= and with no loss
@ scale
leave out the allowance
without the waste
don't add anything for spillage
no extra this time
and if nothing is lost
skip the wastage
zero waste then
drop the margin
same thing, no overage
remove the surplus
i scrape the jug clean
without the spare bit
nothing for the spoon
net weights only
and exact, no allowance
cancel the loss
the same minus the allowance
i don't lose any

= and with loss {%}
@ scale
add {%} for waste
allow {%} for spillage this time
make the allowance {%}
what if i lose {%}
use {%} wastage
{%} spare instead
change the loss to {%}
reckon {%} lost
put {%} extra on it
overage {%}
and {%} for the jug
{%} sticks to my pot
take {%} surplus
we spill more, {%}
{%} as safety
same but {%} buffer
raise the waste to {%}
the extra should be {%}
assume {%} gets left behind

= and in ounces
@ scale
show that in oz
i weigh in ounces
my scale is american, ounces
give the same in oz
imperial weights for that
convert the table to ounces
ounces instead of grams
what is that in ounces
i don't do grams, oz
the list again but oz
with oz column
in imperial
can i have ounces
same table, ounces
switch the units to oz
grams mean nothing to me, ounces
us weights for it
put it in oz
how many ounces of each

= double that
@ scale
twice as many
two times it
and twice
now the same doubled
make it twice the size
times two
two of those batches
and if i do it twice over
both batches together, twice
do that double
everything twice
double the lot
as much again
doubled
twofold this time
multiply it by two
the same two times
want double now

= half of it
@ scale
now only one half of those
cut those numbers in half
fewer, half
only half as many
cut it in half
halve that
and half
half the lot
divide it by two
half a batch then
just one half
make it half the size
half as much this time
reduce it by half
that is too much, half
do half
the same halved
split that in two
now half the amount
half would be enough

= and {R}
@ scale
the same for {R}
now {R} as well
what about {R} then
do that with {R}
likewise {R}
repeat it for {R}
and what if it's {R}
how about {R}
instead take {R}
same question, {R}
next {R}
{R} too
change the recipe to {R}
no, i meant {R}
sorry, for {R}
and using {R} instead
i also want it for {R}
same thing but {R}
then {R}
could we see {R} the same way
`;
