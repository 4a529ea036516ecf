import { expect, it } from "vitest";
import { inQuickJs } from "../in-quickjs.ts";
import { answer } from "./harbour.ts";

it("a whole job gives the same digest, SVG and PNG in Node and in QuickJS, an engine with other mathematics and no timers", async () => {
  const here = await answer();
  const there = await inQuickJs(`import { answer } from "./harbour.ts";`, "answer()", import.meta.dirname);
  expect(there).toBe(here);
}, 180_000);
