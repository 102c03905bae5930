import { countedBy } from "./counted.ts";
import { HAPPENED, MUCH, type Rule, SALES } from "./rule.ts";
import { OWN_RULES } from "./rules-of-books.ts";
import { BUYER_RULES } from "./rules-of-buyers.ts";
import { LIST_RULES } from "./rules-of-lists.ts";
import { PIECE_RULES } from "./rules-of-pieces.ts";
import { cues } from "./words/cues.ts";

/** The measures in the order in which they are tried: the telling words first, the common ones last. */
export const RULES: readonly Rule[] = [
  ...LIST_RULES,
  ...PIECE_RULES,
  ...BUYER_RULES,
  ...OWN_RULES,
  {
    measure: "price",
    when: (f) =>
      f.has("price") &&
      // "Who paid the highest price": a buyer
      !(f.has("who") && f.has("paid") && f.order) &&
      !f.has("withoutBuying", "howMany", "earn", "net") &&
      !(f.supply && (f.has("spent") || !(f.piece || f.onPieces || f.has("bought", "paid")))) &&
      !(f.has("soldFor") && !f.has("bought", "paid")),
    takes: [...MUCH, "price", "paid", "bought", "got", "spent", "cost", "unsold", "sold", "when", "free"],
  },
  {
    measure: "spent",
    when: (f) =>
      f.has("withoutBuying") ||
      (f.has("overhead") && !f.has("earn", "net")) ||
      (f.pricey && f.bare && f.groups("day", "week", "month", "quarter", "year")) ||
      (f.groups("category", "what") && !f.has("earn", "net", "revenue", "howMany", "sold")) ||
      (f.supply &&
        !f.has("howMany", "soldFor", "net", "earn") &&
        // "Hours on paint" asks for no money.
        (!f.has("minutes", "miles") || f.has("spent", "paid", "cost", "money", "total"))),
    takes: cues(
      "spent withoutBuying cost paid bought price fared got gone took takes minutes unsold sold howMany fees notes earn tiedUp loanPaid overhead",
      MUCH,
    ),
  },
  {
    measure: "price",
    when: (f) =>
      // "How much on furniture this month"
      (f.onPieces && f.has("money") && f.plain && !f.order && !f.by && !f.piece && !f.supply) ||
      (f.onPieces &&
        f.has("spent", "paid", "cost") &&
        !f.has("howMany", "earn", "net", "revenue", "sold", "sale")) ||
      (f.has("purchases") && f.by && !f.has("howMany")) ||
      // "The most i ever paid"
      (f.order &&
        f.has("paid") &&
        !f.loan &&
        !f.acting &&
        !f.has("who", "sold", "sale", "earn", "howPaid") &&
        !f.groups("buyer")) ||
      (f.groups("source") &&
        f.has("paid", "spent") &&
        !f.supply &&
        !f.has("earn", "net", "revenue", "withoutBuying", "overhead")) ||
      // "how much went to yard sales"
      (f.source &&
        f.has("spent") &&
        !f.fixes &&
        !f.piece &&
        !f.has("howMany", "earn", "net", "revenue", "sold")) ||
      (f.has("paid") &&
        !f.loan &&
        (f.piece ||
          f.source ||
          f.has("bought", "free") ||
          (f.by && f.groups("piece")) ||
          (f.beside && f.person) ||
          (f.yesNo && f.limit && f.generic)) &&
        !f.has("howMany", "sold", "sale", "earn", "net", "revenue")) ||
      (f.has("bought") &&
        (f.has("money", "total", "paid", "spent", "cost") ||
          f.average ||
          (f.order && !f.has("sold") && !f.mostOf && !f.ranks)) &&
        !f.has("howMany", "earn", "net", "revenue", "soldFor", "sold", "sale")),
    takes: [...MUCH, "price", "paid", "bought", "got", "spent", "cost", "unsold", "when", "free"],
  },
  {
    measure: "cost",
    when: (f) =>
      f.has("cost") &&
      (f.piece ||
        (f.order && (f.generic || f.groups("piece", "kind"))) ||
        (f.by && f.groups("piece", "kind", "source", "person", "place")) ||
        (f.average && !f.groups("day", "week", "month", "quarter", "year") && !f.period) ||
        (f.generic &&
          (f.has("sold", "unsold", "listed", "finished", "kept", "given", "scrapped") ||
            f.source ||
            f.person) &&
          (!f.period || (f.has("sold") && !f.beside && !f.by)))) &&
      !f.supply &&
      !f.has("howMany", "earn", "spent", "overhead"),
    takes: cues("cost fared got paid unsold sold listed finished kept given scrapped gone tiedUp", MUCH),
  },
  {
    measure: "spent",
    when: (f) => f.has("spent", "cost") && !f.has("howMany", "earn", "net", "revenue"),
    takes: [...MUCH, ...cues("spent cost fared paid withBuying gone took got unsold sold listed finished")],
  },
  {
    measure: "proceeds",
    when: (f) =>
      !f.has("howMany") &&
      (f.has("revenue", "soldFor") ||
        (f.has("sale") && (f.order || f.average || f.has("money", "total") || !f.by)) ||
        (f.has("sale") && f.by) ||
        (f.has("sold") && f.has("money", "paid", "total") && !f.has("earn", "net", "asking")) ||
        (f.has("sold") && ((f.average && !f.countsRate) || (f.limit && !f.by && !f.yesNo)))) &&
      !f.has("earn", "net", "asking"),
    takes: cues("revenue soldFor got paid fared everything took earn price bought free listed", MUCH, SALES),
  },
  {
    measure: "count",
    when: (f) => f.has("howMany") && countedBy(f) !== null,
    takes: cues(
      "howMany gone unsold unfinished have had got paid fared free takes took loss finished listed started",
      MUCH,
    ),
  },
  {
    // "How many dressers": those that are here, in a stretch of time those sold, and the answer says so
    measure: "count",
    when: (f) => f.has("howMany") && f.plainCount && !f.order && !f.limit,
    takes: [...MUCH, "howMany"],
  },
  {
    measure: "profit",
    when: (f) =>
      f.has("earn", "net", "loss") ||
      (f.has("fared") &&
        !f.has("when", "who", "where") &&
        (f.piece || f.period || f.by || f.order || f.source || (f.buyer && !f.yesNo))),
    takes: cues(
      "earn net fared everything revenue got bought gone income finished unsold listed kept given scrapped returned free took paid cost takes did loss",
      MUCH,
      SALES,
    ),
  },
  {
    measure: "count",
    when: (f) =>
      f.order &&
      (f.has("sold", "bought", "finished", "listed", "started", "returned") ||
        (f.has("got") && f.groups("person"))) &&
      // "Where do i find the best stuff" is asked by what came of it.
      !(f.ranks && f.has("bought") && (f.has("where") || f.groups("source"))),
    takes: [...MUCH, "gone", "when", "where", "who"],
  },
  {
    // "The priciest dresser": what was paid for it
    measure: "price",
    when: (f) => f.pricey && !f.by && !f.has("daysListed", "asking", "tiedUp", "howMany", "who", "listed"),
    takes: [...MUCH, "bought", "got", "free", "when", "where"],
  },
  {
    measure: "profit",
    // What stood longest is asked for in days.
    when: (f) => f.order && !f.longest && !f.has("daysListed", "asking", "tiedUp", "howMany", "common"),
    takes: [...MUCH, ...SALES, "fared", "gone", "when", "where", "who", "bought", "got", "free"],
  },
  {
    measure: "cost",
    when: (f) => f.inPiece && f.has("money"),
    takes: [...MUCH, "got", "unsold"],
  },
  {
    measure: "count",
    when: (f) =>
      !f.has("money", "when", "where", "who") &&
      f.has(...HAPPENED) &&
      !f.told &&
      (f.piece || f.generic || f.source || f.person || f.unit("count") || (f.yesNo && f.has("returned"))) &&
      (f.period || f.piece || f.source || f.yesNo || f.fromBuyer || f.method),
    takes: [...MUCH, "gone", "got", "have", "free"],
  },
  {
    // "Did i buy more in june than in july"
    measure: "count",
    when: (f) =>
      f.beside &&
      !f.ranks &&
      !f.has("money", "when", "where", "who", "sale", "earn", "net") &&
      (f.has(...HAPPENED, "have") || f.morePieces),
    takes: [...MUCH, "gone", "got"],
  },
  {
    // "sold per month", "finished by kind"
    measure: "count",
    when: (f) => !f.has("money", "when", "where", "who") && f.by && f.has(...HAPPENED),
    takes: [...MUCH, "gone", "got"],
  },
  {
    measure: "profit",
    when: (f) => f.beside && !f.has("howMany"),
    takes: [...MUCH, "fared", "bought", "got"],
  },
  {
    // "Q3", "the last 7 days", "october by week": what they made
    measure: "net",
    when: (f) => f.period && f.wordless,
    takes: ["money"],
  },
  {
    measure: "profit",
    when: (f) => f.by && f.has("chart"),
    takes: [...MUCH, "chart"],
  },
];
