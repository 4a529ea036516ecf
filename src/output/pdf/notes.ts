import {
  decodePDFRawStream,
  type PDFContext,
  PDFDict,
  PDFDocument,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from "@cantoo/pdf-lib";
import { strFromU8 } from "fflate";
import { badInput, wrongType } from "../../errors/catalogue.ts";
import { packed } from "./resources.ts";

/** The name under which a file keeps what only this library reads (ISO 32000-1, 14.5: page-piece dictionaries). */
const PIECE = "Sprigwright";

/** Most bytes that notes may unpack to. */
const MOST = 16_777_216;

/** Text as a compressed stream in a page-piece dictionary, which other programs keep and do not show. */
export function keepNotes(context: PDFContext, notes: string): PDFObject {
  // The standard wants a time here; ours is always the same one.
  const piece = { LastModified: PDFString.of("D:20000101000000Z"), Private: packed(context, notes) };
  return context.obj({ [PIECE]: piece });
}

/**
 * The notes that {@link keepNotes} put into a PDF, whatever program saved it since; undefined where there are none.
 * @throws SprigwrightError `bad-pdf` for bytes that are no PDF, or notes of more than 16 MiB; `wrong-type`
 */
export async function notesInPdf(bytes: Uint8Array, where = "notesInPdf"): Promise<string | undefined> {
  if (!(bytes instanceof Uint8Array)) throw wrongType(where, bytes, "the bytes of a PDF, a Uint8Array");
  try {
    const pdf = await PDFDocument.load(bytes, {
      updateMetadata: false,
      parseSpeed: Number.POSITIVE_INFINITY,
    });
    const stream = pdf.catalog
      .lookupMaybe(PDFName.of("PieceInfo"), PDFDict)
      ?.lookupMaybe(PDFName.of(PIECE), PDFDict)
      ?.lookup(PDFName.of("Private"));
    if (!(stream instanceof PDFRawStream)) return undefined;
    const text = decodePDFRawStream(stream).getBytes(MOST + 1);
    if (text.length > MOST) throw new Error(`it holds notes of more than ${MOST} bytes`);
    return strFromU8(Uint8Array.from(text));
  } catch (cause) {
    const why = cause instanceof Error ? cause.message.slice(0, 200) : "it cannot be read";
    throw badInput(
      "bad-pdf",
      where,
      `this cannot be read as a PDF: ${why}`,
      "give the whole file, unencrypted",
      cause,
    );
  }
}
