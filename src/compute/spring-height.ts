import { formula } from './formula.ts'

const INSTALLED = {
  kind: 'length',
  says: 'installed height: spring seat to retainer underside, valve closed',
  least: 5,
  most: 300,
} as const

/** Room left before the coils touch at full lift: difference of three lengths, mm. Negative: the spring binds. One spring of a pair at a time. */
export const coilBindMargin = formula({
  id: 'coil-bind-margin',
  version: 1,
  says: 'Coil-bind margin = installed height − valve lift − solid height.',
  source: 'Definition (a difference); common practice.',
  inputs: {
    'installed-height': INSTALLED,
    lift: { kind: 'length', says: 'gross lift at the valve', least: 0, most: 40 },
    'solid-height': { kind: 'length', says: 'height of the spring with all coils touching', least: 2, most: 200 },
  },
  output: { kind: 'length', says: 'room left before the coils touch at full lift' },
  evaluate: (x) => ({
    value: x['installed-height'] - x.lift - x['solid-height'],
    partials: { 'installed-height': 1, lift: -1, 'solid-height': -1 },
  }),
})

/**
 * Solid height of a spring whose ends are squared and ground: length × number of coils, mm. Other ends stack differently
 * (squared and not ground: one wire more). Round wire of 0.5–15 mm, 2–40 coils; a stamped figure or a measured one is better.
 */
export const springSolidHeightSquaredGround = formula({
  id: 'spring-solid-height-squared-ground',
  version: 1,
  says: 'Solid height of a spring with squared and ground ends = wire diameter × total number of coils.',
  source: 'Shigley, Mechanical Engineering Design, table of end types for compression springs (recalled).',
  inputs: {
    'wire-diameter': { kind: 'length', says: 'wire diameter', least: 0.5, most: 15 },
    'total-coils': { kind: 'ratio', says: 'total number of coils, dead ends and parts of a coil included', least: 2, most: 40 },
  },
  output: { kind: 'length', says: 'solid height' },
  evaluate: (x) => ({
    value: x['wire-diameter'] * x['total-coils'],
    partials: { 'wire-diameter': x['total-coils'], 'total-coils': x['wire-diameter'] },
  }),
})

/** Installed height once shims lie under the spring: difference of two lengths, mm. Shims in total 0–10 mm, hardware that counts as shim included. */
export const heightWithShim = formula({
  id: 'height-with-shim',
  version: 1,
  says: 'Installed height with shims = installed height without − total thickness of the shims.',
  source: 'Definition (a difference).',
  inputs: {
    'installed-height': INSTALLED,
    shim: { kind: 'length', says: 'total thickness of the shims under the spring', least: 0, most: 10 },
  },
  output: { kind: 'length', says: 'installed height with the shims in' },
  evaluate: (x) => ({ value: x['installed-height'] - x.shim, partials: { 'installed-height': 1, shim: -1 } }),
})

/** Installed height once the valve has sunk: sum of two lengths, mm. Work on seat and face lets the retainer rise by the whole sink. */
export const installedHeightAfterSink = formula({
  id: 'installed-height-after-sink',
  version: 1,
  says: 'Installed height after the work = installed height before + total sink of the valve.',
  source: 'Plane geometry along the valve’s axis; common practice.',
  inputs: {
    'installed-height': INSTALLED,
    sink: { kind: 'length', says: 'total sink of the valve, from seat and face together', least: 0, most: 10 },
  },
  output: { kind: 'length', says: 'installed height after the work' },
  evaluate: (x) => ({ value: x['installed-height'] + x.sink, partials: { 'installed-height': 1, sink: 1 } }),
})

/** Shim that brings an installed height down to the specified one: difference of two lengths, mm. Negative: it is too low already, and no shim helps. */
export const shimNeeded = formula({
  id: 'shim-needed',
  version: 1,
  says: 'Shim needed = installed height − specified installed height.',
  source: 'Definition (a difference); common practice.',
  inputs: {
    'installed-height': INSTALLED,
    'specified-height': { ...INSTALLED, says: 'installed height that is specified' },
  },
  output: { kind: 'length', says: 'total thickness of shim that brings the height to the figure' },
  evaluate: (x) => ({
    value: x['installed-height'] - x['specified-height'],
    partials: { 'installed-height': 1, 'specified-height': -1 },
  }),
})
