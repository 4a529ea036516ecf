import { parseArgs } from "node:util";
import { badInput, unknownName } from "../../errors/catalogue.ts";
import { COMMANDS, type CommandName, type Flag, SHARED } from "./commands.ts";

/** The words after a command, told apart. */
export interface Arguments {
  readonly names: readonly string[];
  /** Values by flag, in the order given; an empty list for a switch that is on. */
  readonly flags: ReadonlyMap<string, readonly string[]>;
}

/**
 * Tells flags and names apart and refuses what the command does not know.
 * @throws SprigwrightError `unknown-flag`, `bad-argument`, `missing-argument`
 */
export function readArguments(command: CommandName, words: readonly string[]): Arguments {
  const info = COMMANDS[command];
  const known: Readonly<Record<string, Flag>> = { ...info.flags, ...SHARED };
  const flags = new Map<string, readonly string[]>();
  const names: string[] = [];
  // Not `strict`: that would speak in words of its own. Tokens say all that is needed to check here.
  const { tokens } = parseArgs({
    args: [...words],
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries(Object.entries(known).map(([name, flag]) => [name, parseOption(flag)])),
  });
  for (const token of tokens) {
    if (token.kind === "positional") names.push(token.value);
    if (token.kind !== "option") continue;
    const flag = Object.hasOwn(known, token.name) ? known[token.name] : undefined;
    if (!flag) throw unknownFlag(command, token.rawName, Object.keys(known));
    flags.set(token.name, readFlag(`${command} > ${token.rawName}`, flag, token, flags.get(token.name)));
  }
  if (names.length < info.least && !flags.has("help"))
    throw badInput(
      "missing-argument",
      command,
      `it was given no ${info.takes === "FILE" ? "file" : "script"}`,
      `say which: sprigwright ${command} ${info.takes}`,
    );
  if (names.length > info.most)
    throw badInput(
      "bad-argument",
      command,
      `${names.length} names were given`,
      `give one: sprigwright ${command} ${info.takes}`,
    );
  return { names, flags };
}

const parseOption = ({ value, short }: Flag): { type: "string" | "boolean"; short?: string } => ({
  type: value ? "string" : "boolean",
  ...(short ? { short } : {}),
});

function unknownFlag(command: string, rawName: string, known: readonly string[]): Error {
  const long = known.map((name) => `--${name}`);
  return unknownName(command, "flag", rawName, long);
}

function readFlag(
  where: string,
  flag: Flag,
  token: { readonly value: string | undefined; readonly inlineValue: boolean | undefined },
  before: readonly string[] | undefined,
): readonly string[] {
  const { value, inlineValue } = token;
  if (!flag.value) {
    if (value !== undefined)
      throw badInput("bad-argument", where, "it takes no value", "leave the value out");
    return [];
  }
  // "--out --dpi 300": the second flag was taken for a folder. A name that does begin so is given as --out=-name.
  if (value === undefined || value === "" || (!inlineValue && value.startsWith("-")))
    throw badInput("missing-argument", where, "its value is missing", `give it ${flag.value}`);
  if (before && !flag.many) throw badInput("bad-argument", where, "it was given twice", "give it once");
  return [...(before ?? []), value];
}

/** The last and only value of a flag. */
export const single = (flags: Arguments["flags"], name: string): string | undefined => flags.get(name)?.[0];

/** A whole number of dots per inch, as the rest of the library checks it further. */
export function dpiOf(flags: Arguments["flags"], command: CommandName): number | undefined {
  const given = single(flags, "dpi");
  if (given === undefined) return undefined;
  if (!/^\d{1,6}$/.test(given) || Number(given) < 1 || Number(given) > 2400)
    throw badInput(
      "bad-argument",
      `${command} > --dpi`,
      `${JSON.stringify(given)} is not a whole number from 1 to 2400`,
      "give the dots per inch that the printer asks for, such as 150 or 300",
    );
  return Number(given);
}
