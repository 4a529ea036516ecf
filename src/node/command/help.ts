import { VERSION } from "../../tile/version.ts";
import { COMMANDS, type CommandName, SHARED } from "./commands.ts";
import type { Style } from "./style.ts";
import { hang, wrap } from "./text.ts";

/** What each exit code means; docs/command.md says the same. */
export const ENDINGS: readonly (readonly [code: number, meaning: string])[] = [
  [0, "done"],
  [1, "a fault that would show in print"],
  [2, "wrong use: arguments, scripts, patterns"],
  [3, "could not write"],
  [130, "interrupted"],
];

/** What the command is and what it can do. */
export function generalHelp(style: Style, width: number): string {
  const commands = Object.entries(COMMANDS).map(
    ([name, { takes, about }]) => [`${name} ${takes}`, about] as const,
  );
  return [
    `${style.name("sprigwright")} ${VERSION}`,
    ...wrap("Motifs into a seamless repeat, in as many colorways as wanted, ready for print.", width),
    "",
    ...pairs(commands, style, width),
    "",
    ...pairs(
      [
        ["COMMAND --help", "all that a command takes"],
        ["--version", "the version, and nothing else"],
      ],
      style,
      width,
    ),
    "",
    "It ends with",
    ...endings(style),
    "",
  ].join("\n");
}

/** All that one command takes. */
export function commandHelp(command: CommandName, style: Style, width: number): string {
  const info = COMMANDS[command];
  const flags = Object.entries({ ...info.flags, ...SHARED }).map(([name, flag]) => {
    const short = flag.short ? `-${flag.short}, ` : "";
    const notes = [flag.fallback && `default ${flag.fallback}`, flag.many && "may be repeated"].filter(
      Boolean,
    );
    const about = notes.length > 0 ? `${flag.about} (${notes.join("; ")})` : flag.about;
    return [`${short}--${name}${flag.value ? ` ${flag.value}` : ""}`, about] as const;
  });
  return [
    `${style.name(`sprigwright ${command}`)} ${info.takes}`,
    ...wrap(`${capital(info.about)}.`, width),
    "",
    ...wrap(info.detail, width),
    "",
    ...pairs(flags, style, width),
    "",
  ].join("\n");
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function pairs(rows: readonly (readonly [string, string])[], style: Style, width: number): string[] {
  const room = Math.max(...rows.map(([left]) => left.length)) + 4;
  return rows.map(
    ([left, right]) =>
      `  ${style.name(left)}${" ".repeat(room - left.length - 2)}${hang(right, room, width)}`,
  );
}

const endings = (style: Style): string[] =>
  ENDINGS.map(([code, meaning]) => `${String(code).padStart(5)}  ${style.quiet(meaning)}`);
