import { rowsOf } from "./row.ts";

const TOOK = "got|took|received|accepted|picked_up|scored|getting|taking";
const TRADED = "traded|trade|trading|swapped|swap|swapping|bartered|exchanged|exchange";

/**
 * One piece for another. "trade": what was given stands before what was got; "trade back": behind it; "none": it only
 * looks like one.
 */
export const TRADES = rowsOf<"none" | "trade" | "trade back">({
  "none: swapped chairs, my two for his rocker": "my|our [two|three|four] for his|her|their <piece>",
  "trade: gave the lamp and 15 for a trunk":
    "[gave|gave_up|giving|handed_over] <art>|<numbered> <piece>? and|plus|+|& $ for|to_get|and_got <art>? <piece>",
  "trade: bench and 10 bucks for a lamp":
    "^ <art>|my? [<piece> and|plus|+|& $] for|4 a|an|another <trait>|<opinion>* <piece>",
  "trade: gave up the mirror for a trunk, even":
    "gave|gave_up|giving|handed_over <art>? <piece> for <art>? <piece> ,? [even|even_up|straight_up|straight_across|no_cash]",
  "trade: gave bob the lamp and 15, got a trunk":
    "gave <art>? <person>|<new>|<someone>|him|them|her <art>? [<piece> and|plus|+|& $ ,|and|&* i|we? got|took|received] <art>? <piece>",
  "trade: sold desk for a lamp and 100":
    "[sold|let_go|flipped] <art>|my|our? <piece> for a|an|another|some|his|her|their <piece> and|plus|+|&|with $",
  "trade: sold desk for 100 and a lamp":
    "[sold|let_go|flipped] <art>|my|our? <piece> for $ and|plus|+|& a|an|another|some|his|her|their <piece>",
  "trade back: got a hutch for my desk and 40": TOOK + " <art>? <piece> [for my|our] <piece> and|plus|+|& $",
  "trade back: took the desk in trade, gave the bench plus 20":
    TOOK + " … <piece> … [in|as <art>? trade|swap|exchange] ,|and|&|.* i|we? gave",
  "trade: trade: chair out, table in": "^ [trade|swap|traded|swapped :|,|-|!*] <art>? <piece> out",
  "trade: gave #5 plus forty for a tall dresser in a trade":
    "gave|gave_up|giving … <piece> … for|to_get … <piece> … [in|as <art>? even|straight|fair? trade|swap|exchange]",
  "trade back: took a vanity in trade for the armoire":
    TOOK + " … <piece> … [in|as <art>? trade|swap|exchange for]",
  "trade back: got a bookcase for the bench, even trade":
    TOOK + " … <piece> … for … <piece> … [<art>|in|as? even|straight|fair? trade|swap|exchange]",
  "trade: did a trade: lamp for mirror":
    "[did|made|doing <art>? even|straight|fair? trade|swap :|,|-] <art>? <piece>",
  "trade: swap: desk for hutch":
    "^ [even|straight|fair|a? traded_up|traded|swapped|swap_deal|swap|trade|deal up? with|w? <art>|some? <new>|<person>? today? ,|:|-|!*] … <piece> … for|4|into|to_get|and_got|got|toward|towards … <piece>",
  "trade: bartered the trunk for a side table":
    "[" +
    TRADED +
    " in|up|away|off?] … <piece> … for|4|into|to_get|and_got|got|toward|towards|+|i_got … <piece>",
  "trade: gave the neighbor my bench and he gave me a trunk":
    "gave <art>? <person>|<someone>|him|them|her <art>? <piece> [and|, he|she|they gave me|us <art>?] <piece>",
  "trade: for the hutch i got a pie safe and 35 cash":
    "^ [for <art>?] <piece> i|we got|took|received <art>? <piece>",
  "trade: gave teo my desk and 30 for his armoire":
    "gave|handed <art>|<kin>? !me|us <person>|<new>|<someone>|him|them|her my|our|the <piece> and|plus|+|&* $? [for his|her|their|a|an|the] <piece>",
  "trade: teo took the desk and gave me a trunk":
    "^ … took|got|grabbed|has my|our|the <piece> [and|,|&* he|she|they? gave|handed|left me|us] <art>? <piece>",
  "trade back: she gave me a nightstand in exchange for the mirror":
    "gave|handed me|us <art>|his|her|their? <piece> [in|as? <art>? exchange|trade|swap|return|payment for my|our|the] <piece>",
  "trade back: dana gave me a nightstand for my mirror":
    "<person>|<new>|<someone>|he|she|they gave|handed me|us <art>|his|her|their? <piece> [for my|our] <piece>",
  "trade back: took a lamp as payment for the bench":
    TOOK + " <art>|his|her|their? <piece> [as|for|in payment|pay for|on] my|our|the? <piece>",
  "trade: my desk plus 15 for his file cabinet":
    "my|our <piece> [plus|+|and|& $ for|= his|her|their] <piece>",
  "trade: desk got traded for a lamp":
    "<piece> [was|were|is|been|got|has_been|just* " + TRADED + " for|4] <art>? <piece>",
  "trade: let the hutch go in trade for a buffet":
    "let <art>? <piece> go [in|as <art>? trade|swap|exchange] for <art>? <piece>",
  "trade: let the desk go for a buffet and 50": "let <art>? <piece> go [for|4 a|an|his|her|their] <piece>",
  "trade: the bench for a plant stand, fair trade at 45":
    "^ <art>|my|our? <piece> for <art>|his|her|their? <piece> ,|-|. [in|as|<art>* even|straight|fair|equal trade|swap|exchange|up|across?]",
});
