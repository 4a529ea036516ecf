import { PDFContext, PDFHexString, type PDFObject, PDFString, PDFWriter } from "@cantoo/pdf-lib";
import { strToU8 } from "fflate";
import { readProfile } from "../../colorway/proof/read-profile.ts";
import { VERSION } from "../../tile/version.ts";
import { xmpPacket } from "../xmp.ts";
import { decimal, POINTS_PER_MM } from "./content.ts";
import { fileId } from "./file-id.ts";
import { keepNotes } from "./notes.ts";
import type { PdfDocument, PdfPage, PrintCondition } from "./page.ts";
import { pageContent } from "./paint.ts";
import { createResources, packed } from "./resources.ts";

/**
 * A PDF 1.7 file (ISO 32000-1): vector, at true size, the same bytes for the same document in every engine.
 * It holds no dates, and its ID is taken from its content.
 * @throws SprigwrightError `bad-profile`
 */
export async function writePdf(document: PdfDocument): Promise<Uint8Array> {
  const context = PDFContext.create();
  const [catalog, tree] = [context.nextRef(), context.nextRef()];
  const resources = createResources(context, document.layers ?? []);
  const contents = document.pages.map((page) => pageContent(page, resources));
  const { dictionary, layers } = resources.finish();
  const pages = document.pages.map((page, i) =>
    context.register(
      context.obj({
        Type: "Page",
        Parent: tree,
        ...boxes(page),
        Resources: dictionary,
        Contents: packed(context, contents[i]!),
      }),
    ),
  );
  context.assign(tree, context.obj({ Type: "Pages", Kids: pages, Count: pages.length }));
  // Metadata stays plain, so that any program finds it.
  const xmp = xmpPacket(document, "application/pdf");
  const metadata = context.stream(strToU8(xmp), { Type: "Metadata", Subtype: "XML" });
  const { condition, notes } = document;
  context.assign(
    catalog,
    context.obj({
      Type: "Catalog",
      Pages: tree,
      Metadata: context.register(metadata),
      OCProperties: layers.length > 0 ? { OCGs: layers, D: { Order: layers, ON: layers } } : undefined,
      OutputIntents: condition ? [outputIntent(context, condition)] : undefined,
      PieceInfo: notes === undefined ? undefined : keepNotes(context, notes),
      ViewerPreferences: { DisplayDocTitle: true },
    }),
  );
  context.trailerInfo.Root = catalog;
  context.trailerInfo.Info = context.register(information(context, document));
  const id = PDFHexString.of(
    fileId([xmp, ...contents, notes ?? "", condition?.name ?? "", condition?.profile ?? ""]),
  );
  context.trailerInfo.ID = context.obj([id, id]);
  return PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
}

/** The page's boxes in points; its upper left corner is at the top of the MediaBox. */
function boxes({ size, bleed, slug }: PdfPage): Record<string, number[]> {
  const box = (inset: number): number[] =>
    [inset, inset, size.width + 2 * (bleed + slug) - inset, size.height + 2 * (bleed + slug) - inset].map(
      (um) => Number(decimal((um / 1000) * POINTS_PER_MM, 4)),
    );
  return { MediaBox: box(0), BleedBox: box(slug), TrimBox: box(slug + bleed) };
}

/** ISO 32000-1, 14.11.5: the condition that the file is made for, with its profile. */
function outputIntent(context: PDFContext, { profile, name }: PrintCondition): PDFObject {
  const { channels } = readProfile(profile, "profile");
  return context.obj({
    Type: "OutputIntent",
    S: "GTS_PDFX",
    OutputConditionIdentifier: PDFHexString.fromText(name),
    Info: PDFHexString.fromText(name),
    DestOutputProfile: packed(context, profile, { N: channels }),
  });
}

function information(context: PDFContext, { title, subject, creator }: PdfDocument): PDFObject {
  const text = (given: string | undefined): PDFHexString | undefined =>
    given ? PDFHexString.fromText(given) : undefined;
  return context.obj({
    Title: text(title),
    Subject: text(subject),
    Author: text(creator),
    Creator: PDFString.of(`Sprigwright ${VERSION}`),
    Producer: PDFString.of(`Sprigwright ${VERSION}`),
  });
}
