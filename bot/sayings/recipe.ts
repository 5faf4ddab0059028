/** Ways of asking for what `recipe` answers; bot/likeness/sayings.ts says how they are written. */
export const recipe = `
= show {R}
what is in {R}
open {R}
let me see {R}
ingredients of {R}
list what goes in {R}
read me {R}
pull up {R}
display {R}
{R} contents
what's {R} made of
print the lines of {R}
remind me how {R} goes
look up {R}
the recipe for {R}
how did we write {R}
formula of {R}
what did we put in {R}
which ingredients does {R} have
tell me what {R} consists of
composition of {R}
find {R} in the book
bring {R} on screen
recipe card for {R}
i forgot what is in {R}
view {R}
give the formula {R}
{R} as saved
amounts written down for {R}
what are the parts of {R}
can i have a look at {R}

= list recipes
what recipes do we have
show all our recipes
which balms are saved
everything in the recipe book
our formulas
names of the saved recipes
recipe overview
what can we make
what have we got written down as recipes
all recipes
see the recipe list
my saved formulas
table of contents of recipes
which recipes are in the book
every recipe stored here
index of recipes
i can't remember what i called the recipe, show them all
tell me the recipes you know
recipes on file
catalogue of our balms
the collection of recipes
how many recipes are there, name them
browse recipes
what's in the recipe folder
recipes available to the group
which formulas did we store

= versions of {R}
old versions of {R}
how often was {R} edited
earlier forms of {R}
revision list of {R}
has {R} been changed before, show the versions
what editions of {R} exist
previous states of {R}
how many versions has {R}
{R} revisions
all the drafts of {R}
list every version of {R}
past versions of {R}
which versions of {R} are kept
different editions of {R}
older copies of {R}
{R} version list
how did {R} look in earlier versions, list them
show the version numbers of {R}
what iterations of {R} do we have
the former variants of {R}

= show version {n} of {R}
{R} version {n}
open {R}, number {n}
what was in version {n} of {R}
let me see {R} as it was in v{n}
edition {n} of {R}
{R} revision {n}
how did {R} look at version {n}
read the {n} version of {R}
display {R} version no {n}
look at draft {n} of {R}
contents of {R}, version {n}
pull up v {n} of {R}
i'd like to look at version {n} of {R}
ingredients of {R} in version {n}
view edition {n}, {R}
print version number {n} of {R}
{R} from version {n}, only looking
tell me what {R} consisted of in version {n}
what did version {n} of {R} say
see iteration {n} of {R}

= how do I save a recipe
how can i store my own recipe
explain how to put a recipe in the book
where do i enter a new recipe
i want to add my recipe, how
how is a recipe saved
teach me to write a recipe down here
what do i type for keeping a recipe
way to record a formula
how to add a recipe
how does one save a balm
steps to store a recipe
can i keep my recipes with you and how
entering a recipe, how does it go
how do i put in my own formula
format for saving recipes
how to note a new recipe
tell me how recipes are added
how should i type a recipe so you remember it
help with saving recipes

= and in {region}
@ check
what about {region}
if i sell it in {region}
by the rules of {region}
now for {region}
same thing for {region}
and under {region} law
how is that in {region}
change it to {region}
for the {region} market
we ship to {region} too
how would {region} see it
sold in {region} instead
does {region} differ
customers in {region}
no, {region}
i'm in {region}
{region} rules then
take {region} instead
apply {region}
{region} version
`;
