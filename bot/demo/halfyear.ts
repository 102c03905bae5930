import { type DemoPiece, demoPieces } from "./pieces.ts";

/** A note of the demo, and how many days ago it was sent. */
interface DemoNote {
  daysAgo: number;
  text: string;
}

/** What belongs to no single piece: the loan, a lot, a set, tools, gas, other income, goals. */
const others: readonly DemoNote[] = [
  { daysAgo: 180, text: "loan 14250 at 5.5%" },
  { daysAgo: 180, text: "set aside 15% for tax" },
  { daysAgo: 180, text: "goal 80 pieces this year" },
  { daysAgo: 180, text: "goal 600 a month" },
  { daysAgo: 179, text: "orbital sander 58.90 card" },
  { daysAgo: 161, text: "gas 22" },
  { daysAgo: 149, text: "paid loan 250" },
  { daysAgo: 135, text: "drop cloths 14.60" },
  { daysAgo: 120, text: "workshop 120" },
  { daysAgo: 119, text: "paid loan 400" },
  { daysAgo: 115, text: "bought set of 4 chairs 32 yard sale" },
  { daysAgo: 109, text: "3h painting the 4 chairs" },
  { daysAgo: 108, text: "finished the 4 chairs" },
  { daysAgo: 107, text: "listed the 4 chairs 120" },
  { daysAgo: 100, text: "sold both chairs 60 cash" },
  { daysAgo: 92, text: "sold 2 chairs 55 cash" },
  { daysAgo: 89, text: "paid loan 450" },
  { daysAgo: 76, text: "booth fee 20" },
  { daysAgo: 73, text: "picked up small stool and tall stool 18 storage clean-out" },
  { daysAgo: 63, text: "sold small stool 24 and tall stool 28" },
  { daysAgo: 59, text: "paid loan 500" },
  { daysAgo: 47, text: "tips 20" },
  { daysAgo: 31, text: "gas 26" },
  { daysAgo: 29, text: "paid loan 550" },
  { daysAgo: 15, text: "sandpaper 11.40" },
  { daysAgo: 13, text: "paid cousin 30 to help move the secretary" },
];

/** Every note of the half year, in the order it was sent. */
export function demoNotes(): DemoNote[] {
  const notes = [...others, ...demoPieces.flatMap(notesOf)];
  return notes.sort((a, b) => b.daysAgo - a.daysAgo);
}

function notesOf(piece: DemoPiece): DemoNote[] {
  const { name, bought, price, source } = piece;
  const cost = price === "0" ? `free ${name} ${source}` : `bought ${name} ${price} ${source}`;
  const notes: DemoNote[] = [{ daysAgo: bought, text: cost }];
  const add = (daysAgo: number, text: string) => notes.push({ daysAgo, text: text.replace("PIECE", name) });
  if (piece.miles) add(bought, `${piece.miles} miles for ${name}`);
  for (const [daysAgo, what, amount] of piece.supplies ?? []) add(daysAgo, `${what} ${amount} for ${name}`);
  for (const [daysAgo, said] of piece.work ?? []) add(daysAgo, `${said} ${name}`);
  if (piece.finished !== undefined) add(piece.finished, `finished ${name}`);
  if (piece.listed) add(piece.listed[0], `listed ${name} ${piece.listed[1]}`);
  if (piece.dropped) add(piece.dropped[0], `dropped ${name} to ${piece.dropped[1]}`);
  if (piece.hold) add(...piece.hold);
  if (piece.fellThrough) add(...piece.fellThrough);
  if (piece.sold) add(piece.sold[0], `sold ${name} ${piece.sold[1]} ${piece.sold[2]}`);
  for (const [daysAgo, text] of piece.more ?? []) add(daysAgo, text);
  return notes;
}
