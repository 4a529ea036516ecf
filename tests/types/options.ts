// Compiled, never run: options that do not exist, or are of the wrong kind, do not compile.
import {
  buildTile,
  halfDrop,
  inspect,
  type Length,
  leaf,
  mirror,
  rasterize,
  set,
  straight,
  type Tile,
  toss,
} from "sprigwright";

export const lengths: Length[] = [12, "12mm", "1.2cm", "6.4in", "-3mm"];
// @ts-expect-error: a pixel has no size
export const pixels: Length = "50px";
// @ts-expect-error: a unit is needed in text
export const bare: Length = "50";

// @ts-expect-error: no option "hight"
halfDrop({ width: 160, hight: 120 });
// @ts-expect-error: the height must be given
straight({ width: 160 });
// @ts-expect-error: no such axis
mirror({ width: 160, height: 120, axis: "sideways" });
// @ts-expect-error: no option "len"
leaf({ len: 18 });
// @ts-expect-error: a length, not pixels
leaf({ length: "18px" });
leaf();
leaf({ length: "1.8cm", vary: 0.4, variants: 3 });

const motifs = [{ motif: leaf() }];
toss({ motifs, gap: "2mm", density: "packed", direction: "two-way" });
// @ts-expect-error: no option "padding"
toss({ motifs, padding: 3 });
// @ts-expect-error: no such density
toss({ motifs, density: "dense" });
// @ts-expect-error: no option "weight" of an entry
toss({ motifs: [{ motif: leaf(), weight: 3 }] });
// @ts-expect-error: a motif, not a name
toss({ motifs: [{ motif: "leaf" }] });
// @ts-expect-error: a repeat is no motif
toss({ motifs: [{ motif: straight({ width: 9, height: 9 }) }] });
// @ts-expect-error: motifs must be given
toss({ gap: 3 });
// @ts-expect-error: no option "cols"
set({ motifs: [leaf()], cols: 3, rows: 2 });

export async function prints(tile: Tile): Promise<void> {
  inspect(tile, { surface: "fabric" });
  // @ts-expect-error: no such surface
  inspect(tile, { surface: "silk" });
  await rasterize(tile, { dpi: 150 });
  // @ts-expect-error: no option "ppi"
  await rasterize(tile, { ppi: 150 });
  // @ts-expect-error: a tile is frozen
  tile.name = "other";
  // @ts-expect-error: a tile is no pattern
  await buildTile(tile);
}
