import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { Kind, Mention, Missing, Reading, ReadingOf } from "../reading.ts";
import { whyOf } from "../unclear.ts";
import type { AnyGrammar } from "../verbs.ts";

/** A clause on its way to a reading; fields may still be shared from its neighbours. */
export interface Draft {
  kind: Kind;
  fields: Record<string, unknown>;
  clause: Clause;
  /** Fields to ask for where they are not there. */
  needs: readonly string[];
  /** It takes a date. */
  dated: boolean;
  /** It needs pieces. */
  wantsPieces: boolean;
  /** Its pieces are those of the clause before. */
  takesBefore: boolean;
  /** "them": where the clause before named one piece, those of its whole run are meant. */
  takesSeveral: boolean;
  follows: boolean;
  /** Its verb is that of the clause before, said once for both. */
  repeats: boolean;
  /** The field that holds the price of one of the pieces of the clause before. */
  eachOf: string | undefined;
  /** Why it is unclear. */
  trouble: Trouble | undefined;
  /** What an unclear clause may mean, likeliest first. */
  could: Draft[];
  /** The words that no reading takes up. */
  left: readonly string[];
}

const NOTHING_NEEDED: readonly string[] = [];

/** A draft of a kind with what is known of it. */
export function draft(
  kind: Kind,
  fields: Record<string, unknown>,
  clause: Clause,
  grammar: AnyGrammar | null = null,
): Draft {
  return {
    kind,
    fields,
    clause,
    needs: grammar?.needs ?? NOTHING_NEEDED,
    dated: grammar !== null && !grammar.dateless,
    wantsPieces: grammar?.wantsPieces ?? false,
    takesBefore: false,
    takesSeveral: false,
    follows: false,
    repeats: false,
    eachOf: undefined,
    trouble: undefined,
    could: [],
    left: [],
  };
}

/** A clause that nothing is recorded of as it stands: why, and what it may mean. */
export function unclearDraft(
  clause: Clause,
  trouble: Trouble,
  { could = [], left = [] }: { could?: Draft[]; left?: readonly string[] } = {},
): Draft {
  return { ...draft("unclear", {}, clause), trouble, could, left };
}

/** "lamp to 22": another price, or its first one. */
const isOfPrice = (could: readonly Reading[]): boolean =>
  could.length === 2 && could[0]!.kind === "reprice" && could[1]!.kind === "list";

/** "nell left 50 on the dresser": put down for it, or all that it went for. */
const isOfDeposit = (could: readonly Reading[]): boolean =>
  could.length === 2 &&
  could[0]!.kind === "hold" &&
  could[0]!.deposit !== undefined &&
  could[0]!.buyer !== undefined &&
  could[1]!.kind === "sell" &&
  could[1]!.price === could[0]!.deposit;

/** "i intend to lower the hutch to 190 next week": what is left over may turn all of it round. */
const isAllKnown = ({ tokens }: Clause): boolean =>
  tokens.every(
    ({ kind, claimed, unknown, roles }) =>
      kind !== "span" && !roles.vagueTime && (claimed === true || unknown !== true),
  );

const CERTAIN: Readonly<Partial<Record<Trouble["kind"], true>>> = {
  buyer: true,
  eitherOf: true,
  asking: true,
  backAndKept: true,
  "so far": true,
  cutOrPrice: true,
};

/** The reading of a draft; of an unclear one, with the readings that it may mean. */
export function readingOf(made: Draft, line: number): Reading {
  const { clause } = made;
  if (!made.trouble) return clearReading(made, line);
  const reading: ReadingOf<"unclear"> = {
    kind: "unclear",
    why: whyOf(made.trouble),
    text: clause.text,
    line,
  };
  const could = made.could.filter(({ trouble }) => !trouble).map((each) => clearReading(each, line));
  if (could.length > 0) reading.could = could;
  if (made.left.length > 0) reading.left = [...made.left];
  // Nothing is left over: where the books leave one of them, it is that.
  const isOfTwo = isOfPrice(could) || isOfDeposit(could);
  if (could.length > 0 && (CERTAIN[made.trouble.kind] || (isOfTwo && isAllKnown(clause))))
    reading.byBooks = true;
  return reading as Reading;
}

function clearReading(made: Draft, line: number): Reading {
  const pieces = made.fields["pieces"] as Mention[] | undefined;
  // "bought the white one": what it is, is still to say.
  if (
    made.kind === "buy" &&
    pieces?.some(({ name, number, alike }) => !name && number === undefined && !alike)
  )
    delete made.fields["pieces"];
  let missing: Missing[] | undefined;
  for (const field of made.needs as readonly Missing[]) {
    // A cut stands in for the new price.
    if (field === "price" && made.fields["cut"] !== undefined) continue;
    const isThere =
      field === "count" ? !pieces?.some((mention) => mention.plural) : made.fields[field] !== undefined;
    if (!isThere) missing = [...(missing ?? []), field];
  }
  if (missing?.includes("count")) for (const mention of pieces ?? []) delete mention.plural;
  // Nothing asks the draft for them any more, and to copy them would take longer than anything else here.
  const reading = made.fields;
  reading["kind"] = made.kind;
  if (missing) reading["missing"] = missing;
  if (made.follows || made.takesBefore) reading["follows"] = true;
  if (made.takesBefore && !made.follows && !made.takesSeveral) reading["one"] = true;
  reading["text"] = made.clause.text;
  reading["line"] = line;
  return reading as unknown as Reading;
}
