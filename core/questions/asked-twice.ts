/** A second question behind the first: its word, and what may follow. */
const SECOND =
  /^(?<first>.+?) and (?<asker>when|where|(?:to )?whom?|(?:for )?how much|how long|what|whats|how)(?<rest>(?: .+)?)$/;
const BUYER = /^(?:so )?who (?:bought|got|took|has bought) (?<thing>(?:the |my )?[#\w ]+)$/;

/** Deeds that leave out what they are done to, each with the word before it. */
const OF_THING: Readonly<Record<string, string>> = {
  pay: " for",
  paid: " for",
  spend: " on",
  make: " on",
  made: " on",
  get: " for",
  ask: " for",
  sell: "",
  list: "",
  finish: "",
};

/**
 * Two questions in one, "when did i buy the hutch and where": each as one of its own, the second with what it leaves
 * out; null where it is one. `thing` is what the first is asked of.
 */
export function askedTwice(said: string, thing: string): readonly [string, string] | null {
  const { first, asker, rest } = SECOND.exec(said)?.groups ?? {};
  if (first === undefined || asker === undefined) return null;
  if (rest === " from")
    return /\b(?:buy|get|find)\b/.test(first) ? [first, `where did i get the ${thing}`] : null;
  // "And what did i pay": for the same one
  const [, deed] = /^ (?:did|have) (?:i|we) (\w+)$/.exec(rest ?? "") ?? [];
  if (deed && deed in OF_THING) return [first, `${asker}${rest}${OF_THING[deed]} the ${thing}`];
  if (rest) {
    const whole = rest.replace(/ (?:it|that)(?= |$)/, ` the ${thing}`);
    // "And how many sold" may be asked of all there are.
    return ` ${whole} `.includes(` ${thing} `) ? [first, `${asker}${whole}`] : null;
  }
  const sold = BUYER.exec(first)?.groups?.thing;
  // "Who bought it and for how much" is one question: rows of buyers.
  if (sold !== undefined) return asker === "when" ? [first, `when did ${sold} sell`] : null;
  if (/who/.test(asker)) return /\b(?:sell|sold)\b/.test(first) ? [first, `who bought the ${thing}`] : null;
  const [, doing] =
    /^(?:so )?(?:when|where|what|how much) did (?:i|we) (buy|get|sell|pay)\b/.exec(first) ?? [];
  if (doing === undefined)
    return /^when did .* sell$/.test(first) && asker.endsWith("how much")
      ? [first, `what did the ${thing} sell for`]
      : null;
  const verb = doing === "pay" || doing === "get" ? "buy" : doing;
  if (!asker.endsWith("how much")) return [first, `${asker} did i ${verb} the ${thing}`];
  return [first, verb === "sell" ? `what did the ${thing} sell for` : `what did i pay for the ${thing}`];
}
