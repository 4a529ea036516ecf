import { PNG } from "pngjs";
import { expect, it } from "vitest";
import { paletteFromArtwork } from "../../../src/colorway/pulled/palette-from-artwork.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { traceImage } from "../../../src/motif/artwork/trace/trace-image.ts";
import { leaf } from "../../../src/motif/primitives/index.ts";
import { refusal } from "../../given.ts";

const BOAT =
  '<svg xmlns="http://www.w3.org/2000/svg"><path fill="#036" d="M0 5h30v9z"/><path fill="#147" d="M20 5h6v2z"/>' +
  '<path fill="#c00" d="M4 0h9v5z"/><path id="flag" fill="#c00" d="M1 0h2v2z"/></svg>';

it("a drawing's palette has its roles as inks, back to front, in the colour that most of each has", () => {
  const boat = readArtwork(BOAT, { roles: { "#003366": "hull", "#114477": "hull", "#cc0000": "sail" } });
  expect(paletteFromArtwork(boat, { name: "boat" })).toEqual({
    name: "boat",
    inks: { hull: "#003366", sail: "#cc0000" },
  });
  const unnamed = Object.values(paletteFromArtwork(readArtwork(BOAT), { name: "boat" }).inks);
  expect(unnamed).toEqual(["#003366", "#114477", "#cc0000"]);
});

it("roles of one colour share an ink, called as the first of them", () => {
  const boat = readArtwork(BOAT, {
    roles: { "#003366": "hull", "#114477": "hull", "#cc0000": "sail", "id:flag": "flag" },
  });
  expect(Object.values(paletteFromArtwork(boat, { name: "boat" }).inks)).toEqual(["#003366", "#cc0000"]);
});

it("a traced picture gives its inks", () => {
  const picture = new PNG({ width: 60, height: 40 });
  for (let i = 0; i < 60 * 40; i++) {
    const [x, y] = [i % 60, Math.floor(i / 60)];
    const inside = x > 10 && x < 50 && y > 8 && y < 32;
    picture.data.set(inside ? [217, 80, 60, 255] : [255, 255, 255, 255], 4 * i);
  }
  const buoy = traceImage(new Uint8Array(PNG.sync.write(picture)), { roles: { "#d9503c": "float" } });
  expect(paletteFromArtwork(buoy, { name: "buoy" }).inks).toEqual({ float: "#d9503c" });
});

it("of a drawn motif there is none", () => {
  expect(refusal(() => paletteFromArtwork(leaf(), { name: "leaf" })).code).toBe("wrong-type");
  expect(refusal(() => paletteFromArtwork(null as never, { name: "leaf" })).code).toBe("wrong-type");
});
