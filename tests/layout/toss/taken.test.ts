import fc from "fast-check";
import { expect, test } from "vitest";
import { type Place, takenOver } from "../../../src/layout/toss/taken.ts";

const at = fc.integer({ min: -200, max: 1200 }); // also beside the zone
const within = fc.record({ x: fc.integer({ min: 0, max: 1000 }), y: fc.integer({ min: 0, max: 600 }) });

test("the room at a point is what looking at every place gives", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ x: at, y: at, r: fc.integer({ min: 0, max: 90 }) }), { maxLength: 80 }),
      within,
      fc.oneof(fc.constant(Infinity), fc.integer({ min: 0, max: 700 })),
      fc.integer({ min: -50, max: 300 }),
      fc.integer({ min: 1, max: 200 }),
      (places, { x, y }, most, enough, count) => {
        const taken = takenOver([0, 0, 1000, 600], count);
        for (const place of places) taken.add(place);
        const far = (p: Place): number => Math.sqrt((p.x - x) ** 2 + (p.y - y) ** 2) - p.r;
        const expected = Math.min(most, ...places.map(far));
        const room = taken.roomAt(x, y, most, enough);
        if (expected > enough) expect(room).toBe(expected);
        else expect(room).toBeLessThanOrEqual(enough);
      },
    ),
    { seed: 9, numRuns: 500 },
  );
});
