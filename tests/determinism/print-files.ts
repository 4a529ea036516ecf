// Print files of a tile made by hand, as checksums: what two engines have to agree on.
import { crc32 } from "../../src/output/png/chunks.ts";
import { plateToPng, plateToSvg, separations, toPdf } from "../../src/print.ts";
import { dawn, harbour } from "../output/harbour.ts";

const bytes = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255);

/** Everything that must not differ, as one line of text. */
export async function printed(): Promise<string> {
  const pdf = await toPdf(harbour, dawn, {
    cut: { width: 70, height: "4in" },
    bleed: 3,
    inks: "spot",
    rights: "Hollin Quay",
  });
  const plates = await separations(harbour, { trap: 0.3, lightToDark: dawn, bleed: 2 });
  const words = [`pdf ${pdf.length} ${crc32(pdf)}`];
  for (const plate of plates) {
    const png = await plateToPng(plate, { dpi: 200, depth: 1 });
    words.push(`${plate.role} ${crc32(bytes(plateToSvg(plate)))} ${crc32(png)}`);
  }
  return words.join(", ");
}
