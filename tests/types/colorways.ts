// Compiled, never run: every line below a "@ts-expect-error" must fail to compile, and nothing else may.
import {
  blossom,
  buildTile,
  type Colorway,
  colorways,
  definePattern,
  halfDrop,
  leaf,
  palette,
  rasterize,
  rateColorway,
  scaleTile,
  toSvg,
  toss,
  withColorways,
} from "sprigwright";

const pattern = definePattern({
  name: "pears",
  seed: "s",
  repeat: halfDrop({ width: 160, height: "12cm" }),
  layout: toss({
    gap: 2.5,
    motifs: [
      { motif: blossom({ roles: { petal: "fruit", marking: "fruit", centre: "seed", seed: "seed" } }) },
      { motif: leaf({ roles: { blade: "moss", vein: "ground" } }) },
    ],
  }),
  colorways: { dawn: { ground: "linen", fruit: "tomato", seed: "gold", moss: "green" } },
});
const quay = palette({
  name: "quay",
  inks: { chalk: "#f7efe2", coral: "#e0705a", kelp: "#3f5f4e", tide: "#1f3340" },
});
const loft = palette({
  name: "loft",
  inks: { linen: "#ebe4d6", tar: "#2b2d33", rose: "#d98b94", fog: "#c3c5c0" },
});

// A tile knows its roles, and what was planned for it goes everywhere.
const tile = await buildTile(pattern);
const planned = colorways(tile, {
  palettes: [quay, loft],
  hold: { ground: ["chalk", "linen"], moss: "kelp" },
});
const [first] = planned;
export const moss: string = first!.inks.moss;
export const svg: string = toSvg(tile, first!);
export const png: Uint8Array = (await rasterize(tile, { dpi: 150 })).png(first!);
export const colorway: Colorway<"fruit" | "seed" | "moss"> = first!;
export const small = colorways(scaleTile(tile, 0.5), { palettes: [quay], hold: { seed: "tide" } });
export const again = withColorways(pattern, planned);
export const onTile = withColorways(tile, planned);
export const score: number = rateColorway(tile, pattern.colorways.dawn).score;
export const pair: readonly ["ground" | "fruit" | "seed" | "moss", string] = first!.why.weakest!.roles;

// A tile whose roles nobody knows takes any.
colorways(await buildTile(pattern as typeof pattern & { readonly name: "x" }), { palettes: [quay] });

// @ts-expect-error: nothing draws a role "petal"
colorways(tile, { palettes: [quay], hold: { petal: "kelp" } });
// @ts-expect-error: no palette has an ink "chalc"
colorways(tile, { palettes: [quay], hold: { ground: "chalc" } });
// @ts-expect-error: no such way to keep
colorways(tile, { palettes: [quay], keep: "values" });
// @ts-expect-error: a planned colorway has no ink for "petal"
first!.inks.petal;
// @ts-expect-error: no ink for "moss"
rateColorway(tile, { name: "x", inks: { ground: "linen", fruit: "tomato", seed: "gold" } });
// @ts-expect-error: colorways of another pattern
withColorways(pattern, [{ name: "x", inks: { ground: "#ffffff", petal: "#000000" } }]);
