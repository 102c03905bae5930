import { rowsOf } from "./row.ts";

/**
 * What is not the verb's own. "part": a part of a piece, spending on it; "supply": things for a piece; "service":
 * what somebody does to a piece for money; "buyer": who it went to; "sold": it left us, to nobody named;
 * "left": a piece that
 * was fetched; "ours": who of the household did it; "worker": somebody else's work; "fee": paid for a listing; "cost": of
 * other work; "help": who lent a hand and was paid for it; "stream", "scrap", "rental": other money that came in; "name": words of a name; "giver": who gave us a piece; "given": who gave us money for something else than a piece; "asked": what it is has to be asked; "underway":
 * whence or whither one was on the way, which ends a name as well; "word": nothing.
 */
export type OwnerEffect =
  | "part"
  | "supply"
  | "service"
  | "buyer"
  | "sold"
  | "ours"
  | "worker"
  | "fee"
  | "left"
  | "cost"
  /** Brought to us, or done to it, for money beside its price. */
  | "carried"
  | "help"
  | "name"
  | "giver"
  | "given"
  | "asked"
  | "underway"
  | "labor"
  /** Put where buyers see it. */
  | "listed"
  | "held"
  | "gifted"
  | "scrapped"
  /** How it was paid. */
  | "by card"
  | "by check"
  | "stream"
  | "scrap"
  /** Work for others, and bringing things to them, for money. */
  | "job"
  /** So, most likely: asked. */
  | "job?"
  | "delivery"
  | "rental"
  | "tip"
  | "word";

const WHAT_FOR =
  "help|helping|giving|lending|a_hand|his_help|her_help|their_help|labor|<supply>|<labor>|<service>|<grain>|gas|move|haul|load|carry|moving|loading|hauling";
const CARRYING = "delivery|shipping|hauling|pickup|assembly|transport";
/** Why somebody left more than the price. */
const TIPPED_FOR =
  "for|to|cause|bc|because i? <art>|my|all? <labor>|<service>|loading|help|helped|helping|carrying|hauling|moving|delivering|delivery|bringing load|carry|move|lift|<labor>? it|them|him|her* up|down|out|over|in?] ;";
/** What comes beside the price of a purchase, as a noun. */
const BESIDE_PRICE =
  "delivery|shipping|freight|haulage|hauling|courier|transport|transportation|towing|reupholstery|upholstery_work|repairs|repair|assembly|setup|set_up";
const TO_WORK =
  "sand|strip|scrub|paint|clean|wash|refinish|wax|oil|stain|fix|repair|prime|glue|polish|reupholster";
const BOARD = "app|apps|site|sites|website|group|page|board|boards|forum|classifieds|internet|web";
const BEHIND_SERVICE = "fee|charge|cost?";

/** What was had done to a part of a piece. */
const HAD = "had|got|have|get|having|getting <art>|<trait>|<opinion>|new|both|all|new*";

/** Hands that are paid, what they do to a piece, and through what a piece went. */
export const HANDS = rowsOf<OwnerEffect>({
  "help: tom next door helped carry it, gave him 10":
    "!!bought|sold|took ^ [<art>|two|2|my|our? <new>|<person>|<kin>|guy|guys|kid|kids <new>|<plain>|<person>|kid|kids|guys|next_door|down_the_street* helped|moved|carried|loaded|unloaded|hauled|lugged me|us|with|to|load|unload|carry|move|lift|haul|bring|get|it|them|that|in|out|up|upstairs|downstairs|off|the* <piece>? in|out|up|upstairs|downstairs|down* ,|and|so|-|.|i|we* gave|paid|tipped|slipped|handed|threw|pd him|her|them|em|<new>? <art>?] $ ;",
  "carried: bought chair 20, delivery 15": `<~buy> … <piece> … $ ,|and|plus|+|&|-|.|;|for|<art>* [${BESIDE_PRICE} and|&|+? ${BESIDE_PRICE}?] was|came_to|:|at|for|another* $`,
  "carried: bought a chair 12 at a yard sale, delivery 15": `<~buy> … <piece> … $ from|at|off … ,|and|plus|+|&|-|.|;* [${BESIDE_PRICE} and|&|+? ${BESIDE_PRICE}?] was|came_to|:|at|for|another* $`,
  "carried: chair 12 from the thrift store, delivery 15": `^ <art>? <trait>* <piece> ,|for* $ from|at|off … ,|and|plus|+|&|-|.|;* [${BESIDE_PRICE} and|&|+? ${BESIDE_PRICE}?] was|came_to|:|at|for|another* $`,
  "word: sold the desk to imani for 140, payment by transfer":
    "<~sell>|went … $ [,|-|and|.|with* payment|the_payment|payment_was|payment_came|paid by|via|in|with|through|as <art>?] <method> ;",
  "listed: dresser's up again for 165":
    "<piece> [is|s|its|it? up|back_up|online|live again] for|at|asking? $",
  "held: promised the bench to my neighbor":
    "^ i|we|have|ive|weve|already|just* [promised] <art>? <piece> to !$",
  "held: opal dropped off 60 for the armoire, wants me to hold it til saturday":
    "dropped_off|dropped|sent|left|gave|gave_me|paid|handed_me|put … $ … [,|-|.|and|so|but he|she|they? wants|wanted|asked|asks me|us to hold|save|keep] <art>? <piece>|it",
  "held: tom asked me to hold the desk till monday, so i am":
    "[wants|wanted|asked|asks|needs|needed me|us to hold|save|keep|reserve] <art>? <piece>|it … ,|.|-|and|so|but so|and|i|we|im* am|did|will|doing|will_do|said_ok|said_yes|said_sure|said_fine|agreed|told_him_ok|told_her_ok|told_him_yes|told_her_yes that|it|so? ;",
  "word: told hank i'll hold the vanity until wednesday":
    "^ so|ok|and|just|i|we* [told|promised|texted] <art>? !<kin> <new>|<person> that? id|ill|i|we|wed|well will|would|ll|d|am|can* hold|save|keep|reserve <art>? <piece>|it",
  "held: told hank i'll hold the vanity until wednesday":
    "^ so|ok|and|just|i|we* told|promised|texted <art>? !<kin> <new>|<person> [that? id|ill|i|we|wed|well will|would|ll|d|am|can* hold|save|keep|reserve] <art>? <piece>|it",
  "word: told my husband to hold the hutch for nell":
    "^ [told|asked|let|reminded|texted|had|got|called <art>? <kin> know|that*] to? hold|holding|reserve|save|<~hold> !$",
  "word: fabric for the chairs was 31.40, wifes card":
    "<supply>|<~buy>|<spend> … $ … [,|-|on|from|with|using|by|it_was|that_was* my|our|the|his|her? <theirs>] <method> ;",
  "word: drove 26 miles for a dresser and the lady had already sold it":
    "<miles> … [for|to|to_see|to_get|to_look_at|to_check_out|to_pick_up <art>? <piece> but|only|and|,* <art>? he|she|they|<person>|seller|owner|guy|lady had|has|just|already* sold|gave|given|let it|that? go|away? when|before|by|the|time|i|we|got|there*] ;",
  "word: just talked to my wife, the dresser sold for 170":
    "^ [just|i|we* talked|spoke|chatted|checked to|with <art>? <kin> ,|and|-|:*] <piece>|the|it",
  "word: according to my husband the dresser sold for 170": "^ [according_to <art>? <kin> ,?]",
  "word: my wife just told me the dresser sold for 170":
    "^ [<art>? <kin> just|also|now? told|tells|informed|corrected|texted|reminded me|us that|,|:*] <art>? <piece>",
  "word: mom says she got a bench for 20":
    "^ [<art>? <kin> just|also|now? says|said|saying|texts|texted|messaged|mentioned|reports|calls|called|phoned|rang|wrote me|us|that|to_say|earlier|,|and|:|-*] <art>? <kin>",
  "word: my wife just called from the flea market, she got a bench for 20":
    "^ [<art>? <kin> just|also|now? texts|texted|messaged|calls|called|is_calling|phoned|rang|wrote|is|was me|us? from|at|out_at <art>? <trait>* <place>|<plain> ,|and|:|-*] <art>? <kin>",
  "word: desk done, my husband took the pics and put it up for 190":
    "<finish>|done|finished|<time> … [,|and|-|.* <art>? <kin>|<person>|i|we took|shot|did|snapped|wrote|made|edited|posed|staged|wrote_up|got the|some|a|my|its|few? pics|pictures|photos|pic|photo|ad|writeup|description|measurements for_it|of_it|of_them?]",
  "word: drove 36 miles for a dresser that was already gone":
    "<miles> … [for|to|to_see|to_get|to_look_at|to_check_out|to_pick_up|to_view|after <art>? <piece> that|which|but|only|and|,* it|they? was|were|had|had_been|turned_out|wasnt|got|is? already|been|just|long|to|be|even|not|worth* <~sell>|gone|junk|trash|taken|rotten|broken|garbage|there|real|fake|pending|claimed|rot|good|bad|it when|by|i|we|got|there|the|time*] ;",
  "word: sold the desk for 140 to imani, who paid by transfer":
    "to|from|by|for … [,? who|which|whom just|then|also|kindly|happily|promptly|all? paid|paid_me|paid_us|payed|settled|settled_up|handed_over|sent|sent_me for_it|it|me|us|the_money|the_rest|in_full|all? by|in|with|via|using|through? <art>?] <method> ;",
  "word: sold the desk to imani, who paid me 140 by transfer":
    "to|by … [,? who|whom just|then|also|kindly|happily|promptly? paid|paid_me|paid_us|payed|gave|gave_me|handed_me|handed_over|sent|sent_me for_it|me|us|the_full? all?] $",
  "service: paid the guys 40 to bring the hutch over":
    "paid|pd|gave|slipped|handed <art>? <new>|<person>|<kin>? $ to [bring|get|drive|take|drop|help_bring|help_move|help_load] <art>? <piece>",
  "word: dana transferred a 60 deposit for the dresser":
    "[transferred|wired|mailed|deposited|sent_over|sent me|us|over?] <art>? $ deposit|down_payment|down|to_hold",
  "word: cane 38, and i should mention that it is for the chairs":
    "<supply> … [,|-|.|;|and* i|we|please|let_me should|must|will|want_to|ought_to|just* say|mention|add|note|point_out|stress that? that|this|it|its|they|thats|theyre is|are|was|were? all?] for|on <art>? <piece>",
  "help: credenza went for 210 and we gave the delivery dude 15":
    "i|we|and|, [gave|slipped|tipped|paid|handed the|a|an|my|our|his|her? delivery|moving|neighbor|neighbors|next_door|truck dude|guy|kid|man|fella|fellow|boy|guys|dudes|kids|boys] $",
  "help: tipped the loader 10":
    "^ i|we|just? [tipped <art>|my|our? !me|us delivery_guy|delivery_man|moving|two|2? guy|guys|movers|mover|loader|loaders|helper|helpers|driver|kid|kids who|that|for|at? <word>? <word>? <word>?] $ <method>? ;",
  "help: caning was 40, tipped him 5": "[tipped him|her|them|em] $ <method>? ;",
  "help: had to tip the kid 5 to load it": "[tip|tipping the|a|my|our|that <person>|<kin>|helpers?] $",
  "word: marge tipped me 5": "^ [<new>] tipped me|us",
  "word: marges husband tipped me 5": "^ oh|and|also* [<new>|<theirs> <kin>|<person>] tipped me|us",
  "word: tipped me 10 for loading": `tipped me|us $ [${TIPPED_FOR}`,
  "word: desk people tipped me 10":
    "^ so|and|oh|ok|also|plus* [<art>? <piece> people|lady|guy|couple|family|buyer|folks|man|woman|dude|girl|kid|kids] tipped me|us",
  "word: she tipped 10 for loading": `got|was|were|been|getting|<new>|<person>|he|she|they tipped $ [${TIPPED_FOR}`,
  "word: dresser got another 45 minutes today": "^ <art>? <trait>* <piece> [got] another|<time>",
  "word: got 2 hours in on the bookcase": "^ but|so|and|then* i|we? [got] <time> on|in",
  "word: my neighbor helped me sand the table 2h": `!!gave|paid|tipped|slipped|owe ^ [<art>|<kin>|<person>|<new>* helped|helps|was_helping|gave_me_a_hand me|us out|with|to* ${TO_WORK}?] … <time>`,
  "word: helped my dad with the rocker, 1 hr":
    "^ i|we? [helped <art>? <kin> with|on|do] <art>? <piece> ,|-|for|took* <time>",
  "word: my son and i sanded the desk 2h": "^ [<art>? <kin> and|& i|me|myself] <labor> … <time>",
  "word: me and dad stripped the table 3h": "^ [me|i|myself and|& <art>? <kin>] <labor> … <time>",
  "ours: had my son sanding the table for 45 min": `^ had|got|made|let [<art>? <kin>] to? <labor> … <time>`,
  "ours: 2h on the desk by mom": "<time>|<miles> … by [<art>? <kin>] ;",
  "word: gave bob 15 for gas": `paid|gave|pd|slipped|handed|tipped|tossed [<art>? <new>|<person>|<kin> <new>|<person>? next_door|down_the_street|across_the_street|down_the_road?] $ for|to|on|in ${WHAT_FOR}`,
  "help: 15 to the lad who helped lift":
    "^ $ to|for [<art>? <person>|<new> who|that|for helped|helping|lifted|carried|carrying|loaded|drove|moved|lifting <word>? <word>? <word>?] ;",
  "help: paid bob 40 for 2 hrs of sanding":
    "paid|gave|pd|slipped|handed|tossed|tipped|sent … $ for <art>? [<grain> of|worth|at? his|her|their? work|help|labor|time|<labor>|<service>* on|with|at?]",
  "help: paid the lad 60 for giving me a hand with the pew":
    "paid|pd|gave|slipped|handed|tossed|tipped|threw !me|us … $ <method>? for|to [giving|give|lending|lend|his|her|their|the|all|some|me|us|a|an|extra|good* hand|hands|lift|help|time|muscle|assistance on|with|in?]",
  "help: slipped dad 15 for helping me sand the pew": `paid|pd|gave|slipped|handed|tossed|tipped|threw !me|us … $ <method>? for|to [helping|help me|us|with|out|to* ${TO_WORK}|load|carry|move|lift|haul|unload|bring|get|flip up|in|out|down?] <art>? <piece>|it|them`,
  "help: handed my buddy 20 for holding the pew":
    "^ i|we|just|also* paid|pd|gave|slipped|handed|tossed|tipped !me|us … $ <method>? for [getting|holding|watching|bringing|taking|dragging|wheeling|storing] <art>? <piece>",
  "service: paid joe 20 to haul it":
    "paid|gave|pd|slipped|handed|tipped <art>? <word>|<person>|<kin>? $ to|for [haul|move|carry|load|lift|deliver|transport|helping|hauling|moving|carrying|loading|lifting|delivering carry|load|move|lift|haul|me|us|out|with?] it|them|that",
  "service: paid joe 20 for helping me":
    "paid|gave|pd|slipped|handed|tipped <art>? <word>|<person>|<kin>? $ for [helping carry|load|move|lift|haul|me|us|out?] ;",
  "word: paid 15 to bob for moving hutch": `paid|gave|pd|slipped|handed $ [to <art>? <new>|<kin>|<person>] for|to|on|in ${WHAT_FOR}`,
  "word: 20 to kyle for loading hutch": `^ $ <method>? [to <art>? <new>|<kin>|<person>] for|to ${WHAT_FOR}`,
  "service: 20 to kyle for loading hutch":
    "^ $ <method>? to <art>? <new>|<kin>|<person> for|to [helping|loading|moving|hauling|<labor>]",
  "worker: got 40 for fixing a chair for june": "got|received|made $ for [<labor>|<service>] <art>? <piece>",
  "service: had it reupholstered, 140": "^ i|we? had|got|have|getting it|them|that|these [<service>]",
  "word: dresser painted by sam 40":
    "^ <art>? <piece> was|got|is? <service>|<labor> [by !hand|me|us|myself|brush <art>? <trait>* <new>|<person>|<plain>|neighbor|friend] for|,? $ ;",
  "service: dresser painted by sam 40":
    "^ <art>? <piece> was|got|is? [<service>|<labor>] by !hand|me|us|myself|brush <art>? <trait>* <new>|<person>|<plain>|neighbor|friend for|,? $ ;",
  "service: desk delivery cost me 20": `<piece> [<service>|delivery|shipping cost|was|ran|came_to me|us?] $`,
  "service: delivery 20 for desk": `^ <art>? [${CARRYING} ${BEHIND_SERVICE}] $ for|on|of|to? <art>? <piece>`,
  "service: 35 delivery for the armoire": `^ $ [${CARRYING} ${BEHIND_SERVICE}] for|on|of|to <art>? <piece>`,
  "service: delivery on desk 20": `^ <art>? [${CARRYING} ${BEHIND_SERVICE}] for|on|of|to <art>? <piece> $`,
  "service: paid for delivery of the sideboard 35": `paid|pd|spent for|on <art>? [${CARRYING}] of|on|for <art>? <trait>* <piece> $`,
  "service: paid 15 for delivery of desk": `paid|pd|spent|gave $ for|on <art>? [${CARRYING}] of|on|for <art>? <piece>`,
  "supply: got key cut for desk 12": "[key|keys|glass|foam|board made|cut|copied|recut]",
  "word: bob charged 60 to reupholster chair":
    "^ [<new>|<person> charged|billed me|us?] $ to|for <service>|<labor>",
  "word: welder charged 35 to cut a shelf for the hutch":
    "charged|billed me|us? $ [to cut|make|build|weld|turn|<labor> <art>? <piece>|<part> for] <art>? <piece>",
  "service: bob charged 60 to reupholster chair":
    "charged|billed me|us? $ to|for [<service>|<labor>] <art>? <piece>",
  "word: sold desk 140 on the app": `<sell>|<buy>|<supply> … [on|thru|through|over|off <art>? ${BOARD}]`,
  "word: refunded lucy 15 bench": "refunded|refunding|reimbursed [<new>|<person>|<kin>] $",
  "word: sold dresser 210 less a 6.30 fee": "<sell> … $ ,? [less] <art>? $ in? fee|fees|commission",
  "word: sold dresser 210 less fees of 6.30": "<sell> … $ ,? [less] <art>? fee|fees of|: $",
  "cost: paid 12 at the dump": "paid|spent $ at <art>? [dump|landfill|transfer_station|tip]",
  // One cost over several.
  "word: knobs 18, split between the desk and the dresser":
    "<supply> … [,|-|(|and? split|divided|shared|spread|halved|used|goes it|them|that? evenly|equally|half_and_half|50/50|up? between|across|over|among|on|for|by|with both? :?] <art>? <piece>",
  "word: paint 30 half for the desk and half for the hutch":
    "<supply> … [,|-|(? half|half_of_it|half_of_them|some|part for|on|to|went_to|goes_to] <art>? <piece> ,|and|&* half|other_half|the|some|rest",
  "word: paint 24 some for the desk and some for the hutch":
    "<supply> … <piece> [,|and|&|+* the? half|other_half|other|rest|some for|on|to|went_to|goes_to] <art>? <piece>",
  "help: had a guy weld the bar cart 35":
    "[had|have|got|hired|paid <art>? <person>|<kin>|<new> <new>? to? weld|fix|repair|paint|sand|strip|refinish|reupholster|recane|cane|redo|clean|build|cut|move|haul|deliver|load] <art>? <piece> !done",
  "service: slipped my cousin 20 for loading the hutch":
    "paid|gave|pd|slipped|handed|tipped|tossed !me|us … $ for|to [loading|hauling|carrying|moving|lifting|unloading|lugging] <art>? <piece>",
  "service: paid my brother 30 for fixing the drawer on the hutch":
    "paid|gave|pd|slipped|handed|tipped|tossed !me|us … $ for|to [!<supply> <labor>|<service> <art> <any> <any>? on|of|in] <art>? <piece>",
  "service: gave bob 15 for sanding":
    "paid|gave|pd|slipped|handed|tipped|tossed !me|us … $ for|to [!<supply> <labor>|<service>] ;",
  "service: dropped the settee at the upholsterer, paid 150 up front":
    "dropped|dropped_off|took|brought|left|sent|picked|picked_up|got|fetched|collected <art>? <piece> off|up|back|home? at|to|with|from <art>? [upholsterer|refinisher|restorer|welder|caner|glazier|glass_shop|frame_shop|machine_shop|upholstery_shop|stripper]",
  "help: desk pickup cost me 60":
    "^ <art>? [<piece> pickup|pick_up|transport|haul|hauling] cost|costs|ran|set|came_to me|us|back|to* $",
  "word: rented a truck 45 to get the hutch": "[rented|renting|hired|leased|rent] <art>? <supply>",
  "ours: my wife rented a trailer, 29": "^ [<art>? <kin> <new>?] rented|hired|leased <art>? <supply>",
  "service: had the mirror on the vanity replaced 38": `${HAD} <part>|<inpiece> <part>? on|of|in|from|for <art>? <piece> [<done>]`,
  "word: had the mirror on the vanity replaced 38": `${HAD} [<part>|<inpiece> <part>? on|of|in|from|for] <art>? <piece> <done>`,
  "service: paid a guy 38 to replace the mirror on the vanity":
    "paid|pd|gave … $ … to [<service>|<labor>|replace <art>? <trait>|new* <part>|<inpiece> on|of|in|for] <art>? <piece>",
  "service: had somebody fix the drawers on the vanity, 38":
    "had|got|paid|hired [somebody|someone|<art>? <person>|<new> to? <service>|<labor> <art>? <part> <part>? on|of|in] <art>? <piece>",
});
