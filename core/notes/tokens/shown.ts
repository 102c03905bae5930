import type { Tok } from "../clause.ts";

const CLASSES = [
  "noun",
  "supply",
  "place",
  "method",
  "stream",
  "hedge",
  "person",
  "trait",
  "filler",
  "labor",
  "plain",
] as const;

/** A token with what it is taken for: "sold<sell>", "20<amount>", "zorp<?>". */
export function tokenShown({ kind, text, roles, unknown }: Tok): string {
  if (kind !== "word") return `${text}<${kind}>`;
  const heads = (roles.heads ?? []).map((head) => head.kind);
  const classes = CLASSES.filter((name) => roles[name] !== undefined);
  const all = unknown ? ["?"] : [...new Set([...heads, ...classes, ...(roles.actor ? [roles.actor] : [])])];
  return `${text}<${all.join(" ")}>`;
}
