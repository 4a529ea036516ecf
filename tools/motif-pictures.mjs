// Makes docs/motifs.md and its pictures from the primitives themselves: npm run build && node tools/motif-pictures.mjs [names].
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import * as sprigwright from "sprigwright";

const { buildTile, definePattern, placeAt, rasterize, straight } = sprigwright;
const library = new Map(Object.entries(sprigwright));
const families = JSON.parse(readFileSync(new URL("motif-families.json", import.meta.url), "utf8"));
const out = "docs/pictures/motifs";
const only = process.argv.slice(2);
const wanted = (name) => only.length === 0 || only.includes(name);

const cloth = {
  Botanical: {
    ground: "#f4ead8",
    petal: "#d9654b",
    marking: "#8e2f2c",
    centre: "#e9b24a",
    seed: "#5a3426",
    stem: "#46634a",
    leaf: "#6f8f5e",
    blade: "#6f8f5e",
    vein: "#35513a",
    berry: "#b5432f",
  },
  Fruit: {
    ground: "#eef0e2",
    fruit: "#dc8a3a",
    flesh: "#f6dfae",
    core: "#b04a4f",
    seed: "#6a3327",
    highlight: "#fbe8bb",
    stem: "#4d5b3f",
    leaf: "#64875a",
  },
  "Shore and harbour": {
    ground: "#e3ecea",
    body: "#2f5d78",
    trim: "#df9f3e",
    marking: "#f7efdf",
    scallop: "#dd9c78",
    rib: "#9c4a3a",
    rim: "#f7e3cb",
  },
  Geometric: {
    ground: "#f2e9dc",
    shape: "#b9503a",
    inlay: "#e8b765",
    ring: "#b9503a",
    core: "#e8b765",
    star: "#b9503a",
  },
  "Small fillers": { ground: "#f2ede2", fleck: "#33566b", dot: "#33566b" },
};
const about = {
  Botanical:
    "Flowers, leaves and fronds, for ditsies, tossed florals and borders. Their parts share the roles `stem`, `leaf`, `petal`, `centre`, `marking` and `seed`, so one small colorway dresses all of them.",
  Fruit:
    "For kitchens, tea towels and summer dresses. They share `stem`, `leaf`, `fruit`, `flesh`, `core`, `seed` and `highlight`.",
  "Shore and harbour":
    "From the quay and the tide pools. They share three roles: `body`, `trim` and `marking`. Whatever is drawn in `marking` lies on the `body`; map it to `ground` and it is cut out.",
  Geometric: "For coordinates, borders and quilts. They share `shape` and `inlay`.",
  "Small fillers":
    "Between larger motifs, or alone as blenders. They share one role, `fleck`; a `dot` has its own.",
};

/** A tile of motif uses side by side, each in a square cell `cell` mm wide. */
const row = (uses, cell, middle, ground) => {
  const roles = new Set(uses.flatMap((use) => Object.values(use.roles)));
  const colorway = Object.fromEntries(
    Object.entries(ground).filter(([role]) => role === "ground" || roles.has(role)),
  );
  const places = uses.map((motif, k) => ({
    motif,
    x: cell * (k + 0.5) - middle[0],
    y: cell / 2 - middle[1],
  }));
  const pattern = definePattern({
    name: "row",
    seed: "hollin-quay",
    repeat: straight({ width: cell * uses.length, height: cell }),
    layout: placeAt({ places }),
    colorways: { row: colorway },
  });
  return buildTile(pattern).then((tile) => ({ tile, colorway: pattern.colorways.row }));
};

/** Box of a motif that stands alone on a large tile, in mm about its origin. */
async function boxOf(use) {
  const inks = Object.fromEntries(Object.values(use.roles).map((role) => [role, "#000000"]));
  const { tile } = await row([use], 1000, [0, 0], { ground: "#ffffff", ...inks });
  const all = tile.layers.flatMap(({ path }) => [...path.points]);
  const xs = all.filter((_, i) => i % 2 === 0);
  const ys = all.filter((_, i) => i % 2 === 1);
  const [left, right] = [Math.min(...xs) / 1000 - 500, Math.max(...xs) / 1000 - 500];
  const [top, bottom] = [Math.min(...ys) / 1000 - 500, Math.max(...ys) / 1000 - 500];
  return { size: Math.max(right - left, bottom - top), middle: [(left + right) / 2, (top + bottom) / 2] };
}

/** A picture of uses in a row, each cell `pixels` wide. */
async function picture(name, uses, colors, pixels) {
  const { size, middle } = await boxOf(uses[0]);
  const { tile, colorway } = await row(uses, Math.round(size * 1260) / 1000, middle, colors);
  const raster = await rasterize(tile, { width: pixels * uses.length });
  writeFileSync(`${out}/${name}.png`, raster.png(colorway));
}

const number = (value) => String(value);
function range({ schema }) {
  if (schema.enum) return schema.enum.map((name) => `\`"${name}"\``).join(", ");
  const of = schema.anyOf ? schema.anyOf[0] : schema;
  const unit = schema["x-unit"] === "mm" ? " mm" : "";
  return `${number(of.minimum)} to ${number(of.maximum)}${unit}${of.type === "integer" ? ", whole" : ""}`;
}
const fallback = ({ schema }) =>
  `${typeof schema.default === "string" ? `\`"${schema.default}"\`` : schema.default}${schema["x-unit"] === "mm" ? " mm" : ""}`;

function section(name) {
  const { piece } = library.get(name);
  const rows = Object.entries(piece.params).map(
    ([key, param]) => `| \`${key}\` | ${param.schema.description} | ${range(param)} | ${fallback(param)} |`,
  );
  return `### ${name}

${piece.about}

![Three drawings of ${name}](pictures/motifs/${name}.png)

Parts, back to front: ${piece.parts.map((part) => `\`${part}\``).join(", ")}.

| parameter | what it does | range | default |
| --- | --- | --- | --- |
${rows.join("\n")}
`;
}

/** An example of the builders: it is run for its picture, and by a test. */
const example = `const params = { reach: param.length({ about: "From the tie to the farthest flower.", min: 15, max: 120, default: 40 }) };

const posy = defineMotif({
  name: "quay/posy",
  about: "A posy: flowers from the library and a bent branch of our own, tied together.",
  params,
  parts: ["stem", "leaf", "petal", "centre"],
  draw: ({ reach }, tools) => {
    const petal = shapes.halves({ tip: true }, [0, -9.6, 3.4, -6.8, 2.2, -2.8, 0, -2.2]);
    const daisy = { petal: shapes.rosette(petal, 7), centre: shapes.ellipse(0, 0, 2.7) };
    const star = () => shapes.place(daisy, { scale: tools.stray(1, 0.2), turn: tools.stray(0.03, 1) });
    const twig = shapes.curve([0, 14, 1.6, 2, 0.4, -8, 2, -16]);
    const leaf = ({ share }) => shapes.halves({ tip: true, foot: true }, [0, 3 * share - 8.4, 2.2, -4.2, 0, 0]);
    const leaves = shapes.branch(twig, { leaf, count: 9, from: 0.2, to: 1, angle: 0.11 });
    const green = { leaf: leaves, stem: shapes.brush(twig, [0.8, 0.6]) };
    const flowers = [green, star(), green, star(), green, star(), green];
    return shapes.bouquet(flowers, { reach, spread: 0.31, step: 0.36, tail: 13, gap: 0.7 });
  },
});`;
const posyColors = {
  ground: "#f4ead8",
  stem: "#46634a",
  leaf: "#7f9a63",
  petal: "#d9654b",
  centre: "#e9b24a",
};
const run = (code, name) => {
  const names = Object.keys(sprigwright);
  return new Function(...names, `${code}\nreturn ${name};`)(...Object.values(sprigwright));
};

const list = Object.entries(families)
  .map(
    ([family, names]) =>
      `| [${family}](#${family.toLowerCase().replaceAll(" ", "-")}) | ${names.map((name) => `[${name}](#${name})`).join(", ")} |`,
  )
  .join("\n");

const page = `# Motifs

${Object.values(families).flat().length} motifs come with the library, for days when there is no time to draw. Each takes its sizes in millimetres (a number, or text such as
\`"1.2cm"\`) and draws itself from them; nothing at its default size is finer than half a millimetre (a third of one in
the eight oldest: blossom, leaf, sprig, berry, dot, star, ring, scallop). This page is written by
[\`tools/motif-pictures.mjs\`](../tools/motif-pictures.mjs) from the motifs themselves.

\`\`\`ts
import { tulip } from "sprigwright";

tulip({ height: 40, open: 0.8, vary: 0.6, roles: { petal: "coral", marking: "ground" } });
\`\`\`

- **\`vary\`** (0 to 1): how far each drawing strays from the plain one, by the pattern's seed; **\`variants\`**: how many
  different drawings (4 when it varies). In each picture the left drawing is plain, the others vary by 0.7 and 1.
- **\`roles\`**: the role that a part fills; left out, a part fills the role of its own name. A part that fills \`ground\` is
  cut out. A part whose count is set to 0 is not drawn; map it to another role then, so that no ink is asked for it.

| family | motifs |
| --- | --- |
${list}

![Twelve motifs tossed on a half-drop](pictures/motifs/tossed.png)

${Object.entries(families)
  .map(([family, names]) => `## ${family}\n\n${about[family]}\n\n${names.map(section).join("\n")}`)
  .join("\n")}
## Drawing your own

\`defineMotif\` makes a motif from code, and \`pen\` draws any outline. What the motifs above are built with stands ready under
\`shapes\`; everything is in millimetres, y downwards, and comes out the same in every JavaScript engine.

| | | |
| --- | --- | --- |
| \`ellipse\`, \`polygon\` | what their names say; polygons with round corners too | \`ellipse(x, y, rx, ry = rx)\`, \`polygon(sides, reach, round = 0)\` |
| \`blob\`, \`contour\`, \`halves\` | shapes from a few points, with curves laid through them: closed and smooth; with corners; from the right half, mirrored | \`blob([x, y, x, y, …])\`, \`contour([x, y, …], [x, y, …], …)\`, \`halves({ tip, foot }, [0, y, …, 0, y])\` |
| \`curve\`, \`brush\` | an open curve, and the stroke of a brush along it: any widths, never thinner than you say | \`curve([x, y, …])\`, \`brush(curve, width or [widths], least = 0.52)\` |
| \`outline\`, \`inset\` | grown or shrunk by so many mm, outer corners round | \`outline(paths, by)\`, \`inset(paths, by)\` |
| \`behind\`, \`within\` | what does not lie under something in front, with a gap if you like; what lies on something | \`behind(back, front, gap = 0)\`, \`within(paths, mask)\` |
| \`rosette\`, \`branch\` | copies around a middle; leaves along a curve | \`rosette(paths, count, { about, turn, mirror })\`, \`branch(curve, { leaf, count, from, to, angle, arrangement })\` |
| \`place\`, \`drawingOf\` | a drawing set elsewhere; what another motif draws | \`place(drawing, { x, y, turn, scale, flip })\`, \`drawingOf(use, tools)\` |
| \`stack\`, \`bouquet\` | drawings over each other, and flowers tied together, each knocked out around those in front | \`stack([back, …, front], gap = 0)\`, \`bouquet(flowers, { reach, step, spread, tail, stem, gap })\` |

All numbers are plain millimetres, turns or shares: texts such as \`"2mm"\` and options that are not known are refused. A drawing
is an object of paths by part, such as \`{ petal, centre }\`. A pen goes from point to point:
\`pen().moveTo(0, -6).lineTo(5, 3).curveTo(5, 6, -5, 6, -5, 3).path()\`, two controls and an end to each curve, closed by itself.
To see a motif alone, put it on a tile with \`placeAt({ places: [{ motif, x: 25, y: 25 }] })\`.

\`\`\`js
${example}
\`\`\`

![Three drawings of the posy](pictures/motifs/posy.png)
`;

mkdirSync(out, { recursive: true });
for (const [family, names] of Object.entries(families))
  for (const name of names.filter(wanted)) {
    const make = library.get(name);
    const uses = [make(), make({ vary: 0.7, variants: 1 }), make({ vary: 1, variants: 1 })];
    await picture(name, uses, cloth[family], 240);
  }
if (wanted("posy")) {
  const posy = run(example, "posy");
  await picture(
    "posy",
    [posy(), posy({ vary: 0.7, variants: 1 }), posy({ vary: 1, variants: 1 })],
    posyColors,
    240,
  );
}
if (wanted("tossed")) await tossed();
if (only.length === 0) writeFileSync("docs/motifs.md", page);

/** A field of twelve motifs. */
async function tossed() {
  const {
    daisy,
    poppy,
    fern,
    umbel,
    pear,
    fig,
    lemon,
    strawberry,
    ginkgo,
    pip,
    asterisk,
    tulip,
    halfDrop,
    toss,
  } = sprigwright;
  const green = { stem: "stem", leaf: "leaf" };
  const vary = 0.7;
  const one = (motif, share) => ({ motif, share });
  const pattern = definePattern({
    name: "tossed",
    seed: "orchard-wall-5",
    repeat: halfDrop({ width: 210, height: 210 }),
    layout: toss({
      gap: 2.2,
      direction: "tossed",
      motifs: [
        one(pear({ height: 44, vary, roles: { ...green, fruit: "honey", highlight: "cream" } }), 2),
        one(lemon({ width: 44, vary, roles: { ...green, fruit: "honey", highlight: "cream" } }), 2),
        one(
          fig({ height: 34, vary, roles: { fruit: "plum", flesh: "cream", core: "coral", seed: "cream" } }),
          2,
        ),
        one(strawberry({ height: 30, vary, roles: { ...green, fruit: "coral", seed: "cream" } }), 2),
        one(tulip({ height: 54, vary, roles: { ...green, petal: "coral", marking: "plum" } }), 2),
        one(
          daisy({ height: 54, vary, roles: { ...green, petal: "cream", centre: "honey", seed: "plum" } }),
          2,
        ),
        one(
          poppy({
            height: 56,
            vary,
            roles: { stem: "stem", seed: "plum", marking: "coral", centre: "honey" },
          }),
          2,
        ),
        one(fern({ height: 56, vary, roles: green }), 2),
        one(umbel({ height: 54, vary, roles: { ...green, petal: "cream" } }), 2),
        one(ginkgo({ height: 30, vary, roles: green }), 2),
        one(asterisk({ size: 9, vary, roles: { fleck: "honey" } }), 5),
        one(pip({ length: 6, vary, roles: { fleck: "coral" } }), 8),
      ],
    }),
    colorways: {
      wall: {
        ground: "#24403f",
        stem: "#7f9f7c",
        leaf: "#5f8a72",
        honey: "#e2a647",
        coral: "#df6d51",
        plum: "#7c3346",
        cream: "#f4e6cb",
      },
    },
  });
  const tile = await buildTile(pattern);
  const raster = await rasterize(tile, { width: 1260 });
  writeFileSync(`${out}/tossed.png`, raster.png(pattern.colorways.wall));
}
