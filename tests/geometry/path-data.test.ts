import { describe, expect, it } from "vitest";
import { readPathData } from "../../src/geometry/path-data.ts";
import { refusal } from "../given.ts";

const points = (data: string) => readPathData(data, "d").map((run) => run.points);
const straight = (...p: number[]): number[] => {
  const out = [p[0]!, p[1]!];
  for (let i = 2; i < p.length; i += 2) out.push(p[i - 2]!, p[i - 1]!, p[i]!, p[i + 1]!, p[i]!, p[i + 1]!);
  return out;
};

describe("path data", () => {
  it("reads every straight command, relative or not", () => {
    const square = straight(1, 1, 5, 1, 5, 5, 1, 5);
    for (const data of [
      "M1 1L5 1L5 5L1 5Z",
      "m1 1l4 0l0 4l-4 0z",
      "M1 1H5V5H1z",
      "M1,1h4v4h-4Z",
      "M1 1 5 1 5 5 1 5z",
    ])
      expect(points(data)).toEqual([square]);
  });

  it("reads smooth and quadratic curves as the cubics they stand for", () => {
    expect(points("M0 0C0 1 2 3 4 4S8 7 9 9")).toEqual([[0, 0, 0, 1, 2, 3, 4, 4, 6, 5, 8, 7, 9, 9]]);
    expect(points("M0 0Q3 3 6 0")[0]!.slice(2)).toEqual([2, 2, 4, 2, 6, 0]);
    expect(points("M0 0Q3 3 6 0T12 0")[0]!.slice(8)).toEqual([8, -2, 10, -2, 12, 0]);
  });

  it("reads arc flags that a minifier has packed", () => {
    const packed = points("M10 10a1 1 0 01 1 1a5 5 0 1010 0z");
    expect(packed).toEqual(points("M10 10a1 1 0 0 1 1 1a5 5 0 1 0 10 0z"));
    expect(packed[0]!.slice(-2)).toEqual([21, 11]);
  });

  it("goes on from the start of a closed run", () => {
    const runs = readPathData("M2 3h4v4zl-1 -1", "d");
    expect(runs.map((run) => run.closed)).toEqual([true, false]);
    expect(runs[1]!.points.slice(0, 2)).toEqual([2, 3]);
    expect(runs[1]!.points.slice(-2)).toEqual([1, 2]);
  });

  it("draws nothing for none and for no text", () => {
    expect(points("none")).toEqual([]);
    expect(points("  ")).toEqual([]);
  });

  it("is refused where it breaks off", () => {
    for (const data of ["M0 0L10", "M0 0X5", "L1 1", "M0 0L1 q", "M0 0a1 1 0 2 0 5 5"]) {
      const error = refusal(() => readPathData(data, "<path> on line 3 > d"));
      expect(error).toMatchObject({ code: "bad-path-data", where: "<path> on line 3 > d" });
      expect(error.what).toContain(data);
    }
  });
});
