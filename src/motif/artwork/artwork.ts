import type { Path } from "../../geometry/path.ts";
import { length, text } from "../../params/kinds.ts";
import type { ParamsOut } from "../../params/param.ts";
import type { Drawing, MotifPiece, MotifTools } from "../motif.ts";
import { knockOut } from "./knock-out.ts";
import { LIMITS } from "./limits.ts";
import { readDrawing } from "./read.ts";
import { completeRoles } from "./roles.ts";
import { coatsOf, uniteMany } from "./stack.ts";

const params = {
  svg: text({
    about: "The drawing, as the text of an SVG file of flat fills.",
    max: LIMITS.characters,
  }),
  size: length({
    about: "Longer side of the drawing: everything it paints is scaled to it together.",
    min: 1,
    max: 2000,
    default: 30,
  }),
};

type Params = ParamsOut<typeof params>;

/** An imported drawing: every colour of the file is a part, named by its fill, and fills a role. */
export const artwork: MotifPiece = Object.freeze({
  kind: "motif",
  name: "artwork/artwork",
  about: "A drawing of your own, from an SVG file of flat colours; each colour becomes a role.",
  params,
  parts: "drawn",
  rolesOf: ({ svg, size }: Params, given: Readonly<Record<string, string>>) =>
    completeRoles(readDrawing(svg, size).areas, given),
  draw({ svg, size }: Params, { roles }: MotifTools): Drawing {
    const { areas } = readDrawing(svg, size);
    const roleOf = (fill: string): string => roles[fill] ?? fill;
    const order = [...new Set(Object.values(roles))];
    const drawn = knockOut(coatsOf(areas.map(({ fill, path }) => ({ role: roleOf(fill), path }))), order);
    // Fills that share a role are already one drawing: it goes under the first of them.
    const parts: Record<string, Path> = {};
    for (const role of order) {
      const fill = Object.keys(roles).find((key) => roles[key] === role);
      if (fill !== undefined) parts[fill] = uniteMany(drawn.get(role)!);
    }
    return parts;
  },
});
