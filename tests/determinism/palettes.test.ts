import { expect, it } from "vitest";
import { inQuickJs } from "../in-quickjs.ts";
import { palettesTold } from "./palettes.ts";

it("palettes, views, gamut and differences are the same in Node and in QuickJS, whose powers and roots are others", async () => {
  const here = palettesTold();
  expect(here.length).toBeGreaterThan(20_000);
  const there = await inQuickJs(
    `import { palettesTold } from "./palettes.ts";`,
    "palettesTold()",
    import.meta.dirname,
  );
  expect(there).toBe(here);
}, 60_000);
