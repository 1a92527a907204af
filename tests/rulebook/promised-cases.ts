import type { RuleCase } from '../../src/rulebook/schema/rule.ts'

type Given = RuleCase['given']

/** One promise of a work order with a return that keeps it and one that breaks it. Lines that promise the same share their cases. */
export interface PromisedCase {
  readonly line: string
  readonly kept: Given
  readonly broken: Given
  readonly engine?: string
  readonly at?: string
  readonly adopted?: readonly string[]
}

const by = (instrument: string) => (value: string) => ({ value, instrument })
const caliper = by('caliper')
const micrometer = by('micrometer')
const tenth = by('tenth-indicator')
const depth = by('depth-micrometer')
const height = by('height-micrometer')
const length = by('length-micrometer')
const plate = by('surface-plate-grid')
const six = (value: string, instrument: string) => ({ value: Array.from({ length: 6 }, () => value), instrument })

/** Cast iron under a composition gasket, an inline six that works hard. */
const IRON: Given = { 'job:head-material': 'iron', 'job:head-gasket': 'composition', cylinders: '6' }
const ALUMINIUM: Given = { 'job:head-material': 'aluminium', 'job:head-gasket': 'mls', cylinders: '4' }
/** The jacket tested hot on both sheets' terms; how long is what the cases tell apart. */
const HOT: Given = {
  'head:pressure-test.hot': 'tight',
  'head:pressure-test.pressure': '40 psi',
  'head:pressure-test.temperature': '190 degF',
}
const VACUUM: Given = {
  'vacuum.rig': by('vacuum-gauge')('25 inHg'),
  'seat:vacuum.stem-sealed': true,
  'seat:vacuum.loss': by('vacuum-gauge')('1 inHg'),
  'seat:vacuum.below-mates': by('vacuum-gauge')('0.5 inHg'),
}

export const PROMISED: readonly PromisedCase[] = [
  { line: 'guide.bellmouth-restored/1', kept: { condition: 'sound' }, broken: { condition: 'cracked' } },
  {
    line: 'guide.too-tight/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { bore: six('0.3736 in', 'dial-bore-gauge'), 'valve:stem.diameter': six('0.3711 in', 'micrometer') },
    broken: { bore: six('0.3745 in', 'dial-bore-gauge'), 'valve:stem.diameter': six('0.3711 in', 'micrometer') },
  },
  {
    line: 'guide.top-too-big/1',
    engine: 'QL-8S',
    at: '3E',
    kept: { 'job:seals': 'PS-50', 'top.diameter': micrometer('0.5035 in') },
    broken: { 'job:seals': 'PS-50', 'top.diameter': micrometer('0.5000 in') },
  },
  {
    line: 'guide.top-too-big/2',
    adopted: ['top-wall-min'],
    kept: { 'top.wall': caliper('0.085 in') },
    broken: { 'top.wall': caliper('0.040 in') },
  },
  {
    line: 'guide-plate.rods-bind/1',
    kept: { 'rods.run-free': true, 'rocker:sweep.centred': true },
    broken: { 'rods.run-free': true, 'rocker:sweep.centred': false },
  },
  {
    line: 'head.bowed-straighten/1',
    kept: { ...ALUMINIUM, 'flatness.along': plate('0.004 in') },
    broken: { ...ALUMINIUM, 'flatness.along': plate('0.014 in') },
  },
  { line: 'head.bowed-straighten/2', kept: { 'crack-test.penetrant': 'clear' }, broken: { 'crack-test.penetrant': 'found' } },
  {
    line: 'head.chambers-uneven/1',
    kept: { 'chamber.spread': by('burette')('0.4 cc') },
    broken: { 'chamber.spread': by('burette')('2.5 cc') },
  },
  { line: 'head.corroded-land/1', kept: { corrosion: 'stained' }, broken: { corrosion: 'pits-in-land' } },
  { line: 'head.crack-repaired/1', kept: { 'pressure-test.hot': 'tight' }, broken: { 'pressure-test.hot': 'leaks' } },
  {
    line: 'head.deck-damaged/1',
    engine: 'QL-6P',
    kept: { thickness: length('3.612 in') },
    broken: { thickness: length('3.585 in') },
  },
  { line: 'head.finish-rough/1', kept: { ...IRON, 'deck.finish': '80 uin' }, broken: { ...IRON, 'deck.finish': '140 uin' } },
  { line: 'head.finish-smooth/1', kept: { ...IRON, 'deck.finish': '80 uin' }, broken: { ...IRON, 'deck.finish': '15 uin' } },
  {
    line: 'head.manifold-face-warped/1',
    kept: { 'flatness.manifold': by('straightedge-feeler')('0.006 in') },
    broken: { 'flatness.manifold': by('straightedge-feeler')('0.020 in') },
  },
  {
    line: 'head.over-flat/2',
    kept: { 'flatness.six-inch': plate('0.0006 in'), 'flatness.across': plate('0.0008 in'), 'flatness.along': plate('0.0012 in') },
    broken: { 'flatness.six-inch': plate('0.0006 in'), 'flatness.across': plate('0.0008 in'), 'flatness.along': plate('0.0035 in') },
  },
  {
    line: 'head.plug-thread-spoiled/1',
    kept: { 'plug-threads': 'sound', crack: 'none' },
    broken: { 'plug-threads': 'sound', crack: 'seat' },
  },
  {
    line: 'head.tested-too-cold/1',
    kept: { 'pressure-test.temperature': '190 degF', 'pressure-test.hot': 'tight' },
    broken: { 'pressure-test.temperature': '120 degF', 'pressure-test.hot': 'tight' },
  },
  {
    line: 'head.tested-too-soft/1',
    engine: 'QL-6P',
    kept: { 'pressure-test.pressure': '40 psi', 'pressure-test.hot': 'tight' },
    broken: { 'pressure-test.pressure': '25 psi', 'pressure-test.hot': 'tight' },
  },
  {
    line: 'job.bolts-bottom/1',
    adopted: ['bolt-spare-min'],
    kept: { 'bolt-spare': depth('0.150 in') },
    broken: { 'bolt-spare': depth('0.040 in') },
  },
  {
    line: 'job.crowns-marked/1',
    kept: { 'dry-fit.piston-intake': caliper('0.110 in'), 'dry-fit.piston-exhaust': caliper('0.128 in') },
    broken: { 'dry-fit.piston-intake': caliper('0.064 in'), 'dry-fit.piston-exhaust': caliper('0.128 in') },
  },
  {
    line: 'job.guide-top-cut-needed/1',
    engine: 'QL-8S',
    kept: { 'guide:length': caliper('2.070 in') },
    broken: { 'guide:length': caliper('2.040 in') },
  },
  {
    line: 'job.guide-top-cut-needed/2',
    kept: { 'retainer:seal-room': depth('0.074 in') },
    broken: { 'retainer:seal-room': depth('0.052 in') },
  },
  {
    line: 'job.guide-top-for-seal/1',
    engine: 'QL-8S',
    kept: { seals: 'PS-50', 'guide:top.diameter': micrometer('0.5035 in'), 'guide-top.true': true },
    broken: { seals: 'PS-50', 'guide:top.diameter': micrometer('0.5080 in'), 'guide-top.true': true },
  },
  {
    line: 'job.jacket-test-short/1',
    engine: 'QL-6P',
    kept: { ...HOT, 'pressure-test.minutes': '20' },
    broken: { ...HOT, 'pressure-test.minutes': '8' },
  },
  {
    line: 'job.preload-out/1',
    kept: { 'dry-fit.preload': { value: ['0.030 in', '0.045 in'], instrument: 'depth-micrometer' } },
    broken: { 'dry-fit.preload': { value: ['0.030 in', '0.075 in'], instrument: 'depth-micrometer' } },
  },
  {
    line: 'job.seal-room-short/1',
    kept: { 'dry-fit.done': true, 'retainer:seal-room': depth('0.074 in') },
    broken: { 'dry-fit.done': true, 'retainer:seal-room': depth('0.052 in') },
  },
  {
    line: 'job.spring-heights-differ/1',
    kept: { 'spring-heights.apart': height('0.004 in') },
    broken: { 'spring-heights.apart': height('0.019 in') },
  },
  { line: 'job.swabs-dirty/1', kept: { 'galleries.swab': 'white' }, broken: { 'galleries.swab': 'dirty' } },
  {
    line: 'job.tips-uneven/1',
    kept: { lash: 'adjustable', 'tips.spread': depth('0.011 in') },
    broken: { lash: 'adjustable', 'tips.spread': depth('0.029 in') },
  },
  {
    line: 'job.vacuum-fails/1',
    adopted: ['seat:vacuum-share-min', 'seat:vacuum-loss-max', 'seat:vacuum-below-mates-max'],
    kept: { ...VACUUM, 'seat:vacuum.share': '0.96' },
    broken: { ...VACUUM, 'seat:vacuum.share': '0.72' },
  },
  { line: 'retainer.cap-misfits/1', kept: { 'cap.bears-on': 'stem' }, broken: { 'cap.bears-on': 'keepers' } },
  {
    line: 'retainer.keepers-worn/1',
    kept: {
      'keepers.condition': 'sound',
      'family-matched': true,
      'keepers.sit-even': true,
      'valve:keeper-groove.holds-new-keepers': true,
    },
    broken: {
      'keepers.condition': 'sound',
      'family-matched': true,
      'keepers.sit-even': true,
      'valve:keeper-groove.holds-new-keepers': false,
    },
  },
  {
    line: 'retainer.multi-groove-gap/1',
    kept: { 'keepers.halves-touch': true, 'keepers.valve-turns': true },
    broken: { 'keepers.halves-touch': true, 'keepers.valve-turns': false },
  },
  { line: 'retainer.single-groove-touch/1', kept: { 'keepers.halves-touch': false }, broken: { 'keepers.halves-touch': true } },
  { line: 'retainer.strikes-seal/1', kept: { 'seal-room': depth('0.074 in') }, broken: { 'seal-room': depth('0.052 in') } },
  {
    line: 'rocker.pad-regrind/1',
    kept: { 'tip.condition': 'smooth', 'tip.curve-kept': true, 'tip.file-bites': false },
    broken: { 'tip.condition': 'smooth', 'tip.curve-kept': true, 'tip.file-bites': true },
  },
  { line: 'rocker.sweep-off/1', kept: { 'sweep.centred': true }, broken: { 'sweep.centred': false } },
  {
    line: 'rocker-stud.nut-drag-low/1',
    kept: { 'upper-thread': '3-8-24', 'nut.new-drag': '16 lb in' },
    broken: { 'upper-thread': '3-8-24', 'nut.drag': '6 lb in', 'nut.new-drag': '6 lb in' },
  },
  { line: 'rocker-stud.hole-open/1', kept: { hole: 'wet-sealed' }, broken: { hole: 'wet-open' } },
  { line: 'rocker-stud.screw-in-stud-loose/1', kept: { 'hole.gauge': 'passes' }, broken: { 'hole.gauge': 'fails' } },
  { line: 'rocker-stud.thread-chase/1', kept: { 'thread.gauge': 'passes' }, broken: { 'thread.gauge': 'fails' } },
  {
    line: 'rocker-stud.thread-chase/2',
    kept: { 'nut.kind': 'self-locking', 'upper-thread': '3-8-24', 'nut.drag': '7 lb in', 'nut.new-drag': '14 lb in' },
    broken: { 'nut.kind': 'self-locking', 'upper-thread': '3-8-24', 'nut.drag': '7 lb in', 'nut.new-drag': '6 lb in' },
  },
  { line: 'seat.angle-off/1', kept: { 'metal-left': true }, broken: { 'metal-left': false } },
  { line: 'seat.angle-off/2', engine: 'QL-6P', at: '3E', kept: { sink: depth('0.018 in') }, broken: { sink: depth('0.041 in') } },
  { line: 'seat.insert-set-back/1', kept: { 'insert.hold': 'tight' }, broken: { 'insert.hold': 'loose' } },
  {
    line: 'spring.height-shim/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { 'job:springs': 'stock', 'shim.total': '0.030 in', 'shim.hardened': true, 'installed-height': height('1.702 in') },
    broken: { 'job:springs': 'stock', 'shim.total': '0.075 in', 'shim.hardened': true, 'installed-height': height('1.702 in') },
  },
  {
    line: 'spring.sunk-too-far/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { 'job:springs': 'stock', 'installed-height': height('1.703 in') },
    broken: { 'job:springs': 'stock', 'installed-height': height('1.722 in') },
  },
  {
    line: 'valve.face-refaced/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { margin: caliper('0.061 in') },
    broken: { margin: caliper('0.049 in') },
  },
  { line: 'valve.face-refaced/2', kept: { 'face.cleans-one-side': false }, broken: { 'face.cleans-one-side': true } },
  {
    line: 'valve.face-refaced/3',
    kept: { kind: 'hard-faced', 'face.through-facing': false },
    broken: { kind: 'hard-faced', 'face.through-facing': true },
  },
  { line: 'valve.face-refaced/4', kept: { 'face.runout': tenth('0.0008 in') }, broken: { 'face.runout': tenth('0.0034 in') } },
  {
    line: 'valve.stem-nicks/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { 'stem.condition': 'sound', 'stem.diameter': six('0.3708 in', 'micrometer') },
    broken: { 'stem.condition': 'sound', 'stem.diameter': six('0.3696 in', 'micrometer') },
  },
  {
    line: 'valve.tip-mushroomed/1',
    engine: 'QL-6P',
    at: '3E',
    kept: { 'tip.condition': 'sound', length: length('4.912 in') },
    broken: { 'tip.condition': 'sound', length: length('4.906 in') },
  },
  { line: 'valve.tip-mushroomed/2', kept: { 'tip.file-bites': false }, broken: { 'tip.file-bites': true } },
  {
    line: 'valve.tip-mushroomed/3',
    kept: { 'keeper-groove.condition': 'sound', 'keeper-groove.holds-new-keepers': true },
    broken: { 'keeper-groove.condition': 'worn', 'keeper-groove.holds-new-keepers': true },
  },
]
