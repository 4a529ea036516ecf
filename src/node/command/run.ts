import { unknownName } from "../../errors/catalogue.ts";
import { VERSION } from "../../tile/version.ts";
import { type Arguments, readArguments } from "./arguments.ts";
import { COMMANDS, type CommandName } from "./commands.ts";
import { failed } from "./failed.ts";
import { commandHelp, generalHelp } from "./help.ts";
import { EXIT, type Host } from "./host.ts";
import { styleFor, widthOf } from "./style.ts";

type Work = (given: Arguments, host: Host) => Promise<number>;

/** Each command is loaded when it is asked for, so that help comes at once. */
const WORK: Readonly<Record<CommandName, () => Promise<Work>>> = {
  build: async () => (await import("./build.ts")).build,
  inspect: async () => (await import("./inspect.ts")).inspect,
  describe: async () => (await import("./describe.ts")).describe,
  reproduce: async () => (await import("./reproduce.ts")).reproduce,
};

/** Runs the command on its words and returns the exit code. Never throws. */
export async function run(words: readonly string[], host: Host): Promise<number> {
  const style = styleFor(host.out, host.env);
  const width = widthOf(host.out);
  try {
    const [first, ...rest] = words;
    if (first === undefined) {
      host.err.write(generalHelp(styleFor(host.err, host.env), widthOf(host.err)));
      return EXIT.wrongUse;
    }
    if (first === "--version" || first === "-v") {
      host.out.write(`${VERSION}\n`);
      return EXIT.done;
    }
    if (first === "--help" || first === "-h") {
      host.out.write(generalHelp(style, width));
      return EXIT.done;
    }
    if (!isCommand(first))
      throw first.startsWith("-")
        ? unknownName("sprigwright", "flag", first, ["--help", "--version"])
        : unknownName("sprigwright", "command", first, Object.keys(COMMANDS));
    const given = readArguments(first, rest);
    if (given.flags.has("help")) {
      host.out.write(commandHelp(first, style, width));
      return EXIT.done;
    }
    const work = await WORK[first]();
    return await work(given, host);
  } catch (error) {
    return failed(error, host, words.includes("--stack"));
  }
}

const isCommand = (word: string): word is CommandName => Object.hasOwn(COMMANDS, word);
