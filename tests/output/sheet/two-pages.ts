// A sheet and a month of a calendar, the same in every engine; their letters are drawn by hand.
import type { Font } from "../../../src/motif/lettering/font.ts";
import { crc32 } from "../../../src/output/png/chunks.ts";
import { calendar } from "../../../src/output/sheet/calendar/calendar.ts";
import { colorwaySheet } from "../../../src/output/sheet/colorway-sheet.ts";
import { pageToPng } from "../../../src/output/sheet/draw/to-png.ts";
import { pageToSvg } from "../../../src/output/sheet/draw/to-svg.ts";
import { meadow } from "../png/tiles.ts";

/** Every letter a lens, as wide as its number says. */
const lenses: Font = {
  family: "Lenses",
  unitsPerEm: 1000,
  capHeight: 0.7,
  glyph: (character) => {
    const index = character.codePointAt(0)!;
    const advance = 300 + (index % 7) * 50;
    return {
      ...{ index, advance, script: "latn" },
      commands: [
        { type: "M", x: 40, y: 0 },
        { type: "C", x1: advance * 0.2, y1: 700, x2: advance * 0.7, y2: 690, x: advance - 33, y: 0 },
        { type: "Q", x1: advance / 3, y1: -210, x: 40, y: 0 },
        { type: "Z" },
      ],
    };
  },
  kerning: (left, right) => (left.index - right.index) % 30,
};

/** Everything that must not differ, as one line of text. */
export async function answer(): Promise<string> {
  const tile = meadow(60_000, 3, 5);
  const inks = (shift: number): Record<string, string> =>
    Object.fromEntries(
      tile.recipe.roles.map((role, i) => [role, `#${(0x28536b + (i + shift) * 0x1a2b3c).toString(16)}`]),
    );
  const colorways = [0, 1, 2].map((i) => ({ name: `tide-${i}`, inks: inks(i) as { ground: string } }));
  const pages = [
    colorwaySheet({ tile, colorways, font: lenses, size: "A6", margin: 8 }),
    calendar({ year: 2027, pictures: [{ tile, colorway: colorways[0]! }], font: lenses, size: "5x7in" })[2]!,
  ];
  const said: string[] = [];
  for (const page of pages) {
    const png = await pageToPng(page, { dpi: 30 });
    const svg = Uint8Array.from(pageToSvg(page), (letter) => letter.charCodeAt(0) & 255);
    said.push(`png ${png.length} ${crc32(png)}, svg ${svg.length} ${crc32(svg)}`);
  }
  return said.join("; ");
}
