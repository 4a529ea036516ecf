import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { toTiff } from "../../../src/node/tiff/to-tiff.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { plateToPng, separations } from "../../../src/print.ts";
import { refusalOf } from "../../given.ts";
import { dawn, harbour } from "../../output/harbour.ts";
import { decode } from "../../output/png/pictures.ts";

const folder = mkdtempSync(join(tmpdir(), "sprigwright-tiff-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** The first directory of a little-endian TIFF, tag → value or offset, read after TIFF 6.0, section 2. */
function tagsOf(bytes: Uint8Array): Map<number, number> {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  expect(String.fromCharCode(bytes[0]!, bytes[1]!)).toBe("II");
  const at = view.getUint32(4, true);
  const tags = new Map<number, number>();
  for (let i = 0; i < view.getUint16(at, true); i++) {
    const entry = at + 2 + 12 * i;
    const short = view.getUint16(entry + 2, true) === 3 && view.getUint32(entry + 4, true) === 1;
    tags.set(
      view.getUint16(entry, true),
      short ? view.getUint16(entry + 8, true) : view.getUint32(entry + 8, true),
    );
  }
  const rational = (tag: number): number =>
    view.getUint32(tags.get(tag)!, true) / view.getUint32(tags.get(tag)! + 4, true);
  return tags.set(-282, rational(282)).set(-283, rational(283));
}
const [WIDTH, HEIGHT, COMPRESSION, PHOTOMETRIC, SAMPLES, UNIT] = [256, 257, 259, 262, 277, 296];
const picture = async (): Promise<Uint8Array> => (await rasterize(harbour, { dpi: 150 })).png(dawn);
const refused = async (png: unknown, options?: unknown): Promise<string> =>
  (await refusalOf(() => toTiff(png as Uint8Array, options as object))).code;

describe("a TIFF", () => {
  it("of a picture is RGB at its true size, pixel for pixel", async () => {
    const png = await picture();
    const tiff = await toTiff(png);
    const tags = tagsOf(tiff);
    expect([WIDTH, HEIGHT, COMPRESSION, PHOTOMETRIC, SAMPLES, UNIT].map((tag) => tags.get(tag))).toEqual([
      300, 150, 5, 2, 3, 2,
    ]);
    expect(tags.get(-282)).toBeCloseTo(150, 1);
    expect(tags.get(-283)).toBeCloseTo(150, 1);
    const { data } = decode(png);
    expect(await sharp(tiff).raw().toBuffer()).toEqual(Buffer.from(data.filter((_, i) => i % 4 !== 3)));
  });

  it("of a plate stays grey; of one bit a pixel, it is packed in Group 4", async () => {
    const [, , , flag] = await separations(harbour);
    for (const [depth, compression] of [
      [8, 5],
      [1, 4],
    ] as const) {
      const png = await plateToPng(flag!, { dpi: 150, depth });
      const tiff = await toTiff(png);
      const tags = tagsOf(tiff);
      expect([COMPRESSION, PHOTOMETRIC].map((tag) => tags.get(tag))).toEqual([compression, 1]);
      const { data } = decode(png);
      const grey = await sharp(tiff).toColourspace("b-w").raw().toBuffer();
      expect(grey).toEqual(Buffer.from(data.filter((_, i) => i % 4 === 0)));
    }
  });

  // The profile comes with Debian's ghostscript; none is shipped with the library.
  const profile = "/usr/share/color/icc/ghostscript/default_cmyk.icc";
  if (!existsSync(profile)) console.warn(`SKIPPED: there is no ${profile}, so no CMYK TIFF was made`);
  it.skipIf(!existsSync(profile))("in a printer's profile is CMYK, the profile with it", async () => {
    const tiff = await toTiff(await picture(), { profile });
    const tags = tagsOf(tiff);
    expect([PHOTOMETRIC, SAMPLES].map((tag) => tags.get(tag))).toEqual([5, 4]); // 5: separated
    expect((await sharp(tiff).metadata()).icc).toEqual(readFileSync(profile));
    expect(tags.get(-282)).toBeCloseTo(150, 1);
  });

  it("is refused for what is no picture, no profile, or does not go together", async () => {
    const png = await picture();
    expect(await refused("x")).toBe("wrong-type");
    expect(await refused(new Uint8Array(100))).toBe("bad-picture");
    expect(await refused(png.subarray(0, 900))).toBe("bad-picture");
    expect(await refused(png, { profil: "x" })).toBe("unknown-option");
    expect(await refused(png, { profile: join(folder, "gone.icc") })).toBe("unreadable-profile");
    expect(await refused(png, { profile: folder })).toBe("unreadable-profile");
    writeFileSync(join(folder, "none.icc"), "not a profile");
    expect(await refused(png, { profile: join(folder, "none.icc") })).toBe("bad-profile");
  });
});
