import fc from "fast-check";
import { expect, test } from "vitest";
import { fieldRepeats } from "../../../src/node/write/field-view.ts";

const shown = (width: number, height: number) => fieldRepeats({ width, height });

test("a field view shows two or three blocks across, more where they are tall", () => {
  expect(shown(200, 200)).toEqual({ across: 3, down: 2 });
  expect(shown(320, 160)).toEqual({ across: 2, down: 3 });
  expect(shown(200, 325)).toEqual({ across: 4, down: 2 });
});

test("whatever the block, both seams show, and but for very long blocks it is near 4 by 3", () => {
  const side = fc.integer({ min: 5_000, max: 1_000_000 });
  fc.assert(
    fc.property(side, side, (width, height) => {
      const { across, down } = shown(width, height);
      expect(Math.min(across, down)).toBeGreaterThanOrEqual(2);
      expect(Math.max(across, down)).toBeLessThanOrEqual(12);
      const long = Math.max(width / height, height / width);
      const shape = (down * height) / (across * width);
      if (long < 4) expect(shape > 0.55 && shape < 1.1).toBe(true);
    }),
    { seed: 1 },
  );
});
