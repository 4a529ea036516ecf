/** Years that calendars are made for. */
export const YEARS = { min: 1970, max: 2100 } as const;

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

/** Days of a month (1 to 12) in the Gregorian calendar. */
export function daysIn(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Days from 1 January of the year 1 to a date, in whole numbers. */
export function dayNumber(year: number, month: number, day: number): number {
  const past = year - 1;
  let days = 365 * past + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
  for (let m = 1; m < month; m++) days += daysIn(year, m);
  return days + day - 1;
}

/** The day of the week of a day number, 1 (Monday) to 7 (Sunday), as ISO 8601 counts. 1 January of the year 1 was a Monday. */
export const weekday = (number: number): number => (number % 7) + 1;

/**
 * The week of the year of a day number, after ISO 8601: weeks begin on Monday and belong to the year in which
 * their Thursday lies; so week 1 is the one with the year's first Thursday.
 */
export function isoWeek(number: number): number {
  const thursday = number - weekday(number) + 4;
  // A year is at most 366 days long and at least 365, so this is the Thursday's year, or the one after.
  let year = Math.floor(thursday / 365.2425) + 2;
  while (dayNumber(year, 1, 1) > thursday) year--;
  return Math.floor((thursday - dayNumber(year, 1, 1)) / 7) + 1;
}

/** A row of a month's grid: seven places, undefined where a day is of another month, and the row's week. */
export interface Week {
  readonly days: readonly (number | undefined)[];
  /** The ISO week of the row's Thursday: of all its days, where weeks begin on Monday. */
  readonly week: number;
}

/** The rows of a month's grid; `first` is the day that weeks begin with, 1 (Monday) to 7 (Sunday). */
export function weeksOf(year: number, month: number, first: number): readonly Week[] {
  const start = dayNumber(year, month, 1);
  const before = (weekday(start) - first + 7) % 7;
  const count = daysIn(year, month);
  return Array.from({ length: Math.ceil((before + count) / 7) }, (_, row) => {
    const monday = start - before + row * 7;
    const days = Array.from({ length: 7 }, (_, i) => {
      const day = row * 7 + i - before + 1;
      return day >= 1 && day <= count ? day : undefined;
    });
    return { days, week: isoWeek(monday + ((4 - first + 7) % 7)) };
  });
}
