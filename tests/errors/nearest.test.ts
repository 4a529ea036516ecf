import { expect, it } from "vitest";
import { nearestName } from "../../src/errors/nearest.ts";

it("finds a slip of one letter, whatever the case", () => {
  expect(nearestName("Leef", ["ground", "leaf", "fruit"])).toBe("leaf");
  expect(nearestName("denisty", ["density", "direction"])).toBe("density");
  expect(nearestName("buidl", ["build", "inspect"])).toBe("build");
});

// Levenshtein's own measure: kitten → sitting takes three edits (the textbook example).
it("offers nothing that is more than a third of its letters away", () => {
  expect(nearestName("kitten", ["sitting"])).toBeUndefined();
  expect(nearestName("kittens", ["kitting"])).toBe("kitting");
  expect(nearestName("x", ["flip"])).toBeUndefined();
  expect(nearestName("", ["flip"])).toBeUndefined();
});

it("offers nothing for names so short that any other would do", () => {
  expect(nearestName("x", ["ground", "a", "b"])).toBeUndefined();
  expect(nearestName("x", ["xy"])).toBeUndefined();
  expect(nearestName("up", ["ground", "uv"])).toBeUndefined();
  expect(nearestName("A", ["b", "a"]), "but case is a slip however short").toBe("a");
  expect(nearestName("gp", ["pg", "gap"]), "and so is a letter that is missing").toBe("gap");
});

it("takes the first of equally near names, and is not slowed by a huge one", () => {
  expect(nearestName("cat", ["bat", "rat"])).toBe("bat");
  expect(nearestName("y".repeat(1e7), ["gap", "flip"])).toBeUndefined();
});
