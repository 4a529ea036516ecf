import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { elementsOf } from "../../../src/output/svg/diagram/elements.ts";
import { type DiagramOptions, repeatDiagram } from "../../../src/output/svg/repeat-diagram.ts";
import { arrangementOf } from "../../../src/repeat/arrangement.ts";
import { border } from "../../../src/repeat/border.ts";
import { halfDrop } from "../../../src/repeat/half-drop.ts";
import { mirror } from "../../../src/repeat/mirror.ts";
import { type PlaneGroupName, planeGroup } from "../../../src/repeat/plane-group.ts";
import type { RepeatUse } from "../../../src/repeat/repeat.ts";
import { straight } from "../../../src/repeat/straight.ts";
import { turnover } from "../../../src/repeat/turnover.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { refusal } from "../../given.ts";
import { shore, stone, stones } from "../../given-patterns.ts";

const found = (repeat: RepeatUse) => {
  const arrangement = arrangementOf(repeat);
  const { block } = arrangement.lattice;
  return { ...elementsOf(arrangement, block), block };
};

/**
 * For each plane group: its special positions without mirror freedom, as centres of rotation in one conventional
 * cell by their order, and whether it has mirror lines, and glide lines that are no mirror lines. After the diagrams
 * of the International Tables for Crystallography, Vol. A (IUCr), part 6; written from memory.
 */
const table: readonly [PlaneGroupName, Readonly<Record<number, number>>, boolean, boolean][] = [
  ["p1", {}, false, false],
  ["p2", { 2: 4 }, false, false],
  ["pm", {}, true, false],
  ["pg", {}, false, true],
  ["cm", {}, true, true],
  ["p2mm", { 2: 4 }, true, false],
  ["p2mg", { 2: 4 }, true, true],
  ["p2gg", { 2: 4 }, false, true],
  ["c2mm", { 2: 8 }, true, true],
  ["p4", { 4: 2, 2: 2 }, false, false],
  ["p4mm", { 4: 2, 2: 2 }, true, true],
  ["p4gm", { 4: 2, 2: 2 }, true, true],
  ["p3", { 3: 3 }, false, false],
  ["p3m1", { 3: 3 }, true, true],
  ["p31m", { 3: 3 }, true, true],
  ["p6", { 6: 1, 3: 2, 2: 3 }, false, false],
  ["p6mm", { 6: 1, 3: 2, 2: 3 }, true, true],
];

describe("the elements of symmetry that are found from a repeat's operations", () => {
  it.each(table)("are those of %s in the Tables", (group, centres, hasMirrors, hasGlides) => {
    const isRound = /^p[346]/.test(group);
    const elements = found(planeGroup({ group, width: 60, ...(isRound ? {} : { height: 44 }) }));
    const { block } = elements;
    const cells = /^p[36]/.test(group) ? 2 : 1;
    const counted: Record<number, number> = {};
    // Each once, though those on the left and upper edge recur on the other.
    for (const { x, y, order } of elements.centres)
      if (x < block.width - 10 && y < block.height - 10) counted[order] = (counted[order] ?? 0) + 1;
    expect(counted).toEqual(Object.fromEntries(Object.entries(centres).map(([o, n]) => [o, n * cells])));
    expect(elements.axes.some(({ glide }) => !glide)).toBe(hasMirrors);
    expect(elements.axes.some(({ glide }) => glide)).toBe(hasGlides);
  });

  it("are none in a straight repeat and in a half-drop", () => {
    for (const repeat of [straight({ width: 50, height: 40 }), halfDrop({ width: 50, height: 40 })])
      expect(found(repeat)).toMatchObject({ centres: [], axes: [] });
  });

  it("are three upright lines in a mirror across: both edges of the block and its middle", () => {
    const { axes } = found(mirror({ width: 50, height: 40 }));
    expect(
      axes.map(({ from, to, glide }) => [...from, ...to, glide]).sort((p, q) => +p[0]! - +q[0]!),
    ).toEqual([
      [0, 0, 0, 40_000, false],
      [50_000, 0, 50_000, 40_000, false],
      [100_000, 0, 100_000, 40_000, false],
    ]);
  });

  it("are centres of half turns in the middle of the shared edges of a turnover", () => {
    const at = found(turnover({ width: 50, height: 40 })).centres.map(
      ({ x, y, order }) => `${x} ${y} ${order}`,
    );
    expect(at).toContain("50000 20000 2");
    expect(at).toContain("25000 40000 2");
  });
});

const draw = async (repeat: RepeatUse, options?: DiagramOptions): Promise<string> =>
  repeatDiagram(
    await buildTile(stones([stone("a", 9000, 8000), stone("b", 21_000, 17_000)], repeat)),
    options,
  );
const mark = (svg: string, id: string): string => new RegExp(`<(g|path) id="${id}".*`).exec(svg)?.[0] ?? "";
/** The labels of placements, with their boxes (mm). */
const labels = (svg: string) =>
  [
    ...mark(svg, "placements").matchAll(
      /<rect[^>]* x="([^"]*)" y="([^"]*)" width="([^"]*)" height="([^"]*)"[^>]*><text[^>]*>([^<]*)</g,
    ),
  ].map(([, x, y, width, height, id]) => ({
    x: Number(x),
    y: Number(y),
    width: Number(width),
    height: Number(height),
    id: id!,
  }));

describe("a repeat diagram", () => {
  it("is an SVG that an independent renderer draws", async () => {
    const svg = await draw(planeGroup({ group: "p4gm", width: 60 }));
    const picture = new Resvg(svg).render();
    expect(picture.width).toBe(960);
    expect(new Set(picture.pixels).size).toBeGreaterThan(40);
  });

  it("draws mirror lines solid, glide lines dashed, and a symbol for every centre", async () => {
    const svg = await draw(planeGroup({ group: "p4gm", width: 60 }));
    const { axes, centres } = found(planeGroup({ group: "p4gm", width: 60 }));
    const lines = mark(svg, "axes").match(/<path [^>]*>/g)!;
    expect(lines).toHaveLength(axes.length);
    expect(lines.filter((line) => line.includes("stroke-dasharray"))).toHaveLength(
      axes.filter(({ glide }) => glide).length,
    );
    expect(mark(svg, "centres").match(/Z/g)).toHaveLength(centres.length);
  });

  it("shows the placements by their ids, and names both vectors, unit and block", async () => {
    const svg = await draw(halfDrop({ width: 60, height: 40 }));
    expect(labels(svg).map(({ id }) => id)).toEqual(["a", "b"]);
    expect(mark(svg, "vectors")).toMatch(/>a<.*>b</);
    expect(mark(svg, "unit-outline") || svg).toContain('d="M0 0L60 0L60 40L0 40Z"');
    expect(svg).toContain("block 120 × 40 mm");
    expect(svg).not.toContain("mirror line");
  });

  it("shows every id once, near its place, with no label over another, however many there are", async () => {
    const many = Array.from({ length: 300 }, (_, i) =>
      stone(`${1 + (i % 3)}:2-${i + 1}`, (i * 7919) % 60_000, (i * 104_729) % 40_000),
    );
    const tile = await buildTile(stones(many, straight({ width: 60, height: 40 })));
    const shown = labels(repeatDiagram(tile));
    expect(shown.map(({ id }) => id)).toEqual(tile.placements.map(({ id }) => id));
    shown.forEach(({ x, y, width, height }, i) => {
      const at = tile.placements[i]!;
      expect(Math.abs(x + width / 2 - at.x / 1000)).toBeLessThan(0.01);
      expect(Math.abs(y + height / 2 - at.y / 1000)).toBeLessThan(3.6 * height);
      for (const other of shown.slice(0, i))
        expect(Math.abs(other.y - y) > height - 0.01 || Math.abs(other.x - x) > width * 0.7).toBe(true);
    });
  });

  it("spells out ids as XML takes them, and cuts those short that no label holds", async () => {
    const odd = ['<b>&"\u0001', "x".repeat(60)];
    const tile = await buildTile(
      stones(
        odd.map((id, i) => stone(id, 9000 + 20_000 * i, 9000)),
        straight({ width: 60, height: 40 }),
      ),
    );
    const svg = repeatDiagram(tile);
    expect(mark(svg, "placements")).toContain(">&lt;b&gt;&amp;&quot;<");
    expect(labels(svg)[1]!.id).toBe(`${"x".repeat(23)}…`);
    expect(new Resvg(svg).render().width).toBe(960);
  });

  it("keeps the ids of seated motifs off the symbols of centres", async () => {
    const tile = await buildTile(stones([stone("seat", 0, 0)], planeGroup({ group: "p4", width: 60 })));
    const svg = repeatDiagram(tile);
    const [{ y, height }] = labels(svg) as [ReturnType<typeof labels>[number]];
    expect(Math.min(Math.abs(y), Math.abs(y + height))).toBeGreaterThan(0);
    expect(y > 0 || y + height < 0).toBe(true);
    expect(mark(svg, "placements")).toMatch(/<path d="M0 0V/);
  });

  it("leaves ids and legend out when it is told to, and takes a width", async () => {
    const svg = await draw(straight({ width: 60, height: 40 }), {
      ids: false,
      legend: false,
      width: 300,
    });
    expect(mark(svg, "placements")).toBe("");
    expect(svg).not.toContain("block 60");
    expect(svg).toContain('width="300"');
  });

  it("shows a border with one vector, and a corner with its mitre", async () => {
    const hem = { width: 60, height: 40 };
    expect(mark(await draw(border(hem)), "vectors")).toMatch(/>a</);
    expect(mark(await draw(border(hem)), "vectors")).not.toMatch(/>b</);
    const corner = await draw(border({ ...hem, piece: "right-corner" }));
    expect(mark(corner, "axes")).toContain('d="M0 40L40 0"');
    expect(mark(corner, "vectors")).toBe("");
    expect(mark(await draw(border({ ...hem, piece: "left-corner" })), "axes")).toContain('d="M0 0L40 40"');
  });

  it("takes the inks of a colorway, and refuses one that is for another tile", async () => {
    const tile = await buildTile(shore);
    const { dawn } = shore.colorways;
    for (const ink of Object.values(dawn.inks))
      expect(repeatDiagram(tile, { colorway: dawn })).toContain(ink);
    const other = { name: "bare", inks: { ground: "#ffffff" } };
    expect(refusal(() => repeatDiagram(tile, { colorway: other })).code).toBe("missing-ink");
  });

  it("is the same text every time", async () => {
    const repeat = planeGroup({ group: "p6mm", width: 60 });
    expect(await draw(repeat)).toBe(await draw(repeat));
  });
});
