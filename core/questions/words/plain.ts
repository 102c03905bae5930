import { phrases, ways } from "./ways.ts";
import { BUYERS_PAID, MONEY_GOES } from "./whole.ts";

/**
 * Words that neither narrow nor turn a question. A word that stands nowhere is not one of these: the question is
 * refused for it.
 */
export const FILLERS: readonly string[] = [
  ...phrases(`
    thus far, ratio of, love to, would love, id love, id love to, everyone, everybody, to buyers, from buyers,
    to my buyers, gonna, anywhere, pretty please, thrown in, added in, counted in, factored in, figured in,
    included, anyways, anyway, honestly, for the record, for my own sake, not gonna lie, ngl, tbh, fr
  `),
  ..."the a an i me my we our us ours ive im id ill weve were you your u ya bot robot hey hi hello yo ok okay please pls plz plse thanks thx ty".split(
    " ",
  ),
  ..."is are was be been being am do does did done have has had can could would will shall should may might".split(
    " ",
  ),
  ..."what whats wats wat whatre whatve thats whatd whatll howd howre howve howll thatd thatll that this these those there theres then here it its they them em theyve theyre so just only really actually exactly roughly about approximately approx around ca".split(
    " ",
  ),
  ..."tell give gimme show let know like wondering wonder curious remind quick quickly question say said see check find out look up need want id hear guess think".split(
    " ",
  ),
  ..."again also well um uh hm hmm lol haha oh ah now currently presently far ever yet already still even though please kindly maybe perhaps".split(
    " ",
  ),
  ..."of but with all any some every whole entire each thing things stuff item items lot lots bit bits kind sort way ways deal business shop side hustle gig"
    .split(" ")
    .filter((word) => !["kind", "sort", "lot", "lots", "gig"].includes(word)),
  ..."into onto in on at for to by from up down over out off as than then too via through"
    .split(" ")
    .filter((word) => !["over", "by", "from", "to", "than", "via", "off"].includes(word)),
  ...phrases(`
    if you know, checking, thank you, thank u, hw, if you could, wht, different, for buyers, by buyers,
    for a buyer, for someone, for somebody, for customers, with me, by a buyer, for people, for folks, so far,
    right now, at the moment, as of now, as of today, to date, at this point, at present, these days,
    as it stands, up to now, up till now, until now, till now, up to today, until today, till today,
    through today, thru today, through now, by now, a lot, ended up, i mean, anyone, anybody, end up, ending up,
    wound up, wind up, breakdown, final, the damage, rundown of, lots of, what about, and what about,
    do you know, do u know, id like to know, want to know, wanna know, need to know, trying to figure out,
    figure out, what is, what was, what are, what were, what has, what have, how come, in the end,
    at the end of the day, you got, got for me, if any, of mine, if you can, when you can, real quick, for me,
    out of curiosity, by any chance, do i have, have i got, i have, ive got, have i, do i, did i, did we, do we,
    have we, in dollars, in money, in usd, dollar figure, dollar amount, what did that come to,
    what does that come to, come to, comes to, came to, add up to, adds up to, added up to, works out to,
    amounts to, amounted to, come out at, total up to, what s, hows the, what re, hows, how, pieces of mine,
    out of, that i, which i, i have to, ones, one, are there, in books, on the books, in the books, in my books,
    my books, the books, on record, on file, according to the books, or nah, or no, nah, wut, wats up with,
    or what, or not, tho, btw, man, dude, on the whole, current, run me the numbers, run the numbers,
    give me the numbers, all told, break down, broken down, split up, break out, show me a breakdown of, alone,
    by itself, on its own, killing me, back in the, way back, finally, eventually, at last, the thing,
    nothing but, none but
  `),
];

/** Pieces in general: they say that pieces are meant and none more than another. */
export const GENERIC: readonly string[] = [
  ...phrases(`
    flopped, tanked, bombed, piece, pieces, furniture, flips, flip, projects, project, pcs, stuff, things,
    items, item, everything, inventory, all pieces, every piece, all of them, all the pieces, goods,
    merchandise, ones, anything, something, any piece, any pieces, furniture pieces, pieces of furniture, finds,
    wares
  `),
  ...["he", "she", "they"].flatMap((who) =>
    ["got", "bought", "found", "picked up"].map((did) => `what ${who} ${did}`),
  ),
  ...phrases(`
    her stuff, his stuff, their stuff, her pieces, his pieces, their pieces, her finds, his finds, their finds,
    her furniture, his furniture, her things, his things
  `),
];

/** Words that stand for something said before: they need it in the question, the last ones only behind a preposition. */
export const PRONOUNS = {
  always: new Set([
    ..."he she they"
      .split(" ")
      .flatMap((who) => ["got", "bought", "found", "picked up"].map((did) => `what ${who} ${did}`)),
    "it",
    "its",
    ..."her his their"
      .split(" ")
      .flatMap((whose) =>
        ["stuff", "pieces", "finds", "furniture", "things"].map((thing) => `${whose} ${thing}`),
      ),
  ]),
  linked: new Set(["they", "them", "em", "those", "these", "that", "this", "one", "ones"]),
} as const;

/** Turns round what comes next. */
export const NEGATIONS: readonly string[] = phrases(`
  not, no, without, except, except for, excluding, exclude, minus, other than, apart from, aside from, besides,
  but not, not counting, somebody other than, someone other than, anyone other than, anybody other than,
  people other than, anyone but, anybody but, not including, leaving out, leave out, leaving aside,
  setting aside, skip, skipping, ignoring, ignore, but no, non, isnt, arent, wasnt, werent, didnt, dont, doesnt,
  havent, hasnt, never, nothing but not, everything but, all but, anything but, outside of, less the, sans, w/o,
  wo, none of, nobody, no one, neither, nor, save for, with the exception of, if you leave out, leaving off,
  that arent, that isnt, that werent, that wasnt, which arent, that hasnt, that havent, that didnt, that wont
`);

/** Puts one thing beside another. */
export const COMPARISONS: readonly string[] = [
  ...ways(
    "stack up|stacks up|stacked up|hold up|holds up|held up|measure up|measures up|size up|shape up",
    "to|against|with|next to|beside",
  ),
  ...phrases(`
    versus, vs, v, vs., against, compared with, compared to, compare to, compare with, compared, compare,
    comparing, next to, beside, side by side with, side by side, difference between, the difference between,
    gap between, up against, relative to, as opposed to, rather than, and not just
  `),
];
export const THAN: readonly string[] = [
  ...ways("costing|worth", "more|less", "than"),
  ...phrases(`pricier than, cheaper than, larger than, busier than, than, beat, beats, outdo, outdid`),
  ..."better worse higher lower bigger smaller more less fewer faster slower"
    .split(" ")
    .map((word) => `${word} than`),
  "longer than",
];
export const OR: readonly string[] = ["or"];
export const AND: readonly string[] = phrases(`
  and, plus, &, n, as well as, along with, and also, together with
`);
/** Asks to compare where "or" or "and" stands between two. */
export const COMPARING: readonly string[] = [
  ...phrases(`
    gap, the gap, whats the gap, what is the gap, whats the difference, what is the difference, the difference,
    the spread
  `),
  ...THAN,
  ...phrases(`
    did i do better, did we do better, did i do worse, did we do worse, which, more, better, difference between,
    the difference between, compare, compared, comparing, less, fewer, worse, bigger, higher, lower, faster,
    slower, side by side, difference, gap between, who wins, which wins, wins, who won, which won,
    comes out on top, came out on top, who comes out on top, which comes out on top, who comes out ahead,
    which comes out ahead
  `),
];

/** What stands before a thing and says which part it plays. */
export const LINKS: Readonly<Record<string, readonly string[]>> = {
  from: ["from", "bought from", "purchased from", "picked up from", "off", "out of", "off of"],
  at: ["at"],
  to: ["to", "toward", "towards"],
  on: ["on", "up on", "over on"],
  by: ["by", "per"],
  for: ["for"],
  in: phrases(`
    back in, way back in, in, into, inside, during, over the course of, throughout, through, within
  `),
  via: ["via", "paid", "paying", "using", "with", "pay", "pays", ...ways("came|comes|come|coming", "with")],
};

/** Says that rows are wanted, one for each of what follows. */
export const PARTED: readonly string[] = phrases(`
  break it down by, break that down by, break them down by, split it by, split that by, split them by,
  broken down per, break down per, break it out by, in terms of, by, per, each, every, for each, for every,
  split by, broken down by, broken out by, break down by, breakdown by, grouped by, group by, split up by,
  divided by, sorted by, across, across all, in each, on each, from each, to each, by each, split per,
  separated by, sliced by, listed by, arranged by, split out by, according to, one line per, a line per,
  one row per, split over, divvied up by, itemized by, per each, split between, split across, broken up by
`);

/** Days of the week that come again and again: no one day, but all of that name. */
export const WEEKLY: Readonly<Record<string, readonly string[]>> = {
  ...Object.fromEntries(
    "monday tuesday wednesday thursday friday saturday sunday"
      .split(" ")
      .map((day) => [day, [day, `${day}s`]]),
  ),
  weekend: ["weekend", "weekends", "the weekends"],
  workday: ["weekdays", "week days", "workdays", "during the week"],
};

/** What stands where nothing was recorded to go by. */
export const UNKNOWN = "unknown";

/** What was not noted of a piece or a sale, as people's own ways to say so are put. */
export const UNNOTED: readonly ("buyer" | "method" | "source" | "place")[] = [
  "buyer",
  "method",
  "source",
  "place",
];

/** What rows may go by, and the words for it; those of `whole` say all of it by themselves. */
export const GROUPS: Readonly<Record<string, { words: readonly string[]; whole?: readonly string[] }>> = {
  day: {
    words: ["day", "days", "date", "what day", "which day", "what date", "which date"],
    whole: ["daily", "day by day", "a day"],
  },
  weekday: {
    words: phrases(`
      weekday, day of the week, day of week, days of the week, week day, which day of the week,
      what day of the week
    `),
  },
  week: {
    words: ["week", "weeks", "wk"],
    whole: ["weekly", "week by week", "week on week", "week for week", "week over week", "a week"],
  },
  month: {
    words: ["month", "months", "mo", "mth"],
    whole: phrases(`
      monthly, month by month, month on month, month for month, month over month, a month, month to month
    `),
  },
  quarter: { words: ["quarter", "quarters"], whole: ["quarterly", "quarter by quarter"] },
  year: {
    words: ["year", "years", "yr"],
    whole: ["yearly", "annually", "year by year", "year on year", "year over year", "a year"],
  },
  kind: {
    words: phrases(`
      kind, kinds, type, types, sort, sorts, kind of piece, type of piece, kind of furniture, type of furniture,
      sort of piece, sort of furniture, furniture type, furniture kind, piece type, piece types,
      kinds of pieces, kinds of furniture, types of furniture, types of pieces, category of piece, what it is,
      what they are, style of piece, piece kind, kind of thing
    `),
    whole: ["per piece type", "per type of piece", "per furniture type", "per kind of piece"],
  },
  source: {
    words: [
      "source",
      ...ways("place|places|spot|spots", "to shop|to source|to buy stuff"),
      ...phrases(`
        store, stores, place to buy, place to buy from, place i buy, places i buy, place we buy,
        places i buy from, place i shop, places i shop, place i get stuff, places i get stuff from,
        place i find stuff, place to find stuff, sources, where i bought, where i bought them,
        where i bought it, where i got them, where i got it, where they came from, where it came from,
        where i buy, where i found them, where they come from, where i picked them up, where it was bought,
        where they were bought, where bought, place bought, place i bought, place i bought them, origin,
        sourcing, place of purchase, buying place, supplier, suppliers, where i get them, where i source,
        where stuff came from, where the pieces came from, where pieces came from, seller, sellers, bought from,
        place i bought from, place i buy from, source of purchase
      `),
    ],
  },
  person: {
    words: phrases(`
      person, people, who noted, who noted it, who logged it, who entered it, who did it, member, members,
      family member, household member, who, who wrote it, who recorded it, who wrote it down, author,
      who noted them, who put it in, noter
    `),
  },
  buyer: {
    words: [
      ...phrases(`buyer, buyers, which buyer, what buyer, which customer, which buyers, customer, customers`),
      ...ways("who", "bought|got|took|purchased", "|it|them|the piece|the pieces"),
      ...phrases(`
        who i sold to, who i sold them to, who bought it from me, client, clients, who they went to,
        who it went to, purchaser, who i sold it to
      `),
    ],
    whole: [...BUYERS_PAID],
  },
  method: {
    words: [
      "method",
      "methods",
      "payment method",
      "payment methods",
      ...ways(
        "how",
        "|the|my",
        "buyers|buyer|customers|customer|people|they",
        "paid|pay|paid me|paid for it",
      ),
      ...ways("how", "it|they|i|we", "was|were|got", "paid|paid for"),
      ...phrases(`
        payment type, payment, way of paying, how i paid, pay method, way they paid, kind of payment,
        type of payment, form of payment, payment kind, way paid, means of payment, way i paid, how paid
      `),
    ],
  },
  stream: {
    words: phrases(`
      stream, streams, income stream, income streams, income source, income sources, kind of income,
      type of income, source of income, sources of income, where it came in from, income type
    `),
  },
  category: {
    words: phrases(`
      category, categories, expense category, spending category, kind of expense, type of expense, expense type,
      cost category, kind of spending, type of spending, kind of cost, expense categories, spending categories,
      bucket, buckets, expense kind
    `),
    whole: [...MONEY_GOES],
  },
  what: {
    words: phrases(`
      what, what it was for, what it went on, what i bought, supply, supplies by name, what for, item, items,
      thing, material, what it went for, expense, product, what i spent it on, what the money went on,
      what it was spent on
    `),
  },
  place: {
    words: phrases(`
      place, place to list, place to list on, site to list on, place to sell, places, where listed,
      where i listed, where i listed it, where i listed them, listing place, listing site, site, sites,
      board i listed on, platform, platforms, where it was listed, where they were listed, place listed,
      place i sell, places i sell, place i sell on, place we sell, place i list on, where i posted,
      where i posted them, listing location, venue, channel listed, place i listed, where i list
    `),
  },
  loan: { words: ["loan", "loans", "debt", "debts", "lender"] },
  piece: {
    words: phrases(`
      piece, pieces, item sold, flip, flips, individual piece, project, projects, number, single piece
    `),
    whole: phrases(`
      piece by piece, one by one, individually, each one, each piece, every single piece, itemized, itemised
    `),
  },
};

/** What puts rows in an order: `good` goes by what is better in the measure, the rest by its size. */
export const ORDERS: Readonly<
  Record<"best" | "worst" | "most" | "least" | "fastest" | "slowest", readonly string[]>
> = {
  best: [
    ...ways("|from", "best|highest|most|biggest|top", "to", "worst|lowest|least|smallest|bottom"),
    ...ways("|the", "high point|cash cow|cash cows"),
    ...phrases(`
      best, rank, ranked, rank my, ranking of, top, tops, finest, strongest, greatest, star, winner, winners,
      number one, goat, biggest w, no 1, best performing, top performing, top earning, best selling,
      most profitable, most lucrative, best earning, best paying, biggest winner, biggest winners, top selling,
      most successful, better, champion, best ever
    `),
  ],
  worst: [
    ...ways("|from", "worst|lowest|least|smallest|bottom", "to", "best|highest|most|biggest|top"),
    ...ways("|the", "pits|low point"),
    ..."dud duds stinker stinkers lemon lemons bust busts".split(" "),
    ...phrases(`
      biggest l, biggest fail, biggest miss, biggest loser, biggest losers, biggest money loser,
      biggest money losers, worst, bottom, weakest, poorest, loser, losers, flop, flops, worst performing,
      least profitable, biggest loser, biggest losers, worst ever, biggest flop, biggest loss, lost the most,
      lost me the most, least lucrative, least successful
    `),
  ],
  most: phrases(`
    the most expensive, most common, most popular, most used, most frequent, commonest, most often used, most,
    busiest, biggest, highest, largest, max, maximum, most expensive, priciest, dearest, most money, the most,
    buy the most of, bought the most of, sell the most of, sold the most of, sell most of, costliest, high,
    greatest number of, record, steepest, highest ever, biggest ever, longest, furthest, farthest, heaviest,
    highest priced, highest selling, oldest, stalest, biggest chunk, biggest single, single biggest,
    largest single, single largest, single highest, highest single, single best, most of
  `),
  least: phrases(`
    least common, least, smallest, lowest, fewest, min, minimum, cheapest, the least, least expensive, littlest,
    low, lowest ever, smallest ever, lowest priced, lowest selling, tiniest
  `),
  fastest: phrases(`
    fastest mover, fastest movers, quickest mover, fastest, quickest, soonest, fast movers, shortest,
    quick movers, most quickly, the fastest, in the shortest time, fast, speediest, quickest to sell,
    fastest to sell, quick sellers, fast sellers, hottest, fastest selling, fastest seller, quickest seller,
    fastest sellers, quickest sale, fastest sale
  `),
  slowest: phrases(`
    slowest mover, slowest movers, slow mover, slowest, slow movers, laggards, most slowly, the slowest,
    taking the longest, took the longest, took the longest to sell, takes the longest to sell,
    take the longest to sell, taken the longest to sell, longest to sell, take the longest, takes the longest,
    slowest to sell, longest to sell, slow sellers, slowest selling, slowest seller, slowest sale, slow mover
  `),
};

/** Over and under an amount, never at it, and the two that hold at it as well. */
export const LIMITS: Readonly<Record<"over" | "under" | "least" | "most" | "exactly", readonly string[]>> = {
  over: phrases(`
    over, more than, older than, longer than, above, greater than, higher than, upwards of, north of,
    bigger than, exceeding, beyond, past, >, better than, costing more than, worth more than, pricier than,
    in excess of, larger than
  `),
  under: phrases(`
    under, less than, newer than, below, lower than, cheaper than, beneath, smaller than, fewer than, <,
    south of, costing less than, worth less than
  `),
  least: ["at least", "no less than", "or more", "minimum of", "not under", "not less than"],
  most: ["at most", "no more than", "up to", "or less", "maximum of", "not over", "not more than"],
  exactly: ["exactly", "exactly for", "precisely", "just exactly", "an even", "=", "equal to"],
};

/** Units of an amount that is no money, in minutes and in days. */
export const UNIT_MINUTES: Readonly<Record<string, number>> = {
  hours: 60,
  hour: 60,
  hrs: 60,
  minutes: 1,
  mins: 1,
};
export const UNIT_DAYS: Readonly<Record<string, number>> = {
  days: 1,
  day: 1,
  weeks: 7,
  week: 7,
  wks: 7,
  months: 30,
  month: 30,
};
/** Behind a number: so many of them. */
export const COUNTABLE: ReadonlySet<string> = new Set(
  "pieces things items flips times sales buyers furniture finds stuff".split(" "),
);

/** They open a question for things one by one. */
export const LISTERS: ReadonlySet<string> = new Set(
  "which what whats unsold unlisted unfinished show list pieces piece things stuff items ones furniture anything everything sold bought".split(
    " ",
  ),
);

/** Whose facts: the one who asks. */
export const MINE: readonly string[] = phrases(`
  mine, by me, me myself, myself, my own, i noted, i logged, i entered, i personally
`);
