import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { COMMANDS, type CommandName, SHARED } from "../../../src/node/command/commands.ts";
import { ENDINGS } from "../../../src/node/command/help.ts";

const page = readFileSync(new URL("../../../docs/command.md", import.meta.url), "utf8");
const section = (title: string): string => page.split(/^## /m).find((part) => part.startsWith(title)) ?? "";

test.each(Object.keys(COMMANDS) as CommandName[])(
  "the page on the command tells every flag of %s, and no other",
  (name) => {
    const { takes, flags } = COMMANDS[name];
    const part = section(`sprigwright ${name} ${takes}`);
    const told = [...part.matchAll(/^\| `--([a-z-]+)/gm)].map((found) => found[1]);
    expect(told.sort()).toEqual(Object.keys(flags).sort());
  },
);

test("and the flags of every command, and every exit code", () => {
  for (const name of Object.keys(SHARED)) expect(section("With every command")).toContain(`--${name}`);
  const codes = [...section("How it ends").matchAll(/^\| (\d+) /gm)].map((found) => Number(found[1]));
  expect(codes).toEqual(ENDINGS.map(([code]) => code));
});
