import { expect, it } from "vitest";
import { isOwnersFact, isOwnersKinds } from "../../../core/questions/sight.ts";

it("notes of the loan and of other income may be the owner's alone, those of pieces never", () => {
  for (const kind of ["pay", "loan", "terms", "statement", "income"] as const)
    expect([kind, isOwnersFact(kind)]).toEqual([kind, true]);
  for (const kind of ["buy", "sell", "spend", "drive"] as const)
    expect([kind, isOwnersFact(kind)]).toEqual([kind, false]);
});

it("a list of several kinds is the owner's as soon as one of them is; a word to the bot is no fact", () => {
  expect(isOwnersKinds(new Set(["buy", "pay"]))).toBe(true);
  expect(isOwnersKinds(new Set(["buy", "undo"]))).toBe(false);
  expect(isOwnersKinds(null)).toBe(false);
});
