import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { SprigwrightError } from "../../../src/index.ts";
import { lettering, loadFont } from "../../../src/lettering.ts";
import { sfntOfWoff } from "../../../src/motif/lettering/woff.ts";
import { createRandom } from "../../../src/seed/random.ts";

// Lobster, OFL-1.1, from @fontsource/lobster.
const file = createRequire(import.meta.url).resolve(
  "@fontsource/lobster/files/lobster-latin-400-normal.woff",
);
const woff = new Uint8Array(readFileSync(file));
const plain = sfntOfWoff(woff, 2e7);

test.each([
  ["packed", woff],
  ["plain", plain],
])("a %s font with a few damaged bytes is read or refused in words, and always in time", (_, sound) => {
  let refused = 0;
  for (let k = 0; k < 120; k++) {
    const random = createRandom(`damage-${k}`);
    const bytes = new Uint8Array(sound);
    for (let i = 0; i < 1 + random.below(4); i++)
      bytes[random.below(k % 2 ? 2000 : bytes.length)] = random.below(256);
    const began = Date.now();
    try {
      lettering(loadFont(bytes), "Harbour", { size: 20 });
    } catch (error) {
      expect(error).toBeInstanceOf(SprigwrightError);
      refused++;
    }
    expect(Date.now() - began).toBeLessThan(3000);
  }
  expect(refused).toBeGreaterThan(5);
});

test("a WOFF file whose tables do not fit is refused with the table", () => {
  const bytes = new Uint8Array(woff);
  new DataView(bytes.buffer).setUint32(48, bytes.length);
  expect(() => loadFont(bytes)).toThrow(/table 1 of \d+ lies outside the file.*\[bad-font\]/s);
});
