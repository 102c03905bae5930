import { expect, test } from "vitest";
import { plainerBy, wayOf } from "../../core/questions/plainer.ts";
import { WAYS_OF_ASKING } from "../../core/questions/words/ways-of-asking.ts";

test.each(WAYS_OF_ASKING)("%s", (...row) => {
  const [, , asked, becomes] = row;
  expect(plainerBy(wayOf(row), asked)).toBe(becomes);
});

test("a row that does not hold leaves the question as it is", () => {
  const way = wayOf(["^ who took x:3 home $", "who took home $x", "", ""]);
  expect(plainerBy(way, "who took the lamp")).toBe("who took the lamp");
  expect(plainerBy(way, "who took the green lamp home?")).toBe("who took home the green lamp");
});

test("a class that nobody knows is a mistake in the table", () => {
  expect(() => plainerBy(wayOf(["<nowhere>", "", "", ""]), "anything")).toThrow("nowhere");
});
