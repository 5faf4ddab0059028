/** Ways of asking for what `claim` answers; bot/likeness/sayings.ts says how they are written. */
export const claim = `
= can I say {q}
may i say {q}
am i allowed to say {q}
is it legal to say {q}
would it be ok to write {q}
can i claim {q}
is it fine to advertise {q}
may we tell people it {q}
can i tell customers it {q}
is the wording {q} alright
do the rules let me write {q}
can my advert read {q}
could i put on the website {q}
is there trouble if i write {q}
can the shop sign read {q}
may i promise {q}
is it a medical claim to write {q}
i want to say {q}
i would like to advertise {q}
our leaflet reads {q}
my stall banner says {q}
on instagram i wrote {q}
will i get in trouble for {q}
does this wording pass: {q}
check this sentence for me: {q}
is this phrase okay: {q}
the customer review says {q}
someone posted that it {q}
how about the slogan {q}
am i breaking a law with {q}
too medical? {q}
does it sound like a medicine: {q}
marketing line: {q}
my flyer promises {q}
the product description reads {q}
i was going to write {q}
are we permitted to state {q}
does this count as a drug claim: {q}
is it going too far to say {q}
could anybody object to {q}

= may I print {q} on the label
can i print {q} on the label
may {q} stand on the tin
is {q} allowed on a label
can the sticker say {q}
can i write {q} on the tin
may the lid say {q}
i want {q} on the label
would {q} be allowed on packaging
is {q} fine on the pot
does {q} pass on a label
put {q} on the sticker, ok
could {q} go on the front of the tin
is it legal to have {q} on the packaging
the label reads {q}, alright
my old labels say {q}, keep them
printing {q} on my lids, permitted
could i stamp {q} on the tins
the back of the tin should read {q}
may a cosmetic label carry {q}
am i ok with {q} on the packaging
have {q} on my jar, allowed

= can I say {q} in {region}
is {q} allowed in {region}
may i advertise {q} in {region}
does {region} allow {q}
would {region} call {q} a drug claim
is {q} legal in {region}
in {region}, can i say {q}
selling in {region}, may i write {q}
under {region} rules is {q} ok
{region} law and the wording {q}
could i claim {q} to customers in {region}
for {region}, does {q} pass
how does {region} see {q}
am i allowed {q} in {region}
{q} on a website aimed at {region}
is {q} a medicine in {region}
would {q} be fine at a {region} market

= what can I say instead of {q}
a safer way to say {q}
reword {q}
how do i put {q} so that it is allowed
alternative to {q}
cosmetic wording in place of {q}
say {q} differently
what should i write in place of {q}
replace the phrase {q}
softer wording for {q}
rephrase {q} for me
a legal version of {q}
turn {q} into something permitted
how else could i express {q}
i used to write {q}, suggest another wording
which words may stand in for {q}
tone down {q}
better words than {q}

= and can I say {q}
@ claim
and what about {q}
and {q}
or {q}
how about {q}
then is {q} better
would {q} be ok
and if i write {q}
maybe {q}
what if it reads {q}
and is {q} fine
ok then {q}
try {q}
is {q} safer
change it to {q}
i could say {q}
and this wording: {q}
also {q}
let us say {q}
what do you think of {q}
next wording, {q}

= and in {region}
@ claim
what about {region}
is it the same in {region}
and under {region} rules
does {region} allow it
and if i sell in {region}
for {region} as well
in {region} too
how does {region} see it
would it pass in {region}
and customers from {region}
now for {region}
by the rules of {region}
in case i sell to {region}
how strict is {region} on it
would {region} call it a drug
if it goes to {region}

= what can I say instead
@ claim
then what
what then
so what would be fine
give me a better wording
what would you write
how do i reword it
suggest something allowed
how should i put it then
what is a safe way to say it
another phrase please
what may i write in its place
any alternative wording
rephrase it
make it legal for me
what words are ok
so what am i allowed to say
how could i soften it
replace it with what
turn it into something permitted
a legal version of it

= why
@ claim
how come
what is the reason
explain that
what makes it medicinal
on what grounds
which word is the trouble
who says so
which rule is that
where does it go wrong
what is wrong with it
i do not understand the reason
what is the matter with it
give the grounds
why is that
why so strict
explain the verdict
`;
