/** Longest name of a colorway, less room for a number. */
const LONGEST = 56;

/**
 * Names of colorways from what they are: palette, ink of the ground, ink of the role that is seen most; where two would be
 * called the same, the inks of further roles follow. So a name stays as long as the choice does, wherever it stands in the list.
 *
 * `parts` holds, for each colorway, the palette's name and the names of its inks, those of large roles first.
 */
export function colorwayNames(parts: readonly (readonly string[])[]): string[] {
  const names = parts.map((own) => joined(own.slice(0, 3)));
  const most = Math.max(...parts.map((own) => own.length));
  for (let used = 4; used <= most; used++) {
    const twins = names.map((name, i) => names.some((other, j) => j !== i && other === name));
    twins.forEach((twin, i) => {
      if (twin) names[i] = joined(parts[i]!.slice(0, used));
    });
  }
  return numbered(names);
}

const joined = (parts: readonly string[]): string => parts.join("-").slice(0, LONGEST).replace(/-+$/, "");

/** Names that are still the same, after cutting, get numbers. */
function numbered(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let k = 2; taken.has(own); k++) own = `${name}-${k}`;
    taken.add(own);
    return own;
  });
}
