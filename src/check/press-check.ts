import type { InkProof, PrintProfile } from "../colorway/proof/open-profile.ts";
import { readParams } from "../params/compound.ts";
import { number } from "../params/kinds.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import type { Finding } from "./finding.ts";

/** Options of {@link pressCheck}. */
export interface PressCheckOptions {
  /** How far print may be from an ink, ΔE00; default 6: a difference that is seen at once (common practice). */
  readonly mostDeltaE?: number;
}

const spec = { mostDeltaE: number({ about: "How far print may be off.", min: 0, max: 100, default: 6 }) };

/**
 * A check for `inspect`: inks that a press cannot print as they look, with the nearest that it can, and inks that take more
 * than its limit of total ink.
 * @example inspect(tile, { checks: [pressCheck(press)] })
 * @throws SprigwrightError `number-range`, `unknown-option`
 */
export function pressCheck(press: PrintProfile, options: PressCheckOptions = {}): CheckPiece {
  const { mostDeltaE } = readParams(spec, options, "pressCheck");
  // Finding the nearest print takes a search, and many colorways share an ink.
  const known = new Map<string, readonly Finding[]>();
  const findingsFor = (ink: string): readonly Finding[] => {
    const found = known.get(ink) ?? findings(press, press.proof(ink), mostDeltaE);
    known.set(ink, found);
    return found;
  };
  return defineCheck({
    name: "sprigwright/press",
    about: "Every ink prints about as it looks, and none takes more ink than the press and paper bear.",
    look: ({ tile, colorways }) =>
      colorways.flatMap(({ name, inks }) =>
        tile.recipe.roles.flatMap((role) => {
          const ink = (inks as Readonly<Record<string, string>>)[role];
          const found = ink === undefined ? [] : findingsFor(ink);
          return found.map((finding) => ({ ...finding, role, colorway: name }));
        }),
      ),
  });
}

function findings(press: PrintProfile, proof: InkProof, mostDeltaE: number): Finding[] {
  const { ink, deltaE, total, printed } = proof;
  const found: Finding[] = [];
  const severity = "warning";
  if (deltaE > mostDeltaE) {
    const near = press.nearest(ink);
    found.push({
      ...{ rule: "off-press-color", severity, measured: deltaE, limit: mostDeltaE, unit: "ΔE00 in print" },
      fix: `${ink} prints as ${printed}; use ${near.printed}, ΔE00 ${near.deltaE} from it, or have it mixed as a spot ink`,
    });
  }
  if (total > press.mostInk)
    found.push({
      ...{ rule: "too-much-ink", severity, measured: total, limit: press.mostInk, unit: "% of ink" },
      fix: `make ${ink} lighter, or ask for a separation with more black in place of the colours`,
    });
  return found;
}
