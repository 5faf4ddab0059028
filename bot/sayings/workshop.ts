/** Ways of asking for what `workshop` answers; bot/likeness/sayings.ts says how they are written. */
export const workshop = `
= workshop for {n} people, {tins} each, {R}
i teach {n} people, everybody takes home {tins} of {R}
class of {n}, {tins} of {R} per head
{n} guests come, {tins} of {R} for each
{n} participants making {tins} of {R} apiece
plan a course, {n} learners, {tins} each of {R}
hen party of {n}, each pours {tins} of {R}
{n} friends at a birthday, {tins} of {R} each
{n} trainees, {R}, {tins} per trainee
{R} workshop, {n} makers, {tins} per person
{n} folk round the table, each leaves with {tins} of {R}
i run an evening for {n} persons, {R}, {tins} a head
our guild meeting, {n} members, {tins} {R} for every member
{n} women are coming to make {R}, {tins} each
organise a session with {n} attendees, {tins} of {R} apiece
{n} students, {R}, everyone fills {tins}
teaching {R} to {n}, each gets {tins}
team event {n} colleagues, {tins} {R} each
{tins} of {R} for each of {n} people in my class
balm evening: {n} visitors, {tins} per visitor, {R}
what do i prepare for {n} people pouring {tins} of {R} each
{n} people around the table, {tins} {R} a piece
i have {n} sign ups, each does {tins} of {R}
neighbours, {n} of them, {tins} of {R} each
{n} seats booked, {R}, {tins} for every seat

= workshop for {n1} people, {tins} each, {R}, {n2} hot plates
class of {n1} with {n2} hot plates, {tins} of {R} per head
{n1} guests, {tins} of {R} each, only {n2} hobs
i teach {n1} people {R}, {tins} each, on {n2} rings
{n1} participants, {R}, {tins} apiece and {n2} cookers
{n1} makers, {tins} of {R} each, {n2} stoves
course for {n1}, {tins} {R} per person, kitchen has {n2} hot plates
{n1} trainees make {tins} {R} each, {n2} burners
evening group {n1}, {R}, {tins} per head, hot plates {n2}
{n1} attendees pour {tins} of {R} apiece using {n2} hobs
{n1} people, {n2} electric plates, {tins} of {R} for each
{n1} sign ups, {tins} of {R} each, we own {n2} hot plates
session {n1} learners {tins} {R} a head, {n2} induction plates
{n1} women, {tins} of {R} each, the hall lends {n2} plates for heating
workshop {n1} persons, {tins} {R} per person, {n2} heat sources
{n1} students sharing {n2} hot plates, {R}, {tins} each

= workshop for {n} people, {tins} each, {R}, jugs of {v}
class of {n}, {tins} of {R} per head, our jugs hold {v}
{n} guests, {tins} of {R} each, pouring from {v} jugs
i teach {n} people {R}, {tins} each, beakers of {v}
{n} participants, {R}, {tins} apiece, jug size {v}
{n} makers, {tins} of {R} each, pitchers holding {v}
course for {n}, {tins} {R} per person, measuring jugs {v}
{n} trainees make {tins} {R} each in {v} jugs
{n} attendees pour {tins} of {R} apiece out of {v} pitchers
{n} people, jugs {v}, {tins} of {R} for each
{n} sign ups, {tins} of {R} each, every jug takes {v}
session {n} learners {tins} {R} a head, pyrex jugs {v}
workshop {n} persons, {tins} {R} per person, we melt in {v} jugs
{n} students, {R}, {tins} each, melting pots of {v}
{n} women, {tins} {R} each, enamel jug {v}
{n} guests with {v} jugs to share, {tins} {R} each
evening for {n}, {R}, {tins} a head, glass jugs {v}
{tins} of {R} for each of {n} people using {v} jugs

= workshop for {n1} people, {tins} each, {R}, start at {n2}
class of {n1}, {tins} of {R} per head, we begin at {n2}
{n1} guests, {tins} of {R} each, doors at {n2}
i teach {n1} people {R}, {tins} each, from {n2}
{n1} participants, {R}, {tins} apiece, kick off {n2}
{n1} makers, {tins} of {R} each, starting {n2} o'clock
course for {n1}, {tins} {R} per person, begins {n2}
{n1} trainees make {tins} {R} each, session at {n2}
{n1} attendees pour {tins} of {R} apiece, commencing {n2}
at {n2} come {n1} people, {tins} of {R} for each
{n1} sign ups, {tins} of {R} each, the hall opens to us at {n2}
session {n1} learners {tins} {R} a head, {n2} o'clock
workshop {n1} persons, {tins} {R} per person, first thing at {n2}
{n1} students arrive {n2}, {R}, {tins} each
beginning at {n2}, {n1} women, {tins} {R} each
evening for {n1}, {R}, {tins} a head, it opens {n2}
{tins} of {R} for each of {n1} people, we meet {n2}
{n1} guests, {n2} sharp, {tins} {R} each

= workshop for {n} people, {tins} each, {R}, room {t}
class of {n}, {tins} of {R} per head, the hall is {t}
{n} guests, {tins} of {R} each, it is {t} indoors
i teach {n} people {R}, {tins} each, in a {t} room
{n} participants, {R}, {tins} apiece, draughty at {t}
{n} makers, {tins} of {R} each, kitchen about {t}
course for {n}, {tins} {R} per person, room temperature {t}
{n} trainees make {tins} {R} each, indoors {t}
{n} attendees pour {tins} of {R} apiece, marquee at {t}
{n} people, a room of {t}, {tins} of {R} for each
chilly space {t}, {n} folk, {tins} of {R} each
session {n} learners {tins} {R} a head, inside {t}
workshop {n} persons, {tins} {R} per person, space heated to {t}
{n} students, {R}, {tins} each, the studio is at {t}
evening for {n}, {R}, {tins} a head, studio {t}
{tins} of {R} for each of {n} people while it is {t} inside
{n} guests, {t} indoors, {tins} {R} each
heating set to {t}, {n} women, {tins} of {R} each

= workshop for {n} people, {tins} each, {R}, spare {%}
class of {n}, {tins} of {R} per head, {%} extra
{n} guests, {tins} of {R} each, keep {%} in reserve
i teach {n} people {R}, {tins} each, plan {%} more for spills
{n} participants, {R}, {tins} apiece, {%} buffer
{n} makers, {tins} of {R} each, reserve {%}
course for {n}, {tins} {R} per person, {%} over
{n} trainees make {tins} {R} each, people spill, so {%} spare
{n} attendees pour {tins} of {R} apiece, allow {%} on top
{n} people, {tins} of {R} for each, {%} surplus
{n} sign ups, {tins} of {R} each, safety margin {%}
session {n} learners {tins} {R} a head, bring {%} extra stuff
workshop {n} persons, {tins} {R} per person, add {%} for clumsy hands
evening for {n}, {R}, {tins} a head, {%} to spare
{tins} of {R} for each of {n} people plus {%}
{n} guests, {%} more than needed, {tins} {R} each
{n} women, {tins} of {R} each, contingency {%}

= shopping list for a workshop for {n} people, {tins} each, {R}
what do i buy so {n} people can make {tins} of {R} each
shopping for {n} guests, {tins} of {R} per head
buy list, class of {n}, {R}, {tins} each
which groceries for {n} participants, {tins} {R} apiece
what must i order for {n} makers doing {tins} of {R}
purchases for {n} trainees, {R}, {tins} each
i go to the shop for {n} people, {tins} of {R} each, list
materials to purchase, {n} learners, {tins} {R} per person
order quantities for a course of {n}, {tins} of {R} each
things to get in for {n} attendees, {R}, {tins} apiece
how much do i have to buy for {n} sign ups, {tins} of {R} each
supplier order, {n} people, {tins} {R} each
shop run before {n} women come, {tins} of {R} each
what needs purchasing, session {n}, {R}, {tins} a head
what is missing from my shelf to teach {n} people, {tins} of {R} each
grams to buy for {n} guests, {tins} {R} each
{n} come, {tins} of {R} each, what must i get in
wholesale list, {n} makers, {R}, {tins} apiece

= handout for a workshop for {n} people, {tins} each, {R}
a sheet to hand to {n} people making {tins} of {R} each
printout for my class of {n}, {R}, {tins} per head
leaflet for {n} guests, {tins} of {R} each
page to give out, {n} participants, {tins} {R} apiece
worksheet for {n} trainees, {R}, {tins} each
take home page, {n} makers, {tins} of {R}
paper for the {n} learners to follow, {tins} {R} per person
instruction sheet {n} attendees {tins} of {R} each
handout, course of {n}, {R}, {tins} each
something printed for {n} students, {tins} of {R} apiece
guide page to distribute, {n} people, {tins} {R} each
i would like to give {n} women a page on {R}, {tins} each
{n} guests need a printed page, {tins} {R} each
recipe page to hand round, {n} makers, {tins} of {R} each
pdf for participants, {n}, {R}, {tins} each
steps on paper for {n} people, {tins} of {R} apiece

= timeline for a workshop for {n} people, {tins} each, {R}
how will the afternoon run with {n} people, {tins} of {R} each
schedule for a class of {n}, {R}, {tins} per head
running order, {n} guests, {tins} of {R} each
how long does it take with {n} participants, {tins} {R} apiece
minute by minute for {n} makers doing {tins} of {R}
timetable {n} trainees, {R}, {tins} each
when do we pour, {n} learners, {tins} {R} per person
agenda of the day, {n} attendees, {tins} of {R} each
clock times for {n} people, {tins} of {R} each
how many hours do i book the hall for {n}, {R}, {tins} each
course plan by time, {n} students, {tins} {R} apiece
sequence of the session for {n}, {tins} of {R} each
how much time with {n} guests, {tins} {R} each
what happens when, {n} makers, {tins} of {R} each
duration of an evening with {n}, {R}, {tins} apiece
melting and pouring times, {n} women, {tins} of {R} each

= safety sheet for a workshop for {n} people, {tins} each, {R}
safety notes for teaching {n} people {R}, {tins} each
what dangers with {n} guests making {tins} of {R} each
risk assessment, class of {n}, {R}, {tins} per head
hazards for {n} participants, {tins} {R} apiece
safety briefing {n} makers, {tins} of {R}
how do i keep {n} trainees safe, {R}, {tins} each
safety rules page, {n} learners, {tins} {R} per person
burn and allergy precautions for {n} attendees, {tins} of {R} each
health and safety for {n} people, {tins} of {R} each
the hall wants a risk sheet, {n} students, {R}, {tins} apiece
hot wax precautions with {n} in the room, {tins} of {R} each
is it dangerous with {n} guests, {tins} {R} each, safety page
what could go wrong with {n} makers, {tins} of {R} each
insurance wants safety notes, {n} women, {R}, {tins} apiece
accident prevention for {n} people pouring {tins} of {R} each

= kit per person for a workshop for {n} people, {tins} each, {R}
what does each of {n} people get, {tins} of {R} each
bag up ingredients for {n} guests, {tins} {R} each
per head weights, {n} participants, {tins} of {R} apiece
individual kits, class of {n}, {R}, {tins} each
what goes in a kit, {n} makers, {tins} of {R} each
packets of ingredients for {n} trainees, {R}, {tins} each
grams per person with {n} learners, {tins} {R} each
portion it out to {n} attendees, {tins} of {R} each
single kit contents, {n} students, {tins} {R} apiece
ingredients weighed out for each of {n} people, {R}, {tins} each
divide {R} into kits for {n}, {tins} per head
a bag for each of {n} guests, {tins} {R} per bag
pre weighed packs, {n} women, {tins} of {R} each
personal share with {n} makers, {R}, {tins} each
{n} kits for {tins} of {R}, what is inside

= how many jugs for a workshop for {n} people, {tins} each, {R}
number of jugs with {n} people, {tins} of {R} each
jugs needed, class of {n}, {R}, {tins} per head
how many pitchers do i bring for {n} guests, {tins} {R} each
do i have jugs enough for {n} participants, {tins} of {R} apiece
melting jugs required, {n} makers, {R}, {tins} each
jug count {n} trainees {tins} {R} each
what jugs do {n} learners need, {tins} of {R} per person
how many beakers should {n} attendees share, {tins} of {R} each
borrow how many jugs for {n} students, {R}, {tins} apiece
how many pouring vessels for {n} women, {tins} of {R} each
jugs on the table with {n} people, {R}, {tins} each
how many pots to melt in with {n} makers, {tins} {R} apiece

= and for {n} people
@ workshop
now {n} are coming
{n} are coming now
{n} come instead
there will be {n} of us
it will be {n}
two cancelled so we are {n}
suddenly {n} want to come
there are {n} on the list now
what if {n} come
now it is {n} people
suppose {n} show up
{n} signed up after all
we are {n} now
if there are {n} of them
make it {n} people
and with {n} guests
{n} participants instead
it grew to {n}
only {n} are coming
change to {n} heads
some dropped out, {n} left
do it for {n} learners
{n} trainees rather

= {n} hot plates
@ workshop
i have {n} hot plates
there are {n} hobs
only {n} rings work
we can use {n} cookers
the hall has {n} stoves
with {n} hot plates then
{n} burners
suppose {n} electric plates
{n} heating plates are what we own
borrowed, so {n} hot plates now
and on {n} induction plates
just {n} cooking plates
we heat on {n} plates
{n} stoves available
the kitchen gives us {n} rings
power allows {n} hot plates

= jugs of {v}
@ workshop
my jugs hold {v}
with {v} jugs
each jug takes {v}
our pitchers are {v}
we pour from {v} beakers
jug size {v}
all my jugs are {v}
the jugs we have are {v} ones
melting pots of {v}
use {v} jugs
pouring from {v} pitchers
glass jugs {v}
the biggest jug is {v}
suppose the jugs are {v}
measuring jugs, {v}

= start at {n}
@ workshop
we begin at {n}
doors open at {n}
it starts at {n} o'clock
from {n}
they come at {n}
kick off at {n}
let us say {n} o'clock
beginning {n}
the session is at {n}
everyone arrives at {n}
move the start to {n}
we meet at {n}
{n} sharp
opening at {n} o'clock
the class begins {n}
suppose we start {n} o'clock

= spare {%}
@ workshop
with {%} extra
keep {%} in reserve
{%} buffer
plan {%} over
add {%} for spills
{%} surplus
allow {%} on top
take {%} more to be sure
reserve of {%}
{%} more than needed
contingency {%}
people spill, so {%} more
have {%} left over as reserve
some will drop theirs, {%} extra

= room {t}
@ workshop
the hall is {t}
it is {t} in there
room temperature {t}
the room is only {t}
indoors {t}
the space has {t}
heated to {t}
it will be {t} where we sit
our kitchen is {t}
suppose it is {t} inside
a chilly {t} in the room
the heating gives {t}
air temperature {t}
in summer the room has {t}
it is warm, {t} inside

= and {tins} each
@ workshop
what if everybody makes {tins}
{tins} per head then
give each {tins}
{tins} apiece instead
everyone takes home {tins}
each person pours {tins}
make that {tins} a person
now {tins} for every guest
change it to {tins} each
per person {tins}
everyone gets {tins}
make {tins} per guest
suppose they pour {tins} each
{tins} per participant
for every person {tins}

= and for {R}
@ workshop
let it be {R}
make it {R}
it should be {R}
rather {R}
we decided on {R}
everyone wants {R}
what if we make {R}
same with {R}
do {R} instead
now the class wants {R}
they prefer {R}
with {R} then
take {R} for it
switch to {R}
the group makes {R}
let them pour {R}
replace the recipe by {R}
what about {R}
how would {R} be
the guests would like {R} better
they should make {R}

= shopping list
@ workshop
list for the supermarket
do you have a list for the supermarket
have you got a list for the shop
is there a shopping list
what goes into the shopping basket
what goes in the shopping trolley
write me the shopping list
what must i buy for that
send me the list of what to buy
what do we have to get
what should be bought
what do i put in the trolley
what to buy for it
what should i purchase
list for the shop
buying list
what must i order
which things do i get in
what is there to shop for
what goes in the basket
materials to order
i am off to the shop, list
purchases needed
what do i need from the supplier
grams to buy
what runs short for that
things i lack for the class
groceries for the class

= handout
@ workshop
safety sheet
a safety sheet please
safety page for the class
safety rules for them
what do i tell them about safety
risk sheet for the day
safety notes for the table
what must the helpers know about hot wax
the dangers on one page
print the safety sheet
what about safety
print the handout
a page to give out
sheet for the participants
leaflet for them
worksheet for everybody
take home page
something to hand round
printed guide for the guests
paper for the class
what do i give them on paper
pdf for the participants
steps on paper
recipe page for the guests
i want to hand them something
a page they keep

= timeline
@ workshop
write me the schedule
give me the times
how does the evening run
what happens at what time
schedule
what happens when
running order
clock times
agenda
timetable
how does the day go
plan of the afternoon
when do we pour
how long does it take
minute by minute
the order of the evening
times please
duration
how many hours
sequence of steps by the clock

= what do I bring
@ workshop
what must i carry there
what do i pack in the car
which equipment do i need
what tools do we need
packing list
what tools do i need there
what should i take with me
equipment list
which gear goes in the car
things to carry
what do i pack
tools needed
utensils for it
what has to come along
pack the car

= kits for each person
@ workshop
what should lie on each table place
what goes on each place
what does each place need
what lies in front of everyone
set out one place, what is on it
how much wax does one person get
what does one person need
how much does each one weigh
how much of everything for one person
the amounts for one person
how much goes to each
what does each guest get
kit per head
per person amounts
how much per person
weights for a single kit
a single kit
individual portions
what goes in every bag
grams for each participant
portion it out
what does a participant weigh out
a bag for each guest
pre weighed packs
share per person
what is inside a kit
personal amounts

= how many jugs
@ workshop
jugs needed
number of pitchers
are my jugs enough
how many beakers
jug count
do i have to borrow jugs
how many should share a jug
jugs for that
which jugs
vessels to pour from
how many melting pots
count the jugs
jug sharing
pitchers required

= what does it cost
@ workshop
how much money is that
cost of it all
what will i spend
how expensive does it get
expenses
what am i paying for that
budget
what does it come to in money
price of the materials
how dear is it
cost for the whole class
money needed
total expense
what do the materials cost

= workshop for {n} children, {tins} each, {R}
{n} kids at a birthday, {tins} of {R} each
school group {n} pupils, {R}, {tins} per pupil
scouts, {n} of them, {tins} of {R} each
class of {n} schoolchildren making {tins} of {R} apiece
i teach {n} kids to make {R}, {tins} each
{n} pupils pour {tins} of {R} per child
holiday club, {n} youngsters, {R}, {tins} for every kid
brownies troop of {n} girls, {tins} of {R} each
primary school lesson, {n} children, {tins} {R} apiece
{n} little ones make {R}, {tins} a child
after school group, {n} boys and girls, {tins} of {R} each
my daughter's party, {n} kids, {tins} {R} each
{n} children take home {tins} of {R} each
plan for {n} kids, {R}, every child fills {tins}
youth club {n} teenagers, {tins} of {R} per kid
balm making with {n} children, {R}, {tins} each
summer camp, {n} kids, {tins} each of {R}
library craft hour for {n} children, {tins} of {R} apiece

= and for {n} children
@ workshop
{n} kids instead
what if {n} kids come
it is {n} pupils
now {n} children are coming
suppose they are {n} schoolchildren
{n} scouts then
make it {n} kids
and with {n} youngsters
change that to {n} children
{n} little ones rather
we get {n} boys and girls
a school class of {n}

= with children
@ workshop
they are kids
it is for children
pupils will do it
and if they are youngsters
a school class does it
little ones take part
kids are coming too
scouts will make it
boys and girls at the table
suppose children join in
what changes with kids

= workshop for {n1} people, {tins} each, {R}, {n2} hot plates, jugs of {v}
class of {n1}, {tins} of {R} per head, {n2} hobs and {v} jugs
i teach {n1} people {R}, {tins} each, on {n2} hot plates with jugs of {v}
{n1} guests, {tins} {R} each, {n2} rings, pitchers of {v}
{n1} makers pour {tins} of {R}, we have {n2} hot plates, jugs hold {v}
course for {n1}, {R}, {tins} a head, kitchen: {n2} plates, {v} jugs
{n1} participants, {tins} of {R} apiece, {n2} burners, every jug {v}
evening with {n1}, {tins} {R} each, {n2} induction plates and {v} beakers
{n1} women, {tins} of {R} each, {n2} cookers, melting in {v} jugs
session for {n1} learners, {R}, {tins} each, {n2} stoves, jug size {v}
{n1} sign ups, {tins} {R} per person, equipment {n2} hot plates and {v} jugs
{n1} students share {n2} hot plates and {v} jugs, {tins} of {R} each
team of {n1}, {tins} {R} a piece, {n2} electric plates, {v} pitchers

= and {n} tins each
@ workshop
{n} tins each would be better
{n} tins per person rather
make it {n} tins each
i would rather do {n} tins each
they want {n} tins each
`;
