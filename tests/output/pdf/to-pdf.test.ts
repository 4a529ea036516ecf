import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { notesInPdf } from "../../../src/output/pdf/notes.ts";
import { type PdfOptions, recipeInPdf, toPdf } from "../../../src/print.ts";
import { refusalOf } from "../../given.ts";
import { dawn, harbour } from "../harbour.ts";

/** A PDF as pdf.js, a reader that has nothing to do with the writer, sees it. */
const read = async (bytes: Uint8Array) => getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
const refused = async (options: unknown): Promise<string> =>
  (await refusalOf(() => toPdf(harbour, dawn, options as PdfOptions))).code;
/** A header of an ICC profile and nothing else (ICC.1:2022, 7.2), which is as far as the library reads it. */
const profileFor = (space: string): Uint8Array => {
  const bytes = new Uint8Array(132);
  new DataView(bytes.buffer).setUint32(0, 132);
  bytes.set(Buffer.from(space.padEnd(4)), 16);
  bytes.set(Buffer.from("acsp"), 36);
  return bytes;
};

describe("a PDF of a tile", () => {
  it("is one page at true size: 50.8 x 25.4 mm are 144 x 72 points", async () => {
    const pdf = await read(await toPdf(harbour, dawn));
    expect(pdf.numPages).toBe(1);
    expect((await pdf.getPage(1)).view).toEqual([0, 0, 144, 72]);
    const cut = await read(
      await toPdf(harbour, dawn, { cut: { width: "2in", height: "3in" }, bleed: "0.5in" }),
    );
    expect((await cut.getPage(1)).view).toEqual([0, 0, 216, 288]);
  });

  it("has a layer for every role, what lies in front listed first", async () => {
    const pdf = await read(await toPdf(harbour, dawn));
    const config = (await pdf.getOptionalContentConfig()) as unknown as Iterable<[string, { name: string }]>;
    expect([...config].map(([, { name }]) => name)).toEqual(["flag", "float", "rope", "ground"]);
  });

  it("says in its metadata what it is and whose", async () => {
    const rights = "© Hollin Quay Prints <all & sundry>";
    const pdf = await read(await toPdf(harbour, dawn, { rights, subject: "buoy" }));
    const { info, metadata } = await pdf.getMetadata();
    expect(info).toMatchObject({ Title: "by-hand, dawn", Subject: "buoy", PDFFormatVersion: "1.7" });
    expect(metadata.get("dc:title")).toBe("by-hand, dawn");
    expect(metadata.get("dc:rights")).toBe(rights);
  });

  it("is the same to the byte when made again, and another for another order", async () => {
    const first = await toPdf(harbour, dawn, { bleed: 3 });
    expect(await toPdf(harbour, dawn, { bleed: 3 })).toEqual(first);
    expect(await toPdf(harbour, dawn, { bleed: 4 })).not.toEqual(first);
    expect(Buffer.from(first).toString("latin1")).not.toMatch(/CreationDate|ModDate/);
  });

  it("draws a shape once, however much cloth there is", async () => {
    const [one, many] = await Promise.all([
      toPdf(harbour, dawn),
      toPdf(harbour, dawn, { cut: { across: 60, down: 90 } }),
    ]);
    expect(many.length).toBeLessThan(one.length + 2500);
  });

  it("gives its recipe back", async () => {
    const { recipe, digest } = harbour;
    expect(await recipeInPdf(await toPdf(harbour, dawn))).toEqual({ recipe, colorway: "dawn", digest });
  });

  it("paints spots with their stand-ins, one plate for one name", async () => {
    const blue = { spot: "Tide blue #2 (ä)", cmyk: [0.9, 0.4, 0, 0.1] } as const;
    const inks = {
      ground: { cmyk: [0, 0, 0.1, 0] },
      rope: blue,
      float: { spot: "Buoy" },
      flag: blue,
    } as const;
    const text = Buffer.from(await toPdf(harbour, dawn, { inks })).toString("latin1");
    // Names in PDF are UTF-8 with odd bytes as #xx (ISO 32000-1, 7.3.5).
    expect(text.match(/\/Separation \/\S+ \/Device\w+/g)).toEqual([
      "/Separation /Tide#20blue#20#232#20#28#C3#A4#29 /DeviceCMYK",
      "/Separation /Buoy /DeviceRGB",
    ]);
  });

  it("holds the profile of its printing condition", async () => {
    const cmyk = { cmyk: [0, 0, 0, 1] } as const;
    const inks = { ground: cmyk, rope: cmyk, float: cmyk, flag: cmyk };
    const pdf = await toPdf(harbour, dawn, { inks, profile: profileFor("CMYK"), condition: "Quay press" });
    expect(Buffer.from(pdf).toString("latin1")).toContain("/DestOutputProfile");
    expect(await refused({ profile: profileFor("CMYK") })).toBe("wrong-profile");
    expect(await refused({ inks, profile: profileFor("RGB") })).toBe("wrong-profile");
    expect(await refused({ profile: profileFor("Lab") })).toBe("bad-profile");
    expect(await refused({ profile: profileFor("RGB").subarray(0, 131) })).toBe("bad-profile");
    expect(await refused({ profile: new Uint8Array(500) })).toBe("bad-profile");
    expect(await refused({ profile: "fogra39.icc" })).toBe("wrong-type");
    expect(await refused({ condition: "Quay press" })).toBe("missing-option");
  });

  it("is refused, with the reason, before any work", async () => {
    expect(await refused({ bleed: -1 })).toBe("length-range");
    expect(await refused({ bleed: "3px" })).toBe("wrong-type");
    expect(await refused({ cut: { width: 0, height: 10 } })).toBe("length-range");
    expect(await refused({ cut: { width: 6000, height: 10 } })).toBe("page-too-large");
    expect(await refused({ cut: "bolt" })).toBe("unknown-cut");
    expect(await refused({ bled: 3 })).toBe("unknown-option");
    expect(await refused({ rights: 7 })).toBe("wrong-type");
    expect(await refused({ inks: "cmyk" })).toBe("unknown-ink-choice");
    expect(await refused({ inks: { ground: { spot: "a" } } })).toBe("missing-ink");
    const all = { ground: { spot: "a" }, rope: { spot: "b" }, float: { spot: "c" }, flag: { spot: "d" } };
    expect(await refused({ inks: { ...all, flagg: { spot: "e" } } })).toBe("unknown-role");
    expect(await refused({ inks: { ...all, flag: { spot: "All" } } })).toBe("bad-spot-ink");
    expect(await refused({ inks: { ...all, flag: { spot: "a" } } })).toBe("bad-spot-ink");
    expect(await refused({ inks: { ...all, flag: { cmyk: [0, 0, 1] } } })).toBe("wrong-type");
    expect(await refused({ inks: { ...all, flag: { spot: "Buoy\u0000red" } } })).toBe("wrong-type");
    expect(await refused({ inks: { ...all, flag: { cmyk: [0, 0, 100, 0] } } })).toBe("number-range");
    expect(await refused({ inks: { ...all, flag: {} } })).toBe("missing-ink");
    const bare = { name: "bare", inks: { ...dawn.inks, flag: "" } };
    expect((await refusalOf(() => toPdf(harbour, bare))).code).toBe("missing-ink");
  });
});

describe("a file that claims to be a PDF", () => {
  it("is refused when it is none, and has no recipe when it is another's", async () => {
    expect((await refusalOf(() => recipeInPdf(new Uint8Array(40)))).code).toBe("bad-pdf");
    expect((await refusalOf(() => recipeInPdf("%PDF-1.7" as never))).code).toBe("wrong-type");
    // The smallest PDF that has a page, written by hand after ISO 32000-1, annex H.
    const bare =
      "%PDF-1.4\n1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj\n2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj\n3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]>> endobj\ntrailer <</Root 1 0 R>>\n%%EOF";
    expect(await recipeInPdf(Buffer.from(bare))).toBeUndefined();
  });

  it("does not unpack without an end", async () => {
    const { writePdf } = await import("../../../src/output/pdf/write.ts");
    const bomb = await writePdf({ pages: [], notes: "0".repeat(16_777_217) });
    expect(bomb.length).toBeLessThan(100_000);
    expect((await refusalOf(() => notesInPdf(bomb))).what).toContain("more than 16777216 bytes");
  });
});
