import { badInput, outOfRange } from "../../../errors/catalogue.ts";
import type { Path } from "../../../geometry/path.ts";
import { list, optional } from "../../../params/compound.ts";
import { choice, length, share, text } from "../../../params/kinds.ts";
import type { LengthParam, Param, ParamsOut } from "../../../params/param.ts";
import type { Length } from "../../../units/length.ts";
import type { Drawing, MotifPiece } from "../../motif.ts";
import { rolesOfParts } from "../piece.ts";
import type { Arrangement } from "./arrange.ts";
import { compose } from "./compose.ts";
import type { Frame } from "./frame.ts";

/** What a user says about a monogram besides its letters. */
export const shaping: {
  readonly size: LengthParam;
  readonly arrangement: Param<Arrangement, Arrangement, true>;
  readonly overlap: Param<number, number | undefined, true>;
  readonly drop: Param<number, number | undefined, true>;
  readonly gap: Param<Length, number | undefined, true>;
  readonly frame: Param<Frame, Frame, true>;
  readonly line: Param<Length, number | undefined, true>;
} = {
  size: length({ about: "Longer side of everything, the frame included.", min: 2, max: 2000, default: 30 }),
  arrangement: choice({
    about: "How the letters are brought together.",
    of: ["interlaced", "flanked"],
    default: "interlaced",
  }),
  overlap: optional(share({ about: "Interlaced: how far each letter reaches over the one before." })),
  drop: optional(share({ about: "Interlaced: how far the second letter hangs lower." })),
  gap: optional(length({ about: "Air beside a letter that goes over another.", min: 0, max: 100 })),
  frame: choice({
    about: "What stands around the letters.",
    of: ["none", "ring", "double-ring", "lozenge"],
    default: "none",
  }),
  line: optional(length({ about: "Width of the frame's line.", min: 0.05, max: 200 })),
};

const params = {
  text: text({ about: "The initials, for those who read the recipe.", max: 12 }),
  letters: list(
    text({
      about:
        "A letter's outline as SVG path data in hundred-thousandths of the height of capitals, y downwards.",
      max: 200_000,
    }),
    { about: "The initials, in reading order.", min: 2, max: 3 },
  ),
  ...shaping,
};

type Params = ParamsOut<typeof params>;

/** Names of a monogram's parts, back to front. */
export const monogramParts = (count: number, frame: Frame): string[] => [
  ...(frame === "none" ? [] : ["frame"]),
  ...["first", "second", "third"].slice(0, count),
];

/** Widest gap and frame line, as a share of the size: there must be room for letters. */
const WIDEST = 0.1;

/** What options must keep among each other. @throws SprigwrightError `bad-lettering`, `length-range` */
function checkShaping({ letters, arrangement, size, gap, line }: Params): void {
  if (arrangement === "flanked" && letters.length !== 3)
    throw badInput(
      "bad-lettering",
      "arrangement",
      `"flanked" takes three letters, and there are ${letters.length}`,
      'give three, or take "interlaced"',
    );
  for (const [name, value] of Object.entries({ gap, line }))
    if (value !== undefined && value > WIDEST * size)
      throw outOfRange(name, value, { min: 0, max: WIDEST * size }, "mm", "length-range");
}

/** Initials as a motif: it holds their outlines, never the font. */
export const monogramMotif: MotifPiece = Object.freeze({
  kind: "motif",
  name: "lettering/monogram",
  about: "Two or three initials brought together, in a frame or without.",
  params,
  parts: "drawn",
  rolesOf(params: Params, given: Readonly<Record<string, string>>) {
    checkShaping(params);
    return rolesOfParts(monogramParts(params.letters.length, params.frame), given);
  },
  draw(given: Params): Drawing {
    const { letters, frame } = compose(given);
    const drawing: Record<string, Path> = frame ? { frame } : {};
    letters.forEach((letter, i) => {
      drawing[["first", "second", "third"][i]!] = letter;
    });
    return drawing;
  },
});
