import { NOBODY } from "../../notes/words/deals.ts";
import { PLACING } from "../../notes/words/names.ts";

/** The words that tell a buyer from others: "a guy" may be anybody, he who is known included. */
export const toldApart = (buyer: string | undefined): string | undefined =>
  buyer === undefined || NOBODY.has(buyer) ? undefined : buyer;

/** Whether a note names another buyer than the one who is known. */
export function isAnother(said: string | undefined, known: string | null | undefined): boolean {
  return Boolean(known) && toldApart(said) !== undefined && said !== known && !isMoreOf(said!, known!);
}

/** "young couple" of "couple", "lady" of "lady with the twins": one of them told by more words. */
function isMoreOf(one: string, other: string): boolean {
  const [less, more] = one.length < other.length ? [one, other] : [other, one];
  const [first, second = ""] = more.split(" ");
  return !less.includes(" ") && (more.endsWith(` ${less}`) || (first === less && PLACING.has(second)));
}
