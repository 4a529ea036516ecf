import { expect, test } from "vitest";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { stoodOf } from "../../../src/layout/toss/stood.ts";
import { crescent, entriesOf, leaf, options } from "./fixtures.ts";

const entries = entriesOf(leaf(), crescent());
const fixed = (count: number) =>
  Array.from({ length: count }, (_, k) => {
    const entry = k % 2;
    const { index, motif } = entries[entry]!.drawings[0]!;
    const scale = [0.5, 1, 2.4][k % 3]!;
    const placement = {
      id: `${entry + 1}-${k + 1}`,
      motif: index,
      x: 100 * k,
      y: 7 * k,
      turn: 0.2,
      scale,
      flip: k % 5 === 0,
    };
    return { entry, extra: 0, motif, placement };
  });

test("what stands is flattened for its own size, as a drawing made ready for that size alone is", () => {
  for (const { entry, pose, outline } of stoodOf(options({ entries, fixed: fixed(6), hollows: 0.3 }))) {
    const { scale, body } = pose;
    const alone = bodiesOf([{ ...entries[entry]!, scale: [scale, scale] }], 0.3)[0]![0]!;
    expect(body.entry).toBe(entry);
    expect(body.outline).toEqual(alone.outline);
    expect(body.circle).toEqual(alone.circle);
    expect(body.middle).toEqual(alone.middle);
    expect(outline.points).toHaveLength(alone.outline.points.length);
  }
});

test("a drawing that stands thousands of times is made ready once", () => {
  const stood = stoodOf(options({ entries, fixed: fixed(3000) }));
  expect(stood).toHaveLength(3000);
  expect(new Set(stood.map(({ pose }) => pose.body)).size).toBe(6);
  expect(new Set(stood.map(({ pose }) => pose.body.grid)).size).toBe(2);
});
