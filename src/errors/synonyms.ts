/** What options are often called elsewhere, in the trade and by programmers, and what they are called here. */
const SAID: Readonly<Record<string, readonly string[]>> = {
  spacing: ["gap"],
  distance: ["gap"],
  padding: ["gap", "edge"],
  margin: ["gap", "edge"],
  size: ["scale"],
  angle: ["turn", "turns", "by", "direction"],
  rotation: ["turn", "turns", "by", "direction"],
  rotate: ["turn", "turns", "by", "direction"],
  degrees: ["turn", "turns", "by", "direction"],
  mirror: ["flip"],
  mirrored: ["flip"],
  number: ["count"],
  quantity: ["count"],
  amount: ["count"],
  weight: ["share"],
  ratio: ["share"],
  layers: ["layouts"],
};

/** The known option that goes by another word elsewhere. */
export const synonymOf = (given: string, known: readonly string[]): string | undefined =>
  (Object.hasOwn(SAID, given) ? SAID[given]! : []).find((name) => known.includes(name));
