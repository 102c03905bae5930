import { counted as countedWords } from "../answers/wording.ts";
import { showDate, showMonth } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { show } from "../money.ts";
import { pluralOf } from "../notes/plural.ts";
import type { Desk } from "./desk.ts";
import { isLimit } from "./filters.ts";
import { measures } from "./measures.ts";
import type { Counted, Figure, Filter, Period, Query, Unit } from "./query.ts";
import type { Result } from "./result.ts";
import { isState } from "./subjects.ts";

/** Rows that a phone shows before "and 7 more". */
export const ROWS_MAX = 10;

/** A value as people read it. */
export function showValue(value: Figure["value"], unit: Unit): string {
  if (value === null) return "nothing to go by";
  switch (unit) {
    case "money":
      return show(Number(value));
    case "minutes":
      return Number(value) < 0 ? `-${showMinutes(-Number(value))}` : showMinutes(Number(value));
    case "days":
      return countedWords(Number(value), "day");
    case "percent":
      return `${value}%`;
    default:
      return String(value);
  }
}

const COUNTED_TITLES: Readonly<Record<Counted, string>> = {
  bought: "bought",
  sold: "sold",
  finished: "finished",
  listed: "listed",
  unsold: "unsold",
  started: "started",
  held: "on hold",
  unlisted: "finished, not listed",
  "not listed": "not listed",
  unfinished: "unfinished",
  unstarted: "not started",
  "in progress": "in progress",
  done: "finished and not gone",
  "on the market": "up for sale",
  owing: "with money owed",
  kept: "kept",
  given: "given away",
  scrapped: "scrapped",
  returned: "came back",
  gone: "gone",
  notes: "noted",
};

/** What is said behind what was done: "lamps sold to the neighbor". */
const BEHIND: ReadonlySet<Filter["dimension"]> = new Set([
  "source",
  "buyer",
  "place",
  "person",
  "bought by",
  "bought on",
  "finished on",
  "listed on",
  "weekday",
]);

function isBehind({ dimension, of }: Filter): boolean {
  return of !== undefined || BEHIND.has(dimension);
}

/** What the figure is, in a few words: "Profit on oak chairs", "Pieces sold". */
export function titleOf(query: Query): string {
  const { measure, aggregate, filters, counted } = query;
  const { unit } = measures[measure];
  const about = filtersWords(
    filters,
    unit === "days" || unit === "minutes" || unit === "miles" ? unit : undefined,
  );
  const each = aggregate === "rate" ? ` a ${query.by} on average` : "";
  if (measure === "count") {
    const behind = filtersWords(filters.filter(isBehind));
    const what = counted === "notes" ? "notes" : piecesWords(filters.filter((filter) => !isBehind(filter)));
    const title = `${what} ${COUNTED_TITLES[counted ?? "bought"]}`;
    const ways = counted === "gone" ? waysIn(filters) : null;
    if (ways)
      return capital(
        [
          piecesWords(filters.filter((filter) => !isBehind(filter) && filter !== ways)),
          waysWords(ways),
          behind,
        ]
          .filter(Boolean)
          .join(" "),
      );
    // "Sold over 100.00" says once what was done.
    const done = behind.replace(new RegExp(`^${COUNTED_TITLES[counted ?? "bought"]} `), "");
    return `${capital(done ? `${title} ${done}` : title)}${each}`;
  }
  const single =
    measure === "proceeds" &&
    ((aggregate !== null && aggregate !== "rate") || query.order?.of === "piece" || query.salePrice);
  const title = single
    ? "Sale price"
    : measure === "net" && query.withIncome
      ? "Made with other income"
      : measures[measure].title;
  const mean = aggregate === "rate" ? null : aggregate;
  const head = mean ? `${capital(mean)} ${title.toLowerCase()}` : title;
  if (
    measure === "spent" &&
    filters.some(({ dimension }) => dimension === "what" || dimension === "category")
  )
    return mean ? `${capital(mean)} ${about}` : `${capital(about)}${each}`;
  const without =
    measure === "spent" && filters.some(({ dimension }) => dimension === "kind" || dimension === "piece")
      ? " without buying"
      : "";
  return `${head}${about ? `, ${about}` : ""}${without}${each}`;
}

/** The ways in which pieces may have gone, where several are joined. */
function waysIn(filters: readonly Filter[]): Filter | null {
  return filters.find(({ dimension, values }) => dimension === "status" && values.length > 1) ?? null;
}

function waysWords({ values }: Filter): string {
  return values.map((value) => COUNTED_TITLES[value as Counted] ?? value).join(" or ");
}

/** "listed pieces", "oak chairs", "pieces over 100.00": what is counted, with its noun. */
function piecesWords(filters: readonly Filter[]): string {
  if (filters.some(({ dimension, not }) => !not && (dimension === "kind" || dimension === "piece")))
    return filtersWords(filters);
  const limits = filters.filter(({ dimension }) => isLimit(dimension));
  const behind = filters.filter((filter) => filter.not || limits.includes(filter));
  const before = filters.filter((filter) => !behind.includes(filter));
  return [filtersWords(before), "pieces", filtersWords(behind)].filter((word) => word !== "").join(" ");
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const OF_WORDS: Readonly<Record<NonNullable<Filter["of"]>, string>> = {
  price: "bought",
  cost: "that cost",
  proceeds: "sold",
  asking: "listed",
  profit: "with a profit",
  minutes: "with",
  days: "in",
  miles: "with",
};

function valueWords({ dimension, values, not, of, name }: Filter, unit: Filter["of"]): string {
  if (name) return `${dimension.replace(/ on$/, "")} ${name}`;
  const said = values.map((value) => {
    if (dimension === "piece") return `#${value}`;
    if (dimension === "weekday") return value === "workday" ? "weekdays" : `${value}s`;
    return dimension === "kind" ? pluralOf(value) : value.startsWith("#") ? "yours" : value;
  });
  const joined = said.join(not || dimension === "status" ? " or " : " and ");
  const amount = (word: string): string => `${word} ${boundWords(of ?? unit, Number(values[0]))}`;
  const limits: Partial<Record<Filter["dimension"], string>> = {
    over: "over",
    under: "under",
    least: "at least",
    most: "at most",
  };
  if (of === "profit" && values[0] === "0") return dimension === "under" ? "at a loss" : "at a gain";
  const limit = of && limits[dimension] ? `${OF_WORDS[of]} ${limits[dimension]}` : limits[dimension];
  const before: Partial<Record<Filter["dimension"], string>> = {
    source: "from",
    buyer: "to",
    place: "listed on",
    person: "by",
    "bought by": "bought by",
    weekday: "on",
  };
  const plain = limit
    ? amount(limit)
    : before[dimension] && joined !== "yours"
      ? `${before[dimension]} ${joined}`
      : joined;
  return not ? `not ${plain}` : plain;
}

/** An amount in the unit of what it is held against. */
function boundWords(of: Filter["of"], amount: number): string {
  if (of === "minutes") return showMinutes(amount / 100);
  if (of === "days") return countedWords(amount / 100, "day");
  return of === "miles" ? `${amount / 100} miles` : show(amount);
}

const FILTER_ORDER =
  "status,trait,kind,piece,lot,what,category,stream,loan,source,buyer,method,place,person,bought by,weekday,over,under,least,most".split(
    ",",
  );

/** All filters in the order in which people say them: "oak chairs from yard sale bought July"; `unit`: of plain amounts. */
export function filtersWords(filters: readonly Filter[], unit?: Filter["of"]): string {
  const place = ({ dimension, name }: Filter) =>
    name ? FILTER_ORDER.length : FILTER_ORDER.indexOf(dimension);
  return [...filters]
    .sort((a, b) => place(a) - place(b))
    .map((filter) => valueWords(filter, unit))
    .join(" ");
}

/** The period's name as the reply says it; all of it is "ever", a state is "now". */
export function periodWords(query: Query, today: string): string {
  const { period, measure } = query;
  if (!period || (period.from === null && period.to === null))
    return measures[measure].stock || isState(query.counted) ? "now" : "ever";
  return nameOf(period, today);
}

/** A period's name, without the running year. */
export function nameOf({ name }: Period, today: string): string {
  return name.replace(new RegExp(`(?<!\\bof),? ${today.slice(0, 4)}$`), "");
}

/** How much went into a figure: "4 notes", "2 pieces". */
function overWords(query: Query, { over, pieces }: Result): string {
  if (query.measure === "count" || over === 0) return "";
  const isMean = query.aggregate === "average" || query.aggregate === "median";
  const byNotes = measures[query.measure].byNotes === true && !(isMean && pieces > 0);
  if (!byNotes && pieces > 0) return ` (${countedWords(pieces, "piece")})`;
  return byNotes ? ` (${countedWords(over, "note")})` : "";
}

/** "Profit, ever: curb is 29% (2,345.00 of 8,123.00)". */
function shareWords(
  query: Query,
  { value, shareOf }: Result,
  { head, unit }: { head: string; unit: Unit },
): string {
  if (query.perMile)
    return `${head.replace(/(?=, [^,]*$)/, " a mile")}: ${showValue(value, unit)} (${showValue(shareOf!.part, unit)} over ${shareOf!.whole ?? 0} miles)`;
  const part = `${filtersWords(query.share ?? [])} `;
  if (value === null) return `${head}: ${part}${showValue(null, unit)}`;
  return `${head}: ${part}${value}% (${showValue(shareOf!.part, unit)} of ${showValue(shareOf!.whole, unit)})`;
}

/** "over 5,000.00", "at least 3". */
function limitWords({ dimension, values }: Filter, unit: Unit): string {
  const word = dimension === "least" || dimension === "most" ? `at ${dimension}` : dimension;
  const amount = Number(values[0]);
  return `${word} ${unit === "money" ? show(amount) : showValue(amount / 100, unit)}`;
}

function isEmpty(query: Query, result: Result): boolean {
  return (
    result.over === 0 && (result.value === null || Number(result.value) === 0) && query.beside.length === 0
  );
}

/** The answer in words: what was understood and the figure first, rows at phone width after it. */
export function wordsOf(desk: Desk, query: Query, result: Result, corrected: readonly string[]): string {
  const unit = measures[query.measure].unit;
  const said = corrected.length > 0 ? [`(${corrected.join(", ")})`] : [];
  const head = `${titleOf(query)}, ${query.beside.some(({ period }) => period) ? "side by side" : periodWords(query, desk.today)}`;
  if (query.beside.length > 0) {
    const rows = (result.rows ?? []).map((row) => `  ${row.label}: ${showValue(row.value, unit)}`);
    // Of three and more no one difference can be told.
    const all = head.endsWith("side by side") ? head : `${head}, side by side`;
    if (rows.length > 2) return [`${all}:`, ...rows, ...said].join("\n");
    const difference =
      result.value === null ? "no difference to tell" : `difference ${showValue(result.value, unit)}`;
    return [`${head}: ${difference}`, ...rows, ...said].join("\n");
  }
  if (result.shareOf) return [shareWords(query, result, { head, unit }), ...said].join("\n");
  if (isEmpty(query, result) && !result.rows?.length)
    return [`${head}: ${emptyWords(query)}`, ...said].join("\n");
  const bound = query.against ? limitWords(query.against, unit) : null;
  if (query.tally)
    return [
      `${head}${bound ? `, ${bound}` : ""}: ${countedWords(Number(result.value), query.order!.of)}`,
      ...rowLines(result.rows ?? [], unit),
      ...said,
    ].join("\n");
  if (query.order && result.rows?.length === 0)
    return [`${head}: none ${bound ?? ""}`.trim(), ...said].join("\n");
  if (query.order)
    return [
      `${head}${bound ? `, ${bound}` : ""}${orderWords(query)}:`,
      ...rowLines(result.rows ?? [], unit),
      ...said,
    ].join("\n");
  const figure = `${showValue(result.value, unit)}${bound ? ` (${bound})` : ""}`;
  return [
    `${head}: ${figure}${overWords(query, result)}`,
    ...rowLines(result.rows ?? [], result.rowUnit ?? unit),
    ...said,
  ].join("\n");
}

function orderWords({ order, measure }: Query): string {
  if (!order) return "";
  const days = measures[measure].unit === "days";
  if (days) return order.first === "least" ? ", fewest first" : ", most first";
  return order.first === "most" ? ", highest first" : ", lowest first";
}

function emptyWords(query: Query): string {
  const unit = measures[query.measure].unit;
  if (query.aggregate || measures[query.measure].mean || query.measure === "hourly")
    return "nothing to go by";
  if (query.measure === "count") return "none";
  if (query.measure === "asking") return "none listed (0.00)";
  return unit === "money" ? "nothing (0.00)" : "none";
}

/** A line a row. */
export function linesOf(rows: readonly Figure[], unit: Unit): string[] {
  return rows.map(({ label, value }) => `  ${rowLabel(label)}: ${showValue(value, unit)}`);
}

function rowLines(rows: readonly Figure[], unit: Unit): string[] {
  return cut(linesOf(rows, unit));
}

/** Lines for the first few, and how many more there are. */
export function cut(lines: readonly string[]): string[] {
  return lines.length > ROWS_MAX
    ? [...lines.slice(0, ROWS_MAX), `and ${lines.length - ROWS_MAX} more`]
    : [...lines];
}

/** The lines that `cut` leaves out, for an answer to keep. */
export function restOf(lines: readonly string[]): { rest?: readonly string[] } {
  return lines.length > ROWS_MAX ? { rest: lines.slice(ROWS_MAX) } : {};
}

/** "2026-05" is read as May 2026; other labels as they are. */
function rowLabel(label: string): string {
  if (/^\d{4}-\d{2}-\d{2}$/.test(label)) return showDate(label);
  return /^\d{4}-\d{2}$/.test(label) ? showMonth(label) : label;
}
