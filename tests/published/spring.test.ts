import { describe, expect, it } from 'vitest'
import {
  coilBindMargin,
  heightWithShim,
  installedHeightAfterSink,
  shimNeeded,
  springSolidHeightSquaredGround,
} from '../../src/compute/spring-height.ts'
import {
  freeLengthLoss,
  loadLost,
  springLoadAtHeight,
  springLoadShare,
  springOpenLoad,
  springRateFromLoads,
} from '../../src/compute/spring.ts'
import { INCH, measured, POUND, POUND_PER_INCH, valueOf } from './figures.ts'

/** Second route to a rate: k = G d⁴ ÷ (8 D³ Na), from wire and coils instead of loads. */
const rateOfWire = (modulus: number, wire: number, mean: number, active: number) => (modulus * wire ** 4) / (8 * mean ** 3 * active)

const rateBetween = (h1: number, f1: number, h2: number, f2: number) =>
  valueOf(springRateFromLoads, { 'first-height': h1, 'first-load': f1, 'second-height': h2, 'second-load': f2 })

describe('rate and load', () => {
  // Shigley, Mechanical Engineering Design, problem 10-3 (solutions manual read in excerpts): music wire 2.5 mm, OD 31 mm, plain ground,
  // 14 coils: k 1.314 N/mm, solid 35 mm, free 162.8 mm, load at solid 167.9 N.
  it('Shigley problem 10-3', () => {
    expect(Math.abs(rateBetween(162.8, 0, 35, 167.9) - 1.314)).toBeLessThan(0.001)
    expect(rateBetween(162.8, 0, 35, 167.9)).toBeCloseTo(rateOfWire(81_000, 2.5, 28.5, 13), 2)
    const solid = valueOf(springLoadAtHeight, { 'known-load': 0, 'known-height': 162.8, rate: 1.314, height: 35 })
    expect(Math.abs(solid - 167.9)).toBeLessThan(0.1)
  })

  // Shigley, problem 10-5 (same manual): oil-tempered 0.2 in, D 2 in, squared, Nt 12, free 5 in, solid 2.6 in, 67.2 lbf at solid.
  it('Shigley problem 10-5, and the rate from its wire', () => {
    const rate = rateBetween(5 * INCH, 0, 2.6 * INCH, 67.2 * POUND)
    expect(rate / POUND_PER_INCH).toBeCloseTo(28, 9)
    expect(rate / POUND_PER_INCH).toBeCloseTo(rateOfWire(11.2e6, 0.2, 2, 10), 9)
  })

  // Shigley, Example 10-2, column for 0.080 in wire (recalled, not read): 20 lbf at 2 in, free 3.264 in, solid 0.964 in; robust linearity
  // of 15 % means that the load at solid is 1.15 × 20 lbf.
  it('Shigley Example 10-2 (recalled)', () => {
    const load = valueOf(springLoadAtHeight, {
      'known-load': 20 * POUND,
      'known-height': 1.264 * INCH,
      rate: 10 * POUND_PER_INCH,
      height: 0.964 * INCH,
    })
    expect(load / POUND).toBeCloseTo(1.15 * 20, 9)
  })

  // University of Cambridge, Department of Engineering, teaching notes on springs, item 2 (read): D 76 mm, wire 12.5 mm, 5 active coils,
  // squared and ground, free 140 mm; answers 110 N/mm and 619 MPa at solid (shear with the direct factor 1 + 0.5/C).
  it('Cambridge notes on springs, item 2: the shear stress at solid', () => {
    const solid = valueOf(springSolidHeightSquaredGround, { 'wire-diameter': 12.5, 'total-coils': 7 })
    const load = valueOf(springLoadAtHeight, { 'known-load': 0, 'known-height': 140, rate: 110, height: solid })
    const stress = ((1 + 0.5 / (76 / 12.5)) * 8 * load * 76) / (Math.PI * 12.5 ** 3)
    expect(Math.abs(stress - 619)).toBeLessThan(1)
    expect(Math.abs(rateOfWire(79_300, 12.5, 76, 5) - 110)).toBeLessThan(0.6)
  })

  // One engine maker's manual (V6, overhead valves; read) gives 95–100 lb at 1.570 in and 207–229 lb at 1.169 in.
  // The middle of each band gives the rate; the open load from it must fall in the band, and the rate's doubt must cover the corners.
  it('a maker’s pair of load bands is one straight line', () => {
    const half = (band: number) => (band * POUND) / Math.sqrt(3) // rectangular, JCGM 100:2008 4.3.7
    const rate = measured(springRateFromLoads, {
      'first-height': [1.57 * INCH, 0],
      'first-load': [97.5 * POUND, half(2.5)],
      'second-height': [1.169 * INCH, 0],
      'second-load': [218 * POUND, half(11)],
    })
    expect(rate.value / POUND_PER_INCH).toBeCloseTo(120.5 / 0.401, 6)
    expect(rate.u / POUND_PER_INCH).toBeCloseTo(Math.hypot(2.5, 11) / Math.sqrt(3) / 0.401, 6)
    const open = valueOf(springOpenLoad, { 'seat-load': 95 * POUND, rate: rate.value, lift: 0.401 * INCH }) / POUND
    expect(open).toBeGreaterThan(207)
    expect(open).toBeLessThan(229)
  })

  // Derived, invented figures of the demo engines' spring cards: seat load, rate, lift → open load as printed (whole pounds).
  it.each([
    ['QL-6P stock', 85, 1.7, 320, 0.405, 215],
    ['K-1 with P-2', 105, 1.7, 345, 0.45, 260],
    ['QL-8S stock', 90, 1.75, 310, 0.44, 226],
    ['QL-8S stock springs under H-2', 90, 1.75, 310, 0.512, 249],
    ['K-2 outer', 90, 1.75, 280, 0.512, 233],
    ['K-2 inner', 35, 1.69, 120, 0.512, 96],
  ])('%s (invented): open load, by lift and by height', (_name, seat, installed, rate, lift, printed) => {
    const open = valueOf(springOpenLoad, { 'seat-load': seat * POUND, rate: rate * POUND_PER_INCH, lift: lift * INCH })
    expect(Math.abs(open / POUND - printed)).toBeLessThanOrEqual(0.5)
    const at = {
      'known-load': seat * POUND,
      'known-height': installed * INCH,
      rate: rate * POUND_PER_INCH,
      height: (installed - lift) * INCH,
    }
    expect(valueOf(springLoadAtHeight, at)).toBeCloseTo(open, 8)
    expect(rateBetween(at['known-height'], at['known-load'], at.height, open)).toBeCloseTo(at.rate, 8)
  })
})

describe('share of load and of length', () => {
  // The same V6 page: 95–100 lb is ±2.6 % of its middle, 207–229 lb ±5 %. A small engine's manual: 107–125 N new, limit 102 N, 12 % under
  // the middle. The loads were read in makers' manuals, the percentages worked from them.
  it.each([
    [95, 97.5, -2.6],
    [100, 97.5, 2.6],
    [207, 218, -5.0],
    [229, 218, 5.0],
    [102, 116, -12],
  ])('%d of %d is %d %% off', (load, specified, percent) => {
    const share = valueOf(springLoadShare, { 'measured-load': load, 'specified-load': specified })
    expect(Math.abs((share - 1) * 100 - percent)).toBeLessThan(0.1)
  })

  // Free length new and at its service limit, read in the manuals of one car and one diesel maker; the percentages worked from them.
  it.each([
    [36.83, 35.83, 2.7],
    [47.9, 46.5, 2.9],
    [47.3, 45.8, 3.2],
  ])('a spring of %d mm at its limit of %d mm has lost %d %%', (fresh, limit, percent) => {
    const loss = valueOf(freeLengthLoss, { 'new-length': fresh, 'measured-length': limit })
    expect(Math.abs(loss * 100 - percent)).toBeLessThan(0.05)
  })
})

describe('solid height and coil bind', () => {
  // Shigley, Example 10-2 (recalled): 0.080 in wire, 12.05 coils squared and ground, solid 0.964 in.
  it('Shigley Example 10-2 (recalled): solid height', () => {
    expect(
      Math.abs(valueOf(springSolidHeightSquaredGround, { 'wire-diameter': 0.08 * INCH, 'total-coils': 12.05 }) / INCH - 0.964),
    ).toBeLessThan(0.0005)
  })

  // Bhandari, Design of Machine Elements, Example 10.1 (read in a textbook companion): 1,250 N, wire 7 mm, D 42 mm, 10 coils, 8 active, square and
  // ground, G 81,370 MPa, 1 mm left between coils at full load, free length 109.337611 mm: so nine gaps of 1 mm are left.
  it('Bhandari Example 10.1: the gaps left at full load', () => {
    const solid = valueOf(springSolidHeightSquaredGround, { 'wire-diameter': 7, 'total-coils': 10 })
    const squeezed = 1250 / rateOfWire(81_370, 7, 42, 8)
    const left = valueOf(coilBindMargin, { 'installed-height': 109.337611, lift: squeezed, 'solid-height': solid })
    expect(Math.abs(left - 9 * 1)).toBeLessThan(1e-6)
  })

  // Derived, invented figures of the demo engines.
  it.each([
    ['QL-6P stock', 1.7, 0.405, 1.176, 0.119],
    ['QL-6P stock springs under P-2', 1.7, 0.45, 1.176, 0.074],
    ['K-1 with P-2', 1.7, 0.45, 1.167, 0.083],
    ['QL-8S stock', 1.75, 0.44, 1.205, 0.105],
    ['QL-8S stock springs under H-2', 1.75, 0.512, 1.205, 0.033],
    ['K-2 outer', 1.75, 0.512, 1.16, 0.078],
    ['K-2 inner', 1.69, 0.512, 1.067, 0.111],
  ])('%s (invented): coil-bind margin', (_name, installed, lift, solid, margin) => {
    expect(
      valueOf(coilBindMargin, { 'installed-height': installed * INCH, lift: lift * INCH, 'solid-height': solid * INCH }) / INCH,
    ).toBeCloseTo(margin, 9)
  })

  // Derived, invented: a valve that sank 0.0185 in stands at 1.7685 in; a shim of 0.015 in brings it to 1.7535 in.
  it('QL-8S exhaust 6 (invented): the shim brings the height back', () => {
    expect(valueOf(heightWithShim, { 'installed-height': 1.7685 * INCH, shim: 0.015 * INCH }) / INCH).toBeCloseTo(1.7535, 9)
  })

  // Derived, invented: the same valve, sunk 0.0185 in, asks 0.0185 in of shim; with 0.015 in it keeps 0.0035 in too much and loses 1 lb.
  it('QL-8S exhaust 6 (invented): height after the sink, shim and load', () => {
    const sunk = valueOf(installedHeightAfterSink, { 'installed-height': 1.75 * INCH, sink: 0.0185 * INCH })
    expect(sunk / INCH).toBeCloseTo(1.7685, 9)
    expect(valueOf(shimNeeded, { 'installed-height': sunk, 'specified-height': 1.75 * INCH }) / INCH).toBeCloseTo(0.0185, 9)
    const left = valueOf(heightWithShim, { 'installed-height': sunk, shim: 0.015 * INCH }) - 1.75 * INCH
    expect(valueOf(loadLost, { rate: 310 * POUND_PER_INCH, distance: left }) / POUND).toBeCloseTo(310 * 0.0035, 9)
  })
})
