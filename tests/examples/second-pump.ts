import { all, inch, stepDoubt, type Expected } from './expected.ts'

/** QL-6P over the counter: most of it unmeasured. */
export const secondPump: Expected = {
  parts: {
    valve: { undetermined: '2I 5E' },
    'rocker-stud': { undetermined: '5E' },
    // Nobody named the rocker: the polish on its stud opens it.
    rocker: { undetermined: '5E' },
    spring: { replace: '1E', undetermined: '5E' },
    'stem-seal': { undetermined: all(6) },
  },
  // One broken spring takes the set with it.
  governed: { 'stem-seal': 'seal-set', spring: 'spring-set' },
  job: { 'seal-set': 'replace', 'spring-set': 'replace', 'seal-choice': 'undetermined', 'head-prep': 'reuse' },
  comparisons: [
    // No instrument named: half a step of a thou either way, and one thou over is 3.5 u.
    {
      at: 'valve 2I',
      rule: 'valve.margin-enough',
      fact: 'margin',
      answer: 'met',
      value: 0.041 * inch,
      u: stepDoubt(0.001 * inch),
      limit: 0.04 * inch,
      from: 'maker',
    },
  ],
  says: {
    'spring 1E': ['broken'],
    'rocker-stud 5E': ['polished bright without a step'],
    'stem-seal 5E': ['called a positive seal', 'The test stands'],
    'seal-choice engine': ['high-volume oil pump'],
  },
  waits: {
    'valve 5E': { fact: 'special-mark', why: 'missing' },
    'valve 2I': { fact: 'special-mark', why: 'missing' },
    'seal-choice engine': { fact: 'seals', why: 'missing' },
  },
  list: { 'stem seal, as a set': 12, 'valve spring, as a set': 12 },
  atLeast: {},
  order: [
    'tag-positions',
    'name-materials',
    'bench-clean',
    'wash-iron',
    'crack-test-magnetic',
    'pressure-test',
    'dry-fit',
    'final-wash',
    'seals-renew',
    'spring-set-fit',
    'vacuum-proof',
  ],
  warns: ['gas-isolation', 'sodium-filled-valve', 'valve-drop'],
}
