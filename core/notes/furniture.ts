import { SET_WORDS } from "./words/furniture.ts";

/** Whether a name means pieces that go together: "dining set", "bedroom suite". */
export function isSetName(name: string): boolean {
  return SET_WORDS.has(name.slice(name.lastIndexOf(" ") + 1));
}
