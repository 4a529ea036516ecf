import Color from "colorjs.io";
import { describe, expect, it } from "vitest";
import { readColor } from "../../../src/motif/artwork/color.ts";
import { colorWord } from "../../../src/motif/artwork/color-word.ts";

describe("a colour of a drawing", () => {
  it("is read in every way that drawing programs write it", () => {
    const orange = { fill: "#ff822d", alpha: 1 };
    for (const text of [
      "#ff822d",
      "#FF822D",
      " #ff822dff ",
      "rgb(255,130,45)",
      "rgb(255 130 45)",
      "rgb(100% 51% 17.7%)",
    ])
      expect(readColor(text)).toEqual(orange);
    expect(readColor("#f80")).toEqual({ fill: "#ff8800", alpha: 1 });
    expect(readColor("Tomato")).toEqual({ fill: "#ff6347", alpha: 1 });
    expect(readColor("hsl(120, 100%, 25%)")).toEqual({ fill: "#008000", alpha: 1 });
  });

  // Expected values of CSS Color 4: its own sample of hwb(), and colorjs.io 0.7.1 for the rest (within sRGB).
  it("may be in any space of CSS", () => {
    expect(readColor("hwb(90deg 10% 10%)")!.fill).toBe("#80e61a");
    for (const text of ["oklch(0.7 0.1 140)", "lab(50 40 30)", "lch(60 30 200)", "oklab(0.6 0.05 -0.1)"])
      expect(readColor(text)!.fill).toBe(new Color(text).to("srgb").toString({ format: "hex" }));
    expect(readColor("color(display-p3 0.8 0.4 0.3)")!.fill).toBe(
      new Color("color(display-p3 0.8 0.4 0.3)").to("srgb").toString({ format: "hex" }),
    );
    expect(readColor("oklch(0.7 0.1 140 / 50%)")!.alpha).toBe(0.5);
    expect(readColor("color(display-p3 0 1 0)")!.fill).toMatch(/^#0[0-9a-f]f[0-9a-f]{3}$/);
    expect(readColor("rgb(300,-5,0)")).toEqual({ fill: "#ff0000", alpha: 1 });
  });

  it("keeps how much it covers apart", () => {
    expect(readColor("#ff000080")!.alpha).toBeCloseTo(0.502, 3);
    expect(readColor("rgba(255,0,0,.25)")).toEqual({ fill: "#ff0000", alpha: 0.25 });
    expect(readColor("transparent")!.alpha).toBe(0);
  });

  it("is not read when it is no colour", () => {
    for (const text of [
      "",
      "#ff",
      "#ggg",
      "rgb(1,2)",
      "rgb(a,b,c)",
      "constructor",
      "url(#a)",
      "rgb(1 2 3 4 5)",
    ])
      expect(readColor(text)).toBeUndefined();
  });
});

describe("a word for a colour", () => {
  it("is what one would call it", () => {
    const words = {
      "#ff822d": "orange",
      "#fff3a0": "pale-yellow",
      "#fcd53f": "yellow",
      "#44911b": "green",
      "#c3ef3c": "lime",
      "#00a6ed": "blue",
      "#8d65c5": "violet",
      "#f8312f": "red",
      "#ff0000": "red",
      "#0000ff": "blue",
      "#ff6dc6": "pink",
      "#593b39": "deep-brown",
      "#7d4533": "brown",
      "#212121": "black",
      "#ffffff": "white",
      "#9b9b9b": "grey",
      "#d3d3d3": "pale-grey",
      "#ffdfb0": "cream",
    };
    expect(Object.fromEntries(Object.keys(words).map((fill) => [fill, colorWord(fill)]))).toEqual(words);
  });

  it("is a role name for every colour there is", () => {
    for (let value = 0; value < 0x1000000; value += 4099)
      expect(colorWord(`#${(0x1000000 + value).toString(16).slice(1)}`)).toMatch(
        /^(pale-|deep-)?[a-z]{3,6}$/,
      );
  });
});
