import { NOBODY } from "../../notes/words/deals.ts";

/** The words that tell a buyer from others: "a guy" may be anybody, he who is known included. */
export const toldApart = (buyer: string | undefined): string | undefined =>
  buyer === undefined || NOBODY.has(buyer) ? undefined : buyer;

/** Whether a note names another buyer than the one who is known. */
export function isAnother(said: string | undefined, known: string | null | undefined): boolean {
  return Boolean(known) && toldApart(said) !== undefined && said !== known;
}
