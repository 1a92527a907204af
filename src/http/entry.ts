/** What a shop puts: read as JSON, and refused as an entry where it can't be used. */
import { Refused } from '../quantity/fault.ts'
import { jsonFrom } from '../rulebook/json-text.ts'
import { readBody, type BodyLimit } from './body.ts'
import { oneProblem, problem, refusal, Stopped } from './problem.ts'

/** Levels of an engine sheet in its entry: cards, kind, card, facts, part, fact, port, value. */
const DEEPEST = 12

/** The sheet of an engine with a dozen cards takes some 20 kB. */
export const ENGINE_LIMIT: BodyLimit = { most: 128 * 1024, mend: 'Put one engine a sheet, with the cards that are fitted.' }
export const ENTRY_LIMIT: BodyLimit = { most: 8 * 1024, mend: 'Send the fields alone, and a note of a few lines.' }

/**
 * The JSON of a request's body, handed to what keeps it.
 * @throws Stopped `entry-refused` with every fault, or as readBody does; StoreTrouble
 */
export async function keepEntry<T>(request: Request, limit: BodyLimit, keep: (json: unknown) => Promise<T>): Promise<T> {
  const { text } = await readBody(request, limit)
  try {
    return await keep(jsonFrom(text, { one: 'entry', built: 'An entry has a few levels; see GET /v1/engines.', deepest: DEEPEST }, Number))
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    const shown = refusal(error)
    const [first, ...rest] = error.faults
    throw new Stopped(shown.status === 422 && first !== undefined ? problem(422, 'entry-refused', [first, ...rest]) : shown)
  }
}

/** Answers for a limit that the rulebook does not have. */
export const noSuchLimit = (): Stopped =>
  new Stopped(oneProblem(404, 'not-found', 'The rulebook has no limit of that name.', 'GET /v1/limits lists them.'))
