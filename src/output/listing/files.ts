import { wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import type { Listing } from "./listing.ts";

/** A listing as the text of `listing.json`. */
export const listingJson = (listing: Listing): string => `${JSON.stringify(listing, null, 2)}\n`;

/** Columns of a listing's table, in order, and what each says of one colorway. */
const COLUMNS: Readonly<
  Record<string, (listing: Listing, colorway: Listing["colorways"][number]) => string>
> = {
  name: ({ name }) => name,
  title: ({ title }) => title,
  subject: ({ subject }) => subject,
  hero: ({ hero }) => (hero ? "yes" : "no"),
  colorway: (_, { name }) => name,
  alt: (_, { alt }) => alt,
  tags: ({ tags }) => tags.join(", "),
  repeat: ({ repeat }) => repeat.kind,
  "width mm": ({ repeat }) => String(repeat.mm.width),
  "height mm": ({ repeat }) => String(repeat.mm.height),
  "width in": ({ repeat }) => String(repeat.in.width),
  "height in": ({ repeat }) => String(repeat.in.height),
  dpi: ({ dpi }) => String(dpi),
  inks: (_, { inks }) =>
    Object.entries(inks)
      .map(([role, ink]) => `${role} ${ink}`)
      .join(", "),
  files: ({ files }, colorway) => [...colorway.files, ...files].join(", "),
};

/**
 * Listings as one table in CSV (RFC 4180): a row for each colorway, in UTF-8 and with a heading. What a spreadsheet would
 * take for a formula is kept as text by an apostrophe before it (OWASP, CSV Injection).
 * @throws SprigwrightError `wrong-type`
 */
export function listingCsv(listings: Listing | readonly Listing[]): string {
  const all = Array.isArray(listings) ? (listings as readonly Listing[]) : [listings as Listing];
  for (const one of all)
    if (!isRecord(one) || !Array.isArray(one.colorways))
      throw wrongType("listingCsv", one, "what listing gives, or a list of that");
  const rows = all.flatMap((one) =>
    one.colorways.map((colorway) => Object.values(COLUMNS).map((say) => say(one, colorway))),
  );
  return [Object.keys(COLUMNS), ...rows].map((row) => `${row.map(csvField).join(",")}\r\n`).join("");
}

/** A field as CSV writes it. */
function csvField(value: string): string {
  const safe = /^[\s]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/.test(value) ? `'${value}` : value;
  return /[",\r\n]|^\s|\s$/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
