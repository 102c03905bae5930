import type { Hedge } from "../words/hedges.ts";
import { TO_WORK } from "../words/labors.ts";
import { WORN_OUT } from "../words/supplies.ts";
import { rowsOf } from "./row.ts";

/** What makes of a clause no fact yet, or none at all; "labor": only a part of the work is done; "word": nothing of it; "all but": all pieces but the one it names; "bought", "sold", "drove", "refunded": a verb like that; "for": what follows is what it was for. */
export type TurnEffect =
  | Hedge
  | "labor"
  | "word"
  | "bought"
  | "sold"
  | "drove"
  | "refunded"
  | "fetch"
  | "for"
  | "all but"
  | "sold both";

/** How a clause behind the fact begins: the mark or the joint belongs to it, so that it is judged with the fact. */
const LINK =
  ",|.|!|-|(|but|and|though|tho|only|except|just|still|he|she|they|buyer|guy|lady|it|its|is|was|has|hes|shes|theyre*";

/** What a buyer pays with, and how it is said that it has not come. */
const A_PAYMENT =
  "the|his|her|their|full|final* payment|money|cash|check|cheque|transfer|funds|deposit_and_rest|balance|bank_transfer";
const NOT_THERE =
  "pending|to_follow|follows|to_come|outstanding|due|not_received|not_in|not_here|not_there|unreceived|on_its_way|on_the_way|in_the_mail|coming|processing|not_cleared|hasnt_cleared|hasnt_come|hasnt_come_through|hasnt_come_in|hasnt_landed|hasnt_arrived|hasnt_shown_up|hasnt_gone_through|not_come|not_come_through|not_arrived|not_gone_through|not_landed|yet_to_come|yet_to_arrive|yet_to_clear|to_clear|held_up|delayed|tomorrow|friday|later|next_week";

/** What is said behind a fact and turns it: taken back, held up, owed, or not ours. */
export const AFTERWARDS = rowsOf<TurnEffect>({
  // What is still to come, and its day.
  "word: 2h on the desk, back at it monday":
    "<time>|<miles>|<labor> … [,|.|-|;|and|then back|more|resuming|continuing|next_coat|second_coat|another_coat at_it|on_it|to_it|of_it|to_come|coming? on|by|this? <weekday>|tomorrow] ;",
  "word: paid 200 on the loan, more on friday":
    "$ … [,|.|-|;|and|then more|next_coat|second_coat|another_coat to_come|coming? on|by|this? <weekday>|tomorrow] ;",
  // Held up.
  "unpaid: sold desk 140, payment to follow": `<sell>|<buyer> … [${LINK} ${A_PAYMENT} is|still|has|been|being|just* ${NOT_THERE} yet? on|by|this|next* <day>?]`,
  "pending: sold desk 140, pending": `<sell>|<stream>|<~finish> … [${LINK} pending|gotta_wait|have_to_wait|waiting|waiting_on|waiting_for|not_cleared|hasnt_cleared|once_it_clears|as_soon_as|soon_as <word>* <word>*]`,
  "pending: sold desk 140 still in my garage": `<sell> … [${LINK} still in|at|here|there|with|sitting|sits !good|great|perfect|nice|fine|decent|rough|<opinion> <word>*]`,
  "unpaid: sold desk 140, still to be paid": `<sell>|<buyer> … [${LINK} still|yet|is|are* to_be_paid|to_get_paid|to_be_settled|to_pay|yet_to_pay|payable|due|owing|pay_on|pay_at later|friday|soon|delivery|pickup|collection|on_delivery|on_pickup|on_collection|at_pickup|when_they_collect|tomorrow* <day>?]`,
  "unpaid: sold desk 140, cash on delivery":
    "<sell>|<buyer> … [,|.|-|but|and* cash|payment|money|paying|pays|pay on|at|upon delivery|pickup|pick_up|collection|arrival]",
  "unpaid: sold desk 140 after he pays": `<sell>|<buyer> … [after|once|when|until|till|til|as_soon_as he|she|they|who|buyer|i|we|<person>|<new>|<kin> pays|pay|gets|get|sends|send|settles|settle|has|have|is_paid|am_paid paid|paid_me|me|us|the|money|cash|up|through|for_it*]`,
  "unpaid: sold desk 140 to my roommate who will pay me at church":
    "<sell>|<buyer> … [who|that|which|wholl|whos will|is|going_to|gonna* will|gonna|paying|pays|pay|sends|sending me|us|it|for_it* later|tonight|tomorrow|soon|friday|after|on|at|when|once|by|next_week <any>? <any>? <any>?]",
  "pending: sold desk 140 for a fake bill":
    "<sell> … [for|with|in|as|a|an|some|paid|cash|bill|was|turned_out* fake|counterfeit|phony|bogus|forged bill|bills|money|cash|check|note|twenty|hundred|fifty*]",
  "pending: ads 240 processing": "<stream> $ [unpaid|outstanding|not_in|not_in_yet|on_hold|processing]",
  // Turned down.
  "denial: guy offered 150 for the dresser, told him no":
    "offered|offers|offer|offering|lowballed|bid|asked|wanted … $ … [,|.|-|and|but|so|lol|haha|,* i|we|me? told|said|texted|replied|answered|countered_with him|her|them|em|it|back|that* no|nope|nah|hell_no|heck_no|no_way|no_thanks|no_thank_you|no_chance|no_deal|not_happening|absolutely_not|forget_it|pass|hard_pass|too_low|get_lost|to_get_lost|take_a_hike|to_take_a_hike|id_think_about_it|ill_think_about_it|id_wait lol|haha|lmao|thanks|obviously|of_course|way|sir|maam*] ;",
  "denial: dana offered 150 for the dresser, turned her down":
    "offered|offers|offer|offering|lowballed|bid … $ … [,|.|-|and|but|so|lol|haha* i|we|me|ive? no|nope|nah|hell_no|heck_no|no_way|no_thanks|no_thank_you|no_chance|no_deal|not_happening|absolutely_not|pass|hard_pass|turned_it_down|turned_him_down|turned_her_down|turned_them_down|declined|refused|passed|laughed|walked_away|hung_up lol|haha|lmao|thanks|obviously|of_course|way|sir|maam*] ;",
  // Taken back.
  "denial: sold desk 140 but he brought it back": `<sell>|<buy> … [${LINK} took|brought|sent|gave|got|carried|dragged|hauled|came|went|coming it|them|that? back <word>*]`,
  "denial: sold desk 140 and gave it all back to him": `<sell> … [${LINK} then|later|had_to|ended_up|i|we* gave|give|handed|sent|refunded|returned|giving him|her|them|it|all|the|his|their|every|cent|of_it|money|cash|price|full|amount* back]`,
  "denial: sold desk 140 and she wants her money back": `<sell>|<buy> … [${LINK} want|wants|wanted|wanting|asked_for|asking_for|demands <art>? money|refund|cash back?]`,
  "denial: bought dresser 40 changed my mind": `<sell>|<buy> … [${LINK} i|we? changed|undid <art>? mind|it|the_deal?]`,
  "denial: bought dresser 40 returned it": `<buy> … [${LINK} returned|returning it|them]`,
  // Money still to move.
  // What the household settles among itself is no debt of the shop's.
  "word: mom picked up a desk for me 40, i owe her": `^ my? <kin>|<ours> … <~buy> … $ [${LINK} i|we|ill|will|gotta|have_to|need_to|still* owe|owed|owing|pay|paying|settle <art>|him|her|them|up|with|for|it|back|later|tomorrow|tonight* $? back|later|tomorrow|for_it*] ;`,
  "unpaid: bought dresser 40 owe him 20": `<~buy> … $ [${LINK} i|we|ill|will|gotta|have_to? still? owe|owed|owing|paying|pay|payable <art>? him|her|them|seller|rest|later|tomorrow|next <word>? $?]`,
  "unpaid: bought dresser 40 on credit": "<buy> … [on credit|payments|installments|layaway|time] !card|cards",
  "extra: sold desk 140 + 20 for delivery":
    "<sell> … $ [for delivery|gas|shipping|assembly|hauling|fuel|stairs|setup|gas_money]",
  "net: sold desk 140 knocked 20 off": "<sell> … $ [,|and|but|i|we* knocked|took|shaved|dropped|cut $ off]",
  "doubt: sold desk 140 bought for 40": "<sell> … $ [bought|paid|cost for? $ for?] ;",
  // Told by somebody, or of a piece that it was not.
  "doubt: sold desk 140 he says":
    "<sell> … $ [he|she|they|mom|dad|wife|husband says|said|claims|thinks|told_me] ;",
  "word: done got 40 for the lamp":
    "^ i|we|well* [done|have_done|has_done] sold|bought|got|listed|put|paid|drove|gave|took|hauled|dropped|let|let_go|flogged",
  "sold: first sale of the day, the mirror, 50 cash":
    "^ and|so|well|oh|yay|<art>* [first|second|another|one_more|last|quick|easy|nice|big|early|late|only sale of_the_day|of_the_week|of_the_month|of_the_morning|today|tonight|this_morning|this_week|already|number_one? ,|:|-|!*] <art>? <piece>",
  "bought: replaced it with a pine desk, 25":
    "^ so|i|we|just* [replaced it|that|them|the_old_one|that_one with] <art>? <piece>",
  "bought: came by a desk for 15":
    "^ i|we|just|well* [came|come|run|ran across|by] a|an|some|another|this <any>? <piece>",
  "bought: talked him down to 40 for a dresser":
    "^ i|we* [talked|beat|haggled|bargained|knocked|got him|her|them|seller|the_guy|the_lady|the_bloke|the_fella down to] $ for|on a|an|another",
  "word: trunk done sold, 80": "<piece> [done] sold|gone|bought|paid|went|let",
  "doubt: sold desk 140, at least thats what he says":
    "<sell>|<~list>|<~buy>|<~finish>|<pay> … [,|.|-|at_least|or|so|or_so* thats|that_is|its|is* what|how|like|or_so|so he|she|they|<person>|<kin>|<new> says|said|claims|claimed|told_me|tells_me|thinks|tells_it]",
  "doubt: sold desk 140 according to my sister":
    "<sell>|<~list>|<~buy>|<~finish> … [according to my|our|the|her|his? <any>]",
  "doubt: listed desk 140 in a dream":
    "<sell>|<~list>|<~buy>|<~finish> … [in my|a|his|her|the* dream|dreams|imagination|game|movie|show]",
  "doubt: finished the desk, sort of":
    "<~finish> … [,? sort_of|kind_of|kinda|sorta|more_or_less|almost|nearly|for_the_most_part|pretty_much|basically|mostly|give_or_take] ;",
  "part: finished the desk apart from the feet":
    "<~finish> … [apart_from|aside_from|except|except_for|save_for|other_than|besides|minus|short_of|all_but <art>|my|its|one|two|that|few|couple* <any> <any>?] ;",
  "part: all finished with the desk but the handles":
    "<~finish> … [but|bar not|for* <art>|its|one|two <word>] ;",
  "denial: hold off on the desk": "[hold|held|holding off on]",
  "denial: hold off for now": "[hold|held|holding off] for|till|until",
  "denial: somebody wants it for 280, holding off": "[hold|held|holding off] ;",
  "denial: im holding firm on the dresser": "[hold|held|holding|stand|standing|stay|staying firm]",
  "denial: holding out for 180 on the hutch": "[hold|held|holding out for?]",
  "denial: sticking to 180 on the hutch": "[stick|sticking|stuck to|at|with] $",
  // Another piece, of which only a price is said.
  "offer: sold desk 140, hutch still 220":
    "<sell> … [,|and|but|though|.|-* <art>? <piece> is|are|s|just* still|stays|stay|remains|remain is|up|listed|there|here|at|for|on|sitting|asking* $]",
  "doubt: sold desk 140 took a chair in trade":
    "<sell> … $ [and|,? took|got|with|plus <art>? <piece> in_trade|as_trade|on_trade|in_exchange|for_trade]",
  "doubt: sold desk 140 in trade": "<sell> … $? [in|as|for|on trade|barter|store_credit|exchange]",
  // Talk about a piece of ours.
  "offer: got an offer on the desk 140":
    "[got|had|have|received <word>? offers|offer|messages|message|calls|call|texts|text|inquiries|inquiry|questions|bids|bid|hits|bites|replies|views|lowball|lowballs|<grain>] on|for|about <art>? <piece>",
  "other: picked up a shift 120":
    "[picked_up|worked|took|got|covered a|an? extra|double|second|night|weekend? shift|overtime]",
  "other: picked up chair from upholsterer 90":
    "[picked_up|got|collected <art>? <piece> back? from <art>? upholsterer|refinisher|restorer|welder|stripper|repairman|repair_shop|shop|caner|carpenter|painter]",
  "other: picked up my chair from bob after repair 90":
    "[picked_up|got|collected <art>? <piece>] from … after <service>|repair|<labor>",
  // Somebody else's, or not for sale.
  "word: cousin picked up a piano bench for us, 25":
    "^ !i|we|ive|weve|just <word> <~buy> … [for us|me|the_shop|the_business|the_store]",
  "other: sold moms desk 140": "<sell> <art>? [<theirs>]",
  "other: bought dresser 40 for our bedroom":
    "<~buy> … <piece> $? [for my|our|the|his|her? <kin>|myself|us|me|house|home|bedroom|kitchen|bathroom|nursery|apartment|living_room|office|own_house|ourselves|friend|neighbor|neighbour|neighbors] $? ;",
  "other: sold desk 140 for a friend":
    "<sell> … $ [for <art>? <kin>|friend|neighbor|neighbour|coworker|someone|somebody|church] ;",
  "other: the shop down the street sold a hutch 300":
    "^ [<art>? <place>|shop|store|guy|lady|dealer|neighbor|seller down_the_street|next_door|across_the_street|across_town|up_the_road|down_the_road|nearby] <sell>",
  "other: paint 12 for my kitchen":
    "<supply> $ [for my|our|the house|home|bedroom|kitchen|bathroom|nursery|apartment|living_room|place|own_house|fence|deck|church|porch|patio|yard|garden|dorm|school|boat|coop|chicken_coop|treehouse|doghouse|mailbox|gate|floor|floors|walls|wall|ceiling|roof|siding|shutters|hallway]",
  "other: paint for nursery 12":
    "<supply> [for my|our|the? house|home|bedroom|kitchen|bathroom|nursery|apartment|living_room|own_house] $",
  "other: sponsor paid for paint 40":
    "^ [sponsor|client|customer|landlord|boss|work paid|bought for?] <supply>",
  "word: ran out of wax so bought more 9":
    "^ i|we|was|were* [ran_out_of|run_out_of|out_of|low_on] <supply> so|and|, i|we? bought|got|grabbed|picked_up|ordered",
  "word: ran out of wax so got more, 9":
    "ran_out_of|run_out_of|out_of|low_on <supply> [so|and|, i|we|had_to|went|just* bought|got|get|buy|grabbed|picked_up|ordered some|more|another|it|them*] ,|-|for|at? $",
  "word: sale of the desk completed: 150 cash":
    "sale of|on <art>? <piece> [is|was|now? completed|complete|closed|final|finalized|concluded|done|went_through] :|,|-|at|for",
  "sold: desk sale 150, fee 4.50": "^ <art>? <piece> [sale] :|,|-|at|for* $",
  "sold: sale: desk, 150": "^ [made_a|a|another|first|one_more|quick|new? sale] :|-|,|! <art>? <piece>",
  "word: guy put 20 down on the desk, coming back with a van":
    "!!sold put|left|gave|gave_me|down|deposit … $ … [,|-|.|and* he|she|they|hes|shes|theyre|will|ll|is|be|gonna* back|coming_back|comes_back|come_back|returning|going_to_get|getting|borrowing with|w|for|in|to_get? <art>|his|her|their|dads|moms|a|some? <any>? <any>? van|truck|trailer|pickup|car|suv|minivan|help|husband|wife|brother|friend|friends|dolly|straps|<kin> later|tomorrow|tonight|soon?] ;",
  "word: deposit just hit, 30 for the desk":
    "deposit|payment|transfer|check|money|$ just|finally|has|already* [hit|landed|dropped|showed_up] my|the|our? account|bank|inbox? ;",
  "word: the sander died, new one 65": `^ my|our|the|his|a? <supply> [finally|just? ${WORN_OUT} on_me|on_us|today|again|halfway_through|mid_job?] ,|.|so|and|!|-`,
  "word: the drill quit on me, replacement 89": "^ [a|the? replacement was|is|cost|for?] $ ;",
  "word: ran out of sandpaper, 21":
    "^ i|we|so|and|just* [out_of|ran_out_of|low_on|running_low_on] <supply> and|&|,? <supply>? ,|.|-|: and|so? $ ;",
  "intention: out of paint 12":
    "^ [priced|preordered|pre_ordered|out_of|ran_out_of|low_on|almost_out_of|returning|wishlisted] <supply>",
  "other: gave tip 10": "[gave|left|gave_a|left_a tip|tips]",
  "doubt: got paid 60 for fixing chair": "[got_paid|was_paid|earned|made] $ for|to <labor>|<service>",
  "doubt: loan paid down to 8900": "loan|<loan> [paid|pd|got down to]",
  "doubt: paid 110 on both loans":
    "paid|pay|<pay> $ [to|on|for|toward|towards each|both|all|every loan|loans]",
  // Money or things given back to somebody by name.
  "doubt: paid bob back 40": "[paid|pay !her|him|them <word> back] $",
  "doubt: paid back bob 40": "[paid|pay|gave back my|our? !her|his|their|the <new>|<person>|<kin>] $",
  "doubt: paint 34 returned 10 of it":
    "<supply> $ [,|and|but? returned|took|brought|got $|some|half|one of? it|them|back*]",
  // Time that is no work of its own.
  "doubt: desk took 2h to sell":
    "[took <time> to sell|pick_up|move|load|deliver|list|photograph|find|get|buy|haul|fetch|reach|choose]",
  "doubt: 4 hours of work left on settee": "<time> of work|<labor> [left|to_go|remaining|needed]",
  "doubt: loan payment is 110": "payment|payments [is|are|will_be|should_be] $",
  "labor: took 2h to sand desk": `took|spent|another? <time> to [${TO_WORK}] <art>? <piece>`,
  "labor: buffet took me 3.5 hours to strip": `took me|us|<kin>? <time> to [${TO_WORK}] it|them|this? ;`,
  "labor: desk: 2h sand": `<time> [${TO_WORK}] ;`,
  "word: 24 on fabric to recover the bench": `<supply> … [to ${TO_WORK}] <art>? <trait>* <piece> ;`,
  "labor: hutch 45m strip + 30m sand": `<time> [${TO_WORK}] +|,|/ <time>`,
  "labor: 2h strip on the desk": `<time> [${TO_WORK}] on|for? <art>? <piece>`,
  "doubt: 2h till desk is dry":
    "<time> [till|until|til|before|away|late|early|from_now|remaining|more_to_go]",
  "doubt: dresser total 5h": "[total <time>]",
  "word: put 2h in on the desk":
    "put|spent|logged|squeezed|snuck|sneaked|fit|crammed|managed|snatched|stole <time> [in_on] <art>? <piece>",
  "doubt: dresser 5h all in": "<time> [all_in|in_total|total|in_all|altogether|in_on|to_go|to_date|left]",
  "doubt: me and dad sanded dresser 2h": "^ [me|myself|i and|& <kin>|<word>] <labor>",
  // Bought for a piece, or with it.
  "doubt: bought mirror for dresser 20": "<~buy> <art>? !<several> [<piece> for|to|on <art>?] <piece>",
  "doubt: bought vintage vanity with mirror and stool 65":
    "<~buy> … [<piece> w|with <art>? <piece> and|& <piece>]",
});
