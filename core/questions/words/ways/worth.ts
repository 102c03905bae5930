import { waysOf } from "../../plainer.ts";

/** Whether something was worth it, by what came of it; and what all of it is worth at its list prices. */
export const OF_WORTH = waysOf({
  "which pieces were worth my time => best pieces by the hour":
    "^ which|what p:pieces|flips|ones|things|kinds|sources|stuff were|was|are|is|have_been? worth my|our|the time|while|effort|hours|trouble $ => best $p by the hour",
  "whats the least i can sell the armoire for => how low can i go on the armoire":
    "^ so? whats|what_is the? least|lowest|minimum|min price? i|we can|could|should|would|id {afford_to} sell|let|take|go|accept t:the|my|our|#*? x:3 go? for|at? $ => how low can i go on $t $x",
  "min price for the hutch => how low can i go on the hutch":
    "^ so? whats|what_is? the|my? min|minimum|floor|bottom|rock_bottom price for|on t:the|my|our x:3 $ => how low can i go on $t $x",
  "how high should i go on a dresser => most i should pay on a dresser":
    "^ so? whats_the|what_is_the|whats_my|the|my? how_high|how_far|highest|most|max|maximum|top_dollar|where should|can|could|would|do|to|id|ill|i|we|you {should|can|could|would|i|we|you} go|bid|go_up_to|stretch|stop|stop_at|max_out|max_out_at|pay !back|home|for_it|next up? to? b:on|for|with => most i should pay $b",
  "how much should i go up to on a nightstand => most i should pay on a nightstand":
    "^ so? how_much should|can|could|would|do i|we|you go|stretch|bid up? to? b:on|for => most i should pay $b",
  "is it worth messing with yard sales => did yard sales make a profit":
    "^ so? is|was|has it|this|that been? worth <bothering> a:2? b:<many> !at|for|if t:4? $ => did $a $b make a profit $t",
  "was it worth fooling with the hutch => did the hutch make a profit":
    "^ so? was|were|has it|this|that been? worth <bothering> x:3 $ => did $x make a profit",
  "is going to yard sales worth the gas => did yard sales make a profit":
    "^ so? is|was <bothering> a:2? b:<many> worth <trouble> !at|for|if t:4? $ => did $a $b make a profit $t",
  "chairs worth the trouble => did chairs make a profit":
    "^ !is|are|was|were|so|it|has|have|what|whats|how|should|would x:3 worth <trouble> $ => did $x make a profit",
  "are church sales worth the bother this year => did church sales make a profit this year":
    "^ so? are|were|have|was|has !it x:4 been? worth <trouble>|<bothering> anymore|these_days? !at|for|if t:4? $ => did $x make a profit $t",
  "is the curb worth the trouble => did curb make a profit":
    "^ so? is the|my? x:curb|roadside|curbside|curb_stuff|thrift_store|flea_market|auction|online worth <trouble>|<bothering> !at|for|if t:4? $ => did $x make a profit $t",
  "is furniture from estate sales worth it => did furniture from estate sales make a profit":
    "^ so? is|was|are|were the|my|all? s:stuff|furniture|pieces|things|anything from|off x:3 worth <trouble> !at|for|if t:4? $ => did $s from $x make a profit $t",
  "are yard sales a waste of time => did yard sales lose money":
    "^ so? are|were|is|was x:4 just|really|kind_of|kinda? a|my? waste of my|our|the? time|money|gas|effort|energy $ => did $x lose money",
  "value of everything listed at asking => total asking on everything listed":
    "^ so? whats|what_is|the|total? total? value|worth of x:4 at <asking> $ => total asking on $x",
  "whats my stuff worth if it all goes at asking => total asking on my stuff":
    "^ so? whats|what_is|what_are|whatre|how_much_is|how_much_are|what_would|how_much_would x:5 be? worth|bring|fetch|come_to|go_for if|when|once <all> all? <goes> at|for <asking> $ => total asking on $x",
  "what are the chairs worth at list => total asking on the chairs":
    "^ so? whats|what_is|what_are|whatre|how_much_is|how_much_are x:5 worth at <asking> $ => total asking on $x",
  "what would i get if everything listed sold at asking => total asking":
    "^ so? what|how_much do|would|will|could|can i|we get|have|collect|gross|take_in|bring_in|see|end_up_with? if|when|once <all> i_have|ive_got? s:listed|posted|up|up_for_sale? all? <goes> at|for <asking> $ => total asking",
  "if it all sells at asking what do i get => total asking":
    "^ so? if|when|once <all> i_have|ive_got? listed|posted|up|up_for_sale? all? <goes> at|for <asking> , then? what|how_much do|would|will|could|can i|we get|have|collect|gross|take_in|bring_in|see|end_up_with $ => total asking",
  "what should i sell the bench for to make 100 => what price makes 100 on bench":
    "^ {so|and} what|how_much {price|do|should|would|must|have|need|i|we|to|it|ask|get|sell|list|on|for|id} {the|my} x:3 for|at {to} make|clear|net|earn|get|have n:<number> profit|on_it|off_it? $ => what price makes $n on $x",
  "what price gives me 100 profit on the bench => what price makes 100 on bench":
    "^ {so|and} what|which|how_much price {would|will|do|i|need|gives|gets|makes|give|get|make|me|us|to|for} n:<number> profit|on|off|from {on|off|from|profit|the|my} x:3 $ => what price makes $n on $x",
});
