// npm run sweep: every repeat type with twenty seeds. Prints one line for each type; fails when anything does not hold.
import { every } from "./every.ts";
import { examine } from "./examine.ts";
import { GAP } from "./field.ts";

const seeds = Number(process.argv[2] ?? 20);
let failed = 0;
for (const [name, repeat] of Object.entries(every)) {
  let [unlike, symmetry, clearance, motifs] = [0, Infinity, Infinity, 0];
  for (let seed = 1; seed <= seeds; seed++) {
    const found = await examine(repeat, `sweep-${seed}`);
    unlike += found.unlikeAtA + found.unlikeAtB + found.unlikeByLattice;
    symmetry = Math.min(symmetry, found.symmetry);
    clearance = Math.min(clearance, found.clearance);
    motifs += found.motifs;
  }
  const fine = unlike === 0 && symmetry > 45 && clearance >= GAP;
  if (!fine) failed++;
  console.log(
    `${fine ? "holds" : "FAILS"}  ${name.padEnd(18)} ${seeds} seeds, ${motifs} motifs: ${unlike} pixels unlike, ` +
      `symmetry ${symmetry === Infinity ? "exact" : `${symmetry.toFixed(1)} dB`}, clearance ${clearance.toFixed(4)} mm`,
  );
}
if (failed > 0) throw new Error(`${failed} repeat types do not hold`);
