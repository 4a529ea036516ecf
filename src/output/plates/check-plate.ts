import { wrongType } from "../../errors/catalogue.ts";
import { isPath } from "../../geometry/path.ts";
import { isRecord } from "../../params/compound.ts";
import type { Plate } from "./separations.ts";

/** @throws SprigwrightError `wrong-type` for what is no plate of `separations` */
export function checkPlate(plate: Plate, where: string): void {
  if (!isRecord(plate) || !isPath(plate.path) || !isPath(plate.marks))
    throw wrongType(`${where} > plate`, plate, "a plate: one of those that await separations(tile) gives");
}
