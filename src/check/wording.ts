import type { Finding } from "./finding.ts";

/** Names one after the other: "a and b", "a, b and c". */
const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join() : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** A finding as one line for a person. */
export function sayFinding(finding: Finding): string {
  const { severity, rule, role, colorway, motifs, measured, limit, unit, fix } = finding;
  const place = [
    colorway && `colorway ${colorway}`,
    role && `role ${role}`,
    motifs && `motifs ${listed(motifs)}`,
  ]
    .filter(Boolean)
    .join(", ");
  const range = `${measured}${unit ? ` ${unit}` : ""} where ${limit} is wanted`;
  return `${severity}: ${place ? `${place}: ` : ""}${range}; ${fix} [${rule}]`;
}
