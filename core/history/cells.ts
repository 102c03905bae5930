import type { Day } from "../calendar.ts";
import { isDay } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { AMOUNT_CENTS_MAX } from "../money.ts";
import type { Column } from "./columns.ts";
import type { HistoryDesk, HistoryRow } from "./row.ts";

/** A cell or a row as read, or what is wrong with it. */
export type Read<T> = { kind: "read"; value: T } | { kind: "wrong"; why: string };

/** A cell or a row that cannot be read. */
export function wrong(why: string): { kind: "wrong"; why: string } {
  return { kind: "wrong", why };
}

/** A row of the file by its cells; the first thing wrong with it, in the order of the columns. */
export function readRow(cell: (column: Column) => string, desk: HistoryDesk): Read<Omit<HistoryRow, "row">> {
  const named = readName(cell("name"), desk);
  if (named.kind === "wrong") return named;
  const bought = readDay(cell("bought"), "bought on", desk.today);
  if (bought.kind === "wrong") return bought;
  const price = readAmount(cell("price"), "price");
  if (price.kind === "wrong") return price;
  const materials = cell("materials") === "" ? { value: 0 } : readAmount(cell("materials"), "materials");
  if ("kind" in materials && materials.kind === "wrong") return materials;
  const sold = readSale(cell("soldOn"), cell("soldFor"), desk.today);
  if (sold.kind === "wrong") return sold;
  if (sold.value && sold.value.day < bought.value) return wrong("sold before it was bought");
  const value = { bought: bought.value, price: price.value, materials: materials.value, sold: sold.value };
  return { kind: "read", value: { ...named.value, ...value } };
}

function readName(
  text: string,
  desk: HistoryDesk,
): Read<Pick<HistoryRow, "name" | "traits" | "count" | "set">> {
  if (text === "") return wrong("the name is empty");
  if (text.length > 60) return wrong("the name is longer than 60 letters");
  const mention = desk.mentionOf?.(text);
  if (mention?.plural) return wrong(`how many are "${text}"? Write the count first`);
  const name = mention?.name ?? text.toLowerCase().replace(/\s+/g, " ");
  return {
    kind: "read",
    value: { name, traits: mention?.traits ?? [], count: mention?.count ?? 1, set: mention?.set ?? false },
  };
}

function readSale(day: string, price: string, today: Day): Read<HistoryRow["sold"]> {
  if (day === "" && price === "") return { kind: "read", value: null };
  if (price === "") return wrong('"sold on" is filled but "sold for" is empty');
  if (day === "") return wrong('"sold for" is filled but "sold on" is empty');
  const soldOn = readDay(day, "sold on", today);
  if (soldOn.kind === "wrong") return soldOn;
  const soldFor = readAmount(price, "sold for");
  if (soldFor.kind === "wrong") return soldFor;
  return { kind: "read", value: { day: soldOn.value, price: soldFor.value } };
}

/** ISO days (2026-03-14, 2026/3/14) and US ones (3/14/2026, 3/14/26), not in the future. */
function readDay(text: string, heading: string, today: Day): Read<Day> {
  if (text === "") return wrong(`"${heading}" is empty`);
  const iso = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text);
  const us = /^(\d{1,2})[-/](\d{1,2})[-/](\d{4}|\d{2})$/.exec(text);
  const [year, month, date] = iso ? iso.slice(1) : us ? [us[3], us[1], us[2]] : [];
  if (!year || !month || !date)
    return wrong(`"${heading}" ${quoted(text)} is no day: write 2026-03-14 or 3/14/2026`);
  const day = `${year.padStart(4, "20")}-${month.padStart(2, "0")}-${date.padStart(2, "0")}`;
  if (!isDay(day)) return wrong(`"${heading}" ${quoted(text)} does not exist: US days are month/day/year`);
  if (day > today) return wrong(`"${heading}" ${quoted(text)} is still to come`);
  return { kind: "read", value: day };
}

/** Amounts as in notes: at most two decimals, commas only as thousands, none below zero, 1,000,000 at most. */
function readAmount(text: string, heading: string): Read<Cents> {
  if (text === "") return wrong(`"${heading}" is empty`);
  if (/^(-|\(|\$\s*-)/.test(text)) return wrong(`"${heading}" ${quoted(text)} is below zero`);
  const match = /^\$?\s*(\d{1,3}(?:,\d{3})+|\d*)(?:\.(\d{1,2}))?\s*\$?$/.exec(text);
  const digits = `${match?.[1] ?? ""}${match?.[2] ?? ""}`;
  if (!match || digits === "") return wrong(`"${heading}" ${quoted(text)} is no amount: write 1250 or 12.50`);
  const whole = (match[1] ?? "").replaceAll(",", "");
  if (whole.length > 9) return wrong(`"${heading}" ${quoted(text)} is over 1,000,000`);
  const cents = Number(whole) * 100 + Number((match[2] ?? "").padEnd(2, "0"));
  if (cents > AMOUNT_CENTS_MAX) return wrong(`"${heading}" ${quoted(text)} is over 1,000,000`);
  return { kind: "read", value: cents };
}

/** A cell's words in quotation marks, cut short for a phone. */
export function quoted(text: string): string {
  return `"${text.length > 20 ? `${text.slice(0, 19)}…` : text}"`;
}
