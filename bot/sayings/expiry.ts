/** Ways of asking for what `expiry` answers; bot/likeness/sayings.ts says how they are written. */
export const expiry = `
= what expires this week
what goes off this week
what goes out of date this week
what must go this week
which things reach their date this week
which lots end this week
what ends this week
does anything go off this week
does anything expire this week
is anything ending this week
what has to be used up this week
things to use up this week
what runs out of date this week

= what expires this month
what goes off this month
what goes out of date this month
what ends this month
which things reach their date this month
which lots reach their best before this month
what must be gone by the end of the month
what do i have to use up this month
what has to be used this month
does anything go off this month
is anything expiring this month
is anything ending this month
what dates come up this month
dates coming up this month
which tins must be sold this month
what runs out this month

= what expires next month
what goes off next month
what goes out of date next month
what ends next month
which things reach their date next month
what must be gone by the end of next month
what dates come up next month
is anything expiring next month
what will be too old next month

= what expires this year
what goes off this year
what ends this year
which things reach their date this year
what will be out of date by the end of the year
what must be finished this year

= what expires before {date}
what goes off before {date}
what ends before {date}
what goes out of date before {date}
which things reach their date before {date}
what must be gone before {date}
what must be sold before {date}
what should be used up before {date}
what has to be finished before {date}
anything that ends before {date}
does anything go off before {date}
is there anything that expires before {date}
could you look what expires before {date}
please check what will be too old before {date}
what do i need to finish before {date}

= what expires by {date}
what goes off by {date}
what will be out of date by {date}
what must be gone by {date}
what should be used up until {date}
what ends until {date}
which things reach their date by {date}
is anything expired by {date}
what will have gone off by {date}

= what expires in the next {n} days
what goes off in the next {n} days
what ends within {n} days
what ends in {n} days
which things reach their date in the next {n} days
anything expiring in the coming {n} days
does anything go off in the next {n} days
what must be used up within {n} days
what has less than {n} days left
best before dates in the next {n} days

= what expires soon
what goes off soon
what goes off next
what goes out of date first
what should i use up first
what should we use first
which things are nearly out of date
which tins are nearly out of date
what is close to its date
what is near its end
what will not keep much longer
what is getting old
which things are getting old
anything getting old
anything about to expire
anything that has to be used up soon
is there something i should use up soon
is something going off soon
what needs using up
what needs to be used up first
dates to look out for
which dates come up

= what is past its date
what is out of date
what has gone off already
what is too old
what is too old to use
which lots are too old
which things are too old
which things are past their date
what should i throw out
what must be thrown away
anything to throw out
is there anything i must throw out
anything that has to be thrown away
anything past its date
anything out of date already
is anything already expired
has anything gone off
which tins are no longer good

= when does {lot} expire
when does {lot} go off
when does {lot} end
until when is {lot} good
till when can we use {lot}
how long can we still use {lot}
how long is {lot} still good
how long will {lot} keep
how long does {lot} last
what is the date on {lot}
what date does {lot} have
what is the best before of {lot}
best before of {lot}
best before date for {lot} please
is {lot} still good
is {lot} still ok
is {lot} still in date
is {lot} too old
is {lot} already too old
has {lot} gone off
can we still use {lot}
can i still sell {lot}
expiry date {lot}

= reminders
what do the reminders say
what do the reminders say today
what does the reminder say
what does our reminder say today
what do you remind us of today
what would you remind us of today
what is there to be reminded of
what is on the reminder list
are the reminders on
are reminders switched on
are our reminders still running
is a reminder set
is there a reminder set up
when do you remind us
when will you remind us
what time do you remind us
what time is the reminder
at what hour is the daily reminder
how are the reminders set
how is the reminder set up
show me our reminder
do we have reminders
do we have a reminder
have we got reminders switched on
what reminders are there
todays reminders please
`;
