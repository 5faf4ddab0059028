/** Ways of asking for what `reaction` answers; bot/likeness/sayings.ts says how they are written. */
export const reaction = `
= list reactions
has anybody complained so far
has anyone had a reaction so far
has anyone reacted badly
did anybody react to something
did anybody report anything
did someone have a bad reaction
were there any bad reactions
were there any complaints
were there any reactions so far
any complaints so far
any reactions noted
any skin trouble reported so far
which reactions are noted
which reactions have been reported
which reactions did we write down
which complaints have we had
what complaints are there
what reactions have been reported
what reactions do we have on record
how many reactions have we had
how many complaints did we get
the reaction log please
show me the reaction book
all reported reactions
all the complaints we noted
let me see what people reported

= reactions for {lot}
is there anybody who had trouble with {lot}
who had trouble with {lot}
has anyone had problems with {lot}
did {lot} cause any trouble
did {lot} give anyone a rash
any trouble with {lot} so far
any bad news about {lot}
has anyone reacted to {lot}
has anybody reacted badly to {lot}
has anyone had trouble with {lot}
has anyone complained about {lot}
did anybody react to {lot}
did someone complain about {lot}
did anyone report a reaction to {lot}
were there reactions to {lot}
were there complaints about {lot}
any complaints about {lot}
any complaints on {lot}
any reactions to {lot}
any reports on {lot}
any bad reports about {lot}
what reactions were there to {lot}
what was reported about {lot}
which reactions are noted for {lot}
how many reactions to {lot}
reaction list for {lot}
is there a reaction against {lot}
`;
