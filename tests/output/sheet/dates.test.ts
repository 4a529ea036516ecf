// date-fns as an independent date library.
import { getDate, getDaysInMonth, getISODay, getISOWeek } from "date-fns";
import { describe, expect, it, test } from "vitest";
import {
  dayNumber,
  daysIn,
  isoWeek,
  weekday,
  weeksOf,
  YEARS,
} from "../../../src/output/sheet/calendar/dates.ts";

const years = Array.from({ length: YEARS.max - YEARS.min + 1 }, (_, i) => YEARS.min + i);
const months = Array.from({ length: 12 }, (_, i) => i + 1);

describe("dates", () => {
  it("are those of date-fns on every day from 1970 to 2100: length of months, weekday, ISO week", () => {
    const odd: string[] = [];
    let days = 0;
    for (const year of years)
      for (const month of months) {
        const count = daysIn(year, month);
        if (count !== getDaysInMonth(new Date(year, month - 1, 1))) odd.push(`${year}-${month} has ${count}`);
        for (let day = 1; day <= count; day++, days++) {
          const date = new Date(year, month - 1, day);
          const number = dayNumber(year, month, day);
          if (weekday(number) !== getISODay(date) || isoWeek(number) !== getISOWeek(date))
            odd.push(`${year}-${month}-${day}`);
        }
      }
    expect(odd).toEqual([]);
    expect(days).toBe(47_847); // 131 years of 365 days and 32 leap days: 1972 to 2096, 2000 among them, 2100 not
  });

  it("follow each other without a gap", () => {
    let last = dayNumber(1969, 12, 31);
    let gaps = 0;
    for (const year of years)
      for (const month of months)
        for (let day = 1; day <= daysIn(year, month); day++)
          if (dayNumber(year, month, day) !== ++last) gaps++;
    expect(gaps).toBe(0);
  });

  // ISO 8601's own examples of years that begin or end in another year's week; common knowledge, from memory.
  test.each([
    [2005, 1, 1, 53],
    [2008, 12, 30, 1],
    [2009, 12, 31, 53],
    [2010, 1, 3, 53],
    [2026, 12, 31, 53],
  ])("%i-%i-%i is in week %i", (year, month, day, week) => {
    expect(isoWeek(dayNumber(year, month, day))).toBe(week);
  });

  test.each([
    ["monday", 1],
    ["sunday", 7],
  ])("stand in the right column and row of a month whose weeks begin on %s", (_, first) => {
    for (const year of years)
      for (const month of months) {
        const rows = weeksOf(year, month, first);
        expect(rows.flatMap(({ days }) => days).filter((day) => day !== undefined)).toEqual(
          Array.from({ length: daysIn(year, month) }, (_, i) => i + 1),
        );
        for (const { days, week } of rows)
          days.forEach((day, i) => {
            if (day === undefined) return;
            const date = new Date(year, month - 1, day);
            if (getISODay(date) !== ((first - 1 + i) % 7) + 1 || getDate(date) !== day)
              throw new Error(`${year}-${month}-${day} is in column ${i}`);
            // A week from Sunday to Saturday is that of its Thursday, so of all its days but the Sunday.
            if (getISODay(date) !== 7 || first === 1)
              if (getISOWeek(date) !== week) throw new Error(`${year}-${month}-${day} is in week ${week}`);
          });
      }
  });
});
