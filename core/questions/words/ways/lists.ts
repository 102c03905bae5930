import { waysOf } from "../../plainer.ts";

/** What a breakdown goes by where nothing is said. */
const BREAKDOWNS = (
  [
    ["spending|expenses|expense|costs|spend", "spending", "category"],
    ["profit|profits|earnings", "profit", "kind"],
    ["sales|revenue|takings", "sales", "kind"],
    ["hours|work_hours", "hours", "kind"],
    ["other_income|side_income|side_money", "other income", "stream"],
    ["loan_payments", "loan payments", "loan"],
  ] as const
).flatMap(([words, plain, group]) =>
  waysOf({
    [`break down my ${plain} for june => ${plain} by ${group} for june`]: `^ break_down|breakdown|break_out|split_up|split_out|itemize of? my|the|our|all? x:2? ${words} t:4? $ => $x ${plain} by ${group} $t`,
    [`${plain} breakdown for june => ${plain} by ${group} for june`]: `^ my|the|our? x:2? ${words} breakdown|broken_down|split_up !by|per|into|in_to t:4? $ => $x ${plain} by ${group} $t`,
  }),
);

/** Lists and orders, of pieces, months, buyers. */
export const OF_LISTS = [
  ...BREAKDOWNS,
  ...waysOf({
    "how much stuff do i still have => what is unsold":
      "^ so? how_much of_my|of_the|of_our? stuff|furniture|junk do|have|is|has i|we? still? got|have|left|here|unsold {still|left|unsold|here|sitting|around|right_now|now|at_home|in_the_garage} $ => what is unsold",
    "quickest flip i did => quickest flip":
      "o:best|worst|quickest|fastest|slowest|biggest|smallest|priciest|cheapest|highest|lowest w:flip|flips|deal|sale|sales|buy|buys|purchase|find|one that? i|ive|we|weve ever? did|done|made|had|pulled_off|scored {ever} => $o $w",
    "how many receipts for sandpaper => how many times did i buy sandpaper":
      "how_many receipts|bills|fill_ups|fillups for|of => how many times did i buy",
    "returned pieces => which pieces came back":
      "^ returned|refunded pieces|stuff|things|items|ones => which pieces came back",
    "which ones lost money => which pieces lost money":
      "^ which_ones =lost|lose|made|make|cleared|earned => which pieces",
    "did profits go up this month => is profits more this month than last month":
      "^ did|have|has my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue go|gone|went up|higher this u:<unit> $ => is $f more this $u than last $u",
    "list my costs => list expenses":
      "^ list|show|show_me|give_me {me|all|of|out|my|our|the} costs in|for|from? t:1? $ => list expenses $t",
    "list my losses in june => which pieces lost money in june":
      "^ list|show|show_me|what_were {my|our|the|all|any} losses|loss t:3? $ => which pieces lost money $t",
    "any losses this year => did any pieces lose money this year":
      "^ any|did_i_have_any|have_i_had_any|did_we_have_any losses t:3? $ => did any pieces lose money $t",
    "how many different people bought from us this year => how many buyers have i had this year":
      "^ how_many different|distinct|separate|unique people|buyers|customers|clients|folks have|did? {bought|buy|buying|have|had|we|i|from|us|me|so_far|ever|sold|sell|to} t:3? $ => how many buyers have i had $t",
    "which piece was the stain for => list stain":
      "^ which|what piece|pieces was|were|is|did the|that|our|my? x:2 for|go_to|go_on|go_into|go_toward|used_on|used_for $ => list $x",
    "what sold when => list sales": "^ what|which sold when|and_when $ => list sales",
    "got a mirror => do i have any mirror":
      "^ got a|an|any !tips|sales|returns|refunds|money|deposits|interest|fees|buyers|loans|notes => do i have any",
    "busiest month for sales => busiest month":
      "busiest u:<unit>|day for|in|of|with sales|selling|business => busiest $u",
    "given any away => given away any": "v:given|gave a:any|anything|some away => given away $a",
    "kept any for myself => kept any": "v:keep|kept|keeping x:3 for myself|ourselves|me|us => $v $x",
    "kept any => have i kept any":
      "^ v:kept|sold|bought|trashed|scrapped|donated|tossed|junked|given_away|gave_away|finished|listed|started a:any|anything => have i $v $a",
    "have i kept any => have i kept anything":
      "^ have|did i|we {ever} v:kept|sold|bought|trashed|scrapped|donated|tossed|junked|given_away|finished|listed|started any $ => have i $v anything",
    "freebies from the curb => list free pieces from the curb":
      "^ my|the|any|all? freebies|freebees => list free pieces",
    "list how many pieces i sold by kind => how many pieces i sold by kind":
      "^ list|show|tell|give me|us|out? h:how_many|how_much => $h",
    "which kind moves fastest => which kind sells fastest":
      "k:kind|kinds|type|types|furniture|stuff|what|which|pieces|things moves|move|goes|go|turns_over|turn_over|shifts|shift|flies o:fastest|quickest|slowest|the_fastest|the_quickest|the_slowest => $k sells $o",
    "listed the longest without selling => listed the longest unsold":
      "without|with_no|w_o selling|moving|a_sale|a_buyer|any_buyer|any_takers|a_taker|being_sold|having_sold|getting_sold|sold => unsold",
    "last week sold stuff => what sold last week":
      "^ p:last|this u:week|weeks|month|months|year|years|weekend d:sold|bought|finished|listed stuff|things|items|pieces|furniture $ => what $d $p $u",
    "anything done that i should post => what needs listing":
      "^ is_there|have_i_got|do_i_have? anything|any|whats|what|which|which_pieces|which_ones|something|pieces|stuff is|are|thats? done|finished|ready? that|which? <us> should|ought_to|have_to|need_to|could|can|must list|post|put_up|advertise|get_listed|get_posted {now|yet|still|already} $ => what needs listing",
    "who spent over 200 => which buyers spent over 200":
      "^ who|customers_who|buyers_who|customers_that|buyers_that|anyone_who has|have? spent|paid m:over|more_than|at_least|under|less_than n:<number> $ => which buyers spent $m $n",
    "do i have repeat customers => list buyers over 1 pieces":
      "^ do_i_have|have_i_got|are_there any? <repeats> <buyers> => list buyers over 1 pieces",
    "any regulars => list buyers over 1 pieces":
      "^ my|any|list|who_are_my|show? regulars $ => list buyers over 1 pieces",
    "how many losing months => how many months did i lose money":
      "how_many losing|losing_money|money_losing|bad|red u:months|weeks|days => how many $u did i lose money",
    "what did well in july => best flips in july":
      "^ what|which_ones|which|whats did|done well|good|great|the_best|real_well|really_well r:4? $ => best flips $r",
    "how many pieces a month do i sell => average pieces sell per month":
      "^ how_many x:2? a|per|each|every u:<unit> do i|we d:sell|buy|list|finish|flip $ => average pieces $d per $u",
    "how many do i buy a month => average pieces buy per month":
      "^ how_many x:2? do i|we d:sell|buy|list|finish|flip a|per|each|every u:<unit> $ => average pieces $d per $u",
    "kinds by profit => rank kinds by profit":
      "^ list|rank|show|sort|my|all|name? my|the|all? g:kinds|types|sources|buyers|customers|months|weeks|methods|places|people by r:3 $ => rank $g by $r",
    "name my top three months => what are my top three months":
      "^ name my|the|all|me? r:5 $ => what are my $r",
    "what do i spend on storage a month => how much do i spend on storage per month on average":
      "^ what|how_much do|does x:6 in|during? a|per|each|every u:<unit> $ => how much do $x per $u on average",
    "is spending up this month => is spending more this month than last month":
      "^ <be> my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue up|higher this u:<unit> $ => is $f more this $u than last $u",
    "what went on in july => what happened in july":
      "what_went_on|whats_been_going_on|what_all_happened|what_was_going_on =in|on|this|last|during|yesterday|today|over|since => what happened",
    "listed under 50 => what is listed under 50":
      "^ listed w:under|over|below|above n:<number> $ => what is listed $w $n",
    "cheapest way to pay off loans => which loan should i pay first":
      "^ cheapest|best|smartest|fastest|quickest way to pay|pay_off|pay_down|kill|clear off? the|my|our? loans|debt|debts|loan $ => which loan should i pay first",
    "what do i do this weekend => what should i do this weekend":
      "^ what do|should|can|could|shall i|we do|work_on|get_done|tackle =this_weekend|today|tomorrow|this_week|next|now|tonight|first => what should i do",
    "august expenses line by line => list august expenses":
      "^ q:8 , line_by_line|item_by_item|note_by_note|one_at_a_time|each_one_listed $ => list $q",
    "sort my months by profit => rank months by profit":
      "^ order|sort my|the|all? g:months|weeks|kinds|sources|buyers|pieces|days by => rank $g by",
    "have i had any returns => were there any returns":
      "have|did <us> had|have|get|got any w:returns|refunds => were there any $w",
    "profit by kind, break it down => profit by kind":
      ", and? split|break|divide it|that|them|this all? up|down|out $ =>",
    "profit on the stuff she bought => profit on what she bought":
      "the|all_the|all? pieces|stuff|things|ones|furniture w:he|she|they d:got|bought|found|picked_up => what $w $d",
    "who bought what => list sales": "^ who all? bought what $ => list sales",
    "expenses list for may => list expenses for may":
      "^ w:sold|bought|sales|expense|expenses|spending|purchase|purchases|buys list => list $w",
    "best spot to sell => best place to sell": "b:best|worst|top|favorite spot|spots => $b place",
    "loan payments since june, list them => list loan payments since june":
      "^ q:20 , and|please|pls|can_you? ~they|he|she|i|we|you|to|did list|show|name|give me? them|it|those|em all? {out|up|off|for_me|please|pls} $ => list $q",
    "who are my buyers => list buyers": "who are|were|r my|our|the|all_my <buyers> => list buyers",
    "how many repeat buyers do i have => how many buyers bought over 1 pieces":
      "how_many <repeats> <buyers> do_i_have|have_i_had|are_there? => how many buyers bought over 1 pieces",
    "any repeat buyers => list buyers over 1 pieces":
      "^ list|show|who_are|any? me? my|our? <repeats> <buyers> => list buyers over 1 pieces",
    "who bought at least 3 pieces => list buyers at least 3 pieces":
      "^ who|which_buyers|which_buyer|which_customers|which_customer|what_buyers|what_buyer has|all? bought|buys|took|got m:more_than|over|at_least n:<count> things|pieces|items|times? => list buyers $m $n pieces",
    "does anyone keep coming back => list buyers over 1 pieces":
      "^ does|do|did|has anyone|anybody|any_buyers|any_buyer|people keep|ever? come|comes|coming back for_more? $ => list buyers over 1 pieces",
    "kinds that make under 30 => which kinds make under 30":
      "^ g:months|weeks|days|kinds|sources|buyers|places that|which|where|who|with =i|we|ive|weve|make|made|makes|sell|sold|lose|lost|bring|brought|cost|bought|paid|spent => which $g",
    "months i sold over 500 => which months did i sold over 500":
      "^ g:months|weeks|days|kinds|sources|buyers that|where|when|in_which? <us> => which $g did i",
    "free stuff i picked up => stuff i got for free":
      "^ f:free|freebie x:1 <us> picked_up|got|found|grabbed|took|brought_home|scored => $x i got for free",
    "what did dad do => what did dad note": "^ what did p:2 do t:3? $ => what did $p note $t",
    "did dad do anything in march => did dad note anything in march":
      "^ did|has|have p:2 do|done w:anything|something|much !with|about|for => did $p note anything",
    "minutes dad logged in march => how many minutes did dad work in march":
      "^ the|total? h:minutes|mins|hours|hrs p:2 logged|clocked|put_in|recorded|worked => how many $h did $p work",
    "whats mom bought for us => whats mom bought":
      "v:bought|buy|got|found|picked_up|noted for us|me|the_shop|the_business $ => $v",
    "did i get the chest from a yard sale => did i buy the chest from a yard sale":
      "^ did <us> get|find|pick_up w:the|my|that x:3 from|at|off =<any> => did i buy $w $x from",
    "did anyone pay by check => did i sell anything by check":
      "^ did|has|does anyone|anybody|someone|any_buyer|any_buyers ever? pay|paid me|us? by|with|in|via =<method> => did i sell anything by",
    "cash or card, which do buyers use more => cash or card, which sold more":
      "which|what do|did <buyers>|people|folks|they use|pay_with|pay_by|pay_in|prefer|choose w:more|most? => which sold more",
    "what did i drop the hutch to => what was the hutch listed at":
      "what price? did <us> drop|lower|mark|reduce|reprice p:4 price? down? to => what was $p listed at",
    "how many gas receipts this year => how many times did i buy gas this year":
      "how_many w:1 receipt|receipts|fill_up|fill_ups|fillup|fillups|bills|purchases !did_i_sell => how many times did i buy $w",
    "show me the deposits i took => list deposits":
      "^ list|show me? the|my|all? deposit|deposits <us> took|take|got|have_taken|received !to_keep => list deposits",
    "deposits i took in june => list deposits in june":
      "deposit|deposits <us> took|take|got|have_taken|received !to_keep => list deposits",
    "who in the family bought most => which person bought most":
      "who_in the|my|our family|house|household => which person",
    "which of us bought more => which person bought more":
      "which_one_of_us|which_of_us|who_of_us => which person",
    "chairs other than dining ones => chairs other than dining chairs":
      "k:chairs|tables|lamps|stools|benches|bookcases|mirrors r:3? t:dining|end|coffee|side|bar|floor|rocking|office|kitchen ones => $k $r $t $k",
    "anyone buy from me more than once => list buyers over 1 pieces":
      "^ who|which|what|any|anyone|anybody <buyers>|people? {who|that|has|have|did|ever|do|i|had} bought|buy|buys|come_back|came_back|shopped|purchased {something|from|with|me|us|for|anything|a} twice|more_than_once|more_than_one|more_than_1|several_times|a_second_time|a_second_piece|second_piece|again|for_more|another x:1? $ => list buyers over 1 pieces",
    "how many people bought more than one thing => how many buyers bought over 1 pieces":
      "how_many people|<buyers> {have|has|ever|who|that} bought|buy|come_back|came_back|purchased {from|me|us} more_than_once|more_than_one|more_than_1|twice|again|several x:1? $ => how many buyers bought over 1 pieces",
    "bought in june and sold in july => pieces bought in june and sold in july":
      "^ v:bought|got|found w:in|during|before|after|since x:3 and|but|, sold =in|during|before|after|since|on|last|this => pieces $v $w $x and sold",
    "what is the nurse still going to pay => what does the nurse owe":
      "^ what|how_much is|are|will p:2 still|yet {going|to|gonna|supposed|have|has} pay|owe|bring|give|hand me|us? over? $ => what does $p owe",
    "did the nurse leave a deposit => did the nurse give a deposit":
      "leave|left|dropped_off {a|any|the|his|her|their} deposit => give a deposit",
  }),
];
