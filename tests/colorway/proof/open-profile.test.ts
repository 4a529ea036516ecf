import Color from "colorjs.io";
import * as lcms from "lcms-wasm";
import { describe, expect, it } from "vitest";
import { pressCheck } from "../../../src/check/press-check.ts";
import { BLACK_POINT, CMYK_16, LAB_16, type Lcms, RGB_8 } from "../../../src/colorway/proof/lcms.ts";
import { openProfile } from "../../../src/colorway/proof/open-profile.ts";
import { pressOf } from "../../../src/colorway/proof/press.ts";
import { refusalOf } from "../../given.ts";
import { cornersOf } from "./lut.ts";
import { profile } from "./profile.ts";

const constants = lcms as unknown as Readonly<Record<string, number>>;

it("formats and flags are those that lcms-wasm names", () => {
  expect(RGB_8).toBe(constants["TYPE_RGB_8"]);
  expect(CMYK_16).toBe(constants["TYPE_CMYK_16"]);
  expect(LAB_16).toBe(constants["TYPE_Lab_16"]);
  expect(BLACK_POINT).toBe(constants["cmsFLAGS_BLACKPOINTCOMPENSATION"]);
});

describe.skipIf(profile === undefined)("a press, by its profile", () => {
  const opened = (): ReturnType<typeof openProfile> => openProfile(profile!);

  it("prints the corners of its inks as the profile's own table has them, read by ICC.1", async () => {
    const press = pressOf(await lcms.instantiate(), profile!, "relative", "x");
    const corner = cornersOf(profile!);
    for (let code = 0; code < 16; code++) {
      const inks = [code & 1, (code >> 1) & 1, (code >> 2) & 1, code >> 3] as const;
      const [lab] = press.print([inks]);
      const want = corner(inks);
      lab!.forEach((value, i) => void expect(Math.abs(value - want[i]!), `${inks}`).toBeLessThan(0.05));
    }
  });

  it("tells ΔE00 between an ink and its printed self, by colorjs.io", async () => {
    const press = pressOf(await lcms.instantiate(), profile!, "relative", "x");
    const proofs = await opened();
    for (const ink of ["#ff0000", "#808080", "#996633", "#2e7d5b", "#27566b", "#f6ead7"]) {
      const [lab] = press.print([press.separate(ink)]);
      const theirs = new Color(ink).to("lab").deltaE2000(new Color("lab", [...lab!]));
      expect(Math.abs(proofs.proof(ink).deltaE - theirs), ink).toBeLessThan(0.1);
    }
  });

  // Measured before with lcms-wasm in other code, and by transicc of Little CMS: pure red is all magenta and yellow.
  it("has pure red as magenta and yellow, white as nothing, and rough figures measured elsewhere", async () => {
    const press = await opened();
    const red = press.proof("#ff0000");
    expect(red.cmyk.cyan + red.cmyk.black).toBeLessThan(1);
    expect(Math.min(red.cmyk.magenta, red.cmyk.yellow)).toBeGreaterThan(99);
    expect(red.deltaE).toBeCloseTo(7.77, 0);
    expect(press.proof("#808080").deltaE).toBeCloseTo(2.09, 0);
    expect(press.proof("#996633").deltaE).toBeCloseTo(3.01, 0);
    const white = {
      cmyk: { cyan: 0, magenta: 0, yellow: 0, black: 0 },
      total: 0,
      printed: "#ffffff",
      deltaE: 0,
    };
    expect(press.proof("white")).toEqual({ ink: "#ffffff", ...white });
  });

  it("finds a nearer print than the profile's own, within the limit, and one that needs no other", async () => {
    const press = await openProfile(profile!, { mostInk: 240 });
    for (const ink of ["#ff0000", "#0000ff", "#00ff00", "#000000", "#6a1b9a", "#00a3a3", "#e8b04a"]) {
      const [plain, near] = [press.proof(ink), press.nearest(ink)];
      if (plain.total <= 240) expect(near.deltaE, ink).toBeLessThanOrEqual(plain.deltaE);
      expect(near.total, ink).toBeLessThanOrEqual(240);
      expect(press.nearest(near.printed).deltaE, ink).toBeLessThan(1);
    }
  });

  it("shows a colorway as it will look in print, and again no other", async () => {
    const press = await opened();
    const dawn = { name: "dawn", inks: { ground: "#f6ead7", petal: "#0000ff" } };
    const view = press.view(dawn);
    expect(view.name).toBe("dawn");
    expect(view.inks.petal).toBe(press.proof("#0000ff").printed);
    expect(new Color(view.inks.petal).deltaE2000(new Color(dawn.inks.petal))).toBeGreaterThan(8);
    expect(new Color(view.inks.ground).deltaE2000(new Color(dawn.inks.ground))).toBeLessThan(3);
  });

  it("is a check for inspect: what cannot be printed so, what could be, and too much ink", async () => {
    const press = await openProfile(profile!, { mostInk: 250 });
    const tile = { recipe: { roles: ["ground", "petal", "night"] } };
    const colorways = [{ name: "dawn", inks: { ground: "#f6ead7", petal: "#0000ff", night: "#000000" } }];
    const found = pressCheck(press).look({ tile, colorways, dpi: 150 } as never);
    expect(found.map(({ rule, role }) => `${rule} ${role}`)).toEqual([
      "off-press-color petal",
      "off-press-color night",
      "too-much-ink night",
    ]);
    expect(found[0]!.fix).toMatch(/^#0000ff prints as #[0-9a-f]{6}; use #[0-9a-f]{6}, ΔE00 \d/);
    expect(pressCheck(press, { mostDeltaE: 100 }).look({ tile, colorways, dpi: 150 } as never)).toHaveLength(
      1,
    );
  });

  it("takes the engine that it is given, and the intent", async () => {
    const engine: Lcms = await lcms.instantiate();
    const press = await openProfile(profile!.buffer as ArrayBuffer, { lcms: engine, intent: "perceptual" });
    expect(press.name).not.toBe("");
    expect(press.proof("#ff0000").deltaE).toBeCloseTo(7.82, 0);
  });

  it("refuses what is damaged, cut off, or no press", async () => {
    const spoilt = (change: (bytes: Uint8Array) => void): Uint8Array => {
      const bytes = profile!.slice();
      change(bytes);
      return bytes;
    };
    const code = async (bytes: unknown): Promise<string> =>
      (await refusalOf(() => openProfile(bytes as never))).code;
    expect(await code(profile!.slice(0, 5000))).toBe("bad-profile");
    expect(await code(spoilt((bytes) => bytes.fill(0xff, 132, 300)))).toBe("bad-profile");
    expect(await code(spoilt((bytes) => bytes.set([0x52, 0x47, 0x42, 0x20], 16)))).toBe("not-cmyk");
    expect(await code(spoilt((bytes) => bytes.fill(0x58, 12, 16)))).toBe("bad-profile");
  });
});

it("what is no profile at all is refused before anything is loaded", async () => {
  for (const bytes of [new Uint8Array(0), new Uint8Array(4000), new ArrayBuffer(4000)])
    expect((await refusalOf(() => openProfile(bytes))).code).toBe("bad-profile");
  for (const given of [null, "press.icc", [1, 2]])
    expect((await refusalOf(() => openProfile(given as never))).code).toBe("wrong-type");
  expect((await refusalOf(() => openProfile(new Uint8Array(9), { intnt: 1 } as never))).message).toContain(
    "intent",
  );
  expect((await refusalOf(() => openProfile(new Uint8Array(9), { mostInk: 900 }))).code).toBe("number-range");
});
