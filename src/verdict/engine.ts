import { fault, Refused } from '../quantity/fault.ts'
import type { Rulebook } from '../rulebook/book.ts'
import { readEngine } from '../rulebook/read-engine.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { ShopLayer } from './shop.ts'

/** An engine as the shop knows it: its own sheet first, else the rulebook's. @throws Refused at /engine where there is none, or where the shop's no longer fits */
export function engineFor(book: Rulebook, shop: ShopLayer, id: string): Engine {
  const { engines = {} } = shop
  const engine = Object.hasOwn(engines, id) ? ownSheet(book, id, engines[id]) : book.engines.get(id)
  if (engine !== undefined) return engine
  throw new Refused([
    fault(
      'engine-unknown',
      '/engine',
      'No sheet for this engine.',
      `Known are ${[...book.engines.keys()].join(', ')}, and sheets that the shop has put itself; a limit is never guessed from another engine.`,
      id,
    ),
  ])
}

/** A shop's sheet was sound when it was put, but the rulebook may have other names by now; a figure that nobody asks for must not be passed over. */
function ownSheet(book: Rulebook, id: string, sheet: unknown): Engine {
  try {
    return readEngine(book, sheet)
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    throw new Refused(
      error.faults.map((f) =>
        fault(
          'engine-unfit',
          '/engine',
          `The shop’s own sheet of ${id} no longer fits the rulebook, at ${f.pointer}: ${f.says}`,
          `Put it again, mended. ${f.mend}`,
          f.value,
        ),
      ),
    )
  }
}
