import type { Tok } from "../clause.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { isCommon } from "../words/daily.ts";
import { ARTICLES_WIDE } from "../words/links.ts";
import { DENIES } from "../words/lived.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { BESIDE_VISIT, BRINGS_REST, CANNOT, COMES_ALONG, RIDES, TILL, VISITS } from "../words/visits.ts";
import { isDeed, isEnd, isSpokenOf, isUnlisted, type Stretch, stretchesOf } from "./told.ts";

/*
 * When whoever has a piece kept for them comes for it, and with what: "left 20 on the trunk, he's coming back sunday with a
 * truck", "she can't come till thursday so I'm holding it". Of the hold it tells the day alone; it is no hold by itself, and what
 * has come already, or will not come at all, is none of it.
 */

/** The tokens of a line without what they tell of such a visit, its day behind "until"; null where they tell of none. */
export function withoutVisits(tokens: readonly Tok[]): Tok[] | null {
  const visits = stretchesOf(tokens).filter((stretch) => isVisit(tokens, stretch));
  if (visits.length === 0) return null;
  const kept: Tok[] = [];
  const days: Tok[] = [];
  for (const [at, token] of tokens.entries()) {
    if (!visits.some(({ from, said, to }) => at >= (kept.length > 0 ? said : from) && at < to))
      kept.push(token);
    else if (token.kind === "day") days.push(token);
  }
  while (kept.length > 0 && isEnd(kept[0]!)) kept.shift();
  while (kept.length > 0 && isEnd(kept.at(-1)!)) kept.pop();
  const [day, ...others] = days;
  const isKept = kept.some(({ kind }) => kind === "day");
  if (!day || others.length > 0 || isKept) return kept;
  const { from } = day;
  return [...kept, wordToken("word", "until", from, from, NO_ROLES), day];
}

/** Whether a stretch tells when, how or with whom somebody comes, and nothing else. */
function isVisit(tokens: readonly Tok[], stretch: Stretch): boolean {
  const { said, to } = stretch;
  const words = tokens.slice(said, to);
  if (!words.some(({ text }) => text.split(" ").some((word) => VISITS.has(word) || BRINGS_REST.has(word))))
    return false;
  let strange = 0;
  for (let at = said; at < to; at += 1) {
    const token = tokens[at]!;
    const { kind, text, roles } = token;
    if (kind === "day" || kind === "clock" || kind === "span") continue;
    if (kind === "piece" && isSpokenOf(tokens, token, stretch)) continue;
    if (kind !== "word") return false;
    if (text.split(" ").every((word) => VISITS.has(word) || BESIDE_VISIT.has(word) || BRINGS_REST.has(word)))
      continue;
    // "rest when he gets paid"
    if (text === "paid" && /^gets?$/.test(tokens[at - 1]?.text ?? "")) continue;
    // "can't come till thursday"
    if (CANNOT.has(text) || DENIES.has(text)) {
      if (!tokens.slice(at, to).some((other) => TILL.has(other.text))) return false;
      continue;
    }
    if (
      roles.person ||
      HOUSEHOLD.has(text) ||
      isOwner(text) ||
      ARTICLES_WIDE.has(text) ||
      RIDES.has(text) ||
      COMES_ALONG.has(text)
    )
      continue;
    if (roles.vagueTime || roles.hedge || isDeed(token)) return false;
    if (roles.filler || roles.plain || roles.method || isCommon(text)) continue;
    if (!isUnlisted(token)) return false;
    strange += 1;
  }
  return strange <= 1;
}
