import { stripVTControlCharacters } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxed, hanging, inkFor, PLAIN, plainly, TERMINAL, wrap } from '../../src/cli/layout.ts'

describe('lines', () => {
  it('none is wider than asked, and no word is lost or moved', () => {
    const words = fc.array(fc.stringMatching(/^[a-z0-9.,;]{1,14}$/), { maxLength: 60 })
    fc.assert(
      fc.property(words, fc.integer({ min: 20, max: 100 }), (said, width) => {
        const lines = wrap(said.join(' '), width)
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width)
        expect(lines.join(' ').split(' ').filter(Boolean)).toEqual(said)
      }),
    )
  })

  it('a word longer than the line stands alone and whole', () => {
    expect(wrap(`hash ${'a'.repeat(64)} end`, 40)).toEqual(['hash', 'a'.repeat(64), 'end'])
  })

  it('a figure and its unit stay on one line', () => {
    for (let width = 20; width < 60; width++) {
      const text = wrap('The margin reads 0.060 in (1.52 mm) and the nut takes 9.5 lb·in (1.07 N·m) at 105 lb (467 N).', width).join('\n')
      expect(text).not.toMatch(/\d\n(?:in|mm|lb|N)/)
    }
  })

  it('a mark hangs before the first line, the rest is set under it', () => {
    expect(hanging('  – ', 'one two three four', 12)).toEqual(['  – one two', '    three', '    four'])
  })

  it('a box is closed on every line, whatever it holds', () => {
    const box = boxed('HAZARDS', ['Stand aside.', 'A compressed spring throws keepers, so wear eye and face protection.'], 40, PLAIN.hazard)
    expect(box.map((line) => line.length)).toEqual(box.map(() => 40))
    expect(box.join('\n')).toContain('HAZARDS')
  })
})

describe('what a sheet says can do nothing to a terminal', () => {
  it('control and formatting characters become spaces', () => {
    expect(plainly('QL-1\u001b[2J\u0007\u202eevil\nline')).toBe('QL-1 [2J evil line')
  })
})

describe('colour', () => {
  it.each([
    ['a terminal', { isTTY: true }, {}, TERMINAL],
    ['a pipe', {}, {}, PLAIN],
    ['a terminal with NO_COLOR', { isTTY: true }, { NO_COLOR: '1' }, PLAIN],
    ['a terminal with an empty NO_COLOR, which counts as not set', { isTTY: true }, { NO_COLOR: '' }, TERMINAL],
    ['a dumb terminal', { isTTY: true }, { TERM: 'dumb' }, PLAIN],
  ])('on %s', (_where, stream, env, ink) => {
    expect(inkFor(stream, env)).toBe(ink)
  })

  it('changes nothing but colour', () => {
    const text = 'Replace the rocker stud on 3 exhaust.'
    expect(TERMINAL.strong(text)).not.toBe(text)
    expect(stripVTControlCharacters(TERMINAL.strong(text))).toBe(text)
  })
})
