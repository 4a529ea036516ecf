import type { Path } from "../../geometry/path.ts";
import { choice, length, number, text } from "../../params/kinds.ts";
import type { ParamsOut } from "../../params/param.ts";
import type { Drawing, MotifPiece, MotifTools } from "../motif.ts";
import { LIMITS } from "./limits.ts";
import { drawingOf } from "./read.ts";
import { completeRoles } from "./roles.ts";
import { separate } from "./separate.ts";
import { simplifyPath } from "./simplify.ts";

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
  merge: number({
    about: "Colours that look no more different than this become one role: ΔE00, 8 for shades of a colour.",
    min: 0,
    max: 100,
    default: 0,
  }),
  page: choice({
    about: "A plain box under the whole page: kept as a shape like others, or dropped as paper.",
    of: ["keep", "drop"],
    default: "keep",
  }),
  simplify: length({
    about: "How far outlines may stray to have fewer nodes; 0 leaves them as they are.",
    min: 0,
    max: 5,
    default: 0,
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
  rolesOf: (given: Params, roles: Readonly<Record<string, string>>) =>
    completeRoles(drawingOf(given).areas, roles, given.merge),
  draw(given: Params, { roles }: MotifTools): Drawing {
    const { drawn, order } = separate(drawingOf(given).areas, roles);
    // Parts that share a role are already one drawing: it goes under the first of them.
    const parts: Record<string, Path> = {};
    for (const role of order) {
      const part = Object.keys(roles).find((key) => roles[key] === role);
      const path = drawn.get(role);
      if (part !== undefined && path) parts[part] = simplifyPath(path, given.simplify * 1000);
    }
    return parts;
  },
});
