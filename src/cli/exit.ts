/** What the command's exit code says; scripts rely on it. */
export const EXIT = { done: 0, refused: 1, usage: 2, database: 3, fault: 70 } as const

/** Ends the command with a message and a code: a file that is not there, a shop that nobody knows. */
export class Ended extends Error {
  readonly code: number
  constructor(code: number, message: string) {
    super(message)
    this.name = 'Ended'
    this.code = code
  }
}
