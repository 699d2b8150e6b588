export { bankEfficiency } from "./capture/bankEfficiency.js";
export { betaEfficiency } from "./capture/betaEfficiency.js";
export type {
  BetaPoint,
  Capture,
  CaptureCaution,
  CaptureGiven,
  Efficiency,
  KnownCapture,
  NoCaptureReason,
  UnknownCapture,
} from "./capture/Capture.js";
export { captureOf } from "./capture/captureOf.js";
export { caughtMass } from "./capture/caughtMass.js";
export { throughFilter } from "./capture/throughFilter.js";
export { type PathResult, type Stage, type StageResult, throughStages } from "./capture/throughStages.js";
export type {
  AtCodeSizes,
  CleanlinessCode,
  CodePart,
  CodeSize,
  CountsPerMl,
  ScaleNumber,
} from "./cleanliness/CleanlinessCode.js";
export { codeOf } from "./cleanliness/codeOf.js";
export { convertSize, type SizeScale } from "./cleanliness/convertSize.js";
export { type CountRange, countsOf } from "./cleanliness/countsOf.js";
export { dirtierThan } from "./cleanliness/dirtierThan.js";
export { parseCode } from "./cleanliness/parseCode.js";
export { printCode } from "./cleanliness/printCode.js";
export { scaleLimits } from "./cleanliness/scaleLimits.js";
export { codeOfDistribution } from "./distribution/codeOfDistribution.js";
export { countFrom } from "./distribution/countFrom.js";
export { countsPerMl } from "./distribution/countsPerMl.js";
export { distributionFromCode, type IntervalEnd } from "./distribution/distributionFromCode.js";
export { distributionFromCounts } from "./distribution/distributionFromCounts.js";
export { distributionFromMass } from "./distribution/distributionFromMass.js";
export { massOf } from "./distribution/massOf.js";
export { type MixPart, mixDistributions } from "./distribution/mixDistributions.js";
export { DUST_DENSITY, type ParticleDistribution } from "./distribution/ParticleDistribution.js";
export {
  type CountedSolids,
  type Cutoffs,
  type NoSolids,
  type NoSolidsReason,
  usualCutoffs,
} from "./distribution/Solids.js";
export { sauterSize } from "./distribution/sauterSize.js";
export { binCount, sizeEdges } from "./distribution/sizeEdges.js";
export { dustSizes, type TestDust, testDusts } from "./distribution/testDusts.js";
export * from "./life/index.js";
export {
  ASSUMED_RISE,
  type AssumedLoading,
  assumedCapacities,
  assumedLoading,
  type MediumMake,
} from "./loading/assumedLoading.js";
export { type CakeLine, type CakeRun, type CakeRunFit, cakeFromLine } from "./loading/cakeFromLine.js";
export { cakeLaw } from "./loading/cakeLaw.js";
export { cakeResistance } from "./loading/cakeResistance.js";
export { type CapacityTest, capacityPoint } from "./loading/capacityPoint.js";
export { filtrateAt } from "./loading/filtrateAt.js";
export { fitCakeRun } from "./loading/fitCakeRun.js";
export { fitLoadingLaw } from "./loading/fitLoadingLaw.js";
export type { LoadingFit, LoadingMiss, LoadingPoint } from "./loading/LoadingFit.js";
export {
  type CombinedLawName,
  type LoadingLaw,
  type LoadingLawName,
  lawConstants,
  type SingleLawName,
  singleLawNames,
} from "./loading/LoadingLawKinds.js";
export { loadAtRatio } from "./loading/loadAtRatio.js";
export { loadingLaw } from "./loading/loadingLaw.js";
export { plugsAt } from "./loading/plugsAt.js";
export { rescaleLaw } from "./loading/rescaleLaw.js";
export { resistanceRatio } from "./loading/resistanceRatio.js";
export { resistanceSlope } from "./loading/resistanceSlope.js";
export { timeToFilter } from "./loading/timeToFilter.js";
export type { TankBalance, TankBalanceGiven, TankBalanceMoved } from "./tank/TankBalanceKinds.js";
export { tankBalance } from "./tank/tankBalance.js";
export { absorberLaw } from "./water/absorberLaw.js";
export { bowlDrainInterval } from "./water/bowlDrainInterval.js";
export { cleanDropFactor } from "./water/cleanDropFactor.js";
export { freeWater, type WaterInFuel } from "./water/freeWater.js";
export { type Separation, separationAt } from "./water/separationAt.js";
export { type Settling, settlingSpeed } from "./water/settlingSpeed.js";
export { type SettlingTime, settlingTime } from "./water/settlingTime.js";
export { type Hydrocarbons, typicalHydrocarbons } from "./water/typicalHydrocarbons.js";
export { type WaterStage, type WaterStageResult, waterThroughStages } from "./water/waterThroughStages.js";
