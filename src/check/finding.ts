/** A fact about a tile that a print might suffer from. Data: its sentence is made by `sayFinding`. */
export interface Finding {
  /** The check that found it. */
  readonly rule: string;
  /** `fault`: the print will be wrong. `warning`: look at it before printing. */
  readonly severity: "fault" | "warning";
  /** The role it is about, where it is about one. */
  readonly role?: string;
  /** The colorway it is about, where it is about one. */
  readonly colorway?: string;
  /** Ids of the placements that it is about, where it is about any: see `tile.placements`. */
  readonly motifs?: readonly string[];
  /** Where to look, where that is one place: mm from the upper left corner of the block. */
  readonly at?: readonly [x: number, y: number];
  readonly measured: number | string;
  readonly limit: number | string;
  /** Unit of `measured` and `limit`; empty where they are names or plain numbers. */
  readonly unit: string;
  /** What would be right. */
  readonly fix: string;
}

/** What `inspect` returns. */
export interface Report {
  /** Whether there is no fault (there may be warnings). */
  readonly ok: boolean;
  readonly findings: readonly Finding[];
}
