import { fault, type Fault } from '../quantity/fault.ts'
import { LOOKED_OVER } from '../verdict/enter.ts'
import { NOT_MEASURED } from '../verdict/sheet.ts'
import type { Field, FieldSet } from './fields.ts'
import type { CounterSubject } from './subjects.ts'

/** What somebody filled in, by the names of the form's inputs; kept so that nothing is typed twice. */
export type Filled = ReadonlyMap<string, string>

/** A sheet made of a form, not yet checked, and which input each of its places came from. */
export interface FormSheet {
  readonly sheet: {
    readonly job: string
    readonly engine: string
    readonly build: Record<string, string>
    readonly findings: readonly Record<string, unknown>[]
  }
  readonly from: Origin
  /** Faults of the form itself, by input. */
  readonly faults: readonly FieldFault[]
}

export interface FieldFault {
  /** The field's id, or "job", "at", "by"; '' for the form as a whole. */
  readonly field: string
  readonly fault: Fault
}

interface Origin {
  readonly findings: readonly string[]
}

/** Names of the inputs that belong to one field. */
export const inputs = {
  value: (field: Field, reading = 0): string => (reading === 0 ? field.id : `${field.id}#${reading}`),
  instrument: (field: Field): string => `${field.id}@instrument`,
  notMeasured: (field: Field): string => `${field.id}@not-measured`,
}

const JOB_OF_A_QUESTION = 'a question at the counter'

/** Makes a finding sheet of a filled form. A field left empty is not entered. */
export function sheetOfForm(subject: CounterSubject, engine: string, fields: FieldSet, filled: Filled, enter: boolean): FormSheet {
  const build: Record<string, string> = {}
  const findings: Record<string, unknown>[] = []
  const from: string[] = []
  const faults: FieldFault[] = []
  const place = filled.get('at') ?? ''
  // Without a place the sheet is not judged, but its other entries are read all the same, so that every fault is said at once.
  const at = place === '' ? 'all' : place
  const by = filled.get('by') ?? ''
  const who = by === '' ? {} : { by }
  for (const field of [...fields.first, ...fields.more]) {
    const typed = typedIn(field, filled)
    if (typed === undefined) continue
    if (typed.both) {
      const says = 'A value is given, and "not measured" is ticked too.'
      faults.push({ field: field.id, fault: fault('both-given', '', says, 'Take one of them out.', typed.value) })
    } else if (field.part === 'job') build[field.property] = String(typed.value)
    else {
      from.push(field.id)
      findings.push({ part: field.part, at, property: field.property, value: typed.value, ...typed.with, ...who })
    }
  }
  const look = filled.get('looked') ?? ''
  if (look !== '') {
    from.push('looked')
    findings.push({ part: subject.part, at, property: LOOKED_OVER, value: look, ...who })
  }
  if (findings.length > 0 && place === '')
    faults.push({
      field: 'at',
      fault: fault('position-missing', '', 'It is not said where the part sat.', 'Choose its place on the engine.'),
    })
  const job = filled.get('job') ?? ''
  if (enter && job === '')
    faults.push({
      field: 'job',
      fault: fault('job-missing', '', 'The ledger needs a job to enter this under.', 'Give the job’s number or name.'),
    })
  if (Object.keys(build).length === 0 && findings.length === 0 && faults.length === 0) {
    faults.push({ field: '', fault: fault('nothing-entered', '', 'Nothing was entered.', 'Fill in what you know; one field will do.') })
  }
  return { sheet: { job: job === '' ? JOB_OF_A_QUESTION : job, engine, build, findings }, from: { findings: from }, faults }
}

interface Typed {
  readonly value: string | readonly string[]
  readonly with: { readonly instrument?: string }
  readonly both: boolean
}

function typedIn(field: Field, filled: Filled): Typed | undefined {
  const readings = field.input.kind === 'figure' ? field.input.readings.length : 1
  const values = Array.from({ length: readings }, (_, i) => filled.get(inputs.value(field, i)) ?? '').filter((v) => v !== '')
  const instrument = filled.get(inputs.instrument(field)) ?? ''
  const notMeasured = filled.has(inputs.notMeasured(field))
  const [first] = values
  if (first === undefined) return notMeasured ? { value: NOT_MEASURED, with: {}, both: false } : undefined
  return { value: values.length === 1 ? first : values, with: instrument === '' ? {} : { instrument }, both: notMeasured }
}

/** Which field a fault of the sheet belongs to, by its JSON Pointer. */
export function fieldOfFault(from: Origin, { pointer }: Fault): string {
  const [, finding, key] = /^\/findings\/(\d+)(?:\/([^/]+))?/.exec(pointer) ?? []
  if (finding !== undefined) return key === 'at' || key === 'by' ? key : (from.findings[Number(finding)] ?? '')
  const [, choice] = /^\/build\/([^/]+)/.exec(pointer) ?? []
  if (choice !== undefined) return `job:${choice.replaceAll('~1', '/').replaceAll('~0', '~')}`
  return pointer === '/job' ? 'job' : ''
}
