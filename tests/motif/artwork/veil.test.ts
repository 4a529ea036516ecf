import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { over } from "../../../src/motif/artwork/veil.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

const box = (fill: string, x: number, more = ""): string =>
  `<rect fill="${fill}" x="${x}" y="8" width="12" height="12" ${more}/>`;
const fills = (body: string): string[] =>
  [...new Set(readDrawing(svgOf(body), 30).areas.map((area) => area.fill))].sort();
const white = '<rect width="32" height="32" fill="#fff"/>';

describe("half transparent paint", () => {
  it("takes the colour that is seen, over each colour below it and over white", () => {
    expect(fills(box("#ff0000", 2) + box("#0000ff", 8, 'opacity=".5"'))).toEqual([
      "#800080",
      "#8080ff",
      "#ff0000",
    ]);
    expect(inspectArtwork(svgOf(box("#0000ff", 8, 'id="tide" fill-opacity="25%"'))).warnings).toEqual([
      '<rect id="tide"> on line 1: it is half transparent (25 %) over the bare ground; it is drawn as over white',
    ]);
  });

  it("leaves no trace of bare ground where something lies below all of it", () => {
    const { warnings, roles } = inspectArtwork(
      svgOf(`<rect x="1" width="31" height="32" fill="#fc0"/>${box("#000", 8, 'opacity=".2"')}`),
    );
    expect(warnings).toEqual([]);
    expect(roles.map((role) => role.fill)).toEqual(["#ffcc00", "#cca300"]);
  });

  it("covers as a group when a group is half transparent", () => {
    const inside = box("#ff0000", 2) + box("#0000ff", 8);
    expect(fills(`<g opacity=".5">${inside}</g>`)).toEqual(["#8080ff", "#ff8080"]);
    expect(fills(`<g opacity=".5"><g opacity=".5">${inside}</g></g>`)).toEqual(["#bfbfff", "#ffbfbf"]);
  });

  it("mixes after Porter and Duff", () => {
    expect(over({ fill: "#ffffff", alpha: 0.5 }, { fill: "#000000", alpha: 1 })).toEqual({
      fill: "#808080",
      alpha: 1,
    });
    expect(over({ fill: "#ff0000", alpha: 0.5 }, { fill: "#0000ff", alpha: 0.5 })).toEqual({
      fill: "#aa0055",
      alpha: 0.75,
    });
  });

  it("looks over white as resvg draws it, whatever the heap", () => {
    const share = fc.constantFrom(".3", ".5", ".8", "1");
    const place = fc.integer({ min: 6, max: 26 });
    const disc = fc.tuple(
      fc.constantFrom("#dd2211", "#115599", "#ffcc33"),
      place,
      place,
      fc.integer({ min: 3, max: 8 }),
      share,
    );
    const heap = fc.tuple(
      fc.array(disc, { minLength: 1, maxLength: 4 }),
      fc.array(disc, { minLength: 1, maxLength: 3 }),
      share,
    );
    const draw = (discs: readonly (readonly [string, number, number, number, string])[]): string =>
      discs
        .map(([fill, x, y, r, o]) => `<circle fill="${fill}" cx="${x}" cy="${y}" r="${r}" opacity="${o}"/>`)
        .join("");
    fc.assert(
      fc.property(heap, ([loose, grouped, opacity]) => {
        const body = `${draw(loose)}<g opacity="${opacity}">${draw(grouped)}</g>`;
        expect(likeness(svgOf(white + body), redrawn(svgOf(body), white))).toBeGreaterThan(36);
      }),
      { seed: 12, numRuns: 20 },
    );
  });

  it("is stopped where its overlaps grow without end", () => {
    const many = Array.from(
      { length: 120 },
      (_, i) =>
        `<circle fill="#f00" opacity=".5" cx="${10 + (i % 11)}" cy="${10 + i / 11}" r="${6 + i / 60}"/>`,
    );
    expect(() => readDrawing(svgOf(many.join("")), 30)).toThrow(/artwork-too-large|too-many-roles/);
  });
});

describe("a gradient", () => {
  const stops = '<stop stop-color="#ff0000"/><stop offset="1" stop-color="#0000ff"/>';
  const filled = (gradient: string, shape = '<rect width="20" height="20" fill="url(#g)"/>'): string[] =>
    fills(gradient + shape);

  it("becomes the mean of its colours over the shape, with a warning", () => {
    expect(filled(`<linearGradient id="g">${stops}</linearGradient>`)).toEqual(["#800080"]);
    // Red at the centre, blue from the rim of the disc on: the mean of t over a disc is 2/3.
    expect(
      filled(`<radialGradient id="g">${stops}</radialGradient>`, '<circle r="9" fill="url(#g)"/>'),
    ).toEqual([expect.stringMatching(/^#5[4-7]00a[8-b]$/)]);
    const { warnings } = inspectArtwork(
      svgOf(`<linearGradient id="g">${stops}</linearGradient><rect width="20" height="20" fill="url(#g)"/>`),
    );
    expect(warnings).toEqual([
      '<rect> on line 1: its gradient "#g" is flattened to its mean colour, #800080',
    ]);
  });

  it("counts only as far as it reaches over the shape, and takes over from others by href", () => {
    const far = `<linearGradient id="g" gradientUnits="userSpaceOnUse" x1="0" x2="2000">${stops}</linearGradient>`;
    expect(filled(far)).toEqual(["#fe0001"]);
    const taken = `<linearGradient id="a">${stops}</linearGradient><linearGradient id="g" href="#a" x1=".5"/>`;
    expect(filled(taken)).toEqual(["#bf0040"]);
    const turned = `<linearGradient id="g" gradientTransform="rotate(90)">${stops}</linearGradient>`;
    expect(filled(turned)).toEqual(["#800080"]);
  });

  it("that fades lets through what lies below, by its mean opacity", () => {
    const fade =
      '<linearGradient id="g"><stop stop-color="#000"/><stop offset="1" stop-color="#000" stop-opacity="0"/></linearGradient>';
    expect(
      fills(`${fade}<rect width="32" height="32" fill="#fff"/><rect width="20" height="20" fill="url(#g)"/>`),
    ).toEqual(["#808080", "#ffffff"]);
  });

  it("without stops paints nothing, with one stop its colour; stops may be styled by class", () => {
    expect(filled('<linearGradient id="g"/>', '<rect width="9" height="9" fill="url(#g) lime"/>')).toEqual([
      "#00ff00",
    ]);
    const one =
      '<style>.s{stop-color:#123456}</style><linearGradient id="g"><stop class="s"/></linearGradient>';
    expect(filled(one)).toEqual(["#123456"]);
  });
});
