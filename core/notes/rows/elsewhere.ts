import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

/** Rooms and parts of a house, and what else is painted or cleaned at home and never sold. */
export const AT_HOME =
  "house|home|kitchen|bathroom|bedroom|bedrooms|living_room|dining_room|laundry_room|playroom|nursery|porch|deck|fence|floor|floors|ceiling|ceilings|walls|wall|hallway|hall|stairwell|basement|attic|driveway|yard|lawn|gutters|roof|siding|patio|garage_door|front_door|apartment|dorm|rv|boat|car|minivan|pool|treehouse|playhouse|bathrooms|baseboards|trim|her_room|his_room|their_room|kids_room|my_room|our_room|flat|conservatory|loo|lounge|garden|den|backyard|family_room|guest_room|spare_room|sunroom";
/** Where something is painted or put at home, and nothing of the shop's is. */
const INDOORS = AT_HOME.split("|")
  .filter((word) => !/^(?:rv|boat|car|minivan|trim)$/.test(word))
  .join("|");
const ROOM = `${AT_HOME}|office|room|closet|place`;

/** Where nobody drives for furniture. */
export const PRIVATE_PLACE =
  "church|school|practice|soccer|football|baseball|softball|ballet|dance|karate|gymnastics|swimming|choir|daycare|preschool|camp|class|college|university|work|doctor|doctors|dentist|dentists|orthodontist|hospital|clinic|vet|vets|gym|wedding|funeral|baptism|graduation|reunion|party|birthday|airport|beach|zoo|park|movies|cinema|game|concert|bank|dmv|therapist|salon|hairdresser|barber|restaurant|dinner|lunch|brunch|breakfast|supper|vacation|campground|lake|library|mosque|temple|synagogue|mass|pharmacy|chemist";

const FAMILY =
  "<kin>|friend|friends|family|grandkids|boys|girls|baby|babies|wife_and_kids|kids_and_wife|nana";
const OTHERS = "his|her|their|his_own|her_own|their_own";
const BOUGHT =
  "bought|purchased|got|picked_up|found|grabbed|scored|snagged|ordered|went_with|ended_up_with|ended_up_buying|ended_up_getting|chose";
/** Somewhere that is not ours. */
const NOT_HERE =
  "across_the_street|across_the_road|across_the_way|across_the_aisle|across_the_hall|across_town|next_door|down_the_road|down_the_street|up_the_road|up_the_street|round_the_corner|around_the_corner|down_the_block|elsewhere|somewhere_else|someplace_else|in_another_town|at_another_shop|at_another_store|from_another_shop|from_another_store|new_from_the_store";
const ANOTHER = "another|other|different|rival|competing|else|second|bigger|cheaper|real";
const SELLER =
  "flipper|dealer|seller|vendor|reseller|shop|store|booth|place|site|guy|lady|person|man|woman|flippers|sellers|dealers|stall|mall|someone|somebody|friend";
const AS_A_RULE =
  "usually|normally|generally|typically|historically|traditionally|routinely|in_the_past|back_then|always|often|sometimes|in_the_old_days|back_in_the_day|on_average|most_times";
const ANOTHER_TIME =
  "back_then|back_in_the_day|in_the_old_days|in_the_past|years_ago|years_back|ages_ago|once_before|last_time|the_last_time|the_other_time|another_time|the_time_before|the_first_time|the_time_before_that|before_that|a_while_ago_once|before_i_started|before_all_this|in_my_twenties|in_college|as_a_kid";
const BRAND_NEW =
  "new|brand_new|in_stores|in_the_store|in_the_stores|in_store|at_retail|retail|when_new|back_then|back_in_the_day|originally|full_price_new|restored|refinished|all_day_long|elsewhere|these_days";
const SHOPPING =
  "sale|sales|auction|market|rummage|fair|bazaar|shop|store|pickup|delivery|buyer|customer|paint|lumber|supplies";
const GOES =
  "drove|drive|driving|took|taking|ran|running|went|gone|brought|bringing|drop|dropped|dropped_off|dropping";
/** How far it was, told behind it. */
const FAR = "today|tonight|again|practice|game? ,|-|.? <miles>?";

/** Pieces that others sell or buy of others, what is done at home, and whose drive it was. */
export const ELSEWHERE = rowsOf<TurnEffect>({
  // Sold, and not ours.
  "other: a dresser sold for 180 in town":
    "^ a|an|another|some <trait>|<opinion>* <piece> just|also|recently* sold|went|got|fetched|brought … [in|at|on|down|across|over|near|up|around|to|online|elsewhere|nearby|downtown !<method> <art>? <word>]",
  "other: another dresser sold for 180 on the street":
    "^ <onemore> just|also|recently* sold|went|got|fetched|brought … [in|at|on|down|across|over|near|up|around|to|online|elsewhere|nearby|downtown !<method> <art>? <word>]",
  "other: another dresser sold for 180 on the site":
    "^ <onemore> [just|also|recently* sold|went|got] for|at? $ <place>|on_the_site|on_the_app|on_the_page|on_there ;",
  // What a former piece cost and brought.
  "other: bench bought 15 sold 40 last time": `[bought|paid|cost|got for|at|it|me|us? $ … <~sell>|sold|went|brought|fetched … ${ANOTHER_TIME}]`,
  "other: last year i bought one like this for 25, sold it 160": `[${ANOTHER_TIME}|last_year|last_summer|last_winter|last_spring|last_fall i|we|had|a|one|<piece>|,|-|:* bought|paid|got … <~sell>|sold|went|brought|fetched]`,
  "other: had a lamp like that once, bought 5 sold 30":
    "[had|bought|sold|flipped|got <art>|one? <piece>? like|similar_to this|that|it|these|those|them|mine|ours … <~sell>|sold|went|brought|fetched]",
  "doubt: last desk i bought for 20 and sold for 95":
    "^ <art>? [<previous> i|we? bought|got|paid|cost|was|for|me|us* $ … <~sell>|sold|went|brought|fetched]",
  "other: stool before that was 3 and went for 18":
    "^ <art>? <piece>|one [before|prior_to this|that|it|this_one|that_one <any>? $ … <~sell>|went|sold|brought|fetched]",
  "other: the dresser before this one sold for 180":
    "^ <art>? <piece>|one [before|prior_to this|that|it|this_one|that_one|these|those|<piece>* one?] <~sell>|went|got|brought|fetched|was|took|needed|cost|ran",
  "other: usually sold the dresser for 90": `[${AS_A_RULE} i|we|ive|have|just|only|<art>|<piece>*] sold|sell|sells|bought|paid|listed|brought|fetched|go|goes|went|made`,
  "other: sold a bench for 40 last time": `<~sell>|<~buy>|<supply> … $|<piece>|<supply> [${ANOTHER_TIME}]`,
  "other: it took 2h last time i did a desk": `<time> [${ANOTHER_TIME}]`,
  "other: last time a bench went for 95": `^ [${ANOTHER_TIME}|that_time|one_time ,? i|we|<art>|it|<piece>|<supply>*] <verb>|<light>|went|was|brought|fetched`,
  "other: in my last shop i sold a desk 120": "^ [in|at my|our last|old|former|previous <any>] ,? i|we",
  "doubt: spent 20 on hinges for my last desk": "<supply>|$|<time> … [for|on|into|in my|our <previous>]",
  "doubt: spent 20 on hinges for the last desk": "<supply>|$|<time> … [for|on|into|in the <previous>] ;",
  "doubt: sanding my last desk took 2h": "^ <labor>|<~work> [my|our <previous>] … <time>",
  "doubt: on my last desk i spent 40 on hardware": "^ [for|on|in my|our|the <previous>] ,? i|we|it",
  "other: bought a bench before for 15": "<~buy> … <piece> [before|previously|once] for|at? $",
  "other: another flipper sold a dresser for 180": `^ [<art>? ${ANOTHER}|some ${SELLER} else?|near|in|down|across|on? <word>? <word>?] just|already|also|has|had* sold|sells|listed|flipped|has !me|us`,
  "other: someone else sold the dresser for 180":
    "^ [someone|somebody|anybody|anyone|people|they|folks else] just|already|also|has|had|have* sold|listed|flipped|bought|got !me|us",
  "doubt: the last dresser i sold went for 180":
    "<piece> [i|we|that_i|that_we|id|ive|which_i just|had|have* sold|flipped|did|listed last|before|earlier|first|previously?] sold|went|got|brought|fetched|was|made",
  "doubt: my last dresser sold for 180":
    "^ my|our [<previous>] just|finally? sold|went|got|brought|fetched|was",
  "other: the dresser i passed on sold for 180":
    "^ <art>? <piece> [that|which? i|we|id passed_on|passed_up|skipped|missed|missed_out_on|lost|turned_down|let_go_of|gave_up_on|walked_away_from|didnt_buy|didnt_get|almost|nearly|just_missed bought|got|grabbed? at|on|in|to? <art>? <place>?] just|finally|later* sold|went|got|brought|fetched",
  "other: dresser at the estate sale sold before i got there":
    "^ <art>? <piece> … [sold|gone|went|taken before|by_the_time i|we got|arrived|showed|came|could|made|reached there|up|it|in* ,?]",
  "other: the antique mall sold a dresser for 180":
    "^ [<art>? <place>|church|school|library|hospital|city <place>|<word>? <word>? <word>? <word>? just|already|also|has|had* sold|sells] a|an|another|some",
  "other: at the auction a dresser sold for 180":
    "^ [in|at|on|over|down|across|around <art>? <any> <word>? ,?] a|an|another|some <trait>|<opinion>* <piece> just|finally|also* sold|went|brought|fetched",
  "other: desk bought by someone else, 110":
    "[bought|purchased|taken|grabbed|snagged|claimed|sold by|to someone|somebody|anybody|people else|different]",
  "other: the dresser across the street sold for 180": `^ <art>? <piece> [${NOT_HERE}] just|finally|also* <~sell>|went|brought|fetched`,
  "other: another dresser in our street sold for 180":
    "^ <onemore> [in|at|on|near|down|from|over <art>|our|this? <any> <word>?] just|also* <~sell>|went|brought|fetched",
  "other: the winner paid 310 for a desk":
    "^ <art>? [highest|winning|top|other? winner|bidder|winning_bidder|top_bidder|high_bidder|other_bidder] paid|got|bought|won|took",
  "denial: desk at the store sold out, 99": "<piece> … [sold_out|was_sold_out|all_sold_out]",
  // Somebody else's deal.
  "other: my mom got 180 for her dresser": `<ours>|<kin>|<new>|<person>|he|she|they|<buyer> just|also|finally* got|received|made|pocketed|took_in|cleared|paid|spent|gave $ [for|on|from ${OTHERS} own? <trait>|<opinion>|<new>* <piece>]`,
  "other: ed bought his desk for 110": `<ours>|<kin>|<new>|<person>|he|she|they|<buyer> just|also|finally* bought|sold|purchased|listed|finished|started|sanded|painted|refinished|stripped|fixed|repaired|donated|gave|gave_away|gifted|kept|trashed|scrapped|tossed|threw_out [${OTHERS} own? <trait>|<opinion>|<new>* <piece>]`,
  "other: dad worked 2h on his armoire": `^ <ours>|<kin>|<new>|<person>|he|she|they|<buyer> … <time> on|with [${OTHERS} own? <trait>|<opinion>|<new>|<word>* <piece>|<word>]`,
  "other: ed bought the desk across the street 110": `^ <art>? <buyer>|<new>|<person>|he|she|they just|also|already|instead* ${BOUGHT} <art>? <trait>* <piece> $? [${NOT_HERE}]`,
  "other: ed bought a desk at the other shop 110": `^ <art>? <buyer>|<new>|<person>|he|she|they … ${BOUGHT} … <piece> … [from|off|off_of|at|with|through <art>? some? ${ANOTHER} <any>]`,
  "other: a lady bought a desk 110 from someone else": `^ <art>? <buyer>|<new>|<person>|he|she|they … ${BOUGHT} … <piece> … [from|off|off_of|at|with someone|somebody|anybody|people|everyone else|more_local|local|cheaper]`,
  "other: ed got a desk for 110 at the mall": `^ !<kin> <buyer>|<new>|<person>|he|she|they just|also|already|instead* ${BOUGHT} a|an|another|${ANOTHER} <trait>|<opinion>* <piece> for? $? [from|at|in|off <art>? <trait>|<opinion>? !me|us|my|our|here|full|asking|$ <word>]`,
  "doubt: a lady bought a desk 110": `^ !<kin> !<someone> <buyer>|<new>|<person> just|also|already* [${BOUGHT} a|an|another|some] <trait>|<opinion>* <piece>`,
  "other: bought a bench for a client, 60, she pays me back":
    "<buy> … [she|he|they|client|customer|buyer|friend|neighbor|<kin> ll|will|is|are|to|already|still* pays|pay|paying|paid|owes|reimburses|reimburse|reimbursed|reimbursing me|us back|for_it? back?]",
  "doubt: bought mom a chair 40":
    "^ i|we|just|so|ok* bought|got|grabbed|picked_up|ordered|treated [my|our|the? him|her|them|<kin>|guy|lady|movers|helper|seller|<person> to? a|an|some|another|lunch|dinner|breakfast|coffee]",
  "doubt: bought us a bed 300":
    "^ i|we|just|so|ok|finally* bought|ordered|got|grabbed|scored|found|picked [us|myself|ourselves up? a|an|some|new|<supply>]",
  "doubt: bought me and the wife a mattress 500":
    "^ i|we|just|so|ok|finally* bought|ordered|got|grabbed [me|us and|& the|my? <kin>|kids a|an|some|the]",
  "doubt: my sister got herself a chair 30":
    "^ <ours>|<kin> just|also* bought|got|picked_up|ordered|found|grabbed [herself|himself|themselves]",
  "other: grandma is giving away her sofa":
    "^ <ours>|<kin> is|was|s just|also* <retire>|keeping|tossing|donating [his|her|their own? <piece>]",
  "other: fixed my own table":
    "^ i|we|just* <labor>|fixed|repaired|restored|refinished|redid|painted [my|our own <piece>|<word>]",
  "other: refinished our dining table at home": "^ i|we|just* <labor> [my|our <any> <any>? at_home]",
  "doubt: hung shelves at home, brackets 14": "^ <word>|<labor> … at_home ,|-|.* [<supply> $]",
  "doubt: spent 35 on dog food":
    "<~buy>|spent|paid|dropped|blew $ [on|for|at] <art>? groceries|dog_food|cat_food|pet_food|dog|cat|lottery_tickets|scratch_offs|dinner|kids|school_supplies|diapers",
  "doubt: paid the babysitter 40":
    "paid|paid_for <art>|my|our? [babysitter|sitter|nanny|daycare|dog_walker|tutor|therapist|hairdresser|barber] $",
  "doubt: got a pizza 18 after hauling the dresser":
    "^ i|we|just* got|grabbed|bought|had|ate [a|an|some|us|our] pizza|burger|burgers|coffee|coffees|ice_cream|taco|tacos|sandwich|lunch|dinner|beer",
  "word: got ice cream 9 to celebrate the dresser": "[to celebrate <art>? <piece>|sale <word>?]",
  "doubt: bought a desk for my own office 30":
    "<~buy>|spent|paid|<supply>|<piece>|$ [for my|our own <word>|<piece>]",
  "doubt: mom bought paint 12 for her kitchen": `^ i|we|just|<ours>|<kin>* <buy>|spent|paid|<supply> … [for my|our|her|his|their ${ROOM}]`,
  "doubt: uncle bought gas 40 for his truck":
    "^ <ours>|<kin> just|also* <buy>|spent|paid … [for his|her|their own? !<piece> <word>|<supply>]",
  "doubt: bought paint 12 for the bathroom": `<~buy>|spent|<supply>|$ … [for|on the|a ${INDOORS}] !loan|loans|mortgage|table|island|cart|set|bench|cabinet`,
  "doubt: bought a chair as a wedding gift 90":
    "<~buy>|spent|<supply>|$ … [for|as <any>? <any>? birthday|bday|wedding|anniversary|christmas|xmas|shower|baby_shower|graduation|housewarming|mothers_day|fathers_day|gift|present]",
  "word: pizza 18 after hauling the desk":
    "<supply> $? [after|before loading|unloading|moving|hauling|delivering|lifting|carrying|lugging|dropping_off <art>? <piece>]",
  "doubt: bought brushes 8 for the kids": `<~buy>|spent|<supply> … [for my|our|the? ${FAMILY}] !s`,
  "doubt: paid the electric bill at home 40":
    "bill|bills|rent|repair|repairs|electric|electricity|internet|water … [at|for|on home|the_house|my_house|our_house|my_place|our_place|my_apartment|the_apartment|the_flat|my_flat]",
  "other: paid joe 40 to sand his bench": `paid|gave … $ … [to|for <any> ${OTHERS} own? <any>]`,
  "other: teo paid 40 to his dentist":
    "^ <buyer>|<new>|<person>|<ours>|<kin>|he|she|they paid|pays|gave|sent|spent $ [to|for|at|towards|on his|her|their !<piece>|balance|rest|share|part|half|debt|tab|bill|remainder|last|other|final <word>]",
  "other: teo paid his dentist 40":
    "^ <buyer>|<new>|<person>|he|she|they paid|pays|gave|sent|spent [his|her|their !<piece>|balance|rest|share|part|half|debt|tab|bill|remainder|last|other|final|deposit|own|money|cash <word> $]",
  "other: teo paid 40 to the dentist":
    "^ <buyer>|<new>|<person>|he|she|they paid|pays|gave|sent|spent $ [to the|a|another landlord|church|shop|store|bar|bank|school|doctor|dentist|mechanic|plumber|vet|gym|movers|mover|charity|city|county|state|court]",
  "other: dana put 30 on another desk":
    "^ <art>? <buyer>|<new>|<person>|he|she|they put|left|paid|gave|sent|dropped|deposit … [on|for|toward|towards <onemore>|<comp>]",
  // Who is fetched, and no piece.
  "doubt: picked up dana and the dresser 25":
    "^ i|we|just* picked_up|fetched|collected|got [<new>] and|& <art> <piece>",
  // More than one thing for one price.
  "doubt: bought hutch and stuff 60":
    "<~buy>|<~sell> … <piece> [and|&|plus|with|w|+ some|a_few|other|more|misc|a|bunch|of|the|little* stuff|things|junk|goodies|extras|crap] $|for|at|from|;",
  // What others make, keep and show.
  "other: booth next door made 800 today she says":
    "[booth|stall|stand|vendor|shop|store|table next_door|beside|behind|over|across|near|opposite <any>? <any>? <any>?] made|did|took_in|sold|grossed|cleared|pulled_in|earned $",
  "other: her booth made 650 she said":
    "[her|his|their|neighbors|other booth|stall|stand|shop|store] made|did|took_in|sold|grossed|cleared|pulled_in|earned $",
  "other: neighbor showed me her coffee table, she got it for 15 and finished it in a day":
    "[showed|showed_me|showed_us|bragged_about|sent_me|sent_us her|his|their <trait>* <piece> ,|.|and* … ,|.|and* finished|sold|listed|bought|sanded|painted|fixed it?]",
  "other: hutch at the estate sale went for 60 before i got there":
    "[<piece>] … went_for|sold_for|brought|went_at $ … ,|-|.|but* i|we|was|were|got* too_late|got_there_too_late|missed_it|outbid|before_i_got_there|before_me|too_rich_for_me|lost_out",
  "doubt: sold dresser ad space 20": "<sell> … [ad|advert|advertising space|spot|spots]",
  "doubt: estate sale hutch went for 45":
    "^ [estate_sale|auction|yard_sale|garage_sale|flea_market <piece>] went_for|sold_for|brought $",
  // What such a thing costs new.
  "other: recliners new are 600 now, mine is a steal":
    "^ a|an|same|the? <piece> [new|brand_new] is|are|now|run|runs|cost|costs|sell|sells|go|goes|around|about* for|at? $",
  "other: recliners go new for 550 now": "<piece> [go|goes|run|runs|sell|sells|retail|retails new] for|at? $",
  "doubt: same mirror 39 at the big store, mine listed at 45": "[mine|ours is|s? listed|at|up|priced*] $",
  "doubt: the desk knobs were 18 new, found mine in the shed":
    "<supply> was|were|is|are|cost|would_be $ [new|brand_new|retail] ,|but|so|.|-",
  "doubt: got a 25 gift card for paint from my sister":
    "$ dollar|bucks? [gift_card|coupon|voucher|gift_certificate|store_credit|rebate|discount_card]",
  "other: price tag under the piano bench, 24.95, original":
    "^ theres|found|old|original|vintage|a|an|the* [price_tag|price_sticker|sticker|tag|receipt] under|on|in|inside|behind|still|from|of",
  "other: seller paid 400 for this dresser, had the receipt":
    "[seller|owner|previous_owner|prior_owner|former_owner|last_owner|original_owner|original_buyer|old_owner|first_owner] paid|gave|spent|had_paid … $",
  "denial: not dropping the recliner below 100":
    "[not|wont|never|aint|im_not|refuse_to|refusing_to drop|dropping|lower|lowering|cut|cutting|go|going|knock|knocking] … below|under|beneath|past $",
  // How far off it is, how old they are: nobody drove, nobody paid.
  "doubt: shop with the good stain is 22 miles from here, skipping it today":
    "is|are|lives|s [<miles>] from|away|out|off",
  "word: lady buying nightstands is 82 and haggles like a pro":
    "<person>|<kin>|guy|lady|man|woman|buyer|grandpa|grandma … [is|s|turns|turned $] and|but|years|yrs|yr|old|;|,",
  "doubt: filing cabinet 4 drawer, only 3 lock":
    "<piece> ,|- [only|just] $ <supply>|lock|locks|work|works|stick|open|fit ;",
  // What is thought of it.
  "intention: desk worth painting, 20 for paint": "[worth] <labor>",
  // What somebody takes for such work.
  "offer: the hauler charges 35":
    "^ !he|she|they <art>|<new>|<labor>* <supply>|<person> [usually|normally|only|always? charges|quotes|wants|asks $]",
  "doubt: casters cost 12 a set":
    "<supply>|<person>|<new> cost|costs|run|runs|charge|charges|get|gets|is|are|start_at [$ a|an|per <time>|<span>|<any>|hour|day]",
  "doubt: movers cost 100 an hour":
    "<supply>|<person> cost|costs|run|runs|charge|charges|get|gets [$ <time>|<span>]",
  "money in: insurance paid 300":
    "^ <art>|my|our? [insurance|insurer|adjuster|insurance_company paid|sent|gave|reimbursed|covered|came_through me|us|with|out*] $",
  // Work that is none of a piece.
  "other: painted the house 2h": `<labor>|cleaned|washed|mowed|vacuumed|swept|remodeled|repainted|fixed|did <art>|his|her|their? <opinion>|<trait>|front|back|upstairs|downstairs* [${AT_HOME} ${AT_HOME}?] !of|<piece>|table|chair|chairs|cabinet|cabinets|island|cart|dresser`,
  "other: painted nails 30":
    "painted|did|doing|polished|painting|filed|got|clipped my|her|our|his|the|kids|daughters* [nails|toenails|fingernails|toes|face|faces|hair]",
  "other: went to the paint store, spent 20 min there":
    "^ !!$ i|we|just|<ours>* [went|stopped|ran|popped|swung|dropped|been|walked|nipped to|at|by|into|over|out|off|round|in* <art>? <trait>|<opinion>|<supply>|<labor>* <place>|store|shop|market|mall|bank|post_office ,|-|.|and|for|was|took|it|spent|about* <time> there|in_there|in_line|looking|browsing|total|round_trip*] ;",
  // Whose drive it was, and what it was for.
  "other: buyer drove 40 miles for the armoire":
    "!!$ ^ [<art>? <opinion>|<trait>* buyer|he|she|they|guy|lady|man|woman|couple|customer|seller|dude|people all|each|even|just* drove|drives|came|traveled|travelled|rode over|like|about|all_the_way* <miles>]",
  "other: drove 20 miles to church": `!!$ !!<piece> !!${SHOPPING} ${GOES}|<miles> … [to|for|from|at|over_to|and_back_from <art>|my|our|her|his|their|kids|a|${FAMILY}* ${PRIVATE_PLACE} ${FAR}]`,
  "other: drove 20 miles to see mom": `!!$ !!<piece> ${GOES}|had|<miles> … [to see|visit|get|collect|fetch|meet|pick_up|drop_off|check_on my|our|the? ${FAMILY} ${FAR}]`,
  "other: took the kids to their lesson, 7 miles": `!!$ !!<piece> !!${SHOPPING} ${GOES} [my|our|the|all|both* ${FAMILY} along? to|home|around|over|back|from|at? <art>|my|our|their|her|his? <word>? <word>? ${FAR}] <miles>|to|home|around|over|back|from|;`,
  "other: picked up the kids, 12 miles": `!!$ !!<piece> ^ i|we|just|had_to|to* [picked|picked_up|dropped|dropped_off|got|fetched|collected|ran|took|brought|pick|pick_up|drop_off my|our|the|all|both|a* ${FAMILY}|<person>|<theirs>|him|her up|off?] … ,|-|.? <miles>`,
  "other: vacation 400 miles": `!!$ !!<piece> !!${SHOPPING} ^ [our|my|the|a|family|personal|private|kids* vacation|road_trip|holiday|commute|commuting|carpool|carpooling|groceries|grocery|school_run|family_trip|family_visit|day_trip|${PRIVATE_PLACE}] … ,|-|:|.? <miles>`,
  "other: kids soccer fee 75":
    "!!<piece> [soccer|football|baseball|softball|ballet|dance|karate|gymnastics|swimming|choir|daycare|preschool|school|gym|kids <word>? fee|fees|dues|tuition]",
  // What such a piece costs in a shop.
  "word: bought chair 20, sold for 90 new": `$ [,|-|.|(|and|but|this|that|these|those|they|it|one|usually|normally|same_one* sell|sells|sold|retail|retails|retailed|go|goes|went|run|runs|selling|costs|cost new? for|at? new? $ ${BRAND_NEW}]`,
  "word: bought chair for 20, sold new for 90":
    "$ [,|-|.|(|and|but|this|that|these|those|they|it|one|usually|normally|same_one* sell|sells|sold|retail|retails|go|goes|went|selling|costs new|brand_new|retail|originally for|at? $]",
});
