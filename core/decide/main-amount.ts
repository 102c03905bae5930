import { plainMiles } from "../mileage.ts";
import type { Cents } from "../money.ts";
import type { Missing, Reading } from "../notes/reading.ts";
import { language } from "../notes/verbs.ts";

/** The field of a reading's main amount, said or missing; null where its kind has none, or more than one way to say it. */
export function mainAmountOf(reading: Reading): string | null {
  const field = language().grammars.get(reading.kind)?.main;
  if (!field || reading.each || (reading.kind === "reprice" && reading.cut !== undefined)) return null;
  const isSaid = field in reading || reading.missing?.includes(field as Missing);
  return isSaid ? field : null;
}

/** What changes when a reading's main amount (cents; of a drive, hundredths of a mile) is another. */
export function withMainAmount(reading: Reading, amount: Cents): Partial<Reading> {
  const field = mainAmountOf(reading);
  if (field === null) throw new Error(`a note of kind ${reading.kind} has no main amount`);
  const missing = reading.missing?.filter((each) => each !== field) ?? [];
  const value = field === "miles" ? plainMiles(amount) : amount;
  return { [field]: value, missing } as Partial<Reading>;
}
