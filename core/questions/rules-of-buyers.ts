import { MUCH, type Rule, SALES } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

/** Words for another figure than what came in. */
const NO_PROCEEDS: readonly Cue[] = cues("howMany earn net bought price deposits owed fees sold");

/** What those who buy from us do: they pay, take, owe, and are found by what they took. */
export const BUYER_RULES: readonly Rule[] = [
  {
    // "Who pays cash", "who paid by card in june"
    measure: "proceeds",
    when: (f) =>
      f.has("who") && f.method && f.has("paid") && !f.order && !f.piece && !f.by && !f.has("bought", "price"),
    takes: [...MUCH, "who", "paid"],
  },
  {
    // "The nurse's purchases"
    measure: "count",
    when: (f) =>
      f.buyer && f.has("purchases") && !f.has("money", "total", "average", "howMany") && !f.order && !f.by,
    takes: [...MUCH, "purchases", "bought"],
    list: true,
  },
  {
    // "Student or teacher, who bought more"
    measure: "count",
    when: (f) =>
      f.beside && f.has("who") && f.has("bought", "took") && !f.has("money", "paid", "spent", "earn"),
    takes: [...MUCH, "who", "bought", "took"],
  },
  {
    // "Has the doctor paid everything": nothing is owed any more
    measure: "owed",
    when: (f) => f.settles && (f.buyer || f.acting || f.everyone),
    takes: [...MUCH, "paid", "everything", "owed", "paidUp", "payoff", "loanPaid"],
  },
  {
    // "How many went to the student"
    measure: "count",
    when: (f) => f.has("howMany") && f.buyer && f.has("spent", "gone") && !f.has("money", "paid"),
    takes: ["howMany", "spent", "gone"],
  },
  {
    measure: "count",
    when: (f) => (f.has("payWays") || (f.asksWay && (f.acting || f.buyer))) && !f.number,
    takes: ["payWays", "paid", "howPaid"],
  },
  {
    // "Total from the student", "cash from the nurse"
    measure: "proceeds",
    when: (f) =>
      f.fromBuyer &&
      !f.supply &&
      (f.bare || f.has("money", "total", "revenue", "soldFor")) &&
      !f.has(...NO_PROCEEDS),
    takes: [...MUCH, "got", "sale", "revenue", "soldFor"],
  },
  {
    // "How much off the estate sale stuff"
    measure: "profit",
    when: (f) => f.fromSource && f.has("money") && f.plain && !f.order && !f.by && !f.supply,
    takes: MUCH,
  },
  {
    // What a buyer pays is what pieces went for.
    measure: "proceeds",
    when: (f) =>
      (f.acting || f.groups("buyer") || f.has("who")) &&
      f.has("paid", "spent") &&
      (f.average || f.order) &&
      !f.has("bought", "price", "loan"),
    takes: [...MUCH, ...SALES, "spent", "paid", "who", "got"],
  },
  {
    // "How many times did the neighbor buy", "did the teacher buy anything"
    measure: "count",
    when: (f) =>
      (f.acting && f.has("bought", "got", "took") && (f.has("howMany", "times") || f.yesNo)) ||
      // "Who took the most", "which buyer got the most pieces"
      (f.order &&
        ((f.has("who") && f.has("bought", "took")) ||
          (f.groups("buyer") && f.has("bought", "took", "got"))) &&
        !f.has("earn", "net", "revenue") &&
        !f.has("price", "paid", "money", "spent") &&
        !f.person),
    takes: [...MUCH, ...SALES, "bought", "got", "took", "howMany", "times", "gone", "who"],
  },
  {
    // "Who bought the hutch and for how much"
    measure: "proceeds",
    when: (f) =>
      f.has("who") &&
      f.has("bought", "took", "got", "sold") &&
      f.has("money", "soldFor") &&
      f.piece &&
      !f.person &&
      !f.order,
    takes: [...MUCH, ...SALES, "who", "bought", "took", "got"],
  },
  {
    // "Who did i sell to in october", "where did i buy in june"
    measure: "count",
    when: (f) =>
      f.whom !== null &&
      !f.piece &&
      !f.supply &&
      !f.order &&
      !f.by &&
      !f.has("money", "total", "earn", "net", "howMany"),
    takes: [...MUCH, "who", "where", "sold", "bought", "got", "did"],
  },
  {
    // "What pieces did the student get", "pieces the student took"
    measure: "count",
    when: (f) =>
      f.acting && f.has("bought", "got", "took") && f.lists && f.generic && !f.limit && !f.order && !f.by,
    takes: [...MUCH, ...SALES, "bought", "got", "took"],
    list: true,
  },
  {
    // "Doctor's total"
    measure: "proceeds",
    when: (f) => (f.buyer || (f.by && f.groups("buyer"))) && f.has("total", "money") && f.plain,
    takes: [...MUCH],
  },
  {
    // "What did the nurse pay for the hutch", "neighbor bought how much"
    measure: "proceeds",
    when: (f) =>
      f.acting &&
      ((f.has("paid") && f.piece) || (f.has("bought", "took", "got") && f.has("money", "total"))) &&
      !f.has("howMany", "earn", "net", "price"),
    takes: [...MUCH, ...SALES, "paid", "bought", "took", "got"],
  },
  {
    // "What does the doctor owe"
    measure: "owed",
    when: (f) => f.buyer && f.has("owe") && !f.loan,
    takes: [...MUCH, "owe", "owed"],
  },
  {
    // "How much has the nurse paid me": deposits are money of theirs, what they owe is not yet.
    measure: "received",
    when: (f) =>
      (f.acting || f.buyer) &&
      f.has("paid") &&
      f.has("money", "total") &&
      !f.person &&
      !f.piece &&
      !f.generic &&
      !f.supply &&
      !f.stream &&
      !f.loan &&
      !f.method &&
      !f.order &&
      !f.average &&
      !f.has("bought", "price", "spent", "sold", "owe", "owed", "fees"),
    takes: [...MUCH, "paid", "got"],
  },
  {
    // What buyers spend comes in.
    measure: "proceeds",
    when: (f) =>
      (f.groups("buyer") || (f.buyer && !f.supply)) &&
      f.has("spent", "paid") &&
      (f.has("money", "total", "spent") || f.yesNo || f.groups("buyer") || (f.acting && !f.piece)) &&
      !f.has("bought", "price"),
    takes: [...MUCH, ...SALES, "spent", "paid", "got", "revenue"],
  },
];
