import { missingOption, unknownName, wrongType } from "../../../errors/catalogue.ts";
import { isRecord } from "../../../params/compound.ts";
import { makeParam, type Param } from "../../../params/param.ts";

/** The words of a calendar in the language of those who hang it up. */
export interface CalendarNames {
  /** January to December. */
  readonly months: readonly string[];
  /** Monday to Sunday, as they stand above the columns. */
  readonly weekdays: readonly string[];
  /** What stands above the numbers of weeks. */
  readonly week: string;
}

/** English names: given here, since engines differ in the words they have. */
const ENGLISH: CalendarNames = /* @__PURE__ */ Object.freeze({
  months: [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
  ],
  weekdays: ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"],
  week: "Wk",
});

const isWord = (value: unknown): boolean =>
  typeof value === "string" && value.trim() !== "" && value.length <= 40;

/** Names of months and days; those left out are English. */
export const calendarNames = (): Param<Partial<CalendarNames>, CalendarNames, true> =>
  makeParam(
    {
      about: { about: "Names of months and days, where they are not English.", default: {} },
      wanted: "names { months, weekdays, week }",
      schema: {},
      check: (value, where) => {
        if (!isRecord(value)) throw wrongType(where, value, "names { months, weekdays, week }");
        for (const key of Object.keys(value))
          if (!Object.hasOwn(ENGLISH, key))
            throw unknownName(`${where} > ${key}`, "option", key, Object.keys(ENGLISH));
        const names = { ...ENGLISH, ...value } as CalendarNames;
        for (const [key, count] of [
          ["months", 12],
          ["weekdays", 7],
        ] as const)
          if (!Array.isArray(names[key]) || names[key].length !== count || !names[key].every(isWord))
            throw wrongType(`${where} > ${key}`, names[key], `a list of ${count} names`);
        if (!isWord(names.week)) throw wrongType(`${where} > week`, names.week, "a short word");
        return names;
      },
    },
    missingOption,
  );
