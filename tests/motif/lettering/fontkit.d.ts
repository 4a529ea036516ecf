// fontkit has no types of its own; tests use it as an outside reference only.
declare module "fontkit" {
  export function create(bytes: Uint8Array): unknown;
}
