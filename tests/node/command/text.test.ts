import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { timeLeft } from "../../../src/node/command/progress.ts";
import { columns, count, hang, sayBytes, wrap } from "../../../src/node/command/text.ts";

test("wrapping keeps every word, in lines no longer than asked unless a word is", () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { maxLength: 40 });
  fc.assert(
    fc.property(words, fc.integer({ min: 12, max: 60 }), (list, width) => {
      const lines = wrap(list.join(" "), width);
      expect(lines.join(" ")).toBe(list.join(" "));
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      // Greedy: the next line's first word would not have fitted.
      for (let i = 1; i < lines.length; i++)
        expect(lines[i - 1]!.length + 1 + lines[i]!.split(" ")[0]!.length).toBeGreaterThan(width);
    }),
    { seed: 1 },
  );
  expect(wrap("an incomprehensibilities of sorts", 10)).toEqual(["an", "incomprehensibilities", "of sorts"]);
  expect(hang("one two three four five six seven", 4, 26)).toBe("one two three four\n    five six seven");
});

test("sizes are said with two digits or more, and never as 1000 kB", () => {
  expect([0, 999, 1000, 9949, 12_345, 999_499, 999_500, 1_250_000, 98_765_432].map(sayBytes)).toEqual([
    "0 B",
    "999 B",
    "1.0 kB",
    "9.9 kB",
    "12 kB",
    "999 kB",
    "1.0 MB",
    "1.3 MB",
    "99 MB",
  ]);
});

test("counts and columns", () => {
  expect([count(1, "file"), count(2, "file"), count(0, "entry", "entries")]).toEqual([
    "1 file",
    "2 files",
    "0 entries",
  ]);
  expect(
    columns(
      [
        ["a", "1", "x"],
        ["bbb", "22", "yy"],
      ],
      [1],
    ),
  ).toEqual(["a     1  x", "bbb  22  yy"]);
});

describe("time left", () => {
  test.each([
    [0.5, 10, "10 s left"],
    [0.25, 90, "5 min left"],
    [0.9, 9.1, "2 s left"],
    [0.04, 60, ""], // too little done to go by
    [0.5, 1.9, ""], // too little time gone by
    [1, 30, ""],
  ])("at %d of the work after %d s is %o", (done, seconds, words) => {
    expect(timeLeft(done, seconds)).toBe(words);
  });
});
