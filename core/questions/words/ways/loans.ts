import { waysOf } from "../../plainer.ts";

/** Loans, supposed and asked of. */
export const OF_LOANS = waysOf({
  "how much a day are the loans costing us => how much is left on the loans":
    "^ how_much|what a|per|each|every day {is|are|do|does|am|i|we|the|my|our} loans|loan|debt|interest {cost|costs|costing|running|paying|charge|charging|me|us|in|on|interest} $ => how much is left on the loans",
  "are we on track to pay off the truck by june 2029 => will i pay off the truck by june 2029":
    "^ am|are|will i|we be? on track|pace|course|schedule|target to|for => will i",
  "could we pay off the truck by 2029 => will i pay off the truck by 2029":
    "^ can|could i|we pay_off => will i pay off",
  "can i be done with the truck by next june => can i be done with the truck by june":
    "^ w:can|could|will|would|how_much_a_month x:9 by|before next m:<month>|spring|summer|fall|autumn|winter $ => $w $x by $m",
  "how much do i owe on both => how much do i owe on both loans":
    "w:owe|owing|owed|left|remaining on|of|for both of_them|combined|together|put_together|of_those? $ => $w on both loans",
  "how much of the car payments was interest and how much principal => how much of the car payments was interest and principal":
    "interest , and|or how_much|what|whats|how_much_of_it? was|is|has_gone|went|goes|gone? to|toward|towards|in? the? principal => interest and principal",
  "how much interest will i still pay on the truck => interest until it is gone on the truck":
    "how_much|what|whats|total|all_the more? interest {i|we} will|ill|well|am_i|are_we {i|we|still|yet|end|up|be|going|to|gonna|have|more} pay|paying|owe => interest until it is gone",
  "interest left on the truck => interest until it is gone on the truck":
    "how_much|whats? more? interest is|s? left|remaining|to_come|ahead to_pay|to_go? => interest until it is gone",
  "what will the truck cost me in interest => interest until it is gone on the truck":
    "how_much|what will x:4 cost me|us in interest => interest until it is gone on $x",

  "which loan has the higher balance => how much is left on the loans":
    "^ which|what loan|debt is|has|s the? bigger|biggest|higher|highest|larger|largest|smaller|smallest|lower|lowest balance|amount? left|now|still? $ => how much is left on the loans",
  "how much more to pay on the truck => how much is left on the truck":
    "how_much more|longer to|do_i_have_to|do_i_need_to|must_i|do_we_have_to pay|pay_off|go|send on|to|for => how much is left on",
  "how much would i save putting in 1000 now => how much would i save if i pay 1000 now":
    "save by? putting|paying|throwing|sending|dropping in|down|on|at|it|extra? n:<number> => save if i pay $n",
  "how much is left on the loan as of today => how much is left on the loan":
    "w:balance|owe|owed|owing|outstanding|remains|remaining|left r:5 as_of? today|this_morning|tonight|at_present $ => $w $r",
  "how many payments until the van is paid off => how long until the van is gone":
    "^ how_many? months|years|payments left|to_go|remaining|till|until on|for|till|until? x:6 is|are gone|paid_off|done $ => how long until $x is gone",
  "months left on the van => how long until the van is gone":
    "^ how_many? months|years|payments left|to_go|remaining|till|until on|for|till|until? x:6 $ => how long until $x is gone",
  "how much longer on the van => how long until the van is gone":
    "^ so? how much_longer|many_more_months|many_more_payments|many_more_years do_i_have|have_i_got|is_there? on|for|with|of x:6 $ => how long until $x is gone",
  "how much longer until im debt free => how long until im debt free":
    "how_much longer =until|till|til|before => how long",
  "is it better to pay off the van first => which loan should i pay first":
    "is_it|would_it_be better|best|smarter to pay|pay_off|clear|kill off? the|my? w:1 loan? off? first => which loan should i pay first",
  "can i be debt free by 2029 => how much a month to be debt free by 2029":
    "can <us> be d:debt_free|loan_free|out_of_debt|rid_of_it|rid_of_the_loan|rid_of_the_loans|rid_of_the_debt|rid_of_the_debts by|in|before => how much a month to be $d by",
  "what does 50 more a month on the van do => what if i pay 50 extra a month on the van":
    "what does|do|would|will paying|putting|throwing|an_extra|another? n:<number> extra|more? m:a_month t:on|to|toward|towards|at l:4 do for_me? $ => what if i pay $n extra $m $t $l",
  "what would 500 on the van do => what if i pay 500 extra on the van":
    "what does|do|would|will paying|putting|throwing|an_extra|another? n:<number> extra|more? t:on|to|toward|towards|at l:4 do for_me? $ => what if i pay $n extra $t $l",
  "what would i get if it all sells at list => what would i get if everything sold at asking":
    "if every*|it_all|all_of_it|they_all|all_of_them thats|that_is|i_have|ive? listed|up|for_sale? goes|sells|sold|went|go|sell at|for the? asking_price|list_price|full_price|asking|list => if everything sold at asking",
  "what if everything sells => what if everything sold at asking":
    "if every*|it_all|all_of_it|they_all|all_of_them thats|that_is|i_have|ive? listed|up|for_sale? goes|sells|sold|went|go|sell !at|for => if everything sold at asking",
  "send all my profit to the loan => what should i send to the loan":
    "^ i_want_to|i_wanna|lets|please|just|can_you|ok? put|send|throw|move|use|apply|pay? all|all_of|the_whole|everything|every_cent|100% {it|of_it|the|my|our|this_months|this} {profit|profits|money|earnings|month|thats_due|whats_due|i_made} to|on|onto|at|toward|towards|into the|my|our? loan|loans $ => what should i send to the loan",
  "put it all on the loan => what should i send to the loan":
    "^ put|send|throw|move|apply|pay it|that|them all to|on|onto|at|toward|towards|into the|my|our? loan|loans $ => what should i send to the loan",
  "how much was my last payment => how much was my last loan payment":
    "w:last|latest|first|biggest|largest|smallest|lowest|highest|average|avg|total|how_many|number_of|recent p:payment|payments !left|remaining|to_go|till|until|on|to|from|for|by|i|do|are|method|methods|toward|towards => $w loan $p",
  "payments by month => loan payments by month":
    "^ p:payments =by|per|since|this|last|in|each|every|<stretch> => loan $p",
  "did i make a payment on the van in may => did i pay on the van in may":
    "s:did|have|has u:<us> {ever} make|made|send|sent {a|any|my|our|another|some|loan} payment|payments to|on|toward|towards => $s $u pay on",
  "did we make any payments in may => did we pay the loan in may":
    "s:did|have|has u:<us> {ever} make|made|send|sent {a|any|my|our|another|some|loan} payment|payments !from|for|by => $s $u pay the loan",
  "car loan knocked down by how much => principal paid on the car loan":
    "^ {so|whats|what|how_much|has|have|is} the|my|our? x:1 l:loan|debt is|has|been|got|gotten? knocked|chipped|whittled|gone|come|went down|away|off? {so_far|by|how_much|already|to_date} $ => principal paid on the $x $l",
  "how much have i chipped off the van loan => principal paid on the van loan":
    "how_much did|have|has|is i|we|ive? {i|we|have|ever} knock|knocked|chip|chipped|whittle|whittled|shave|shaved|take|taken off|down|away|from the|my|our? x:1 l:loan|debt => principal paid on the $x $l",
  "how much has the van loan gone down since may => principal paid on the van loan since may":
    "how_much has|did the|my|our? x:1 l:loan|debt gone|go|come|dropped|shrunk|fallen|went down? =so_far|since|in|this|last|by|already|to_date => principal paid on the $x $l",
});
