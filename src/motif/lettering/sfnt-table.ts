/** One table of a .ttf or .otf file, by its tag (OpenType 1.9, "Table directory"); undefined when there is none. */
export function sfntTable(bytes: Uint8Array, tag: string): DataView | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint16(4);
  for (let at = 12; at < 12 + 16 * count; at += 16) {
    if ([0, 1, 2, 3].some((i) => view.getUint8(at + i) !== tag.charCodeAt(i))) continue;
    return new DataView(bytes.buffer, bytes.byteOffset + view.getUint32(at + 8), view.getUint32(at + 12));
  }
  return undefined;
}
