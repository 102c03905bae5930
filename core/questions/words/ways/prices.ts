import { waysOf } from "../../plainer.ts";

/** What would come of a sale, an offer or a purchase, however its price is told. */
export const OF_PRICES = waysOf({
  "if #28 goes for 220 what do i clear => how much would i make on #28 at 220":
    "^ if x:4 goes|sells|sold|go|sell|went for|at n:<number>|list|list_price|asking|asking_price , so|then? what|how_much do|would|will|did|could i|we make|clear|get|net|pocket|earn on_it|off_it|from_it? $ => how much would i make on $x at $n",
  "what would i make if the desk sells for 200 => what would i make on the desk at 200":
    "^ so? a:what|how_much|whats b:3? would|will|could|do u:i|we v:3 if|when|once i_let|we_let|i_sell|we_sell|i_sold|we_sold? x:5 sells|sell|goes|go at|for n:<number> $ => $a $b would $u $v on $x at $n",
  "how much do i make when the desk sells => how much would i make on the desk at list price":
    "^ so? a:what|how_much|whats b:3? would|will|could|do u:i|we v:3 if|when|once i_let|we_let|i_sell|we_sell|i_sold|we_sold? x:5 sells|sell|goes|go at|for? z:4? $ => $a $b would $u $v on $x at list price",
  "if i sell the mirror for 65 what do i make => how much would i make on the mirror at 65":
    "^ if i|we? sell|sold|let|get|list x:4 go? for|at n:<number>|list|asking , then|so? what|how_much do|would|will|did|could i|we make|clear|net|get|pocket|profit|earn|gain on|off|from? it|them|that? $ => how much would i make on $x at $n",
  "how much profit if the armoire sells for 200 => how much would i make on the armoire at 200":
    "^ how_much|what profit|money? do|would|will? i|we? make|clear|net|get|pocket|earn|be_in_it|profit? if|when x:4 sells|sold|goes|went for|at n:<number> $ => how much would i make on $x at $n",
  "found a hutch for 80, should i => should i buy a hutch for 80":
    "^ i|we? found|saw|spotted|theres|there_is|can_get|could_get|looking_at|eyeing a|an|this x:3 for|at n:<number> , should_i|should_we|worth_it|good_deal|good_buy|is_it_worth_it|do_i_buy_it|buy_it|grab_it|get_it|thoughts|yes_or_no buy|get|grab|take? it? $ => should i buy a $x for $n",
  "nurse offers 60 for the mirror, take it? => someone offered 60 for the mirror should i take it":
    "^ the|my|a? w:1 offers|offered|is_offering|offering|will_give|would_give|wants_to_pay|says me? n:<number> for|on x:4 ,,? should_i|take_it|do_i_take_it|yes_or_no|good_enough|accept take|accept|do? it|that? $ => someone offered $n for $x should i take it",
  "whats my break even price on #28 => what do i have in #28":
    "^ whats|what_is|what_was? the|my? break_even|breakeven price|point|number? on|for|of x:4 $ => what do i have in $x",
  "whats my floor on #28 => lowest i should take for #28":
    "^ whats|what_is my|the floor price? on|for x:4 $ => lowest i should take for $x",
});
