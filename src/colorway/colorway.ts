/**
 * A name and an ink for every role, the ground included. Inks are `#rrggbb`, 8-bit sRGB.
 * Colour never touches geometry: a colorway is a lookup on a finished tile.
 */
export interface Colorway<R extends string = string> {
  readonly name: string;
  readonly inks: Readonly<Record<R | "ground", string>>;
}
