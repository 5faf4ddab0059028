/** Ways of asking for what `cost` answers; bot/likeness/sayings.ts says how they are written. */
export const cost = `
= {i} costs {n} per kg
i found {i} for {n} a kilo, put that in the price list
note that a kilo of {i} now costs us {n}
put {i} in the list at {n} per kg
i pay {n} a kilo for {i}
{i} is {n} a kilogram
the {i} price is {n} per kilo now
our supplier asks {n} per kg for {i}
{i} went to {n} a kilo
note {i} at {n} per kg
a kilo of {i} sets me back {n}
the kg {i} is {n}
{i} {n} the kilo
for {i} they charge {n} a kilo
put down {n} per kilo against {i}
{i} bought at {n} per kilogram
per kg {i} is {n}
new price {i}, {n} a kilo
wholesaler wants {n} each kilo of {i}
i get {i} for {n} the kilogram
kilo price of {i} is {n}
{i} now comes to {n} per kg
remember that {i} is {n} per kilo
each kilo of {i} is {n}
{n} is what a kilo of {i} goes for

= {i} costs {n} for {g}
i paid {n} for a {g} bag of {i}
a {g} pack of {i} cost me {n}
we got {g} of {i} for {n}
i paid {n} for {g} of {i}
{g} {i} is {n}
{g} of {i} set me back {n}
a {g} bag of {i} is {n}
{i}, {g}, {n}
the {g} pack of {i} goes for {n}
{i} comes in {g} for {n}
note {g} {i} at {n}
supplier asks {n} for {g} {i}
price of {i} is {n} the {g}
{i} sells at {n} per {g}
for {g} {i} they charge {n}
my invoice says {i} {g} {n}
{n} buys {g} of {i}
{n} per {g} of {i}
the {i} i order is {n} for a {g} block
{g} sack {i} at {n}
{i} was {n}, that was {g}
put down {n} against {g} of {i}
a {g} tub {i} is priced {n}

= {i} costs {n} for {v}
i paid {n} for a {v} bottle of {i}
a {v} bottle of {i} cost me {n}
we got {v} of {i} for {n}
bought {v} {i}, paid {n}
i paid {n} for {v} of {i}
{v} {i} is {n}
{v} of {i} set me back {n}
a {v} bottle of {i} is {n}
{i}, {v}, {n}
the {v} bottle of {i} goes for {n}
{i} comes in {v} for {n}
note {v} {i} at {n}
supplier asks {n} for {v} {i}
price of {i} is {n} the {v}
{i} sells at {n} per {v}
for {v} {i} they charge {n}
my invoice says {i} {v} {n}
{n} buys {v} of {i}
{n} per {v} of {i}
dropper bottle {i} {v} at {n}
{i} was {n}, that was {v}
put down {n} against {v} of {i}
a {v} flask {i} is priced {n}

= tins cost {n} each
tins are {n} apiece
a single tin is {n}
a tin costs me {n}
i pay {n} per tin
tins {n} a piece
an empty tin sets me back {n}
tins come to {n} each
each tin is {n}
note {n} per tin
{n} a tin
price of a tin is {n}
the tin price is {n}
tins now {n} apiece
supplier wants {n} a tin
put down {n} for every tin
every tin works out at {n}
tins go for {n} the piece
tin {n}

= lids cost {n} each
lids are {n} apiece
a single lid is {n}
a lid costs me {n}
i pay {n} per lid
lids {n} a piece
a screw lid sets me back {n}
lids come to {n} each
each lid is {n}
note {n} per lid
{n} a lid
price of a lid is {n}
the lid price is {n}
lids now {n} apiece
supplier wants {n} a lid
put down {n} for every lid
every lid works out at {n}
lids go for {n} the piece
lid {n}

= labels cost {n} each
labels are {n} apiece
a single label is {n}
a label costs me {n}
i pay {n} per label
labels {n} a piece
a sticker sets me back {n}
labels come to {n} each
each label is {n}
note {n} per label
{n} a label
price of a label is {n}
the label price is {n}
labels now {n} apiece
supplier wants {n} a label
put down {n} for every label
every label works out at {n}
labels go for {n} the piece
label {n}

= labour {n} an hour
my time is worth {n} an hour
i pay myself {n} per hour
wage {n} hourly
hourly rate {n}
an hour of work costs {n}
my hour is {n}
work is {n} an hour
helper gets {n} an hour
reckon my work at {n} each hour
count {n} for every hour i work
pay rate {n} hourly
we charge {n} per working hour
labour comes to {n} per hour
wages are {n} an hour
set my hourly wage to {n}
for an hour of my hands take {n}
a working hour equals {n}
time costs {n} hourly

= labour {n1} an hour, {n2} hours
count my work too, {n2} hours, {n1} an hour
and my own work, {n2} hours at {n1} an hour
include my work as well, {n2} hours, {n1} per hour
add my time, {n2} hours, {n1} each hour
i also worked {n2} hours, {n1} an hour
i want {n1} an hour, it took {n2} hours
my time is {n1} an hour and a batch takes {n2} hours
i pay myself {n1} per hour, {n2} hours
wage {n1} hourly, {n2} hours of work
{n2} hours at {n1} an hour
i work {n2} hours, {n1} each
hourly rate {n1}, it takes {n2} hours
{n2} hours labour at {n1}
work is {n1} an hour for {n2} hours
helper gets {n1} an hour, {n2} hours a batch
reckon {n2} hours of my work at {n1} hourly
{n2} working hours, {n1} per hour
count {n2} hours of {n1}
a pour takes me {n2} hours and my hour is {n1}
wages {n1} an hour, {n2} hours each time
standing at the stove {n2} hours, {n1} per hour
pay {n1} hourly times {n2} hours
{n2} hours of labour, rate {n1}

= sell {R} at {n}, {tins}: what margin
what do i earn on {tins} of {R} at {n}
profit if {tins} of {R} go for {n} each
if i ask {n} for each of {tins} {R}, what is left
selling {tins} of {R} for {n}, margin
{R} at {n} a piece, {tins}, how much profit
margin on {tins} {R} priced {n}
do i make money with {tins} of {R} at {n}
is {n} enough for {tins} of {R}
{tins} of {R} sold at {n}, what stays with me
my stall price is {n}, {tins} of {R}, profit
what share of {n} do i keep on {tins} {R}
charging {n} for {R}, {tins}, earnings
how much do i gain on {tins} {R} if the price is {n}
{tins} {R}, price tag {n}, margin
am i losing money at {n} on {tins} of {R}
takings less cost for {tins} of {R} at {n}
does {n} cover {tins} of {R}
price {n} for {R}, {tins}: what do i pocket
at {n} what does {tins} of {R} leave over
i want to charge {n} for {R}, {tins}, is it worth it
what would {tins} of {R} bring me at {n}

= what margin at {n}
@ cost
and if i sell at {n}
profit at {n}
suppose i charge {n}
what do i earn at {n}
at a price of {n}
is {n} enough
what is left over at {n}
do i make money at {n}
what if the price tag says {n}
i would ask {n} for each
my neighbour sells at {n}, would that pay
selling at {n}
how about {n} apiece
charging {n}, what do i keep
does {n} cover it
priced {n}, margin then

= cost of {R} for {tins}
how much do {tins} of {R} cost me
what will {tins} of {R} cost
price up {tins} of {R}
{tins} {R} cost
what do i spend on {tins} of {R}
expense of making {tins} {R}
what am i paying to make {tins} of {R}
calculate costs, {R}, {tins}
how expensive is {tins} of {R}
budget for {tins} of {R}
what does it cost to produce {tins} {R}
reckon up the money for {tins} of {R}
cost of goods {R} {tins}
cost breakdown for {tins} of {R}
{R}, {tins}, what does the lot come to
money needed to make {tins} of {R}
how much money goes into {tins} {R}
production cost of {tins} of {R}
outlay for {tins} {R}
costing of {R} at {tins}
what would making {tins} of {R} set me back
i want the costs for {tins} of {R}
material costs {tins} {R}
bill for {tins} of {R}
tot up {tins} of {R} for me

= price per tin of {R} for {tins}
how much is one tin of {R} when i make {tins}
what does one tin of {R} cost me if i pour {tins}
one tin of {R} costs how much when i do {tins}
i make {tins} of {R}, how much is each one
what does a single tin cost me if i make {tins} of {R}
unit cost of {R} at {tins}
cost per piece of {R}, {tins}
each tin of {R} costs how much when i do {tins}
{tins} of {R}, what is a single piece
cost a piece, {R}, {tins}
what does each of {tins} {R} come to
per tin cost {R} {tins}
how much is in a single {R} when making {tins}
{R} cost each, {tins}
what does every piece of {tins} of {R} cost
divide the cost of {tins} {R} by piece
cost for a single piece, {tins} of {R}
single unit price to make, {R}, {tins}
making {tins} of {R}, cost per unit
individual cost within {tins} of {R}
how dear is a single {R} out of {tins}

= cost of {R} for {g}
how much does {g} of {R} cost me
what will {g} of {R} cost
price up {g} of {R}
{g} {R} cost
what do i spend on {g} of {R}
expense of making {g} {R}
calculate costs, {R}, {g}
how expensive is {g} of {R}
budget for {g} of {R}
what does it cost to produce {g} {R}
reckon up the money for {g} of {R}
cost breakdown for {g} of {R}
{R}, {g}, what does the lot come to
how much money goes into {g} {R}
production cost of {g} of {R}
outlay for {g} {R}
bulk {g} of {R}, what does it set me back
material costs {g} {R}
tot up {g} of {R} for me

= what price for {R}, {tins}, for a margin of {%}
what should i sell {tins} of {R} at for {%} margin
i want {%} margin on {tins} of {R}, price
to earn {%} on {tins} {R} i must charge
selling price of {R}, {tins}, {%} profit
how much do i ask for {R} to keep {%}, {tins}
{%} profit on {tins} of {R}, what do i charge
price tag for {tins} {R} at {%} margin
which price leaves {%} on {tins} of {R}
what do i put on the price sign of {tins} {R} for {%}
{tins} of {R} with {%} margin, retail price
aiming for {%} on {R}, {tins}, sell at
keep {%} of the price, {tins} of {R}
recommended price {R} {tins} {%} margin
charge how much for {R} so {%} stays, {tins}
to have {%} left on {tins} {R} the price is
set my stall price, {tins} of {R}, margin {%}
if {%} of the price should be mine, {tins} {R}, ask what
price {tins} of {R} so i gain {%}
{R} {tins}: sale price at {%} margin

= what should I sell at for a margin of {%}
@ cost
which price gives {%}
i want {%} margin
to earn {%} what do i charge
price for {%} profit
how much do i ask to keep {%}
and for {%} margin
if {%} should stay with me
what price tag leaves {%}
{%} margin then
sell it at what for {%}
set the price for {%} profit
aim for {%}
i would like {%} for myself
price with {%} on it
so that {%} remains, which price
what must it sell for to leave {%}
stall price at {%} margin

= and for {tins}
@ cost
what about {tins}
and {tins}
how much would {tins} be
if i made {tins}
same for {tins}
now {tins}
cost of {tins} then
suppose it is {tins}
and when i do {tins}
{tins} instead
what would {tins} cost
make it {tins}
for {tins} then
price {tins}
and a batch of {tins}
how dear is {tins}

= with {n} hours of labour
@ cost
and with {n} hours of work
add {n} hours of my time
count {n} hours on it
it takes me {n} hours
i need {n} hours for that
plus {n} hours labour
including {n} working hours
{n} hours at the bench on top
if i work {n} hours
and {n} hours of my own time
make it {n} hours of labour
we stand there {n} hours
my time is {n} hours
putting in {n} hours
wages for {n} hours too
reckon {n} hours in
the work takes {n} hours

= cost of {R} for {tins} with {n} hours of labour
{tins} of {R} cost counting {n} hours of my time
how much do {tins} of {R} cost with {n} hours work
{R}, {tins}, including {n} hours labour
price up {tins} {R} plus {n} hours of work
i take {n} hours for {tins} of {R}, cost all in
cost with my own {n} hours, {tins} {R}
{n} working hours and {tins} of {R}, total cost
what do {tins} of {R} cost if i spend {n} hours
full cost of {tins} {R}, labour {n} hours
reckon {n} hours into the cost of {tins} of {R}
costing {R} {tins} and {n} hours pay
making {tins} of {R} takes {n} hours, what does it cost altogether
add {n} hours wages to {tins} of {R}
{tins} {R} all in with {n} hours
total for {tins} {R} when the work takes {n} hours
{tins} of {R} and {n} hours of wages, what does it cost
include {n} hours of my time in {tins} of {R}
cost of {tins} {R} with my time, {n} hours

= which prices are missing for {R}
what prices do you still need for {R}
which ingredients of {R} have no price
prices lacking for {R}
{R} costing, what have i yet to tell you
unpriced lines in {R}
which costs do you lack for {R}
do you know all the prices for {R}
is every ingredient in {R} priced
what should i look up before costing {R}
gaps in the prices of {R}
price gaps {R}
what have i not priced in {R}
which price for {R} is unknown
to cost {R} what else must i enter
missing prices {R}
for which things in {R} is no price noted

= which prices are missing
@ cost
what prices do you still need
which ones have no price
prices lacking there
what have i yet to price
unpriced lines
are all the prices there
is each ingredient priced
any price gaps
which price is unknown
what else must i price
which ingredients lack a price
what is left unpriced
for what do you lack a price
where is no price noted
prices still to tell you
missing prices

= cost of {R} with {i1} instead of {i2}, {tins}
does {i1} rather than {i2} make {tins} of {R} dearer
price effect of {i1} in place of {i2} in {R}, {tins}
how does the cost of {tins} {R} change with {i1} for {i2}
would {tins} of {R} be cheaper using {i1} instead of {i2}
{tins} of {R}, {i1} replacing {i2}, cost difference
is it dearer to take {i1} over {i2} in {tins} of {R}
money saved in {tins} {R} by {i1} instead of {i2}
cost of {tins} {R} if {i1} takes the place of {i2}
what does using {i1} rather than {i2} do to the price of {tins} of {R}
{R} {tins}: {i1} not {i2}, what would it cost
how much more do {tins} of {R} cost with {i1} than {i2}
do i save with {i1} instead of {i2} on {tins} of {R}
{i1} for {i2} in {R}, effect on cost, {tins}
put {i1} where {i2} was, cost {tins} of {R}
expense of {tins} {R} made with {i1} rather than {i2}
compare money: {i1} against {i2} in {tins} of {R}

= and with {i1} instead of {i2}
@ cost
and if i use {i1} rather than {i2}
how does it cost with {i1} for {i2}
would {i1} be cheaper than {i2} there
{i1} replacing {i2}, what then
is it dearer with {i1} in place of {i2}
do i save with {i1} over {i2}
suppose {i1} takes the place of {i2}
what would {i1} rather than {i2} do to the price
and {i1} not {i2}
if {i1} stood in for {i2}
put {i1} where {i2} was
{i1} over {i2}, how much then
cost with {i1} in place of {i2}
taking {i1} rather than {i2}, dearer or cheaper
replace {i2} by {i1}, what is the cost

= prices
every price we have noted
all the prices we noted so far
what have we noted for prices
read me our prices
our whole price list
price list
show all the prices i noted
what prices do you know
list my prices
which prices have i told you
everything i pay for stuff
my noted prices
let me see the price book
prices on record
what have i said things cost
supplier prices so far
overview of what we pay
current prices
show me what you have down as prices
price table
prices you remember
what figures for buying do you hold

= what does {i} cost
i forgot what we paid for {i}
what did we pay for {i}
what do we pay for {i} at the moment
how dear is {i} in our book
price of {i}
how much do i pay for {i}
what price have i noted for {i}
{i} price
how dear is {i}
what did we put down for {i}
what am i paying for {i}
noted price {i}
remind me of the {i} price
current cost {i}
what do they charge us for {i}
how expensive is {i}
tell me what {i} is per kilo
is there a price for {i}
{i} how much money
what is {i} going for

= price history of {i}
has {i} become dearer
has {i} got more expensive
did the price of {i} change
what did we pay for {i} over the years
is {i} dearer than it used to be
how has the price of {i} changed
did {i} get dearer
old prices of {i}
has {i} gone up
{i} price over time
past prices for {i}
every price we noted for {i}
what did {i} cost before
price trend {i}
earlier prices {i}
is {i} dearer than it was
how the price of {i} moved
list all former prices of {i}
was {i} ever cheaper
price rises on {i}

= cheapest instead of {i} in {R}
cheaper thing to use for {i} in {R}
{i} is too dear in {R}, what costs less
low cost stand in for {i} in {R}
budget replacement for {i} in {R}
save money on the {i} in {R}
what is the least expensive swap for {i} in {R}
{R}: a less costly {i}
bargain alternative to {i} in {R}
i cannot afford {i} in {R}, cheapest option
replace pricey {i} in {R} by the cheapest
which oil or wax is the cheapest for {i} in {R}
cut the cost of {i} in {R}
{i} in {R} got expensive, cheapest thing in its place
for {R}, cheapest in place of {i}
the cheap substitute for {i} within {R}

= a cheaper {R}
make {R} cheaper
how can i cut the cost of {R}
bring {R} down in price
{R} on a budget
save money on {R}
{R} is too expensive to make
lower cost version of {R}
which swap makes {R} less costly
economise {R}
reduce what {R} costs
{R} for less money
budget {R}
where can i save in {R}
thrifty {R}
trim the expense of {R}
get {R} costing less

= tins cost {n1} for {n2}
a box of {n2} tins is {n1}
{n2} tins for {n1}
i paid {n1} for {n2} tins
{n2} tins set me back {n1}
tins come {n2} to the pack at {n1}
pack of {n2} tins {n1}
{n1} buys {n2} tins
tins: {n1} per {n2}
note {n1} for {n2} tins
supplier asks {n1} for {n2} tins
{n2} tins cost {n1}
for {n2} tins they charge {n1}
tins in bulk, {n2} for {n1}
the invoice says {n2} tins, {n1}

= lids cost {n1} for {n2}
a box of {n2} lids is {n1}
{n2} lids for {n1}
i paid {n1} for {n2} lids
{n2} lids set me back {n1}
lids come {n2} to the pack at {n1}
pack of {n2} lids {n1}
{n1} buys {n2} lids
lids: {n1} per {n2}
note {n1} for {n2} lids
supplier asks {n1} for {n2} lids
{n2} lids cost {n1}
for {n2} lids they charge {n1}
lids in bulk, {n2} for {n1}
the invoice says {n2} lids, {n1}

= labels cost {n1} for {n2}
a box of {n2} labels is {n1}
{n2} labels for {n1}
i paid {n1} for {n2} labels
{n2} labels set me back {n1}
labels come {n2} to the pack at {n1}
pack of {n2} labels {n1}
{n1} buys {n2} labels
labels: {n1} per {n2}
note {n1} for {n2} labels
supplier asks {n1} for {n2} labels
{n2} labels cost {n1}
for {n2} labels they charge {n1}
labels in bulk, {n2} for {n1}
the invoice says {n2} labels, {n1}

= {i} costs {n} a litre
{i} at the mill, {n} the litre
{i} {n} the litre
a litre of {i} is {n}
they want {n} for a litre of {i}
{n} per litre of {i}
i found {i} for {n} a litre, put that in the price list
{i} is {n} per litre
a litre of {i} is {n}
note {i} at {n} a litre
they charge {n} per litre of {i}
for {i} i pay {n} a litre
{i} went to {n} a litre
{n} for one litre of {i}
our {i} now costs {n} per litre
put {i} in the list at {n} a litre
keep in mind that {i} is {n} a litre
`;
