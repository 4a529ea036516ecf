// Every repeat type, at sizes that are whole pixels at 50 dpi (0.508 mm), lattice vectors included.
import {
  brick,
  diamond,
  drop,
  halfBrick,
  halfDrop,
  hexagonal,
  mirror,
  ogee,
  planeGroup,
  type RepeatUse,
  skew,
  straight,
  turnover,
} from "../../src/index.ts";

export const DPI = 50;
/** One pixel (µm). */
export const PIXEL = 508;

const size = { width: "2.4in", height: "2.4in" } as const;
const tall = { width: "3.2in", height: "4in" } as const;
/** √3/2 of 4.8 in to a whole pixel is 208 pixels, 0.07 % off. */
const six = { width: "4.8in", height: "4.16in", distortion: 0.001 } as const;

export const every: Readonly<Record<string, RepeatUse>> = {
  straight: straight(size),
  "half-drop": halfDrop(size),
  "half-brick": halfBrick(size),
  "third drop": drop({ ...size, fraction: "1/3" }),
  "two-fifths drop": drop({ ...size, fraction: "2/5" }),
  "quarter brick": brick({ ...size, fraction: "1/4" }),
  "mirror across": mirror({ ...size, axis: "across" }),
  "mirror down": mirror({ ...size, axis: "down" }),
  "mirror both ways": mirror({ ...size, axis: "both" }),
  "turnover across": turnover({ ...size, axis: "across" }),
  "turnover down": turnover({ ...size, axis: "down" }),
  "turnover both ways": turnover(size),
  diamond: diamond(tall),
  ogee: ogee(tall),
  hexagonal: hexagonal({ width: "2.4in", height: "2.08in", distortion: 0.001 }),
  skew: skew({ a: ["2.4in", "0.6in"], b: ["-0.8in", "2.4in"] }),
  p1: planeGroup({ group: "p1", ...tall, lean: "0.8in" }),
  p2: planeGroup({ group: "p2", ...tall, lean: "0.8in" }),
  pm: planeGroup({ group: "pm", ...tall }),
  pg: planeGroup({ group: "pg", ...tall }),
  cm: planeGroup({ group: "cm", ...tall }),
  p2mm: planeGroup({ group: "p2mm", ...tall }),
  p2mg: planeGroup({ group: "p2mg", ...tall }),
  p2gg: planeGroup({ group: "p2gg", ...tall }),
  c2mm: planeGroup({ group: "c2mm", ...tall }),
  p4: planeGroup({ group: "p4", width: "4in" }),
  p4mm: planeGroup({ group: "p4mm", width: "4in" }),
  p4gm: planeGroup({ group: "p4gm", width: "4in" }),
  p3: planeGroup({ group: "p3", ...six }),
  p3m1: planeGroup({ group: "p3m1", ...six }),
  p31m: planeGroup({ group: "p31m", ...six }),
  p6: planeGroup({ group: "p6", ...six }),
  p6mm: planeGroup({ group: "p6mm", ...six }),
};
