export { isGround } from "../check/ground.js";
export { moneyText } from "../say/chooseMoney.js";
export { remediesWords, remedySentence } from "../say/chooseRemedy.js";
export { sizeFailureText, sizeReasonWords, sizeSentence, stagesText } from "../say/chooseSize.js";
export { swapReasonWords, swapSentence } from "../say/chooseSwap.js";
export { type SwapRow, swapRows } from "../say/swapRows.js";
export { applyRemedy } from "./applyRemedy.js";
export type { AskedRating } from "./betaAt.js";
export type { Fineness } from "./captureBetween.js";
export { fitElement } from "./fitElement.js";
export { fittedFrom } from "./fittedFrom.js";
export { hoseBores } from "./hoseBores.js";
export { isWorthTheWork } from "./isWorthTheWork.js";
export { type Remedy, type RemedyAnswer, type RemedyKind, type RemedyResult, remedyKinds } from "./RemedyAnswer.js";
export { type RemedyOptions, remedy } from "./remedy.js";
export { remedyNamed } from "./remedyNamed.js";
export type { SwapAnswer, SwapReason, SwapSide, SwapVerdict, Weight, YearlyCost } from "./SwapAnswer.js";
export { sizeNamed } from "./sizeNamed.js";
export { arrangedSystem } from "./sizing/arrangedSystem.js";
export { type ArrangementFigures, arrangementFigures } from "./sizing/arrangementFigures.js";
export type {
  Arrangement,
  NearestMiss,
  SizeAnswer,
  SizeEffort,
  SizeFailed,
  SizeFailure,
  SizeReason,
  SizeStage,
} from "./sizing/SizeAnswer.js";
export type { SizeOptions } from "./sizing/SizeOptions.js";
export { type SizeRun, type Stop, size } from "./sizing/size.js";
export { MOST_ARRANGEMENTS, type SizeProgress, sizeSteps } from "./sizing/sizeSteps.js";
export type { Side } from "./sizing/stack.js";
export { nextToDraw, withChances } from "./sizing/withChances.js";
export type { StarvesBelow } from "./starvesBelow.js";
export { asFitted, type SwapGiven, type SwapOptions, swap } from "./swap.js";
export { temperaturesOf } from "./temperaturesOf.js";
