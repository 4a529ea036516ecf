import { expect, it } from "vitest";
import { inQuickJs } from "../../in-quickjs.ts";
import { drawings } from "./engines-drawings.ts";

/** Drawings that between them offset, cut, intersect and fit. */
const NAMES = ["anchor", "quatrefoil", "strawberry", "tulip", "wave"];

it("knock-outs, offsets and fitted curves come out the same in Node and in QuickJS, an engine with other mathematics", async () => {
  const here = drawings(NAMES);
  const expression = `drawings(${JSON.stringify(NAMES)})`;
  const there = await inQuickJs(
    `import { drawings } from "./engines-drawings.ts";`,
    expression,
    import.meta.dirname,
  );
  expect(there).toBe(here);
  expect(here.length).toBeGreaterThan(10_000);
}, 60_000);
