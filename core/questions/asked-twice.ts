/** A second question behind the first: its word, and what may follow. */
const SECOND =
  /^(?<first>.+?) and (?<asker>when|where|(?:to )?whom?|(?:for )?how much|how long|what|whats|how)(?<rest>(?: .+)?)$/;
const BUYER = /^(?:so )?who (?:bought|got|took|has bought) (?<thing>(?:the |my )?[#\w ]+)$/;

/**
 * Two questions in one, "when did i buy the hutch and where": each as one of its own, the second with what it leaves
 * out; null where it is one. `thing` is what the first is asked of.
 */
export function askedTwice(said: string, thing: string): readonly [string, string] | null {
  const { first, asker, rest } = SECOND.exec(said)?.groups ?? {};
  if (first === undefined || asker === undefined) return null;
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
