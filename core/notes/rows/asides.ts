import { LAMENTED, NOBODY, SLOW } from "./laments.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/** What people add for no reason: it says nothing of the fact. */
export type AsideEffect = "aside";

const LOOKS =
  "look|looked|looked_at|checked_out|saw|viewed|inspected|look_at|see|check|check_out|view|inspect|go_see|go_look|take_a_look|have_a_look|scout|scope_out|eyeball|meet_about";
/** That what was only seen was not bought. */
const LEFT_IT =
  "didnt|did_not|passed|pass|walked|walked_away|left_it|left|not_for_me|not_for_us|not_worth|wasnt_worth|wasnt_for|came_home_empty_handed|came_home_with_nothing|came_back_with_nothing|came_back_empty_handed|went_home_empty_handed|no_dice|no_go|no_luck|no_deal";
const BECAUSE = ",|-|and|but|since|because|bc|cuz|cause|as*";
const ROWS = rowsOf<AsideEffect>({
  "aside: on ruths advice i lowered the desk by 20":
    "[on|at|upon|following|against|per|taking|by <art>? <any> <any>? advice|suggestion|recommendation|urging|insistence|request|instructions|orders|recommendations|suggestions]",
  "aside: chairs sold, 75 for all of em": "<sell>|<list> … $ [for all|both of em|them|those|it]",
  // How a time or a cost is shared: evenly, as it is anyway.
  "aside: 2 hrs split between the desk and the lamp":
    "<time>|$ [split|divided|shared|spread evenly|equally? between|across|over|among|on] <art>? <piece>",
  "aside: drove to mill creek and back for the armoire, 61 miles":
    "drove|went|ran|drive|rode|trip|run … [to <word> <word>? <word>? and back]",
  "aside: lowered the desk to 125 as i have not had one message about it all week": `<reprice>|<~reprice>|<list>|now|down|down_to … $ <piece>? as_of|from|today|now* off|from|on? <art>? <piece>? [,|-|.|;|and|still|seeing* since|because|as|bc|cause|cuz|that|after? i|we|it|its|there|nobody|no_one|not|no|zero|hardly|barely|without|<span>|a|two|three|weeks|days ${SLOW} ${SLOW} ${SLOW} ${SLOW}] ;`,
  "aside: took 20 off the hutch no bites": `$ off <art>? <piece> [and|as|still? no|zero|not|hardly|barely|nobody|no_one ${SLOW} ${SLOW} ${SLOW}] ;`,
  "aside: paid 1000 lump sum to the loan": "[lump sum|sums|payment?]",
  "aside: mailed 150 to the loan company":
    "loan [company|people|folks|servicer|office|lender|place|guy|guys|site|website|app|portal|account|page|login]",
  "aside: sold desk 140 friday night": "<day> [night|evening|morning|afternoon|noon]",
  "aside: sold desk 90 it was so heavy":
    "[it|they|that|this|its|he|she was|were|is|are|look|looks|looked|smells|smelled|feels|felt|came_out|turned_out|weighs|weighed so|too|very|really|super|pretty|all|kinda|a_bit? <opinion>|<trait>|<plain>]",
  "aside: sold desk 140 still in good shape": "[still|all? in <art>? <opinion>|<plain> shape|condition]",
  "aside: to the dump and back 9 miles":
    "[to|from|over_to? the|my? dump|<place>|<supply>|<new>|<trait>|<plain> and back] <miles>",
  "aside: ran the desk over to the buyer 17 miles":
    "^ !!$ … [to|over_to|back_to|out_to|over|out|back* <art>? <opinion>|<trait>* <person>] ,? … <miles>",
  "aside: 17 miles to deliver the desk to the buyer":
    "^ !!$ <miles> … [to|over_to|back_to|out_to|over|out|back* <art>? <opinion>|<trait>* <person>] ;",
  "aside: hutch price is 205 starting today":
    "$ [starting|effective|beginning|as_of today|now|tonight|this_morning|immediately] ;",
  "aside: 46 miles today all business":
    "<miles> today|yesterday|total|driven|<day>* ,|-? [all|just|strictly|only|purely? for? business|work|biz|furniture|flipping|the_shop|the_business|shop_stuff] ;",
  "aside: loan balance 8812.07 per the website":
    "loan|balance|statement … [per|according_to <art>? website|site|app|statement|servicer|lender|bank|portal|letter|email|online]",
  "aside: bought desk 90 worth every penny":
    "[worth it|every_penny|the_wait|the_drive|the_trouble|the_money]",
  "aside: raised the hutch to 250 cuz people keep asking":
    "[because|bc|cuz|cause|coz|since|as|, people|folks|everyone|everybody|everyones|everybodys|so_many|too_many|so|too|lots|a_bunch|bunch|they|theyre|of|many|buyers|its|it|is|been|getting keep|kept|are|is|been|have|getting|a|lot|lots|of|so|much|many|people|folks* asking|messaging|texting|calling|asked|messaged|texted|called|interest|interested|attention|messages|offers|looks|views about|for|after|on|me? it|her|this|that|them?] ;",
  "aside: refunded 25 on desk bc the leg wobbles":
    "[because|bc|cuz|cause|coz|since|so_that|due_to|thanks_to|given_that|seeing_as|considering >] ;",
  "aside: 45 min on the desk, never ends":
    ", [it|this|that|the|my|list|work|job|just* never|wont|doesnt ever? end|ends|stop|stops|finish|finishes] ;",
  "aside: table now 85, need it out of the garage":
    ", [i|we|really|just* need|needs|want|wants it|this|them|that out|gone|outta >] ;",
  "aside: finished the chest and it might be the prettiest thing i've done":
    "[,|and|but|. honestly|really|truly|i_think* it|this|that|she|he|they might|may|could just|well? be|look the|my|one_of|our|a <any> >] ;",
  "aside: put 75 from the chest on my loan":
    "$ [from|of|off|out_of <art>? <piece> sale|money|profit|cash|flip?] went|all|straight|right* to|toward|towards|on|onto|into|at|against <art>? <any>? loan|<loan>|debt",
  "aside: sent 120 to the loan out of the dresser money": `loan [from|of|off|out_of|with|using <art>|my|our? <piece> sale|money|profit|profits|cash|flip|proceeds] ;`,
  "aside: sent the loan 120 from the dresser":
    "loan $ [from|out_of|off <art>|my|our? <piece> sale|money|profit|cash|flip?] ;",
  "aside: used the dresser sale to pay 60 on the loan":
    "^ i|we|and|ok|so* [used|took|using <art>|my|our? <piece> sale|money|profit|cash to] pay|put|send … loan",
  "aside: dresser money went to the loan, 150":
    "^ so|ok|and|the|my|our* [<piece> money|cash|profit|profits|sale] all|straight|right* went|goes|going to|toward|on … loan",
  "aside: out of the dresser money i sent 120 to the loan":
    "^ so|and|ok|then* [from|out_of|with|using <art>|my|our? <piece> sale|money|profit|profits|cash|flip|proceeds ,?] … $ … loan",
  "aside: paid 120 to the loan with what i got for the dresser":
    "loan [with|from|out_of|using what i|we got|made|earned|cleared|took_in for|from|on|off <art>? <piece> sale?] ;",
  // Any piece that was driven to and only seen is none of ours.
  "aside: drove 34 miles to look at a dresser": `<miles> … [to|and ${LOOKS} at|on|over? a|an|another|some|this <trait>|<opinion>|<new>|<plain>* <piece>]`,
  "aside: went to look at a dresser, 34 miles": `^ !!$ … [to|and ${LOOKS} at|on|over? a|an|another|some|this <trait>|<opinion>|<new>|<plain>* <piece>] … ,|-|.? … <miles>`,
  "aside: 34 miles to look at a dresser, didn't buy it": `!!$ <miles> … [,|.|-|;|but|and|so|then|only_to* i|we|just|ended_up* ${LEFT_IT} up|on|buy|it|that|them|one|for|with|without|there* then|though|tho|in_the_end|after_all|this_time?] ;`,
  "aside: 34 miles to look at a dresser, too rough":
    "!!$ <miles> … look|see|check|view|check_out|look_at|inspect … [,|.|-|;|but|and* it|they* was|is|were|turned_out? way|just|all|a_bit|kinda* too <opinion>|<trait>|<plain>|<hurt>|rough|beat_up|far_gone|much|pricey|dear|high|big|small for_me|for_us?] ;",
  "aside: refunded 25 on the desk as the leg wobbles": "!well <any> [as !well >] ;",
  "aside: listed the desk 120 with much nicer photos":
    "[with <art>? much|many|way|some|a_few|lots_of? better|nicer|new|good|great|fresh|more photos|photo|pics|pictures|light|lighting]",
  "aside: raised the hutch to 165 she thinks its worth more":
    "[she|he|they|mom|dad|wife|buyer thinks|think|says|said|figures|figured|swears >] ;",
  "aside: bought a vanity for 35, mirror's cracked":
    ", [<art>? <part>|<piece>|<supply>|<new> s|is|are|was|were|has|have|all|both|look|looks? intact|sound|solid|original|working|complete|cracked|shot|broken|torn|ripped|stained|chipped|scratched|warped|faded|worn|trashed] ; !!it|them",
  "aside: lowered sideboard by 15 to see if it moves": "[to see if|whether|how|what >] ;",
  "aside: gave back 20 on desk, drawer sticks":
    "[<art>? <part>|drawers is|was|are|were|kept|keeps|got|gets|has|have|just|really|completely|totally|all|too* <hurt> up|out|through|off|badly|bad* on_me|on_us?] !<verb>",
  "aside: bought mirror with frame 22":
    "<piece> [with|w|has|have|had|missing <art>? <new>|<trait>|<plain>|<opinion>* <part>|<supply>]",
  "aside: bought desk 20, missing a drawer":
    "[missing|lacking|without <art>? <new>|<trait>|<plain>|<opinion>* <part>|<supply>]",
  "aside: donated desk to the womens shelter":
    "!keep|keeping|kept <retire> … [to|at|for <art>? <new>|<plain>|<trait>|<opinion> <new>|<plain>|<person>|<kin>? down_the_block|down_the_street|down_the_road|up_the_street|next_door|across_the_street|around_the_corner|with_kids|in_need?] ;",
  "aside: 15 min fixing drawer on dresser":
    "<labor> … [<art>? drawer|drawers|door|doors|leg|legs|top|base|frame|arm|arms|seat|shelf|shelves|back|sides|joint|joints|corner|hinge|crack|hole|holes|chip|chips on|of|in|for|off?] <art>? <piece>",
  "aside: tolls 5 round trip": "<supply> $ [round_trip|roundtrip|both_ways|there_and_back|all_in]",
  "aside: bought dresser 40 to flip":
    "<buy> … [to flip|reupholster|repaint|rehab|recane|strip|sand|clean_up|fix|sell|list|resell|restore|refinish|redo|resto|upcycle|fix_up|practice|practice_on|parts it|them|on?]",
  "aside: bought dresser 40 for parts": "<buy> … [for parts|resale|flipping|resell]",
  "aside: had to give her 10 back for the loose shelf":
    "back|refunded … [for|over|due_to|because_of|on_account_of <art>? <hurt> <part>|<inpiece>|<supply>|drawers] ;",
  "aside: refunded 15 for the old shade":
    "<refund>|refunded|back … $ … [for|over|due_to|because_of|bc_of|on_account_of <art>? <opinion>|<trait>|<plain>|<new>* <part>|scratch|scratches|crack|dent|chip|damage|stain|wobble|smell|finish|drawer|leg|shade] ;",
  "aside: gave dana 20 back for the sticky drawer":
    "$ refunded|back … [for|over|due_to|because_of|bc_of <art>? <opinion>|<trait>|<plain>|<new>* <part>|scratch|scratches|crack|dent|chip|damage|stain|wobble|smell|finish|drawer|leg|shade] ;",
  "aside: partial refund 30 desk, wobbly leg":
    "<refund> … [,|-|.|( <art>? <opinion>|<trait>|<plain>|<new>* <part>|scratch|scratches|crack|dent|chip|damage|stain|wobble|smell|drawer|leg|shade )?] ;",
  "aside: took 20 off that chest, hadnt had a nibble":
    "<piece> … [,|-|.|cause|because|since|as* it|ive|ive_had|id? aint|hadnt|havent|hasnt|not|never|didnt had|have|get|got|a|any|one|so_much_as|even* nibble|nibbles|bite|bites|sniff|bid|peep|taker|takers|offer|look|call|message yet|on_it|at_all|for_weeks*] ;",
  "aside: plant stand gone to the charity shop, couldnt shift it":
    "<piece> … [,|-|.|cause|because|since|as|i|we|just* couldnt|cant|cannot shift|sell|move|flog|budge|part_with|get_shot_of|fix|save|give_away it|them|that*] ;",
  "aside: gave away the table no takers":
    "<retire>|<~reprice>|<~list> … [,|-? still? no|zero takers|interest|bites|nibbles|buyers|offers|luck|one_wanted_it yet?]",
  "aside: lunch 14 while picking":
    "$ [while|when|after|before i|we|was|were|out* picking|shopping|thrifting|hunting|sourcing|junking|driving|hauling|working|loading|waiting|moving|out|there|at_it]",
  "aside: bought the cutest vanity ever for 40": "<piece> [ever|of_all_time|yet] for|$|,|;",
  "aside: sold the bench 55, took it in quarters":
    "<sell> … [,|-|and* he|she|they|i|we* took|paid|paid_me|got? it|me|all|them* in quarters|ones|fives|tens|twenties|coins|change|pennies|singles|small_bills|exact_change]",
  "aside: let the chairs go for 56, to a mother with twins, and she sent it by transfer":
    "<~sell>|let … $ … [,|-|.|;|and* he|she|they|buyer|money|the_money|payment|it|all_of_it|everything sent|wired|transferred|mailed|came|came_in|came_through|arrived|landed|did|made it|them|that|me|us|the|a|money|payment|all|over|right_away|already* in|by|via|with|as?] <method>",
  "aside: sold desk 90 transfer, already deposited it":
    "<sell> … [,|-|and* already|just|finally? deposited it|that|them|<art>? check|money|cash|all? at|in|into|to? <art>? bank|account|atm|checking?]",
  "aside: buyer found a crack so i sent 25 back":
    "^ [<art>? buyer|he|she|they|guy|lady|<person>|<new> found|noticed|saw|spotted <art>? <opinion>|<trait>|<plain>* crack|scratch|scratches|dent|chip|stain|smell|wobble|<part> ,|-|and|.* so?] i|we? sent|gave|refunded|returned",
  "aside: sold the trunk 70, met her at the gas station":
    "<sell> … [,|-|.|!* met|meeting|met_up_with him|her|them|<art>? buyer|guy|lady|up|with* at|in|by|outside|behind|near >] ;",
  "aside: sold stool 30 kept change": "$ [kept <art>? change|tip]",
  "aside: desk to the neighbor, 22 cash, done": "$ <method> [,|.|-|;? done|all_done|done_deal] ;",
  "aside: free stool off the curb. in the trunk now":
    "[in|into the|my|our|dads car|<piece>|van|truck|back_seat|garage|shed now|already|rn] ;",
  "aside: scrapped the chair, no saving it":
    "[no|theres_no saving|fixing|rescuing|salvaging|mending it|them|this|that|him|her]",
  "aside: sold stools 100 split cash and check":
    "$ [,|-? split|half_and_half between|in|into|as? <method> and|&|,? <method>]",
  "aside: bought paint from bob 12": "<supply> … [from|off|off_of <art>? <new>|<person>|<kin>]",
  "aside: sanded dresser 2h with bob": "<labor> … <time> [with|w <art>? <new>|<person>|<kin>]",
  "aside: sold desk 140 half cash half check":
    "[half|part|some|partly|mostly in? <method> and|,|&? half|part|some|rest|the_rest in|by? <method>]",
  "aside: listed footstool 15 w/ free delivery":
    "<list>|<sell> … [with|w|incl|including|plus free|local delivery|pickup]",
  "aside: picked up a hutch in millbrook, 40":
    "<~buy>|<sell>|<drive> … <piece> for? me|us? [out|over|down|up|back|way* in <new> <new>?] ,|$|;|for",
  "aside: sold footstool 15, threw in delivery":
    "<list>|<sell> … [,|and|i|we|even|also* threw_in|tossed_in|throwing_in free|the* delivery|pickup|shipping|dropoff|drop_off]",
  "aside: threw in delivery, 10 miles round trip":
    "^ [and|also|plus|i|we* threw_in|tossed_in|included|did|made|offered|gave_them|gave_her|gave_him free|the|a|an|local|dump|pickup* delivery|dropoff|drop_off|run|trip|pickup run|trip? ,|-|:|and|so|it|was|its|thats|for_free*] <miles>|drove",
  "aside: sandpaper 21 for the shop, not for one piece":
    "<supply> … [,|-|;|.|(* not for|on|toward|towards <art>|any|just|only|one|1|single|particular|specific|certain* piece|project|item|thing|job|build|flip )?]",
  "aside: wood screws 5 and brads 4 general stock":
    "<supply> … $ [,|-|;|.|(* for|all|just* general|shop|everyday stock|use|stuff|inventory|supply )?] ;",
  "aside: knobs 15 for the hutch like carol asked":
    "<supply> … $ … [,|-|;|.|(* like|as|the_way|just_like|because|since|cause|cuz he|she|they|buyer|<art>|<person>|<new>|<kin>* asked|asked_for|wanted|wants|requested|likes for? it|them|that|me_to|to? )?] ;",
  "aside: ratchet straps 27 they were on sale":
    "<supply> … [,|-|;|.|(* they|it|these|those|that|which|all|both|everything was|were|is|are on_sale|half_off|half_price|on_clearance|on_special|marked_down|discounted|cheap )?]",
  "aside: rented a trailer 29 to get it all home":
    "<supply> … [to get|bring|haul|move|carry|fetch|take|drag|lug|cart|transport it_all|them_all|everything|all_of_it|all_of_them|the_lot|the_haul|all_that|all_this|stuff|the_stuff|our_stuff home|back|here|over|there|in|out|today|with*]",
  "aside: rented a sander for the day 29":
    "rented|rental|hired|leased|rent|renting … [for <art>|one|half|whole|full* day|weekend|week|afternoon|morning|evening|night|few_hours|couple_hours]",
  "aside: stripper for the hutch and desk 24 split it between them":
    "<supply> … $ [,|-|.|(* split|shared|divide|divided it|that? between|across|over|among|evenly <art>|them|both|two|all|the_two*] ;",
  "aside: dump fee 12, old mattress":
    "^ <art>? dump_fee|dump_fees|dump_run|landfill_fee|landfill|disposal_fee|tipping_fee|dump|junk_fee $ [,|-|:|for|(* a|an|some|another|somebodys|their|<junk>* <junk>|<piece> and|&|,? some|old|other|the* junk|trash|stuff|crap? )?] ;",
  "aside: sold mirror 45 and plant stand 22 cash both": "<~sell> … $ … $ <method> [<ofthem>] ;",
  "aside: tip 5 from marge": "<stream> $? <word>? <word>? [from <art>? <new>|<person>|<kin>|<supply>]",
  "aside: hardware came to 27": "<supply> … [came_to|comes_to|totaled|totalled|ran_to|rang_up_at] $",
  "aside: knobs 17.99 with shipping":
    "<supply> … $ [with|w|incl|including|after|inc the? shipping|postage|tax|taxes|delivery|ship|sales_tax|handling|and*] ;",
  "aside: belt sander 45 used": "<supply> $ [used|secondhand|second_hand|refurbished]",
  "aside: plywood sheet 38": "<supply> [<container>] $",
  "aside: headboard cracked in half, tossed it":
    "[cracked|snapped|split|broken|torn|ripped|bent|busted in half|two|pieces]",
  "aside: nobodys biting so i dropped the hutch to 180": `[${BECAUSE} ${NOBODY} is|was|has|have|had|seems|ever|even|really|actually|just* ${LAMENTED} about|at|on|for|to|in|up* <art>? it|them|this|that|these|me|us? anymore|any_more|lately|yet|at_all|so_far|today|this_week? ,? so?] ; !!<sell>`,
  "aside: nobody wants the vanity, lowered it to 110": `[${BECAUSE} ${NOBODY} is|was|has|have|had|seems|ever|even|really|actually|just* ${LAMENTED} about|at|on|for|to|in|up*] <art>? <trait>* <piece> anymore|lately|yet|at_all? ,|.|so|and|! !!<sell>`,
  "aside: hit the estate sale and scored 2 lamps for 14":
    "^ [i|we? hit|hit_up|checked_out|browsed|raided|cruised|ran_to|ran_by|swung_by|popped_into|popped_by|dashed_to|stopped_at|stopped_by|stopped_in_at] <art>? <place>",
  "aside: got tips 20 on the delivery":
    "<stream> … [on|for|from|off|after <art>? <day>|<piece>|<new>|<trait>|<weekday>* delivery|deliveries|dropoff|drop_off|pickup|haul|trip|move|run|setup] ;",
  "aside: bought dresser free, somebody left it on the curb":
    "[,|-|and|cause|because? <person>|somebody|someone|they|people|neighbor|owner|seller left|put|set|dumped|tossed|threw|abandoned|stuck it|them|this|that out? on|by|at|in|near <art>? curb|side_of_the_road|road|street|sidewalk|alley|dumpster|trash|driveway|roadside] ;",
  "aside: no bites on the mirror, dropped to 25":
    "[still? no|zero|any|few|not_many|barely_any bites|takers|interest|nibbles|offers|messages|inquiries|calls|luck|hits|views|buyers on|in|for|about|with] <art>? <piece> !!<piece>|<sell>|<buy>|<~buy>",
  "aside: 2h or so on the desk":
    "<time> [ish|or_so|or_thereabouts|give_or_take|roughly|approx|or_maybe_more|more_or_less]",
  "aside: odometer says 18 miles": "[odometer|trip_meter|gps|dash|app says|said|reads|shows|read]",
  "aside: gave her 40 back on the hutch, too big for her dining room":
    "<retire>|<refund>|<~fallthrough>|back|refunded|sold … [its|it|was|is|just|way* too|much_too|way_too big|small|tall|wide|long|short|heavy|large|deep|tight|bulky for|in|through|up|into|to* his|her|their|my|the|a* <any>? room|space|place|house|apartment|car|truck|van|stairs|door|doorway|hall|hallway|wall|kitchen|bedroom|elevator|dining_room|living_room|him|her|them]",
  "aside: no show on the desk, keeping the deposit like i told her i would":
    "[just|exactly? like|as|same_as i|we told|said|warned|promised|agreed|mentioned him|her|them|you|we|i|it* would|id|wed|to|was?]",
  "aside: buyer of the desk backed out, kept 20 for the wait":
    "[for my|our|the|all* trouble|time|troubles|bother|hassle|wasted_time|wait|wasting_my_time]",
  "aside: my son took a 20 deposit on the desk when i was out":
    "<ours> … <piece> [when|as|since|because|bc|cause i|we was|were|am <any> <any>?] ;",
  "aside: sanded the desk 2h while listening to a show":
    "$|deposit|down|it|<piece>|<time>|<miles>|<place>|<supply>|<day>|<method>|<buyer>|<labor> [while|whilst|where|even_though|although|before|after !all|fee|fees|deposit|deposits|<day> !!i_got|we_got >] ;",
  "aside: gave the card table to the school library":
    "gave|gifted|donated|donating|gifting <art>? <piece> away|off? to <art>? [<new>|<plain>|<place>|<theirs>|<lives>|school|local|public|town|city|county|homeless|animal|fire|police|community|youth|senior* library|shelter|station|department|center|school|church|sale|drive|pantry|ministry|mission|camp|home|hospital|club|troop|theater|museum|daycare|preschool|classroom|class] ;",
});

export const asides = tableOf(ROWS);
