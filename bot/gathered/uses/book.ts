/** What is asked of the bench book by the things in a message; bot/gathered/use.ts says how this is written. */
export const book = `
~ region

= reactions for {lot}
? reaction* rash* itch* complain* complaint* react reacted reacts trouble swell* swollen
? which any anybody anyone anything somebody show what has_any* have_any* did is_there were_there was_there list how_many

= recall {lot}
? is_bad was_bad went_bad gone_bad contaminated tainted mouldy moldy faulty unsafe dangerous metal glass poisoned spoiled spoilt rancid
? supplier maker mill shop they says said say who where what warn* warned phone* inform* tell told problem there's there_is now
! threw thrown bin binned

= recall {lot}
? come_back must_come recall* call_back called_back calling_back calls_back call_in take_back get_back withdraw* warn inform notify

= history of {lot}
? history who_changed who_touched who_wrote who_entered changes what_happened what_has_happened what's_happened story log journal written_about happened_to happened_with
! left recall

= history of {lot}
? poured made make pour bought entered wrote filled did_the_pour batch
? who whom whose which_of_us which_member
? who poured made whom by_whom which_of_us which_member
! tins left used got went go gave out of with

= trace {lot}
? out_of_the_house out_there given_away gave_away give_away handed_out hand_out outside are_out is_out went_out sold_of
? how_much how_many any what which who did have has

= which lots went into {lot}
? ingredients lots went_in
? how what which list when from
! left gave_out gave sold where who recall* expire* best_before recipe version temperature

= batch {lot}
? turn_out turned_out temperature recipe went_in big
? how what which list when from
! left gave_out gave sold where who recall* expire* best_before

= how much of {lot} is left
? how_full is_anything_left anything_left how_much_is_left what_is_left what's_left remaining remain remains still_there still_some run_out empty balance weigh_now
! out who whom where recall

= how much of {lot} is left
? left remaining remains remain still_have still_got still_there left_over all_gone rest rests stay stays at_home with_us in_the_house in_the_cupboard on_the_shelf in_stock do_we_have we_have have_we do_i_have should_i_find should_we_find should_be remainder down_to how_far nearly_gone nearly_finished finish finished all_used used_up use_up status enough in_hand on_hand balance still_here here situation
? how_much how_many how_far what what's is there any anything some do did have has how status situation
! out who whom where which_batch* recall expire* good when date

= when does {lot} expire
? still_be_good be_good still_be still_sell can_i_sell can_we_sell ok_to_use okay_to_use safe_to_use make_it_to last_until ok_till ok_until okay_till okay_until fine_till fine_until fine_for ok_for expire* expiry best_before use_by use-by go_off goes_off good_until good_till out_of_date keep* run_out date last* end ends up_to_what until_what until_when still_good
? when until till how_long what which is does can will up_to date why does
! correct change should is_wrong move bought poured made why reason how_come decide* decides sets batches end_up ended_up go_into

= batch {lot}
? why reason how_come decide* decides sets set_by come_from comes_from limits limit determine* responsible
? expire* expiry best_before use_by go_off date end ends early soon late short good

= lot {lot}
? why reason how_come decide* decides sets set_by
? expire* expiry best_before use_by go_off date end ends early soon late short good

= who changed {lot}
? who whose which_member which_of_us by_whom
? opened threw_away threw_out threw thrown_away thrown_out binned weighed counted corrected entered used_up finished noted
! left where

= how much of {lot} is left
? in_the_house still_here on_the_shelf in_stock in_hand on_hand
! where who whom expire* bought gave sold which what_is_in recall* reaction* record

= trace {lot}
? where who whom trace* track* follow which went gone end_up ended_up go_into went_into used_in used_for whereabouts where'd usage
! left all_gone expire* bought poured_today gave_away history reaction* why

= trace {lot}
? batch batches pours pour balm balms products tins jars
? used use uses contain* which_pours contaminated drew drawn in from with affected touch* took hold holds
! left expire* bought poured_today gave gave_away history reaction* why correct

= batch {lot}
? state condition make-up makeup composition book_say book_says book_have book_has record details everything page figures look_at look_up what_is_written know story tell about sheet what's_in read
? what show give tell everything open details page look read let see pull know about record state figures get condition
! left batches pours where who expire* recall* correct note why fine ok okay good gave sold used reaction* history label*

= lot {lot}
? state condition book_say book_says book_have book_has record details everything page figures look_at look_up what_is_written know tell about read
? what show give tell everything open details page look read let see pull know about record state figures get condition
! left batches pours where who expire* recall* correct note why fine ok okay good gave sold used reaction* history label*

= batch {lot}
? how_many
? make made makes come came filled fill yield* gave_us get got
! people guests visitors left out gave sold still

= how many tins of {R} are left
? left remaining still_have still_got unsold still_there in_the_house have_we
? how_many what how_much any are do is there still

= how many tins of {R} are left
? do_we_have do_i_have have_we have_i is_there are_there left stay stays at_home with_us here in_stock on_hand in_hand to_sell remain remains unsold
? how_many how_much any what is are do have has there status got
! long_ago recipe* price* cost* label* who whom where out gave sold melt* made_from in_it long

= trace {lot}
? what_is_in_it_for what_for for_what used_for went_out gone_out left_the_house go_out
? what which who how_many did
! expire* left_in

= how many tins of {R} are left
? left_over in_the_house do_we_have have_we do_we_own do_we_still
? any what how_much how_many is are
! only with from what_is what's

= list batches of {R}
? when how_often how_many_times which_one which_batch* which_pours
? poured pour made make done do
! poured_today today yesterday

= list batches of {R}
? ever when last_time latest last newest often how_long_ago
? made make pour poured done batch pouring
! today yesterday label* cost* how_much sold gave given

= trace {R}
? out gone sold given_away gave_away handed_out
? how_many how_much which what are
! made poured changed made_from recipe left sold_out of_date melt* all_gone

= how many tins of {R} are left
? sold_out all_gone all
? is are have has
! recipe melt* out_of_date who

= trace {R}
? who whom where which_people which_shops
? has have got get gets gone go went give gave given sold sell bought buy are is
! made poured changed made_from recipe left

= reactions for {lot}
? incident* reaction* complaint*
? number count how_many any tally list
! recall*

= reactions for {R}
? reaction* rash* itch* complain* complaint* react reacted trouble swell* swollen bothered sore
? any anybody anyone anything somebody did has_any* have_any* is_there were_there was_there how_many which show list who
! could should can might if

= list batches of {R}
? batches pours pouring batch poured pour how_often how_many_times
? which list show what all when ever how_often how_many_times every each did have
! poured_today label* cost* expire* did_we_get got get gave given sold today yesterday

= who changed {R}
? who_changed who_touched who_edited who_altered who_wrote who_has_changed who_has_been who's_been

= how much {i} is left
? status situation supply supplies level levels possess left is_there in_the_house do_we_own do_we_have have_we on_the_shelf in_the_cupboard still we_own
? what how_much how_many any some is do have house status situation supply level levels
! similar alternative stand only replace* swap* instead melt* make made poured bought

= batch {lot}
? sample samples kept keep weigh* weight heavy how_big size in_all in_a_tin per_tin each_tin in_each in_one called
? how what which did do many much
! gave gave_out sold where who recall* expire* left

= trace {lot}
? sell sold give gave given hand_out handed_out
? how_many how_much did have
! recall* expire* left have_left

= which batches are open
? tins_left jars_left pots_left sticks_left tubes_left
! of on for

= what is out of the house
? tins_out jars_out pots_out sticks_out
! of for

= list batches
? sold_out empty all_gone run_out
? which what
? batch batches
! of_date bottles lots

= list batches
? did_we_make we_have_made we_poured we_have_poured we_made been_poured have_we_made did_we_pour
? what which show everything all list
! in today yesterday last_week last_month with of from where who when

= which batches are open
? tins batch* balm* pots jars salve* pours
? do_we_have have_we do_i_have have_i in_the_house still_have have_left have_we_left not_finished to_sell unsold still_there still_here not_empty something_left left_in
? which what how_many all any show list
! out given gave sold_to

= which batches are open
? can_i_take can_we_take could_i_take could_we_take most_tins most_left to_sell can_i_sell can_we_sell still_sell could_we_sell for_sale ready_to_sell finished_balms finished_tins finished_salves
? what still_have have_left left which how_many who
! recipe price* cost* can_i_sell may

= what is out of the house
? we_sold have_sold did_we_sell have_we_sold we_given have_we_given who_has_what who_got_what who's_got_what our_stuff our_things
? what how_many who where
! recipe* price* cost* can_we may_we this_month last_month this_week last_week yesterday today this_year last_year in_january in_february in_march in_april in_may in_june in_july in_august in_september in_october in_november in_december

= what is out of the house
? are_out still_out got_out been_out went_out gone_out
? what which how_many tins jars pots everything
! of_date oil oils low heat sun of_stock of_beeswax

= what is out of the house
? out_of_the_house outside_the_house out_there outside left_the_house with_other_people given_out at_shops with_people out_and_about away_from_here holding_our has_our hand_out handed_out given_away gave_away gone_out out_the_door not_in_the_house with_customers we_gave we've_given
? what what's which who who's how_many how_much everything all list show tins balm* jars pots anything stock did where
! heat sun weather summer winter cold rain melt* leave leaving store keep* in_summer

= what is past its date
? can't_use can't_we_use can't_i_use cannot_use cannot_we_use shouldn't_use shouldn't_we_use should_not_use mustn't_use must_not_use no_longer_use unusable past_it over_it gone_past out_of_date_already past_best over_their_date over_its_date over_the_date over_date over_the_best_before beyond_its beyond_their beyond_the passed_its passed_their past_its past_their past_the gone_over already_off out_of_date too_old already_expired no_longer_good should_have_been_used
? which what anything something things all stuff list show everything ones lots batches tins is are

= what expires before {date}
? is_best_before that's_best_before are_best_before earlier_than
? everything anything what which things show all

= what expires in {date}
? best_before expire* expiry go_off goes_off going_off date dates due end ends ending runs_out run_out reach* out_of_date past_its no_longer_good
? in during within of
? everything anything what which whatever things list lots batches show all whose stuff tins
! before by until poured made bought history made_in

= what expires by {date}
? expire* expiry go_off goes_off date dates due end ends ending runs_out run_out reach* out_of_date past_its no_longer_good with_best_before must_go must_be
? by until till up_to on
? everything anything what which whatever things list lots batches show all whose stuff tins
! poured made bought history made_in in

= what expires<this_month: this month><this_week: this week><next_month: next month><next_week: next week><this_year: this year><soon soonest first next_to: soon>
? best_before best_befores expire* expiry go_off goes_off going_off date dates due end ends ending runs_out run_out reach* out_of_date
? this_month this_week this_week's next_month next_week this_year soon soonest first next_to
? everything anything what which whatever things list lots batches show all whose stuff dates
! poured made bought history recipe* melt* workshop price* cost*

= reactions
? reaction* rash* complaint* react reacted
? any anyone anybody list show which what were_there was_there all how_many reported
! poured from_a allerg* if should my skin_type

= which lots are open
? open opened started
? what what's which lots bottles jars bags tubs oils list show
! batch batches tins recipe

= show me the latest batch
? newest latest most_recent last_batch last_pour
? batch pour poured
! batches of

= history of {lot}
? throw throw_away thrown waste wasted tip_away
? how_much did what

= stock of {i}
? buy bought get got opened open arrive* come came
? when how_long_ago what_day which_day
! can should

= stock of {i}
? mark under_its below_its low short running_low running_out
? is are
! melt* price*

= stock
? shelf shelves cupboard cupboards larder pantry store_cupboard storeroom
? what how_much everything all list show see left
! tins batch* balm* salve* reaction* expire* life life-time life_of label* should

= stock
? overview inventory each_thing of_each everything
? shelf stock cupboard larder pantry ingredients each_thing of_each supplies
! reaction* batch* expire* out_of_date

= running low
? do_we_need do_i_need should_i_get should_i_buy must_i_buy must_we_buy
? what anything
! tins recipe for_the for_a to_make to_do batch class workshop people

= running low
? low short under_their close_to_empty below_a reorder re-order below_its below_the below_their nearly_gone under_its
? mark marks stock what anything which things running getting need buy
! melt* price* loss

= export as csv
? csv spreadsheet* excel tables
? everything whole all book data it full export our files can get tables
! batches lots recipes prices stock reactions

= export batches as csv
? csv spreadsheet* excel table tables
? batches pours

= export lots as csv
? csv spreadsheet* excel table tables
? lots stock shelf inventory

= export recipes as csv
? csv spreadsheet* excel table tables
? recipes recipe
! drop delete

= export prices as csv
? csv spreadsheet* excel table tables
? prices price

= export reactions as csv
? csv spreadsheet* excel table tables
? reactions

= reminders
? remind* daily_message
? when how what which is are do does at_what
? days hour next set on at_all come ahead time up
! stop no_more off
`;
