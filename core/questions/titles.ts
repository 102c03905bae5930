import { counted as countedWords } from "../answers/wording.ts";
import { showMinutes } from "../decide/echo.ts";
import { show } from "../money.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import { isLimit } from "./filters.ts";
import { lapseTitle } from "./lapses.ts";
import { measures } from "./measures.ts";
import type { Counted, Filter, Period, Query } from "./query.ts";
import { isState } from "./subjects.ts";
import { UNKNOWN } from "./words/plain.ts";

/*
 * What a figure is, in a few words: its measure, what narrows it, its period.
 */

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
  "sold on",
  "started on",
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
    // "Profit on the losers" is of those at a loss.
    measure === "profit"
      ? filters.map((filter) =>
          isLimit(filter.dimension) && !filter.of && filter.values[0] === "0"
            ? { ...filter, of: "profit" as const }
            : filter,
        )
      : filters,
    unit === "days" || unit === "minutes" || unit === "miles"
      ? unit
      : measures[measure].of
        ? "reached"
        : undefined,
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
      : query.withBuying
        ? "Spent, buying included"
        : query.lapse
          ? lapseTitle(query.lapse)
          : measures[measure].title;
  const mean = aggregate === "rate" ? null : aggregate;
  const head = mean ? `${capital(mean)} ${title.toLowerCase()}` : title;
  if (
    measure === "spent" &&
    filters.some(({ dimension }) => dimension === "what" || dimension === "category")
  )
    return mean ? `${capital(mean)} ${about}` : `${capital(about)}${each}`;
  const without =
    measure === "spent" &&
    !query.withBuying &&
    filters.some(({ dimension }) => dimension === "kind" || dimension === "piece")
      ? " without buying"
      : "";
  const of = measure === "received" ? about.replace(/^to /, "by ") : about;
  return `${head}${of ? `, ${of}` : ""}${without}${each}`;
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
  "days listed": "listed",
  reached: "that reached",
  miles: "with",
  hourly: "that made",
};

function valueWords({ dimension, values, not, of, name }: Filter, unit: Filter["of"]): string {
  if (name) return `${dimension.replace(/ on$/, "")} ${name}`;
  if (dimension === "shop" && not) return "on pieces";
  if (values[0] === UNKNOWN) return `${dimension} ${not ? "known" : UNKNOWN}`;
  const isAlone = dimension === "person" && values.length === 1 && !not;
  const said = values.map((value) => {
    if (dimension === "piece") return `#${value}`;
    if (dimension === "weekday") return value === "workday" ? "weekdays" : `${value}s`;
    return dimension === "kind"
      ? pluralOf(value)
      : value.startsWith("#")
        ? isAlone
          ? "yours"
          : "you"
        : value;
  });
  const joined = said.join(not || dimension === "status" ? " or " : " and ");
  const amount = (word: string): string => `${word} ${boundWords(of ?? unit, Number(values[0]))}`;
  const limits: Partial<Record<Filter["dimension"], string>> = {
    over: "over",
    under: "under",
    least: "at least",
    most: "at most",
    exactly: of === "asking" ? "at" : of === "price" || of === "proceeds" ? "for" : "at",
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
    ? `${amount(limit)}${of === "reached" ? " of asking" : of === "hourly" ? " an hour" : ""}`
    : before[dimension] && joined !== "yours"
      ? `${before[dimension]} ${joined}`
      : joined;
  return not ? `not ${plain}` : plain;
}

/** An amount in the unit of what it is held against. */
function boundWords(of: Filter["of"], amount: number): string {
  if (of === "minutes") return showMinutes(amount / 100);
  if (of === "days" || of === "days listed") return countedWords(amount / 100, "day");
  if (of === "reached") return `${amount / 100}%`;
  return of === "miles" ? `${amount / 100} miles` : show(amount);
}

const FILTER_ORDER =
  "status,trait,kind,piece,lot,what,category,stream,loan,source,buyer,method,place,person,bought by,weekday,over,under,least,most,exactly".split(
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
