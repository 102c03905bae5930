import { type Features, MUCH, type Rule, SALES } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

const REACHED: readonly Cue[] = cues(
  "reached share comeDown asking firstAsked soldFor listed price fared got earn",
  MUCH,
  SALES,
);

const TIME = ["day", "weekday", "week", "month", "quarter", "year"] as const;

/** "My slowest month": the one with the fewest sales. */
const ofTime = (f: Features): boolean => f.groups(...TIME) && !f.has("sold", "daysToSell", "takes");

/** Measures that have words of their own. */
export const OWN_RULES: readonly Rule[] = [
  {
    // "Average pieces sold per month"
    measure: "count",
    when: (f) =>
      f.average && f.countsRate && !f.order && !f.has("earn", "net", "cost", "price", "revenue", "spent"),
    takes: [...MUCH, "howMany", "sold", "bought", "listed", "finished"],
  },
  {
    // "What is the loan costing me"
    measure: "interest",
    when: (f) =>
      f.loan && f.has("cost") && !f.piece && !f.order && !f.supply && !f.has("which", "suppose", "loanPaid"),
    takes: [...MUCH, "loan", "cost", "interest"],
  },
  {
    // "Estate sales, hows that been moneywise"
    measure: "profit",
    when: (f) => f.moneyWise && (f.piece || f.source || f.buyer || f.place) && !f.order,
    takes: MUCH,
  },
  {
    // "All in with side money", "everything for september, tips and all"
    measure: "net",
    when: (f) => f.has("everything") && f.plainNet && !f.piece && !f.supply && !f.loan && !f.by && !f.order,
    takes: [...MUCH, "everything", "cost", "income", "got", "fared"],
  },
  {
    // "Average per month", "what do i average a week"
    measure: "net",
    when: (f) => f.average && f.by && f.groups(...TIME) && f.onlyAverage,
    takes: MUCH,
  },
  {
    measure: "proceeds",
    when: (f) => f.fast && ofTime(f) && (f.bare || f.has("sale")),
    takes: [...MUCH, "sale"],
  },
  {
    measure: "come down",
    when: (f) => f.has("comeDown") && !(f.lists && f.has("sold", "soldFor") && !f.average),
    takes: REACHED,
  },
  {
    measure: "reached",
    when: (f) => f.has("reached") || (f.has("share") && f.has("asking", "firstAsked")),
    takes: REACHED,
  },
  {
    measure: "hourly",
    when: (f) => f.has("hourly") && !f.has("price"),
    takes: [...MUCH, ...SALES, ...cues("hourly earn net minutes fared paid revenue had got bought took")],
  },
  {
    measure: "days to sell",
    when: (f) =>
      // "Days listed before it sells" begin with the listing.
      (f.has("daysToSell") && !f.has("daysListed", "listed")) ||
      (f.has("howLong") && f.has("sold", "takes") && !f.has("minutes", "daysListed", "listed", "loan")) ||
      (f.has("howLong") && f.has("bought") && f.has("sold")) ||
      (f.fast && !ofTime(f) && f.has("sold", "sale", "daysToSell", "takes")) ||
      (f.fast && !ofTime(f) && !f.has("earn", "net", "revenue", "spent", "minutes")),
    takes: cues("daysToSell takes howLong bought held had minutes unsold got fared howMany sat", MUCH, SALES),
  },
  {
    measure: "days listed",
    when: (f) =>
      f.has("daysListed") ||
      (f.has("howLong", "daysToSell") && f.has("listed")) ||
      (f.has("howLong") && f.has("sat")) ||
      (f.order && f.has("sat") && !f.has("unlisted")) ||
      (f.oldest && f.has("listed", "asking")) ||
      (f.longest && f.has("listed") && !f.has("minutes", "bought", "daysToSell", "takes", "took")),
    takes: cues(
      "daysListed daysToSell takes sat listed howLong unsold had howMany asking tiedUp minutes cost",
      MUCH,
      SALES,
    ),
  },
  {
    // "How much principal have i paid", "what went to principal"
    measure: "principal",
    when: (f) =>
      f.has("principal") &&
      !f.has("owe", "unsold", "have", "ends", "suppose", "rate", "which") &&
      (f.has("paid", "loanPaid", "gone", "spent", "took") || !f.has("loan", "interest")),
    takes: [...MUCH, "principal", "loan", "loanPaid", "paid", "spent", "gone", "took", "interest"],
  },
  {
    measure: "interest",
    when: (f) => f.has("interest"),
    takes: [...MUCH, "interest", "loan", "loanPaid", "paid", "spent", "cost"],
  },
  {
    measure: "fees",
    when: (f) => f.has("fees") && !f.has("withoutBuying"),
    takes: [...MUCH, ...SALES, "fees", "paid", "spent", "cost"],
  },
  {
    measure: "miles",
    when: (f) => f.has("miles") && !f.supply && !f.has("times"),
    takes: cues(
      "miles overhead howMany did notes cost loanPaid fared bought got spent minutes sold unsold",
      MUCH,
    ),
  },
  {
    measure: "owed",
    when: (f) => f.has("owed") && !f.loan && !f.has("interest"),
    takes: [...MUCH, ...SALES, "owed", "owe", "who", "whose", "unsold", "paid", "howMany"],
  },
  {
    measure: "deposits",
    when: (f) => f.has("deposits"),
    takes: cues("deposits held sat whose who unsold tiedUp daysListed loanPaid had cost howMany got", MUCH),
  },
  {
    measure: "paid",
    when: (f) =>
      (f.loan || f.repays) &&
      !f.asksOver &&
      f.has("loanPaid", "paid", "spent", "gone", "took", "principal") &&
      !f.supply &&
      !f.piece &&
      !f.has("owe", "minutes"),
    takes: [...MUCH, "loanPaid", "paid", "loan", "spent", "gone", "took", "fared", "howMany"],
  },
  {
    measure: "income",
    when: (f) =>
      (f.stream && !f.payingOut) ||
      (f.groups("stream") && !f.has("sold", "sale", "spent", "paid")) ||
      (f.has("income") &&
        !(f.has("everything") && f.has("earn", "revenue")) &&
        !f.has("net", "sold", "sale") &&
        !f.piece),
    takes: [...MUCH, "income", "earn", "net", "revenue", "paid", "got", "fared", "sale", "everything"],
  },
  {
    measure: "minutes",
    when: (f) =>
      f.has("minutes") &&
      !(f.unit("minutes") && f.has("earn", "net", "revenue", "soldFor", "sale", "price", "cost")) &&
      !f.supply &&
      // "Profit per day worked" is no time.
      !(f.by && f.has("earn", "net")) &&
      !f.has("miles", "price", "inDays", "times"),
    takes: cues(
      "minutes overhead loanPaid howMany howLong gone spent notes cost takes paid did fared earn took sold unsold finished listed kept given scrapped",
      MUCH,
    ),
  },
  {
    measure: "tied up",
    when: (f) =>
      !f.number &&
      ((f.has("tiedUp") && !f.has("spent", "interest")) ||
        (f.has("cost", "spent", "sat") &&
          f.has("unsold", "unfinished", "unlisted", "unstarted") &&
          !f.has("howMany", "asking", "howLong")) ||
        (f.has("money") &&
          f.has("unsold", "unfinished", "unlisted", "unstarted") &&
          !f.has("howMany", "asking", "earn", "net", "owed", "revenue", "soldFor"))),
    takes: cues(
      "where got finished started held tiedUp cost unfinished unlisted unsold spent sat price paid bought gone listed had",
      MUCH,
    ),
  },
  {
    measure: "asking",
    when: (f) =>
      (f.has("asking") || f.isPriced) &&
      !(f.yesNo && f.has("got")) &&
      !f.has("howMany", "revenue", "earn") &&
      !(f.has("soldFor") || f.has("sold")),
    takes: [...MUCH, "asking", "listed", "unsold", "have", "got", "price", "tiedUp", "fared"],
  },
];
