import type { Rules, Search } from "./search.ts";

/** Two roles nearer in lightness (L*) than this may change places in the value order: one is not the shade of the other. */
const ALIKE = 7;

/** The pairs of roles that a light-dark order fixes, from the lightness (L*) of each role's ink. */
export function valueOrder(lightness: readonly number[]): Rules["order"] {
  return lightness.flatMap((light, a) =>
    lightness.flatMap((dark, b) => (light - dark >= ALIKE ? [[a, b] as const] : [])),
  );
}

/** Whether a role may have the ink that it now has, given the roles that have theirs; -1 stands for none yet. */
export type RuleKeeper = (inks: ArrayLike<number>, role: number) => boolean;

/** Every rule at once. */
export function ruleKeeper(search: Search): RuleKeeper {
  const [contrast, order] = [contrastKeeper(search), orderKeeper(search)];
  return (inks, role) => contrast(inks, role) && order(inks, role);
}

function contrastKeeper({ rules, sight, table: { luminance } }: Search): RuleKeeper {
  const onGround = sight.roles.map((_, role) =>
    sight.edges.some(({ below, above }) => below === 0 && above === role),
  );
  const enough = (a: number, b: number): boolean => {
    const [one, other] = [luminance[a]! + 0.05, luminance[b]! + 0.05];
    return (one > other ? one / other : other / one) >= rules.minContrast;
  };
  return (inks, role) => {
    const ground = inks[0]!;
    if (role !== 0) return !onGround[role] || ground < 0 || enough(ground, inks[role]!);
    return onGround.every((on, other) => !on || inks[other]! < 0 || enough(ground, inks[other]!));
  };
}

/**
 * Keeps the value order, and room in it: where other roles must come between two, as many inks of the palette
 * must lie between theirs. Without that, a search finds out too late that it has run into a dead end.
 */
function orderKeeper({ rules: { order }, sight, table: { lightness }, inks: palette }: Search): RuleKeeper {
  const roles = sight.roles.length;
  const darkerInks = new Int32Array(lightness.length);
  for (const ink of palette)
    darkerInks[ink] = palette.filter((other) => lightness[other]! < lightness[ink]!).length;
  const ordered = new Set(order.map(([lighter, darker]) => lighter * roles + darker));
  const limits = sight.roles.map((_, role) => {
    const lighter = order.filter(([, darker]) => darker === role).map(([one]) => one);
    const darker = order.filter(([one]) => one === role).map(([, other]) => other);
    const between = (top: number, bottom: number): number =>
      sight.roles.filter(
        (_, other) => ordered.has(top * roles + other) && ordered.has(other * roles + bottom),
      ).length;
    return {
      least: darker.length,
      most: palette.length - 1 - lighter.length,
      lighter: lighter.map((other) => ({ other, between: between(other, role) })),
      darker: darker.map((other) => ({ other, between: between(role, other) })),
    };
  });
  return (inks, role) => {
    const { least, most, lighter, darker } = limits[role]!;
    const rank = darkerInks[inks[role]!]!;
    if (rank < least || rank > most) return false;
    for (const { other, between } of lighter) {
      const ink = inks[other]!;
      if (ink >= 0 && darkerInks[ink]! - rank <= between) return false;
    }
    for (const { other, between } of darker) {
      const ink = inks[other]!;
      if (ink >= 0 && rank - darkerInks[ink]! <= between) return false;
    }
    return true;
  };
}
