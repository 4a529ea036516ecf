import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

const page = '<rect fill="#eeeeee" width="100" height="100"/>';
/** Areas in squared units of the file of what lies on a page of 100 x 100. */
const areas = (body: string): number[] =>
  readDrawing(svgOf(page + body, 100), 100)
    .areas.slice(1)
    .map(({ path }) => areaOf(path) / 1e6);
const clip = (id: string, inside: string, more = ""): string =>
  `<clipPath id="${id}" ${more}>${inside}</clipPath>`;
const box = (x: number, y: number, w: number, h: number, more = ""): string =>
  `<rect x="${x}" y="${y}" width="${w}" height="${h}" ${more}/>`;

describe("a clip path", () => {
  it("cuts a shape, keeping its curves", () => {
    const body = `${clip("c", box(0, 0, 50, 100))}<circle cx="50" cy="50" r="20" clip-path="url(#c)"/>`;
    expect(areas(body)[0]! / (Math.PI * 200 * 1.00028)).toBeCloseTo(1, 4);
    expect(readDrawing(svgOf(page + body, 100), 100).areas[1]!.path.contours).toEqual([3]);
  });

  it("may hold several shapes, hidden ones aside, a use, and a rule of its own", () => {
    expect(
      areas(clip("c", box(0, 0, 10, 100) + box(5, 0, 10, 100)) + box(0, 0, 40, 40, 'clip-path="url(#c)"'))[0],
    ).toBeCloseTo(600, 3);
    expect(
      areas(
        clip("c", box(0, 0, 10, 100) + box(20, 0, 10, 100, 'display="none"')) +
          box(0, 0, 40, 40, 'clip-path="url(#c)"'),
      )[0],
    ).toBeCloseTo(400, 3);
    expect(
      areas(
        `<defs>${box(0, 0, 10, 10, 'id="r"')}</defs>${clip("c", '<use href="#r" x="5"/>')}${box(0, 0, 40, 40, 'clip-path="url(#c)"')}`,
      )[0],
    ).toBeCloseTo(100, 3);
    const ring = '<path clip-rule="evenodd" d="M0 0h30v30h-30zM10 10h10v10h-10z"/>';
    expect(areas(clip("c", ring) + box(0, 0, 40, 40, 'clip-path="url(#c)"'))[0]).toBeCloseTo(800, 3);
  });

  it("holds for groups and uses, is cut by clips within it and around it, and moves with its element", () => {
    const two = box(0, 0, 20, 20, 'fill="red"') + box(30, 0, 20, 20, 'fill="blue"');
    expect(
      areas(`${clip("c", box(10, 0, 30, 10))}<g clip-path="url(#c)">${two}</g>`).map(Math.round),
    ).toEqual([100, 100]);
    expect(
      areas(
        `${clip("a", box(0, 0, 10, 100))}${clip("b", box(0, 0, 100, 5), 'clip-path="url(#a)"')}${box(0, 0, 40, 40, 'clip-path="url(#b)"')}`,
      )[0],
    ).toBeCloseTo(50, 3);
    expect(
      areas(
        `${clip("a", box(0, 0, 10, 100))}${clip("b", box(0, 0, 100, 5))}<g clip-path="url(#a)">${box(0, 0, 40, 40, 'clip-path="url(#b)"')}</g>`,
      )[0],
    ).toBeCloseTo(50, 3);
    expect(
      areas(
        `${clip("c", box(0, 0, 10, 10))}${box(0, 0, 20, 20, 'transform="translate(30 30) scale(2)" clip-path="url(#c)"')}`,
      )[0],
    ).toBeCloseTo(400, 3);
    expect(
      areas(
        `${clip("c", box(0, 0, 10, 10))}<defs>${box(0, 0, 9, 9, 'id="r"')}</defs><use href="#r" x="4" clip-path="url(#c)"/>`,
      )[0],
    ).toBeCloseTo(54, 3);
  });

  it("may be measured by the box of what it cuts, a shape or a group", () => {
    const half = clip("c", box(0, 0, 0.5, 1), 'clipPathUnits="objectBoundingBox"');
    expect(areas(half + box(20, 20, 40, 10, 'clip-path="url(#c)"'))[0]).toBeCloseTo(200, 3);
    const group = box(20, 20, 10, 10) + box(50, 20, 10, 10);
    expect(areas(`${half}<g clip-path="url(#c)" transform="rotate(90 50 50)">${group}</g>`)[0]).toBeCloseTo(
      100,
      3,
    );
  });

  it("sets the size of the drawing by what is left of it", () => {
    const { width, height } = readDrawing(
      svgOf(`${clip("c", box(5, 5, 20, 10))}${box(0, 0, 90, 90, 'clip-path="url(#c)"')}`, 100),
      40,
    );
    expect([width, height]).toEqual([40, 20]);
  });

  it("that leaves nothing drops the shape, and the report says so", () => {
    const body = `${box(0, 0, 9, 9, 'fill="red"')}${clip("c", "")}${box(0, 0, 40, 40, 'id="gone" clip-path="url(#c)"')}`;
    expect(inspectArtwork(svgOf(body)).dropped).toEqual([
      { element: '<rect id="gone"> on line 1', why: "clipped" },
    ]);
  });

  it("that is missing, or leads back to itself, is named and left out", () => {
    const missing = inspectArtwork(svgOf(box(0, 0, 9, 9, 'clip-path="url(#x)"'))).warnings;
    expect(missing).toEqual([
      '<rect> on line 1: its clip-path "url(#x)" is not in the file; it is drawn without',
    ]);
    const own = clip("c", box(0, 0, 9, 9, 'clip-path="url(#c)"'));
    expect(areas(own + box(0, 0, 20, 20, 'clip-path="url(#c)"'))[0]).toBeCloseTo(81, 3);
  });
});

describe("a mask", () => {
  it("that is white and solid cuts like a clip path", () => {
    const body = `<mask id="m"><circle fill="#fff" cx="50" cy="50" r="20"/></mask>${box(0, 0, 50, 100, 'mask="url(#m)"')}`;
    expect(areas(body)[0]! / (Math.PI * 200 * 1.00028)).toBeCloseTo(1, 4);
  });

  it("that is black in places leaves those out, as resvg does", () => {
    const hole = '<circle fill="black" cx="50" cy="50" r="20"/><circle fill="#fff" cx="50" cy="50" r="8"/>';
    const body = `<mask id="m"><rect fill="#fff" width="100" height="100"/>${hole}</mask>${box(0, 0, 100, 100, 'fill="#c33" mask="url(#m)"')}`;
    expect((1e4 - areas(body)[0]!) / (Math.PI * (400 - 64) * 1.00028)).toBeCloseTo(1, 4);
    const ground = '<rect width="100" height="100" fill="#7fa8b8"/>';
    expect(likeness(svgOf(ground + body, 100), redrawn(svgOf(body, 100), ground, 100))).toBeGreaterThan(44);
    const none = `<mask id="m"><rect fill="#000" width="100" height="100"/></mask>${box(0, 0, 50, 50, 'mask="url(#m)"')}`;
    expect(inspectArtwork(svgOf(box(60, 60, 9, 9) + none, 100)).dropped).toMatchObject([{ why: "clipped" }]);
  });

  it("that fades is left out, with what to do instead", () => {
    const body = `<mask id="m"><circle fill="#888" cx="50" cy="50" r="20"/></mask>${box(0, 0, 50, 100, 'mask="url(#m)"')}`;
    expect(areas(body)[0]).toBeCloseTo(5000, 3);
    expect(inspectArtwork(svgOf(body, 100)).warnings[0]).toContain("Cut the shapes in the editor instead");
  });
});

describe("a nested page", () => {
  it("cuts what reaches beyond it, unless it says otherwise", () => {
    const nested = (more: string): string =>
      `<svg x="10" y="10" width="20" height="20" ${more}>${box(-5, -5, 15, 15)}</svg>`;
    expect(areas(nested(""))[0]).toBeCloseTo(100, 3);
    expect(areas(nested('overflow="visible"'))[0]).toBeCloseTo(225, 3);
  });

  it("fits its content by viewBox and preserveAspectRatio as resvg does", () => {
    const ways = ["none", "xMinYMin", "xMaxYMax meet", "xMidYMid slice", "xMinYMax slice"];
    const content = '<rect width="10" height="6" fill="#c33"/><circle cx="5" cy="3" r="2.4" fill="#fff"/>';
    const body = ways.map(
      (way, i) =>
        `<svg x="${2 + 18 * (i % 5)}" y="5" width="15" height="30" viewBox="0 0 10 6" preserveAspectRatio="${way}">${content}</svg>` +
        `<symbol id="s${i}" viewBox="0 0 10 6" preserveAspectRatio="${way}">${content}</symbol>` +
        `<use href="#s${i}" x="${2 + 18 * i}" y="50" width="15" height="${6 + 4 * i}"/>`,
    );
    const ground = '<rect width="100" height="100" fill="#7fa8b8"/>';
    expect(
      likeness(svgOf(ground + body.join(""), 100), redrawn(svgOf(body.join(""), 100), ground, 100)),
    ).toBeGreaterThan(38);
  });
});
