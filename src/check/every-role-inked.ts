import { type CheckPiece, defineCheck } from "./check.ts";

/** Every role that the tile draws, and the ground, has an ink in every colorway. */
export const everyRoleInked: CheckPiece = defineCheck({
  name: "sprigwright/every-role-inked",
  about: "Every role that the tile draws, and the ground, has an ink in every colorway.",
  look: ({ tile, colorways }) => {
    const roles = ["ground", ...tile.layers.map((layer) => layer.role)];
    return colorways.flatMap(({ name, inks }) =>
      roles
        .filter((role) => !/^#[0-9a-f]{6}$/.test((inks as Record<string, string>)[role] ?? ""))
        .map((role) => ({
          rule: "every-role-inked",
          severity: "fault" as const,
          role,
          colorway: name,
          measured: (inks as Record<string, string>)[role] ?? "none",
          limit: "an ink #rrggbb",
          unit: "",
          fix: `give "${role}" a colour in the colorway "${name}"`,
        })),
    );
  },
});
