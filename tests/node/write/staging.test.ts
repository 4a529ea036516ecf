import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { makeFolders, removeEmpty } from "../../../src/node/write/folders.ts";
import { openStaging } from "../../../src/node/write/staging.ts";
import { refusalOf } from "../../given.ts";
import { contents, scratch } from "../given.ts";

describe("staging", () => {
  test("keeps files out of sight until they are published together", async () => {
    const out = await scratch();
    const staging = await openStaging(join(out, "quay"));
    await staging.put("a.txt", "one");
    await staging.put("b.txt", new Uint8Array([50]));
    expect((await contents(out)).filter((name) => !name.includes(".unfinished-"))).toEqual(["quay"]);
    await staging.publish(["a.txt", "b.txt"]);
    await staging.discard();
    expect(await contents(out)).toEqual(["quay", "quay/a.txt", "quay/b.txt"]);
    expect(await readFile(join(out, "quay/b.txt"), "utf8")).toBe("2");
  });

  test("takes away all that it made when it is discarded, and nothing else", async () => {
    const out = await scratch();
    const staging = await openStaging(join(out, "deep/down/quay"));
    await staging.put("a.txt", "one");
    await writeFile(join(out, "deep/mine.txt"), "mine");
    await staging.discard();
    expect(await contents(out)).toEqual(["deep", "deep/mine.txt"]);
  });

  test("serves two writers of one folder at once", async () => {
    const out = await scratch();
    const places = [join(out, "new/quay"), join(out, "new/quay"), join(out, "new/slip")];
    const stagings = await Promise.all(places.map(openStaging));
    await Promise.all(stagings.map((staging, i) => staging.put(`${i}.txt`, String(i))));
    await stagings[0]!.discard();
    await Promise.all(stagings.slice(1).map((staging, i) => staging.publish([`${i + 1}.txt`])));
    await Promise.all(stagings.map((staging) => staging.discard()));
    expect(await contents(out)).toEqual(["new", "new/quay", "new/quay/1.txt", "new/slip", "new/slip/2.txt"]);
  });

  // Linux answers "no such file" to whoever makes a folder in /proc, on which a recursive mkdir never ends.
  test.runIf(process.platform === "linux")("refuses a place where no folder can be made", async () => {
    const error = await refusalOf(() => openStaging("/proc/quay/slip"));
    expect(error.code).toBe("unwritable-folder");
  });
});

describe("making folders", () => {
  test("takes back those that were made when one cannot be", async () => {
    const out = await scratch();
    const long = "x".repeat(300);
    await expect(makeFolders(join(out, "a/b", long))).rejects.toMatchObject({ code: "ENAMETOOLONG" });
    expect(await contents(out)).toEqual([]);
  });

  test("returns what was made, outermost first, and removes it while it is empty", async () => {
    const out = await scratch();
    await mkdir(join(out, "a"));
    const made = await makeFolders(join(out, "a/b/c"));
    expect(made).toEqual([join(out, "a/b"), join(out, "a/b/c")]);
    expect(await makeFolders(join(out, "a/b/c"))).toEqual([]);
    await writeFile(join(out, "a/b/mine.txt"), "mine");
    await removeEmpty(made);
    expect(await contents(out)).toEqual(["a", "a/b", "a/b/mine.txt"]);
  });
});
