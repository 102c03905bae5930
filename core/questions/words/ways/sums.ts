import type { WayRow } from "../../plainer.ts";

/** Sums that are asked for in other words: what came in and by what, what was laid out, what a thing did. */
export const OF_SUMS: readonly WayRow[] = [
  [
    "^ !how_many|which|what|any|anything x:2 damage b:for|in|this|last|on|so_far|to_date|total",
    "how much on $x $b",
    "paint damage for september",
    "how much on paint for september",
  ],
  [
    "^ x:3 usually|typically|normally? take|takes|took how_long to go|sell|move|shift $",
    "how long do $x take to sell",
    "nightstands usually take how long to go",
    "how long do nightstands take to sell",
  ],
  ["on|for|in each|every g:category|expense", "by $g", "spent in each category", "spent by category"],
  [
    "on|for|in? each|every|by|per supply|material",
    "on materials by what",
    "what have i spent on each supply",
    "what have i spent on materials by what",
  ],
  [
    "^ how_much|what|whats has|have|did? i|we|ive|weve? have|had|has? came|come|comes|coming|in by|in_via|in_through|in_by|by|via p:payment? m:<method>",
    "how much did i bring in by $m",
    "how much came in by check",
    "how much did i bring in by check",
  ],
  [
    "^ whats|what do|does? i|we? d:sells|sell|sold the? most !in|on|to|from|by",
    "what do i sell the most of",
    "what sells most",
    "what do i sell the most of",
  ],
  [
    "paid|paying|pay|by|in|with|via|as|on a? cheque|cheques",
    "by check",
    "how much came in by cheque",
    "how much came in by check",
  ],
  ["cheque|cheques", "by check", "cheque sales", "by check sales"],
  [
    "total|whole|overall? list|asking|retail value of|for|on|at {the|my|our|all|whats|what_is|everything|unsold|listed|inventory|stock|stuff|pieces|things} $",
    "total asking",
    "list value of inventory",
    "total asking",
  ],
  [
    "w:make|made|turn|turned|earn|earned|bring_in|brought_in|clear|cleared me|us? a_bob_or_two|a_bob|a_few_bob|a_few_quid|any_quid|a_pretty_penny|a_few_bucks|a_few_dollars|a_buck|a_dime|a_penny|a_cent|good_money|decent_money|real_money|a_bit_of_money|some_cash|any_cash",
    "make money",
    "did the stools turn a bob or two",
    "did the stools make money",
  ],
  [
    "sell|sells|sold|i_sell|went with|at|for the? o:highest|lowest|best|worst|biggest|smallest price",
    "sold for the $o price",
    "which furniture i sell with highest price",
    "which furniture sold for the highest price",
  ],
  [
    "buy|buys|bought|i_buy with|at|for the? o:highest|lowest|best|biggest|smallest price",
    "bought for the $o price",
    "which furniture i buy with highest price",
    "which furniture bought for the highest price",
  ],
  [
    "purchases|purchase of inventory|stock|furniture|pieces|goods",
    "spent on buying pieces",
    "purchases of inventory this year",
    "spent on buying pieces this year",
  ],
  [
    "^ total? inventory|stock|furniture purchases|bought",
    "spent on buying pieces",
    "inventory purchases in september",
    "spent on buying pieces in september",
  ],
  [
    "^ how did|have|are|do|were <us> get|got|getting|make|made|come|came|coming on|along|out =in|with|on|this|last|for",
    "how did i do",
    "how did we get on in august",
    "how did i do in august",
  ],
  [
    "^ how did|have|are|do|were <us> get|got|getting on|along $",
    "how did i do",
    "how did we get on",
    "how did i do",
  ],
  [
    "did|do <us> do for myself|ourselves",
    "did i do",
    "how did i do for myself in june",
    "how did i do in june",
  ],
  [
    "\\$|cash|dollar|dollars|buck|bucks|penny|figures wise",
    "money wise",
    "lamps hows that $ wise",
    "lamps hows that money wise",
  ],
  [
    ", t:tips|workshops|lessons|classes|other_income|side_income|side_money|extra_income and? u:workshops|tips|lessons|classes|ads|everything? counted|added|included|thrown_in|factored_in in|on? too|also|as_well|with_it? $",
    "with $t $u",
    "made in q3, tips and workshops counted too",
    "made in q3 with tips workshops",
  ],
  [
    "with|w all? the|my t:tips|workshops|lessons|classes|side_income|other_income and? u:workshops|tips|lessons|classes|ads? added|counted|included|thrown_in in|on? too|also|as_well? $",
    "with $t $u",
    "q3 profit with all the tips and workshops added",
    "q3 profit with tips workshops",
  ],
  [
    "^ <be>? !<us>|were_we|was_i|am_i|are_we the|my|our? x:3 , up_or_down|down_or_up {overall|so_far|in_all|in_total|ever|for_me|or_what|for_us} !compare|on|from|over|than|this|last",
    "profit on $x",
    "bookcases, up or down overall",
    "profit on bookcases",
  ],
  [
    "w:most|fewest|least sales by|in number|count|quantity|volume|units|how_many",
    "$w pieces sold",
    "which month had the most sales by number",
    "which month had the most pieces sold",
  ],
  [
    "n:<number> x:6 b:for|buy|get|grab another",
    "$n $x $b a",
    "would 45 be ok to pay for another dresser",
    "would 45 be ok to pay for a dresser",
  ],
  [
    "b:buy|get|grab another x:3 f:for|at n:<number>",
    "$b a $x $f $n",
    "should i buy another lamp for 20",
    "should i buy a lamp for 20",
  ],
];
