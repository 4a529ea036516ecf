import { badInput } from "../../errors/catalogue.ts";
import type { Gauging } from "./gauge.ts";
import { type Line, stretchLine } from "./set-line.ts";
import { type Align, SHARE } from "./set-lines.ts";
import type { Stand } from "./stand.ts";
import type { Track } from "./track.ts";

/** A track and how lengths are measured on it. */
export interface Course {
  readonly track: Track;
  readonly gauging: Gauging;
}

/** A hair of room, so that the size which an error names does fit. */
const HAIR = 1 + 1e-12;

/**
 * A line along a track: every glyph stands with the middle of its advance on the track, as far along it as the
 * middle is along the straight line. A closed track is met at its start by the line's left end, middle or right end;
 * an open one is met by the same at its own start, middle or end. Justified, the line is spread over all of it.
 * @throws SprigwrightError `text-too-long`, with the largest size that fits
 */
export function setAlong(given: Line, size: number, align: Align, course: Course, where: string): Stand[] {
  const { track, gauging } = course;
  const { length, at } = gauging(size);
  if (given.width * size > length * HAIR) throw tooLong(given.width, size, gauging, where);
  const count = given.signs.length;
  const gaps = track.closed ? count : count - 1;
  const spread = align === "justify" && gaps > 0 ? (length / size - given.width) / gaps : 0;
  const line = stretchLine(given, spread);
  const room = track.closed ? 0 : length;
  const share = align === "justify" && track.closed ? 0.5 : SHARE[align];
  const from = share * (room - line.width * size);
  return line.signs.map((sign): Stand => {
    const s = at(from + (sign.x + sign.advance / 2) * size);
    const [x, y] = track.at(s);
    return { sign, line: 0, x, y, along: track.along(s, (sign.advance * size) / 2) };
  });
}

const round = (mm: number): number => Math.round(mm * 1000) / 1000;

function tooLong(width: number, size: number, gauging: Gauging, where: string): Error {
  const fits = largestSize(width, size, gauging);
  return badInput(
    "text-too-long",
    where,
    `at a size of ${round(size)} mm the text is ${round(width * size)} mm long, and there is room for ${round(gauging(size).length)} mm`,
    fits >= 1
      ? `set it at ${fits} mm or less, track it tighter, or give a longer path`
      : "give a longer path or a shorter text",
  );
}

/** The largest size that fits, in whole µm, by halving: the larger the letters, the less room bends leave. */
function largestSize(width: number, size: number, gauging: Gauging): number {
  let [fits, fails] = [0, Math.ceil(size * 1000)];
  while (fails - fits > 1) {
    const middle = (fits + fails) >> 1;
    if ((width * middle) / 1000 <= gauging(middle / 1000).length * HAIR) fits = middle;
    else fails = middle;
  }
  return fits / 1000;
}
