/**
 * Ways to ask that say the same as plainer ones, word for word: they are put so before any word is looked up. Text is
 * in lower case, without apostrophes.
 */
export const REWRITES: readonly (readonly [from: RegExp, to: string])[] = [
  // "Loan payments since june, list them"
  [
    /^(.+?),? (?:and |please |pls |can you )?(?:list|show)(?: me)? (?:them|it|those|em)(?: all)?[.?! ]*$/,
    "list $1",
  ],
  [/\bwho (?:are|were|r) (?:my|our|the|all my) (?:buyers|customers|clients)\b/, "list buyers"],
  [
    /\bhow many (?:repeat|returning) (?:buyers|customers|clients)(?: do i have| have i had| are there)?/,
    "how many buyers bought over 1 pieces",
  ],
  [
    /^(?:(?:list|show|who are|any)(?: me)? )?(?:my |our )?(?:repeat|returning) (?:buyers|customers|clients)/,
    "list buyers over 1 pieces",
  ],
  [
    /^(?:who|which buyers?|which customers?|what buyers?)(?: has| have| all)? (?:bought|buys|took|got) (?:more than|over) (?:one|once|1)\b(?: (?:thing|piece|item|time)s?)?/,
    "list buyers over 1 pieces",
  ],
  [
    /^(?:who|which buyers?|which customers?|what buyers?)(?: has| have| all)? (?:bought|buys|took|got) (more than|over|at least) (\d+|two|three|four|five)\b(?: (?:things|pieces|items|times))?/,
    "list buyers $1 $2 pieces",
  ],
  [/^(months|weeks|days|kinds|sources|buyers) (?:that |where |when |in which )?(?:i|we) /, "which $1 did i "],
  [/(?:^|\b(?:whats |what is |what was )?(?:my|our|the|an) )average (month|week|year)\b/, "average per $1"],
  [/\bon an average (month|week|day)\b/, "on average per $1"],
  [
    /\bwhat (?:price )?did (?:i|we) (?:drop|lower|mark|reduce|reprice) (.+?)(?: price)?(?: down)? to\b/,
    "what was $1 listed at",
  ],
  [
    /\bhow many (\w+) (?:receipts|fill ups|fillups|bills|purchases) (?!did i sell)/,
    "how many times did i buy $1 ",
  ],
  [/\b(within|under|in under|less than) a (week|month|year)\b/, "$1 1 $2"],
  [/\b(over|more than) a (week|month|year)\b/, "$1 1 $2"],
  [/\b(?:made?|make|gotten|got|get|earned?) (?:my|our) money back (?:on|from|with|for)\b/, "made money on"],
  [
    /\b(?:made|make|earned|earn) back what (?:i|we) (?:spent|paid|put|have) (?:on|for|into|in)\b/,
    "made money on",
  ],
  [/\bbr(?:o|ea)ke? even on\b/, "made money on"],
  // "How much of my profit is dressers, percent"
  [/\bhow much of (.+?),? (?:in |as a )?(?:percent|percentage)[.?! ]*$/, "what percent of $1"],
  [
    /(?:^(?:list|show)(?: me)? (?:the |my |all )?)?\bdeposits? (?:i|we) (?:took|take|got|have taken|received)\b(?! to keep)/,
    "list deposits",
  ],
  [
    /\bwhat (?:does|do|would|will) (?:paying |putting |throwing |an extra |another )?(\$?\d+)(?: extra| more)?( a month)? (on|to|toward|towards|at) (.+?) do(?: for me)?[.?! ]*$/,
    "what if i pay $1 extra$2 $3 $4",
  ],
  [/\bper cent\b/, "percent"],
  [/\b(?:who in (?:the|my|our) (?:family|house|household)|which (?:one )?of us|who of us)\b/, "which person"],
];
