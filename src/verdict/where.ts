import { ENGINE, HEAD } from '../rulebook/positions.ts'

/** The least run of neighbouring numbers that is written as a range: "1–3", but "1 and 2". */
const RANGE = 3

/**
 * Positions as a person says them: "3 exhaust", "1–6 exhaust", "1, 3 and 5 intake, 2 exhaust", "2 intake and exhaust",
 * "cylinders 1–4", "left and right"; '' for the engine as a whole.
 */
export function positionsInWords(positions: readonly string[]): string {
  const intake = cylinders(positions, 'I')
  const exhaust = cylinders(positions, 'E')
  const plain = positions
    .filter((p) => /^\d+$/.test(p))
    .map(Number)
    .sort((a, b) => a - b)
  const valves =
    intake.length > 0 && intake.join() === exhaust.join()
      ? [`${numbers(intake)} intake and exhaust`]
      : [...(intake.length > 0 ? [`${numbers(intake)} intake`] : []), ...(exhaust.length > 0 ? [`${numbers(exhaust)} exhaust`] : [])]
  // A V names its heads by their banks; the one head and the engine as a whole need no place.
  const banks = positions.filter((p) => !/^\d+[IE]?$/.test(p) && p !== ENGINE && p !== HEAD)
  return [
    ...valves,
    ...(banks.length > 0 ? [banks.join(' and ')] : []),
    ...(plain.length > 0 ? [`cylinder${plain.length > 1 ? 's' : ''} ${numbers(plain)}`] : []),
  ].join(', ')
}

const cylinders = (positions: readonly string[], port: 'I' | 'E'): readonly number[] =>
  [...new Set(positions.filter((p) => /^\d+[IE]$/.test(p) && p.endsWith(port)).map((p) => Number(p.slice(0, -1))))].sort((a, b) => a - b)

/** "1–4, 6 and 8" */
function numbers(sorted: readonly number[]): string {
  const runs: number[][] = []
  for (const n of sorted) {
    const last = runs[runs.length - 1]
    if (last !== undefined && n === (last[last.length - 1] ?? 0) + 1) last.push(n)
    else runs.push([n])
  }
  const said = runs.flatMap((run) => (run.length >= RANGE ? [`${run[0]}–${run[run.length - 1]}`] : run.map(String)))
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said[said.length - 1]}`
}
