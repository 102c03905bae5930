import { waysOf } from "../../plainer.ts";

/** What is said behind a question and asks nothing. */
const SIGHS =
  "ugh|argh|sheesh|oof|yikes|whew|phew|dang|darn|geez|jeez|gosh|sigh|smh|lol|lmao|lmfao|rofl|omg|tho|though|asap|haha|hehe|meh|eh|huh|btw|real_quick|rq";
const FREE_OF =
  "{the|any|all|that|my|our|taking|subtracting|deducting|giving|paying|handing|off|out|back|away}";

/** Counts told otherwise than by "how many", a piece by its bare number, and tails that ask nothing. */
export const OF_COUNTS = waysOf({
  "whats not been started yet ugh => whats not been started yet": `, ${SIGHS} {${SIGHS}} $ =>`,
  "# of sales in cash => how many sales in cash": "^ # of => how many",
  "which pieces did i pay for by card => which pieces did i buy by card":
    "^ which pieces|ones|items|furniture|things? did|have <us> pay|paid for? by|with|via|on|in? a|the|my? m:<method> for? $ => which pieces did i buy by $m",
  "pieces buyers paid for by card => pieces sold by card":
    "p:pieces|things|items|ones|furniture that? the|my? <buyers>|people paid for? by|in|with|via|on? a? m:<method> for? => $p sold by $m",
  "pieces paid for in cash by buyers => pieces sold by cash":
    "p:pieces|things|items|ones|furniture that? were|was|got? paid for? by|in|with|via|on? a? m:<method> by the|my? <buyers>|people => $p sold by $m",
  "would 30 be ok for a nightstand => is 30 ok for a nightstand":
    "^ so? would|wd n:<number> be =ok|okay|alright|fair|good|reasonable => is $n",
  "120 for a lamp, should i => should i buy a lamp for 120":
    "^ n:<number> bucks|dollars? for|on a|an x:3 , should_i|should_we|worth_it|good_deal|good_buy|is_it_worth_it|do_i_buy_it|buy_it|grab_it|get_it|thoughts|yes_or_no buy|get|grab? it? $ => should i buy a $x for $n",
  "a lamp for 20, should i => should i buy a lamp for 20":
    "^ a|an x:3 for|at n:<number> , should_i|should_we|good_deal|good_buy|buy_it|grab_it|thoughts|yes_or_no buy|get|grab? it? $ => should i buy a $x for $n",
  "by what percent do i come down on lamps => how much do i come down on lamps":
    "by? what|how_many percent|percentage|% d:do|did <us> usually|typically|normally|generally? come_down|drop_down|mark_down|drop|lower =on => how much $d i come down",
  "profit by how they paid, each method => profit by method":
    "by how !much|many|long|often x:2 paid|pay , each|every|for_each|by_each? method|way $ => by method",
  "what did june bring in after taking off the refund => what did june bring in": `v:revenue|sales|takings|gross|brought_in|bring_in|took_in|take_in|came_in|come_in r:3? , after|less|minus|net_of ${FREE_OF} refund|refunds|returns {taken|off|out} $ => $v $r`,
  "knobs and hinges all yr, total => knobs and hinges this year, total":
    "all|whole|entire|the_whole|the_entire yr|year long|round? !<year>|before|to|in|of|until|off => this year",
  "am i at 10 sales yet => have i sold 10 pieces yet":
    "^ am|are|have|did|do <us> at|hit|made|make|had|have|reached|reach|up_to|over? n:<digits> sales|flips x:4? $ => have i sold $n pieces $x",
  "what kind do i have the most of => most common kind unsold":
    "^ what|which g:kind|source of? pieces|piece|furniture|thing? do|have <us> have|got|own right_now|still|unsold? the? most unsold|pieces|left? of|from? right_now|now|unsold|still? $ => most common $g unsold",
  "what do i have the most of => most common kind unsold":
    "^ what do|have <us> have|got|own right_now|still? the? most of right_now|now|still? $ => most common kind unsold",
  "which source has the most unsold => most common source unsold":
    "^ which|what? g:kind|source has|have|with the? most|biggest_number_of unsold pieces|left|things? now? $ => most common $g unsold",
  "count by kind => how many unsold by kind":
    "^ {a|the|just} count|counts|number|headcount|tally|inventory|stock|stock_count|how_many of_pieces|pieces? by|per g:kind|type|kinds => how many unsold by $g",
  "how many pieces came in october => how many pieces did i buy in october":
    "how_many x:1? p:pieces|things|items|chairs|tables|lamps|dressers|desks came|come|arrived|showed_up in? {the|during} =<stretch>|this|last => how many $x $p did i buy in",
  "which pieces took more than a month to sell => which pieces took more than 1 month to sell":
    "m:more|less|longer than a|one w:month|week to => $m than 1 $w to",
});
