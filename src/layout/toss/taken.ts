import type { Bounds } from "../../geometry/images.ts";
import { bucketsOver } from "./buckets.ts";

/** A place (µm) and how far around it is taken. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Places that are taken, ready to be asked how near they are. */
export interface Taken {
  readonly add: (place: Place) => void;
  /**
   * How far (µm) a point of the zone is from all that is taken, or `most` if that is less. Once it is known to be no more
   * than `enough`, anything up to that.
   */
  readonly roomAt: (x: number, y: number, most: number, enough: number) => number;
}

/** No places yet, of which about `count` are to come over a zone (µm). */
export function takenOver(zone: Bounds, count: number): Taken {
  const area = (zone[2]! - zone[0]!) * (zone[3]! - zone[1]!);
  const { columns, rows, side, column, row } = bucketsOver(zone, Math.sqrt(area / Math.max(1, count)));
  const lists: (Place[] | undefined)[] = new Array(columns * rows).fill(undefined);
  const rings = Math.max(columns, rows);
  let widest = 0;
  return {
    add(place) {
      widest = Math.max(widest, place.r);
      const at = row(place.y) * columns + column(place.x);
      const list = lists[at];
      if (list) list.push(place);
      else lists[at] = [place];
    },
    roomAt(x, y, most, enough) {
      const [fromColumn, fromRow] = [column(x), row(y)];
      let room = most;
      // Ring by ring around the point's own bucket: what lies in the next is at least so far away.
      for (let ring = 0; ring < rings && (ring - 1) * side - widest < room; ring++)
        for (let r = Math.max(0, fromRow - ring); r <= Math.min(rows - 1, fromRow + ring); r++) {
          const stride = ring === 0 || Math.abs(r - fromRow) === ring ? 1 : 2 * ring;
          for (let c = fromColumn - ring; c <= fromColumn + ring; c += stride) {
            const list = c >= 0 && c < columns ? lists[r * columns + c] : undefined;
            if (!list) continue;
            for (const other of list) {
              const dx = other.x - x;
              const dy = other.y - y;
              room = Math.min(room, Math.sqrt(dx * dx + dy * dy) - other.r);
            }
            if (room <= enough) return room;
          }
        }
      return room;
    },
  };
}
