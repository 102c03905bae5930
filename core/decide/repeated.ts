import type { Clause } from "../notes/clause.ts";
import type { Trouble } from "../notes/grammar.ts";
import type { Reading, ReadingFields } from "../notes/reading.ts";
import { money } from "../notes/slots/money.ts";
import { loan, stream } from "../notes/slots/names.ts";
import { category, what } from "../notes/slots/spending.ts";

/** What the rest of the clause records each time: a payment, an income or a cost. */
export function judgeRepeat(fields: ReadingFields["repeat"], clause: Clause): Trouble | null {
  const named = (filled: ReturnType<typeof what>) => (filled && "value" in filled ? filled.value : undefined);
  const base = { text: clause.text, line: 0 };
  let note: Record<string, unknown>;
  if (clause.signs.has("loan")) {
    const name = named(loan(clause));
    note = { kind: "pay", ...(name ? { loan: name } : {}) };
  } else if (clause.signs.has("stream")) note = { kind: "income", stream: named(stream(clause)) };
  else note = { kind: "spend", what: named(what(clause)), category: named(category(clause)) };
  const amount = named(money(clause));
  if (amount === undefined) return { kind: "unclaimed" };
  fields.note = { ...note, amount, ...base } as unknown as Reading;
  return null;
}
