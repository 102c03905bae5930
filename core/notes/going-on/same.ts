import type { Day } from "../../calendar.ts";
import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isSkipped, side, takeTo } from "../mends/mended.ts";
import type { Again, Kind, Mention } from "../reading.ts";
import { ANOTHER_ONE, BESIDE_SAME, COMPARES, SAME, THE_OTHER } from "../words/again.ts";
import { CONTAINERS } from "../words/supplies.ts";

const TOKENS_MAX = 12;

export const saysSame = ({ kind, text }: Tok): boolean => kind === "word" && SAME.has(text);

/**
 * "got another lamp, same price", "the other went for the same", "another pack of discs, same money": the newest note
 * of such a verb or thing once more, of the piece named here. Null where a word of it says anything else.
 */
export function sameAsBefore(tokens: readonly Tok[], today: Day): Again | null {
  if (tokens.length > TOKENS_MAX || !tokens.some(saysSame)) return null;
  const said = side();
  const values: Tok[] = [];
  const pieces: Mention[] = [];
  let kinds: readonly Kind[] | undefined;
  let what: string | undefined;
  for (const token of tokens) {
    const { kind, text, roles, mention } = token;
    const heads = headsOf(token).map((head) => head.kind);
    if (kind === "mark" && text !== "?") continue;
    // "same price as the hutch" tells of two.
    if (COMPARES.has(text)) return null;
    if (kind === "piece" && !mention!.it) pieces.push(mention!);
    else if (kind !== "word" || roles.method !== undefined) values.push(token);
    else if (roles.supply !== undefined) what = text;
    else if (THE_OTHER.has(text)) pieces.push({ other: true, count: 1 });
    else if (text.split(" ").every(isBeside) || CONTAINERS.has(text)) continue;
    else if (heads.length > 0) kinds = kinds ? kinds.filter((each) => heads.includes(each)) : heads;
    else if (!isSkipped(token)) return null;
  }
  // "same here" says nothing of what.
  const isNamed = pieces.length > 0 || (kinds ?? what) !== undefined;
  if (!isNamed || pieces.length > 1 || kinds?.length === 0 || !takeTo(values, said, today)) return null;
  return {
    how: "again",
    to: { ...said.to, ...(pieces.length > 0 ? { pieces } : {}) },
    ...(kinds ? { kinds } : {}),
    ...(what === undefined ? {} : { what }),
  };
}

const isBeside = (word: string): boolean => SAME.has(word) || ANOTHER_ONE.has(word) || BESIDE_SAME.has(word);
