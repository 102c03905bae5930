import type { Features } from "./rule.ts";

/** "who did i sell to", "where did i buy stuff", "where have i sold things". */
export function whomOf(said: string): Features["whom"] {
  if (
    /^who(?:m| all)? (?:did|have|do) (?:i|we) (?:sell|sold) (?:stuff |pieces |things |furniture )?to\b/.test(
      said,
    )
  )
    return "buyer";
  if (
    /^(?:who|where)(?:m| all)? (?:did|have|do) (?:i|we) (?:buy|bought|get|got) /.test(`${said} `) &&
    !/ it\b/.test(said)
  )
    return "source";
  const isOfTime =
    /^who(?: all| has)? bought (?:stuff |something |anything |pieces )?(?:in|on|during|this|last|since|from me|today|yesterday)\b/;
  if (isOfTime.test(said)) return "buyer";
  return /^where (?:did|have|do) (?:i|we) (?:sell|sold) /.test(`${said} `) ? "place" : null;
}
