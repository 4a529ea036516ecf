import { unknownName } from "../../errors/catalogue.ts";
import { stripesSpec } from "../../layout/stripes.ts";
import { schemaOf } from "../../params/compound.ts";
import type { PieceKind } from "../../params/use.ts";
import { artworkPlugin } from "../../plugin/artwork.ts";
import { createKit, type PieceDescription } from "../../plugin/kit.ts";
import { letteringPlugin } from "../../plugin/lettering.ts";
import type { Plugin } from "../../plugin/plugin.ts";
import { loadPlugin } from "../load/load-patterns.ts";
import type { Arguments } from "./arguments.ts";
import { describeParams } from "./describe-params.ts";
import { EXIT, type Host } from "./host.ts";
import { type Style, styleFor, widthOf } from "./style.ts";
import { hang } from "./text.ts";

/** What is described: pieces, and areas of the ground, which layouts take. */
interface Described extends Omit<PieceDescription, "kind"> {
  readonly kind: PieceKind | "area";
}

const KINDS = [
  "motif",
  "layout",
  "area",
  "repeat",
  "scheme",
  "check",
] as const satisfies readonly Described["kind"][];

const STRIPES: Described = {
  kind: "area",
  name: "sprigwright/stripes",
  about: "Even stripes over the whole pattern, for a toss to keep inside of, or outside of.",
  params: schemaOf(stripesSpec),
};

/** `sprigwright describe`: the pieces, for people or as JSON. */
export async function describe({ names, flags }: Arguments, host: Host): Promise<number> {
  const plugins: Plugin[] = [artworkPlugin(), letteringPlugin()];
  for (const file of flags.get("plugin") ?? []) plugins.push(await loadPlugin(file));
  const whole = createKit({ plugins }).describe();
  const known = [...whole.pieces, STRIPES];
  const [asked] = names;
  const piece = asked === undefined ? undefined : find(asked, known);
  const style = styleFor(host.out, host.env);
  const width = widthOf(host.out);
  if (flags.has("json")) host.out.write(`${JSON.stringify(piece ?? whole, null, 2)}\n`);
  else host.out.write(piece ? one(piece, style, width) : all(known, style, width));
  return EXIT.done;
}

function find(asked: string, pieces: readonly Described[]): Described {
  const exact = pieces.find(({ name }) => name === asked);
  const short = pieces.filter(({ name }) => shortName(name) === asked);
  const piece = exact ?? (short.length === 1 ? short[0] : undefined);
  if (piece) return piece;
  const known = pieces.map(({ name }) => (asked.includes("/") ? name : shortName(name)));
  throw unknownName("describe", "piece", asked, short.length > 1 ? short.map(({ name }) => name) : known);
}

const shortName = (name: string): string => name.slice(name.indexOf("/") + 1);

/** The library's own pieces go by their short names, as in scripts; a plugin's keep its name in front. */
const label = (name: string): string => (name.startsWith("sprigwright/") ? shortName(name) : name);

function all(pieces: readonly Described[], style: Style, width: number): string {
  const room = Math.max(...pieces.map(({ name }) => label(name).length)) + 4;
  const lines: string[] = [];
  for (const kind of KINDS) {
    const ofKind = pieces.filter((piece) => piece.kind === kind);
    if (ofKind.length === 0) continue;
    if (lines.length > 0) lines.push("");
    lines.push(style.quiet(`${kind}s`));
    for (const { name, about } of ofKind)
      lines.push(
        `  ${style.name(label(name))}${" ".repeat(room - 2 - label(name).length)}${hang(about, room, width)}`,
      );
  }
  const hint = "describe PIECE tells what a piece takes, --json tells everything.";
  return `${lines.join("\n")}\n\n${style.quiet(hint)}\n`;
}

function one(piece: Described, style: Style, width: number): string {
  const { kind, name, about, parts, params } = piece;
  const drawn = Array.isArray(parts) ? parts.join(", ") : parts === "drawn" ? "as the drawing has them" : "";
  return [
    `${style.name(label(name))}  ${style.quiet(kind)}`,
    hang(about, 0, width),
    ...(drawn ? ["", `${style.quiet("parts")}  ${drawn}`] : []),
    ...describeParams(params, style, width),
    "",
  ].join("\n");
}
