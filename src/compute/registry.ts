import { fault, Refused } from '../quantity/fault.ts'
import { springInPocket, stemClearance, stemWear } from './clearance.ts'
import { chamberAfterMilling, chamberAfterSink, clearanceVolume, compressionRatio, sinkVolume } from './compression.ts'
import { bareFaceInner, bareFaceOuter, contactCentre, interferenceAngle, interferenceGap } from './contact.ts'
import { intakeFaceCorrection, manifoldDrop, pistonToValveAfterCut, pistonToValveAfterCutFlatCrown, thicknessLeft } from './deck.ts'
import { enduranceLimit, enduranceLimitOfBar, sizeFactor, surfaceFactor } from './endurance.ts'
import { equivalentMass } from './equivalent-mass.ts'
import { marginAfterFacing, marginAfterFacingAtAngle, sinkFromNormalStock, totalSink } from './face.ts'
import { alternatingStress, goodmanSafety, meanStress } from './fatigue.ts'
import { flatnessMinimumZone, straightnessMinimumZone } from './flatness.ts'
import { formulaKey } from './formula.ts'
import type { Described, Formula, GroupFormula } from './formula.ts'
import {
  grooveConcentrationPeterson,
  grooveConcentrationPetersonBending,
  grooveConcentrationRoark,
  grooveConcentrationRoarkBending,
  grooveNetDiameter,
} from './groove.ts'
import { bellmouth, outOfRound, sidePlayToClearance, toolDoubledClearance } from './guide.ts'
import { grossLift, netLift } from './lift.ts'
import { notchFactorHeywood, notchFactorNeuber } from './notch.ts'
import { chanceFailsNext, chanceRestSound, lifeAtShare } from './odds.ts'
import { drainFlow, poolLevel, poolLevelDoubleFlow, poolLevelHalfFlow } from './oil.ts'
import { pressFitPressure, pressHoopStress, pressPullOut } from './press.ts'
import { guideLengthLeft, retainerToGuideTop, retainerToSealAfterCut, retainerToSealClearance, sealToSpringClearance } from './seal.ts'
import {
  seatInsideDiameterAfterFeeds,
  seatOutsideDiameterAfterFeeds,
  throatFeedToInsideDiameter,
  topFeedToOutsideDiameter,
} from './seat-feed.ts'
import { seatInsideDiameter, seatOutsideDiameter, seatWidth } from './seat-ring.ts'
import { seatFeedSink, seatWidthAfterSeatFeed } from './seat-widening.ts'
import {
  setFarthest,
  setFarthestForce,
  setFarthestPressure,
  setFarthestVolume,
  setMedian,
  setMedianForce,
  setMedianPressure,
  setMedianVolume,
  setSpread,
  setSpreadForce,
  setSpreadPressure,
  setSpreadVolume,
} from './set.ts'
import { coilBindMargin, heightWithShim, installedHeightAfterSink, shimNeeded, springSolidHeightSquaredGround } from './spring-height.ts'
import { springNaturalFrequency, surgeOrder } from './spring-surge.ts'
import { springMeanDiameter, springRateFromWire, squarenessAngle } from './spring-wire.ts'
import { freeLengthLoss, loadLost, springLoadAtHeight, springLoadShare, springOpenLoad, springRateFromLoads } from './spring.ts'
import { netTensionStress, studBending, studSideForce } from './stud-stress.ts'
import { studTension } from './stud.ts'
import {
  threadMinorDiameterExternal,
  threadMinorDiameterInternal,
  threadPitchDiameter,
  threadProofLoad,
  threadStressArea,
  threadStressAreaUnified,
} from './thread.ts'
import { tipHeightLeft, tipStockLeft } from './tip.ts'
import { torqueTension, torqueTensionByFriction } from './torque.ts'
import { camPeakAcceleration, harmonicNoseAcceleration, requiredSpringForce, springForceInHand, valveFloatSpeed } from './valve-motion.ts'
import { viscosityAtTemperature } from './viscosity.ts'

/** Append-only: a formula whose meaning changes comes in as a new version beside the old one, which old decisions replay with. */
const ALL: readonly Formula[] = [
  alternatingStress,
  bareFaceInner,
  bareFaceOuter,
  bellmouth,
  camPeakAcceleration,
  chamberAfterMilling,
  chamberAfterSink,
  chanceFailsNext,
  chanceRestSound,
  clearanceVolume,
  coilBindMargin,
  compressionRatio,
  contactCentre,
  drainFlow,
  enduranceLimit,
  enduranceLimitOfBar,
  equivalentMass,
  freeLengthLoss,
  goodmanSafety,
  grooveConcentrationPeterson,
  grooveConcentrationPetersonBending,
  grooveConcentrationRoark,
  grooveConcentrationRoarkBending,
  grooveNetDiameter,
  grossLift,
  guideLengthLeft,
  harmonicNoseAcceleration,
  heightWithShim,
  installedHeightAfterSink,
  intakeFaceCorrection,
  interferenceAngle,
  interferenceGap,
  lifeAtShare,
  loadLost,
  manifoldDrop,
  marginAfterFacing,
  marginAfterFacingAtAngle,
  meanStress,
  netLift,
  netTensionStress,
  notchFactorHeywood,
  notchFactorNeuber,
  outOfRound,
  pistonToValveAfterCut,
  pistonToValveAfterCutFlatCrown,
  poolLevel,
  poolLevelDoubleFlow,
  poolLevelHalfFlow,
  pressFitPressure,
  pressHoopStress,
  pressPullOut,
  requiredSpringForce,
  retainerToGuideTop,
  retainerToSealAfterCut,
  retainerToSealClearance,
  sealToSpringClearance,
  seatFeedSink,
  seatInsideDiameter,
  seatInsideDiameterAfterFeeds,
  seatOutsideDiameter,
  seatOutsideDiameterAfterFeeds,
  seatWidth,
  seatWidthAfterSeatFeed,
  shimNeeded,
  sidePlayToClearance,
  sinkFromNormalStock,
  sinkVolume,
  sizeFactor,
  springForceInHand,
  springInPocket,
  springLoadAtHeight,
  springLoadShare,
  springMeanDiameter,
  springNaturalFrequency,
  springOpenLoad,
  springRateFromLoads,
  springRateFromWire,
  springSolidHeightSquaredGround,
  squarenessAngle,
  stemClearance,
  stemWear,
  studBending,
  studSideForce,
  studTension,
  surfaceFactor,
  surgeOrder,
  thicknessLeft,
  threadMinorDiameterExternal,
  threadMinorDiameterInternal,
  threadPitchDiameter,
  threadProofLoad,
  threadStressArea,
  threadStressAreaUnified,
  throatFeedToInsideDiameter,
  tipHeightLeft,
  tipStockLeft,
  toolDoubledClearance,
  topFeedToOutsideDiameter,
  torqueTension,
  torqueTensionByFriction,
  totalSink,
  valveFloatSpeed,
  viscosityAtTemperature,
]

/** The same for formulas over lists. No key stands in both. */
const ALL_GROUPS: readonly GroupFormula[] = [
  flatnessMinimumZone,
  setFarthest,
  setFarthestForce,
  setFarthestPressure,
  setFarthestVolume,
  setMedian,
  setMedianForce,
  setMedianPressure,
  setMedianVolume,
  setSpread,
  setSpreadForce,
  setSpreadPressure,
  setSpreadVolume,
  straightnessMinimumZone,
]

/** Every formula that rules and records may name, by `id@version`. */
export const FORMULAS: ReadonlyMap<string, Formula> = keyed(ALL)

/** Every formula over lists that rules and records may name, by `id@version`. */
export const GROUP_FORMULAS: ReadonlyMap<string, GroupFormula> = keyed(ALL_GROUPS)

/** The formula of that key ("tip-stock-left@1"). Throws `Refused` (code unknown-formula) where there is none, listing the versions there are. */
export function formulaNamed(key: string): Formula {
  return named(FORMULAS, key)
}

/** The formula over lists of that key ("set-spread@1"). Throws as `formulaNamed` does. */
export function groupFormulaNamed(key: string): GroupFormula {
  return named(GROUP_FORMULAS, key)
}

function named<F extends Described>(formulas: ReadonlyMap<string, F>, key: string): F {
  const found = formulas.get(key)
  if (found !== undefined) return found
  const id = key.split('@')[0] ?? ''
  const versions = [...formulas.keys()].filter((known) => known.startsWith(`${id}@`))
  const mend =
    versions.length > 0 ? `Name one of its versions: ${versions.join(', ')}.` : `Name one of: ${[...formulas.keys()].join(', ')}.`
  throw new Refused([fault('unknown-formula', '', 'No formula goes by that name and version.', mend, key)])
}

/** Keys formulas by `id@version`; throws `Refused` (code formula-twice) where two would answer to one key. */
export function keyed<F extends Described>(formulas: readonly F[]): ReadonlyMap<string, F> {
  const byKey = new Map<string, F>()
  for (const each of formulas) {
    const key = formulaKey(each)
    if (byKey.has(key))
      throw new Refused([fault('formula-twice', '', 'Two formulas have this id and version.', 'Give the new meaning a new version.', key)])
    byKey.set(key, each)
  }
  return byKey
}
