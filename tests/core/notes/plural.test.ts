import { describe, expect, it } from "vitest";
import { pluralOf, singularOf } from "../../../core/notes/mentions/plural.ts";

describe("the plural of a name", () => {
  it.each([
    ["desk", "desks"],
    ["bench", "benches"],
    ["glass", "glasses"],
    ["toy box", "toy boxes"],
    ["chaise", "chaises"],
    ["dish", "dishes"],
    ["vanity", "vanities"],
    ["tray", "trays"],
    ["vanity stool", "vanity stools"],
    ["bookshelf", "bookshelves"],
    ["leaf", "leaves"],
    ["putty knife", "putty knives"],
    ["knife block", "knife blocks"],
    ["shelf unit", "shelf units"],
    ["chest of drawers", "chests of drawers"],
    ["vanity with mirror", "vanities with mirror"],
    ["chest on chest", "chests on chest"],
    ["bench for two", "benches for two"],
    ["box of legs with feet", "boxes of legs with feet"],
  ])("of %s is %s", (one, several) => {
    expect(pluralOf(one)).toBe(several);
  });
});

describe("the singular of a noun that nobody listed", () => {
  it.each([
    ["whatnots", "whatnot"],
    ["shelves", "shelf"],
    ["vanities", "vanity"],
    ["benches", "bench"],
    ["glasses", "glass"],
    ["boxes", "box"],
    ["glass", "glass"],
    ["bus", "bus"],
    ["gas", "gas"],
    ["ties", "tie"],
  ])("of %s is %s", (several, one) => {
    expect(singularOf(several)).toBe(one);
  });
});
