import { type PDFContext, PDFHexString, PDFName, type PDFObject, type PDFRef } from "@cantoo/pdf-lib";
import { strToU8, zlibSync } from "fflate";
import { inkBytes } from "../../colorway/ink.ts";
import { type Box, boxOf, type Path } from "../../geometry/path.ts";
import { decimal, pathOperators } from "./content.ts";
import { nameText } from "./names.ts";
import type { PdfInk, ProcessInk } from "./page.ts";

/** What content streams refer to by name, made at first use and written once for the whole document. */
export interface Resources {
  /** The operators that choose an ink for filling. */
  readonly ink: (ink: PdfInk) => string;
  /** The name of a form that fills a path in whatever ink is chosen. */
  readonly form: (path: Path) => string;
  /** The name of a form with content of its own, within a box (µm), that sets down the form `of`. */
  readonly group: (content: string, box: Box, of: string) => string;
  /** The name of a layer's property list. */
  readonly layer: (name: string) => string;
  /** The resource dictionary, and the layers in their order, when all content is made. */
  readonly finish: () => { dictionary: PDFRef; layers: readonly PDFRef[] };
}

/** Text as a stream, compressed by the library's own deflate: the same bytes in every engine. */
export function packed(
  context: PDFContext,
  text: string | Uint8Array,
  more: Record<string, PDFObject | string | number> = {},
): PDFRef {
  const bytes = typeof text === "string" ? strToU8(text) : text;
  // `mem` is given because fflate's own choice of it goes through Math.log, which differs between engines.
  const data = zlibSync(bytes, { level: 9, mem: 8 });
  return context.register(context.stream(data, { ...more, Filter: "FlateDecode" }));
}

export function createResources(context: PDFContext, layerNames: readonly string[]): Resources {
  const spaces = new Map<string, { name: string; space: PDFObject }>();
  const forms = new Map<Path, string>();
  const objects = new Map<string, PDFRef>();
  const layers = new Map<string, { name: string; ref: PDFRef }>();
  const dictionary = context.nextRef();

  const addForm = (content: string, box: Box, of?: string): string => {
    const name = `F${objects.size}`;
    const bounds = [box.minX, box.minY, box.maxX, box.maxY].map((um) => um / 1000);
    objects.set(
      name,
      packed(context, content, {
        Type: "XObject",
        Subtype: "Form",
        BBox: context.obj(bounds),
        Resources: context.obj(of === undefined ? {} : { XObject: { [of]: objects.get(of)! } }),
      }),
    );
    return name;
  };

  const layer = (title: string): string => {
    const known = layers.get(title);
    if (known) return known.name;
    const name = `L${layers.size}`;
    const ref = context.register(context.obj({ Type: "OCG", Name: PDFHexString.fromText(title) }));
    layers.set(title, { name, ref });
    return name;
  };
  for (const name of layerNames) layer(name);

  const separation = (colorant: string, shownAs: ProcessInk): string => {
    const key = JSON.stringify([colorant, shownAs]);
    const known = spaces.get(key);
    if (known) return known.name;
    const full = components(shownAs);
    const none = full.map(() => ("cmyk" in shownAs ? 0 : 1));
    const tint = context.obj({ FunctionType: 2, Domain: [0, 1], C0: none, C1: full, N: 1 });
    const base = "cmyk" in shownAs ? "DeviceCMYK" : "DeviceRGB";
    const space = context.obj(["Separation", PDFName.of(nameText(colorant)), base, context.register(tint)]);
    const name = `S${spaces.size}`;
    spaces.set(key, { name, space: context.register(space) });
    return name;
  };

  return {
    ink: (ink) => {
      if ("spot" in ink) return `/${separation(ink.spot, ink.shownAs)} cs 1 scn`;
      const values = components(ink).map((value) => decimal(value));
      return `${values.join(" ")} ${"cmyk" in ink ? "k" : "rg"}`;
    },
    form: (path) => {
      const known = forms.get(path);
      if (known !== undefined) return known;
      const name = addForm(`${pathOperators(path)}\nf\n`, boxOf(path));
      forms.set(path, name);
      return name;
    },
    group: addForm,
    layer,
    finish: () => {
      context.assign(
        dictionary,
        context.obj({
          ColorSpace: Object.fromEntries([...spaces.values()].map(({ name, space }) => [name, space])),
          XObject: Object.fromEntries(objects),
          Properties: Object.fromEntries([...layers.values()].map(({ name, ref }) => [name, ref])),
        }),
      );
      return { dictionary, layers: [...layers.values()].map(({ ref }) => ref) };
    },
  };
}

const components = (ink: ProcessInk): readonly number[] =>
  "cmyk" in ink ? ink.cmyk : inkBytes(ink.rgb).map((byte) => Math.round((byte / 255) * 1e6) / 1e6);
