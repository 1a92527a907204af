/** How often, and after what pause, something is tried again when somebody else was first. */
import { StoreTrouble } from './trouble.ts'

export interface Patience {
  /** Tries in all; at least 1. */
  readonly attempts: number
  /** Waits before a further try; `tried` counts the tries so far, from 1. */
  readonly pause: (tried: number) => Promise<void>
}

/** Each lost try means that another writer got on, so this many writers at once all come through. */
const ATTEMPTS = 50

/** The first pause is at most this long, in milliseconds; about what a batch takes on a remote server. */
const FIRST_PAUSE_MS = 8

/** No pause is longer, in milliseconds. */
const LONGEST_PAUSE_MS = 250

/**
 * Pauses of random length, the longest possible one doubling with each try up to a quarter of a second, so that
 * writers who met once don't meet again.
 * @param random numbers from 0 up to, not including, 1.
 * @param sleep waits so many milliseconds.
 */
export function jittered(random: () => number = Math.random, sleep: (ms: number) => Promise<void> = later): Patience {
  return {
    attempts: ATTEMPTS,
    pause: async (tried) => {
      let longest = FIRST_PAUSE_MS
      for (let n = 1; n < tried && longest < LONGEST_PAUSE_MS; n += 1) longest *= 2
      await sleep(random() * Math.min(longest, LONGEST_PAUSE_MS))
    },
  }
}

/** Does something that is safe to do again, and does it again while the database is busy. @throws what it throws at last. */
export async function whenFree<T>({ attempts, pause }: Patience, act: () => Promise<T>): Promise<T> {
  for (let tried = 1; ; tried += 1) {
    try {
      return await act()
    } catch (error) {
      if (!(error instanceof StoreTrouble) || error.code !== 'busy' || tried >= attempts) throw error
      await pause(tried)
    }
  }
}

async function later(ms: number): Promise<void> {
  await new Promise<void>((resolve) => {
    setTimeout(resolve, ms)
  })
}
