import type { WayRow } from "../../plainer.ts";

/** Loans, supposed and asked of. */
export const OF_LOANS: readonly WayRow[] = [
  [
    "w:owe|owing|owed|left|remaining on|of|for both of_them|combined|together|put_together|of_those? $",
    "$w on both loans",
    "how much do i owe on both",
    "how much do i owe on both loans",
  ],
  [
    "interest , and|or how_much|what|whats|how_much_of_it? was|is|has_gone|went|goes|gone? to|toward|towards|in? the? principal",
    "interest and principal",
    "how much of the car payments was interest and how much principal",
    "how much of the car payments was interest and principal",
  ],
  [
    "principal , and|or how_much|what|whats|how_much_of_it? was|is|has_gone|went|goes|gone? to|toward|towards|in? the? interest",
    "principal and interest",
    "what went to principal and what to interest",
    "what went to principal and interest",
  ],
  [
    "how_much|what|whats|total|all_the more? interest {i|we} will|ill|well|am_i|are_we {i|we|still|yet|end|up|be|going|to|gonna|have|more} pay|paying|owe",
    "interest until it is gone",
    "how much interest will i still pay on the truck",
    "interest until it is gone on the truck",
  ],
  [
    "how_much|whats? more? interest is|s? left|remaining|to_come|ahead to_pay|to_go?",
    "interest until it is gone",
    "interest left on the truck",
    "interest until it is gone on the truck",
  ],
  [
    "how_much|what will x:4 cost me|us in interest",
    "interest until it is gone on $x",
    "what will the truck cost me in interest",
    "interest until it is gone on the truck",
  ],

  [
    "^ which|what loan|debt is|has|s the? bigger|biggest|higher|highest|larger|largest|smaller|smallest|lower|lowest balance|amount? left|now|still? $",
    "how much is left on the loans",
    "which loan has the higher balance",
    "how much is left on the loans",
  ],
  [
    "how_much more|longer to|do_i_have_to|do_i_need_to|must_i|do_we_have_to pay|pay_off|go|send on|to|for",
    "how much is left on",
    "how much more to pay on the truck",
    "how much is left on the truck",
  ],
  [
    "save by? putting|paying|throwing|sending|dropping in|down|on|at|it|extra? n:<number>",
    "save if i pay $n",
    "how much would i save putting in 1000 now",
    "how much would i save if i pay 1000 now",
  ],
  [
    "w:balance|owe|owed|owing|outstanding|remains|remaining|left r:5 as_of? today|this_morning|tonight|at_present $",
    "$w $r",
    "how much is left on the loan as of today",
    "how much is left on the loan",
  ],
  [
    "^ how_many? months|years|payments left|to_go|remaining|till|until on|for|till|until? x:6 is|are gone|paid_off|done $",
    "how long until $x is gone",
    "how many payments until the van is paid off",
    "how long until the van is gone",
  ],
  [
    "^ how_many? months|years|payments left|to_go|remaining|till|until on|for|till|until? x:6 $",
    "how long until $x is gone",
    "months left on the van",
    "how long until the van is gone",
  ],
  [
    "^ so? how much_longer|many_more_months|many_more_payments|many_more_years do_i_have|have_i_got|is_there? on|for|with|of x:6 $",
    "how long until $x is gone",
    "how much longer on the van",
    "how long until the van is gone",
  ],
  [
    "how_much longer =until|till|til|before",
    "how long",
    "how much longer until im debt free",
    "how long until im debt free",
  ],
  [
    "is_it|would_it_be better|best|smarter to pay|pay_off|clear|kill off? the|my? w:1 loan? off? first",
    "which loan should i pay first",
    "is it better to pay off the van first",
    "which loan should i pay first",
  ],
  [
    "can <us> be d:debt_free|loan_free|out_of_debt|rid_of_it|rid_of_the_loan|rid_of_the_loans|rid_of_the_debt|rid_of_the_debts by|in|before",
    "how much a month to be $d by",
    "can i be debt free by 2029",
    "how much a month to be debt free by 2029",
  ],
  [
    "what does|do|would|will paying|putting|throwing|an_extra|another? n:<number> extra|more? m:a_month t:on|to|toward|towards|at l:4 do for_me? $",
    "what if i pay $n extra $m $t $l",
    "what does 50 more a month on the van do",
    "what if i pay 50 extra a month on the van",
  ],
  [
    "what does|do|would|will paying|putting|throwing|an_extra|another? n:<number> extra|more? t:on|to|toward|towards|at l:4 do for_me? $",
    "what if i pay $n extra $t $l",
    "what would 500 on the van do",
    "what if i pay 500 extra on the van",
  ],
  [
    "if every*|it_all|all_of_it|they_all|all_of_them thats|that_is|i_have|ive? listed|up|for_sale? goes|sells|sold|went|go|sell at|for the? asking_price|list_price|full_price|asking|list",
    "if everything sold at asking",
    "what would i get if it all sells at list",
    "what would i get if everything sold at asking",
  ],
  [
    "if every*|it_all|all_of_it|they_all|all_of_them thats|that_is|i_have|ive? listed|up|for_sale? goes|sells|sold|went|go|sell !at|for",
    "if everything sold at asking",
    "what if everything sells",
    "what if everything sold at asking",
  ],
  [
    "^ i_want_to|i_wanna|lets|please|just|can_you|ok? put|send|throw|move|use|apply|pay? all|all_of|the_whole|everything|every_cent|100% {it|of_it|the|my|our|this_months|this} {profit|profits|money|earnings|month|thats_due|whats_due|i_made} to|on|onto|at|toward|towards|into the|my|our? loan|loans $",
    "what should i send to the loan",
    "send all my profit to the loan",
    "what should i send to the loan",
  ],
  [
    "^ put|send|throw|move|apply|pay it|that|them all to|on|onto|at|toward|towards|into the|my|our? loan|loans $",
    "what should i send to the loan",
    "put it all on the loan",
    "what should i send to the loan",
  ],
];
