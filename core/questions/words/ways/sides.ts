import { waysOf } from "../../plainer.ts";

/** What is asked of the running stretch of time beside another one, which asks for nothing before it. */
const DEED = "^ d:did_i|did_we|have_i|have_we w:1 m:more|fewer|less !in n:2? than i_did|we_did?";
const FIGURE =
  "^ b:is|are p:my|our? f:profit|profits|sales|spending|costs|fees|income|takings|revenue going?";
const GOING = "{doing|going|running|still|now|currently|way|already|any|even}";
const WHO = "^ a:am_i|are_we|was_i|were_we|did_i|did_we|have_i|have_we";
/** A stretch of time comes, whatever of it is said first: "where i was last month". */
const THEN = "where|what|how? <us>? was|were|made|did|stood? at? in? =<stretch>";
const WAY = "^ am_i|are_we doing? up_or_down|down_or_up|better_or_worse";

export const OF_SIDES = waysOf({
  "cash profit minus card profit => cash profit versus card profit":
    "^ a:3 q:profit|revenue|sales|net|spending|hours|miles|fees minus|less b:3 =profit|revenue|sales|net|spending|hours|miles|fees => $a $q versus $b",
  "april net minus may => april net versus may":
    "q:profit|revenue|sales|net|spending|hours|miles|fees minus|less =<month> => $q versus",
  "gas minus storage this year => gas versus storage this year":
    "^ !profit|revenue|sales|net|made|spending|spent|everything|all|expenses|costs|income a:1 minus b:1 t:3? $ => $a versus $b $t",
  "mom vs dad purchases => mom vs dad paid for pieces":
    "^ a:1 j:vs|versus|or|against b:1 purchases|buying|buys $ => $a $j $b paid for pieces",
  "dads purchases versus moms purchases => dads versus moms paid for pieces":
    "^ a:1 purchases|buys j:vs|versus|or|against b:1 purchases|buys $ => $a $j $b paid for pieces",
  "purchases: mom or dad => mom or dad paid for pieces which":
    "^ purchases|buys , a:1 j:vs|versus|or b:1 $ => $a $j $b paid for pieces which",
  // Whoever asks, beside somebody else.
  "who spent more, me or dad => who spent more, myself or dad":
    "me|myself j:or|and|vs|versus|against|compared_to !i|we|did|do|what|how !<asks> p:1 => myself $j $p",
  "who spent more, dad or me => who spent more, dad or myself":
    "p:1 j:or|vs|versus|against|compared_to|and me|myself !<any> $ => $p $j myself",
  "dad vs me, pieces bought => dad vs myself, pieces bought":
    "p:1 j:vs|versus|against|compared_to me|myself => $p $j myself",
  "what did dad and i buy => what did dad and myself buy":
    "p:<kin> j:and|or|n i|me|myself =<any> => $p $j myself",
  "did i or dad buy more => did myself or dad buy more":
    "did|have|has i j:and|or p:<kin> => did myself $j $p",
  "did i spend much compared to dad => did myself spend much compared to dad":
    "^ did|do|have i r:6 , compared_to|against|versus|vs p:<kin> $ => did myself $r compared to $p",
  "how much did i spend compared to dad => how much did myself spend compared to dad":
    "^ q:how_much|how_many w:3? did|have i r:6 , compared_to|against|versus|vs p:<kin> $ => $q $w did myself $r compared to $p",
  "did dad buy more than me => did dad buy more than myself":
    "q:more|less|fewer|better|worse x:2? than me|i|i_did|myself $ => $q $x than myself",
  "did i spend more than dad on paint => did myself spend more than dad on paint":
    "^ did|do|have i w:1 q:more|less|fewer|better|worse x:2? than|compared_to p:<kin> did? => did myself $w $q $x than $p",
  "are my sales up => is sales more this month than last month":
    "^ <be> my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue up|higher|growing $ => is $f more this month than last month",
  "are sales down => is sales less this month than last month":
    "^ <be> my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue down|lower|falling|shrinking $ => is $f less this month than last month",
  "is spending down this month => is spending less this month than last month":
    "^ <be> my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue down|lower this u:<unit> $ => is $f less this $u than last $u",
  "did i sell more than last month => did i sell more this month than last month": `${DEED} last u:<unit> $ => $d $w $m $n this $u than last $u`,
  "did i make more than in 2025 => did i make more this year than 2025": `${DEED} in? y:<year> $ => $d $w $m $n this year than $y`,
  "are sales up on last month => are sales more than last month": `${FIGURE} up <against> ${THEN} => $b $p $f more than`,
  "is my profit down from june => is my profit less than june": `${FIGURE} down <against> ${THEN} => $b $p $f less than`,
  "am i ahead of where i was last month => am i doing better than last month": `${WHO} ${GOING} <ahead> ${THEN} => $a doing better than`,
  "is this month ahead of last month => is this month doing better than last month": `^ is p:this? w:1 ${GOING} <ahead> ${THEN} => is $p $w doing better than`,
  "are we behind last year => are we doing worse than last year": `${WHO} ${GOING} <behind> ${THEN} => $a doing worse than`,
  "is june behind last june => is june doing worse than last june": `^ is p:this? w:1 ${GOING} <behind> ${THEN} => is $p $w doing worse than`,
  "better than last month => am i doing better than last month": `^ doing? w:better|worse than ${THEN} => am i doing $w than`,
  "ahead of last month => am i doing better than last month": `^ ahead_of|beating ${THEN} => am i doing better than`,
  "behind last month => am i doing worse than last month": `^ behind ${THEN} => am i doing worse than`,
  "how does this month compare => compare this month to last month":
    "^ so? hows|how_is|how_does|how_did|how_has|whats|is this u:<unit> been? <compares> to|with|against|vs? the? last|before|last_one|one_before|previous_one|last_week|last_month|last_quarter|last_year? $ => compare this $u to last $u",
  "am i up or down => up down compare this month to last month": `${WAY} $ => up down compare this month to last month`,
  "are we up or down this year => up down compare this year to last year": `${WAY} for? this u:<unit> $ => up down compare this $u to last $u`,
  "am i up or down from last week => up down compare this week to last week": `${WAY} this_week|this_month|this_quarter|this_year? on|from|over|than|vs|versus|against|compared_to last u:<unit> $ => up down compare this $u to last $u`,
});
