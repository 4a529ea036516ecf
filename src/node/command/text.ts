/** Breaks text into lines of at most `width` characters, at spaces; longer words stand alone. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return line === "" ? lines : [...lines, line];
}

/** Wrapped text whose lines, the first left out, begin with `indent` spaces. */
export const hang = (text: string, indent: number, width: number): string =>
  wrap(text, Math.max(20, width - indent)).join(`\n${" ".repeat(indent)}`);

/** A number of bytes as people say it: `812 B`, `41 kB`, `1.3 MB` (1 kB is 1000 bytes). */
export function sayBytes(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`;
  const [unit, size] = bytes < 999_500 ? ["kB", bytes / 1000] : ["MB", bytes / 1e6];
  return `${size < 9.95 ? size.toFixed(1) : String(Math.round(size))} ${unit}`;
}

/** `1 file`, `3 files`. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Micrometres as millimetres, without needless digits. */
export const sayMm = (um: number): string => String(um / 1000);

/** Lines of cells in columns, two spaces apart; the last column is left as it is. */
export function columns(rows: readonly (readonly string[])[], right: readonly number[] = []): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, cell.length);
    });
  return rows.map((row) =>
    row
      .map((cell, i) =>
        right.includes(i) ? cell.padStart(widths[i]!) : i === row.length - 1 ? cell : cell.padEnd(widths[i]!),
      )
      .join("  "),
  );
}
