/** A shape of the file that is not in the motif, and why. */
export interface Dropped {
  /** `<path id="stem"> on line 12`; a group stands for all that is in it. */
  readonly element: string;
  /**
   * `hidden`: not displayed, not visible or wholly transparent. `empty`: it draws no outline. `unpainted`: neither
   * fill nor stroke. `no-area`: it covers nothing at this size. `clipped`: all of it lies outside its clip path.
   * `covered`: others hide it. `unsupported`: text, images and the like. `page`: it is the paper, and was to be dropped.
   */
  readonly why: "hidden" | "empty" | "unpainted" | "no-area" | "clipped" | "covered" | "unsupported" | "page";
}
