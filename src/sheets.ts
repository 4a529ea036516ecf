// The door for pages that show patterns: sprigwright/sheets.

export { listingCsv, listingJson } from "./output/listing/files.ts";
export {
  type BothUnits,
  type ListedColorway,
  type Listing,
  type ListingOptions,
  type ListingWarning,
  listing,
  sayListingWarning,
} from "./output/listing/listing.ts";
export { type ArtPrintOptions, artPrint } from "./output/sheet/art-print.ts";
export { type CalendarOptions, type CalendarPicture, calendar } from "./output/sheet/calendar/calendar.ts";
export type { CalendarNames } from "./output/sheet/calendar/names.ts";
export {
  type ColorwaySheetOptions,
  colorwaySheet,
  type ScoredColorway,
} from "./output/sheet/colorway-sheet.ts";
export { type PagesPdfOptions, pagesToPdf } from "./output/sheet/draw/to-pdf.ts";
export { type PagePngOptions, pageToPng } from "./output/sheet/draw/to-png.ts";
export { pageToSvg } from "./output/sheet/draw/to-svg.ts";
export { type LineSheetOptions, lineSheet } from "./output/sheet/line-sheet.ts";
export type { Cloth, Fill, Page, SheetItem } from "./output/sheet/page.ts";
export { type StrikeOffOptions, strikeOffSheet } from "./output/sheet/strike-off.ts";
export { type FrameSize, type IsoSize, type PrintSize, printSizes } from "./units/print-sizes.ts";
