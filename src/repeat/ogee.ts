import { defineRepeat, type RepeatFactory } from "./define.ts";
import { lozenges, tipToTip } from "./lozenge.ts";

/** Units are ogees: onion shapes with S-curved sides, each row in the gaps of the one above. */
export const ogee: RepeatFactory<typeof tipToTip> = defineRepeat({
  name: "sprigwright/ogee",
  about: "Units are onion shapes with S-curved sides, each row in the gaps of the one above.",
  params: tipToTip,
  arrange: (size) => lozenges(size, "ogee"),
});
