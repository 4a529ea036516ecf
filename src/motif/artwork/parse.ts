import { DOMParser, type Document, type Element, ParseError } from "@xmldom/xmldom";
import { badInput } from "../../errors/catalogue.ts";
import { withoutEntities } from "./entities.ts";
import { LIMITS, tooLarge } from "./limits.ts";

/** SVG's own namespace. */
const SVG = "http://www.w3.org/2000/svg";

/**
 * The root element of an SVG file.
 * Nothing outside the text is ever fetched, and no entity is ever expanded.
 * @throws SprigwrightError `not-svg`, `malformed-svg` (with the line), `unsafe-svg`, `artwork-too-large`
 */
export function parseSvg(text: string): Element {
  if (text.length > LIMITS.characters) throw tooLarge("svg", `${text.length} characters`);
  const source = text.startsWith("\ufeff") ? text.slice(1) : text;
  if (!source.trimStart().startsWith("<"))
    throw notSvg(
      source.trim() === ""
        ? "the text is empty"
        : /^[^\n<]{1,300}\.svgz?$/i.test(source.trim())
          ? "it looks like the name of a file; read the file first"
          : "it is not XML",
    );
  const plain = withoutEntities(source);
  if (countTags(plain) > LIMITS.elements) throw tooLarge("svg", `more than ${LIMITS.elements} elements`);
  const root = parseXml(withNamespace(plain)).documentElement;
  if (root?.localName !== "svg" || root.namespaceURI !== SVG)
    throw notSvg(`its root element is <${root?.nodeName ?? "none"}>`);
  return root;
}

function parseXml(source: string): Document {
  let problem = "";
  const onError = (_level: string, message: string): void => {
    problem = message;
    throw new Error(message);
  };
  try {
    return new DOMParser({ onError }).parseFromString(source, "image/svg+xml");
  } catch (cause) {
    const line = (cause instanceof ParseError && (cause.locator?.lineNumber as number | undefined)) || 0;
    const said = (problem || (cause instanceof Error ? cause.message : "")).split("\n")[0]!.slice(0, 120);
    const entity = /entity not found: ?(&[\w.-]{1,60};?)/.exec(said)?.[1];
    const prefix = /prefix is non-null and namespace is null/.test(said);
    throw badInput(
      "malformed-svg",
      line > 0 ? `svg > line ${line}` : "svg",
      entity
        ? `the file uses ${entity}, which it does not declare`
        : prefix
          ? "the file uses a prefix, such as xlink: or inkscape:, that it does not declare"
          : `the file is not well-formed XML: ${said}`,
      entity
        ? "write the character itself, or &amp; for a plain &"
        : prefix
          ? 'add it to the <svg> tag, such as xmlns:xlink="http://www.w3.org/1999/xlink", or save the file again from its editor'
          : "mend the file there, or save it again from its editor",
      cause,
    );
  }
}

/** A drawing that was cut out of a web page lacks the namespace that a file has to name. */
function withNamespace(source: string): string {
  const at = source.indexOf("<svg");
  const end = at < 0 ? -1 : source.indexOf(">", at);
  if (end < 0 || !/[\s/>]/.test(source[at + 4]!) || /\sxmlns\s{0,4}=/.test(source.slice(at, end)))
    return source;
  return `${source.slice(0, at + 4)} xmlns="${SVG}"${source.slice(at + 4)}`;
}

function countTags(source: string): number {
  let count = 0;
  for (let at = source.indexOf("<"); at >= 0; at = source.indexOf("<", at + 1)) {
    const next = source.charCodeAt(at + 1);
    if (next !== 47 && next !== 33 && next !== 63) count++; // neither "/" nor "!" nor "?"
  }
  return count;
}

const notSvg = (what: string): Error =>
  badInput(
    "not-svg",
    "svg",
    `this is not an SVG drawing: ${what}`,
    "give the text of an .svg file, from <svg to </svg>",
  );

/** Elements of SVG right inside an element; those of editors' own namespaces are passed over. */
export function childElements(element: Element): Element[] {
  const found: Element[] = [];
  for (let node = element.firstChild; node; node = node.nextSibling)
    if (node.nodeType === 1 && (node as Element).namespaceURI === SVG) found.push(node as Element);
  return found;
}

/** How messages name an element: `<path id="stem"> on line 12`. */
export function called(element: Element): string {
  const id = element.getAttribute("id");
  const named = id ? ` id="${id.slice(0, 40)}"` : "";
  return `<${element.nodeName.slice(0, 40)}${named}> on line ${element.lineNumber ?? "?"}`;
}
