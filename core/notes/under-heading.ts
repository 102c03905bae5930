import type { Day } from "../calendar.ts";
import { isPiece, type Tok } from "./clause.ts";
import { lexed } from "./lexed.ts";
import { readLine } from "./line.ts";
import type { Kind, Reading } from "./reading.ts";
import { HEADING_BESIDE, HEADING_PLACES, HEADING_VERBS } from "./words/headings.ts";

/*
 * A message of several lines may be a list: its lines begin with a sign or a number, and one above them may say what was
 * done with all of them, where and when: "saturday haul", "sold:", "estate sale".
 */

/** What a line above a list says of the lines below. */
export interface Heading {
  /** Its verb as one says it of one, and the kind of note; of lines that have none. */
  verb: string;
  kind: Kind | null;
  place: string;
  day: string;
  /** What the line was read as by itself. */
  reading: Reading;
}

const KINDS = { bought: "buy", sold: "sell", listed: "list", finished: "finish" } as const;

/** What a line tells of those below it; null where it is a note of its own. */
export function headingOf(line: string, [reading, ...others]: readonly Reading[]): Heading | null {
  if (!reading || others.length > 0) return null;
  const { missing = [] } = reading;
  const plain = { place: "", day: "", reading };
  if (missing.includes("pieces") && missing.includes("price"))
    return { ...plain, verb: line, kind: reading.kind };
  // "listed" asks what is, where nothing stands below.
  const mayOpen = reading.kind === "unclear" || reading.kind === "ask" || missing.includes("pieces");
  return mayOpen && !line.includes("?") ? told(lexed(line), plain) : null;
}

/** A heading of nothing but words of headings, a place where one buys and a day. */
function told(tokens: readonly Tok[], plain: Pick<Heading, "place" | "day" | "reading">): Heading | null {
  const heading: Heading = { ...plain, verb: "", kind: null };
  let isOther = tokens.length > HEADING_TOKENS_MAX;
  for (const { kind, text, roles } of tokens) {
    const verb = HEADING_VERBS[text];
    if (kind === "day") heading.day = text;
    else if (verb && heading.verb === "") heading.verb = verb;
    else if (roles.place !== undefined && HEADING_PLACES.has(text)) heading.place = ` at ${text}`;
    else isOther ||= kind !== "mark" && !text.split(" ").every((word) => HEADING_BESIDE.has(word));
  }
  if (isOther) return null;
  if (heading.place !== "" && heading.verb === "") heading.verb = "bought";
  heading.kind = heading.verb === "" ? null : KINDS[heading.verb as keyof typeof KINDS];
  return heading;
}

const HEADING_TOKENS_MAX = 8;

/** "today": nothing of it is lost where no line below takes it. */
export const tellsNothing = ({ verb, place, day }: Heading): boolean => `${verb}${place}${day}` === "";

/** The readings of a line below a heading, where that says more of it than the line does; else null. */
export function underHeading(
  { verb, kind, place, day }: Heading,
  item: string,
  alone: readonly Reading[],
  today: Day,
  index: number,
): Reading[] | null {
  if (alone.length === 0) return null;
  const asListed = (line: string): Reading[] => {
    const at = day === "" ? "" : ` ${day}`;
    return readLine(`${line}${place}${at}`, today, index).map((one) => ({ ...one, text: item.trim() }));
  };
  if (kind && alone.every((one) => one.kind === "unclear") && lexed(item).some(isPiece)) {
    const readings = asListed(`${verb} ${item}`);
    if (readings.every((one) => one.kind === kind && !one.missing)) return readings;
  }
  const isSaidThere = alone.some((one) => "date" in one || "source" in one);
  const mayBeThere = day !== "" || (place !== "" && alone.every((one) => one.kind === "buy"));
  if (isSaidThere || !mayBeThere) return null;
  const readings = asListed(item);
  const isSame =
    readings.length === alone.length && readings.every((one, at) => one.kind === alone[at]!.kind);
  return isSame ? readings : null;
}

const BULLET = /^\s{0,20}(?:[-*•–·▪◦+>]{1,2}(?=\s|\p{L})|\[[x ]?\]|✓|✔)\s{0,5}/iu;
const NUMBERED = /^\s{0,20}\(?(?:\d{1,2}|[a-h])[.)]\s{1,5}(?=\S)/i;

/** The lines of a message, each without the sign or number that it is listed by. */
export function itemsOf(lines: readonly string[]): string[] {
  const numbered = lines.filter((line) => NUMBERED.test(line)).length > 1;
  return lines.map((line) => {
    const item = line.replace(BULLET, "");
    return numbered ? item.replace(NUMBERED, "") : item;
  });
}

/** "(1) bought bench 20 (2) wax 8 for it": a list in one line; null where it is none. */
export function listedInLine(text: string): string | null {
  if (!text.includes("2)") || !/^\s{0,20}\(?1\)\s/.test(text)) return null;
  let next = 1;
  return text.replace(/\s{0,5}\(?(\d{1,2})\)\s{1,5}/g, (sign, number: string) => {
    if (Number(number) !== next) return sign;
    next += 1;
    return next === 2 ? "" : "\n";
  });
}
