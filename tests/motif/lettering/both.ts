// fontkit 2.0.4 as an outside reference for what the OpenType specification means.
import { readFileSync } from "node:fs";
import * as fontkit from "fontkit";
import { type Font, loadFont } from "../../../src/motif/lettering/font.ts";
import type { OutlineStep } from "../../../src/motif/lettering/glyph.ts";

/** The reference's own face, as far as these tests use it. */
export interface Face {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  layout(
    text: string,
    features: Record<string, boolean>,
  ): {
    readonly glyphs: readonly {
      readonly id: number;
      readonly advanceWidth: number;
      readonly path: { readonly commands: readonly { command: string; args: number[] }[]; toSVG(): string };
    }[];
    readonly positions: readonly { readonly xAdvance: number }[];
  };
}

/** Kerning and nothing else. */
export const KERN_ONLY: Record<string, boolean> = {
  kern: true,
  liga: false,
  clig: false,
  calt: false,
  dlig: false,
  rlig: false,
  rclt: false,
  ccmp: false,
};

/** A file of one of the fonts, all under OFL-1.1, from @fontsource. */
export const fontFile = (face: string, file = `${face}-latin-400-normal.woff`): Uint8Array =>
  new Uint8Array(
    readFileSync(new URL(`../../../node_modules/@fontsource/${face}/files/${file}`, import.meta.url)),
  );

export const FACES = ["lobster", "roboto", "eb-garamond"] as const;

/** One font, as this library and as the reference read it. */
export function both(face: string, file?: string): { readonly font: Font; readonly reference: Face } {
  const bytes = fontFile(face, file);
  return { font: loadFont(bytes), reference: fontkit.create(Buffer.from(bytes)) as unknown as Face };
}

const STEPS: Readonly<Record<string, string>> = {
  moveTo: "M",
  lineTo: "L",
  quadraticCurveTo: "Q",
  bezierCurveTo: "C",
  closePath: "Z",
};

/** The curves of an outline, each from its start to its end, sides of no length left out, in one order. */
function curvesOf(steps: readonly (readonly [string, readonly number[]])[]): string[] {
  const curves: string[] = [];
  let [start, at]: [readonly number[], readonly number[]] = [
    [0, 0],
    [0, 0],
  ];
  for (const [type, args] of steps) {
    const end = type === "Z" ? start : args.slice(-2);
    const moves = type !== "M" && (args.length > 2 || end[0] !== at[0] || end[1] !== at[1]);
    if (moves) curves.push([...at, ...args.slice(0, -2), ...end].join(" "));
    if (type === "M") start = end;
    at = end;
  }
  return curves.sort();
}

export const ourCurves = (steps: readonly OutlineStep[]): string[] =>
  curvesOf(
    steps.map((step): readonly [string, readonly number[]] => {
      if (step.type === "Z") return ["Z", []];
      if (step.type === "C") return ["C", [step.x1, step.y1, step.x2, step.y2, step.x, step.y]];
      return [step.type, step.type === "Q" ? [step.x1, step.y1, step.x, step.y] : [step.x, step.y]];
    }),
  );

export const theirCurves = (commands: readonly { command: string; args: number[] }[]): string[] =>
  curvesOf(commands.map(({ command, args }) => [STEPS[command]!, args]));
