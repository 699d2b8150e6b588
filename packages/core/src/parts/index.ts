export { type Band, type BandEnd, isSpread } from "./Band.js";
export { type FibreLawName, fibreLaws } from "./fibre/index.js";
export * from "./filter/index.js";
export { type Fitting, type FittingGiven, type FittingLoss, fitting } from "./fitting.js";
export {
  colebrook,
  frictionFactor,
  LAMINAR_END,
  MOST_ROUGH,
  type Passage,
  type Regime,
  regimeOf,
  TURBULENT_START,
} from "./friction/index.js";
export type { Setting } from "./law/index.js";
export { type Line, line } from "./line.js";
export type { Named } from "./Named.js";
export { type Orifice, orifice } from "./orifice.js";
export type { Part } from "./Part.js";
export { FREE_FALL, type Rise, rise } from "./rise.js";
export {
  armourCannon,
  brundrett,
  type Cloth,
  type ClothGeometry,
  clothGeometry,
  ehrhardt,
  type ScreenFluid,
  type ScreenLaw,
  type ScreenLawName,
  screenLaws,
} from "./screen/index.js";
export { type Strainer, strainer } from "./strainer.js";
export { type TwoKKind, twoKConstants } from "./twoKConstants.js";
export { type Valve, valve } from "./valve.js";
