import type { Parts } from "./parts.ts";
import type { Counted } from "./query.ts";
import { type Features, HAPPENED } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

/** What a count counts, by the cue that says it; the first that is said. */
const COUNTED: readonly (readonly [Cue, Counted])[] = [
  ["unlisted", "unlisted"],
  ["unfinished", "unfinished"],
  ["unstarted", "unstarted"],
  ["inProgress", "in progress"],
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
  ["fullPrice", "sold"],
  ["overAsking", "sold"],
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
  ["had", "unsold"],
];

/** What is counted of groups that are counted themselves. */
const OF_GROUPS = [
  ["buyer", "sold"],
  ["source", "bought"],
  ["place", "listed"],
  ["method", "sold"],
  ["kind", "bought"],
] as const;

/** "Not listed", "havent posted": finished or not, where "unlisted" and "to list" are those that could be. */
export function saysNotListed({ marks }: Parts): boolean {
  return marks.some(
    ({ senses, text }) =>
      senses.cues.includes("unlisted") &&
      /\b(?:not|isnt|arent|havent|hasnt|never|without)\b/.test(text) &&
      !/\b(?:finished|done|ready)\b/.test(text),
  );
}

/** What a count is of, and the cue that says so. */
export function countedBy(f: Features): { counted: Counted; cue: Cue } | null {
  if (f.whom !== null)
    return f.whom === "source" ? { counted: "bought", cue: "bought" } : { counted: "sold", cue: "sold" };
  // "How many buyers have i had"
  if (f.tally && (f.has("had") || f.plainCues) && f.groups("buyer", "source"))
    return { counted: f.groups("buyer") ? "sold" : "bought", cue: f.has("had") ? "had" : "howMany" };
  // What a buyer buys is sold.
  const isBuyers = f.acting || f.groups("buyer") || (f.has("who") && !f.person);
  if (isBuyers && f.has("bought", "got", "took"))
    return { counted: "sold", cue: f.has("bought") ? "bought" : f.has("got") ? "got" : "took" };
  if (f.has("payWays")) return { counted: "sold", cue: "payWays" };
  // "List my sources" lists no listings.
  if (f.commands && f.bare && f.groups("source")) return { counted: "bought", cue: "bought" };
  if (f.commands && f.bare && f.groups("buyer")) return { counted: "sold", cue: "sold" };
  // "How many have more than 2 hours in them": gone ones too.
  const isOfWork = f.unit("minutes", "miles");
  // "How many buyers do i have" counts those there were.
  const tallied = f.tally && !f.has(...HAPPENED) ? OF_GROUPS.find(([group]) => f.groups(group)) : undefined;
  if (tallied) return { counted: tallied[1], cue: tallied[1] };
  // "How many dressers have i had"
  if (f.everHad && f.has("howMany") && !f.unit("days") && !f.has(...HAPPENED))
    return { counted: "bought", cue: "had" };
  // "Sold within 30 days of listing"
  if (f.unit("days") && f.has("sold") && f.has("listed")) return { counted: "sold", cue: "sold" };
  // What buyers purchase was sold to them.
  if (f.buyer && f.has("purchases")) return { counted: "sold", cue: "purchases" };
  // "List pieces from the flea market" orders it.
  const isOrder = f.commands && (f.bare || f.has("free"));
  const found = COUNTED.find(
    ([cue]) => f.has(cue) && !(isOfWork && cue === "have") && !(isOrder && cue === "listed"),
  );
  if (found) return { counted: found[1], cue: found[0] };
  if (f.groups("buyer") || f.asksWay || (f.buyer && f.has("spent"))) return { counted: "sold", cue: "sold" };
  if (f.groups("source")) return { counted: "bought", cue: "bought" };
  if (f.groups("method")) return { counted: "sold", cue: "sold" };
  if (f.groups("place")) return { counted: "listed", cue: "listed" };
  if (f.place) return { counted: "on the market", cue: "listed" };
  if (f.priced) return { counted: "sold", cue: "soldFor" };
  // "How many dressers" are those here, "how many dressers in june" those sold.
  if (f.plainCount && f.has("howMany")) return { counted: f.period ? "sold" : "unsold", cue: "howMany" };
  if (f.has("common")) return { counted: f.groups("source") ? "bought" : "sold", cue: "common" };
  if (f.morePieces) return { counted: "bought", cue: "bought" };
  if (f.has("share")) return { counted: "bought", cue: "share" };
  return f.source || f.person || f.unit("minutes", "days", "miles")
    ? { counted: "bought", cue: "bought" }
    : null;
}
