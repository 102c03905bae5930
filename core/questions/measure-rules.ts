import type { Limited } from "./parts.ts";
import type { Counted, Grouping, MeasureName } from "./query.ts";
import type { Cue } from "./words/cues.ts";

/** What the question has, as far as it helps to tell its measure. */
export interface Features {
  has(...cues: readonly Cue[]): boolean;
  /** A piece is named: by number, kind or trait. */
  piece: boolean;
  number: boolean;
  /** A supply or a category of spending is named. */
  supply: boolean;
  stream: boolean;
  /** A place where pieces come from. */
  source: boolean;
  loan: boolean;
  person: boolean;
  /** Something is put in order, or rows are wanted. */
  order: boolean;
  fast: boolean;
  by: boolean;
  period: boolean;
  average: boolean;
  /** "on pieces", "in furniture": pieces in general are what the money is about. */
  onPieces: boolean;
  /** "in the hutch". */
  inPiece: boolean;
  generic: boolean;
  /** "over 100". */
  limit: boolean;
  /** The amount is of one of these: "over 5 hours". */
  unit(...units: readonly NonNullable<Limited["unit"]>[]): boolean;
  /** One who buys does it: "what did the student pay". */
  acting: boolean;
  /** Things are wanted one by one: "which pieces", "what sold". */
  lists: boolean;
  /** It opens with what was done: "sold to the teacher". */
  opens: boolean;
  /** As it stands: "now", "currently". */
  now: boolean;
  /** "Finished #46": a note, and no question. */
  told: boolean;
  /** "The longest". */
  longest: boolean;
  /** "whats the hutch at". */
  endsAt: boolean;
  /** Someone who buys is named with no word before: "what has the coworker spent". */
  buyer: boolean;
  /** One period, or one sort of piece, beside another. */
  beside: boolean;
  /** "The most pieces": how many is put in order. */
  mostOf: boolean;
  /** "How long does a chair sit": of chairs in general. */
  habit: boolean;
  /** It opens like a question that is answered with yes or no. */
  yesNo: boolean;
  /** Rows or an order by one of these. */
  groups(...groups: readonly Grouping[]): boolean;
}

/** One way to ask for a measure: when it is that, and the cues that it takes up. */
interface Rule {
  measure: MeasureName;
  when(f: Features): boolean;
  takes: readonly Cue[];
  /** A row for each piece. */
  list?: true;
}

const MUCH: readonly Cue[] = ["money", "total", "average", "median", "have", "which", "list"];
const SALES: readonly Cue[] = ["sold", "sale", "soldFor", "gone"];

const REACHED: readonly Cue[] = [
  ...MUCH,
  ...SALES,
  "reached",
  "share",
  "comeDown",
  "asking",
  "soldFor",
  "listed",
  "price",
  "fared",
  "got",
  "earn",
];

/** What a count counts, by the cue that says it; the first that is said. */
const COUNTED: readonly (readonly [Cue, Counted])[] = [
  ["unlisted", "unlisted"],
  ["unfinished", "unfinished"],
  ["unsold", "unsold"],
  ["held", "held"],
  ["returned", "returned"],
  ["kept", "kept"],
  ["given", "given"],
  ["scrapped", "scrapped"],
  ["notes", "notes"],
  ["started", "started"],
  ["finished", "finished"],
  ["listed", "listed"],
  ["sold", "sold"],
  ["sale", "sold"],
  ["soldFor", "sold"],
  ["took", "sold"],
  ["revenue", "sold"],
  ["bought", "bought"],
  ["price", "bought"],
  ["got", "bought"],
  ["owed", "owing"],
  ["free", "bought"],
  ["have", "unsold"],
  ["loss", "gone"],
  ["earn", "gone"],
  ["net", "gone"],
  ["gone", "gone"],
];

export function countedBy(f: Features): { counted: Counted; cue: Cue } | null {
  // What a buyer buys is sold.
  const isBuyers = f.acting || (f.has("who") && !f.person);
  if (isBuyers && f.has("bought", "got", "took"))
    return { counted: "sold", cue: f.has("bought") ? "bought" : f.has("got") ? "got" : "took" };
  // "How many have more than 2 hours in them": gone ones too.
  const isOfWork = f.unit("minutes", "miles");
  const found = COUNTED.find(([cue]) => f.has(cue) && !(isOfWork && cue === "have"));
  if (found) return { counted: found[1], cue: found[0] };
  if (f.groups("buyer")) return { counted: "sold", cue: "sold" };
  return f.source || f.unit("minutes", "days", "miles") ? { counted: "bought", cue: "bought" } : null;
}

/** What is counted where nothing else is asked of it: "pieces sold in july". */
const HAPPENED: readonly Cue[] = [
  "sold",
  "bought",
  "finished",
  "started",
  "listed",
  "returned",
  "unsold",
  "held",
  "kept",
  "given",
  "scrapped",
];

/** The measures in the order in which they are tried: the telling words first, the common ones last. */
export const RULES: readonly Rule[] = [
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
    measure: "days here",
    when: (f) =>
      f.lists && f.unit("days") && f.has("unsold", "have", "had", "sat") && !f.has("daysListed", "listed"),
    takes: ["which", "list", "unsold", "have", "had", "sat", "gone"],
    list: true,
  },
  {
    measure: "days here",
    when: (f) =>
      (f.longest || (f.average && f.has("howLong"))) &&
      f.has("had", "unsold") &&
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
      f.lists && f.limit && f.has("listed", "asking") && !f.has("sold", "soldFor", "earn", "daysListed"),
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
    measure: "refunds",
    when: (f) =>
      f.has("refunds") &&
      !f.has("deposits", "loan", "when", "who", "howMany", "list", "notes", "did", "earn", "net") &&
      (f.period || f.has("money", "total") || f.by || f.piece),
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
      (f.has("who") &&
        f.order &&
        f.has("bought", "took") &&
        !f.has("price", "paid", "money", "spent") &&
        !f.person),
    takes: [...MUCH, ...SALES, "bought", "got", "took", "howMany", "times", "gone", "who"],
  },
  {
    // What buyers spend comes in.
    measure: "proceeds",
    when: (f) =>
      (f.groups("buyer") || (f.buyer && !f.supply)) &&
      f.has("spent", "paid") &&
      (f.has("money", "total", "spent") || f.yesNo || f.groups("buyer")) &&
      !f.has("bought", "price"),
    takes: [...MUCH, ...SALES, "spent", "paid", "got"],
  },
  {
    measure: "come down",
    when: (f) => f.has("comeDown"),
    takes: REACHED,
  },
  {
    measure: "reached",
    when: (f) => f.has("reached") || (f.has("share") && f.has("asking")),
    takes: REACHED,
  },
  {
    measure: "hourly",
    when: (f) => f.has("hourly") && !f.has("price"),
    takes: [...MUCH, ...SALES, "hourly", "earn", "net", "minutes", "fared", "paid", "revenue", "had"],
  },
  {
    measure: "days to sell",
    when: (f) =>
      f.has("daysToSell") ||
      (f.has("howLong") && f.has("sold", "takes") && !f.has("minutes", "daysListed", "listed", "loan")) ||
      (f.has("howLong") && f.has("bought") && f.has("sold")) ||
      (f.fast && f.has("sold", "sale", "daysToSell", "takes")) ||
      (f.fast && !f.has("earn", "net", "revenue", "spent", "minutes")),
    takes: [
      ...MUCH,
      ...SALES,
      "daysToSell",
      "takes",
      "howLong",
      "bought",
      "held",
      "had",
      "minutes",
      "unsold",
      "got",
      "fared",
      "howMany",
      "sat",
    ],
  },
  {
    measure: "days listed",
    when: (f) =>
      f.has("daysListed") || (f.has("howLong") && f.has("listed", "sat")) || (f.order && f.has("sat")),
    takes: [
      ...MUCH,
      ...SALES,
      "daysListed",
      "sat",
      "listed",
      "howLong",
      "unsold",
      "had",
      "howMany",
      "asking",
      "tiedUp",
      "minutes",
      "cost",
    ],
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
    takes: [
      ...MUCH,
      "miles",
      "howMany",
      "did",
      "notes",
      "cost",
      "loanPaid",
      "fared",
      "bought",
      "got",
      "spent",
      "minutes",
    ],
  },
  {
    measure: "owed",
    when: (f) => f.has("owed") && !f.loan && !f.has("interest"),
    takes: [...MUCH, ...SALES, "owed", "owe", "who", "whose", "unsold", "paid", "howMany"],
  },
  {
    measure: "deposits",
    when: (f) => f.has("deposits"),
    takes: [
      ...MUCH,
      "deposits",
      "held",
      "sat",
      "whose",
      "who",
      "unsold",
      "tiedUp",
      "daysListed",
      "loanPaid",
      "had",
      "cost",
      "howMany",
      "got",
    ],
  },
  {
    measure: "paid",
    when: (f) =>
      (f.loan || f.has("loanPaid")) &&
      f.has("loanPaid", "paid", "spent", "gone", "took", "principal") &&
      !f.supply &&
      !f.piece &&
      !f.has("owe"),
    takes: [...MUCH, "loanPaid", "paid", "loan", "spent", "gone", "took", "fared", "howMany"],
  },
  {
    measure: "income",
    when: (f) => f.stream || (f.has("income") && !f.has("everything", "net", "sold", "sale") && !f.piece),
    takes: [...MUCH, "income", "earn", "net", "revenue", "paid", "got", "fared", "sale", "everything"],
  },
  {
    measure: "minutes",
    when: (f) =>
      f.has("minutes") &&
      !(f.unit("minutes") && f.has("earn", "net", "revenue", "soldFor", "sale", "price", "cost")) &&
      !f.supply &&
      !f.has("miles", "price", "inDays", "times"),
    takes: [
      ...MUCH,
      "minutes",
      "howMany",
      "howLong",
      "spent",
      "notes",
      "cost",
      "takes",
      "paid",
      "did",
      "fared",
      "earn",
    ],
  },
  {
    measure: "tied up",
    when: (f) =>
      !f.number &&
      ((f.has("tiedUp") && !f.has("spent", "interest")) ||
        (f.has("cost", "spent", "sat") &&
          f.has("unsold", "unfinished") &&
          !f.has("howMany", "asking", "howLong")) ||
        (f.has("money") &&
          f.has("unsold", "unfinished") &&
          !f.has("howMany", "asking", "earn", "net", "owed", "revenue", "soldFor"))),
    takes: [
      ...MUCH,
      "got",
      "tiedUp",
      "cost",
      "unfinished",
      "unsold",
      "spent",
      "sat",
      "price",
      "paid",
      "gone",
      "listed",
      "had",
    ],
  },
  {
    measure: "asking",
    when: (f) =>
      f.has("asking") && !f.has("howMany", "revenue", "earn") && !(f.has("soldFor") || f.has("sold")),
    takes: [...MUCH, "asking", "listed", "unsold", "have", "got", "price", "tiedUp", "fared"],
  },
  {
    measure: "price",
    when: (f) =>
      f.has("price") &&
      !f.has("withoutBuying", "howMany", "earn", "net") &&
      !(f.supply && f.has("spent")) &&
      !(f.has("soldFor") && !f.has("bought", "paid")),
    takes: [...MUCH, "price", "paid", "bought", "got", "spent", "cost", "unsold", "sold", "when"],
  },
  {
    measure: "spent",
    when: (f) =>
      f.has("withoutBuying", "overhead") ||
      (f.groups("category", "what") && !f.has("earn", "net", "revenue", "howMany", "sold")) ||
      (f.supply && !f.has("howMany", "soldFor", "net", "earn")),
    takes: [
      ...MUCH,
      "spent",
      "withoutBuying",
      "cost",
      "paid",
      "bought",
      "price",
      "fared",
      "got",
      "gone",
      "took",
      "takes",
      "minutes",
      "unsold",
      "sold",
      "howMany",
      "fees",
      "notes",
      "earn",
      "tiedUp",
      "loanPaid",
      "overhead",
    ],
  },
  {
    measure: "price",
    when: (f) =>
      (f.onPieces &&
        f.has("spent", "paid", "cost") &&
        !f.has("howMany", "earn", "net", "revenue", "sold", "sale")) ||
      (f.has("purchases") && f.by && !f.has("howMany")) ||
      (f.order && f.groups("source") && f.has("paid", "spent") && !f.has("earn", "net", "revenue")) ||
      // "how much went to yard sales"
      (f.source && f.has("spent") && !f.piece && !f.has("howMany", "earn", "net", "revenue", "sold")) ||
      (f.has("paid") &&
        !f.loan &&
        (f.piece || f.source || f.has("bought")) &&
        !f.has("howMany", "sold", "sale", "earn", "net", "revenue")) ||
      (f.has("bought") &&
        (f.has("money", "total", "paid", "spent", "cost") ||
          f.average ||
          (f.order && !f.has("sold") && !f.mostOf)) &&
        !f.has("howMany", "earn", "net", "revenue", "soldFor", "sold", "sale")),
    takes: [...MUCH, "price", "paid", "bought", "got", "spent", "cost", "unsold", "when"],
  },
  {
    measure: "cost",
    when: (f) =>
      f.has("cost") &&
      (f.piece || (f.order && (f.generic || f.groups("piece", "kind")))) &&
      !f.has("howMany", "earn", "spent"),
    takes: [
      ...MUCH,
      "cost",
      "fared",
      "got",
      "paid",
      "unsold",
      "sold",
      "listed",
      "finished",
      "gone",
      "tiedUp",
    ],
  },
  {
    measure: "spent",
    when: (f) => f.has("spent", "cost") && !f.has("howMany", "earn", "net", "revenue"),
    takes: [
      ...MUCH,
      "spent",
      "cost",
      "fared",
      "paid",
      "gone",
      "took",
      "got",
      "unsold",
      "sold",
      "listed",
      "finished",
    ],
  },
  {
    measure: "proceeds",
    when: (f) =>
      !f.has("howMany") &&
      (f.has("revenue", "soldFor") ||
        (f.has("sale") && (f.order || f.average || f.has("money", "total") || !f.by)) ||
        (f.has("sale") && f.by) ||
        (f.has("sold") && f.has("money", "paid", "total") && !f.has("earn", "net", "asking")) ||
        (f.has("sold") && (f.average || (f.limit && !f.by && !f.yesNo)))) &&
      !f.has("earn", "net", "asking"),
    takes: [
      ...MUCH,
      ...SALES,
      "revenue",
      "soldFor",
      "got",
      "paid",
      "fared",
      "everything",
      "took",
      "earn",
      "price",
      "bought",
    ],
  },
  {
    measure: "count",
    when: (f) => f.has("howMany") && countedBy(f) !== null,
    takes: [
      ...MUCH,
      "howMany",
      "gone",
      "unsold",
      "unfinished",
      "have",
      "had",
      "got",
      "paid",
      "fared",
      "free",
      "takes",
      "took",
    ],
  },
  {
    measure: "profit",
    when: (f) =>
      f.has("earn", "net", "loss") ||
      (f.has("fared") && !f.has("when", "who", "where") && (f.piece || f.period || f.by || f.order)),
    takes: [
      ...MUCH,
      ...SALES,
      "earn",
      "net",
      "fared",
      "everything",
      "revenue",
      "got",
      "bought",
      "gone",
      "income",
      "finished",
      "unsold",
      "listed",
      "kept",
      "given",
      "scrapped",
      "returned",
      "free",
      "took",
      "paid",
      "cost",
      "takes",
      "did",
      "loss",
    ],
  },
  {
    measure: "count",
    when: (f) => f.order && f.has("sold", "bought", "finished", "listed", "started", "returned"),
    takes: [...MUCH, "gone", "when", "where", "who"],
  },
  {
    measure: "profit",
    when: (f) => f.order && !f.has("daysListed", "asking", "tiedUp", "howMany"),
    takes: [...MUCH, ...SALES, "fared", "gone", "when", "where", "who", "bought"],
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
      (f.piece || f.generic || f.source || f.person) &&
      (f.period || f.piece || f.source || f.yesNo),
    takes: [...MUCH, "gone", "got", "have"],
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
    takes: [...MUCH, "fared"],
  },
  {
    measure: "profit",
    when: (f) => f.by && f.has("chart"),
    takes: [...MUCH, "chart"],
  },
];
