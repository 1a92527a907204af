import { parse } from 'lossless-json'
import { fault, pointer, Refused } from '../quantity/fault.ts'

/** What a text is to be read as. */
export interface JsonAsked {
  /** In words, for the mends: "finding sheet". */
  readonly one: string
  /** How such a thing is built, told where the text is nested too deep: "A finding sheet is a flat list of findings." */
  readonly built: string
  /** Levels of nesting; what lies deeper is refused before the parser goes down into it. */
  readonly deepest: number
}

/**
 * Reads one JSON value. A key given twice with two values is refused, and so is a key that JavaScript takes for an object's prototype.
 * @param numbers what a number becomes; where not given it keeps its digits as typed (a LosslessNumber)
 * @throws Refused `not-json`, `too-deep` or `key-unknown`
 */
export function jsonFrom(text: string, asked: JsonAsked, numbers?: (digits: string) => number): unknown {
  assertShallow(text, asked)
  assertNoPrototype(text)
  try {
    return numbers === undefined ? parse(text) : parse(text, undefined, numbers)
  } catch (error) {
    throw new Refused([
      fault(
        'not-json',
        '',
        `This is not JSON: ${error instanceof Error ? error.message : 'unreadable'}.`,
        `Send one ${asked.one} as JSON; NaN and Infinity are no JSON numbers.`,
      ),
    ])
  }
}

/** Such a key would vanish without a word. */
function assertNoPrototype(text: string): void {
  const found = /"(?:_|\\u005f){2}proto(?:_|\\u005f){2}"\s*:/i.exec(text)
  if (found === null) return
  const before = text.slice(0, found.index)
  const atTop = before.split('{').length - before.split('}').length === 1
  throw new Refused([fault('key-unknown', atTop ? pointer('__proto__') : '', 'There is no field "__proto__".', 'Take it out.')])
}

/** Refuses nesting before the parser recurses into it. */
function assertShallow(text: string, { built, deepest }: JsonAsked): void {
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]
    if (quoted) {
      if (c === '\\') i++
      else if (c === '"') quoted = false
    } else if (c === '"') quoted = true
    else if (c === '{' || c === '[') {
      depth++
      if (depth > deepest) throw new Refused([fault('too-deep', '', `The JSON is nested more than ${deepest} deep.`, built)])
    } else if (c === '}' || c === ']') depth--
  }
}
