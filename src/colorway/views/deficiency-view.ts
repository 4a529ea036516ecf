import {
  type Color,
  converter,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
} from "culori/fn";
import { readParams } from "../../params/compound.ts";
import { choice, share } from "../../params/kinds.ts";
import { type Inked, recolored } from "./recolored.ts";

/** The cones that see otherwise or not at all: long waves (reds), middle (greens), short (blues). */
export type Deficiency = "protan" | "deutan" | "tritan";

/** Options of {@link deficiencyView}. */
export interface DeficiencyOptions {
  /** `"deutan"` is the commonest: some 6 of 100 men; `"protan"` 2 of 100; `"tritan"` is rare in both sexes. */
  readonly kind: Deficiency;
  /** 0: sees as most do; 1 (default): that kind of cone is missing. Most deutans are between, 0.6 say. */
  readonly severity?: number;
}

const FILTERS = {
  protan: filterDeficiencyProt,
  deutan: filterDeficiencyDeuter,
  tritan: filterDeficiencyTrit,
} as const;

const spec = {
  kind: choice({ about: "Which cones.", of: ["protan", "deutan", "tritan"] }),
  severity: share({ about: "How far.", default: 1 }),
};

/**
 * A palette or colorway about as somebody with a colour vision deficiency sees it. Where two roles that touch run
 * together here, give them different lightness.
 *
 * Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE
 * TVCG 15 (6), 2009: their matrices for tenths of severity, on linear sRGB, straight between tenths.
 *
 * @throws SprigwrightError `bad-color`, `wrong-type`, `missing-option`, `unknown-choice`, `number-range`
 */
export function deficiencyView<T extends Inked>(of: T, options: DeficiencyOptions): T {
  const { kind, severity } = readParams(spec, options, "deficiencyView");
  const below = Math.floor(Math.round(severity * 1e9) / 1e8) / 10;
  const [less, more] = [FILTERS[kind](below), FILTERS[kind](Math.min(1, below + 0.1))];
  const share = (severity - below) * 10;
  return recolored(of, (color) => seen(color, less, more, share), "deficiencyView");
}

type Rgb = { readonly mode: "rgb"; readonly r: number; readonly g: number; readonly b: number };

/** culori's filters take their channels as they come: here those are linear. */
function seen(color: Color, less: (c: Rgb) => Rgb, more: (c: Rgb) => Rgb, share: number): Color {
  const { r, g, b } = converter("lrgb")(color);
  const light: Rgb = { mode: "rgb", r, g, b };
  const [p, q] = [less(light), more(light)];
  const between = (from: number, to: number): number => Math.min(1, Math.max(0, from + (to - from) * share));
  return { mode: "lrgb", r: between(p.r, q.r), g: between(p.g, q.g), b: between(p.b, q.b) };
}
