export { type Band, type LimitName, PLUGGED, parseCode, scaleLimits } from "@thirstline/core";
export type {
  CardAnswer,
  CardDuplex,
  CardElement,
  CardFacts,
  CardItem,
  CardNext,
  CardPriming,
  CardReading,
  CardSection,
  CardSectionName,
  CardSettling,
  CardVolumes,
  CardWater,
} from "./card/CardAnswer.js";
export { type CardOptions, card } from "./card/card.js";
export { cardHtml } from "./card/cardHtml.js";
export { cardNames } from "./card/changedOf.js";
export { PRIMER_FILL, primingStrokes } from "./card/primingStrokes.js";
export { typeSize } from "./card/typeSize.js";
export type { Caution, CeilingFigure, CheckAnswer, CheckPoint, PartRow, Reason, Verdict } from "./check/CheckAnswer.js";
export { type CheckOptions, check } from "./check/check.js";
export { type Cost, costsInOrder } from "./check/costsInOrder.js";
export type { GroundReason } from "./check/ground.js";
export * from "./choose/index.js";
export type { AtChange, CurveAnswer, CurveColumn, CurvePoint, CurveState } from "./curve/CurveAnswer.js";
export { type CurveOptions, curve } from "./curve/curve.js";
export * from "./fleet/index.js";
export type {
  Finding,
  GaugeAnswer,
  GaugeCaution,
  GaugeElement,
  GaugeOptions,
  GaugeReason,
  GaugeSide,
  HoursLeft,
  Interval,
  LawWeight,
  Outlier,
  ReadingPlace,
  SideAnswer,
} from "./gauge/GaugeAnswer.js";
export { gauge } from "./gauge/gauge.js";
export { type Shape, shapes } from "./gauge/shapes.js";
export type {
  ChangeRule,
  CleanlinessRow,
  ElementRow,
  FlowShare,
  LifeAnswer,
  LifeCaution,
  LifeReason,
  LifeSpread,
  Measures,
  PartialChange,
} from "./life/LifeAnswer.js";
export { life } from "./life/life.js";
export { lifeTrace } from "./life/lifeTrace.js";
export type { WaterAnswer, WaterRow } from "./life/WaterAnswer.js";
export { bandFigure, bandText } from "./say/bandText.js";
export { capital } from "./say/capital.js";
export { capitalWords } from "./say/capitalWords.js";
export { cardTitle } from "./say/cardTitle.js";
export { cautionText } from "./say/cautionText.js";
export { checkSpreadWords } from "./say/checkSpreadWords.js";
export { csvCell } from "./say/csvCell.js";
export { curveSentence } from "./say/curveSentence.js";
export { dueWords } from "./say/dueWords.js";
export { exactQuantity } from "./say/exactQuantity.js";
export { figOf } from "./say/figOf.js";
export { fleetCautionWords, fleetReasonWords } from "./say/fleetReasonWords.js";
export { fleetDueWords, fleetGroupTitle, fleetLimitWords, fleetSentence } from "./say/fleetWords.js";
export { type FindingWords, gaugeFinding } from "./say/gaugeFinding.js";
export { gaugeSentence } from "./say/gaugeSentence.js";
export { gaugeCautionWords, outlierWords, withoutWords } from "./say/gaugeWords.js";
export { joined } from "./say/joined.js";
export { leftFigure } from "./say/leftFigure.js";
export { lifeCautions } from "./say/lifeCautions.js";
export { endClause, lifeSentence } from "./say/lifeSentence.js";
export { chanceShort, chanceText, changeWords, spreadTime, spreadWords } from "./say/lifeWords.js";
export { limitName } from "./say/limitName.js";
export { namesWords } from "./say/namesWords.js";
export { partialWords } from "./say/partialWords.js";
export { partWords } from "./say/partWords.js";
export { protectionWords } from "./say/protectionWords.js";
export { figure, quantity } from "./say/quantity.js";
export { safetyWords } from "./say/safetyWords.js";
export { type SideWords, sideWords } from "./say/sideWords.js";
export { type QuantityKind, type ShownUnit, siUnit, type UnitSystem, unitOf } from "./say/units.js";
export { verdictSentence } from "./say/verdictSentence.js";
export { waterWords } from "./say/waterWords.js";
export { type Figure, fig, plain, say, type Words } from "./say/words.js";
export {
  type CheckSpread,
  checkDraws,
  checkSpreadOf,
  isSuctionUncertain,
  type Quantiles,
} from "./spread/checkSpread.js";
export { type CurveDrawOptions, type CurveSpread, curveDraws, curveSpreadOf } from "./spread/curveSpread.js";
export { isUncertain, lifeDraws, type Slice } from "./spread/lifeDraws.js";
export { spreadOf } from "./spread/spreadOf.js";
