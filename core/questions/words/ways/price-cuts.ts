import type { WayRow } from "../../plainer.ts";

/** Prices that came down, and all that was ever asked for a piece. */
export const OF_PRICE_CUTS: readonly WayRow[] = [
  [
    "how_many_times|how_often did|have|has|had|ive? i|we? ever|had|to? <cuts> the|a|my|an|any? price|prices|list_price|asking_price? on|of|for|down?",
    "how many price cuts on",
    "how many times did i drop the price on the desk",
    "how many price cuts on the desk",
  ],
  [
    "which|what p:piece|pieces|one|ones|thing|item|kind|listing did|have|has|ive|we i|we? <cuts> in|the|its? price? the|by_the w:most|least",
    "which $p had the $w price cuts",
    "which piece did i drop the most",
    "which piece had the most price cuts",
  ],
  [
    "the? most|largest|biggest {i|we|ive|weve|have|did|ever} <cuts> a|any|the|my? price|anything|something|piece|one? by|down|off? $",
    "biggest price cut",
    "whats the most i ever cut a price by",
    "whats biggest price cut",
  ],
  [
    "w:biggest|largest|smallest|highest|lowest single|one? drop|cut|reduction|markdown|mark_down|decrease in|on|of|to|from price|a_price|list_price|asking_price|my_prices",
    "$w price cut",
    "biggest drop in price",
    "biggest price cut",
  ],
  [
    "w:biggest|largest|smallest|highest|lowest single|one? price drop|cut|reduction|markdown|mark_down|decrease that? i|we|ive|weve have|ever? made|gave|did|given|done",
    "$w price cut",
    "biggest price drop i made",
    "biggest price cut",
  ],
  [
    "total|how_much|how_much_in_total {i|we|did|have|was|were} <cuts> off|from|down? the|my? prices|list_prices|asking_prices",
    "total price cuts",
    "total i took off prices in october",
    "total price cuts in october",
  ],
  [
    "how_much did|have|was|has|ive|total i|we? been? <cuts> off|from|down? of|from|on? price|list_price|asking_price|the_price? of|on|from? x:4 in_total|total|all_told|altogether|all_together|in_all $",
    "total price cuts on $x",
    "how much did i knock off the desk in total",
    "total price cuts on the desk",
  ],
  [
    "price|prices|list_price|asking_price|pricing|listing history|changes|over_time of|on|for? x:5 $",
    "prices asked over time for $x",
    "price history on #31",
    "prices asked over time for #31",
  ],
  [
    "all|what|every the|were|was|have_been? price|prices|asking_prices|list_prices {that|i|we|ive|weve|it|its|have|has|did} had|asked|set|put|tried|been|been_at on|for|of|with? x:5 $",
    "prices asked over time for $x",
    "all the prices ive had on the desk",
    "prices asked over time for the desk",
  ],
  [
    "what|which|whats prices|price? have|has|ive i|we|it? had|been|got|put? x:4 listed|up|posted|priced at|for $",
    "prices asked over time for $x",
    "what have i had the desk listed at",
    "prices asked over time for the desk",
  ],
  [
    "what|which prices? have i|we listed|posted|priced|asked_for x:4 at|for? $",
    "prices asked over time for $x",
    "what have i listed the desk at",
    "prices asked over time for the desk",
  ],
  [
    "was|were x:4 listed|asking|priced|posted|up at|for? before i|we|the|it|my|its? was|got|had? last|first|latest|newest? <cuts>|drop|cut|markdown|price_drop|reduction|price_cut it|the_price|that|its_price? $",
    "was $x asked before the drop",
    "how much was #24 listed at before the last drop",
    "how much was #24 asked before the drop",
  ],
  [
    "l:listed|asking|asking_price|list_price|price x:6 before|when it|they|i|we sold|sold_it|went|was_sold $",
    "$l $x",
    "what was the asking price on the trunk before it sold",
    "what was the asking price on the trunk",
  ],
  [
    "how_many_times|how_often did|has|have|was|were x:4 get|got|been|be? <cuts>|repriced down|in_price? !n:<number>",
    "how many price cuts on $x",
    "how many times did the old trunk get marked down",
    "how many price cuts on the old trunk",
  ],
];
