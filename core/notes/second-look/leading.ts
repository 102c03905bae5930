import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isQuestion } from "../questions.ts";
import type { Mention, Reading } from "../reading.ts";
import { bears } from "../verbs.ts";
import { US } from "../words/chatter.ts";
import {
  AND_THEN,
  HARMS,
  IS_OR_FEELS,
  IS_OR_WENT,
  LEADS_NOWHERE,
  LEADS_ON,
  OF_DEALS,
  SAYS,
  SO_FAR,
  WHOM,
} from "../words/lived.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { isDeed, isFew, isOneOfUs, isUnlisted, isVerb, plansOn, type Stretch } from "./told.ts";

/*
 * What only leads up to a fact: "nobody has looked at the trunk in a month, so I knocked ten dollars off". Whatever it
 * denies or wishes, what is told behind it happened; only a condition or somebody's words would reach that far. Who and
 * which piece it is of goes over to the fact, where that leaves them out.
 */

/** What a line tells when its first stretches only lead up to it. */
export interface Lead {
  /** Its tokens, with who did it before them where that is not said again. */
  rest: Tok[];
  /** The piece that "it" is, where one is named. */
  named: Mention | null;
}

/** Each way in which the first stretches of a line may only lead up to the rest, the shortest first. */
export function leadsOf(tokens: readonly Tok[], stretches: readonly Stretch[]): Lead[] {
  const leads: Lead[] = [];
  for (const [at, stretch] of stretches.slice(0, -1).entries()) {
    if (!leadsUp(tokens, stretch) || plansOn(tokens, stretch)) break;
    const lead = leadOf(tokens, stretches[0]!.said, stretch.to, stretches[at + 1]!);
    if (lead) leads.push(lead);
  }
  return leads;
}

/** Whether a stretch names no sum, no cost, no deal and no condition. */
function leadsUp(tokens: readonly Tok[], { said, to }: Stretch): boolean {
  const words = tokens.slice(said, to);
  if (isQuestion(words)) return false;
  const isOfParts = tellsOfParts(words);
  let strange = 0;
  for (let at = said; at < to; at += 1) {
    const token = tokens[at]!;
    const { kind, text, roles } = token;
    if (kind === "piece" || kind === "span" || kind === "clock") continue;
    if (kind === "amount" && isFew(tokens, at)) continue;
    if (kind !== "word" || LEADS_NOWHERE.has(text) || roles.method || roles.vagueTime) return false;
    if (isOfParts && (roles.supply || isPartBehind(tokens, at) || (roles.labor && /ing$/.test(text))))
      continue;
    if ((roles.supply || roles.stream) && !roles.plain) return false;
    if (roles.labor || OF_DEALS.has(text)) return false;
    if (isDeed(token)) return false;
    if (isUnlisted(token)) strange += 1;
  }
  return strange <= STRANGE_MAX;
}

const STRANGE_MAX = 2;

/** "bar cart wheels are seized": how a piece or a part of it is; "the legs are for the desk" says what they were bought for. */
function tellsOfParts(words: readonly Tok[]): boolean {
  const verb = words.findIndex(({ text }) => IS_OR_WENT.has(text));
  return (
    verb > 0 &&
    words.slice(0, verb).some(isOfPiece) &&
    words.slice(0, verb).every((token) => !isBare(token) && token.roles.person !== true) &&
    !words.some(({ text }) => text === "for")
  );
}

const isOfPiece = ({ kind, roles, text }: Tok): boolean =>
  kind === "piece" || roles.supply !== undefined || PIECE_PARTS.has(text);

/** "back panel" */
const isPartBehind = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at]!.text === "back" && PIECE_PARTS.has(tokens[at + 1]?.text ?? "");

function leadOf(tokens: readonly Tok[], start: number, end: number, rest: Stretch): Lead | null {
  const led = tokens.slice(start, end);
  const joint = tokens.slice(rest.from, rest.said);
  const told = tokens.slice(rest.said);
  const last = led.at(-1)!.text;
  // "need: paint 12"; "my wife says, sold the desk 40": what follows is somebody's words.
  const isJoined = joint.every(({ text }) => LEADS_ON.has(text));
  const isTold = isClause(led) || isSentence(led, joint) || joint.some(({ text }) => text === "so");
  if (!isJoined || SAYS.has(last) || (SO_FAR.has(last) && led.at(-3)?.text !== "than") || !isTold)
    return null;
  const pieces = piecesIn(led);
  if (!pieces || pieces.length > 1) return null;
  const named = pieces[0] ?? null;
  const who = whoOf(led);
  if (who === "us" || who === "nobody said") {
    // "hung shelves at home, brackets 14": where one of us did it, it may be none of the shop's.
    const isState = led.some(({ text, roles }) => IS_OR_FEELS.has(text) || roles.hedge !== undefined);
    const isIdle = !led.some(isBare);
    return isIdle || (who === "us" && isState) ? { rest: [...told], named } : null;
  }
  // "desk needs work, sold the lamp 20": what is still to be done is told as such.
  if (who === "a thing")
    return led.some(({ roles }) => roles.hedge === "intention") ? null : { rest: [...told], named };
  // "coworker has the same desk, paid 300 for it": whoever paid.
  if (led.some(({ text }) => HARMS.has(text))) return null;
  // "the lady came by and picked up the dresser, after my shift": she did, unless she is whom it was done to.
  const isGoingOn = joint.some(({ text }) => AND_THEN.has(text)) && isBare(told[0]!);
  const isOfAnother = told.some(({ text }) => (isGoingOn ? WHOM.has(text) : US.has(text)));
  if (isOfAnother || (!isGoingOn && told.some(({ roles }) => roles.person === true)))
    return { rest: [...told], named };
  // "the kid crayoned on the desk so another hour of sanding": work is ours.
  if (joint.some(({ text }) => text === "so") && told[0]!.kind === "duration")
    return { rest: [...told], named };
  return isGoingOn ? { rest: [...who, ...told], named } : null;
}

/** Somebody or something, and what they do. */
const isClause = (led: readonly Tok[]): boolean => led.slice(1).some(isBare);

/** "post shift, barely awake." */
const isSentence = (led: readonly Tok[], joint: readonly Tok[]): boolean =>
  joint.some(({ text }) => /^[.!;]$/.test(text)) &&
  !led.some(({ roles, kind }) => roles.hedge !== undefined || kind === "piece");

const isBare = (token: Tok): boolean => headsOf(token).length > 0 || isVerb(token);

/** The pieces that are spoken of; null where one of them is new. */
function piecesIn(led: readonly Tok[]): Mention[] | null {
  const named: Mention[] = [];
  for (const [at, { mention }] of led.entries()) {
    if (!mention || mention.it) continue;
    if (mention.count !== undefined && mention.count > 1) return null;
    if (/^(?:an?|another|no|any|some)$/.test(led[at - 1]?.text ?? "")) return null;
    named.push(mention);
  }
  return named;
}

/** Of whom the words tell: the tokens that name somebody else, one of us, a thing, or nobody that is said. */
function whoOf(led: readonly Tok[]): Tok[] | "us" | "a thing" | "nobody said" {
  const opening = led.slice(0, SUBJECT_MAX);
  const verb = opening.findIndex((token) => isBare(token) && token.kind === "word" && !token.roles.person);
  const subject = verb < 0 ? opening : opening.slice(0, verb);
  if (subject.some(isOneOfUs)) return "us";
  const who = subject.findIndex(({ roles }) => roles.person === true);
  if (who >= 0) return subject.slice(0, who + 1);
  if (
    subject.some(
      (token) => isOfPiece(token) || /^(?:nobody|no_one|noone|nothing|that|this|it)$/.test(token.text),
    )
  )
    return "a thing";
  const [name] = subject;
  return name && isUnlisted(name) && verb === 1 ? [name] : "nobody said";
}
const SUBJECT_MAX = 5;

/** A note of the piece named before it, where it says "it" or none; null where it may be of another. */
export function ofPiece(reading: Reading, named: Mention): Reading | null {
  if (reading.kind === "unclear" && reading.byBooks) {
    const could = (reading.could ?? []).map((each) => ofPiece(each, named));
    return could.every((each) => each !== null) ? { ...reading, could } : null;
  }
  const { missing, ...rest } = reading;
  const pieces = "pieces" in reading && Array.isArray(reading.pieces) ? reading.pieces : null;
  const isAsked = missing?.length === 1 && missing[0] === "pieces";
  const isIt = pieces?.length === 1 && pieces[0]!.it === true && pieces[0]!.count === undefined;
  const isOpen = pieces === null && bears(reading.kind, "piece or none");
  if (!(isOpen || isAsked || isIt || reading.follows)) return pieces?.some(({ it }) => it) ? null : reading;
  const { follows: _, one: __, ...kept } = isAsked ? rest : reading;
  return { ...kept, pieces: [named] } as Reading;
}
