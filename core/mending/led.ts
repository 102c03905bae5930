import { ACCORDING_TO, DOUBTS_AHEAD, SAID_SO, WAS_SO, WHY_WRONG } from "../notes/words/mending.ts";
import { THEIRS_SAID } from "../notes/words/misnoted.ts";
import { HOUSEHOLD } from "../notes/words/people.ts";

/*
 * "no wait my wife says it was 14", "i misread it, 14": a correction may open with who says so or how it came to be wrong.
 * What stands behind that is what corrects.
 */

/** A message without what a correction opens with; null where it opens with nobody and no reason. */
export function behindLead(text: string): string | null {
  const said = text.toLowerCase().replace(/['’‘]/g, "");
  // The places of the original must stay those of what is looked at.
  const isPlain = said.length === text.length;
  let rest = said;
  let isLed = false;
  let isTheirs = false;
  for (let turn = 0; turn < LEADS_MAX; turn += 1) {
    const doubts = DOUBTS_AHEAD.exec(rest)?.[0] ?? "";
    isLed ||= HELD.test(doubts);
    const bare = rest.slice(doubts.length);
    const who = SAID_SO.exec(bare) ?? ACCORDING_TO.exec(bare);
    const isKin = who !== null && HOUSEHOLD.has(who[1]!.replaceAll("-", " "));
    const isOther = who !== null && THEIRS_SAID.has(who[1]!);
    const lead = isKin || isOther ? who![0] : (WHY_WRONG.exec(bare)?.[0] ?? "");
    if (doubts === "" && lead === "") break;
    isLed ||= lead !== "";
    isTheirs ||= isOther;
    rest = bare.slice(lead.length);
  }
  if (!isLed || rest.trim() === "" || (isTheirs && !WAS_SO.test(rest) && /\d/.test(rest))) return null;
  return isPlain ? text.slice(text.length - rest.length) : rest;
}

/** So many of them one after another. */
const LEADS_MAX = 4;

/** "hold on it was friday" holds nothing. */
const HELD = /\bh(?:old|ang) on\b/;
