import { z } from "zod";

/** The documented shape of a printed reading, and nothing beside it. */
const money = z.string().regex(/^\d{1,7}\.\d{2}$/);
const decimal = z.string().regex(/^\d+(?:\.\d+)?$/);
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const words = z.string().min(1);
const oneWord = z.string().regex(/^\S+$/);
const mention = z
  .strictObject({
    it: z.literal(true).optional(),
    other: z.literal(true).optional(),
    name: words.optional(),
    count: z.number().int().positive().optional(),
    traits: z.array(words).min(1).optional(),
    number: z.number().int().nonnegative().optional(),
    plural: z.literal(true).optional(),
  })
  .refine(
    ({ name, number, it, other, traits }) => (it ?? other ?? name ?? number ?? traits) !== undefined,
    "a name, a number, it, the other one, or what tells it apart",
  );
const pieces = z.array(mention).min(1).optional();
const missing = z
  .array(
    z.enum([
      "pieces",
      "count",
      "price",
      "amount",
      "what",
      "minutes",
      "miles",
      "balance",
      "percent",
      "stream",
      "per",
    ]),
  )
  .min(1)
  .optional();
const dated = { date: day.optional(), by: words.optional(), missing };
const category = z.enum(["materials", "tools", "vehicle", "fees", "help", "storage", "other"]);

export const printedReading = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("buy"),
    pieces,
    price: money.optional(),
    method: oneWord.optional(),
    source: words.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("spend"),
    what: words.optional(),
    amount: money.optional(),
    category: category.optional(),
    pieces,
    method: oneWord.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("work"),
    minutes: z.number().int().positive().optional(),
    pieces,
    what: words.optional(),
    ...dated,
  }),
  z.strictObject({ kind: z.literal("start"), pieces, ...dated }),
  z.strictObject({ kind: z.literal("finish"), pieces, ...dated }),
  z.strictObject({
    kind: z.literal("list"),
    pieces,
    price: money.optional(),
    place: words.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("reprice"),
    pieces,
    price: money.optional(),
    cut: money.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("hold"),
    pieces,
    deposit: money.optional(),
    agreed: money.optional(),
    method: oneWord.optional(),
    buyer: words.optional(),
    until: day.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("fallthrough"),
    pieces,
    refunded: money.optional(),
    kept: money.optional(),
    // As the corpora have it: "bob backed out of desk".
    buyer: words.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("sell"),
    pieces,
    price: money.optional(),
    method: oneWord.optional(),
    fee: money.optional(),
    buyer: words.optional(),
    owed: money.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("refund"),
    pieces,
    amount: money.optional(),
    returned: z.literal(true).optional(),
    unpaid: z.literal(true).optional(),
    ...dated,
  }),
  z.strictObject({ kind: z.literal("retire"), pieces, how: z.enum(["kept", "given", "scrapped"]), ...dated }),
  z.strictObject({
    kind: z.literal("income"),
    amount: money.optional(),
    stream: words.optional(),
    method: oneWord.optional(),
    ...dated,
  }),
  z.strictObject({ kind: z.literal("pay"), amount: money.optional(), loan: words.optional(), ...dated }),
  z.strictObject({
    kind: z.literal("loan"),
    balance: money.optional(),
    rate: decimal.optional(),
    loan: words.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("terms"),
    rate: decimal.optional(),
    days: z.enum(["365", "365.25", "actual"]).optional(),
    order: z.enum(["highest", "prorata"]).optional(),
    loan: words.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("statement"),
    balance: money.optional(),
    loan: words.optional(),
    ...dated,
  }),
  z.strictObject({ kind: z.literal("drive"), miles: decimal.optional(), pieces, ...dated }),
  z.strictObject({ kind: z.literal("undo") }),
  z.strictObject({
    kind: z.literal("fix"),
    amount: money.optional(),
    minutes: z.number().int().positive().optional(),
    miles: decimal.optional(),
    percent: decimal.optional(),
    date: day.optional(),
  }),
  z.strictObject({
    kind: z.literal("mend"),
    of: z
      .strictObject({
        kind: words.optional(),
        what: words.optional(),
        amount: money.optional(),
        date: day.optional(),
        pieces,
        number: z.number().int().nonnegative().optional(),
        back: z.number().int().positive().optional(),
      })
      .optional(),
    to: z
      .strictObject({
        amount: money.optional(),
        date: day.optional(),
        minutes: z.number().int().positive().optional(),
        miles: decimal.optional(),
        method: oneWord.optional(),
        buyer: words.optional(),
        source: words.optional(),
        fee: money.optional(),
        name: words.optional(),
        traits: z.array(words).min(1).optional(),
        pieces,
      })
      .optional(),
    removed: z.literal(true).optional(),
  }),
  z.strictObject({
    kind: z.literal("trade"),
    gave: pieces,
    got: pieces,
    paid: money.optional(),
    received: money.optional(),
    worth: money.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("collect"),
    amount: money.optional(),
    pieces,
    buyer: words.optional(),
    method: oneWord.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("lent"),
    what: words.optional(),
    pieces,
    to: words.optional(),
    returned: z.literal(true).optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("share"),
    pieces,
    with: words.optional(),
    percent: decimal.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("repeat"),
    every: z.enum(["week", "month", "year"]).optional(),
    day: z.union([z.number().int(), words]).optional(),
    from: day.optional(),
    note: z.lazy((): z.ZodType => printedReading).optional(),
    of: z
      .strictObject({
        kind: words.optional(),
        what: words.optional(),
        loan: words.optional(),
        stream: words.optional(),
        amount: money.optional(),
      })
      .optional(),
    stop: z.literal(true).optional(),
    amount: money.optional(),
    ...dated,
  }),
  z.strictObject({
    kind: z.literal("goal"),
    pieces: z.number().int().positive().optional(),
    amount: money.optional(),
    per: z.enum(["month", "year"]).optional(),
    missing,
  }),
  z.strictObject({ kind: z.literal("taxrate"), percent: decimal }),
  z.strictObject({
    kind: z.literal("nudge"),
    at: z
      .string()
      .regex(/^\d{2}:\d{2}$/)
      .optional(),
    off: z.literal(true).optional(),
    days: z.number().int().positive().optional(),
  }),
  z.strictObject({
    kind: z.literal("ask"),
    about: z.enum([
      "month",
      "year",
      "recap",
      "loan",
      "piece",
      "pieces",
      "unlisted",
      "listed",
      "held",
      "unsold",
      "best",
      "pace",
      "tax",
      "miles",
      "price",
      "worth",
      "help",
    ]),
    month: z
      .string()
      .regex(/^\d{4}-\d{2}$/)
      .optional(),
    year: z
      .string()
      .regex(/^\d{4}$/)
      .optional(),
    pieces,
    price: money.optional(),
  }),
  z.strictObject({
    kind: z.literal("unclear"),
    why: words,
    could: z.lazy((): z.ZodType => z.array(printedReading).min(1).max(3)).optional(),
    left: z.array(words).min(1).optional(),
  }),
]);
