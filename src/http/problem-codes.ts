/**
 * What each code means, in a title and a sentence. Codes are a promise to scripts: one may be added, none changes its meaning.
 * The first table holds the codes of whole answers (the `type` of a problem), the second those of single faults in `errors`.
 */
type Meaning = readonly [title: string, means: string]

const ANSWERS: Readonly<Record<string, Meaning>> = {
  'sheet-refused': [
    'The sheet has faults',
    'Something on the sheet can’t be used. Nothing was judged or entered, not even the sound part of it; `errors` names each place and its mend.',
  ],
  'entry-refused': [
    'The entry has faults',
    'Something in what was put can’t be used. Nothing of it was kept; `errors` names each place and its mend.',
  ],
  'query-refused': ['The question has faults', 'Something in the address after the question mark is missing or can’t be used.'],
  unauthorised: ['No valid key', 'The request has no API key, or none that is in force. Send it as "Authorization: Bearer wm_…".'],
  'not-found': ['Nothing is here', 'There is nothing under this address, or nothing that belongs to the shop of this key.'],
  'method-not-allowed': ['Not by this method', 'The address is right and the method is not; the Allow header lists those that work.'],
  'body-too-large': ['The body is too large', 'A sheet for a whole engine is far smaller than the limit. Send one job a sheet.'],
  'content-type': ['Not sent as JSON', 'The body must come with "Content-Type: application/json".'],
  'not-utf8': ['Not UTF-8', 'The body holds bytes that are no UTF-8 text.'],
  'message-headers': [
    'Not a signed message',
    'A message carries webhook-id, webhook-timestamp and webhook-signature, as Standard Webhooks has it; one is missing or misshapen.',
  ],
  'message-stale': [
    'The message is too old or too new',
    'A message is taken within five minutes of its timestamp. Sign it anew with the current time, under the same id; or set the clock right.',
  ],
  'message-unsigned': [
    'The signature does not fit',
    'The signature is none of this endpoint’s, or there is no such endpoint. Sign the raw body, byte for byte as it is sent, with the endpoint’s secret.',
  ],
  'message-altered': [
    'This id was answered with another body',
    'A message id is answered once. A retry sends the same body and gets the first answer; new findings need a new id.',
  ],
  'store-busy': ['The ledger is busy', 'Too many writers at once. Nothing was entered; the same request may be sent again.'],
  'store-full': ['The ledger is full', 'The database has no room left. Nothing was entered.'],
  'store-unreachable': [
    'The ledger can’t be reached',
    'No answer is given without its row in the ledger. The row may be there all the same: look before sending again.',
  ],
  unexpected: ['The service failed', 'A fault of this service. Report it with the request id.'],
}

const FAULTS: Readonly<Record<string, Meaning>> = {
  // Reading the sheet
  'not-json': ['Not JSON', 'The text is no JSON. NaN, Infinity, comments and trailing commas are none either.'],
  'too-deep': ['Nested too deep', 'A finding sheet is a flat list of findings, and an engine sheet has a few levels.'],
  'key-unknown': ['Unknown field', 'There is no such field there; it would be ignored silently, so it is refused.'],
  'field-missing': ['A field is missing', 'This field must be given.'],
  shape: ['Wrong shape', 'The value is not of the kind that stands in this field.'],
  // What the sheet speaks of
  'engine-unfit': [
    'The shop’s engine sheet no longer fits',
    'The rulebook has other names or kinds by now than the sheet that the shop has put; nothing is judged by half a sheet.',
  ],
  'engine-unknown': ['Unknown engine', 'The rulebook has no sheet for this engine, and a limit is never guessed from another one.'],
  'build-unknown': ['Unknown build choice', 'A job has no build choice of this name.'],
  'card-unknown': ['Unknown card', 'The engine’s sheet lists no such part or casting.'],
  'part-unknown': ['Unknown part', 'No part class goes by this name.'],
  'part-not-fitted': ['The engine has no such part', 'The part exists in the vocabulary and not in this engine, or not with this casting.'],
  'property-unknown': ['Unknown property', 'The part has no property of this name; GET /v1/vocabulary lists them.'],
  'position-missing': ['No position', 'It is not said which of several this is about.'],
  'position-unknown': ['Unknown position', 'The engine’s numbering has no such position.'],
  'procedure-unknown': ['Unknown look', 'The part has no visual procedure of this name.'],
  'instrument-unknown': ['Unknown instrument', 'No instrument goes by this name.'],
  'instrument-unsuited': ['Not read with that instrument', 'The property is read with other instruments.'],
  'instrument-unusable': ['Instrument without uncertainty', 'Its entry gives no uncertainty that could be used.'],
  'choice-unknown': ['Unknown choice', 'The property has no such choice.'],
  'not-yes-no': ['Neither yes nor no', 'The property is answered yes or no.'],
  'one-value': ['One value only', 'The property takes one value, not a list.'],
  'values-disagree': [
    'Two values disagree',
    'The same property at the same place was given twice, differently. Several readings of one property are sent as a list.',
  ],
  declined: ['Not judged here', 'This work is outside what the service may judge, whatever the findings.'],
  // What a shop puts
  'id-not-address': ['Id and address differ', 'What is put under an address calls itself otherwise.'],
  'layout-unusable': [
    'Unusable layout',
    'Banks, cylinders and valves must be told apart by their names and numbers, and be as many as an engine has.',
  ],
  'nothing-to-adopt': [
    'Nothing to adopt',
    'Only a limit that the trade merely remembers is adopted; another decides by itself, or has no figure.',
  ],
  // The form and the command
  'both-given': ['Given and not measured', 'A value is given, and the field is marked as not measured too.'],
  'job-missing': ['No job', 'The ledger enters nothing without the job it belongs to.'],
  'nothing-entered': ['Nothing entered', 'No field was filled in.'],
  'too-large': ['Too large a sheet', 'The text is larger than any sheet.'],
  // Figures as people write them
  'not-a-number': ['No figure', 'What is written does not read as a figure.'],
  'not-one-figure': ['Not one figure', 'There is more than one figure, or a bound or a spread, where one reading is asked for.'],
  'not-whole': ['Not a whole number', 'It is counted, so it is a whole number.'],
  'not-positive': ['Not above zero', 'The figure must be above zero.'],
  'too-long': ['Too long', 'So long a text is no figure.'],
  'hidden-characters': ['Characters that can’t be seen', 'The text holds a character that does not print.'],
  'unit-missing': ['No unit', 'The figure has no unit, and more than one would be possible.'],
  'unit-unknown': ['Unknown unit', 'No unit goes by this name.'],
  'unit-ambiguous': ['Which unit?', 'The unit could be read in two ways; the choices are given.'],
  'unit-conflict': ['Two units', 'The unit of the field and the one in the figure differ.'],
  'unit-unwanted': ['No unit here', 'This property has no unit.'],
  'wrong-kind': [
    'Wrong kind of quantity',
    'The unit belongs to another kind of quantity, or a measurement was given for a choice or the other way round.',
  ],
  tenths: ['Which tenths?', '"Tenths" may be ten-thousandths of an inch or tenths of a millimetre; the shop can settle it once.'],
  'comma-ambiguous': ['Which comma?', 'The comma may be a decimal comma or stand between thousands.'],
  'odd-fraction': ['Odd fraction', 'No rule or drill is divided so.'],
  'pair-disagrees': ['Inch and millimetre disagree', 'The figure was given in two units, and the two do not agree.'],
  'out-of-range': [
    'Out of the plausible range',
    'So large or so small a value does not occur on such a part; most likely the point or the unit is misplaced.',
  ],
  'sign-not-allowed': ['A negative figure', 'This can’t be less than zero.'],
  // The rulebook's own files, told when it is loaded
  about: ['What the rule is about', 'A job rule names its subject, and only a job rule does.'],
  'checks-too-many': ['Too many required checks', 'More checks than can be done in a working day.'],
  'fact-unknown': ['Unknown fact', 'A rule asks about something that the vocabulary does not have.'],
  'figure-unreadable': ['Unreadable figure', 'A figure in the rulebook does not read as its kind.'],
  'file-missing': ['A file is missing', 'The rulebook lacks a file that it must have.'],
  'file-unknown': ['Unknown file', 'The rulebook has a file that belongs nowhere.'],
  'formula-twice': ['One name, two formulas', 'A new meaning needs a new version.'],
  'formula-unknown': ['Unknown formula', 'A derived figure names a formula that is not there.'],
  'unknown-formula': ['Unknown formula', 'No formula goes by that name and version.'],
  'id-not-path': ['Id and file differ', 'A unit of the rulebook is called what its file is called.'],
  'inputs-differ': ['Wrong inputs', 'The inputs given are not those that the formula takes.'],
  'kind-differs': ['Wrong kind of input', 'An input is of another kind than the formula takes.'],
  'leaf-kind': ['Fact and value differ in kind', 'A condition holds a fact against something of another kind.'],
  'nested-braces': ['Figure inside an optional piece', 'A reason has braces inside braces, which would print as they stand.'],
  'rest-empty': ['Nothing left for "rest"', 'Every position of the part is named singly on the sheet, so "rest" means none.'],
  'state-in-build': ['Choice among the findings', 'A casting or a card is chosen in build; a finding can’t choose it.'],
  'too-light': [
    'Estimate weighed too heavily',
    'A condition leans on a figure that may explain but not decide, or may condemn but never clear.',
  ],
  'limit-unknown': ['Unknown limit', 'A limit is named that is not there.'],
  'not-visual': ['Not found by looking', 'A visual procedure answers visual properties only.'],
  'opens-unknown': ['Opens nothing', 'A rule opens a dormant rule that is not there.'],
  'range-empty': ['Empty range', 'The least is not below the most.'],
  'wakes-awake': ['Only the dormant wake', 'A rule that is always on can’t be woken.'],
  // The ledger and the service's own settings
  'not-canonical': ['Not plain JSON', 'A value holds what the canonical form of a record has no text for, such as half a surrogate pair.'],
  'entry-altered': ['The entry was altered', 'The hash of an entry is not that of its body.'],
  'salt-unfit': ['Unfit salt', 'A salt is 16 to 64 random bytes in hexadecimal.'],
  'database-url': ['Unusable database URL', 'The URL is neither a file nor a libSQL server.'],
  'hook-secret': ['Unfit secret', 'A secret is "whsec_" and 24 to 64 random bytes in base64.'],
}

export interface CodeMeaning {
  readonly code: string
  readonly title: string
  readonly means: string
}

const ALL: ReadonlyMap<string, Meaning> = new Map([...Object.entries(FAULTS), ...Object.entries(ANSWERS)])

/** Every code that an answer or a fault may have. */
export const CODES: readonly string[] = [...ALL.keys()].sort()

/** What a code means; undefined for a code that is none. */
export function codeMeaning(code: string): CodeMeaning | undefined {
  const found = ALL.get(code)
  return found === undefined ? undefined : { code, title: found[0], means: found[1] }
}

/** The meaning of a code that this program uses itself. @throws Error when the table has no line for it: a fault of ours, which a test finds */
export function meaningOf(code: string): CodeMeaning {
  const found = codeMeaning(code)
  if (found === undefined) throw new Error(`The code ${code} has no line in the table of codes.`)
  return found
}
