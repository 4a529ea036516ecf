import { badInput, shown, unknownName } from "../../errors/catalogue.ts";

/** Holds options of a builder against the names that it knows. @throws SprigwrightError `unknown-option` */
export function checkOptions(where: string, options: object, known: readonly string[]): void {
  for (const name of Object.keys(options))
    if (!known.includes(name)) throw unknownName(`shapes > ${where} > ${name}`, "option", name, known);
}

/** Holds values against being plain numbers: builders draw in mm. @throws SprigwrightError `not-mm` */
export function checkNumbers(where: string, values: Readonly<Record<string, unknown>>): void {
  for (const [name, value] of Object.entries(values))
    if (typeof value !== "number" || !Number.isFinite(value))
      throw badInput(
        "not-mm",
        `shapes > ${where} > ${name}`,
        `${shown(value)} is not a number`,
        "give a plain number; builders draw in mm, so 2 rather than a text with its unit",
      );
}
