/** What is told of pours and containers; bot/told/uses.ts says how this is written. */
export const batch = `
= poured {count} of {g} of {R}[ with lots {lots}][ on {date}]
= poured {count} of {R}[ with lots {lots}][ on {date}]
? poured filled made cast produced a_pour the_pour our_pour my_pour first_pour second_pour third_pour fourth_pour next_pour last_pour new_pour another_pour today's_pour yesterday's_pour evening_pour big_pour small_pour pour_number pour_today today's_result evening's_result result_of came_out came_off come_out turned_out finished done set_now are_setting stand_cooling are_cooling cooling were_born ladled decanted bottled tinned jarred potted_up spooned scooped at_it session today's_session this_session ended_up_with wound_up_with finished_up_with off_the_bench left_the_kitchen left_the_bench done_and_dusted class_produced group_produced pouring first_batch second_batch third_batch new_batch another_batch result results today's_batch next_batch batch_today batch_done out_of_the_jug got_out_of in_the_tins potted cooked whipped_up brewed_up
+ bath holding held containing weighed weigh_out weighed_out net yield total came filled poured hot set setting window rack trays tray nicely smooth gave gives yield yielded first stirred melted
! sold given bought took back binned dropped broke kept opened gift present sell weighs ordered wanted away spilled spilt reordered sent gone went to_the threw

= poured {count} of {g} of {R}[ with lots {lots}][ on {date}]
? poured made did done managed filled cast potted_up ladled decanted bottled jarred tinned we_had i_had in_the_end standing stand sits today's_pot yesterday's_pot out_of_the_pot of_the_pot ended_up got_out_of finished turned_out
&
! sold given bought took back binned dropped broke kept opened gift present ordered wanted away spilled spilt sent gone went_to threw cost costs price

= poured {count} of {g} of {R}[ with lots {lots}] on {date}
@ earlier
&
! make making makes everyone everybody meet meeting us workshop class course people compare compared like than show find see print heat scale what how cost costs price label labels need needs enough order ordered sold gave given bought took back binned kept opened

= poured {count} of {g} of {R}[ with lots {lots}] on {date}
? more another further extra additional also and then afterwards later
! scale what how cost costs price label labels need needs enough order ordered sold gave given bought took back binned kept opened make

= poured {count} of {g} of {R}[ with lots {lots}][ on {date}]
@ pour
? and also plus then another more afterwards
! scale what how for will cost costs label labels instead sold gave binned make enough

= poured {count} of {g} of {R}[ with lots {lots}][ on {date}]
? jug jugs pan pans double_boiler water_bath kettle melt_pot
? got get filled_up went_into gave yielded out_of
+ bath weighed weighed_out net yield total came hot full
! sold given bought took back binned dropped broke kept opened gift present sell weighs

= {count} of {batch} came back[ from {whom}][ on {date}]
? back returned return returns came_home come_home brought_home
+ me unsold came come went been sent gave given brought handed are is were lids lid stuck dented sold left_over leftover took taken home again unopened unused
! poured put_back held_back kept_back keep_back keeping_back paid_back hold_back backs

= keep {count} of {batch}[ on {date}]
? kept keep keeps keeping stay stays stayed staying retention reference retained reserve_sample archive remains_here remain_here set_aside put_aside put_by sample samples
+ back drawer cupboard shelf labelled retained control proof future safe archive dark put goes went in_the_book with_us
! sold bought poured shop stay_fresh gave given sent handed took binned broke

= threw away {count} of {batch}[ on {date}]
? bin binned threw thrown dropped broke broken smashed spoiled spoilt ruined wasted waste rubbish melted cracked leaked squashed crushed lost stolen vanished mouldy rancid burnt scorched burst dented unsaleable unsellable destroyed shattered chucked tossed skip compost discarded writ* written_off eaten ate chewed fell floor damaged trash
+ away went gone got ended lid lids car sun heat dashboard mould off bits pieces dog cat child toddler hot radiator had ended_up landed stone tiles flood frost
! poured back sold gave given bought found fixed repaired kept lids_replaced

= used {count} of {batch}[ on {date}]
? used tester testers opened finished ourselves myself demonstration demo tried test tested
+ up now open as_a as_our went on_the_table
! poured back sold gave given bought binned threw kept

= sold {count} of {batch}[ to {whom}][ on {date}]
? sold bought purchased sale sales paid takings proceeds buyer buyers buying
+ online cash gone went out today counter door stall market fair price
! poured back gave given unsold binned threw dropped kept stays

= gave {count} of {batch}[ to {whom}][ on {date}]
? gave given gift gifts gifted present presents presented donated donation took taken got received went gone handed sent posted mailed delivered left shipped swapped traded passed supplied provided dropped_off brought lent loaned dispatched travelled moved accepted collected picked_up went_home_with new_home found_a_home owner owners
+ now proud happy free has have had out home make makes made parcel post thank thanks thank-you prize raffle birthday as_a off over charity way found their
! poured back sold bought binned threw kept stays bin broken broke dropped_on left_over used in_stock on_the_shelf are_left is_left were_left left_of floor lost stolen mouldy rancid melted

= gave {count} of {batch} to {whom}[ on {date}]
+ now have has
! poured back sold bought binned threw kept stays bin broken broke dropped used in_stock on_the_shelf are_left is_left were_left left_of lost stolen mouldy rancid melted return* for_sale price cost per each belong* next go goes give self please pack

= {batch} looks fine[ on {date}]
? looked checked inspected smelled smelt sniffed tested tried felt examined looks smells feels quality_look quality_check look check
? fine good perfect lovely great nice well ok okay faultless flawless as_it_should smooth right
+ no grain graininess mould done everything check still week days later after set firm scent colour still glossy even had at touch quality
! sold gave given poured back bought grainy rancid soft off mouldy sweating bloom date label
`;
