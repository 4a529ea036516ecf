import { defineRepeat, type RepeatFactory } from "./define.ts";
import { lozenges, tipToTip } from "./lozenge.ts";

/** Units are diamonds that stand on their points; each row fills the gaps of the one above. */
export const diamond: RepeatFactory<typeof tipToTip> = defineRepeat({
  name: "sprigwright/diamond",
  about: "Units are diamonds that stand on their points, each row in the gaps of the one above.",
  params: tipToTip,
  arrange: (size) => lozenges(size, "diamond"),
});
