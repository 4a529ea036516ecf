import type { Format, Order } from "./format.ts";
import { cutTag, sayCut } from "./names.ts";

/** The drawing itself, to edit and to cut. */
export const svg: Format = {
  about: "a drawing with a path for each role, to edit and to cut",
  usual: true,
  together: true,
  says: (_, { cut, layers }) =>
    `${sayCut(cut)}, curves kept, a path a role${layers === "stacked" ? "" : ", knocked out"}`,
  make: (order) => draw(order, false, `${cutTag(order.settings.cut)}.svg`),
};

/** The same as a `<pattern>`. */
export const pattern: Format = {
  about: "an SVG with the block as a ready pattern that fills shapes",
  together: true,
  says: (_, { cut }) => `${sayCut(cut)}, filled with a <pattern>`,
  make: (order) => draw(order, true, `${cutTag(order.settings.cut)}-pattern.svg`),
};

async function draw(
  { tile, colorways, settings, onProgress, put }: Order,
  asPattern: boolean,
  ending: string,
): Promise<void> {
  const { cut, layers, rights, creator, recipe } = settings;
  const { svgDrawing } = await import("../../../output/svg/to-svg.ts");
  const drawing = svgDrawing(tile, { cut, layers, pattern: asPattern, rights, creator, recipe });
  for (const [i, colorway] of colorways.entries()) {
    await put(`${tile.name}-${colorway.name}${ending}`, drawing(colorway), colorway.name);
    onProgress((i + 1) / colorways.length);
  }
}
