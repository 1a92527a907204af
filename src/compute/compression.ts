import { PI } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const MM3_PER_CM3 = 1000
const BORE: FormulaInput = { kind: 'length', says: 'cylinder bore', least: 30, most: 250 }
const CHAMBER: FormulaInput = { kind: 'volume', says: 'chamber volume as measured', least: 5, most: 500 }

/** Volume of a disc in cm³ from mm, and its change with each. */
function disc(diameter: number, thickness: number) {
  const area = ((PI / 4) * diameter * diameter) / MM3_PER_CM3
  return { value: area * thickness, diameter: ((PI / 2) * diameter * thickness) / MM3_PER_CM3, thickness: area }
}

/** Volume above the piston at the top of its stroke: sum of volumes, cm³. Deck clearance counts from block deck down to the piston's edge. */
export const clearanceVolume = formula({
  id: 'clearance-volume',
  version: 1,
  says: 'Clearance volume = chamber + gasket (π/4 × bore² × thickness) + deck clearance (π/4 × bore² × clearance) + dish of the piston.',
  source: 'Definition (a sum of volumes).',
  inputs: {
    chamber: CHAMBER,
    'gasket-bore': { kind: 'length', says: 'bore of the gasket', least: 30, most: 260 },
    'gasket-thickness': { kind: 'length', says: 'thickness of the gasket, crushed', least: 0, most: 5 },
    bore: BORE,
    'deck-clearance': { kind: 'length', says: 'piston below the deck; below zero where it stands above', least: -3, most: 5 },
    dish: { kind: 'volume', says: 'volume of the piston’s dish and pockets; below zero for a dome', least: -100, most: 100 },
  },
  output: { kind: 'volume', says: 'clearance volume' },
  evaluate: (x) => {
    const gasket = disc(x['gasket-bore'], x['gasket-thickness'])
    const deck = disc(x.bore, x['deck-clearance'])
    return {
      value: x.chamber + gasket.value + deck.value + x.dish,
      partials: {
        chamber: 1,
        'gasket-bore': gasket.diameter,
        'gasket-thickness': gasket.thickness,
        bore: deck.diameter,
        'deck-clearance': deck.thickness,
        dish: 1,
      },
    }
  },
})

/** Compression ratio: (swept volume + clearance volume) ÷ clearance volume, no unit. Bore 30–250 mm, clearance 5–500 cm³. */
export const compressionRatio = formula({
  id: 'compression-ratio',
  version: 1,
  says: 'Compression ratio = (π/4 × bore² × stroke + clearance volume) ÷ clearance volume.',
  source: 'Definition (a ratio).',
  inputs: {
    bore: BORE,
    stroke: { kind: 'length', says: 'stroke', least: 20, most: 300 },
    'clearance-volume': { kind: 'volume', says: 'volume above the piston at the top of its stroke', least: 5, most: 500 },
  },
  output: { kind: 'ratio', says: 'compression ratio' },
  evaluate: (x) => {
    const swept = disc(x.bore, x.stroke)
    const left = x['clearance-volume']
    return {
      value: (swept.value + left) / left,
      partials: { bore: swept.diameter / left, stroke: swept.thickness / left, 'clearance-volume': -swept.value / (left * left) },
    }
  },
})

/** Chamber volume once the deck is cut: volume − area × length, cm³. The chamber's opening in the deck, not the bore; its walls taken as upright. */
export const chamberAfterMilling = formula({
  id: 'chamber-after-milling',
  version: 1,
  says: 'Chamber after the cut = chamber before − opening of the chamber in the deck × cut.',
  source: 'Plane geometry; common practice.',
  inputs: {
    chamber: CHAMBER,
    opening: { kind: 'area', says: 'area of the chamber’s opening in the deck plane', least: 500, most: 40000 },
    cut: { kind: 'length', says: 'how much comes off the deck', least: 0, most: 5 },
  },
  output: { kind: 'volume', says: 'chamber volume after the cut' },
  evaluate: (x) => ({
    value: x.chamber - (x.opening * x.cut) / MM3_PER_CM3,
    partials: { chamber: 1, opening: -x.cut / MM3_PER_CM3, cut: -x.opening / MM3_PER_CM3 },
  }),
  refuses: (x) => ((x.opening * x.cut) / MM3_PER_CM3 >= x.chamber ? '“cut” would take the whole of “chamber”.' : undefined),
})

/** Volume that a sunk valve adds to the chamber: area × length, cm³. Where the cutter clears a ring round the head, take that ring's diameter. */
export const sinkVolume = formula({
  id: 'sink-volume',
  version: 1,
  says: 'Volume gained by the sink = π/4 × diameter² × sink.',
  source: 'Plane geometry: a sunk head uncovers a disc of its own area, and a relief cut beyond it a ring of the same depth.',
  inputs: {
    diameter: { kind: 'length', says: 'diameter of the valve head, or of the relief cut round it', least: 10, most: 150 },
    sink: { kind: 'length', says: 'sink of the valve', least: 0, most: 10 },
  },
  output: { kind: 'volume', says: 'volume that the sink adds to the chamber' },
  evaluate: (x) => {
    const gained = disc(x.diameter, x.sink)
    return { value: gained.value, partials: { diameter: gained.diameter, sink: gained.thickness } }
  },
})

/** Chamber volume once its valves have sunk: sum of volumes, cm³. Intake and exhaust added together. */
export const chamberAfterSink = formula({
  id: 'chamber-after-sink',
  version: 1,
  says: 'Chamber after the valve work = chamber before + volume gained at the intake + volume gained at the exhaust.',
  source: 'Definition (a sum of volumes).',
  inputs: {
    chamber: CHAMBER,
    'intake-gain': { kind: 'volume', says: 'volume that the intake valve’s sink adds', least: 0, most: 50 },
    'exhaust-gain': { kind: 'volume', says: 'volume that the exhaust valve’s sink adds', least: 0, most: 50 },
  },
  output: { kind: 'volume', says: 'chamber volume after the valve work' },
  evaluate: (x) => ({
    value: x.chamber + x['intake-gain'] + x['exhaust-gain'],
    partials: { chamber: 1, 'intake-gain': 1, 'exhaust-gain': 1 },
  }),
})
