import { existsSync, readFileSync } from "node:fs";

/**
 * A CMYK profile of the system, which `.ci/run` installs where it can (Debian's libgs-common; its licence is AGPL, so that it
 * is used where it lies and never copied). Undefined where there is none.
 */
const PLACE = "/usr/share/color/icc/ghostscript/default_cmyk.icc";

export const profile: Uint8Array | undefined = existsSync(PLACE)
  ? new Uint8Array(readFileSync(PLACE))
  : undefined;

if (profile === undefined)
  console.warn(
    `\n*** NO CMYK PROFILE at ${PLACE}: the tests of print proofs are SKIPPED. apt-get install libgs-common brings one. ***\n`,
  );
