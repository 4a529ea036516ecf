// The rules of the house, as functions from a file's place and text to what breaks them.
import { posix } from "node:path";
import ts from "typescript";

export interface Source {
  /** Path below src, with "/". */
  readonly file: string;
  readonly text: string;
}

interface Import {
  readonly from: string;
  /** Whether only types are imported, so that nothing is loaded. */
  readonly typeOnly: boolean;
}

/** Stages in the order in which they may build on each other; `check` and `output` stand side by side. */
const ORDER = [
  ["errors"],
  ["units"],
  ["params"],
  ["seed"],
  ["geometry"],
  ["motif"],
  ["layout"],
  ["repeat"],
  ["tile"],
  ["colorway"],
  ["pattern"],
  ["check", "output"],
  ["plugin"],
  ["node"],
  ["preview"],
];
const rank = (folder: string): number => ORDER.findIndex((stage) => stage.includes(folder));
const folderOf = (file: string): string => (file.includes("/") ? file.slice(0, file.indexOf("/")) : "");

const trees = new WeakMap<Source, ts.SourceFile>();
function parse(source: Source): ts.SourceFile {
  const known = trees.get(source);
  if (known) return known;
  const tree = ts.createSourceFile(source.file, source.text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TS);
  trees.set(source, tree);
  return tree;
}

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

export function importsOf(source: Source): Import[] {
  const found: Import[] = [];
  walk(parse(source), (node) => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const named = node.importClause?.namedBindings;
      const typeOnly =
        node.importClause?.isTypeOnly === true ||
        (!!named &&
          !node.importClause?.name &&
          ts.isNamedImports(named) &&
          named.elements.every((e) => e.isTypeOnly));
      found.push({ from: node.moduleSpecifier.text, typeOnly });
    }
    if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
      found.push({ from: node.moduleSpecifier.text, typeOnly: node.isTypeOnly });
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [to] = node.arguments;
      found.push({ from: to && ts.isStringLiteral(to) ? to.text : "?", typeOnly: false });
    }
  });
  return found;
}

const targetOf = (file: string, from: string): string | undefined =>
  from.startsWith(".") ? posix.join(posix.dirname(file), from) : undefined;

/** A stage imports only from itself and from stages before it; the doors at the top are for users alone. */
export function breaksOrder(source: Source): string[] {
  const own = folderOf(source.file);
  if (own === "") return [];
  if (rank(own) < 0) return [`${source.file}: "${own}" is no stage of the design`];
  return importsOf(source).flatMap(({ from }) => {
    const target = targetOf(source.file, from);
    if (target === undefined) return [];
    const other = folderOf(target);
    // A parser of artwork or lettering may not be reached from the outside but through its door.
    if (own !== "node" && other === "") return [`${source.file} imports the door ${target}`];
    if (other === own || other === "") return [];
    return rank(other) >= 0 && rank(other) < rank(own) ? [] : [`${source.file} imports ${target}`];
  });
}

/** Files that load each other in a circle. */
export function circles(sources: readonly Source[], withTypes = false): string[] {
  const graph = new Map(
    sources.map((source) => [
      source.file,
      importsOf(source).flatMap(({ from, typeOnly }) => {
        const target = targetOf(source.file, from);
        return target !== undefined && (withTypes || !typeOnly) ? [target] : [];
      }),
    ]),
  );
  const state = new Map<string, "open" | "done">();
  const found: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    if (state.get(file) === "done") return;
    if (state.get(file) === "open") {
      found.push([...trail.slice(trail.indexOf(file)), file].join(" > "));
      return;
    }
    state.set(file, "open");
    for (const next of graph.get(file) ?? []) visit(next, [...trail, file]);
    state.set(file, "done");
  };
  for (const { file } of sources) visit(file, []);
  return found;
}

const ON_NODE = /^(node|preview)\/|^(node|command)\.ts$/;

/** node:* and Node's bare names only where Node is. */
export function usesNode(source: Source): string[] {
  if (ON_NODE.test(source.file)) return [];
  const bare = /^(node:|(fs|path|os|url|crypto|buffer|stream|worker_threads|zlib|util|process|module)(\/|$))/;
  return importsOf(source)
    .filter(({ from }) => bare.test(from))
    .map(({ from }) => `${source.file} imports ${from}`);
}

/** Which folders may import which package. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  paper: /^geometry\//,
  "clipper2-ts": /^geometry\//,
  seedrandom: /^seed\//,
  "@noble/hashes": /^tile\/|^output\/pdf\//,
  culori: /^colorway\/|^motif\/artwork\//,
  fflate: /^output\/|^motif\/lettering\/|^motif\/artwork\/trace\/png\//,
  "fast-png": /^motif\/artwork\/trace\/png\//,
  "@xmldom/xmldom": /^motif\/artwork\//,
  "svg-pathdata": /^geometry\//,
  "lcms-wasm": /^colorway\/proof\//,
  "opentype.js": /^motif\/lettering\//,
  "@cantoo/pdf-lib": /^output\/pdf\//,
  sharp: /^node\/tiff\//,
  jiti: /^node\//,
  tinypool: /^node\//,
};

/** Each package is known to the one folder that needs it. */
export function strayPackages(source: Source): string[] {
  return importsOf(source).flatMap(({ from }) => {
    if (from.startsWith(".") || from.startsWith("node:")) return [];
    const name = from
      .split("/")
      .slice(0, from.startsWith("@") ? 2 : 1)
      .join("/");
    return PACKAGES[name]?.test(source.file) ? [] : [`${source.file} imports ${from}`];
  });
}

/** What IEEE 754 and the language fix to the last bit in every engine. */
const EXACT = new Set([
  "sqrt",
  "abs",
  "floor",
  "ceil",
  "round",
  "trunc",
  "sign",
  "min",
  "max",
  "imul",
  "fround",
  "clz32",
]);

/** Constants, which every engine has as the nearest double. */
const CONSTANTS = new Set(["PI", "E", "SQRT2", "SQRT1_2", "LN2", "LN10", "LOG2E", "LOG10E"]);

/** Mathematics that differs between engines, and clocks, anywhere that bytes are decided. */
export function inexact(source: Source): string[] {
  if (ON_NODE.test(source.file)) return [];
  const found: string[] = [];
  const tree = parse(source);
  const report = (node: ts.Node, what: string): void => {
    const { line } = tree.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${source.file}:${line + 1} ${what}`);
  };
  walk(tree, (node) => {
    if (
      ts.isBinaryExpression(node) &&
      [ts.SyntaxKind.AsteriskAsteriskToken, ts.SyntaxKind.AsteriskAsteriskEqualsToken].includes(
        node.operatorToken.kind,
      )
    )
      report(node, "**");
    if (!ts.isIdentifier(node) || !["Math", "Date", "performance", "Temporal", "crypto"].includes(node.text))
      return;
    const { parent } = node;
    const asName =
      (ts.isPropertyAccessExpression(parent) &&
        parent.name === node &&
        !/^(globalThis|self|window)$/.test(parent.expression.getText())) ||
      ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node);
    if (asName || ts.isTypeReferenceNode(parent) || ts.isTypeQueryNode(parent)) return;
    if (node.text !== "Math") return report(node, node.text);
    if (ts.isPropertyAccessExpression(parent) && parent.expression === node) {
      if (!EXACT.has(parent.name.text) && !CONSTANTS.has(parent.name.text))
        report(node, `Math.${parent.name.text}`);
    } else report(node, "Math as a value");
  });
  return found;
}

/** A folder's name says what is in it. */
export const vagueFolders = ({ file }: Source): string[] =>
  /(^|\/)(utils?|helpers?|common|shared|misc|lib)(\/|\.ts$)/.test(file) ? [file] : [];

export const linesOf = ({ text }: Source): number => text.split("\n").length - (text.endsWith("\n") ? 1 : 0);

/** No file is longer than 350 lines. */
export const tooLong = (source: Source): string[] =>
  linesOf(source) > 350 ? [`${source.file}: ${linesOf(source)} lines`] : [];

/** Named exports only, and nothing done at load: no default export, no bare call or loop at the top. */
export function worksAtLoad(source: Source): string[] {
  if (source.file === "command.ts") return [];
  return parse(source).statements.flatMap((statement) => {
    if (ts.isExportAssignment(statement)) return [`${source.file}: default export`];
    const bare =
      ts.isExpressionStatement(statement) ||
      ts.isIfStatement(statement) ||
      ts.isForStatement(statement) ||
      ts.isForOfStatement(statement) ||
      ts.isTryStatement(statement);
    return bare ? [`${source.file}: ${statement.getText().slice(0, 60)}`] : [];
  });
}
