import { badInput } from "../../../errors/catalogue.ts";
import { useMotif } from "../../define.ts";
import type { MotifUse } from "../../motif.ts";
import { readTraceOptions, type TraceOptions, type TraceShaping } from "./options.ts";
import { outlineData, PARTS } from "./outline-data.ts";
import type { Picture, Pixels } from "./picture.ts";
import { MOST_DATA, traced } from "./piece.ts";
import { readPicture } from "./read-picture.ts";
import { type Trace, trace } from "./trace.ts";

const WHERE = "trace";

/**
 * A motif from a picture of flat painted or inked shapes: the bytes of a PNG, or pixels. Its inks are found, or are
 * those that you name; each becomes a role, called after its colour until you name it. Soft edges are read as what
 * they are, so that outlines run between pixels; corners stay corners; specks and pinholes go.
 *
 * The same picture with the same options gives the same motif, on every machine. A recipe holds the outlines, never
 * the picture. {@link inspectTrace} says what was found.
 *
 * @example traceImage(await readFile("buoy.png"), { dpi: 300, inks: 3, specks: "0.4mm" })
 * @throws SprigwrightError `not-png`, `bad-picture`, `picture-too-large` (over 40 million pixels), `picture-too-rich`,
 * `empty-artwork`, `missing-role` (lists the inks without one), `unknown-fill`, `ink-named-twice`, `two-sizes`,
 * `length-range`, `number-range`, `unknown-option`, `wrong-type`
 */
export function traceImage<const Roles extends Readonly<Record<string, string>>>(
  picture: Uint8Array | ArrayBuffer | Pixels,
  options: TraceOptions<Roles> & { readonly roles: Roles },
): MotifUse<Roles[keyof Roles]>;
export function traceImage(
  picture: Uint8Array | ArrayBuffer | Pixels,
  options?: TraceShaping,
): MotifUse<string>;
export function traceImage(picture: unknown, options: object = {}): MotifUse<string> {
  return tracedUse(picture, options).use;
}

/** A use, and how it came about. */
export interface TracedUse {
  readonly use: MotifUse<string>;
  readonly trace: Trace;
  /** Of the picture as it was given, in pixels. */
  readonly picture: { readonly width: number; readonly height: number };
  readonly notes: readonly string[];
}

/** Traces, and puts what was traced to use. */
export function tracedUse(given: unknown, options: unknown): TracedUse {
  const setting = readTraceOptions(options, WHERE);
  const picture = readPicture(given, `${WHERE} > picture`);
  const found = trace(picture, setting, WHERE);
  const { layers, longer, middle, perMm } = found;
  const outlines = layers.map((layer) => outlineData(layer.outlines, PARTS / longer, middle));
  if (outlines.some((outline) => outline.length > MOST_DATA))
    throw badInput(
      "picture-too-rich",
      WHERE,
      `an ink's outlines take more than ${MOST_DATA} characters`,
      "allow a wider tolerance, or take more for specks",
    );
  const inks = layers.map(({ group }) => group.inks[0]!.ink.fill);
  const use = useMotif(traced, {
    ...{ inks, outlines },
    size: Math.round((longer / perMm) * 1000) / 1000,
    roles: Object.fromEntries(layers.map(({ group }, i) => [inks[i]!, group.role])),
  });
  const { width, height, notes } = picture;
  return {
    use,
    trace: found,
    picture: { width, height },
    notes: [...notes, ...notesOf(found, picture, setting.wish.paper !== "keep")],
  };
}

function notesOf({ factor, sized, analysis }: Trace, picture: Picture, wantsPaper: boolean): string[] {
  const notes: string[] = [];
  if (sized === "default")
    notes.push("nothing says how large the picture is: it is 30 mm long; give size, width or dpi");
  const { perMm, perMmDown } = picture;
  if (sized === "file" && Math.abs(perMm! - perMmDown!) > perMm! / 100)
    notes.push("its pixels are not square by its file; they are taken as square");
  if (factor > 1) notes.push(`the picture was averaged down ${factor} times, to what a motif can use`);
  if (wantsPaper && analysis.palette.paper < 0 && !analysis.palette.inks.some(({ clear }) => clear))
    notes.push('no paper was recognised: no colour has most of the rim; name it, as in paper: "#ffffff"');
  return notes;
}
