import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

const METAL = "metal|brass|copper|iron|aluminum|steel|tin";
const SCRAP = `${METAL}|wood|lumber`;

/** Work that others pay for, as it goes on and as it is to be done. */
const DOING =
  "hauling|moving|delivering|assembling|painting|fixing|repairing|refinishing|loading|unloading|carrying|cleaning|mowing|lifting|hanging|building|installing|helping|raking|redoing|restoring|putting_together|setting_up|babysitting|walking|washing|<labor>";
const TO_DO =
  "haul|move|deliver|assemble|paint|fix|repair|refinish|load|unload|carry|clean|mow|lift|hang|build|install|help|rake|redo|restore|put_together|set_up|strip|sand|reupholster|wash";
const PAYER =
  "<art>? <opinion>|<trait>|<plain>|<place>* <person>|<new>|<kin>|<place>|customer|client|neighbor|school|church|ladies|guys";
const DID =
  "hauled|moved|delivered|assembled|painted|fixed|repaired|refinished|loaded|unloaded|carried|cleaned|mowed|hung|built|installed|redid|restored|stripped|sanded|reupholstered|did";
const SOMEBODY =
  "<art>? <opinion>|<trait>* !<kin> <person>|<new>|someone|somebody|church|school|guy|lady|customer|client|neighbor";
const THEIR = "a|an|some|his|her|their|<theirs>|customers|clients|neighbors|ladys|friends";
const GAVE = "gave|paid|slipped|handed|threw|tossed|sent|threw_in|added|kicked_in|chipped_in";
const THEY = "<art>? <new>|<person>|<kin>|he|she|they|buyer|customer";
const BRINGING =
  "delivery|dropping|dropping_off|bringing|carrying|delivering|drop_off|dropoff|the_drop_off|hauling|loading|moving|taking|helping|shipping";

/** "and the guy was so happy he", "she". */
const HAPPY =
  ",|and|plus|-|.|;* <art>? he|she|they|guy|lady|buyer|couple|customer|man|woman|kid|dude|<person>|<new>|<kin>? even|also|then|was|so|happy|he|she|they|really|kindly*";
const FOR_A_HAND =
  "gas|gas_money|fuel|trouble|troubles|help|helping|time|effort|efforts|loading|carrying|lifting|moving|hauling|lugging|back|lunch|beer|coffee|carry|load|lift|haul|lug|bring|deliver|move|drop|dropping|bringing|delivering|stairs";

/** Money that comes in beside the pieces: scrap, rents, classes and jobs by their names. */
export const EARNINGS = rowsOf<OwnerEffect>({
  // Tips, and what came beside a price.
  "word: they threw in a 5 buck tip on the dresser": `^ oh|and|plus|also* [${THEY} ${GAVE}|left|left_me|gave_me|handed_me|slipped_me me|us|in? an|a|another|extra?] $ tip`,
  "stream: she gave me a 10 tip for carrying the desk up": `me|us|gave_me|got|received|left_me|slipped_me|handed_me a|an? $ [tip|tips for|to|cause|bc|because i|we? ${BRINGING}|bring|carry|load|lift|help|helped me|us|him|her|them|load|carry|move|lift|unload|it|<art>|<piece>* up|down|in|out|over|upstairs|downstairs|inside|stairs|the*] ;`,
  "stream: got a 5 dollar tip on the desk": "$ [tip|tips on|for|from|off|with <art>? <piece> <person>?] ;",
  "word: dana gave me 20 extra for dropping off the desk": `^ oh|and|plus|also* [${THEY} ${GAVE}|gave_me|slipped_me|handed_me|paid_me me|us|in? an|a|another?] $ extra|more for|to <art>? ${BRINGING}`,
  "delivery: dana gave me 20 extra for dropping off the desk": `^ oh|and|plus|also* ${THEY} ${GAVE}|gave_me|slipped_me|handed_me|paid_me me|us|in? an|a|another? $ [extra|more for|to <art>? ${BRINGING} it|them|her|him|that? off|over|up|out|in|down? upstairs|downstairs|inside|home? <art>? <piece>?] ;`,
  "delivery: collected 35 delivery fee":
    "^ i|we|just* collected|got|charged|received|made|earned|took a|an? $ [for|in|as? <art>? delivery|shipping|hauling|assembly|drop_off fee|fees|charge|charges|money?] ;",
  "delivery: delivery fee 25 from dana":
    "^ [<art>? delivery|shipping|hauling|assembly fee|fees|charge|money] $ from <new>|<person>|<kin>|him|her|them|buyer",
  "delivery: 35 delivery charge collected":
    "^ $ [delivery|shipping|hauling|assembly fee|fees|charge|money collected|received|came_in]",
  "delivery: 20 for delivery plus a 5 tip":
    "^ $ [for? <art>? delivery|hauling|drop_off] plus|and|+|&|with <art>? $ tip",
  "delivery: delivery 30 plus tip 5": "^ [delivery|hauling] $ plus|and|+|&|with tip $",
  "word: dana threw in another 15 for delivering it": `^ oh|and|plus|also* [${THEY} threw_in|threw|kicked_in|chipped_in|added in? an|a|another|extra?] $ for|to <art>? ${BRINGING}`,
  "tip: ruth threw in 10 extra for helping her load it": `^ oh|and|plus|also* ${THEY} threw_in|threw|kicked_in|chipped_in|added in? an|a|another|extra? $ [extra|more|on_top for|to|cause|because|bc i|we? ${BRINGING}|helped|helping me|us|him|her|them|load|carry|move|lift|unload|it|<art>|<piece>* up|down|in|out|over|upstairs|downstairs|inside*] ;`,
  "word: got tipped 15 by the dresser couple for delivery": `got|was|were|been|getting tipped $ [by|from <art>? <piece>|<opinion>|<trait>? people|lady|guy|couple|family|buyer|folks|<person>|<new> for|to|on? <art>? ${BRINGING}|it? it|them?]`,
  "delivery: dana threw in another 15 for delivering it": `^ oh|and|plus|also* ${THEY} threw_in|threw|kicked_in|chipped_in|added in? an|a|another|extra? $ [for|to <art>? ${BRINGING} it|them|her|him|that? off|over|up|out|in|down? upstairs|downstairs|inside|home? <art>? <piece>?] ;`,
  // More than the price, for a hand that was lent.
  "tip: sold the desk for 150 and he gave me an extra 10": `<~sell>|went|gone … $ … [${HAPPY} ${GAVE} me|us? an|a|another|about? extra|additional|bonus|more] $`,
  "tip: sold the desk 150 and she slipped me 10 extra": `<~sell>|went|gone … $ … [${HAPPY} ${GAVE} me|us? an|a|another|about?] $ extra|more|on_top|to_boot ;`,
  "tip: sold the desk for 150 and he slipped me a 20 for helping": `<~sell>|went|gone … $ … [${HAPPY} ${GAVE} me|us? an|a|another|about?] $ extra|more? for|toward|towards|to <art>|my|his|her|our? ${FOR_A_HAND}`,
  "tip: sold the desk for 150, extra 10 for my trouble": `<~sell>|went|gone … $ [,|and|plus|+|with|-* an|a|another? extra|additional|bonus] $ for|toward|towards|to <art>|my|his|her|our? ${FOR_A_HAND}`,
  "word: sold the desk for 150 and he slipped me a 20 for helping": `${GAVE} me|us an|a|another|extra|more* $ [extra|more? for|toward|towards|to <art>|my|his|her|our? ${FOR_A_HAND} it|them|him|her|up|down|in|out|over|load|carry|move|<piece>|<art>*]`,
  "delivery: sold the desk for 150, i charged her 25 to bring it up": `<~sell>|went|gone … $ … [,|and|plus|-|.* i|we? charged him|her|them|<person>|<new>? an|another? extra?] $ for|to|extra|more|on_top`,
  // Work for others.
  "job?: made 30 hauling furniture": `^ i|we|just|also|and* made|earned|cleared|netted|pulled_in|picked_up $ <method>? [for|by|from? ${DOING} >] ;`,
  "job: made 30 hauling junk":
    "^ i|we|just|also|and* made|earned|cleared|netted|pulled_in $ <method>? [for|by|from? hauling|moving|clearing|hauling_away|hauling_off some|old|away|off* junk|trash|brush|scrap|garbage|debris away|off?] ;",
  "job?: got 40 to fix the neighbors table": `^ i|we|just|also|and* got|received $ <method>? [to ${TO_DO} the? ${THEIR} >] ;`,
  "job?: got paid 60 to paint my cousins front door": `^ i|we|just|also|and* got_paid|was_paid|were_paid|made|earned $ <method>? [to ${TO_DO} >] ;`,
  "word: charged a guy 25 to deliver his couch": `^ [i|we|just* charged|billed ${SOMEBODY}] $ <method>? to|for`,
  "job: charged a guy 25 to deliver his couch": `^ i|we|just* charged|billed ${SOMEBODY} $ <method>? [to|for ${TO_DO}|${DOING} >] ;`,
  "word: charged 35 for delivery": "^ [i|we|just* charged] $ for|on",
  "word: blog ads 61.75 deposited":
    "<stream> … $ [was|got|is|just|already* deposited|landed|posted|cleared|direct_deposited|hit <art>|my|our? account|bank|checking? today?] ;",
  "job: helped bob move a sofa for 40": `^ [i|we|just* helped my? ${SOMEBODY} ${TO_DO} …] ,|-|and|so* for|got|made|earned|he_paid_me|she_paid_me|he_gave_me|she_gave_me|they_paid_me|they_gave_me|paid_me|gave_me $ <method>? ;`,
  "job: painted a fence for a neighbor, 80 cash": `^ [i|we|just* ${DID} ${THEIR} … for my? ${SOMEBODY}] ,|for|got|made|and|-* $ <method>? ;`,
  "job: side gig refinishing a customers chair, 90 transfer": `^ [side_gig|side_job|odd_job|gig ${DOING} …] ,|-|:|for* $ <method>? ;`,
  "job: side job hanging shelves paid me 150": `^ [<art>? side_gig|side_job|odd_job|gig ${DOING}|<piece> …] paid|paid_me|paid_us|made|made_me|earned|earned_me|brought_in|got_me|netted|netted_me $ <method>? ;`,
  "word: customer paid me 80 to redo her chair": `^ [${PAYER} paid|gave|handed|sent|slipped me|us] $ for|to ${TO_DO}|${DOING}|teach|teaching|show|showing|tutoring|coaching`,
  "job: customer paid me 80 to redo her chair": `^ ${PAYER} paid|gave|handed|sent|slipped me|us $ [for|to ${TO_DO}|${DOING} ${THEIR} >] ;`,
  "job: the ladies paid me 50 for teaching them chalk paint": `^ ${PAYER} paid|gave|handed|sent|slipped me|us $ [for|to teach|teaching|show|showing|tutoring|coaching <any> >] ;`,
  "job?: the school paid me 120 for refinishing desks": `^ ${PAYER} paid|gave|handed|sent|slipped me|us $ [for|to ${TO_DO}|${DOING} !lessons|lesson|classes|class|workshop >] ;`,
  "given: my aunt gave me 50 to buy supplies": `^ [${PAYER} paid|gave|handed|sent|slipped me|us] $ to|for buy|get|grab|pick_up|buying|getting`,
  "given: won 25 at the fair with my chair": "^ i|we|just? [won] $ at|in|on|with|from",
  "cost: ran ads 15": "[ran|running|placed|posted|took_out <art>? ads|ad] … $",
  "stream: 110 for teaching the chalk paint class":
    "[<supply>|<labor>|<trait>|<part> <supply>? class|classes|workshop|workshops|lesson|lessons|course|courses]",
  "stream: lessons payment 40": "[!ads|ad|videos|blog <stream> payment|payments]",
  "stream: class payout 40": "[<stream> payout|payouts|deposit|money|revenue|proceeds|earnings] !down",
  "stream: workshop check came 62.15": "[<stream> check] came|arrived|in|hit|cleared|landed|of|for|,",
  "cost: paid 55 for a repair":
    "paid|pd|spent $ for|on <art>? [repair|repairs|tune_up|tuneup|oil_change|inspection|fix] ;",
  "scrap: sold scrap metal 14": `^ [sold|cashed_in|turned_in|recycled|scrapped <art>|some|old|that* scrap ${SCRAP}? money?] … $`,
  "scrap: sold old brass for scrap 9": `^ [sold|cashed_in|turned_in|recycled <art>|some|old|that* ${SCRAP} <art>? for_scrap|as_scrap] … $`,
  "scrap: scrap money 14": `^ <art>? [scrap ${SCRAP}? money|cash|income|sales|proceeds|run|haul] $`,
  "supply: bought scrap wood 6": `<buy>|paid|spent … [scrap ${SCRAP}]`,
  "scrap: scrap brass 14": `^ <art>? [scrap ${METAL}] $`,
  "scrap: 14 for scrap brass": `^ i|we|got|made|received|earned* $ [for|from <art>|some|old* scrap ${SCRAP}? yard|money?] ;`,
  "scrap: scrap yard gave me 14":
    "^ <art>? [scrap_yard|scrapyard|recycler|recycling_center|metal_yard gave|paid me|us] $",
  "rental: sander rental income 25":
    "[<art>|my|our|<trait>|<plain>* <supply>|truck|van|trailer|tool|equipment rental|rentals income|money|cash|payment] $",
  "rental: rented out the sander 25":
    "^ i|we|just? [rented|leased|loaned|lent out <art>|my|our|<trait>|<plain>* <supply>] … $",
  "rental: rented the sander to a neighbor for 25":
    "^ i|we|just? [rented|leased <art>|my|our|<trait>|<plain>* <supply> out|to_a|to_the|to_my|to_our|to !get|haul|move|bring|carry|fetch|take|pick|pick_up|do|help|use|<labor>|<service> <person>|<new>|<kin>?] … $",
  "rental: rented nell my sander for 15":
    "^ i|we|just? [rented|leased|let|hired_out <person>|<new>|<kin> rent|use|borrow? my|our|the <trait>|<plain>* <supply>|truck|van|trailer] ,|for $",
  "rental: loaned the sprayer to nell for 20 bucks":
    "^ i|we|just? [loaned|lent my|our|the <trait>|<plain>* <supply>|truck|van|trailer to <art>|my? <person>|<new>|<kin>] for $",
  "rental: neighbor rented the sander for 25":
    "^ <art>? [<person>|<new> rented|leased|borrowed the|my|our <trait>|<plain>* <supply>] for|and|,? paid? $",
  "rental: got 30 for lending out the trailer":
    "got|made|received|earned $ [for|from|by renting|leasing|lending|loaning out? <art>|my|our|<trait>|<plain>* <supply> out?]",
  "rental: got 25 from the sander rental":
    "got|made|received|earned $ [for|from|off the|my|our <trait>|<plain>* <supply> rental|rentals]",
  "stream: got paid 60 for a repair job":
    "got_paid|was_paid|were_paid|get_paid|getting_paid $ for|from <art>? <opinion>|<trait>? [<stream>]",
  "stream: consult fee 40 received": "[<stream> fee|fees] $ received|came_in|paid_me|in",
});
