import { VERSION } from "../tile/version.ts";

/** What a file says about itself; every part may be left out. */
export interface About {
  readonly title?: string | undefined;
  /** What it shows, in a word or two or a sentence. */
  readonly subject?: string | undefined;
  /** Who holds the rights, and what others may do with it. */
  readonly rights?: string | undefined;
  /** Who made it. */
  readonly creator?: string | undefined;
}

/**
 * An XMP packet (ISO 16684-1) with Dublin Core's title, description, rights and creator, for PDF, PNG and SVG alike.
 * Without dates, so that the same file has the same bytes.
 */
export function xmpPacket(about: About, mediaType: string): string {
  const { title, subject, rights, creator } = about;
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
 <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
  <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
   <dc:format>${mediaType}</dc:format>
${inLanguage("title", title)}${inLanguage("description", subject)}${inLanguage("rights", rights)}${
  creator ? `   <dc:creator><rdf:Seq><rdf:li>${xmlText(creator)}</rdf:li></rdf:Seq></dc:creator>\n` : ""
}   <xmp:CreatorTool>Sprigwright ${VERSION}</xmp:CreatorTool>
${mediaType === "application/pdf" ? `   <pdf:Producer>Sprigwright ${VERSION}</pdf:Producer>\n` : ""}  </rdf:Description>
 </rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`;
}

const inLanguage = (name: string, text: string | undefined): string =>
  text
    ? `   <dc:${name}><rdf:Alt><rdf:li xml:lang="x-default">${xmlText(text)}</rdf:li></rdf:Alt></dc:${name}>\n`
    : "";

/** Text as XML 1.0 takes it: marks escaped, and what no XML file may hold left out. */
export const xmlText = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Cs}/gu, "")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
