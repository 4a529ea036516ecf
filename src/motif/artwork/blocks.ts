/** Rules of a style sheet as what stands before their braces and in them; blocks within blocks (`@media`) stay in one piece. */
export function blocksOf(sheet: string): { readonly head: string; readonly body: string }[] {
  const text = withoutComments(sheet);
  const found: { head: string; body: string }[] = [];
  let [from, open, deep] = [0, 0, 0];
  for (let i = 0; i < text.length; i++) {
    const char = text[i]!;
    if (char === ";" && deep === 0) {
      const head = text.slice(from, i).trim(); // @import and @charset end so
      if (head.startsWith("@")) found.push({ head, body: "" });
      from = i + 1;
    } else if (char === "{" && deep++ === 0) open = i;
    else if (char === "}" && deep > 0 && --deep === 0) {
      found.push({ head: text.slice(from, open).trim(), body: text.slice(open + 1, i) });
      from = i + 1;
    }
  }
  return found;
}

function withoutComments(text: string): string {
  let kept = "";
  let from = 0;
  for (let at = text.indexOf("/*"); at >= 0; at = text.indexOf("/*", from)) {
    kept += text.slice(from, at);
    const end = text.indexOf("*/", at + 2);
    if (end < 0) return kept;
    from = end + 2;
  }
  return kept + text.slice(from);
}
