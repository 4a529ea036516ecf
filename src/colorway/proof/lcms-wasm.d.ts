/** The package has no types of its own. */
declare module "lcms-wasm" {
  /** Loads the WASM file and starts it. */
  export function instantiate(): Promise<import("./lcms.ts").Lcms>;
}
