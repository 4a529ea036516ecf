import { describe, expect, it } from "vitest";
import { inspectArtwork, sayArtwork } from "../../../src/motif/artwork/inspect.ts";
import { drawingOf } from "../../../src/motif/artwork/read.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

const box = (more: string, size = 9): string => `<rect width="${size}" height="${size}" ${more}/>`;
const dropped = (body: string): [string, string][] =>
  inspectArtwork(svgOf(body)).dropped.map(({ element, why }) => [
    /id="(.*?)"/.exec(element)?.[1] ?? element,
    why,
  ]);

describe("the report", () => {
  it("names every shape that is left out, and why", () => {
    const body = [
      box('id="paper" fill="#eee"', 30),
      box('id="under" fill="red"', 20),
      box('id="lid" fill="blue"', 20),
      '<g id="spare" display="none"><path d="M0 0h9v9z"/></g>',
      box('id="ghost" opacity="0"'),
      box('id="veiled" visibility="hidden"'),
      box('id="glass" fill-opacity="0"'),
      '<path id="nothing"/><circle id="dot"/><polygon id="corners" points=""/>',
      box('id="frame" fill="none"'),
      '<line id="thin" x2="9"/><path id="side" d="M0 0H9"/>',
      '<path id="speck" d="M1 25h.0001v.0001z"/>',
      '<text id="word">pear</text><image id="photo" href="a.png"/>',
    ];
    expect(dropped(body.join(""))).toEqual([
      ["spare", "hidden"],
      ["ghost", "hidden"],
      ["veiled", "hidden"],
      ["glass", "hidden"],
      ["nothing", "empty"],
      ["dot", "empty"],
      ["corners", "empty"],
      ["frame", "unpainted"],
      ["thin", "no-area"],
      ["side", "no-area"],
      ["word", "unsupported"],
      ["photo", "unsupported"],
      ["speck", "no-area"],
      ["under", "covered"],
    ]);
  });

  it("finds a shape covered that only several others together cover", () => {
    const halves =
      '<rect fill="blue" width="12" height="24"/><rect fill="lime" x="12" width="12" height="24"/>';
    expect(dropped(`${box('id="under" fill="red"', 24)}${halves}`)).toEqual([["under", "covered"]]);
    const gap = halves.replace('x="12"', 'x="12.05"');
    expect(dropped(`${box('id="under" fill="red"', 24)}${gap}`)).toEqual([]);
  });

  it("keeps the ring that shows around what covers its middle", () => {
    expect(dropped('<circle id="rim" r="9"/><circle fill="red" r="8.9"/>')).toEqual([]);
  });

  it("says in a line what came of a heap of layers", () => {
    // A buoy of 42 shapes: bands in two reds over one another, hidden sketches, a covered ground.
    const bands = Array.from(
      { length: 40 },
      (_, i) =>
        `<circle cx="16" cy="16" r="${15 - i * 0.3}" fill="${["#e0402a", "#fdfdf8", "#e2432c", "#ffffff"][i % 4]}"/>`,
    );
    const body = `${box('fill="#abcdef" x="10" y="10"')}${bands.join("")}<g display="none">${box("")}</g><path id="pole" fill="#223" d="M15 0h2v32h-2z"/>`;
    const plain = inspectArtwork(svgOf(body));
    const report = inspectArtwork(svgOf(body), { merge: 3 });
    expect(plain.roles).toHaveLength(5);
    expect(report.shapes).toBe(42);
    expect(report.roles).toHaveLength(3);
    expect(sayArtwork(report)).toMatch(
      /^42 shapes in, 3 roles out; left out: 1 hidden, 1 covered; \d+ nodes from \d+$/,
    );
    expect(report.cut.length).toBeGreaterThan(0);
    for (const { role, for: others, area } of report.cut) {
      expect(others).not.toContain(role);
      expect(area).toBeGreaterThan(0);
    }
    const ground = '<rect width="32" height="32" fill="#7fa8b8"/>';
    expect(likeness(svgOf(ground + body), redrawn(svgOf(body), ground))).toBeGreaterThan(36);
  });

  it("is the same whatever is asked first, and reads a use once", () => {
    const use = readArtwork(svgOf(box("")));
    const params = use.params as unknown as { svg: string; size: number };
    expect(drawingOf(params)).toBe(drawingOf(params));
  });
});
