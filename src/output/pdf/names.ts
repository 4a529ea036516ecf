import { strToU8 } from "fflate";

/**
 * Any text as a PDF name for `PDFName.of`: its UTF-8 bytes, all but plain letters and digits as `#xx`
 * (ISO 32000-1, 7.3.5, which also recommends UTF-8).
 */
export const nameText = (text: string): string =>
  Array.from(strToU8(text), (byte) => {
    const letter = String.fromCharCode(byte);
    return /[A-Za-z0-9._-]/.test(letter) ? letter : `#${byte.toString(16).toUpperCase().padStart(2, "0")}`;
  }).join("");
