import { waysOf } from "../../plainer.ts";

/** What a profit has in it already: taking it off again would count it twice. */
const COSTS =
  "{my|our|the|all|and|booth|gas|rent|supplies|materials|supply|fees|fee|costs|cost|expenses|overhead|storage|ads|miles|mileage|driving|paint|everything|bills|n|of|other|it|paying|taking|off|out|for}";
const GENERIC = "things|stuff|pieces|items|furniture|anything|ones|everything";

/** Books in the words of those who keep them: cost of goods sold, inventory, what is taken off, lists with a column. */
export const OF_BOOKKEEPING = waysOf({
  "cogs in october => cost of sold pieces in october": "cogs => cost of sold pieces",
  "ending inventory => tied up":
    "my|the|our? year_end|ending|closing|current|remaining|final inventory|stock !price|value => tied up",
  "bought vs sold in june => how many pieces bought versus how many sold in june":
    "^ {what|are|my|the|our|pieces|items|things|how_many|did|i|we} a:bought|buy|purchased|purchases|sold|sell|sales|listed|finished|list|finish vs|versus|against|compared_to {pieces|items|things|how_many|did|i|we} b:bought|buy|purchased|purchases|sold|sell|sales|listed|finished|list|finish t:4? $ => how many pieces $a versus how many $b $t",
  "what is left after rent and gas in june => what is made in june": `q:profit|made|make|earned|left|left_over|cleared|clear|net|remains p:4? after|minus|less !than ${COSTS} t:4? $ => made $p $t`,
  "sales minus gas => sales versus spent on gas":
    "^ p:sales|revenue|takings|income|proceeds minus|less|after|versus|take_away|net_of !than x:3 t:4? $ => $p versus spent on $x $t",
  "how much of what i made went to gas => how much went to gas":
    "how_much of what|the_money|the_profit|the_sales|my_sales|everything|that {i|we|have|did|has|that} made|make|earned|brought_in|took_in|sold|sales|profit|money went|goes|go|gets_eaten|was_spent to|on|into|toward|towards|by => how much went to",
  "pieces bought under 20 that sold over 40 => what did i buy for under 20 and sell for over 40": `^ {list|show|the|all|my|any|which|me} p:${GENERIC} {that|was|were|i|we|had|have|ive|weve} a:bought|purchased {for} w:over|under|below|above|less_than|more_than n:<number> {bucks|dollars|and|that|but|i|we|which|then|got} b:sold|went|sell {for} v:over|under|below|above|less_than|more_than m:<number> => what did i buy for $w $n and sell for $v $m`,
  "what doubled my money => pieces with roi over 100":
    "d:what|which|which_pieces|anything|things|pieces|list|show {that|i|have|has|did} doubled|tripled|2x|doubled_up {in|my|our|its|their|the|money|value|price|what|i|we|paid|cost|on} $ => pieces with roi over 100",
  "which pieces made over 100% => which pieces with roi over 100%":
    "made|make|makes|earned|cleared|returned {a|profit|of|me|us} w:over|more_than|at_least|above|under|less_than|below n:<percent> => with roi $w $n",
  "what sold the same week i bought it => what sold in less than 7 days":
    "within|in|the|that? same u:day|week {that|as|when|after} i|we? {got|bought|buying|picked|found|it|them|up|was|were} $ => in less than 7 days",
  "whats taking forever => what has been here longest":
    "^ so? whats|what_is|what_has_been|anything|whats_been taking|been_taking|took|sitting|been|been_here forever|ages|too_long|so_long|the_longest_time|way_too_long $ => what has been here longest",
  "what havent i touched in a while => what has been here longest":
    "^ what|which_pieces|what_pieces have|havent|havent_i|have_i|havent_we|have_we {i|we|not|never} touched|worked_on|looked_at|messed_with|done_anything_with {in|for|a|while|long|time|ages|forever|recently|lately|yet} $ => what has been here longest",
  "which pieces need a price => which pieces need listing":
    "n:need|needs|needing a|an|its|their? price|prices|pricing|price_tag|price_on_it|pricing_up|to_be_priced !drop|cut|change|reduction|lowered|drops|cuts => $n listing",
  "lowest i can take on the nightstand => break even on the nightstand":
    "^ lowest|least|minimum|rock_bottom|bottom {price|amount|that} i|we? {can|could|should|take|accept|sell|let|go|get|ask} on|for =<any> => break even on",
  "why did i lose money in november => how did november go":
    "^ why|how_come|whyd|what_happened|what_went_wrong {did|was|is|were|am|are|have|has|i|we|my|our|sales|profit|profits|the|so|such|lose|lost|losing|make|made|making|do|money|little|much|less|bad|badly|low|poor|slow|down|a|an|month|with} in|with|for|on? m:<month>|last_month|this_month|this_year|last_week|this_week {so|such|a|bad|low|slow|down|poor|good|high|terrible|awful|rough|month|up} $ => how did $m go",
  "why did i lose money on the trunk => how did the trunk do":
    "^ why|how_come {did|do|was|is|i|we} lose|lost|losing|loss|make_so_little|make_nothing|made_so_little|made_nothing {money|so|much} on|with|from x:4 $ => how did $x do",
  "everything the nurse bought and for how much => list everything the nurse bought":
    "^ {list|show|me|the|all} !who|which|when|where|how|did|do x:8 , and|with|plus {the|their|its|my} for_how_much|at_what_price|prices|amounts|dates|date|how_much|when|days|what_day|what_for|what_price|price {each|they|i|it|was|were|paid|got|sold|for} $ => list $x",
  "show what i sold with profits => profit by piece on sold pieces":
    "^ {list|show|me|the|all} {what|everything|pieces|things|stuff|that|i|we|have|ive|all} d:sold , and|with|plus {with|the|their|my|its|what|i|each} profit|profits|margin|made|earned {on|each|them|it|i|of} $ => profit by piece on sold pieces",
  "list sales biggest first => sales highest to lowest":
    "^ {list|show|me|the|my|all|everything|what|i|we} s:sales|sold|pieces|flips|purchases|bought , by|from|in? {price|the|order} biggest|largest|highest|priciest|most_expensive first|to_lowest|to_smallest|on_top|to_cheapest => $s highest to lowest",
  "which one did i sink the most into => which piece did i sink the most into":
    "^ which_one =did|have|has|cost|costs|took|takes|made|makes|sold|lost|brought => which piece",
  "what did the desk put in my pocket => what did the desk make":
    "has|have|did? put|puts|putting|stuck money|cash|anything? in|into my|our pocket|pockets => make",
  "when does ellen usually buy => what did ellen buy":
    "^ when does|do x:2 usually|normally|typically|generally? buy|come_buy|shop {from|me|us|stuff|things} $ => what did $x buy",
  "how long does it take us to sell last month => average days to sell last month":
    "how_long does|did|do|will|would it {usually|normally|typically|generally} take|takes {us|me|for|i|we|you} to sell|move|flip {it|them|something|things|stuff|pieces|a_piece|one|anything} !the|my|our|it|a|an => average days to sell",
  "what percent do we keep on dressers => what is the margin on dressers":
    "what|which|whats percent|percentage|% do|did <us> {get_to|actually|end_up} keep|pocket|clear|keeping !for => what is the margin",
  "worst flip for dressers => worst flip on dressers":
    "b:best|worst|biggest|smallest|top|quickest|fastest|slowest w:flip|flips for =<any> => $b $w on",
  "best flip on cash sales => best flip in cash":
    "w:flip|flips on|from|by|in|with a|the|my? m:<method> sale|sales => $w in $m",
  "fees as percent of sales => ratio of fees versus sales":
    "p:fees|gas|rent|booth_rent|supplies|materials|ads|storage|overhead|expenses|costs|spending|paint|mileage|loan_payments|interest as a? percent|percentage|share|% of my|our|the|total? s:sales|revenue|takings|profit|income|spending|expenses => ratio of $p versus $s",
  "what percent of my sales goes to fees => ratio of fees versus sales":
    "what|whats|how_big_a|how_much? percent|percentage|share|% of my|our|the|total? s:sales|revenue|takings|profit {do|does|did|is|are|was|were|goes|go|went|gets|get|spent|eaten|up|by|lost|going|being|i|we|lose|spend|pay|for|in} to|on|toward|in? my|our|the? p:fees|gas|rent|booth_rent|supplies|materials|ads|storage|overhead|expenses|costs => ratio of $p versus $s",
  "where is all the money going this month => where does my money go this month":
    "^ where|wheres {is|does|did|has|do|all|my|our|the|that|this|of} money|cash|moneys {is|all|been|go|going} going|go|went|gone|goes {to|on|all} => where does my money go",
  "how many weeks since my last sale => how many days since my last sale":
    "how_many weeks|months {has_it_been|is_it} since => how many days since",
  "tax summary for 2026 => tax for 2026":
    "^ {my|the|our|show|me|give|get|pull_up} tax|taxes|schedule_c|tax_time summary|numbers|report|info|figures|totals|stuff|recap|overview => tax",
  "whats everything worth => total asking":
    "^ whats|what_is|hows_much_is|how_much_is|value_of|worth_of|total_value_of {all|the|of|my|our} everything|whats_left|what_is_left|remaining_stuff|unsold_stuff|stuff_left|stuff_thats_left|it_all {left|here|unsold|i|we|have|still|got} worth? {now|all_together|altogether} $ => total asking",
  "my very first flip => my first flip": "very =first|last|latest|best|worst|oldest|newest =>",
  "stuff ready to sell => what needs listing":
    "^ what|which|whats|stuff|things|pieces|anything|everything {is|are|thats|do_i_have|pieces|that|stuff} ready {to} sell|go|sale $ => what needs listing",
  "hutch start to finish how long => how long did hutch take":
    "x:3 start_to_finish , how_long $ => how long did $x take",
  "what percent goes to fees => ratio of fees versus sales":
    "^ what percent|percentage|% {is|are|goes|went|of|it|gets|eaten|up|by|lost} to|by p:fees|gas|rent|booth_rent|supplies|materials|ads|storage|overhead|expenses|costs => ratio of $p versus sales",
  "the most i ever got => highest sale":
    "^ {whats|what_is|the} most|highest|best {that|i|we|ive|weve|have|ever} got|gotten {for|a|one|any|piece|flip|thing|something|single} $ => highest sale",
});
