// How long the first colorway and each further one take, file write included, against resvg in the same run, each in a
// fresh process; what 3 x 3 repeats cost beside one; how far the palette is from truecolour.
// Run with: npm run bench -- raster
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { rasterize } from "../../src/output/png/rasterize.ts";
import { decode, psnr } from "../output/png/pictures.ts";
import { meadow, splitRoles, svgOf } from "../output/png/tiles.ts";

/** 8 in: 7200 pixels are 900 dpi. 17 x 17 flowers of 15 contours in 4 roles. */
const SIZE = 203_200;
const ACROSS = 17;
const COLORWAYS = Array.from({ length: 10 }, (_, i) => ({
  name: `colorway-${i}`,
  inks: {
    ground: "#f6ead7",
    stem: "#2f4a38",
    leaf: `#5f8b${(40 + i * 12).toString(16)}`,
    petal: `#d9${(30 + i * 20).toString(16)}3c`,
    centre: "#f2c14e",
  },
}));

interface Result {
  readonly first: number;
  /** Each colorway after it, the middle one. */
  readonly further: number;
  /** All that were drawn. */
  readonly all: number;
  readonly bytes: number;
  readonly peak: number;
}

/** Times every colorway, file write included. */
async function timed(prepare: () => Promise<(i: number) => Uint8Array>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), "raster-bench-"));
  const times: number[] = [];
  let bytes = 0;
  let start = performance.now();
  const draw = await prepare();
  for (let i = 0; i < COLORWAYS.length; i++) {
    const png = draw(i);
    writeFileSync(join(folder, `${i}.png`), png);
    bytes = png.length;
    times.push(performance.now() - start);
    start = performance.now();
  }
  rmSync(folder, { recursive: true });
  return {
    first: times[0]!,
    further: median(times.slice(1)),
    all: times.reduce((sum, time) => sum + time, 0),
    bytes,
    peak: process.resourceUsage().maxRSS / 1024,
  };
}

async function one(engine: string, width: number): Promise<Result> {
  const tile = meadow(SIZE, ACROSS, 3);
  if (engine !== "resvg") {
    const times = engine === "cloth" ? 3 : 1;
    const color = engine === "truecolor" ? "truecolor" : "indexed";
    return timed(async () => {
      const raster = await rasterize(tile, {
        width: width * times,
        cut: { across: times, down: times },
        color,
      });
      return (i) => raster.png(COLORWAYS[i]!);
    });
  }
  // The SVG text is there beforehand; two colorways say enough.
  const texts = COLORWAYS.slice(0, 2).map(({ inks }) => svgOf(tile, inks, width, width));
  COLORWAYS.length = 2;
  return timed(async () => (i) => new Resvg(texts[i]!).render().asPng());
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

const script = process.argv[1]!; // this file, bundled: each measurement has a process of its own
const run = (engine: string, width: number): Result =>
  JSON.parse(
    execFileSync(process.execPath, [script, "one", engine, String(width)], { encoding: "utf8" }),
  ) as Result;

function compare(rounds: number, widths: readonly number[]): void {
  const rows = widths.map((width) => {
    const own: Result[] = [];
    const other: Result[] = [];
    for (let i = 0; i < rounds; i++) {
      own.push(run("own", width));
      if (width <= 12_000) other.push(run("resvg", width));
    }
    const of = (results: readonly Result[], key: keyof Result): number => median(results.map((r) => r[key]));
    const ratio = (key: keyof Result): string =>
      other.length > 0 ? (of(own, key) / of(other, key)).toFixed(2) : "-";
    return {
      pixels: width,
      "first ms": Math.round(of(own, "first")),
      "first / resvg": ratio("first"),
      "further ms": of(own, "further").toFixed(1),
      "further / first": `${((100 * of(own, "further")) / of(own, "first")).toFixed(2)} %`,
      // resvg draws two; ten take five times as long.
      "ten / ten of resvg":
        other.length > 0 ? `${((100 * of(own, "all")) / (5 * of(other, "all"))).toFixed(1)} %` : "-",
      "peak MB": Math.round(of(own, "peak")),
      "peak / resvg": ratio("peak"),
      KiB: Math.round(of(own, "bytes") / 1024),
      "size / resvg": ratio("bytes"),
    };
  });
  console.table(rows);
}

/** One block beside 3 x 3 of it, and indexed beside truecolour. */
function compareKinds(rounds: number, widths: readonly number[]): void {
  const rows = widths.map((width) => {
    const results = { own: [] as Result[], cloth: [] as Result[], truecolor: [] as Result[] };
    for (let i = 0; i < rounds; i++)
      for (const engine of ["own", "cloth", "truecolor"] as const) results[engine].push(run(engine, width));
    const of = (engine: keyof typeof results, key: keyof Result): number =>
      median(results[engine].map((r) => r[key]));
    return {
      pixels: width,
      "3 x 3 first ms": Math.round(of("cloth", "first")),
      "/ one": (of("cloth", "first") / of("own", "first")).toFixed(2),
      "3 x 3 KiB": Math.round(of("cloth", "bytes") / 1024),
      "3 x 3 peak MB": Math.round(of("cloth", "peak")),
      "truecolour further ms": Math.round(of("truecolor", "further")),
      "truecolour KiB": Math.round(of("truecolor", "bytes") / 1024),
      "truecolour peak MB": Math.round(of("truecolor", "peak")),
    };
  });
  console.table(rows);
}

/** How far the palette is from truecolour where every other role is black and white: its worst case. */
async function compareColors(width: number): Promise<void> {
  const rows = [];
  for (const count of [4, 6, 8, 12, 16]) {
    const tile = splitRoles(meadow(SIZE, ACROSS, 3), count);
    const inks = Object.fromEntries(
      tile.recipe.roles.map((role, i) => [role, i % 2 ? "#000000" : "#ffffff"]),
    );
    const [palette, full] = await Promise.all(
      (["indexed", "truecolor"] as const).map(async (color) =>
        decode((await rasterize(tile, { width, color })).png({ name: "x", inks })),
      ),
    );
    let off = 0;
    for (let i = 0; i < full!.data.length; i += 4)
      if (Math.abs(full!.data[i]! - palette!.data[i]!) > 8) off++;
    rows.push({
      roles: count,
      "PSNR dB": psnr(palette!, full!).toFixed(1),
      "off by more than 8": `${((100 * off) / (width * width)).toFixed(3)} %`,
    });
  }
  console.table(rows);
}

const [mode, ...rest] = process.argv.slice(2);
if (mode === "one") console.log(JSON.stringify(await one(rest[0]!, Number(rest[1]))));
else {
  const widths = rest.map(Number);
  const rounds = Number(mode ?? 3);
  compare(rounds, widths.length > 0 ? widths : [3600, 7200, 12_000, 20_000]);
  compareKinds(rounds, widths.length > 0 ? widths.filter((width) => width <= 7200) : [3600, 7200]);
  await compareColors(3600);
}
