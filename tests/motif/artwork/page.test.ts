import { describe, expect, it } from "vitest";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { svgOf } from "./picture.ts";

const paper = '<rect width="100%" height="100%" fill="#fff"/>';
const jar =
  '<circle cx="16" cy="16" r="8" fill="#d9583f"/><rect x="14" y="14" width="4" height="4" fill="#fff"/>';

describe("the paper under a drawing", () => {
  it("is a shape like any other until it is told to go, and the report says so", () => {
    const kept = inspectArtwork(svgOf(paper + jar), { size: 32 });
    expect([kept.width, kept.roles.length]).toEqual([32, 2]);
    expect(kept.warnings).toEqual([
      '<rect> on line 1: it covers the whole page; if it is only the paper, leave it out with page: "drop"',
    ]);
  });

  it("can be left out, while white on the drawing stays", () => {
    const { width, roles, dropped, warnings } = inspectArtwork(svgOf(paper + jar), {
      page: "drop",
      size: 32,
    });
    expect([width, roles.map((role) => role.fill)]).toEqual([32, ["#d9583f", "#ffffff"]]);
    expect([dropped, warnings]).toEqual([[{ element: "<rect> on line 1", why: "page" }], []]);
  });

  it("is no paper when it is no plain box, does not fill the page, lies on something, or is all there is", () => {
    const whole = [
      '<circle cx="16" cy="16" r="30" fill="#fff"/>',
      '<rect width="30" height="32" fill="#fff"/>',
      '<rect x="-20" y="-20" width="60" height="60" transform="rotate(10)" fill="#fff"/>',
      `<circle r="1"/>${paper}`,
    ];
    for (const body of whole)
      expect(inspectArtwork(svgOf(body + jar), { page: "drop" }).dropped.map(({ why }) => why)).not.toContain(
        "page",
      );
    expect(Object.keys(readArtwork(svgOf(paper), { page: "drop" }).roles)).toEqual(["#ffffff"]);
  });
});
