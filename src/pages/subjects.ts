/** One question that the counter page asks: which part, which of its properties, and which verdicts answer. Names only; the catalogue knows the rest. */
export interface CounterSubject {
  readonly path: string
  readonly title: string
  /** The question as somebody asks it over the counter. */
  readonly asks: string
  readonly part: string
  /** Choices of the job that are asked first, then those that are seldom needed. */
  readonly build: readonly string[]
  readonly moreBuild: readonly string[]
  /** Properties of the part, likewise. */
  readonly fields: readonly string[]
  readonly moreFields: readonly string[]
  /** Set-level subjects whose verdicts belong to the answer, most telling first. */
  readonly about: readonly string[]
}

export const SUBJECTS: readonly CounterSubject[] = [
  {
    path: 'tip',
    title: 'Valve tip',
    asks: 'Can this tip be ground, or is the valve done?',
    part: 'valve',
    build: [],
    moreBuild: [],
    fields: ['tip.condition', 'length', 'tip.stands', 'tip.file-bites'],
    moreFields: [
      'special-mark',
      'keeper-groove.holds-new-keepers',
      'stem.diameter',
      'margin',
      'face.runout',
      'face.stock',
      'tip.stock-taken',
      'crack.found',
    ],
    about: [],
  },
  {
    path: 'stud',
    title: 'Rocker stud',
    asks: 'Can this stud go back in service?',
    part: 'rocker-stud',
    build: [],
    moreBuild: [],
    fields: ['shoulder.groove-felt', 'shoulder.groove-depth', 'thread.condition', 'nut.holds'],
    moreFields: [
      'shoulder.polish',
      'movement',
      'bent',
      'standing-height',
      'thread.gauge',
      'thread.pitch-true',
      'thread.damaged-turns',
      'nut.drag',
      'nut.new-drag',
    ],
    about: ['stud-set'],
  },
  {
    path: 'seal',
    title: 'Stem seals',
    asks: 'Which stem seals, for this oil pump and these springs?',
    part: 'stem-seal',
    build: ['oil-pump', 'seals', 'camshaft', 'springs'],
    moreBuild: ['valves-out', 'guide-top', 'guide-top-cut', 'retainer-to-guide-top', 'guide-length'],
    fields: [],
    moreFields: ['kind-found', 'moves-with-valve', 'second-groove', 'condition', 'taken-off', 'material'],
    about: ['seal-choice', 'seal-set'],
  },
  {
    path: 'springs',
    title: 'Springs',
    asks: 'Which springs, for this camshaft?',
    part: 'spring',
    build: ['camshaft', 'springs', 'seals', 'lifters'],
    moreBuild: ['rockers', 'rocker-ratio', 'stud-upper', 'retainer-to-guide-top', 'guide-top-cut', 'spring-pocket'],
    fields: [],
    moreFields: [
      'surface',
      'bright-spots',
      'free-length',
      'installed-height',
      'seat-load',
      'seat-load.height',
      'squareness',
      'stands-from-mates',
    ],
    about: ['spring-kit', 'cam-kit', 'spring-set', 'camshaft-change', 'rocker-set', 'stud-set', 'seal-choice'],
  },
]
