import { describe, expect, it, test } from "vitest";
import { boxOf } from "../../../src/geometry/path.ts";
import { type CalendarOptions, calendar } from "../../../src/output/sheet/calendar/calendar.ts";
import type { Cloth, Page } from "../../../src/output/sheet/page.ts";
import { refusal } from "../../given.ts";
import { clashes, colorwaysOf, dawn, font, said, texts, tile } from "./given.ts";

const given: CalendarOptions = { year: 2027, pictures: [{ tile, colorway: dawn }], font };
const pages = calendar(given);
const clothOf = (page: Page): Cloth => page.items[0] as Cloth;

describe("a calendar", () => {
  it("has twelve pages, each a frame's picture with bleed on three sides above its month", () => {
    expect(pages.map(({ title }) => title)).toEqual([
      ...["January 2027", "February 2027", "March 2027", "April 2027", "May 2027", "June 2027"],
      ...["July 2027", "August 2027", "September 2027", "October 2027", "November 2027", "December 2027"],
    ]);
    for (const page of pages) {
      expect(page.size).toEqual({ width: 203_200, height: 254_000 + 121_920 });
      // 8 x 10 inches between the trim and the cut line; bleed where the page is trimmed.
      expect(clothOf(page).area).toEqual({ minX: -3000, minY: -3000, maxX: 206_200, maxY: 254_000 });
      expect(clothOf(page).scale).toBe(1);
    }
    expect(calendar({ ...given, size: "A4", landscape: true, month: 120 })[0]!.size).toEqual({
      width: 297_000,
      height: 330_000,
    });
  });

  // Read off the page: each number's column and row, against the day of the week as JavaScript has it.
  test.each([
    ["monday", "Mon", 1],
    ["sunday", "Sun", 0],
  ] as const)("with weeks from %s has every day below the name of its weekday", (weekStart, name, first) => {
    for (const [i, page] of calendar({ ...given, year: 2024, weekStart }).entries()) {
      const places = texts(page).map(({ says, path }) => ({
        says: says!,
        x: boxOf(path).minX,
        y: boxOf(path).maxY,
      }));
      const columns = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"].map(
        (day) => places.find(({ says }) => says === day)!.x,
      );
      expect(Math.min(...columns)).toBe(columns[["Mon", "Sun"].indexOf(name) * 6]);
      const left = Math.min(...columns) - 1500;
      const days = places.filter(({ says, x }) => /^\d{1,2}$/.test(says) && x > left);
      const count = new Date(Date.UTC(2024, i + 1, 0)).getUTCDate();
      expect(days.map(({ says }) => Number(says))).toEqual(
        Array.from({ length: count }, (_, day) => day + 1),
      );
      for (const { says, x } of days) {
        const weekday = new Date(Date.UTC(2024, i, Number(says))).getUTCDay();
        const nearest = columns.reduce(
          (best, at, k) => (Math.abs(at - x) < Math.abs(columns[best]! - x) ? k : best),
          0,
        );
        expect(nearest).toBe((weekday + 6) % 7);
      }
      const rows = [...new Set(days.map(({ y }) => Math.round(y / 4000)))].length;
      const start = (new Date(Date.UTC(2024, i, 1)).getUTCDay() - first + 7) % 7;
      expect(rows).toBe(Math.ceil((start + count) / 7));
    }
  });

  it("numbers ISO weeks beside its rows, unless it is told not to", () => {
    // 1 January 2027 is a Friday: it belongs to week 53 of 2026.
    expect(said(pages[0]!).filter((text) => /^\d+$/.test(text))).toContain("53");
    expect(said(pages[0]!)).toContain("Wk");
    expect(said(calendar({ ...given, weekNumbers: false })[0]!)).not.toContain("Wk");
  });

  it("keeps its month apart from the picture and within the safe margin", () => {
    for (const options of [
      given,
      { ...given, size: "A3", landscape: true, safe: 12 },
      { ...given, size: "5x7in", safe: 6 },
    ] as const)
      for (const page of calendar(options)) {
        const letters = { ...page, items: page.items.filter((item) => item.kind === "fill" && item.says) };
        expect(clashes(letters, "safe" in options ? Number(options.safe) : 10)).toEqual([]);
        for (const { path, says } of texts(page))
          expect(boxOf(path).minY, says).toBeGreaterThan(clothOf(page).area.maxY);
      }
  });

  it("gives each month its picture in turn, and its inks to the month", () => {
    const pictures = colorwaysOf(5).map((colorway) => ({ tile, colorway }));
    const names = calendar({ ...given, pictures }).map((page) => clothOf(page).colorway.name);
    expect(names.map((name) => Number(name.slice(5)))).toEqual([1, 2, 3, 4, 5, 1, 2, 3, 4, 5, 1, 2]);
    const january = texts(pages[0]!).find(({ says }) => says === "January")!;
    expect(Object.values(dawn.inks)).toContain(january.ink);
  });

  it("speaks other languages", () => {
    const months = [
      "januar",
      "februar",
      "mars",
      "april",
      "mai",
      "juni",
      "juli",
      "august",
      "september",
      "oktober",
      "november",
      "desember",
    ];
    const weekdays = ["ma", "ti", "on", "to", "fr", "lø", "sø"];
    const [first] = calendar({ ...given, names: { months, weekdays, week: "uke" } });
    expect(said(first!)).toEqual(expect.arrayContaining(["januar", "lø", "uke"]));
    expect(first!.title).toBe("januar 2027");
  });

  it("is refused for years that it does not know, without pictures, or with names that are too few or cannot be set", () => {
    const odd = (options: Partial<CalendarOptions>) => refusal(() => calendar({ ...given, ...options })).code;
    expect(odd({ year: 1969 })).toBe("number-range");
    expect(odd({ year: 2101 })).toBe("number-range");
    expect(odd({ year: 2027.5 })).toBe("wrong-type");
    expect(odd({ pictures: [] })).toBe("list-length");
    expect(odd({ weekStart: "saturday" as never })).toBe("unknown-choice");
    expect(odd({ names: { months: ["Jan"] } })).toBe("wrong-type");
    expect(odd({ names: { week: "週" } })).toBe("missing-glyph");
    expect(odd({ names: { day: "x" } as never })).toBe("unknown-option");
    expect(odd({ safe: 60 })).toBe("page-too-small");
    expect(odd({ size: "A10" })).toBe("page-too-small");
    expect(odd({ pictures: [{ tile, colorway: { name: "x", inks: { ground: "#ffffff" } } }] })).toBe(
      "missing-ink",
    );
  });
});
