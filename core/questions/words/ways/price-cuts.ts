import { waysOf } from "../../plainer.ts";

/** Prices that came down, and all that was ever asked for a piece. */
export const OF_PRICE_CUTS = waysOf({
  "which piece did i drop the most => which piece had the most price cuts":
    "which|what p:piece|pieces|one|ones|thing|item|kind|listing did|have|has|ive|we i|we? <cuts> in|the|its? price? the|by_the w:most|least => which $p had the $w price cuts",
  "whats the most i ever cut a price by => whats biggest price cut":
    "the? most|largest|biggest {i|we|ive|weve|have|did|ever} <cuts> a|any|the|my? price|anything|something|piece|one? by|down|off? $ => biggest price cut",
  "biggest drop in price => biggest price cut":
    "w:biggest|largest|smallest|highest|lowest single|one? drop|cut|reduction|markdown|mark_down|decrease in|on|of|to|from price|a_price|list_price|asking_price|my_prices => $w price cut",
  "biggest price drop i made => biggest price cut":
    "w:biggest|largest|smallest|highest|lowest single|one? price drop|cut|reduction|markdown|mark_down|decrease that? i|we|ive|weve have|ever? made|gave|did|given|done => $w price cut",
  "total i took off prices in october => total price cuts in october":
    "total|how_much|how_much_in_total {i|we|did|have|was|were} <cuts> off|from|down? the|my? prices|list_prices|asking_prices => total price cuts",
  "how much did i knock off the desk in total => total price cuts on the desk":
    "how_much did|have|was|has|ive|total i|we? been? <cuts> off|from|down? of|from|on? price|list_price|asking_price|the_price? of|on|from? x:4 in_total|total|all_told|altogether|all_together|in_all $ => total price cuts on $x",
  "price history on #31 => prices asked over time for #31":
    "price|prices|list_price|asking_price|pricing|listing history|changes|over_time of|on|for? x:5 $ => prices asked over time for $x",
  "all the prices ive had on the desk => prices asked over time for the desk":
    "all|what|every the|were|was|have_been? price|prices|asking_prices|list_prices {that|i|we|ive|weve|it|its|have|has|did} had|asked|set|put|tried|been|been_at on|for|of|with? x:5 $ => prices asked over time for $x",
  "what have i had the desk listed at => prices asked over time for the desk":
    "what|which|whats prices|price? have|has|ive i|we|it? had|been|got|put? x:4 listed|up|posted|priced at|for $ => prices asked over time for $x",
  "what have i listed the desk at => prices asked over time for the desk":
    "what|which prices? have i|we listed|posted|priced|asked_for x:4 at|for? $ => prices asked over time for $x",
  "how much was #24 listed at before the last drop => how much was #24 asked before the drop":
    "was|were x:4 listed|asking|priced|posted|up at|for? before i|we|the|it|my|its? was|got|had? last|first|latest|newest? <cuts>|drop|cut|markdown|price_drop|reduction|price_cut it|the_price|that|its_price? $ => was $x asked before the drop",
  "what was the asking price on the trunk before it sold => what was the asking price on the trunk":
    "l:listed|asking|asking_price|list_price|price x:6 before|when it|they|i|we sold|sold_it|went|was_sold $ => $l $x",
  "how many times did the old trunk get marked down => how many price cuts on the old trunk":
    "how_many_times|how_often did|has|have|was|were x:4 get|got|been|be? <cuts>|repriced down|in_price? !n:<number> => how many price cuts on $x",
  "how far under asking do people buy => how much do i come down":
    "how_far|how_much|what_percent|what_percentage under|below|off|beneath the|my|our|full? asking|asking_price|list|list_price|ask do|does|did|have|are? people|<buyers>|folks|they {usually|typically|normally|generally|all|end_up} pay|paying|buy|buying|paid|bought|offer|get|go => how much do i come down",
  "what percent off do people usually get => how much do i come down":
    "how_much|how_far|what_percent|what_percentage off do|does|did people|<buyers>|folks|they {usually|typically|normally|generally|all|end_up} get|pay|buy|want|ask|ask_for|talk_me_down => how much do i come down",
  "how far did i come down on the sideboard => how much did i come down on the sideboard":
    "how_far d:do|did i|we come_down|go_down|drop|come_off => how much $d i come down",
  "should i lower the bookcase => should i drop the price on the bookcase":
    "^ {so|hey} should|shall <us> {maybe|just} <cuts>|bring_down|mark_down {the|my|its|down|asking|list|price|on|of|for} x:4 price? down|some|again|now|more|in_price? $ => should i drop the price on the $x",
  "is it time to drop the price on the bookcase => should i drop the price on the bookcase":
    "^ {so|is|it|time|to|do|i|we|need|have|ought|should|gotta} <cuts>|bring_down|mark_down the|my|its? price on|of|for {the|my} x:4 yet|now|again? $ => should i drop the price on the $x",
  "should the bookcase come down in price => should i drop the price on the bookcase":
    "^ so? should|shouldnt|does {the|my} x:4 {need|needs|to} come_down|go_down|be_cheaper|be_lower|be_lowered|be_marked_down in_price|a_bit|some? $ => should i drop the price on the $x",
  "lowest price ever listed in july => lowest ever listed in july":
    "w:lowest|highest|cheapest|smallest|biggest|least|most price|asking_price|list_price? that? i|we|ive|weve|ever|was_ever {have|ever} listed|posted|asked|put_up {anything|something|a_piece|a_thing|at|for|ever} =in|during|since|this|last => $w ever listed",
  "lowest list price ever => lowest ever listed":
    "w:lowest|highest|cheapest|smallest|biggest list_price|asking_price|listing|price_listed|list_prices|asking_prices ever $ => $w ever listed",
});
