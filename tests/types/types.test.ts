import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { beforeAll, describe, expect, it } from "vitest";

const here = fileURLToPath(new URL(".", import.meta.url));
const files = readdirSync(here)
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
  .map((file) => `${here}${file}`);

let program: ts.Program;
beforeAll(() => {
  const config = fileURLToPath(new URL("../../tsconfig.json", import.meta.url));
  const { config: json } = ts.readConfigFile(config, ts.sys.readFile) as { config: object };
  const { options } = ts.parseJsonConfigFileContent(
    json,
    ts.sys,
    fileURLToPath(new URL("../..", import.meta.url)),
  );
  program = ts.createProgram(files, { ...options, noUnusedLocals: false });
}, 60_000);

const faults = (file: string): string[] => {
  const source = program.getSourceFile(file)!;
  return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)].map(
    ({ start, messageText }) =>
      `line ${source.getLineAndCharacterOfPosition(start ?? 0).line + 1}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
  );
};

describe("what must not compile does not, and what should does", () => {
  it.each(files.map((file) => [file.slice(here.length), file]))("%s", (_, file) => {
    expect(faults(file)).toEqual([]);
  });

  it("the files expect a good many errors, so they do test something", () => {
    const expected = files.map(
      (file) => program.getSourceFile(file)!.text.split("@ts-expect-error").length - 1,
    );
    expect(expected.reduce((a, b) => a + b, 0)).toBeGreaterThan(30);
  });
});

describe("an editor shows what an option does", () => {
  const comment = (call: string, option: string): string => {
    const source = program.getSourceFile(files.find((file) => file.endsWith("options.ts"))!)!;
    const checker = program.getTypeChecker();
    let found: string | undefined;
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && node.expression.getText() === call && node.arguments[0]) {
        const wanted = checker.getContextualType(node.arguments[0] as ts.Expression);
        const symbol = wanted?.getProperty(option);
        if (symbol) found ??= ts.displayPartsToString(symbol.getDocumentationComment(checker));
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
    return found ?? "";
  };

  it.each([
    ["toss", "gap", "Least distance between the real outlines"],
    ["toss", "motifs", "What is scattered"],
    ["set", "columns", "Motifs across the unit"],
    ["leaf", "vary", "How far drawings stray"],
    ["halfDrop", "width", "Width of the unit"],
    ["mirror", "axis", "Which neighbours"],
  ])("%s > %s", (call, option, words) => {
    const shown = comment(call, option);
    expect(shown).toContain(words);
    expect(shown.length).toBeGreaterThan(5);
  });
});
