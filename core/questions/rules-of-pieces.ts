import { MUCH, type Rule, SALES } from "./rule.ts";

/** Pieces one by one, by what an amount of theirs is held against: the most telling words, tried first. */
export const PIECE_RULES: readonly Rule[] = [
  {
    // "List my buyers", "show sources"
    measure: "count",
    when: (f) => f.commands && f.bare && f.groups("buyer", "source", "place") && !f.order && !f.piece,
    takes: ["list", "which", "listed"],
  },
  {
    // "Everything from the flea market", "what came from the church sale", "dad's pieces"
    measure: "count",
    when: (f) =>
      f.bare &&
      (f.source || f.person) &&
      (f.has("got") || f.generic || (f.person && f.piece)) &&
      !f.supply &&
      !f.limit &&
      !f.by &&
      !f.order &&
      !f.beside &&
      !f.yesNo,
    takes: ["got", "list", "which"],
    list: true,
  },
  {
    // "How many months did i lose money", "how many weeks did i make over 200"
    measure: "profit",
    when: (f) => f.tally && (f.has("loss") || (f.limit && f.has("earn", "net"))) && !f.has("sold", "bought"),
    takes: ["howMany", "loss", "earn", "net", "money"],
    tally: true,
  },
  {
    measure: "spent",
    when: (f) => f.tally && f.limit && f.has("spent") && !f.has("sold", "bought", "earn"),
    takes: ["howMany", "spent"],
    tally: true,
  },
  {
    // "How many kinds have i sold", "how many different buyers bought something"
    measure: "count",
    when: (f) =>
      f.tally &&
      !f.limit &&
      (f.has("sold", "bought", "finished") || (f.groups("buyer", "source") && f.has("had"))) &&
      !f.has("howLong", "takes", "daysToSell", "earn", "net", "spent", "paid"),
    takes: ["howMany", "sold", "bought", "finished", "got", "had", "have"],
    tally: true,
  },
  {
    // "Did i lose money on anything", "which pieces lost money"
    measure: "profit",
    when: (f) =>
      f.has("loss") &&
      !f.order &&
      !f.beside &&
      !f.has("howMany") &&
      ((f.lists && (f.generic || f.piece)) || (f.yesNo && f.generic)) &&
      !f.by,
    takes: [
      ...MUCH,
      ...SALES,
      "earn",
      "loss",
      "net",
      "gone",
      "kept",
      "given",
      "scrapped",
      "returned",
      "free",
      "bought",
      "finished",
    ],
    list: true,
  },
  {
    measure: "minutes",
    when: (f) => f.lists && f.unit("minutes"),
    takes: ["which", "list", "minutes", "have", "takes", "took", "got", "cost", "loanPaid", "spent"],
    list: true,
  },
  {
    measure: "days to sell",
    when: (f) =>
      f.lists && f.unit("days") && f.has("sold", "takes", "took", "daysToSell") && !f.has("daysListed"),
    takes: ["which", "list", "sold", "takes", "took", "daysToSell", "sat", "unsold"],
    list: true,
  },
  {
    // "Anything listed more than 100 days"
    measure: "days listed",
    when: (f) =>
      f.lists && f.unit("days") && f.has("listed", "daysListed") && !f.has("sold", "takes", "took"),
    takes: ["which", "list", "listed", "daysListed", "have", "unsold", "sat"],
    list: true,
  },
  {
    measure: "days here",
    when: (f) =>
      f.lists &&
      f.unit("days") &&
      (f.has("unsold", "have", "had", "sat") || f.bare) &&
      !f.has("daysListed", "listed", "sold"),
    takes: ["which", "list", "unsold", "have", "had", "sat", "gone"],
    list: true,
  },
  {
    measure: "days here",
    when: (f) =>
      (f.longest || (f.average && f.has("howLong"))) &&
      !f.fast &&
      (f.has("had", "unsold") || f.oldest) &&
      !f.has("sat", "listed", "daysListed", "sold", "minutes"),
    takes: [...MUCH, "had", "unsold", "have", "howLong", "which"],
  },
  {
    // "Which pieces did i pay over 60 for", "bought for under 10"
    measure: "price",
    when: (f) =>
      f.lists &&
      f.limit &&
      f.has("paid", "price") &&
      !f.has("earn", "net", "soldFor", "sold", "loan") &&
      !f.supply,
    takes: ["which", "list", "paid", "price", "bought", "got"],
    list: true,
  },
  {
    measure: "asking",
    when: (f) =>
      f.lists &&
      f.limit &&
      !f.unit("days") &&
      f.has("listed", "asking") &&
      !f.has("sold", "soldFor", "earn", "daysListed"),
    takes: ["which", "list", "listed", "asking", "have", "unsold"],
    list: true,
  },
  {
    measure: "cost",
    when: (f) => f.lists && f.limit && f.has("cost") && !f.has("sold", "soldFor", "earn", "spent"),
    takes: ["which", "list", "cost", "have", "unsold"],
    list: true,
  },
  {
    measure: "profit",
    when: (f) => f.lists && f.limit && f.has("earn", "net") && (f.generic || f.piece) && !f.order && !f.by,
    takes: ["which", "list", "earn", "net", "got", "sold", "which", "money"],
    list: true,
  },
  {
    // "How many pieces did i put more than 3 hours into"
    measure: "count",
    when: (f) => f.has("howMany") && f.unit("minutes", "days", "miles"),
    takes: [
      ...MUCH,
      ...SALES,
      "howMany",
      "minutes",
      "loanPaid",
      "cost",
      "had",
      "sat",
      "takes",
      "took",
      "daysToSell",
      "bought",
      "unsold",
    ],
  },
  {
    // "Sold to the teacher since june", "bought in the last two months"
    measure: "count",
    when: (f) =>
      f.opens &&
      !f.has(
        "money",
        "total",
        "when",
        "where",
        "who",
        "earn",
        "net",
        "average",
        "median",
        "soldFor",
        "price",
        "paid",
        "sale",
        "howMany",
      ) &&
      !f.limit &&
      !f.by &&
      !f.order &&
      !f.beside &&
      !f.number,
    takes: ["list", "got", "gone"],
    list: true,
  },
  {
    // "My cheapest buy that sold", "the most expensive purchase that sold over 200"
    measure: "price",
    when: (f) => f.pricey && f.isBuy && !f.has("earn", "net", "when", "where", "who"),
    takes: [...MUCH, "bought", "price", "purchases", "sold", "unsold", "listed", "finished", "got"],
  },
  {
    // "The most expensive chair i sold"
    measure: "proceeds",
    when: (f) =>
      f.pricey && f.has("sold", "sale", "soldFor") && !f.has("bought", "price", "paid", "earn", "net"),
    takes: [...MUCH, ...SALES],
  },
  {
    // "The highest priced thing i have listed"
    measure: "asking",
    when: (f) =>
      (f.pricey || f.topped) &&
      f.has("listed") &&
      !f.has("sold", "sale", "bought", "earn", "cost", "daysListed", "when", "who"),
    takes: [...MUCH, "listed", "unsold", "have", "got", "price"],
  },
  {
    // "The priciest thing still here"
    measure: "price",
    when: (f) =>
      f.pricey && f.has("unsold", "have") && !f.has("sold", "sale", "soldFor", "earn", "cost", "asking"),
    takes: [...MUCH, "unsold", "have", "got", "price"],
  },
  {
    // "Which month did i buy the fewest", "what day of the week do i buy the most"
    measure: "count",
    when: (f) =>
      f.order &&
      !f.pricey &&
      f.has("bought") &&
      f.groups("day", "weekday", "week", "month", "quarter", "year") &&
      !f.has("money", "paid", "spent", "cost", "price", "sold", "earn", "net", "revenue"),
    takes: [...MUCH, "bought", "when", "got"],
  },
  {
    measure: "refunds",
    when: (f) =>
      f.has("refunds") &&
      !f.has("deposits", "loan", "when", "who", "howMany", "list", "notes", "did", "earn", "net") &&
      (f.period || f.has("money", "total") || f.by || f.order || f.piece || (f.yesNo && !f.has("returned"))),
    takes: [...MUCH, "refunds", "returned", "given", "sold", "paid", "loanPaid"],
  },
  {
    measure: "deposits kept",
    when: (f) => f.has("depositsKept") && !f.has("who", "whose", "when"),
    takes: [...MUCH, "depositsKept", "earn"],
  },
  {
    // "What's the price on the armoire now"
    measure: "asking",
    when: (f) =>
      f.has("price") &&
      f.now &&
      !f.period &&
      f.piece &&
      !f.has("paid", "bought", "sold", "soldFor", "asking", "advice", "askFor"),
    takes: [...MUCH, "price", "asking", "listed"],
  },
  {
    // "What cost me nothing", "pieces i got for free"
    measure: "count",
    when: (f) =>
      f.lists &&
      f.has("free") &&
      !f.has("sold", "unsold", "listed", "earn", "net", "finished") &&
      !f.limit &&
      !f.order &&
      !f.by,
    takes: ["free", "list", "which", "got", "bought", "paid"],
    list: true,
  },
  {
    // "Did i get more than 200 for the hutch"
    measure: "proceeds",
    when: (f) =>
      f.yesNo &&
      f.limit &&
      f.has("got") &&
      f.piece &&
      !f.has("earn", "net", "bought", "paid", "price", "sold"),
    takes: [...MUCH, "got", "soldFor"],
  },
  {
    measure: "price",
    when: (f) => f.wasPriced && !f.order && !f.by,
    takes: MUCH,
  },
  {
    // "Pieces with a deposit", "which have deposits on them"
    measure: "deposits",
    when: (f) =>
      f.lists &&
      f.has("deposits") &&
      f.generic &&
      !f.has("money", "total", "owe", "who", "depositsKept") &&
      !f.order &&
      !f.by,
    takes: [...MUCH, "deposits", "held", "list", "which"],
    list: true,
  },
  {
    // "Pieces i paid cash for", "cash purchases in june"
    measure: "price",
    when: (f) =>
      f.method &&
      !f.supply &&
      !f.loan &&
      ((f.lists && f.generic && f.has("paid")) || f.has("purchases")) &&
      !f.has("howMany", "sold", "earn", "net", "revenue", "sale"),
    takes: [...MUCH, "paid", "purchases", "bought", "price"],
  },
];
