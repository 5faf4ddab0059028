/** Ways of asking for what `convert` answers; bot/likeness/sayings.ts says how they are written. */
export const convert = `
= {g} in g
how many grams is {g}
{g} to grams
convert {g} into grams
{g} as grams
the american recipe says {g}, grams
what is {g} in metric
{g} equals how many g
i need {g} expressed in grams
turn {g} into grams
grams for {g}
{g} metric
my scale only does grams, {g}
{g} comes to what in grams
translate {g} to g
how much is {g} for a european scale
{g} would be in grams
change {g} into g
{g} makes how many grams
gram equivalent of {g}
give {g} by the gram
write {g} as grams
old imperial {g}, now in grams

= {g} in oz
how many ounces is {g}
{g} to ounces
convert {g} into oz
{g} as ounces
what is {g} in imperial
{g} equals how many oz
turn {g} into ounces
i need {g} expressed in ounces
ounces for {g}
my scale shows only ounces, {g}
{g} comes to what in oz
translate {g} to ounces
american customers want ounces, {g}
{g} would be in ounces
change {g} into oz
{g} makes how many ounces
ounce equivalent of {g}
write {g} as oz
us weight of {g}
{g} on an ounce scale

= {g} in lb
how many pounds is {g}
{g} to pounds
convert {g} into lb
{g} as pounds
{g} equals how many lbs
turn {g} into pounds
i need {g} expressed in pounds
pounds for {g}
{g} comes to what in lb
translate {g} to pounds
{g} would be in pounds
change {g} into lbs
{g} makes how many pounds
pound equivalent of {g}
write {g} as lb
is {g} more than a pound, how many pounds
grandma used pounds, {g}
postal scale in pounds, {g}
{g} by the pound

= {v} {i} in g
how much does {v} of {i} weigh
{v} of {i} to grams
convert {v} {i} into grams
weight of {v} {i}
{i}, {v}, how many grams
the recipe says {v} of {i}, i weigh in grams
what do {v} of {i} come to on the scale
{v} {i} as grams
grams in {v} of {i}
i measured {v} {i}, what is the weight
turn {v} of {i} into weight
how heavy are {v} of {i}
{v} of {i} is how many g
i don't use spoons, {v} {i} in weight
volume to weight, {i}, {v}
put {v} {i} on the scale, it shows
mass of {v} {i}
gram equivalent of {v} of {i}
poured {v} of {i}, grams
{v} of {i} by weight
american cups, {v} {i}, give grams
i'd like {v} of {i} expressed by weight
{v} {i} makes what weight

= {g} {i} in ml
what volume is {g} of {i}
{g} of {i} to ml
convert {g} {i} into millilitres
how many ml are {g} of {i}
{i}, {g}, volume
{g} {i} takes up how much space
{g} of {i} in a measuring cylinder
how much room does {g} {i} need in ml
weight to volume, {i}, {g}
i have no scale, {g} of {i} in millilitres
{g} {i} as ml
millilitres for {g} of {i}
turn {g} of {i} into a volume
which bottle holds {g} {i}, volume of it
{g} {i} fills how many ml
how many millilitres is {g} of {i}
{g} of {i} by volume
ml equivalent of {g} {i}
syringe reading for {g} of {i}
{g} of {i} would measure how many ml

= {g} {i} in tbsp
how many tablespoons is {g} of {i}
{g} of {i} to tablespoons
convert {g} {i} into spoons
{g} {i} in spoonfuls
no scale here, {g} of {i} with a tablespoon
{i}, {g}, how many spoons
{g} {i} as tbsp
tablespoons for {g} of {i}
spoon out {g} of {i}, how many
turn {g} {i} into tablespoons
how many spoonfuls make {g} of {i}
{g} of {i} measured by the spoon
{g} {i} equals how many tbsp
big spoons of {i} for {g}
my scale is broken, {g} {i} by tablespoon
tablespoon equivalent of {g} {i}
{g} {i} heaped out in tablespoons
kitchen spoons, {i}, {g}
number of tablespoons in {g} {i}

= {g} {i} in cups
how many cups is {g} of {i}
{g} of {i} to cups
convert {g} {i} into cups
{i}, {g}, cup measure
{g} {i} as cups
cups for {g} of {i}
turn {g} {i} into cups
americans ask, {g} {i} is how many cups
{g} of {i} measured by the cup
{g} {i} equals how many cups
cup equivalent of {g} of {i}
number of cups in {g} {i}
no scale, {g} {i} by the cup
fill how many cups for {g} of {i}
a cup or more, {g} of {i}
{g} of {i} in us kitchen cups
{g} {i} cupfuls
what part of a cup is {g} {i}
how many cupfuls make {g} of {i}

= {d} of {aroma} in ml
what volume is {d} of {aroma}
{d} {aroma} to ml
convert {d} of {aroma} into millilitres
how many ml are {d} of {aroma}
{aroma}, {d}, in millilitres
{d} of {aroma} in a pipette, ml
{d} {aroma} as ml
millilitres for {d} of {aroma}
turn {d} {aroma} into a volume
counted {d} of {aroma}, volume
how many millilitres make {d} {aroma}
{d} of {aroma} fill how many ml
{d} {aroma} equals what volume
i use a syringe, {d} of {aroma}
volume of {d} {aroma}
how big is {d} of {aroma} by volume
{d} {aroma} expressed in ml
ml equivalent for {d} {aroma}
is {d} of {aroma} a whole ml, how many

= {d} of {aroma} in g
what do {d} of {aroma} weigh
{d} {aroma} to grams
convert {d} of {aroma} into grams
weight of {d} {aroma}
how many grams are {d} of {aroma}
{aroma}, {d}, by weight
{d} {aroma} as grams
grams for {d} of {aroma}
turn {d} {aroma} into weight
i counted {d} of {aroma}, what would the scale show
how heavy are {d} of {aroma}
{d} of {aroma} on a precision scale
mass of {d} {aroma}
gram equivalent of {d} {aroma}
{d} {aroma} equals what weight
rather weigh than count, {d} of {aroma}
{d} of {aroma} expressed by weight
{d} {aroma} how much in grams
instead of counting {d} {aroma}, weigh how much

= {v} of {aroma} in drops
how many drops are {v} of {aroma}
{v} {aroma} to drops
convert {v} of {aroma} into drops
count of drops in {v} {aroma}
{aroma}, {v}, how many drops
{v} {aroma} as drops
drops for {v} of {aroma}
my bottle has a dropper, {v} of {aroma}
turn {v} {aroma} into drops
{v} of {aroma} drop by drop, how many
how often do i drip for {v} of {aroma}
number of drops {v} {aroma}
drip out {v} of {aroma}
{v} {aroma} makes how many drops
{v} bottle of {aroma} contains how many drops
drop count {aroma} {v}
{v} of {aroma} with the pipette, drops
drops equal to {v} {aroma}
no syringe, {v} {aroma} by drops

= {g} of {aroma} in drops
i weighed {g} {aroma}, what is that in drops
{aroma} {g} expressed as drops
drops, not grams, for {g} {aroma}
dripping {g} of {aroma} from the bottle, how many
how many drops are {g} of {aroma}
{g} {aroma} to drops
convert {g} of {aroma} into drops
{g} {aroma} as drops
drops for {g} of {aroma}
my scale can't weigh {g} of {aroma}, drops
turn {g} {aroma} into drops
{g} of {aroma} drop by drop, how many
how often do i drip for {g} of {aroma}
number of drops making {g} {aroma}
too little to weigh, {g} {aroma} by the dropper
{g} {aroma} makes how many drops
drop count for {g} {aroma}
{g} of {aroma} with a pipette, drops
drops equal to {g} {aroma}
drip {g} of {aroma}
dropper count, {aroma}, {g}

= {t} in C
what is {t} in celsius
{t} to celsius
convert {t} into celsius
{t} as centigrade
american recipe says {t}, my thermometer is celsius
{t} in centigrade
{t} equals how many celsius
turn {t} into celsius
celsius for {t}
i need {t} expressed in celsius
{t} on a celsius thermometer
{t} comes to what in centigrade
european degrees for {t}
translate {t} to celsius
change {t} into c
{t} makes how many degrees celsius
metric temperature of {t}
celsius equivalent of {t}
write {t} in celsius

= {t} in F
what is {t} in fahrenheit
{t} to fahrenheit
convert {t} into fahrenheit
{t} as fahrenheit
my thermometer is in fahrenheit, {t}
{t} equals how many fahrenheit
turn {t} into fahrenheit
fahrenheit for {t}
i need {t} expressed in fahrenheit
{t} on an american thermometer
{t} comes to what in fahrenheit
american degrees for {t}
translate {t} to fahrenheit
change {t} into f
{t} makes how many degrees fahrenheit
us temperature of {t}
fahrenheit equivalent of {t}
write {t} in fahrenheit
hot plate dial is fahrenheit, {t}

= {v} in ml
how many ml is {v}
{v} to ml
convert {v} into millilitres
{v} as ml
{v} equals how many millilitres
turn {v} into ml
millilitres for {v}
{v} metric volume
i need {v} expressed in ml
{v} comes to what in millilitres
translate {v} to ml
change {v} into millilitres
{v} makes how many ml
ml equivalent of {v}
{v} in a metric measuring jug
write {v} as millilitres
how big is {v} in ml
{v} would be in ml

= {v} in fl oz
how many fluid ounces is {v}
{v} to fluid ounces
convert {v} into fl oz
{v} as fluid ounces
{v} equals how many fl oz
turn {v} into fluid ounces
fluid ounces for {v}
{v} in liquid ounces
i need {v} expressed in fluid ounces
{v} comes to what in fl oz
translate {v} to fluid ounces
change {v} into fl oz
{v} makes how many fluid ounces
fluid ounce equivalent of {v}
us bottle size for {v} in fluid ounces
american liquid measure of {v}, ounces
write {v} as fl oz
{v} would be in fluid ounces

= {v} in tsp
how many teaspoons is {v}
{v} to teaspoons
convert {v} into tsp
{v} as teaspoons
{v} equals how many tsp
turn {v} into teaspoons
teaspoons for {v}
{v} in small spoons
i need {v} expressed in teaspoons
{v} comes to what in tsp
translate {v} to teaspoons
change {v} into tsp
{v} makes how many teaspoons
teaspoon equivalent of {v}
measure {v} with a teaspoon
write {v} as tsp
{v} would be in teaspoons
tea spoons needed for {v}

= {d} in ml
how many ml are {d}
{d} to ml
convert {d} into millilitres
{d} as ml
{d} equals how many millilitres
turn {d} into ml
millilitres for {d}
volume of {d}
i need {d} expressed in ml
{d} comes to what in millilitres
{d} from the pipette, how much is that
what volume do {d} have
{d} makes how many ml
ml equivalent of {d}
write {d} as millilitres
how big are {d} in volume
{d} would be in ml
counted {d}, millilitres

= {v} in drops
how many drops is {v}
{v} to drops
convert {v} into drops
{v} as drops
{v} equals how many drops
turn {v} into drops
drops for {v}
i need {v} expressed in drops
{v} comes to how many drops
drop count in {v}
{v} with a dropper, how many
number of drops in {v}
{v} makes how many drops
drops equal to {v}
write {v} as drops
{v} dripped one by one
how often do i squeeze the dropper for {v}
drip {v}

= and {g}
@ convert
what would {g} be
{g} then
likewise {g}
another one, {g}
do {g} too
what about {g}
now {g}
same with {g}
{g} too
and how much is {g}
then {g}
how about {g}
next {g}
also {g}
no, i meant {g}
sorry, {g}
the same for {g}
make it {g}
and if it's {g}
{g} as well
repeat for {g}

= and in lb
@ convert
as well in pounds
convert that to pounds
my aunt uses pounds
pounds rather than that
it in lbs
the pounds as well
now as pounds
what is that in pounds
pounds instead
same in lb
make it pounds
how many pounds then
pounds too
and pounds
rather in pounds
in lbs
show pounds
the same in pounds
give it in lb
`;
