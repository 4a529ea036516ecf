import { expect, it } from "vitest";
import { inQuickJs } from "../../in-quickjs.ts";
import { answer } from "./two-pages.ts";

it("pages are the same bytes in another engine: QuickJS, which has neither V8's mathematics nor any timer", async () => {
  const there = await inQuickJs(`import { answer } from "./two-pages.ts";`, "answer()", import.meta.dirname);
  expect(there).toBe(await answer());
}, 60_000);
