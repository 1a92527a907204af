import { fault, Refused } from '../quantity/fault.ts'
import { springInPocket, stemClearance, stemWear } from './clearance.ts'
import { marginAfterFacing } from './face.ts'
import { formulaKey } from './formula.ts'
import type { Formula } from './formula.ts'
import { grossLift, netLift } from './lift.ts'
import { guideLengthLeft, retainerToGuideTop, retainerToSealAfterCut, retainerToSealClearance, sealToSpringClearance } from './seal.ts'
import { coilBindMargin, heightWithShim, springSolidHeightSquaredGround } from './spring-height.ts'
import { freeLengthLoss, springLoadAtHeight, springLoadShare, springOpenLoad, springRateFromLoads } from './spring.ts'
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

/** Append-only: a formula whose meaning changes comes in as a new version beside the old one, which old decisions replay with. */
const ALL: readonly Formula[] = [
  coilBindMargin,
  freeLengthLoss,
  grossLift,
  guideLengthLeft,
  heightWithShim,
  marginAfterFacing,
  netLift,
  retainerToGuideTop,
  retainerToSealAfterCut,
  retainerToSealClearance,
  sealToSpringClearance,
  springInPocket,
  springLoadAtHeight,
  springLoadShare,
  springOpenLoad,
  springRateFromLoads,
  springSolidHeightSquaredGround,
  stemClearance,
  stemWear,
  studTension,
  threadMinorDiameterExternal,
  threadMinorDiameterInternal,
  threadPitchDiameter,
  threadProofLoad,
  threadStressArea,
  threadStressAreaUnified,
  tipHeightLeft,
  tipStockLeft,
]

/** Every formula that rules and records may name, by `id@version`. */
export const FORMULAS: ReadonlyMap<string, Formula> = keyed(ALL)

/** The formula of that key ("tip-stock-left@1"). Throws `Refused` (code unknown-formula) where there is none, listing the versions there are. */
export function formulaNamed(key: string): Formula {
  const found = FORMULAS.get(key)
  if (found !== undefined) return found
  const id = key.split('@')[0] ?? ''
  const versions = [...FORMULAS.keys()].filter((known) => known.startsWith(`${id}@`))
  const mend =
    versions.length > 0 ? `Name one of its versions: ${versions.join(', ')}.` : `Name one of: ${[...FORMULAS.keys()].join(', ')}.`
  throw new Refused([fault('unknown-formula', '', 'No formula goes by that name and version.', mend, key)])
}

/** Keys formulas by `id@version`; throws `Refused` (code formula-twice) where two would answer to one key. */
export function keyed(formulas: readonly Formula[]): ReadonlyMap<string, Formula> {
  const byKey = new Map<string, Formula>()
  for (const each of formulas) {
    const key = formulaKey(each)
    if (byKey.has(key))
      throw new Refused([fault('formula-twice', '', 'Two formulas have this id and version.', 'Give the new meaning a new version.', key)])
    byKey.set(key, each)
  }
  return byKey
}
