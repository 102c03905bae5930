import { MUCH, type Rule, SALES } from "./rule.ts";
import { cues } from "./words/cues.ts";

/** Pieces one by one, by what an amount of theirs is held against: the most telling words, tried first. */
export const PIECE_RULES: readonly Rule[] = [
  {
    // "Total price cuts in october", "which piece had the most price cuts", "average price drop"
    measure: "price cuts",
    when: (f) =>
      f.has("priceCut") &&
      (f.order || f.average || f.by || f.has("money", "total")) &&
      !f.has("howMany", "when", "who", "times"),
    takes: [...MUCH, "priceCut", "had", "got", "listed", "comeDown"],
  },
  {
    // "How long from buying to listing"
    measure: "days between",
    when: (f) => f.has("lapse"),
    takes: [...MUCH, "lapse", "howLong", "howMany", "takes", "took", "daysToSell", "sat", "minutes", "had"],
  },
  ...(["margin", "roi"] as const).map(
    (cue): Rule => ({
      measure: cue === "margin" ? "margin" : "return on cost",
      when: (f) => f.has(cue) && !f.has("hourly", "suppose"),
      takes: [...MUCH, ...SALES, cue, ...cues("share earn net got bought revenue fared took have")],
    }),
  ),
  {
    // "How many pieces did i put more than 3 hours into"
    measure: "count",
    when: (f) => f.has("howMany") && f.unit("minutes", "days", "miles"),
    takes: cues(
      "howMany minutes loanPaid cost had sat takes took daysToSell bought unsold listed",
      MUCH,
      SALES,
    ),
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
        "revenue",
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
  ...([false, true] as const).map(
    (isOfSale): Rule => ({
      // "The cheapest piece i bought over 0 profit", "the priciest one i sold at a loss"
      measure: isOfSale ? "proceeds" : "price",
      when: (f) => f.pricey && f.limit && f.has("earn") && f.has("sold", "soldFor") === isOfSale && !f.by,
      takes: [...MUCH, ...SALES, "bought", "price", "got", "free"],
    }),
  ),
  {
    // "My cheapest buy that sold", "the most expensive purchase that sold over 200"
    measure: "price",
    when: (f) => f.pricey && f.isBuy && !f.has("earn", "net", "when", "where", "who"),
    takes: [...MUCH, "bought", "price", "purchases", "sold", "unsold", "listed", "finished", "got", "free"],
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
    // "Where did i get the most dressers", "which source gave me the most chairs"
    measure: "count",
    when: (f) =>
      f.mostOf &&
      (f.has("where") || f.groups("source")) &&
      f.has("bought", "got", "given", "have") &&
      !f.has("money", "paid", "spent", "cost", "price", "sold", "earn", "net", "revenue"),
    takes: [...MUCH, "bought", "where", "got", "given"],
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
    takes: [...MUCH, "refunds", "returned", "given", "sold", "paid", "loanPaid", "cost"],
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
      (!f.has("listed") || f.commands) &&
      !f.has("sold", "unsold", "earn", "net", "finished") &&
      !f.has("revenue", "sale", "soldFor", "spent", "cost", "price", "paid", "minutes", "miles") &&
      !f.limit &&
      !f.order &&
      !f.by,
    takes: ["free", "list", "listed", "which", "got", "bought", "paid"],
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
      ((f.generic && f.has("paid") && (f.lists || f.onPieces || f.paidFor)) || f.has("purchases")) &&
      !f.has("howMany", "sold", "earn", "net", "revenue", "sale"),
    takes: [...MUCH, "paid", "purchases", "bought", "price"],
  },
];
