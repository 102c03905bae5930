import { waysOf } from "../../plainer.ts";

/** Figures, shares and means in words that say them plainly. */
export const OF_FIGURES = waysOf({
  "what have i lost money on => which pieces lost money":
    "^ what|which_ones have|did|do|am|are i|we ever? lost|lose|losing money on|with => which pieces lost money",
  "profit where they paid by check => profit on check sales":
    "where|when|that they|the_buyer|buyers|people|customers paid|pay|pay_me|paid_me by|with|in|via? a|an? m:<method> !for => on $m sales",
  "average profit when cash => average profit on cash sales":
    "when|where|if its|its_paid|theyre|it|they|paid|pay|paying|sold|sell|is|are|was? by|with|in|for? m:<method> !or|and => on $m sales",
  "profit when sold on the noticeboard => profit on pieces listed on the noticeboard":
    "when|where i|we|its|theyre? sold|listed|posted on =<any> => on pieces listed on",
  "which piece ate the most hours => which piece took the most hours":
    "ate|ate_up|eaten|swallowed|soaked_up|sucked_up|burned|burned_through up? the? w:most|least|fewest h:hours|time|minutes|labor => took the $w $h",

  "least profitable sale this summer => least profitable sold piece this summer":
    "w:most|least profitable|lucrative s:sale|sales|deal|deals|sell => $w profitable sold piece",
  "cheapest piece i sold at a profit => cheapest piece i sold over 0 profit":
    "w:cheapest|priciest|dearest|most_expensive|least_expensive x:4 at_a_profit|at_a_gain|for_a_profit|for_a_gain => $w $x over 0 profit",
  "priciest piece i sold at a loss => priciest piece i sold under 0 profit":
    "w:cheapest|priciest|dearest|most_expensive|least_expensive x:4 at_a_loss|for_a_loss => $w $x under 0 profit",
  "cheapest thing i bought that made money => cheapest thing i bought over 0 profit":
    "w:cheapest|priciest|dearest|most_expensive|least_expensive x:4 that|which|who {i|we|have|had|has|ive|actually|still} made|make|turned|earned money|me_money|us_money|cash|a_profit|profit on? them|it? => $w $x over 0 profit",
  "most expensive thing that lost money => most expensive thing under 0 profit":
    "w:cheapest|priciest|dearest|most_expensive|least_expensive x:4 that|which {i|we|have|had|has|ive|actually|still} lost|lose money|me_money|us_money|cash|on? => $w $x under 0 profit",
  "which buyer paid the most for one piece => highest sale":
    "which|what buyer|customer|client paid|spent|gave|pays the? most for|on one|1|a|a_single|any|any_one|a_given piece|thing|item => highest sale",
  "how long before a dresser goes usually => average days to sell dresser usually":
    "how_long {does_it|will_it|would_it|do_i_have_to|usually|normally} take|wait? till|til|until|before !the|my|our|this|that|i|we|it|they|loan|loans a|an|any? x:2 <goes> => average days to sell $x",
  "how much did i lose on losing pieces => how much did i lose on pieces under 0 profit":
    "l:on|from|off|of|for just|only|all? the|my|our|all? <losers> => $l pieces under 0 profit",
  "total profit on just the winners => total profit on pieces over 0 profit":
    "l:on|from|off|of|for just|only|all? the|my|our|all? <winners> => $l pieces over 0 profit",
  "how much did the losers cost me => profit on pieces under 0 profit":
    "how_much|what did|have|do the|my|our <losers> cost|lose|lost|set|run me|us back? => profit on pieces under 0 profit",
  "add up the losses => profit on pieces under 0 profit":
    "~profits|profit total|sum|add_up|overall|combined|what_were|what_are|whats|how_much_were up|of? all? the|my|our|all? losses !and|or|on => profit on pieces under 0 profit",
  "how much have i lost on pieces that lost money => how much have i lost on pieces under 0 profit":
    "l:on|from|off|of|for all|just|only? the|my|our|all|those? p:<pieces> that|which|where {i|we|have|had|has|ive|did} lost|lose money|me_money|us_money|cash on? them? => $l $p under 0 profit",
  "profit on pieces that made money => profit on pieces over 0 profit":
    "l:on|from|off|of|for all|just|only? the|my|our|all|those? p:<pieces> that|which|where {i|we|have|had|has|ive|did|actually} made|make|turned|earned money|me_money|us_money|cash|a_profit|profit on? them? => $l $p over 0 profit",
  "what deposit did the landlord leave => deposit from the landlord":
    "what|how_much|how_big_a|how_big_of_a deposit did x:3 leave|leave_me|give|give_me|put_down|pay|put|make => deposit from $x",
  "what percent of my first asking do i get => what percent of the first list price do i get":
    "of my|the|our? first|original|initial asking|asking_price|ask|list !price => of the first list price",
  "how much profit came off the noticeboard => how much profit from the noticeboard":
    "f:profit|money|cash|earnings has|have? came|come|comes off|out_of|off_of => $f from",
  "whats gone out this month => how much did i spend this month":
    "^ so? whats|what|how_much|money|cash money|cash? has|is? gone|went|going|goes out !of|the|to|for|on|and => how much did i spend",
  "total fees ive been hit with => total fees":
    "f:fees|fee|interest|charges|costs|expenses|commissions|bills that? i|we|ive|weve|i_have|we_have have? been|was|were|get|got|gotten|getting? <hits> with|for|by $ => $f",
  "fees i got hit with this year => fees this year":
    "f:fees|fee|interest|charges|costs|expenses|commissions|bills that? i|we|ive|weve|i_have|we_have have? been|was|were|get|got|gotten|getting? <hits> with|for|by =<any> => $f",
  "how much have i been hit with in fees => how much in fees":
    "^ so? how_much|what|total have|did|was|were|am|do? i|we have? been|get|got|gotten? <hits> with|for|by in|on? f:fees|interest|charges|commissions => how much in $f",
  "average wait til a table goes => average days to sell table":
    "wait|gap till|til|until|before a|an|any? x:3 <goes>|is_sold|gets_sold|are_sold|get_sold|is_gone|finds_a_buyer => days to sell $x",
  "on avg how many days til a table sells => on avg how many days to sell table":
    "d:days|weeks|time till|til|until|before a|an|any? x:3 <goes>|is_sold|gets_sold|are_sold|get_sold|is_gone|finds_a_buyer => $d to sell $x",
  "money in vs out in june => brought in vs spent in june":
    "money in vs|versus|against|and|or out => brought in vs spent",
  "difference between what i paid and got for the hutch => profit on the hutch":
    "difference between what <us> paid and what_i? got|sold_it|sold|made for for? x:4 $ => profit on $x",
  "how much is gas a week => how much is gas per week on average":
    "^ how_much is|are x:3 a|per|each|every u:<unit> $ => how much is $x per $u on average",
  "how many sold per source, dressers left out => how many sold per source not dressers":
    ",, the|all|all_the|any|my? x:2 left_out|excluded|not_included|not_counted|taken_out|set_aside|aside|not_in_it $ => not $x",
  "sept revenue w the refund taken off => sept revenue":
    "revenue|sales|takings|gross|proceeds|brought_in|took_in r:4? with|w|after|less|minus|net_of the|any|all? refund|refunds|return|returns taken_off|taken_out|taken_away|subtracted|deducted|out|off? $ => revenue $r",
  "what did oak stuff bring in, before costs => what did oak stuff bring in":
    "v:revenue|sales|takings|gross|brought_in|bring_in|brings_in|took_in|take_in|come_in|came_in r:4? , before any|all|the|my? costs|expenses|fees|cost|anything|taxes|tax $ => $v $r",
  "sold in june, what does it all come to => sold in june total":
    ", and|so? whats|what_does|what_did|what_do it|that|they|those|all_that|it_all|that_all all? come_to|add_up_to|work_out_to|amount_to|total $ => total",
  "chairs i sold, count em up => how many chairs i sold":
    "^ !how_many|number|count|total q:20 , ~by|per|in|wise count|how_many|quantity|qty em|them|those|it? up? for_me? $ => how many $q",
  "is 40 ok for a lamp => is 40 a good price for a lamp":
    "is n:<number> ok|okay|alright|fair|good|reasonable for => is $n a good price for",
  "money in vs money out in may => brought in vs spent in may":
    "money in vs|versus|against|and|or money out => brought in vs spent",
  "money in this month => brought in this month": "^ money|cash in =for|this|last|per|by => brought in",
  "money in => brought in": "^ money|cash in $ => brought in",
  "money in, august => brought in, august": "^ money|cash in ,, => brought in,",
  "cash out last month => spent last month": "^ money|cash out =for|this|last|per|by => spent",
  "whats money in this week => whats brought in this week":
    "w:total|much|whats|what_was|my|all|so money|cash in =for|this|last|per|by => $w brought in",
  "total money in => total brought in":
    "w:total|much|whats|what_was|my|all|so money|cash in $ => $w brought in",
  "was i up or down in may => did i make money in may": "was|were <us> up or down => did i make money",
  "tally up sales in june => total sales in june": "^ tally up? !of => total",
  "did i beat 500 in sales last month => was sales over 500 last month":
    "did|have <us> beat|beaten|top|topped|crack|cracked|pass|passed|break|broken n:<number> in|of w:sales|profit|tips|revenue => was $w over $n",
  "unsold stuff, what is it all worth => unsold stuff":
    "^ a:1 q:20 , what_is|whats|what_would|how_much_is that|it|this|all_that|it_all all? be? worth $ => $a $q",
  "what percent off do i give => how much discount do i give":
    "what %|percent|percentage off => how much discount",
  "whats my average month => average per month":
    "whats|what_is|what_was? my|our|the|an average u:month|week|year => average per $u",
  "average week profit => average per week profit": "^ average u:month|week|year => average per $u",
  "have i made my money back on the hutch => have i made money on the hutch":
    "made|make|gotten|got|get|earned|earn my|our money back on|from|with|for => made money on",
  "did i make back what i spent on the hutch => did i made money on the hutch":
    "made|make|earned|earn back what <us> spent|paid|put|have on|for|into|in => made money on",
  "broke even on the lamp? => did i made money on the lamp?":
    "^ broke|break even on !any|anything => did i made money on",
  "how much of my profit is dressers, percent => what percent of my profit is dressers":
    "how_much of q:8 , in|as_a? percent|percentage $ => what percent of $q",
  "what per cent of sales => what percent of sales": "per cent => percent",
  "whats my average per flip => average profit":
    "^ whats|what_is? my|the? a:average|avg|median per|a|for_each|each|for_a piece|flip|sale|item $ => $a profit",
  "what percent of asking do i end up with => what percent of asking do i get":
    "percent|percentage|% of the|my? <asking> do|did i|we end_up|wind_up with|getting|taking? $ => percent of asking do i get",
  "how much do i need to make 1000 this year => how far from 1000 profit am i this year":
    "how_much {more} do|must|should <us> {still} need|have to make|earn|clear|hit|reach|get_to n:<number> => how far from $n profit am i",
  "what percentage profit do i make => what is my margin":
    "^ what percent|percentage profit|gain do|did <us> make|clear|turn => what is my margin",
  "what day of the week do things sell => which weekday do i sell most":
    "what|which day|days of the? week {do|does|things|stuff|pieces} sell|sells|move => which weekday do i sell most",
  "how much gas do i burn through in a month => gas a month on average":
    "how_much x:2 do|does|did <us> burn|burn_through|go_through|use|use_up in|during? a|an|per|every|each|the? m:month|week|year $ => $x a $m on average",
  "did anything sell for less than i paid => did anything sell at a loss":
    "for? less than|then what? i|we {had|have|did|originally} paid|pay|put_in|spent {for|on|it|in|into|them} $ => at a loss",
  "what had the best return => what had the best roi":
    "b:best|highest|worst|lowest|biggest return !on|on_cost|to|i|that|visit => $b roi",
});
