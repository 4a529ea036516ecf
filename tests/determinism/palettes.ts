// Everything that makes or changes inks, told as one text, to be held against another engine.
import { deltaOf } from "../../src/colorway/delta-e.ts";
import { gamutOf } from "../../src/colorway/gamut.ts";
import { parseColor } from "../../src/colorway/ink.ts";
import { palette } from "../../src/colorway/palette.ts";
import * as own from "../../src/colorway/schemes/index.ts";
import { makePalette, makePalettes } from "../../src/colorway/schemes/make-palette.ts";
import { readTokens } from "../../src/colorway/tokens/read-tokens.ts";
import { toTokens } from "../../src/colorway/tokens/to-tokens.ts";
import { deficiencyView } from "../../src/colorway/views/deficiency-view.ts";
import { greyView } from "../../src/colorway/views/grey-view.ts";

/** Palettes by every scheme, changed palettes, views, tokens, differences. (Pulled palettes are exact arithmetic.) */
export function palettesTold(): string {
  const { complementary, analogous, triad, split, tetrad, twoInk, ...families } = own;
  const quay = palette({
    name: "quay",
    inks: { chalk: "#f6ead7", kelp: "#3f6b4f", buoy: "#d9803c", sea: "#27566b" },
  });
  const single = { name: "p", seed: "two-engines" };
  const several = { ...single, count: 4 };
  const made = [
    ...Object.values(families).flatMap((scheme) => [
      ...makePalettes(scheme({ count: 8 }), several),
      makePalette(scheme({ of: quay }), single),
    ]),
    ...makePalettes(twoInk(), several),
    ...[complementary, analogous, triad, split, tetrad].map((scheme) =>
      makePalette(scheme({ of: "#d9803c", count: 10 }), single),
    ),
  ];
  const views = made.flatMap((one) => [
    greyView(one),
    ...(["protan", "deutan", "tritan"] as const).map((kind) => deficiencyView(one, { kind, severity: 0.55 })),
  ]);
  const inks = made.flatMap((one) => Object.values(one.inks));
  const differences = inks.slice(1).map((ink, i) => deltaOf(parseColor(ink, "x"), parseColor(inks[i]!, "x")));
  const wide = Array.from({ length: 60 }, (_, i) => gamutOf(`oklch(0.${30 + i} 0.3 ${i * 6})`));
  return JSON.stringify([...[made, views, differences, wide], readTokens(toTokens(quay))]);
}
