// npm run sweep:artwork: every drawing of two packs, flat ones held against resvg's pictures of the same files (256
// pixels wide, over white). `npm run sweep:artwork -- 10` takes every tenth. Fails when a figure is out of bounds.
import { attempt, drawingsOf, quantile, type Tried } from "./packs.ts";

const every = Number(process.argv[2] ?? 1);
const all = [...drawingsOf("fluent-emoji-flat"), ...drawingsOf("noto")].filter((_, i) => i % every === 0);
const flat = all.filter((one) => !one.hasGradients);
const shaded = all.filter((one) => one.hasGradients);

function tell(title: string, tried: readonly Tried[]): void {
  const refused = tried.filter((one) => one.refused !== undefined);
  const crashed = tried.filter((one) => one.crash !== undefined);
  const share = ((tried.length - refused.length - crashed.length) / tried.length) * 100;
  console.log(
    `${title}: ${tried.length} drawings, ${share.toFixed(2)} % read, ${refused.length} refused, ${crashed.length} crashed`,
  );
  for (const one of refused) console.log(`  refused: ${one.name} (${one.refused})`);
  for (const one of crashed) console.log(`  CRASHED: ${one.name}: ${one.crash}`);
  const ms = (key: "read" | "drawn"): string => {
    const times = tried.map((one) => one[key]);
    const sum = times.reduce((a, b) => a + b, 0) / 1000;
    return `median ${quantile(times, 0.5).toFixed(1)} ms, p99 ${quantile(times, 0.99).toFixed(0)} ms, ${sum.toFixed(1)} s in all`;
  };
  console.log(`  reading: ${ms("read")}`);
  console.log(`  reading and drawing: ${ms("drawn")}`);
  if (crashed.length > 0) throw new Error(`${crashed.length} drawings crashed`);
}

const tried = flat.map((one) => attempt(one));
tell("flat", tried);
const likenesses = tried.flatMap((one) => one.db ?? []);
const over30 = likenesses.filter((db) => db > 30).length / likenesses.length;
const roles = quantile(
  tried.flatMap((one) => one.roles ?? []),
  0.5,
);
console.log(
  `  likeness: median ${quantile(likenesses, 0.5).toFixed(1)} dB, ${(over30 * 100).toFixed(2)} % over 30 dB`,
);
console.log(`  roles when colours merge within ΔE00 8: median ${roles}`);
const worst = [...tried].sort((a, b) => (a.db ?? 99) - (b.db ?? 99)).slice(0, 10);
console.log(`  least like: ${worst.map((one) => `${one.name} ${one.db?.toFixed(1)}`).join(", ")}`);
tell(
  "with gradients",
  shaded.map((one) => attempt(one, false)),
);
if (!(quantile(likenesses, 0.5) > 38 && over30 > 0.97 && roles < 7))
  throw new Error("a figure is out of bounds");
