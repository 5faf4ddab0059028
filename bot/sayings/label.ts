/** Ways of asking for what `label` answers; bot/likeness/sayings.ts says how they are written. */
export const label = `
= label for {R}, {size}
tin wording for {R}, {size}
i need a label for {R} in {size}
what text goes on {size} of {R}
make the sticker for {size} {R}
write a label, {R}, {size}
{R} {size} label
sticker wording for {R} of {size}
labelling {size} of {R}
create a label saying {R}, {size}
what do i write on the pot of {R}, {size}
design the back label, {R}, {size}
label my {size} {R}
draft a label for {size} holding {R}
how should the label read on {R} {size}
{size} filled with {R} need labelling
text for lid and base, {R}, {size}
the packaging wording for {R} at {size}
prepare label {R} {size}
give me what is printed on {size} of {R}
my {R} goes in {size}, label it
labels please, {R}, {size}
tag for {R}, {size}

= label for {R}
tin wording for {R}
i need a label for {R}
make the sticker for {R}
write a label, {R}
sticker wording for {R}
labelling {R}
create a label saying {R}
what do i write on the pot of {R}
label my {R}
draft a label for {R}
how should the label read on {R}
{R} needs labelling
the packaging wording for {R}
prepare label {R}
give me what is printed on {R}
what text goes on a tin with {R}
label text {R}
{R} label
design a label for {R}
help me label {R}

= label for {R}, region {region}
{region} label for {R}
i sell {R} in {region}, label it
tin wording for {R} by {region} rules
sticker for {R} as {region} wants it
labelling {R} for {region}
label {R} the {region} way
how should {R} be labelled in {region}
write a {region} label, {R}
wording of {R} for shops in {region}
{R} is going to {region}, make its label
draft a label of {R} for {region} customers
legal label {R} {region}
make {R} label compliant with {region}
label text {R}, sold across {region}
exporting {R} to {region}, label
packaging wording, {R}, {region}
what does the {R} sticker look like in {region}
{R} labelled for {region}
a label of {R} under {region} law
{region} style sticker for {R}

= label for {R}, {size}, region {region}
{region} label for {size} of {R}
i sell {size} of {R} in {region}, label it
tin wording for {R} {size} by {region} rules
sticker for {size} {R} as {region} wants it
labelling {R}, {size}, for {region}
label {size} of {R} the {region} way
how should {size} {R} be labelled in {region}
write a {region} label, {R}, {size}
{R} {size} is going to {region}, make its label
draft a {size} label of {R} for {region} customers
legal label {R} {size} {region}
label text {R}, {size}, sold across {region}
exporting {size} of {R} to {region}, label
packaging wording, {R}, {size}, {region}
what does the {R} {size} sticker look like in {region}
{R} {size} labelled for {region}
in {region} what stands on {size} of {R}
a label of {R} under {region} law for {size}
sticker text for {region}, {R} in {size}

= print labels for {R}, {tins}
labels for {tins} of {R}
i need stickers for {tins} {R}
sheet of labels for {tins} of {R}
run off labels, {R}, {tins}
make the label sheet for {tins} {R}
{tins} of {R} want labelling
stickers to print for {tins} of {R}
label pdf, {tins} {R}
labelling {tins} {R}
tags for all {tins} of {R}
i have {tins} of {R} without labels, print some
printable labels {R} {tins}
a label each for {tins} of {R}
enough labels to cover {tins} {R}
set of stickers, {R}, {tins}
labels to stick on {tins} of {R}
print off a page for {tins} of {R}
prepare labels {tins} of {R}
label each of {tins} {R}
stick something on {tins} of {R}, print it

= print labels for {R}, {tins}, region {region}
{region} labels for {tins} of {R}
stickers for {tins} {R} as {region} wants them
sheet of {region} labels for {tins} of {R}
run off labels, {R}, {tins}, {region} rules
i sell {tins} of {R} in {region}, print the labels
label sheet for {tins} {R} going to {region}
{tins} of {R} labelled for {region}
printable {region} stickers {R} {tins}
labels to stick on {tins} of {R} for shops in {region}
labelling {tins} {R} the {region} way
exporting {tins} of {R} to {region}, print labels
tags for {tins} of {R}, {region}
prepare {region} labels, {tins}, {R}
for {region} i need label pages for {tins} of {R}
{tins} {R} must be labelled by {region} law
print off a {region} page for {tins} of {R}

= ingredient list of {R}
inci of {R}
how do i write the ingredients of {R} on the tin
latin names for {R}
inci names in {R}, in order
ingredients line for {R}
what is the inci declaration of {R}
{R} inci
list of contents of {R} in legal order
the official ingredient names of {R}
ingredients as printed for {R}
translate {R} into inci
{R} ingredients for the back of the pot
cosmetic names of all that is in {R}
declare the contents of {R}
full inci for {R}
order of ingredients, {R}
the latin list for {R}
composition line on the tin of {R}
botanical names for the ingredients in {R}
text after the word ingredients for {R}

= ingredient list of {R} in {region}
inci of {R} for {region}
how are the ingredients of {R} written in {region}
{region} ingredient names for {R}
inci names in {R} by {region} rules
ingredients line for {R}, {region}
what is the ingredient declaration of {R} in {region}
{R} inci {region}
list the contents of {R} as {region} orders them
the official {region} ingredient names of {R}
ingredients as printed in {region} for {R}
declare the contents of {R} in {region}
full inci for {R} sold in {region}
order of ingredients in {region}, {R}
composition line of {R} for {region}
{R} ingredients the {region} way

= what must be on the label of {R}
tell me what i have to put on the back of {R}
what do i write on the back of {R}
what has to stand on {R}
do i have to print the weight on {R} tins
must the weight be on {R}
do i need to put my address on {R}
do i have to give a best before date on {R}
is a batch number required on {R}
must i list the ingredients on {R} tins
what do i have to put on {R} tins
what does the law want on a tin of {R}
compulsory things on {R} packaging
mandatory label points for {R}
what has to stand on the pot of {R}
legally required on {R} label
everything i must print for {R}
which details have to be on {R}
what do inspectors look for on the {R} label
obligatory wording, {R}
label requirements {R}
must haves on the sticker of {R}
what am i obliged to put on {R}
required particulars for {R}
what belongs on the label of {R}
label checklist for {R}
which facts has a {R} tin to show
label duties for {R}
minimum information on {R}
what should a buyer be able to read on {R}

= what must be on the label of {R} in {region}
tell me what i have to put on the back of {R} for {region}
what do i put on the back of {R} tins in {region}
what has to stand on {R} for {region}
do i have to print anything special on {R} in {region}
what does {region} law want on a tin of {R}
compulsory things on {R} packaging in {region}
mandatory label points for {R}, {region}
what has to stand on the pot of {R} in {region}
legally required on {R} label in {region}
everything {region} makes me print for {R}
which details have to be on {R} in {region}
what do {region} inspectors look for on the {R} label
obligatory wording, {R}, {region}
{region} label requirements {R}
must haves on the sticker of {R} in {region}
what am i obliged to put on {R} in {region}
required particulars for {R} under {region} rules
label checklist of {region} for {R}
minimum information on {R} sold in {region}
selling {R} in {region}, which facts must the label show
label duties for {R} {region}

= which warnings go on the label of {R}
cautions to print on {R}
what warning text does {R} need
precautions on the {R} tin
do i have to print warnings on {R}
warnings for the sticker of {R}
safety phrases on {R} label
what must i warn people about on {R}
keep away lines for {R} packaging
caution wording {R}
warning sentence for the pot of {R}
label warnings {R}
which cautions belong on the tin of {R}
what small print warnings does {R} carry
warn the buyer of {R} on the label about what
directions and cautions for {R} label
{R} sticker, which precautions
obligatory cautions, {R}
what do i warn of on the lid of {R}

= which warnings go on the label of {R} in {region}
cautions to print on {R} in {region}
what warning text does {region} want for {R}
precautions on the {R} tin, {region}
do i have to print warnings on {R} in {region}
{region} warnings for the sticker of {R}
safety phrases on {R} label in {region}
what must i warn people about on {R} in {region}
caution wording {R} {region}
warning sentence for the pot of {R} under {region} rules
label warnings {R}, {region}
which cautions belong on the tin of {R} sold in {region}
{region} obligatory cautions, {R}
selling {R} in {region}, which warnings get printed
does {region} demand a caution on {R}
keep away lines {region} wants for {R}
what must the {R} tin warn of in {region}
precautionary text {R} for {region}
what do i warn of on {R} sold to {region}

= labels for {R} on A4
print {R} labels on a4
a4 sheet of {R} stickers
{R} labels, a4 paper
my printer takes a4, labels for {R}
label page a4 {R}
a4 label pdf for {R}
{R} stickers laid out on a4
run {R} labels off on a4
put {R} labels onto an a4 page
european paper a4, {R} labels
lay out labels of {R} for a4
an a4 page full of {R} labels
i have a4 sticky paper, labels for {R}
a4 format for {R} labels
fill an a4 with labels of {R}

= labels for {R} on Letter
print {R} labels on letter
letter size sheet of {R} stickers
{R} labels, letter paper
my printer takes letter, labels for {R}
label page letter {R}
us letter label pdf for {R}
{R} stickers laid out on letter
run {R} labels off on letter paper
put {R} labels onto a letter page
american paper size letter, {R} labels
lay out labels of {R} for letter size
a letter page full of {R} labels
i have letter sticky paper, labels for {R}
letter format for {R} labels
fill a letter sheet with labels of {R}

= round labels {n} mm for {R}
{R} labels for lids of {n} mm
my lid is {n} mm across, labels for {R}
circle stickers {n} mm, {R}
lid diameter {n} mm, label {R}
round {n} mm sticker for {R}
{n} mm circles for {R} lids
the lid measures {n} mm, make labels of {R}
label to fit a {n} mm round lid, {R}
{R} stickers round {n} mm
tops are {n} mm wide, {R} labels
disc label {n} mm {R}
i have {n} mm lids, print {R}
lid stickers for {R}, {n} mm diameter
{R}, round tin top of {n} mm, label
a {n} mm dot with {R} on it
punched circles of {n} mm for {R}
{R} lid label, {n} mm diameter

= strip labels {n1} mm x {n2} mm for {R}
strips for a tin {n1} mm x {n2} mm, {R}
side strip {n1} mm x {n2} mm for {R}
wrap label round a tin {n1} mm by {n2} mm, {R}
band around the tin, {n1} mm across {n2} mm high, {R}
{R} strip labels {n1} mm x {n2} mm
tin {n1} mm wide {n2} mm tall, wraparound label for {R}
label going round the side, {n1} mm x {n2} mm, {R}
paper band {R} tin {n1} mm x {n2} mm
wraparound strips of {R} for tins {n1} mm x {n2} mm
edge sticker {n1} mm x {n2} mm {R}
long strip for the rim, tin {n1} mm x {n2} mm, {R}
my tin is {n1} mm and {n2} mm high, strip for {R}
{R} side band, {n1} mm diameter {n2} mm height
seal strip for {R}, tin {n1} mm x {n2} mm
collar label {n1} mm x {n2} mm for {R}
thin strip {R}, diameter {n1} mm, height {n2} mm

= what is missing on the label of {R}
what does the {R} label still lack
is the label of {R} complete
what blanks remain on the {R} label
which label details have i yet to give for {R}
gaps in the label for {R}
still open on the {R} sticker
finish the label of {R}, what else is needed
what do you need from me for the {R} label
incomplete bits, label {R}
label {R} unfinished, what do i fill in
what else has to be filled in on the tin label of {R}
what did i forget on the {R} label
empty fields on {R} label
does the {R} sticker lack something
outstanding label information {R}

= net weight in ounces on the label for {R}, {size}
net oz for {R}, {size}
what net weight do i print on {size} of {R}
net contents in ounces, {R}, {size}
how many oz does {size} of {R} declare
ounces to print for {R} in {size}
net wt line for {size} {R}
declared weight {R} {size} in oz
{size} of {R}, net weight ounces for the label
what does net wt say on {size} {R}
net quantity statement for {R}, {size}
the ounce figure printed for {size} of {R}
how heavy is {R} in {size} for the label, oz
net weight in oz, {size}, {R}
contents in ounces on the sticker, {R} {size}
weight statement in oz for {size} with {R}

= and for {region}
@ label
now the {region} one
and the {region} one
one for {region} too
and for the {region} label
same label for {region}
what about {region}
how does it look in {region}
now a {region} version
do the {region} version
also for {region}
i need it for {region} too
now by {region} rules
change it to {region}
{region} instead
and customers in {region}
make it for {region}
and if i sell in {region}
redo for {region}
what would {region} want

= same for {R}
@ label
do one for {R} too
same for {R}
the same for {R}
now one for {R}
another for {R}
and {R}
also {R}
what about {R}
i need one for {R} as well
{R} as well

= on A4
@ label
my printer only takes a4
we only have a4 paper
our printer has a4
put it on a4
a4 paper
i print on a4
make the sheet a4
on a4 then
my paper is a4
switch to a4
a4 page instead
european a4 size
lay it out for a4
european paper please
my sticker sheets are a4
a4 layout
print it for a4
change the paper to a4

= on Letter
@ label
my printer only takes american paper
we only have american paper
it has to fit letter paper
our printer has letter paper
put it on letter
letter paper
i print on letter
make the sheet letter size
on letter then
my paper is us letter
switch to letter
letter page instead
american letter size
lay it out for letter
american paper please
my sticker sheets are letter
letter layout
print it for us letter
change the paper to letter

= lids of {n} mm
@ label
make it {n} mm
round, {n} mm
the lid is {n} mm across
{n} mm wide instead
for a {n} mm lid
my lids measure {n} mm
diameter {n} mm
resize to {n} mm
{n} mm circles
i measured {n} mm
cut them at {n} mm
tops of {n} mm
fit a {n} mm round
wider, {n} mm
smaller, {n} mm
round label of {n} mm then
use {n} mm

= and for {tins}
@ label
print enough for {tins}
i have {tins} of it
do a sheet for {tins}
for {tins} please print
{tins} then
make it {tins}
i need them for {tins}
there are {tins} to label
cover {tins}
run off {tins} worth
labels enough for {tins}
now {tins}
same for {tins}
label {tins}
the batch is {tins}
stickers for {tins}

= what is missing on the label
@ label
what is still open
what blanks are left
is that label complete
what do i have to fill in
what else does it need
which details are still lacking
any gaps left
what have i yet to give you
is something lacking on it
what should i add so it is finished
what else belongs on there
which parts are empty
anything i forgot on the label
what does the label still need
unfinished bits of the label
is the label finished

= make it {g}
@ label
actually they are {g} tins
actually they're {g} tins
they are {g} tins
it is {g} in each
my tins hold {g}
sorry, {g}
{g} each
i fill {g}
each one has {g}
`;
