// A plugin: one motif and one layout that the library does not have, made with its public interface alone.
import { defineLayout, defineMotif, definePlugin, type Placement, type Plugin, param, pen } from "sprigwright";

/** A pear from the orchard above Hollin Quay, with a stem, a leaf and a light on its cheek. */
export const pear = defineMotif({
  name: "orchard/pear",
  about: "A pear with its stem, one leaf and a light on the cheek.",
  params: {
    height: param.length({ about: "Height, stem included.", min: 4, max: 300, default: 34 }),
    girth: param.share({ about: "How round it is: 0 slender, 1 stout.", default: 0.5 }),
  },
  parts: ["stem", "fruit", "light", "leaf"],
  draw: ({ height, girth }, { stray }) => {
    const s = height / 1.12;
    const w = stray(0.28 + 0.16 * girth, 0.12) * s; // half the belly
    const n = stray(0.145, 0.15) * s; // half the neck
    const lean = stray(1, 0.8) * 0.05 * s - 0.05 * s; // where the neck stands
    const y = (v: number): number => (v + 0.07) * s;
    const fruit = pen()
      .moveTo(lean, y(-0.42))
      .curveTo(lean + 0.1 * s, y(-0.42), lean + n, y(-0.34), lean + n * 1.05, y(-0.24))
      .curveTo(lean + n * 1.2, y(-0.08), w, y(0), w, y(0.2))
      .curveTo(w, y(0.4), w * 0.55, y(0.5), 0.04 * s, y(0.48))
      .curveTo(0.015 * s, y(0.47), -0.015 * s, y(0.47), -0.04 * s, y(0.48))
      .curveTo(-w * 0.55, y(0.5), -w, y(0.4), -w, y(0.2))
      .curveTo(-w, y(0), lean - n * 1.2, y(-0.08), lean - n * 1.05, y(-0.24))
      .curveTo(lean - n, y(-0.34), lean - 0.1 * s, y(-0.42), lean, y(-0.42))
      .path();
    const stem = pen()
      .moveTo(lean - 0.022 * s, y(-0.38))
      .curveTo(lean - 0.02 * s, y(-0.48), lean + 0.01 * s, y(-0.57), lean + 0.05 * s, y(-0.63))
      .curveTo(lean + 0.07 * s, y(-0.65), lean + 0.11 * s, y(-0.62), lean + 0.095 * s, y(-0.59))
      .curveTo(lean + 0.05 * s, y(-0.53), lean + 0.03 * s, y(-0.47), lean + 0.028 * s, y(-0.38))
      .path();
    const reach = stray(0.42, 0.2) * s;
    const leaf = pen()
      .moveTo(lean + 0.015 * s, y(-0.46))
      .curveTo(lean + 0.1 * s, y(-0.63), lean + 0.7 * reach, y(-0.66), lean + reach, y(-0.52))
      .curveTo(lean + 0.78 * reach, y(-0.38), lean + 0.14 * s, y(-0.36), lean + 0.015 * s, y(-0.46))
      .path();
    const light = pen()
      .moveTo(-0.7 * w, y(0.12))
      .curveTo(-0.78 * w, y(0.26), -0.62 * w, y(0.36), -0.36 * w, y(0.41))
      .curveTo(-0.46 * w, y(0.33), -0.52 * w, y(0.23), -0.5 * w, y(0.12))
      .curveTo(-0.5 * w, y(0.07), -0.68 * w, y(0.07), -0.7 * w, y(0.12))
      .path();
    return { stem, fruit, light, leaf };
  },
});

/** Motifs in rows that rise and fall like mown hay on a slope; the wave closes at the unit's edges. */
export const windrow = defineLayout({
  name: "orchard/windrow",
  about: "Motifs along rows that rise and fall in an even wave.",
  params: {
    motifs: param.list(param.motif({ about: "A motif of the row." }), {
      about: "The motifs, taken in turn along each row.",
      min: 1,
      max: 32,
    }),
    columns: param.integer({
      about: "Motifs along a row; every row starts half a place on.",
      min: 2,
      max: 200,
    }),
    rows: param.integer({ about: "Rows down the unit; an even number.", min: 2, max: 200 }),
    rise: param.length({ about: "How far a row rises and falls.", min: 0, max: 500, default: 6 }),
    waves: param.integer({ about: "Waves across the unit.", min: 1, max: 20, default: 1 }),
    tilt: param.turns({ about: "How far motifs tilt with the wave.", default: 0.04 }),
  },
  place: ({ motifs, columns, rows, rise, waves, tilt }, { arrangement, draw, random, math }) => {
    const { width, height } = arrangement.unit;
    const placements: Placement[] = [];
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const along = (column + (row % 2) / 2) / columns;
        const lift = math.sin(along * waves);
        const turn = math.cos(along * waves) * tilt;
        placements.push({
          id: `row${row + 1}-${column + 1}`,
          motif: random.pick(draw(motifs[(column + row) % motifs.length]!)).index,
          x: math.round(along * width),
          y: math.round(((row + 0.5) / rows) * height + lift * rise * 1000),
          turn: turn - math.floor(turn),
          scale: 1,
          flip: row % 2 === 1,
        });
      }
    return placements;
  },
});

export const orchard: Plugin = definePlugin({ name: "orchard", version: "1.0.0", pieces: [pear, windrow] });
