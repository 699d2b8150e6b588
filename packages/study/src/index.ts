export type { Band, LimitName } from "@thirstline/core";
export type { Caution, CeilingFigure, CheckAnswer, CheckPoint, PartRow, Reason, Verdict } from "./check/CheckAnswer.js";
export { type CheckOptions, check } from "./check/check.js";
export { type Cost, costsInOrder } from "./check/costsInOrder.js";
export type { GroundReason } from "./check/ground.js";
export type { AtChange, CurveAnswer, CurveColumn, CurvePoint, CurveState } from "./curve/CurveAnswer.js";
export { type CurveOptions, curve } from "./curve/curve.js";
export type {
  ChangeRule,
  CleanlinessRow,
  ElementRow,
  LifeAnswer,
  LifeCaution,
  LifeReason,
  LifeSpread,
  Measures,
  PartialChange,
} from "./life/LifeAnswer.js";
export { life } from "./life/life.js";
export { bandFigure, bandText } from "./say/bandText.js";
export { capital } from "./say/capital.js";
export { cautionText } from "./say/cautionText.js";
export { curveSentence } from "./say/curveSentence.js";
export { dueWords } from "./say/dueWords.js";
export { exactQuantity } from "./say/exactQuantity.js";
export { limitName } from "./say/limitName.js";
export { partWords } from "./say/partWords.js";
export { figure, quantity } from "./say/quantity.js";
export { safetyWords } from "./say/safetyWords.js";
export { type SideWords, sideWords } from "./say/sideWords.js";
export { type QuantityKind, type ShownUnit, siUnit, type UnitSystem, unitOf } from "./say/units.js";
export { verdictSentence } from "./say/verdictSentence.js";
export { type Figure, plain, type Words } from "./say/words.js";
export { lifeDraws } from "./spread/lifeDraws.js";
export { spreadOf } from "./spread/spreadOf.js";
