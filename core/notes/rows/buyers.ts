import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

/** How somebody gets a piece. */
export const GETS =
  "bought|purchased|picked_up|took|grabbed|got|paid|collected|snagged|scooped|scooped_up|snatched|snatched_up|snapped_up|swooped_up|swooped_in_on|swiped|yoinked|nabbed|nab|bagged|copped|landed|rescued|adopted|acquired|obtained|claimed|came_for|came_to_get|buys|buying|is_buying|takes|taking|wants_to_buy|just_bought|scored|came_and_got|came_and_bought|came_and_picked_up|came_by_and_got|hauled_off|carried_off|drove_off_with|left_with|walked_off_with|ended_up_buying|ended_up_taking|ended_up_with|ended_up_getting|wound_up_buying|wound_up_taking|wound_up_getting|took_home|brought_home|hauled_home|lugged_home|went_home_with|came_home_with|drove_home_with|walked_away_with|walked_out_with|made_off_with|treated_herself_to|treated_himself_to|splurged_on|sprung_for|lucked_into|been_for|been_and_got|came_round_for|been_round_for|popped_round_for|popped_over_for|popped_by_for|came_round_and_got|come_and_got|came_and_took";
const PUTS =
  "put|puts|put_down|made|left|left_me|gave|gave_me|handed|handed_me|paid|paid_me|sent|sent_me|wired|dropped_off";
const AS_DEPOSIT = "deposit|down|down_on|down_for|to_hold|toward|towards|to_save|to_reserve";
const MANY =
  "guys|girls|boys|kids|ladies|men|women|students|dudes|teens|people|movers|friends|sisters|brothers";
const DOES =
  "waited|loved|liked|drove|walked|saw|spotted|noticed|eyed|admired|stopped_in|stopped_by|stopped_for|called|texted|messaged|came_back|came_in|came_by|came_over|walked_in|wandered_in|wandered_over|popped_in|haggled|wanted|looked|looked_at|measured|rode|fell_for|fell_in_love_with|decided_on|asked_about|stopped";
/** And then gets it. */
const PAYS_FOR_IT = "paid|paid_me|gave|gave_me|handed|handed_me|bought|took|grabbed|snagged|got";
const SOMEBODY =
  "<art>? <opinion>|<trait>|<plain>* !<kin> <person>|<helper>|<new> from|at? <place>|<plain>|<labor>?";
/** How somebody wants a piece no more. */
export const LEAVES =
  "doesnt_want|doesnt_need|no_longer_needs|got_cold_feet|isnt_taking|isnt_getting|isnt_buying|no_longer_wants|cant_take|passed_on|decided_against|decided_not_to_buy|decided_not_to_take|wont_be_taking|lost_interest_in|walked_on";

/** Buyers by what they are seen to do: leave money, come and pay, say no more; and a piece by what it brought. */
export const BUYERS = rowsOf<OwnerEffect>({
  "sold: desk lady paid the full 160":
    "^ <art>? <piece> [lady|guy|man|woman|buyer|couple|dude|girl|gal|kid|people|folks just|finally? paid|came_and_paid <art>? full|whole|asking|entire|all price|amount|asking|ask?] !!<piece> $",
  "word: dana took a picture of it":
    "[!<kin> <new>|<person>|he|she|they took|takes|is_taking a|some|another|the? picture|pictures|photo|photos|pics|pic|look|peek|seat|video|measurements]",
  "sold: desk went yesterday for 135": "<piece> [went] <day> for|at $",
  "buyer: my sister bought the lamp off us for 15":
    "^ [<art>? <kin>] bought|took|got <art>? <piece>|it off|from of? me|us|ya",
  "word: mom took pictures and listed the desk 120":
    "<kin> [took|takes|snapped|shot|got a|some|another|the|new|better|good* picture|pictures|photo|photos|pics|pic|measurements of_it|of_them? and|then* then?] <list>",
  // What was asked of us, before what we paid.
  "buyer: lenny paid 30 to hold the bench":
    "^ [<art>? <opinion>|<trait>|<plain>|<supply>|<new>* !<kin> <person>|<new> <new>? paid|gave|gave_me|gave_us|sent|sent_me|handed_me|handed_us|paid_me|paid_us|slipped_me] $ to_hold|to_save|to_reserve|to_keep|to_set_aside <art>? <piece>",
  "buyer: man left me 25 to hold the mirror": `^ [<art>? <opinion>|<trait>|<plain>|<new>* !<kin> <person>|<new> <new>?] ${PUTS} me|us? … ${AS_DEPOSIT}`,
  "buyer: the guy with the trailer put 50 down on the wardrobe": `^ [<art>? <opinion>|<trait>|<plain>|<new>* !<kin> <person> from|with|w|at|in|down|across|by|on|over|next|named <art>? <any> <word>? <word>? and?] ${PUTS} me|us? … ${AS_DEPOSIT}`,
  "buyer: mom from soccer put 20 down on the desk": `^ [<art>? <kin> from|of <art>? <any> <word>? <word>?] ${PUTS}|wants|wanted|will_take|is_taking|taking`,
  "buyer: lady loved the dresser and paid 190": `^ [${SOMEBODY} really|just|instantly|finally? ${DOES}] <art>? <piece> <word>? <word>? <word>? and|,|then|so* then|just? ${PAYS_FOR_IT} me|us|it|them|$`,
  "buyer: the lady waited for me and paid 75 for the trunk": `^ [${SOMEBODY} ${DOES} … and|then] ${PAYS_FOR_IT} me|us|it|them|$|<piece>`,
  "buyer: three college girls took the futon 50": `^ [# <word>|<trait>|<opinion>* ${MANY} in|with|from? <art>? <any>? <word>?] ${GETS}`,
  "buyer: a guy two streets over bought it for 100": `^ [<art>? <opinion>|<trait>* !<kin> <person> <grain>] ${GETS}`,
  "buyer: some man hauled it away for 110":
    "^ [<art>? <opinion>|<trait>* !<kin> <person>] hauled|carried|took|drove it|them|<piece> away|off|home",
  "buyer: man with a pickup hauled it away for 110":
    "^ [<art>? <opinion>|<trait>* !<kin> <person> with|w|in <art>? <any> <word>?] hauled|carried|took|drove it|them|<piece> away|off|home",
  "buyer: two guys in a van took the wardrobe for 120": `^ [<party> in|with|from? <art>? <any>? <word>?] ${GETS}`,
  "buyer: mike decided he doesn't want the bench": `^ [<art>? !<kin> <new>|<person> decided|says|said|told_me he|she|they] ${LEAVES}`,
  "sold: a bloke just had it off me for 55":
    "^ [<art>? <opinion>|<trait>* <person>|<new>|<theirs> has|just* had] <art>? <piece>|it|them off|off_of me|us",
  "sold: the pew fetched 205":
    "<piece> [fetched|brought|brought_in|brought_me|pulled_in|earned_me|raked_in|made_its_money|got_its_money] ,? $",
  "buyer: tammy from work paid 75 for the bench": `^ [<new> from|at|w|with <art>? work|church|school|gym|shop|office|market|yoga|<place>|<new>|<plain>] ${GETS}`,
  "buyer: some other lady bought the dresser 185 cash":
    "^ [some|another|other|different|some_other <new>|<person>] bought|took|grabbed|paid|picked_up",
  "sold: the last two stools just went, 35":
    "<piece> just|both|all|finally|already* [went as_a_set|as_a_lot|as_a_pair|as_a_bundle|together|fast|quick|quickly|today|just_now|already|this_morning|tonight* ,|-|!*] $",
  "sold: bench moved, 80 bucks to my neighbor":
    "<piece> just|finally? [moved ,|-?] $ <method>? to <art>|my|our? <person>|<kin>|<new>",
  "sold: dropped the hutch at 415 oak street, got 240":
    "^ i|we|just* [dropped|dropped_off|delivered|left|took] <art>? <piece> off|over|up|down? at|to <grain> ,|-|.|and|for* got|collected|they_paid|she_paid|he_paid|she_gave_me|he_gave_me? $",
  "sold: hutch is outta here!! 240!!": "<piece> [is|s|are|its? outta|out_of here|there ,|-|!|.*] $",
  "sold: one lady cleaned me out, both lamps and the mirror for 75":
    "[cleaned me|us out ,|-|!|.|with*] … <piece> … $",
  "sold: sofa was 260, now it's hers for 230":
    "<piece> … [,|but|and|now* its|it_is|theyre|they_are now? hers|his|theirs|somebody_elses now?] for|at|, $",
  "sold: stools 15 apiece, all gone":
    "<piece> $|<eachof> [,|-|and|!|.* all|both|they|theyre|is|are|now* gone|sold_out] ;",
  "sold: the bench got its price, 60":
    "^ <art>? <piece> just|finally|really? [got|fetched|brought|made|earned] its|the|my|our|full|a_good|a_great|a_fair|a_decent|good|top* price|asking|asking_price|worth|ask ,|for|-|:? $",
  "sold: got our price for the bench, 60":
    "^ i|we|just|finally* [got|fetched|made] our|my|its|full|top|the_full* price|asking|asking_price|ask for|on|out_of <art>? <piece> ,|-|:|at|.? $",
  "sold: walked away with 80 for the desk":
    "^ i|we|just|finally* [came_home_with|walked_away_with|walked_out_with|ended_up_with|drove_home_with|went_home_with|came_away_with|wound_up_with|left_with|scored|landed|snagged|grabbed|picked_up|took_home|netted|pocketed] $ <method>? for <art>? <piece>|it",
  "asked: got a good price for the bench, 60":
    "^ <piece>|i|we|just|finally* [got|fetched|made] a|the|good|great|fair|decent* price for|of",
  // Who does work for money may as well buy.
  "name: got 160 for the bench from a retired carpenter":
    "got|received|made|collected|pocketed $ … from|off|off_of a|an|some [<trait>|<opinion>|<new>* <helper>]",
  "buyer: a retired carpenter paid 160 for the bench":
    "^ [a|an|some|this|one <trait>|<opinion>|<new>* <helper>] bought|purchased|paid|paid_me|gave_me|handed_me",
  // An offer that was taken.
  "word: guy offered 70 for the bench and i took it":
    "[offered|offers] <art>? $ … <art>? i|we|ive|so|and|just* took|take|accepted|said_ok|said_yes|said_okay|said_sure|said_deal|agreed",
  "sold: guy offered 70 for the bench and i took it":
    "<plain>|offered … $ … [,|and|so|but|.* i|we took|take|accepted|said_ok|said_yes|said_okay|said_sure|said_deal|agreed it|that|the_deal|to_it|him_up_on_it*] !on|<time>",
  "sold: wardrobe picked up and paid for, 140": "<piece> [picked_up|collected|fetched and|& paid|paid_for]",
  "sold: desk picked up this morning, full 150 by transfer":
    "^ <art>? <piece> was|got|is|just* [picked_up|collected|fetched|carried_away|carried_off|hauled_off|driven_off|loaded_up|loaded] <day>|<word>? <word>? ,|.|-|!? <art>? full <word>? $",
  "sold: bench is gone! 85, and the site took 7.65 of it":
    "^ <art>? <piece> [is_gone|are_gone|gone] .|!|;|,|-|for $ ,|-|and|but* fee",
  "sold: the desk went yesterday, 150 in cash":
    "^ <art>? <piece> [just|finally|is|has|was* went|left|off|out|collected|carried_away|carried_off|hauled_off|out_of_here to? its|<art>? new? owner|home?] !to <day>|<word>? <word>? <word>? ,|.|-|!|;|at|for* full? $ in|by|via|with? <method>",
});
