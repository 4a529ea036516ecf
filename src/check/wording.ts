import type { Finding } from "./finding.ts";

/** A finding as one line for a person. */
export function sayFinding(finding: Finding): string {
  const { severity, rule, role, colorway, motifs, measured, limit, unit, fix } = finding;
  const place = [
    colorway && `colorway ${colorway}`,
    role && `role ${role}`,
    motifs && `motifs ${motifs.join(" and ")}`,
  ]
    .filter(Boolean)
    .join(", ");
  const range = `${measured}${unit ? ` ${unit}` : ""} where ${limit} is wanted`;
  return `${severity}: ${place ? `${place}: ` : ""}${range}; ${fix} [${rule}]`;
}
