/** What is told of lots on the shelf; bot/told/uses.ts says how this is written. */
export const stock = `
= bought {g} {i} lot {new}[, best before {best}][, {paid}][ from {whom}][ on {date}]
? bought purchased buy purchase received arrived came come here got delivered delivery picked_up collected fetched brought sent given gave dropped_off new has_come stocked unpacked parcel in_the_post restocked took_home had landed turned_up harvested added joins joined moved_in found paid costs cost got_hold
+ price cost paid for_it good is has says label post market fair supplier shop on_the_label best stands marked dated keeps
! used poured made binned threw spilled spilt weighs weighed left opened strained infused steeping remain remains needs needed lost sold left_over really gave_away given_away sent_back gave_back

= bought {g} {i}[, best before {best}][, {paid}][ from {whom}][ on {date}]
? bought purchased received arrived delivered delivery dropped_off picked_up fetched stocked_up restocked in_the_post
+ price cost paid for_it good is has says label post market fair supplier shop on_the_label best stands marked dated keeps
! used poured made binned threw spilled spilt weighs weighed left opened strained infused steeping remain remains needs needed lost sold left_over out_of really

= opened {lot}[ on {date}]
? opened open unsealed broached started begun broke_into broken_into cut_into tapped uncorked unscrewed unwrapped breached seal
+ now since lid cap broke broken off
! used weighs left best keep

= threw away {g} of {lot}[ on {date}]
= threw away {g} {i}[ on {date}]
? bin binned threw thrown melted_in melted_away ran_away dropped spilled spilt spoiled spoilt ruined wasted rubbish leaked lost knocked_over went_over tipped tipped_over rancid mouldy compost sink floor discarded chucked tossed drain waste poured_away went_off gone_off burnt burned
+ sun heat ran away went gone over down got off dog cat lid poured smelled smells mould hot plate
! used bought left remain remains remaining weighs still there_is made

= threw away all of {lot}[ on {date}]
? bin binned threw thrown rubbish compost discarded chucked tossed drain poured_away
+ away went gone off whole rancid mouldy smelled smells
! bought left weighs opened best fine half some part most

= used {g} of {lot}[ on {date}]
= used {g} {i}[ on {date}]
? used took taken went_into went_in gone_into took_out went_for needed went_on
+ out test tests trial trials candle candles soap lesson class demonstration for_a
! bought left remain remains remaining weighs still poured made binned only arrived delivered came back

= {lot} is used up
? empty used_up finished all_gone is_gone run_out ran_out emptied ran_dry run_dry nothing_left nothing_is_left scraped_out last_drop last_of
+ now gone
! nearly almost soon half bought opened

= {lot} is really {g}[ on {date}]
? weigh* scale scales left remain* there_is there_are contains holds only really count counted still down_to stocktake inventory in_it shows says reads has_in
+ rest remainder now on_it tells gives gave me bottom is found half year yearly monthly
! used bought threw binned spilled less more fewer short missing poured lost opened arrived took

= {lot} is best before {best}
+ best_before date label says keeps good expiry expires end ends lasts on printed reads stamped stands bottle
! opened sold bought
`;
