/** Short and full Hermann-Mauguin symbols in use beside those of the Tables, with what they stand for. */
export const otherSymbols: {
  readonly p211: "p2";
  readonly p1m1: "pm";
  readonly p1g1: "pg";
  readonly c1m1: "cm";
  readonly pmm: "p2mm";
  readonly pmg: "p2mg";
  readonly pgg: "p2gg";
  readonly cmm: "c2mm";
  readonly p4m: "p4mm";
  readonly p4g: "p4gm";
  readonly p6m: "p6mm";
} = {
  p211: "p2",
  p1m1: "pm",
  p1g1: "pg",
  c1m1: "cm",
  pmm: "p2mm",
  pmg: "p2mg",
  pgg: "p2gg",
  cmm: "c2mm",
  p4m: "p4mm",
  p4g: "p4gm",
  p6m: "p6mm",
};
