import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { stopBuilds } from "./stops.ts";

const built = join(import.meta.dirname, "../../dist/command.js");

// `npm run sweep:stops` does it twenty times.
test("a build that is killed outright leaves no broken file, and the next run completes to the same bytes", async () => {
  const folder = mkdtempSync(join(tmpdir(), "sprigwright-stops-"));
  for (const stop of await stopBuilds(built, folder, 2, 7))
    expect(stop).toMatchObject({ broken: [], finished: true, same: true });
  rmSync(folder, { recursive: true });
});
