import { createRequire } from 'node:module'
import type * as PolygonClipping from 'polygon-clipping'
import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import { seatInsideDiameter, seatOutsideDiameter, seatWidth } from '../../src/compute/seat-ring.ts'
import {
  seatInsideDiameterAfterFeeds,
  seatOutsideDiameterAfterFeeds,
  throatFeedToInsideDiameter,
  topFeedToOutsideDiameter,
} from '../../src/compute/seat-feed.ts'
import { seatFeedSink, seatWidthAfterSeatFeed } from '../../src/compute/seat-widening.ts'
import { INCH, valueOf } from './figures.ts'

const clipping = createRequire(import.meta.url)('polygon-clipping') as typeof PolygonClipping

type Angles = readonly [top: number, seat: number, throat: number]
type Feeds = readonly [top: number, seat: number, throat: number]

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180)
const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180)

/**
 * Second route: the metal of the seat as a polygon (radius, height), from which polygon-clipping takes away what lies above each
 * cutter's line. The seat is then found as the longest edge of the remaining metal at the seat's slope.
 */
function sectionAfter(
  angles: Angles,
  outside: number,
  width: number,
  feeds: Feeds,
  throatBore: number,
): { outside: number; inside: number } {
  const [top, seat, throat] = angles
  const rim = outside / 2
  const inner = rim - width * cos(seat)
  const lines = [
    { slope: tan(top), through: [rim, rim * tan(seat)] as const, feed: feeds[0] },
    { slope: tan(seat), through: [rim, rim * tan(seat)] as const, feed: feeds[1] },
    { slope: tan(throat), through: [inner, inner * tan(seat)] as const, feed: feeds[2] },
  ]
  const [near, far, low, high] = [throatBore / 2, rim + 6, -50, 300]
  let metal = clipping.union([
    [
      [near, low],
      [far, low],
      [far, high],
      [near, high],
      [near, low],
    ],
  ])
  for (const { slope, through, feed } of lines) {
    const at = (r: number): number => through[1] - feed + slope * (r - through[0])
    metal = clipping.difference(metal, [
      [
        [near - 1, at(near - 1)],
        [far + 1, at(far + 1)],
        [far + 1, 900],
        [near - 1, 900],
        [near - 1, at(near - 1)],
      ],
    ])
  }
  const ring = metal[0]?.[0] ?? []
  const edges = ring.slice(1).map((end, i) => [ring[i] ?? [0, 0], end] as const)
  const onSeat = edges.filter(([[r1, z1], [r2, z2]]) => Math.abs(r2 - r1) > 1e-9 && Math.abs((z2 - z1) / (r2 - r1) - tan(seat)) < 1e-6)
  const radii = onSeat.flatMap(([[r1], [r2]]) => [r1, r2])
  return { outside: 2 * Math.max(...radii), inside: 2 * Math.min(...radii) }
}

// Derived: no published figure of a cut seat was found. Worked in closed form and by clipping half-planes, here once more with
// polygon-clipping. Start: outside diameter, width; feeds of top, seat and throat; then outside diameter, inside diameter and width.
const CASES: readonly (readonly [string, Angles, number, number, Feeds, number, number, number])[] = [
  ['30/45/60 as cut', [30, 45, 60], 50, 1.5, [0, 0, 0], 50, 47.878679656440355, 1.5],
  ['top cutter 0.10 mm', [30, 45, 60], 50, 1.5, [0.1, 0, 0], 49.526794919243116, 47.878679656440355, 1.1653934785048814],
  ['throat cutter 0.20 mm', [30, 45, 60], 50, 1.5, [0, 0, 0.2], 50, 48.425089817954124, 1.113629669484379],
  ['seat cutter 0.20 mm', [30, 45, 60], 50, 1.5, [0, 0.2, 0], 50.946410161513775, 47.33226949492658, 2.555583373505876],
  [
    'all three, 30/45/75',
    [30, 45, 75],
    40.132,
    1.905,
    [0.1016, 0.1524, 0.254],
    1.5894641016151376 * INCH,
    1.4768621860522935 * INCH,
    0.07962157806908214 * INCH,
  ],
  ['all three, 15/30/60', [15, 30, 60], 42, 1.8, [0.05, 0.1, 0.12], 42.323205080756885, 38.9169495625274, 1.9666025403784417],
]

describe('a seat after its three cutters (derived; second route polygon-clipping)', () => {
  it.each(CASES)('%s', (_name, angles, outside, width, feeds, expectedOutside, expectedInside, expectedWidth) => {
    const [top, seat, throat] = angles
    const inside = valueOf(seatInsideDiameter, { 'outside-diameter': outside, width, angle: seat })
    const after = {
      outside: valueOf(seatOutsideDiameterAfterFeeds, {
        'outside-diameter': outside,
        'top-feed': feeds[0],
        'seat-feed': feeds[1],
        'seat-angle': seat,
        'top-angle': top,
      }),
      inside: valueOf(seatInsideDiameterAfterFeeds, {
        'inside-diameter': inside,
        'seat-feed': feeds[1],
        'throat-feed': feeds[2],
        'seat-angle': seat,
        'throat-angle': throat,
      }),
    }
    expect(after.outside).toBeCloseTo(expectedOutside, 7)
    expect(after.inside).toBeCloseTo(expectedInside, 7)
    const left = valueOf(seatWidth, { 'outside-diameter': after.outside, 'inside-diameter': after.inside, angle: seat })
    expect(left).toBeCloseTo(expectedWidth, 7)
    const section = sectionAfter(angles, outside, width, feeds, inside - 4)
    expect(section.outside).toBeCloseTo(after.outside, 7)
    expect(section.inside).toBeCloseTo(after.inside, 7)
  })

  // Derived: the throat bore of 48 mm stops the inside edge, which the cutters alone would bring to 46.786 mm.
  it('the throat bore is the edge where it is larger', () => {
    const cut = valueOf(seatInsideDiameterAfterFeeds, {
      'inside-diameter': 47.87867966,
      'seat-feed': 0.4,
      'throat-feed': 0,
      'seat-angle': 45,
      'throat-angle': 60,
    })
    expect(cut).toBeLessThan(48)
    const section = sectionAfter([30, 45, 60], 50, 1.5, [0, 0.4, 0], 48)
    expect(section.inside).toBeCloseTo(48, 9)
    expect(valueOf(seatWidth, { 'outside-diameter': section.outside, 'inside-diameter': 48, angle: 45 })).toBeCloseTo(2.752639648353592, 7)
  })
})

describe('the feed that reaches a target', () => {
  // Derived: outside diameter 50.6 and width 2.6 to 50.0 and 1.5 with a seat feed of 0.05 already taken; the feeds put back into the section.
  it('top 0.1768 and throat 0.3998 bring a wide seat to its band', () => {
    const inside = valueOf(seatInsideDiameter, { 'outside-diameter': 50.6, width: 2.6, angle: 45 })
    const wanted = valueOf(seatInsideDiameter, { 'outside-diameter': 50, width: 1.5, angle: 45 })
    const held = {
      outside: valueOf(seatOutsideDiameterAfterFeeds, {
        'outside-diameter': 50.6,
        'top-feed': 0,
        'seat-feed': 0.05,
        'seat-angle': 45,
        'top-angle': 30,
      }),
      inside: valueOf(seatInsideDiameterAfterFeeds, {
        'inside-diameter': inside,
        'seat-feed': 0.05,
        'throat-feed': 0,
        'seat-angle': 45,
        'throat-angle': 60,
      }),
    }
    const top = valueOf(topFeedToOutsideDiameter, {
      'outside-diameter': held.outside,
      'target-outside-diameter': 50,
      'seat-angle': 45,
      'top-angle': 30,
    })
    const throat = valueOf(throatFeedToInsideDiameter, {
      'inside-diameter': held.inside,
      'target-inside-diameter': wanted,
      'seat-angle': 45,
      'throat-angle': 60,
    })
    expect(top).toBeCloseTo(0.17679491924311286, 8)
    expect(throat).toBeCloseTo(0.39978665695488047, 8)
    const section = sectionAfter([30, 45, 60], 50.6, 2.6, [top, 0.05, throat], 44)
    expect([section.outside, section.inside].map((d) => d.toFixed(7))).toEqual([50, wanted].map((d) => d.toFixed(7)))
  })

  // Derived: what each unit of feed does to a diameter.
  it.each([
    [
      'top of 30/45',
      4.7320508075688785,
      () =>
        2 / valueOf(topFeedToOutsideDiameter, { 'outside-diameter': 50, 'target-outside-diameter': 48, 'seat-angle': 45, 'top-angle': 30 }),
    ],
    [
      'throat of 45/60',
      2.732050807568879,
      () =>
        2 /
        valueOf(throatFeedToInsideDiameter, { 'inside-diameter': 46, 'target-inside-diameter': 48, 'seat-angle': 45, 'throat-angle': 60 }),
    ],
    [
      'throat of 45/75',
      0.7320508075688772,
      () =>
        2 /
        valueOf(throatFeedToInsideDiameter, { 'inside-diameter': 46, 'target-inside-diameter': 48, 'seat-angle': 45, 'throat-angle': 75 }),
    ],
    [
      'throat of 45/70',
      2 / 1.74748,
      () =>
        2 /
        valueOf(throatFeedToInsideDiameter, { 'inside-diameter': 46, 'target-inside-diameter': 48, 'seat-angle': 45, 'throat-angle': 70 }),
    ],
  ])('%s: %d of diameter for each unit of feed', (_name, expected, found) => {
    expect(found()).toBeCloseTo(expected, 5)
  })

  // US Army TM 10-3930-671-24 (read): the flat stone makes the outside smaller, the steep one makes the inside larger.
  it('top takes the outer edge inward, throat the inner edge outward, and the seat cutter widens both ways', () => {
    const ring = { 'seat-angle': 45, 'seat-feed': 0 }
    expect(valueOf(seatOutsideDiameterAfterFeeds, { ...ring, 'outside-diameter': 40, 'top-feed': 0.1, 'top-angle': 15 })).toBeLessThan(40)
    expect(
      valueOf(seatInsideDiameterAfterFeeds, { ...ring, 'inside-diameter': 36, 'throat-feed': 0.1, 'throat-angle': 75 }),
    ).toBeGreaterThan(36)
    const cut = { 'seat-feed': 0.1, 'seat-angle': 45 }
    expect(valueOf(seatOutsideDiameterAfterFeeds, { ...cut, 'outside-diameter': 40, 'top-feed': 0, 'top-angle': 15 })).toBeGreaterThan(40)
    expect(valueOf(seatInsideDiameterAfterFeeds, { ...cut, 'inside-diameter': 36, 'throat-feed': 0, 'throat-angle': 75 })).toBeLessThan(36)
  })

  it('the width after a seat cut is that of the two moved edges, and the feed back from it is the sink', () => {
    const angles = { 'top-angle': 30, 'seat-angle': 45, 'throat-angle': 60 }
    const wide = valueOf(seatWidthAfterSeatFeed, { width: 1.5, 'seat-feed': 0.2, ...angles })
    expect(wide).toBeCloseTo(2.555583373505876, 7)
    expect(valueOf(seatFeedSink, { width: 1.5, 'target-width': wide, ...angles })).toBeCloseTo(0.2, 12)
    const section = sectionAfter([30, 45, 60], 50, 1.5, [0, 0.2, 0], 42)
    expect((section.outside - section.inside) / 2 / cos(45)).toBeCloseTo(wide, 7)
  })

  // Common practice: the top cutter must be flatter and the throat cutter steeper than the seat by at least 10°. A 30° top cutter on a
  // 30° intake seat is the seat cutter itself.
  it.each([
    [
      'top too steep',
      () =>
        apply(
          topFeedToOutsideDiameter,
          exactly({ 'outside-diameter': 45, 'target-outside-diameter': 44, 'seat-angle': 30, 'top-angle': 30 }),
        ),
      '“top-angle”',
    ],
    [
      'top nearly',
      () =>
        apply(
          topFeedToOutsideDiameter,
          exactly({ 'outside-diameter': 45, 'target-outside-diameter': 44, 'seat-angle': 30, 'top-angle': 20.5 }),
        ),
      '10°',
    ],
    [
      'throat too flat',
      () =>
        apply(
          throatFeedToInsideDiameter,
          exactly({ 'inside-diameter': 40, 'target-inside-diameter': 41, 'seat-angle': 45, 'throat-angle': 54 }),
        ),
      '“throat-angle”',
    ],
    [
      'either',
      () => apply(seatWidthAfterSeatFeed, exactly({ width: 1, 'seat-feed': 0.1, 'top-angle': 30, 'seat-angle': 45, 'throat-angle': 54 })),
      '“throat-angle”',
    ],
  ])('%s: refused', (_name, asked, word) => {
    const answer = asked()
    expect(answer.ok ? '' : answer.why).toContain(word)
  })

  it('exactly 10° apart is taken', () => {
    expect(
      apply(topFeedToOutsideDiameter, exactly({ 'outside-diameter': 45, 'target-outside-diameter': 44, 'seat-angle': 30, 'top-angle': 20 }))
        .ok,
    ).toBe(true)
  })
})

// Derived, invented figures of the demo engines: ring at target, inches.
describe('the invented engines’ seats', () => {
  it.each([
    ['QL-6P intake', 30, 1.7135, 1.6269, 0.05],
    ['QL-6P exhaust', 45, 1.444, 1.3337, 0.078],
    ['QL-8S intake', 45, 1.872, 1.8013, 0.05],
    ['QL-8S exhaust', 45, 1.51, 1.3997, 0.078],
  ])('%s', (_name, angle, outside, inside, width) => {
    expect(
      Math.abs(valueOf(seatWidth, { 'outside-diameter': outside * INCH, 'inside-diameter': inside * INCH, angle }) / INCH - width),
    ).toBeLessThan(0.0001)
    const ring = { width: width * INCH, angle }
    expect(Math.abs(valueOf(seatOutsideDiameter, { 'inside-diameter': inside * INCH, ...ring }) / INCH - outside)).toBeLessThan(0.0001)
    expect(Math.abs(valueOf(seatInsideDiameter, { 'outside-diameter': outside * INCH, ...ring }) / INCH - inside)).toBeLessThan(0.0001)
  })
})

function exactly(values: Readonly<Record<string, number>>) {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, { value, u: 0 }]))
}
