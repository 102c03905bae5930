/**
 * Ways to ask that say the same as plainer ones, word for word: they are put so before any word is looked up. Text is
 * in lower case, without apostrophes.
 */
export const REWRITES: readonly (readonly [from: RegExp, to: string])[] = [
  // What is said before and behind a question, and asks nothing.
  [
    /^(?:omg|lol|bored|ugh|wow|man|dang|geez|ok so|okay so|alright|right|listen|dude|bro|hon|honey|random|random question|dumb question|stupid question|silly question|serious question|quick one|quick q|question|honestly|seriously|heads up|sorry|jw|just wondering|just curious|curious|cant remember|i forget|i forgot|remind me|real talk)[,:. -]+(?=\S)/,
    "",
  ],
  [/^(?:im|i am|were|we are) (?:so |just |a bit |feeling |getting )?\w+, (?=\S)/, ""],
  [/ (?:you|do you|ya|would you|d you) (?:reckon|think|figure|guess|say|suppose)[.?! ]*$/, ""],
  [/ (?:of|out of) (?:the|this|that) (?:bunch|lot|whole lot|pile|batch)[.?! ]*$/, ""],
  [
    /(?<=\S \S+),? (?:and |so )?(?:which|what)(?: one| ones| day| month| week| kind)? (?:was|is|were|are) (?:it|that|they|those)[.?! ]*$/,
    "",
  ],
  [
    /,? (?:and |so )?(?:whats|what does|what did|what do) (?:it|that|they|those|all that|it all|that all) (?:all )?(?:come to|add up to|work out to|amount to|total)[.?! ]*$/,
    " total",
  ],
  // "Count em for me": how many
  [/^(.+?),? count (?:em|them|those|it)(?: up)?(?: for me)?[.?! ]*$/, "how many $1"],
  [
    /^(?:so )?how (?:much longer|many more (?:months|payments|years)) (?:do i have |have i got |is there )?(?:on|for|with|of) (.+?)[.?! ]*$/,
    "how long until $1 is gone",
  ],
  [
    /^(?:does|do|did|has) (?:anyone|anybody|any buyers?|people) (?:keep |ever )?com(?:e|es|ing) back(?: for more)?[.?! ]*$/,
    "list buyers over 1 pieces",
  ],
  [/^(?:so )?who (?:took|takes|carried|hauled) (.+?) home[.?! ]*$/, "who took home $1"],
  // "Money in, august": what came in
  [
    /(?<=^|\b(?:total|much|whats|what was|my|all|so) )(?:money|cash) in(?=,| for | this | last | per | by |[.?! ]*$)/,
    "brought in",
  ],
  [
    /^(?:so )?(?:were|wher|whre|wear) (?=(?:did|do|does|have|is|are|was|s)\b)(?!(?:did|do|does|have|is|are|was) (?:i|we) (?:not|ever)\b)/,
    "where ",
  ],
  [
    /(?<=^|\b(?:total|much|whats|what was|my|all|so) )(?:money|cash) out(?=,| for | this | last | per | by |[.?! ]*$)/,
    "spent",
  ],
  // "Paid anything on the loan this month", "tall bookcase gone yet"
  [
    /^(paid|sold|bought|listed|finished|spent|made|sent|drove|worked|started|returned) (anything|any|something)\b/,
    "did i $1 $2",
  ],
  [
    /^(?!(?:is|are|has|have|did|was|were|what|which|how|who|when|where|why|do|does|any|anything|list|show|so|and|whats|wheres)\b)((?:the |my |our )?(?:[\w#]+ ){0,2}[\w#]*[^s\s]) (gone|sold|listed|finished|done|started|posted|up)(?: yet[.?! ]*| already[.?! ]*|\?+ ?)$/,
    "is $1 $2",
  ],
  [
    /^(made|sold|bought|listed|finished|spent|paid) (more than|over|at least|less than|under) (\$?\d+.*)\?\s*$/,
    "did i $1 $2 $3",
  ],
  [
    /^have (?:i|we) (sold|bought|finished|listed|flipped) (\d+)(?: yet| already| so far)*(?=$|[,.?! ]*$)/,
    "have i $1 at least $2 pieces",
  ],
  [/\bis (\$?\d+) (?:ok|okay|alright|fair|good|reasonable) for\b/, "is $1 a good price for"],
  [/(?<!\b(?:most|more) )\b(?:lately|recently|as of late|of late)\b/, "in the last 30 days"],
  [
    /^(?:how many )?(?:months|years|payments) (?:left|to go|remaining|till|until)(?: (?:on|for|till|until))? (.+?)(?: (?:is|are) (?:gone|paid off|done))?[.?! ]*$/,
    "how long until $1 is gone",
  ],
  [/\bmoney in (?:vs|versus|against|and|or) money out\b/, "brought in vs spent"],
  [/\b(?:was|were) (?:i|we) up or down\b/, "did i make money"],
  [/^(?:order|sort) (?:my |the |all )?(months|weeks|kinds|sources|buyers|pieces|days) by /, "rank $1 by "],
  [/\bthe (better|worse|stronger|weaker) (?:month|one|year|week|quarter)\b/, "$1"],
  [
    /^compare (jan\w*|feb\w*|mar\w*|apr\w*|may|jun\w*|jul\w*|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*) (?=(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\w*$)/,
    "compare $1 and ",
  ],
  [
    /\b(?:is it|would it be) (?:better|best|smarter) to (?:pay|pay off|clear|kill) (?:off )?(?:the |my )?\w+(?: loan)? (?:off )?first\b/,
    "which loan should i pay first",
  ],
  [/^tally (?:up )?(?!of\b)/, "total "],
  [/\b(?:have|did) (?:i|we) (?:had|have|get|got) any (returns|refunds)\b/, "were there any $1"],
  [
    /\b(?:did|have) (?:i|we) (?:beat|beaten|top|topped|crack|cracked|pass|passed|break|broken) (\$?\d+) (?:in|of) (sales|profit|tips|revenue)\b/,
    "was $2 over $1",
  ],
  [/,? (?:and )?(?:split|break|divide) (?:it|that|them|this)(?: all)? (?:up|down|out)[.?! ]*$/, ""],
  [/, all of (?:em|them|those|it)[.?! ]*$/, ""],
  [
    /\b(?:the |all the |all )?(?:pieces|stuff|things|ones|furniture) (he|she|they) (got|bought|found|picked up)\b/,
    "what $1 $2",
  ],
  [
    /\bif (?:every\w*|it all|all of it|they all|all of them)(?: (?:thats |that is |i have |ive )?(?:listed|up|for sale))? (?:goes|sells|sold|went|go|sell)(?: (?:at|for) (?:the )?(?:asking|list|asking price|list price|full price))?\b/,
    "if everything sold at asking",
  ],
  [
    /(?<=\S \S+),? (?:what is|whats|what would|how much is) (?:that|it|this|all that|it all)(?: all)?(?: be)? worth[.?! ]*$/,
    "",
  ],
  [/\b(best|worst|slowest|busiest|biggest|top) (month|week|year|day|quarter) to date\b/, "$1 $2 so far"],
  [
    /^(?:so )?(?:whos |who is |who was |who are )?(?:my |the |our )?(?:biggest|top|best|highest) spenders?[.?! ]*/,
    "which buyer spent the most ",
  ],
  [
    /^(months|weeks|days|kinds|sources|buyers|places) (?:that|which|where|who|with) (?=(?:i|we|ive|weve|make|made|makes|sell|sold|lose|lost|bring|brought|cost|bought|paid|spent)\b)/,
    "which $1 ",
  ],
  [/\bhow much longer (?=(?:until|till|til|before)\b)/, "how long "],
  [
    /^if (.{2,30}?) (?:goes|sells|sold|go|sell|went) (?:for|at) (\$?\d[\d.,]*|list|list price|asking|asking price),? (?:so |then )?(?:what|how much) (?:do|would|will|did|could) (?:i|we) (?:make|clear|get|net|pocket|earn)(?: on it| off it| from it)?[.?! ]*$/,
    "how much would i make on $1 at $2",
  ],
  [/^who (?:all )?bought what[.?! ]*$/, "list sales"],
  [
    /\bfirst half (vs|versus|against|or|and|compared to) (?:the )?second half of (\w+)/,
    "first half of $2 $1 second half of $2",
  ],
  [/^(sold|bought|sales|expenses?|spending|purchases?) list\b/, "list $1"],
  [/^(?:the |my )?(year|month|week|quarter) in (?:numbers|review|short)[.?! ]*$/, "this $1 so far"],
  // "The mirror, is it on hold"
  [
    /^((?:the |my )?(?:[\w#]+ ){0,2}[\w#]+), ((?:is|was|did|has|does|when|where|who|what|how)\b.*?) (?:it|that one|that)\b(.*)$/,
    "$2 $1$3",
  ],
  [/^(year|month|week|quarter) so far\b/, "this $1 so far"],
  [/\bwhat (?:%|percent|percentage) off\b/, "how much discount"],
  [/\b(best|worst|top|favorite) spots?\b/, "$1 place"],
  [
    /\bdid (.+?) (?:go up|rise|increase|grow|climb) from (.+?) to (.+?)[.?! ]*$/,
    "was $1 more in $3 than in $2",
  ],
  [
    /\bdid (.+?) (?:go down|fall|decrease|shrink|drop) from (.+?) to (.+?)[.?! ]*$/,
    "was $1 less in $3 than in $2",
  ],
  [/^hows (.+) do[.?! ]*$/, "how did $1 do"],
  [/\b(profit|money|sales|cost|time|price|dollar|spending)wise\b/, "$1 wise"],
  [/\b(?:that |which )?(?:didnt|did not|never) (?:come|came|get bought|come in) (from|off) /, "not from "],
  [
    /\b(?:that |which )?(?:didnt|did not|never) (?:go|went|sell|sold|get sold) (?:through|via|on|over) /,
    "not on ",
  ],
  [
    /\bwith (?:the|my|all the|our) (?=(?:tips|workshops?|ads|lessons|classes|side (?:money|income)|other income)\b)/,
    "with ",
  ],
  // "Chairs other than dining ones"
  [
    /\b(chairs|tables|lamps|stools|benches|bookcases|mirrors)\b(.*)\b(dining|end|coffee|side|bar|floor|rocking|office|kitchen) ones\b/,
    "$1$2$3 $1",
  ],
  [/\bin a (year|month)(?=[.?! ]*$)/, "in 1 $1"],
  [
    /\bcan (?:i|we) be (debt free|loan free|out of debt|rid of (?:it|the loans?|the debts?)) (?:by|in|before) /,
    "how much a month to be $1 by ",
  ],
  // "Loan payments since june, list them"
  [
    /^(.+?),? (?:and |please |pls |can you )?(?:list|show|name|give)(?: me)? (?:them|it|those|em)(?: all)?(?: out| up| off| for me| please| pls)*[.?! ]*$/,
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
