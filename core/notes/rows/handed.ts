import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

const LENT_A_HAND =
  "helped|helps|carried|loaded|unloaded|hauled|lifted|moved|delivered|pitched_in|lent_a_hand|gave_me_a_hand";
/** Somebody, and where they are from: "a neighbor two doors down". */
const HANDS_OF =
  "<art>? <opinion>|<trait>* <kin>|<person>|<new> <new>|<grain>? from|in|down|across|at|next|over|of? <art>? next? <plain>|<new>|<kin>|<place>|work|road?";
const CAME_TO = "came|stopped|swung|drove|ran|came_over|came_by|stopped_by|over|by|out|up|here|early|to";
const PAID_TO = "paid|gave|slid|slipped|handed|tossed|threw|tipped|owed";
/** What somebody pays us for beside a piece. */
const FOR_WORK =
  "for|to|toward|towards <art>|my|the? <supply>|<labor>|<service>|help|helping|trouble|time|loading|carrying|hauling|moving|parking|tolls";

/** Money and pieces that change hands: who gives what to whom, and what is paid beside a piece. */
export const HANDED = rowsOf<OwnerEffect>({
  "asked: dad gave me a toolbox and 20 bucks for gas":
    "^ [<art>? <kin>|<person>|<new> gave|handed me|us <art>? <supply> and|plus|+|& $ for <supply>]",
  "word: they paid me 90 for the class":
    "^ [<art>? <opinion>|<trait>|<plain>* they|he|she|<person>|<new>|<place>] paid|gave|sent me|us $ … for|from <art>? <any>? <stream>",
  "help: my nephew helped 2 hrs, gave him 20": `^ so|ok|and* [${HANDS_OF} in_law? ${CAME_TO}* ${LENT_A_HAND}|help|<labor>|worked|worked_on|did … i|we|so|and|,* ${PAID_TO} him|her|them] $ !back`,
  "help: had dad help with the desk, paid him 15": `^ i|we? [had|got|asked|let <art>? <kin>|<person>|<new> to? help|carry|load|move|lift|haul|unload|sand|strip|paint|<labor> … i|we|so|and|,* ${PAID_TO} him|her|them] $ !back`,
  "given: she gave me 10 for gas": `^ oh|and|so|plus|also|,* [he|she|they|buyer|<art>? <kin>|<person>|<new> gave|slipped|handed|paid|threw|tossed|sent|chipped_in me|us] $ extra|more? ${FOR_WORK}`,
  "word: sold coffee table 85, gave him change for a 100":
    "[,|and|but|i|so|he|she|they* gave|had|made|got|needed|no|have him|her|them|me|<person>? change for|from|back|of <art>? $? bill?]",
  "word: desk 90, i gave him his change":
    "[,|and|but|i|so* gave|made|got|owed him|her|them|me|<person> <art>|his|her|their? change]",
  "word: he paid with a 100 bill": "paid [with|w <art>? $ bill]",
  "word: stuck the desk on the board 90":
    "put_a|stuck|threw|tossed|slapped <art>? <piece> [on the|our|my|a board]",
  // What is left of a piece, or came off one, is sold rather than bought.
  "given: got 5 for the old knobs":
    "^ i|we|just|and|then|,* [got|received|made|pocketed] $ for the|its|old|leftover|scrap <trait>|<plain>|old|leftover|scrap* <supply>|<part>|metal|wood|hardware|brass|scrap",
  "word: put 18 of hardware on the desk":
    "^ i|we|just|also* [put|sank|dropped|stuck] $ of|worth_of|worth <plain>|<trait>* <supply> on|in|into|toward|towards <art>? <piece>",
  "word: carpet cleaner rental 35": "<supply> [rental|rentals|hire]",
  "given: got 10 from her for gas": `got|received $ [from <art>? him|her|them|<person>|<kin>|<new>] ${FOR_WORK}`,
  "worker: bob got 40 for the desk": "^ [<art>? !<kin> <new>|<person>] got $ for <art>? <piece>",
  "buyer: bob gave me 40 for the desk":
    "^ [<art>? !<kin> <new>|<person>] gave|handed|sent me|us $ <method>? for <art>? <piece>|it|them|this|that|both",
  "giver: bob gave me a dresser":
    "^ [<art>? <kin>|<new>|<person>|<place> at|from|in|down? <art>|my? <place>|<plain>|work|church|school|gym?] gave me|us <art>? <any>? <piece>",
  "word: bob gave me 20": "^ [<art>? <kin>|<new>|<person>] gave me|us",
  "word: kyle got 20 for helping with hutch":
    "^ [<art>? <opinion>|<trait>|<plain>* <new>|<person>|<kin> got|gets] $ for help|helping|loading|moving|hauling|carrying|lugging",
  "service: kyle got 20 for helping with hutch":
    "^ <art>? <opinion>|<trait>|<plain>* <new>|<person>|<kin> got|gets $ for [help|helping|loading|moving|hauling|carrying|lugging]",
  "word: my sister bought me lunch. glue 5 for the desk":
    "^ [<art>? <kin>|<person>|<new> <new>? bought|got|made|brought|treated|took me|us|everybody|everyone out? to|for? <art>? lunch|dinner|breakfast|supper|brunch|coffee|donuts|pizza|tacos|ice_cream|drinks|drink|beer|beers|burger|burgers|sandwich|sandwiches] !$",
  "word: my brother sold his truck for 4000, anyway i sold the bench for 35":
    "^ [<art>? <kin>|<person>|<new> sold|bought his|her|their <trait>|<opinion>* <supply>|<new>|<plain> for|at? $] !<piece>",
  "asked: i was sold a bad dresser for 60": "^ [i|we was|were|got] sold",
  "word: went to an estate sale with my sister, bought a washstand 30":
    "went|stopped|drove|was|hit|been|out|headed|ran … [with|w <art>? <kin>|friend|buddy|neighbor|mate] ,|and|then|;",
  "worker: sister bought a sofa 300 for her place":
    "<kin> … bought|got|picked_up … <piece> … [for her|his|their own|new? place|house|apartment|home|room|dorm|office]",
});
