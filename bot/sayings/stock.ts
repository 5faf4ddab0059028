/** Ways of asking for what `stock` answers; bot/likeness/sayings.ts says how they are written. */
export const stock = `
= stock
whats in stock rn
what is in the cupboard right now
what have we got on the shelf
what's on our shelves these days
what do we have at the moment
what ingredients do i still have
what is left of everything
what is left of all the ingredients
whats left in total
give me the full inventory please
show me everything we have in stock
can i see the inventory
let me see what we have in the store
tell me what stands on the shelf
how does our stock look
how do our supplies look
how are the supplies
state of the stock
state of our supplies
current stock levels please
list the whole stock
what remains in the store cupboard
what remains on the shelf
what stuff is left over
which ingredients are still there
which ingredients do we still have
which materials are in the house
what materials do we own
what raw materials are there
i want to count the cupboard, what should be there
before shopping i want to know what we have
what is in the pantry
what's in the larder now
overview of our ingredients in store
stock overview
stock list for everything
i'd like to see a list of all our lots
all lots with what is left in them

= stock of {i}
how are we doing for {i}
how are we off for {i}
how is the {i} holding out
do i still have {i} in the cupboard
do we still have {i} somewhere
is any {i} left on the shelf
is there still some {i}
have we still got {i}
have we any {i} left
what do we have of {i}
what have we got of {i}
what is left of the {i}
what remains of our {i}
what about the {i}, is there enough in the cupboard
how many grams of {i} are on the shelf
how many grams {i} do we still own
how much {i} is in the store
how much {i} remains
how much {i} have i got left over
how much {i} did we have again
{i} left
{i} how much left
{i} remaining in stock
amount of {i} still in the cupboard
tell me how much {i} there is
tell me the stock for {i}
show me the {i} lots
which lots of {i} do we have
which lots of {i} are there
list every lot of {i}
where do we stand with {i}
i need to know the {i} left
did we run out of {i}
are we out of {i}
have we run out of {i}
is the {i} all gone
is the {i} finished
can you look how much {i} we have

= how much of {lot} is left
what is left of {lot}
what is left in {lot}
what remains of {lot}
what remains in {lot}
is there anything left in {lot}
is there still some of {lot}
do we still have any of {lot}
how many grams of {lot} are left
how many grams are still in {lot}
how full is {lot}
how much is in {lot}
how much do we have of {lot}
how much {lot} do we have
what do we still have of {lot}
what does {lot} hold now
what is the balance of {lot}
{lot} remaining
{lot} left
{lot} how much
how is {lot} doing
tell me what is left from {lot}
look up how much is left of {lot}
current amount in {lot}
have we got anything left of {lot}

= running low
what is low
what's getting low
what is nearly gone
what's almost empty
what is about to run out
which ingredients are nearly finished
which ingredients are nearly used up
which ingredients are getting scarce
which ingredients are running short
what are we short of
what do we need to reorder
what should i reorder
what should we buy soon
what must we buy again
what needs buying
what needs topping up
what needs restocking
what do i have to order
anything low
anything running out
is anything running low
is anything getting short
is there anything i must order
are we running out of something
are we low on anything
do we need to order more of something
which stocks are below their mark
which ones are under the low mark
what has fallen below the mark
what is below its mark
low stock list
shopping list of what is low
what goes on the shopping list
what do i put on the shopping list
are any supplies close to empty

= which lots are open
which lots have been opened
which lots did we open
what is open on the shelf
which packs are open
what bags are open
what bottles are open at the moment
list the open lots
show open lots
what have we opened so far
which bottles have we started
which ones are already opened
what is already open
`;
