import { createJiti, type Jiti } from "jiti";
import { badInput } from "../../errors/catalogue.ts";
import type { SprigwrightError } from "../../errors/error.ts";
import { ownError } from "../faults.ts";

/**
 * Runs a script, TypeScript or JavaScript, and returns its default export.
 *
 * Whatever the script or a module of its own imports from `sprigwright` is this very copy of the library, so it
 * works wherever the script lies: beside an installed package, in this repository, or alone in a folder.
 *
 * @throws SprigwrightError `script-failed` with the cause, `no-default-export`
 */
export async function runScript(path: string, shown: string, nodeDoor: NodeDoor): Promise<unknown> {
  const jiti = await loader(nodeDoor);
  let exported: Readonly<Record<string, unknown>>;
  let value: unknown;
  try {
    exported = await jiti.import(path);
    value = await exported["default"];
  } catch (cause) {
    throw scriptFailed(path, shown, cause);
  }
  if (value !== undefined) return value;
  const others = Object.keys(exported).filter((name) => name !== "default");
  throw badInput(
    "no-default-export",
    shown,
    others.length > 0 ? `it exports ${others.slice(0, 6).join(", ")}, but no default` : "it exports nothing",
    'end it with "export default definePattern({ ... })"',
  );
}

/** What `sprigwright/node` exports, handed in by the loader, which is a part of it. */
export type NodeDoor = Readonly<Record<string, unknown>>;

/** Nothing is cached on the disk: scripts are short, and a cache would leave files in the user's project. */
async function loader(nodeDoor: NodeDoor): Promise<Jiti> {
  const [library, artwork, lettering] = await Promise.all([
    import("../../index.ts"),
    import("../../artwork.ts"),
    import("../../lettering.ts"),
  ]);
  return createJiti(import.meta.url, {
    fsCache: false,
    moduleCache: false,
    interopDefault: false,
    virtualModules: {
      sprigwright: library,
      "sprigwright/artwork": artwork,
      "sprigwright/lettering": lettering,
      "sprigwright/node": nodeDoor,
    },
  });
}

function scriptFailed(path: string, shown: string, cause: unknown): SprigwrightError {
  const line = lineIn(path, cause);
  const where = line ? `${shown}:${line}` : shown;
  const own = ownError(cause, where);
  if (own) return own;
  const said = cause instanceof Error ? cause.message.split("\n")[0]!.trim() : String(cause);
  const missing = /^Cannot find (module|package)/.test(said);
  return badInput(
    "script-failed",
    where,
    `the script threw: ${said}`,
    missing
      ? "install what it imports, or correct the name"
      : "mend the script there; the error it threw is the cause",
    cause,
  );
}

/** Line of the script that an error's stack, or a parser's message, points to. */
function lineIn(path: string, cause: unknown): string | undefined {
  if (!(cause instanceof Error)) return undefined;
  const text = `${cause.message}\n${cause.stack ?? ""}`;
  const at = text.indexOf(`${path}:`);
  return at < 0 ? undefined : /^\d+/.exec(text.slice(at + path.length + 1))?.[0];
}
