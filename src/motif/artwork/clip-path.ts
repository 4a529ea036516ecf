import type { Element } from "@xmldom/xmldom";
import { compose, type Matrix } from "../../geometry/matrix.ts";
import { extentOf } from "./extent.ts";
import type { Clip, ClipRegion, Journey, Mark, Place } from "./journey.ts";
import { childElements } from "./parse.ts";
import { firstStyle } from "./style.ts";
import { readTransform } from "./transform.ts";

/** Walks into an element; handed in, since clips are met on the way and hold drawings themselves. */
export type Visit = (element: Element, journey: Journey, place: Place) => void;

/**
 * The clips of a place, with those that `clip-path` and `mask` of its element add. A mask is taken as a clip when it
 * is all white and black, and solid, as many programs write one; any other is warned about and left out.
 */
export function clipsOf(
  element: Element,
  journey: Journey,
  here: Place,
  where: string,
  visit: Visit,
): readonly Clip[] {
  let { clips } = here;
  for (const kind of ["clip-path", "mask"] as const) {
    const value = here.style[kind];
    if (value === "none" || value === "") continue;
    const target = /^url\(\s*["']?#([^"')]{1,200})["']?\s*\)/.exec(value.slice(0, 300))?.[1];
    const holder = target === undefined ? undefined : journey.byId(target);
    if (holder?.localName !== (kind === "mask" ? "mask" : "clipPath"))
      journey.warn(`${where}: its ${kind} "${value.slice(0, 40)}" is not in the file; it is drawn without`);
    else if (here.following.includes(holder))
      journey.warn(`${where}: its ${kind} leads back to itself; it is drawn without`);
    else {
      const clip = clipBy(holder, element, journey, here, visit);
      if (clip) clips = [...clips, clip];
      else
        journey.warn(
          `${where}: its mask fades or is grey; it is drawn without. Cut the shapes in the editor instead`,
        );
    }
  }
  return clips;
}

function clipBy(
  holder: Element,
  element: Element,
  journey: Journey,
  here: Place,
  visit: Visit,
): Clip | undefined {
  const isMask = holder.localName === "mask";
  const units = holder.getAttribute(isMask ? "maskContentUnits" : "clipPathUnits");
  const byBox = units === "objectBoundingBox";
  const own = readTransform(isMask ? null : holder.getAttribute("transform"), "clipPath");
  const matrix = compose(
    compose(own, byBox ? boxOfElement(element, journey, here, visit) : [1, 0, 0, 1, 0, 0]),
    here.matrix,
  );
  const key = `${holder.getAttribute("id")} ${matrix.join()} ${here.viewport?.width} ${here.viewport?.height}`;
  const known = journey.clips.get(key);
  if (known) return known;
  const marks: Mark[] = [];
  const style = journey.style(holder, firstStyle);
  const inside: Place = {
    ...{ matrix, marks, clips: [], trail: [], viewport: here.viewport, depth: here.depth + 1 },
    // Colours do not matter in a clip path, so everything in it counts as painted.
    style: { ...style, display: "inline", opacity: "1", "clip-path": "none", mask: "none", transform: "" },
    following: [...here.following, holder],
    holder,
  };
  for (const child of childElements(holder)) visit(child, forClip(journey, !isMask), inside);
  const outer = isMask
    ? []
    : clipsOf(
        holder,
        journey,
        { ...here, matrix, clips: [], style, following: inside.following },
        "clipPath",
        visit,
      );
  if (isMask && !marks.every((mark) => mark.kind === "painted" && mark.alpha === 1 && isPlain(mark.fill)))
    return undefined;
  const regions = marks.flatMap((mark): ClipRegion[] => {
    if (mark.kind !== "painted") return [];
    return [{ ...mark, clips: [...mark.clips, ...outer], away: isMask && isBlack(mark.fill) }];
  });
  const clip: Clip = { regions };
  journey.clips.set(key, clip);
  return clip;
}

const isWhite = (fill: string): boolean => /^#f[c-f]f[c-f]f[c-f]$/.test(fill);
const isBlack = (fill: string): boolean => /^#0[0-3]0[0-3]0[0-3]$/.test(fill);
const isPlain = (fill: string): boolean => isWhite(fill) || isBlack(fill);

/** In a clip path only outlines count: `clip-rule` fills them, and strokes and opacity are nothing. */
function forClip(journey: Journey, plain: boolean): Journey {
  const quiet: Journey = { ...journey, drop: () => {}, count: () => {} };
  if (!plain) return quiet;
  return {
    ...quiet,
    warn: () => {},
    style: (element, parent) => {
      const style = journey.style(element, parent);
      return {
        ...style,
        ...{
          fill: "#ffffff",
          "fill-opacity": "1",
          stroke: "none",
          opacity: "1",
          "fill-rule": style["clip-rule"],
        },
      };
    },
  };
}

/** From the unit square to the box of an element, in its own coordinates. */
function boxOfElement(element: Element, journey: Journey, here: Place, visit: Visit): Matrix {
  const marks: Mark[] = [];
  const place: Place = {
    ...here,
    matrix: [1, 0, 0, 1, 0, 0],
    marks,
    clips: [],
    following: [...here.following],
  };
  const style = (one: Element, parent: Place["style"]): Place["style"] => ({
    ...journey.style(one, parent),
    ...{
      fill: "#ffffff",
      "fill-opacity": "1",
      stroke: "none",
      opacity: "1",
      "clip-path": "none",
      mask: "none",
    },
    ...(one === element ? { transform: "none" } : {}),
  });
  visit(element, { ...forClip(journey, true), style }, place);
  const outlines = marks.flatMap((mark) => (mark.kind === "painted" ? [mark.outline] : []));
  const { minX, minY, maxX, maxY } = extentOf(outlines);
  return maxX >= minX ? [maxX - minX, 0, 0, maxY - minY, minX, minY] : [0, 0, 0, 0, 0, 0];
}
