import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { ellipse } from "../../src/geometry/shapes.ts";
import { placeAt } from "../../src/layout/place-at.ts";
import { defineMotif } from "../../src/motif/define.ts";
import { leaf } from "../../src/motif/primitives/index.ts";
import { toSvg } from "../../src/output/svg/to-svg.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import { rectangle } from "../given.ts";

/** Four parts that lie over each other in every way. */
const pile = defineMotif({
  name: "test/pile",
  about: "Overlapping parts.",
  params: {},
  parts: ["sail", "mast", "sun", "pennant"],
  draw: () => ({
    sail: ellipse(-4, 0, 12, 9),
    mast: rectangle(-1, -14, 3, 28),
    sun: ellipse(5, 2, 8),
    pennant: rectangle(-8, -6, 18, 4),
  }),
});
const inks = { ground: "#ffffff", sail: "#ff0000", mast: "#00ff00", sun: "#0000ff", pennant: "#ffff00" };
type Role = Exclude<keyof typeof inks, "ground">;

async function render(roles: readonly Role[]): Promise<Buffer> {
  const pattern = definePattern({
    name: "pile",
    seed: "s",
    repeat: straight({ width: 40, height: 40 }),
    layout: placeAt({ places: [{ motif: pile(), x: 20, y: 20, turn: 0.07 }] }),
    roles,
    colorways: { plain: inks },
  });
  const tile = await buildTile(pattern);
  expect(tile.layers.map(({ role }) => role)).toEqual(roles);
  const svg = toSvg(tile, pattern.colorways.plain);
  return PNG.sync.read(Buffer.from(new Resvg(svg, { fitTo: { mode: "width", value: 400 } }).render().asPng()))
    .data;
}

/** Pixels of 160 000 whose colours differ by more than the mixing along an edge can explain. */
function changed(a: Buffer, b: Buffer): number {
  let count = 0;
  for (let i = 0; i < a.length; i += 4)
    if ([0, 1, 2].some((k) => Math.abs(a[i + k]! - b[i + k]!) > 140)) count++;
  return count;
}

describe("stacking", () => {
  it("keeps a motif's picture, in whatever order the pattern stacks its roles", async () => {
    const plain = await render(["sail", "mast", "sun", "pennant"]);
    const orders: Role[][] = [
      ["pennant", "sun", "mast", "sail"],
      ["sun", "sail", "pennant", "mast"],
      ["mast", "pennant", "sail", "sun"],
    ];
    for (const order of orders) expect(changed(plain, await render(order))).toBeLessThan(20);
  });

  it("this test would see a part on top that belongs below", async () => {
    const plain = await render(["sail", "mast", "sun", "pennant"]);
    const wrong = Buffer.from(plain);
    for (let i = 0; i < wrong.length; i += 4) if (wrong[i + 2] === 255 && wrong[i] === 0) wrong[i] = 255;
    expect(changed(plain, wrong)).toBeGreaterThan(1000);
  });
});

it("does not depend on the order of placing where a part is covered altogether", async () => {
  const hidden = defineMotif({
    name: "test/hidden",
    about: "A part that the pattern's order hides.",
    params: {},
    parts: ["under", "over"],
    draw: () => ({ under: ellipse(0, 0, 2), over: ellipse(0, 0, 3) }),
  });
  const digest = async (backwards: boolean): Promise<string> => {
    const places = Array.from({ length: 12 }, (_, i) => ({
      motif: hidden(),
      x: 3 + i * 3,
      y: 5 + ((i * 7) % 30),
    }));
    const pattern = definePattern({
      name: "hidden",
      seed: "s",
      repeat: straight({ width: 40, height: 40 }),
      layout: placeAt({ places: backwards ? places.reverse() : places }),
      roles: ["over", "under"],
      colorways: { plain: { ground: "#fff", under: "#111", over: "#222" } },
    });
    return (await buildTile(pattern)).digest;
  };
  expect(await digest(true)).toBe(await digest(false));
});

it("keeps a motif's shape when a part of it is given another role", async () => {
  const build = async (role: "blade" | "moss") => {
    const pattern = definePattern({
      name: "recoloured",
      seed: "s",
      repeat: straight({ width: 40, height: 40 }),
      layout: placeAt({ places: [{ motif: leaf({ vary: 0.8, roles: { blade: role } }), x: 20, y: 20 }] }),
      colorways: { plain: { ground: "#fff", [role]: "#111", vein: "#222" } } as never,
    });
    return (await buildTile(pattern)).layers.map(({ path }) => [...path.points]);
  };
  expect(await build("moss")).toEqual(await build("blade"));
});
