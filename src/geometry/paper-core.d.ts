// Packages whose entry has no types of its own.

/** paper's core build, with the types of the full package. */
declare module "paper/dist/paper-core.js" {
  const core: Omit<paper.PaperScope, "PaperScript">;
  export default core;
}
