import { best } from "./best.ts";
import { held } from "./held.ts";
import { help } from "./help.ts";
import { listed } from "./listed.ts";
import { loan } from "./loan.ts";
import { miles } from "./miles.ts";
import { month } from "./month.ts";
import { pace } from "./pace.ts";
import { piece } from "./piece.ts";
import { pieces } from "./pieces.ts";
import { price } from "./price.ts";
import { recap } from "./recap.ts";
import { tax } from "./tax.ts";
import { unlisted } from "./unlisted.ts";
import { unsold } from "./unsold.ts";
import { worth } from "./worth.ts";
import { year } from "./year.ts";

/** Every question the bot answers. A new question is its own file and its line here. */
export const answers = [
  month,
  year,
  recap,
  loan,
  piece,
  pieces,
  unlisted,
  listed,
  held,
  unsold,
  best,
  pace,
  tax,
  miles,
  price,
  worth,
  help,
] as const;

/** A note that asks for each view, for the help. */
export function exampleQuestions(): string[] {
  return answers.filter(({ about }) => about !== "help").map(({ example }) => example);
}
