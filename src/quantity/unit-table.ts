/**
 * The units that the trade writes, each with the words people use for it.
 * `is` says what one of it is: a number ("0.001", "5/9") of a unit that mathjs knows exactly. mathjs's own `psi` is
 * rounded, so it is composed as lbf/in^2. What mathjs doesn't have is given in units that it has, with where that comes from.
 */
import type { QuantityKind } from './measure.ts'

export interface UnitEntry {
  readonly id: string
  readonly kind: QuantityKind
  /** As a shop writes it. */
  readonly symbol: string
  /** Ways people write or say it; capitals, spaces, dots, hyphens and multiplication signs don't matter. */
  readonly said: readonly string[]
  /** [how many, of which mathjs unit]; '' is a pure number of the kept unit. */
  readonly is: readonly [string, string]
  /** Where the scale has its zero, in this unit (temperatures). */
  readonly zero?: string
  readonly system?: 'inch' | 'metric'
  /** Id of the unit that shows it to people who think in the other system. */
  readonly other?: string
  /** Id of the unit it is printed in, where that is another: 12 thou prints as 0.012 in. */
  readonly printedAs?: string
  /** Not worth offering when a unit is missing or doubtful. */
  readonly rare?: true
  /** Decimals printed when nothing is known of the figure's resolution. */
  readonly decimals: number
  /** Said back whenever this unit is read. */
  readonly note?: string
}

/** Every first word joined with every second one by `joint`: lb/in, lbs/in, lb/inch … */
function joined(first: readonly string[], joint: string, second: readonly string[]): string[] {
  return first.flatMap((a) => second.map((b) => `${a}${joint}${b}`))
}

/** Either order, as torque is written: lb ft and ft lb. */
function eitherOrder(a: readonly string[], b: readonly string[]): string[] {
  return [...joined(a, ' ', b), ...joined(b, ' ', a), ...joined(b, '/', a)]
}

const POUND = ['lb', 'lbs', 'lbf', 'lbsf', 'pound', 'pounds', 'pound force', 'pounds force', '#']
const NEWTON = ['N', 'newton', 'newtons']
const KGF = ['kgf', 'kg force', 'kilogram force', 'kilograms force', 'kp', 'kilopond', 'kiloponds']
const INCH = ['in', 'inch', 'inches', '"', 'ins']
const FOOT = ['ft', 'foot', 'feet']
const MM = ['mm', 'mms', 'millimeter', 'millimeters', 'millimetre', 'millimetres']
const ONE_INCH = ['in', 'inch', '"']
const ONE_MM = ['mm', 'millimeter', 'millimetre']
const ONE_M = ['m', 'meter', 'metre', 'meters', 'metres']
const SQUARE_INCH = ['in2', 'in²', 'sq in', 'square inch', 'square inches']
const LITRE = ['L', 'litre', 'litres', 'liter', 'liters', 'ltr']
const MINUTE = ['min', 'minute']
const GALLON = ['gal', 'gallon', 'gallons', 'US gal', 'US gallon', 'US gallons']
const partsOf = (part: string, whole: readonly string[]): string[] => joined([part, `${part}s`], ' of a ', whole)

const US_GALLON = 'gallons are read as US gallons'

const length: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'mm', symbol: 'mm', said: MM, is: ['1', 'mm'], system: 'metric', other: 'in', decimals: 2 },
  { id: 'in', symbol: 'in', said: [...INCH, "''"], is: ['1', 'in'], system: 'inch', other: 'mm', decimals: 4 },
  {
    id: 'thou',
    symbol: 'thou',
    is: ['0.001', 'in'],
    system: 'inch',
    other: 'mm',
    printedAs: 'in',
    decimals: 1,
    said: ['thou', 'thous', 'mil', 'mils', 'thousandth', 'thousandths', 'thousandth of an inch', 'thousandths of an inch'],
  },
  {
    id: 'tenth-thou',
    rare: true,
    symbol: 'tenths of a thou',
    is: ['0.0001', 'in'],
    system: 'inch',
    other: 'mm',
    printedAs: 'in',
    decimals: 0,
    said: [...partsOf('tenth', ['thou', 'thousandth']), 'ten thousandth', 'ten thousandths', 'ten thousandths of an inch'],
  },
  {
    id: 'tenth-mm',
    rare: true,
    symbol: 'tenths of a mm',
    is: ['0.1', 'mm'],
    system: 'metric',
    other: 'in',
    printedAs: 'mm',
    decimals: 0,
    said: partsOf('tenth', ONE_MM),
  },
  {
    id: 'hundredth-mm',
    rare: true,
    symbol: 'hundredths of a mm',
    is: ['0.01', 'mm'],
    system: 'metric',
    other: 'in',
    printedAs: 'mm',
    decimals: 0,
    said: partsOf('hundredth', ONE_MM),
  },
  {
    id: 'hundredth-in',
    rare: true,
    symbol: 'hundredths of an inch',
    is: ['0.01', 'in'],
    system: 'inch',
    other: 'mm',
    printedAs: 'in',
    decimals: 0,
    said: ['hundredth of an inch', 'hundredths of an inch'],
  },
  {
    id: 'cm',
    rare: true,
    symbol: 'cm',
    said: ['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
    is: ['10', 'mm'],
    system: 'metric',
    other: 'in',
    decimals: 2,
  },
  {
    id: 'um',
    rare: true,
    symbol: 'µm',
    said: ['um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
    is: ['0.001', 'mm'],
    system: 'metric',
    other: 'uin',
    decimals: 1,
  },
  {
    id: 'uin',
    rare: true,
    symbol: 'µin',
    said: ['uin', 'micro inch', 'micro inches', 'u"'],
    is: ['0.000001', 'in'],
    system: 'inch',
    other: 'um',
    decimals: 0,
  },
]

const force: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'N', symbol: 'N', said: NEWTON, is: ['1', 'N'], system: 'metric', other: 'lb', decimals: 0 },
  { id: 'lb', symbol: 'lb', said: POUND, is: ['1', 'lbf'], system: 'inch', other: 'N', decimals: 0 },
  { id: 'kgf', symbol: 'kgf', said: KGF, is: ['1', 'kgf'], system: 'metric', other: 'lb', decimals: 1 },
  { id: 'daN', rare: true, symbol: 'daN', said: ['daN'], is: ['10', 'N'], system: 'metric', other: 'lb', decimals: 1 },
  {
    id: 'kN',
    rare: true,
    symbol: 'kN',
    said: ['kN', 'kilonewton', 'kilonewtons'],
    is: ['1000', 'N'],
    system: 'metric',
    other: 'lb',
    decimals: 3,
  },
]

const stiffness: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'N/mm', symbol: 'N/mm', said: joined(NEWTON, '/', ONE_MM), is: ['1', 'N/mm'], system: 'metric', other: 'lb/in', decimals: 1 },
  { id: 'lb/in', symbol: 'lb/in', said: joined(POUND, '/', ONE_INCH), is: ['1', 'lbf/in'], system: 'inch', other: 'N/mm', decimals: 0 },
  {
    id: 'kgf/mm',
    rare: true,
    symbol: 'kgf/mm',
    said: joined(KGF, '/', ONE_MM),
    is: ['1', 'kgf/mm'],
    system: 'metric',
    other: 'lb/in',
    decimals: 2,
  },
]

const torque: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'N m', symbol: 'N·m', said: joined(NEWTON, ' ', ONE_M), is: ['1', 'N m'], system: 'metric', other: 'lb ft', decimals: 1 },
  { id: 'lb ft', symbol: 'lb·ft', said: eitherOrder(POUND, FOOT), is: ['1', 'lbf ft'], system: 'inch', other: 'N m', decimals: 1 },
  { id: 'lb in', symbol: 'lb·in', said: eitherOrder(POUND, INCH), is: ['1', 'lbf in'], system: 'inch', other: 'N m', decimals: 0 },
  {
    id: 'kgf m',
    rare: true,
    symbol: 'kgf·m',
    said: [...joined(KGF, ' ', ONE_M), 'mkp'],
    is: ['1', 'kgf m'],
    system: 'metric',
    other: 'lb ft',
    decimals: 2,
  },
]

const pressure: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'kPa', symbol: 'kPa', said: ['kPa', 'kilopascal', 'kilopascals'], is: ['1', 'kPa'], system: 'metric', other: 'psi', decimals: 1 },
  {
    id: 'psi',
    symbol: 'psi',
    said: ['psi', 'psig', ...joined(POUND, '/', SQUARE_INCH)],
    is: ['1', 'lbf/in^2'],
    system: 'inch',
    other: 'kPa',
    decimals: 1,
  },
  { id: 'bar', symbol: 'bar', said: ['bar', 'bars'], is: ['1', 'bar'], system: 'metric', other: 'psi', decimals: 2 },
  // NIST SP 811 appendix B, "inch of mercury, conventional". It isn't unique: at 32 °F 3386.38 Pa, at 60 °F 3376.85 Pa.
  {
    id: 'inHg',
    symbol: 'inHg',
    said: ['inHg', 'inches Hg', '"Hg', 'inch of mercury', 'inches of mercury'],
    is: ['3386.389', 'Pa'],
    system: 'inch',
    other: 'kPa',
    decimals: 1,
    note: 'inches of mercury are the conventional ones, 3386.389 Pa each',
  },
  {
    id: 'mbar',
    rare: true,
    symbol: 'mbar',
    said: ['mbar', 'millibar', 'millibars', 'hPa'],
    is: ['0.1', 'kPa'],
    system: 'metric',
    other: 'inHg',
    decimals: 0,
  },
  { id: 'Pa', rare: true, symbol: 'Pa', said: ['Pa', 'pascal', 'pascals'], is: ['1', 'Pa'], system: 'metric', other: 'psi', decimals: 0 },
  {
    id: 'MPa-pressure',
    rare: true,
    symbol: 'MPa',
    said: ['MPa', 'megapascal', 'megapascals'],
    is: ['1', 'MPa'],
    system: 'metric',
    other: 'psi',
    decimals: 3,
  },
  {
    id: 'kgf/cm2',
    rare: true,
    symbol: 'kgf/cm²',
    said: joined(KGF, '/', ['cm2', 'cm²']),
    is: ['1', 'kgf/cm^2'],
    system: 'metric',
    other: 'psi',
    decimals: 2,
  },
]

const stress: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'MPa',
    symbol: 'MPa',
    said: ['MPa', 'megapascal', 'megapascals', 'N/mm2', 'N/mm²'],
    is: ['1', 'MPa'],
    system: 'metric',
    other: 'ksi',
    decimals: 0,
  },
  { id: 'ksi', symbol: 'ksi', said: ['ksi'], is: ['1000', 'lbf/in^2'], system: 'inch', other: 'MPa', decimals: 1 },
  {
    id: 'psi-stress',
    rare: true,
    symbol: 'psi',
    said: ['psi', ...joined(POUND, '/', SQUARE_INCH)],
    is: ['1', 'lbf/in^2'],
    system: 'inch',
    other: 'MPa',
    decimals: 0,
  },
]

const angle: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'deg', symbol: '°', said: ['deg', 'degs', 'degree', 'degrees', '°'], is: ['1', ''], decimals: 2 },
  {
    id: 'arcmin',
    rare: true,
    symbol: 'minutes of arc',
    said: ['arcmin', 'minute of arc', 'minutes of arc'],
    is: ['1/60', ''],
    printedAs: 'deg',
    decimals: 0,
  },
]

const temperature: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'degC',
    symbol: '°C',
    said: ['°C', 'C', 'deg C', 'degree C', 'degrees C', 'celsius', 'degree celsius', 'degrees celsius', 'centigrade'],
    is: ['1', ''],
    system: 'metric',
    other: 'degF',
    decimals: 0,
  },
  {
    id: 'degF',
    symbol: '°F',
    said: ['°F', 'F', 'deg F', 'degree F', 'degrees F', 'fahrenheit', 'degree fahrenheit', 'degrees fahrenheit'],
    is: ['5/9', ''],
    zero: '32',
    system: 'inch',
    other: 'degC',
    decimals: 0,
  },
  {
    id: 'K',
    rare: true,
    symbol: 'K',
    said: ['K', 'kelvin', 'kelvins'],
    is: ['1', ''],
    zero: '273.15',
    system: 'metric',
    other: 'degF',
    decimals: 0,
  },
]

const volume: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'cm^3',
    symbol: 'cm³',
    said: [
      'cm3',
      'cm³',
      'cc',
      'ccs',
      'cubic centimetre',
      'cubic centimetres',
      'cubic centimeter',
      'cubic centimeters',
      'ml',
      'millilitre',
      'millilitres',
      'milliliter',
      'milliliters',
    ],
    is: ['1', 'cm^3'],
    system: 'metric',
    other: 'in^3',
    decimals: 1,
  },
  {
    id: 'in^3',
    rare: true,
    symbol: 'in³',
    said: ['in3', 'in³', 'cu in', 'cubic inch', 'cubic inches', 'ci', 'cid'],
    is: ['1', 'in^3'],
    system: 'inch',
    other: 'cm^3',
    decimals: 2,
  },
  { id: 'L', symbol: 'L', said: LITRE, is: ['1', 'L'], system: 'metric', other: 'gal', decimals: 2 },
  { id: 'gal', rare: true, symbol: 'US gal', said: GALLON, is: ['1', 'gallon'], system: 'inch', other: 'L', decimals: 2, note: US_GALLON },
]

const area: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'mm^2',
    symbol: 'mm²',
    said: ['mm2', 'mm²', 'sq mm', 'square mm', 'square millimetres', 'square millimeters'],
    is: ['1', 'mm^2'],
    system: 'metric',
    other: 'in^2',
    decimals: 1,
  },
  {
    id: 'cm^2',
    rare: true,
    symbol: 'cm²',
    said: ['cm2', 'cm²', 'sq cm', 'square cm'],
    is: ['1', 'cm^2'],
    system: 'metric',
    other: 'in^2',
    decimals: 2,
  },
  { id: 'in^2', symbol: 'in²', said: SQUARE_INCH, is: ['1', 'in^2'], system: 'inch', other: 'mm^2', decimals: 3 },
]

const flow: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'L/min',
    symbol: 'L/min',
    said: [...joined(LITRE, '/', MINUTE), 'lpm'],
    is: ['1', 'L/min'],
    system: 'metric',
    other: 'gal/min',
    decimals: 1,
  },
  {
    id: 'gal/min',
    symbol: 'US gal/min',
    said: [...joined(GALLON, '/', MINUTE), 'gpm'],
    is: ['1', 'gallon/minute'],
    system: 'inch',
    other: 'L/min',
    decimals: 1,
    note: US_GALLON,
  },
  {
    id: 'cfm',
    symbol: 'cfm',
    said: ['cfm', 'ft3/min', 'ft³/min', 'cu ft/min', 'cubic feet/minute', 'cubic feet/min'],
    is: ['1', 'ft^3/minute'],
    system: 'inch',
    other: 'L/min',
    decimals: 1,
  },
]

const mass: readonly Omit<UnitEntry, 'kind'>[] = [
  {
    id: 'kg',
    symbol: 'kg',
    said: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
    is: ['1', 'kg'],
    system: 'metric',
    other: 'lb-mass',
    decimals: 2,
  },
  {
    id: 'g',
    rare: true,
    symbol: 'g',
    said: ['g', 'gram', 'grams', 'gramme', 'grammes'],
    is: ['0.001', 'kg'],
    system: 'metric',
    other: 'oz-mass',
    decimals: 1,
  },
  {
    id: 'lb-mass',
    symbol: 'lb',
    said: ['lb', 'lbs', 'lbm', 'pound', 'pounds', '#'],
    is: ['1', 'lbm'],
    system: 'inch',
    other: 'kg',
    decimals: 2,
  },
  { id: 'oz-mass', rare: true, symbol: 'oz', said: ['oz', 'ounce', 'ounces'], is: ['1', 'oz'], system: 'inch', other: 'g', decimals: 2 },
]

const ratio: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: '1', symbol: '', said: [':1', 'to 1', 'to one', 'x', 'times'], is: ['1', ''], decimals: 2 },
  { id: '%', rare: true, symbol: '%', said: ['%', 'percent', 'per cent'], is: ['0.01', ''], decimals: 1 },
]

const count: readonly Omit<UnitEntry, 'kind'>[] = [
  { id: 'each', symbol: '', said: ['each', 'ea', 'off', 'pc', 'pcs', 'piece', 'pieces'], is: ['1', ''], decimals: 0 },
]

const BY_KIND = {
  length,
  force,
  stiffness,
  torque,
  pressure,
  stress,
  angle,
  temperature,
  volume,
  area,
  flow,
  mass,
  ratio,
  count,
} satisfies Record<QuantityKind, readonly Omit<UnitEntry, 'kind'>[]>

/** Every unit of every kind, in the order in which they are offered when a unit is missing. */
export const UNIT_TABLE: readonly UnitEntry[] = (Object.keys(BY_KIND) as QuantityKind[]).flatMap((kind) =>
  BY_KIND[kind].map((entry) => ({ ...entry, kind })),
)
