// The door for print proofs by a press's ICC profile: sprigwright/proof. Needs lcms-wasm beside this package.
export { type PressCheckOptions, pressCheck } from "./check/press-check.ts";
export type { Lcms } from "./colorway/proof/lcms.ts";
export {
  type InkProof,
  openProfile,
  type PrintProfile,
  type ProfileOptions,
} from "./colorway/proof/open-profile.ts";
