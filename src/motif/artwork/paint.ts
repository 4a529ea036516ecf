import { type FlatColor, readColor } from "./color.ts";
import { meanOfGradient } from "./gradient.ts";
import type { PaintSource } from "./paint-source.ts";

const BLACK: FlatColor = { fill: "#000000", alpha: 1 };

/** A `fill` or `stroke` as one flat colour; undefined for none. `current` is the value of `color`. */
export function readPaint(text: string, current: string, from: PaintSource): FlatColor | undefined {
  if (text === "none") return undefined;
  if (/^currentcolor$/i.test(text)) return readColor(current) ?? BLACK;
  const url = /^url\(\s*["']?([^"')]{0,200})["']?\s*\)\s*(.*)$/.exec(text.slice(0, 300));
  if (url) return readReference(url[1]!.trim(), url[2]!.trim(), current, from);
  return readColor(text) ?? BLACK;
}

function readReference(
  target: string,
  otherwise: string,
  current: string,
  from: PaintSource,
): FlatColor | undefined {
  const element = target.startsWith("#") ? from.byId(target.slice(1)) : undefined;
  const name = element?.localName ?? "";
  if (element && (name === "linearGradient" || name === "radialGradient")) {
    const mean = meanOfGradient(element, current, from);
    if (mean) {
      const share = mean.alpha < 0.995 ? ` at ${Math.round(mean.alpha * 100)} %` : "";
      from.warn(`its gradient "${target}" is flattened to its mean colour, ${mean.fill}${share}`);
      return mean;
    }
  }
  if (otherwise !== "") return readPaint(otherwise, current, from);
  from.warn(
    element && name !== ""
      ? `its paint "${target}" is a <${name}>, which is not drawn; give it a flat colour`
      : `its paint "${target}" is not in the file, so it is not drawn`,
  );
  return undefined;
}
