// Reads a press's colours straight from its profile, at corners of the table from inks to Lab: ICC.1:2022, 10.10 (lut16Type),
// written from the standard and sharing nothing with Little CMS.

const CORNERS = 2;

/** Lab of D50 of the 16 combinations of none and all of each ink, by the tag A2B1 (relative colorimetric). */
export function cornersOf(
  profile: Uint8Array,
): (cmyk: readonly number[]) => readonly [number, number, number] {
  const view = new DataView(profile.buffer, profile.byteOffset, profile.byteLength);
  const text = (at: number): string => String.fromCharCode(...profile.subarray(at, at + 4));
  const count = view.getUint32(128);
  const entry = Array.from({ length: count }, (_, i) => 132 + 12 * i).find((at) => text(at) === "A2B1")!;
  const tag = view.getUint32(entry + 4);
  if (text(tag) !== "mft2") throw new Error(`A2B1 is ${text(tag)}, not lut16Type`);
  const [inputs, outputs, grid] = [profile[tag + 8]!, profile[tag + 9]!, profile[tag + 10]!];
  const [inputEntries, outputEntries] = [view.getUint16(tag + 48), view.getUint16(tag + 50)];
  const inputTables = tag + 52;
  const table = inputTables + 2 * inputs * inputEntries;
  const outputTables = table + 2 * grid ** inputs * outputs;
  // An end of an input curve: what no ink, or all of it, becomes before the table is entered.
  const enter = (ink: number, share: number): number => {
    const value = view.getUint16(inputTables + 2 * (ink * inputEntries + share * (inputEntries - 1)));
    const place = (value / 65_535) * (grid - 1);
    if (place !== Math.round(place)) throw new Error("its curves do not end at corners of the table");
    return place;
  };
  return (cmyk) => {
    if (cmyk.some((share) => share % (CORNERS - 1) !== 0)) throw new Error("not a corner");
    const node = cmyk.reduce((index, share, ink) => index * grid + enter(ink, share), 0);
    const lab = [0, 1, 2].map((channel) => {
      const value = view.getUint16(table + 2 * (node * outputs + channel));
      const place = (value / 65_535) * (outputEntries - 1);
      const [low, part] = [Math.floor(place), place % 1];
      const at = (i: number): number =>
        view.getUint16(outputTables + 2 * (channel * outputEntries + Math.min(outputEntries - 1, i)));
      return at(low) + (at(low + 1) - at(low)) * part;
    });
    // Lab of version 2 in 16 bits: L* 100 is FF00, a* and b* from -128 by 256ths.
    return [(lab[0]! * 100) / 65_280, lab[1]! / 256 - 128, lab[2]! / 256 - 128];
  };
}
