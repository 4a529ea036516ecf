import { SVGPathData } from "svg-pathdata";
import { badInput } from "../errors/catalogue.ts";
import { drawArc } from "./arc.ts";
import { type Runs, sketch } from "./sketch.ts";

/**
 * SVG path data as runs: every command, relative or not, with packed numbers and arc flags.
 * @throws SprigwrightError `bad-path-data`, which shows where the data breaks off
 */
export function readPathData(data: string, where: string): Runs {
  const text = data.trim();
  if (text === "" || text === "none") return [];
  if (!/^[Mm]/.test(text)) throw badPathData(where, text, "it does not start with M");
  let commands: SVGPathData["commands"];
  try {
    commands = new SVGPathData(text).toAbs().normalizeHVZ(false).normalizeST().qtToC().commands;
  } catch (cause) {
    throw badPathData(where, text, cause instanceof Error ? cause.message : "it cannot be read", cause);
  }
  const to = sketch();
  for (const command of commands) {
    switch (command.type) {
      case SVGPathData.MOVE_TO:
        to.move(command.x, command.y);
        break;
      case SVGPathData.LINE_TO:
        to.line(command.x, command.y);
        break;
      case SVGPathData.CURVE_TO:
        to.curve(command.x1, command.y1, command.x2, command.y2, command.x, command.y);
        break;
      case SVGPathData.ARC:
        drawArc(to, {
          rx: command.rX,
          ry: command.rY,
          turn: command.xRot,
          large: command.lArcFlag === 1,
          sweep: command.sweepFlag === 1,
          x: command.x,
          y: command.y,
        });
        break;
      case SVGPathData.CLOSE_PATH:
        to.close();
        break;
      default:
        throw badPathData(where, text, `command ${command.type} was left over`);
    }
  }
  return to.done();
}

const badPathData = (where: string, text: string, why: string, cause?: unknown): Error =>
  badInput(
    "bad-path-data",
    where,
    `"${text.length > 40 ? `${text.slice(0, 40)}…` : text}" is not path data: ${why.replace(/\.$/, "")}`,
    "mend the path, or save the drawing again from its editor",
    cause,
  );
