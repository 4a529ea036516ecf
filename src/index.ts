// The front door: everything that runs in Node, browsers and workers alike.

export { type CheckDefinition, type CheckPiece, defineCheck, type Inspected } from "./check/check.ts";
export type { Finding, Report } from "./check/finding.ts";
export { type InspectOptions, inspect, type Surface } from "./check/inspect.ts";
export { sayFinding } from "./check/wording.ts";
export { type CarryOptions, carryPalette } from "./colorway/carry-palette.ts";
export type { Colorway } from "./colorway/colorway.ts";
export { colorwayFor } from "./colorway/colorway-for.ts";
export { contrast } from "./colorway/contrast.ts";
export { readCssColors } from "./colorway/css/read-css-colors.ts";
export { toCssColors } from "./colorway/css/to-css-colors.ts";
export { deltaE } from "./colorway/delta-e.ts";
export type { ForeignOptions } from "./colorway/foreign.ts";
export { type Gamut, gamutOf } from "./colorway/gamut.ts";
export { type Palette, type PaletteInput, palette } from "./colorway/palette.ts";
export { readPaletteJson, toPaletteJson } from "./colorway/palette-json.ts";
export { colorways, type PlannedColorway } from "./colorway/plan/colorways.ts";
export type { Terms } from "./colorway/plan/judge.ts";
export type { ColorwaysOptions } from "./colorway/plan/options.ts";
export { type Rating, rateColorway, type WeakestEdge, type Why } from "./colorway/plan/rating.ts";
export { sayRating } from "./colorway/plan/say.ts";
export { defineScheme, type SchemeDefinition, type SchemeFactory } from "./colorway/schemes/define.ts";
export * as schemes from "./colorway/schemes/index.ts";
export {
  type MakeOptions,
  type MakeSeveralOptions,
  makePalette,
  makePalettes,
} from "./colorway/schemes/make-palette.ts";
export type { SchemeColor, SchemePiece, SchemeTools, SchemeUse } from "./colorway/schemes/scheme.ts";
export { readTokens } from "./colorway/tokens/read-tokens.ts";
export { toTokens } from "./colorway/tokens/to-tokens.ts";
export { type Deficiency, type DeficiencyOptions, deficiencyView } from "./colorway/views/deficiency-view.ts";
export { greyView } from "./colorway/views/grey-view.ts";
export type { Inked } from "./colorway/views/recolored.ts";
export { type ErrorParts, SprigwrightError } from "./errors/error.ts";
export type { Arrangement, Border, Lattice, Size, Vector } from "./geometry/lattice.ts";
export { type Matrix, movePath, placing, transformPath } from "./geometry/matrix.ts";
export { areaOf, joinPaths, type Path } from "./geometry/path.ts";
export { type Pen, pen } from "./geometry/pen.ts";
export type { Region } from "./geometry/region.ts";
export type { ChangeInput } from "./layout/adjusted/changes.ts";
export { adjusted } from "./layout/adjusted.ts";
export { defineLayout, type LayoutDefinition, type LayoutFactory } from "./layout/define.ts";
export { layered } from "./layout/layered.ts";
export type {
  DrawnMotif,
  LaidOut,
  LaidPlacement,
  LayoutPiece,
  LayoutTools,
  LayoutUse,
  Placement,
  Standing,
} from "./layout/layout.ts";
export { placeAt } from "./layout/place-at.ts";
export { set } from "./layout/set.ts";
export { type Stripes, stripes } from "./layout/stripes.ts";
export { toss } from "./layout/toss.ts";
export { defineMotif, type MotifDefinition, type MotifFactory, type MotifOptions } from "./motif/define.ts";
export type { Drawing, Motif, MotifPiece, MotifTools, MotifUse, Shape } from "./motif/motif.ts";
export {
  anchor,
  arch,
  asterisk,
  berry,
  blossom,
  bud,
  buoy,
  chevron,
  citrus,
  cross,
  crumb,
  daisy,
  dash,
  dot,
  fern,
  fig,
  fish,
  ginkgo,
  gull,
  ivy,
  knot,
  leaf,
  lemon,
  lighthouse,
  lozenge,
  pear,
  pinwheel,
  pip,
  pomegranate,
  poppy,
  quatrefoil,
  ring,
  sailboat,
  scallop,
  seaweed,
  sprig,
  squiggle,
  star,
  starfish,
  strawberry,
  tick,
  triangle,
  tulip,
  umbel,
  wave,
  whelk,
} from "./motif/primitives/index.ts";
export type { FileNotes } from "./output/about.ts";
export type { Cut } from "./output/cut.ts";
export type { KeptRecipe } from "./output/kept-recipe.ts";
export { type ColorType, type Raster, type RasterizeOptions, rasterize } from "./output/png/rasterize.ts";
export { recipeInPng } from "./output/png/recipe-in-png.ts";
export { recipeInSvg } from "./output/svg/recipe-in-svg.ts";
export { type DiagramOptions, repeatDiagram } from "./output/svg/repeat-diagram.ts";
export { type Layering, type SvgOptions, toSvg } from "./output/svg/to-svg.ts";
export type { About } from "./output/xmp.ts";
export * as param from "./param.ts";
export type { JsonSchema, Param, ParamSpec, ParamsIn, ParamsOut } from "./params/param.ts";
export type { PieceInfo, PieceKind, Use } from "./params/use.ts";
export { definePattern, type Inks, type Pattern, type PatternInput } from "./pattern/pattern.ts";
export { withColorways } from "./pattern/with-colorways.ts";
export { createKit, type Kit, type KitDescription, type PieceDescription } from "./plugin/kit.ts";
export { definePlugin, type Piece, type Plugin, type PluginInput } from "./plugin/plugin.ts";
export type { BareUnit } from "./repeat/bare-unit.ts";
export { border } from "./repeat/border.ts";
export { brick } from "./repeat/brick.ts";
export { defineRepeat, type RepeatDefinition, type RepeatFactory } from "./repeat/define.ts";
export { diamond } from "./repeat/diamond.ts";
export { drop } from "./repeat/drop.ts";
export { type FitTarget, type Fitted, fitTo } from "./repeat/fit.ts";
export type { Fraction } from "./repeat/fraction.ts";
export { halfBrick } from "./repeat/half-brick.ts";
export { halfDrop } from "./repeat/half-drop.ts";
export { hexagonal } from "./repeat/hexagonal.ts";
export { mirror } from "./repeat/mirror.ts";
export { ogee } from "./repeat/ogee.ts";
export { type OgeeCurveOptions, ogeeCurve } from "./repeat/ogee-curve.ts";
export { type PlaneGroupName, planeGroup } from "./repeat/plane-group.ts";
export type { RepeatPiece, RepeatUse } from "./repeat/repeat.ts";
export { skew } from "./repeat/skew.ts";
export { straight } from "./repeat/straight.ts";
export { type StraightEquivalent, straightEquivalent } from "./repeat/straight-equivalent.ts";
export { turnover } from "./repeat/turnover.ts";
export { unitOutline } from "./repeat/unit-outline.ts";
export type { Move } from "./repeat/vector.ts";
export type { ExactMath } from "./seed/math.ts";
export type { Random } from "./seed/random.ts";
export * as shapes from "./shapes.ts";
export { buildTile } from "./tile/build.ts";
export { measureRoles, type RoleEdge, type RoleFigures } from "./tile/figures/role-figures.ts";
export { type Hold, holdsOf } from "./tile/holds.ts";
export { type Recipe, recipeOf, type TilePlan } from "./tile/recipe.ts";
export { scaleTile } from "./tile/scale.ts";
export type { Watch } from "./tile/steps.ts";
export type { Figures, Lane, Layer, Tile } from "./tile/tile.ts";
export { VERSION } from "./tile/version.ts";
export type { Length } from "./units/length.ts";
