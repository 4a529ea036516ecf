/** One generator of `seedrandom`, without the part that looks for the platform's entropy. */
declare module "seedrandom/lib/alea.js" {
  /** A stream for a seed; `double` has 53 random bits. */
  export default function alea(seed: string): { double(): number };
}
