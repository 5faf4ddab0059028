/** Ways of asking for what `settings` answers; bot/likeness/sayings.ts says how they are written. */
export const settings = `
= show settings
how are you set up
what is configured
current settings
which options are on
let me see the settings
list the options
what have we set
our setup
show the configuration
preferences
show preferences
what settings do we have
how is our group set up
which region and currency are we on
what is your setup for us
display settings
tell me the present options
overview of our settings
what region do you think we are in
which currency do you reckon with
what loss do you use for us
which time zone do you have for us
what scale step have you stored
who is allowed to write here
what are the defaults here
check our configuration
remind me what we chose

= region {region}
we are in {region}
i live in {region}
our rules are those of {region}
use {region} rules
we make and sell in {region}
i moved to {region}
set us to {region}
our group is from {region}
go by {region} law from now on
change region to {region}
switch to {region} rules
my kitchen is in {region}
put us down as {region}
from today we follow {region}
we belong to {region}
based in {region}
my country is {region}
our market is {region}
home is {region}
the circle is located in {region}
all our customers live in {region}
for everything take {region} rules
make {region} the default
we work under {region} regulations

= time zone Europe/Lisbon
our clock runs on europe/lisbon
we are on lisbon time
set the clock to lisbon
use lisbon time
lisbon time zone
timezone lisbon
i live in lisbon, set the time zone
our local time is lisbon
change time zone to lisbon
it should go by lisbon hours
dates and times as in lisbon
switch the clock to europe/lisbon
europe/lisbon is our zone
we keep lisbon time here
go by the clock in lisbon
our hours are those of lisbon
local time here is lisbon time
clock of lisbon please
remind us by lisbon time
here the clock is as in lisbon
the time here is lisbon

= time zone Europe/London
our clock runs on europe/london
we are on london time
set the clock to london
use london time
london time zone
timezone london
uk local time
our local time is london
change time zone to london
dates and times as in london
switch the clock to europe/london
europe/london is our zone
we keep london time here
go by the clock in london
our hours are those of london
local time here is london time
clock of london please
remind us by london time
here the clock is as in london
the time here is london

= time zone Europe/Berlin
our clock runs on europe/berlin
we are on berlin time
set the clock to berlin
use berlin time
berlin time zone
timezone berlin
german local time
our local time is berlin
change time zone to berlin
dates and times as in berlin
switch the clock to europe/berlin
europe/berlin is our zone
go by the clock in berlin
our hours are those of berlin
local time here is berlin time
clock of berlin please
remind us by berlin time
here the clock is as in berlin
the time here is berlin

= time zone America/New_York
our clock runs on new york
we are on new york time
set the clock to new york
use eastern time
new york time zone
timezone new york
us east coast time
our local time is new york
change time zone to new york
dates and times as in new york
america/new_york is our zone
go by the clock in new york
our hours are those of new york
local time here is new york time
clock of new york please
remind us by new york time
here the clock is as in new york
the time here is new york

= scale reads {g}
my scale shows {g}
our balance goes to {g}
smallest step on my scale is {g}
i weigh to {g}
the scale is accurate to {g}
scale resolution {g}
kitchen scale in steps of {g}
scales display {g}
my scales only do {g}
we bought a jewellery scale, {g}
precision of the balance {g}
set the scale step to {g}
new scale, reads {g}
the display jumps by {g}
i can weigh no finer than {g}
division of my scale is {g}
our digital balance resolves {g}
readout of {g}
scale graduation {g}
change scale step to {g}
i have a {g} scale

= currency EUR
we pay in euros
use euros
our money is the euro
reckon in euro
switch to euros
set the currency to euro
prices are in euros
count in eur
change money to euros
make it euros from now on
we deal in euro
euro please
everything in euros
i calculate in eur
our currency is the euro
currency should be euro
the book is in euro
our cash box is in euro
price things in euro

= currency GBP
we pay in pounds
use pounds sterling
our money is the pound
reckon in sterling
switch to pounds sterling
set the currency to british pounds
prices are in gbp
count in sterling
change money to pounds sterling
make it sterling from now on
we deal in british pounds
uk money please
everything in gbp
i calculate in sterling
our currency is the british pound
currency should be sterling
the book is in pounds sterling
our cash box is in sterling
price things in sterling

= units oz
show ounces too
i think in ounces
use imperial units
give weights in oz
american units please
ounces beside the grams
switch to ounces
we weigh in ounces
set units to ounces
i prefer oz
display in ounces
put ounces in the tables
imperial for us
our scales are in oz
ounces are what i know
weights in ounces please
tables in ounces
we are used to ounces
add ounces to every table

= set loss to {%}
allow {%} for what clings to the jug
we lose about {%} in the jug
make the loss {%}
loss allowance {%}
count {%} waste by default
what sticks to the pot is {%}, remember that
change the loss to {%}
default loss {%}
always add {%} for what stays in the jug
our waste is usually {%}
spillage {%} from now on
plan for {%} loss every time
use {%} as the allowance
reckon {%} left behind in jugs
set wastage to {%}
our losses run at {%}

= decimal comma
use commas for decimals
write numbers with a comma
european decimals
i want a comma in numbers
german style numbers
comma instead of point
show decimals with comma
numbers the continental way
our numbers have commas
switch to comma
set the decimal sign to a comma
we write a comma before the decimals
french style numbers
comma please in all numbers
numbers with comma like at school here
spanish way of writing decimals

= decimal point
use points for decimals
write numbers with a point
english decimals
i want a point in numbers
dot instead of comma
show decimals with a dot
numbers the british way
our numbers have dots
switch back to the point
set the decimal sign to a dot
full stop in decimals
we write a point before the decimals
american style numbers
point please in all numbers
decimal dot
points again in numbers

= best before at most {n} months
no best before longer than {n} months
cap shelf life at {n} months
never date tins beyond {n} months
limit the best before to {n} months
our balms get {n} months at the most
maximum shelf life {n} months
dates may go {n} months out, no more
set the ceiling to {n} months
longest date we print is {n} months
keep the best before within {n} months
shelf life ceiling {n} months
we never give more than {n} months
{n} months is our limit for dates
at the latest {n} months after pouring
change the date ceiling to {n} months

= everybody may write
anyone can write in the book
let all members write
open the book to everyone
no role needed for writing
remove the role restriction
all may record
every member can enter things
give everybody permission to write
writing needs no permission
unlock writing for the whole group
allow everyone to make entries
no limits on who writes
each of us may make entries
open up writing
cancel the writer role
let the whole circle write
`;
