import fc from "fast-check";
import { expect, it } from "vitest";
import { colorwayNames } from "../../../src/colorway/plan/name.ts";

it("names say the palette, the ground and the ink that is seen most, and more only where two are alike", () => {
  expect(
    colorwayNames([
      ["quay", "chalk", "coral", "kelp", "butter"],
      ["quay", "chalk", "coral", "sage", "butter"],
      ["quay", "ink", "coral", "kelp", "butter"],
      ["loft", "chalk", "coral", "kelp", "butter"],
    ]),
  ).toEqual(["quay-chalk-coral-kelp", "quay-chalk-coral-sage", "quay-ink-coral", "loft-chalk-coral"]);
});

it("a name is the same wherever its colorway stands in the list", () => {
  const ink = fc.constantFrom("chalk", "coral", "kelp", "tide");
  const colorway = fc.tuple(fc.constantFrom("quay", "loft"), ink, ink, ink, ink);
  const colorways = fc.uniqueArray(colorway, { minLength: 1, maxLength: 12, selector: (own) => own.join() });
  fc.assert(
    fc.property(colorways, (parts) => {
      const names = colorwayNames(parts);
      expect(new Set(names).size).toBe(parts.length);
      expect(colorwayNames([...parts].reverse())).toEqual([...names].reverse());
    }),
    { seed: 21, numRuns: 200 },
  );
});

it("names stay short enough for files, and tell colorways apart all the same", () => {
  const long = "morning-".repeat(7).slice(0, 55);
  const names = colorwayNames([
    [long, "chalk", "coral"],
    [long, "ink", "coral"],
    ["a-b", "c", "d"],
    ["a", "b-c", "d"],
  ]);
  expect(new Set(names).size).toBe(4);
  for (const name of names) expect(name).toMatch(/^[a-z0-9][a-z0-9-]{0,59}$/);
});
