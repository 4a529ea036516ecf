/** Least and most. */
export type Span = readonly [least: number, most: number];

/** One ink of a family, as ranges in OKLCH. */
export interface FamilyInk {
  readonly lightness: Span;
  readonly chroma: Span;
  /** Turns: where the hue may lie; or, in `beside`, how far from the leading hue, to the palette's own side. */
  readonly hue?: Span;
  readonly beside?: Span;
}

/** A character of palettes, stated as ranges. */
export interface Family {
  /** `sprigwright/name`. */
  readonly name: string;
  readonly about: string;
  /** Where the leading hue may lie, turns. */
  readonly lead: readonly Span[];
  /** How far lightness is drawn towards that at which its hue is strongest, 0..1: what keeps yellows from turning to olive. */
  readonly natural: number;
  /** Hues that it keeps away from where it can, since they are drab at its lightness. */
  readonly shun?: readonly Span[];
  /** The ground first, then in the order in which a palette needs them. Eight. */
  readonly inks: readonly FamilyInk[];
  /** Where the hues of a palette that is changed into the family go: arcs in turns, or one for all; default: they stay. */
  readonly hues?: readonly Span[] | "one";
}
