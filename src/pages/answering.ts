import type { Context } from 'hono'
import { html } from 'hono/html'
import { Refused } from '../quantity/fault.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { Shop } from '../store/shops.ts'
import { decideSheet } from '../usecases/decide.ts'
import { listEngines } from '../usecases/engines.ts'
import { judgeSheet } from '../usecases/judge.ts'
import type { Service } from '../usecases/service.ts'
import { sheetFrom } from '../verdict/sheet.ts'
import { answerTo } from './answer.ts'
import { answerView } from './answer-view.ts'
import { fieldsOf, type FieldSet } from './fields.ts'
import { formView } from './form-view.ts'
import { addressOf, trouble } from './layout.ts'
import { NOTHING, type Markup } from './markup.ts'
import { fieldOfFault, sheetOfForm, type FieldFault, type Filled, type FormSheet } from './read-form.ts'
import { filledIn, shown } from './reply.ts'
import { shopOfBrowser } from './shop-key.ts'
import type { CounterSubject } from './subjects.ts'

/** One question, about one engine, asked from one browser. */
interface Asked {
  readonly c: Context
  readonly service: Service
  readonly subject: CounterSubject
  readonly engine: Engine
  /** The engines on offer: the shop's own sheets over the rulebook's. */
  readonly engines: readonly Engine[]
  readonly fields: FieldSet
  readonly shop: Shop | undefined
}

/** GET: the empty form of a question. @throws StoreTrouble */
export async function question(service: Service, c: Context, subject: CounterSubject): Promise<Response> {
  const asked = await askedIn(service, c, subject)
  return asked instanceof Response ? asked : withForm(asked, new Map(), [])
}

/** POST: the answer above the form, or the faults beside their fields; entered in the ledger where that was asked for. @throws StoreTrouble */
export async function answer(service: Service, c: Context, subject: CounterSubject): Promise<Response> {
  const asked = await askedIn(service, c, subject)
  if (asked instanceof Response) return asked
  const { engine, fields, shop } = asked
  const filled = await filledIn(c)
  const enterFor = filled.get('intent') === 'enter' ? shop : undefined
  const made = sheetOfForm(subject, engine.id, fields, filled, enterFor !== undefined)
  try {
    const sheet = sheetFrom(made.sheet)
    if (made.faults.length > 0) {
      await judgeSheet(service, shop, sheet) // for the faults of its entries, not for its answer
      return withForm(asked, filled, made.faults)
    }
    if (enterFor !== undefined) {
      const { record } = await decideSheet(service, enterFor, sheet, { door: 'form' })
      // Elsewhere, so that loading the page again does not enter it again.
      return c.redirect(`/decisions/${encodeURIComponent(record.id ?? '')}`, 303)
    }
    const record = await judgeSheet(service, shop, sheet)
    return withForm(asked, filled, [], answerView(service.book, answerTo(service.book, subject, record), shop !== undefined))
  } catch (error) {
    if (error instanceof Refused) return withForm(asked, filled, [...made.faults, ...placed(made, error)])
    throw error
  }
}

async function askedIn(service: Service, c: Context, subject: CounterSubject): Promise<Asked | Response> {
  const { book } = service.book
  const shop = await shopOfBrowser(service, c)
  const named = c.req.query('engine')
  const engines = (await listEngines(service, shop)).flatMap(({ sheet, faults }) => (faults === undefined ? [sheet] : []))
  const engine = named === undefined ? engines[0] : engines.find((e) => e.id === named)
  if (engine !== undefined) return { c, service, subject, engine, engines, fields: fieldsOf(book, engine, subject), shop }
  const content = trouble(
    'No sheet for this engine',
    'A limit is never guessed from another engine.',
    `Known are ${engines.map((e) => e.id).join(', ')}.`,
  )
  return shown(c, 404, { title: subject.title, subject, shop, here: addressOf(subject, undefined), content })
}

function withForm(
  { c, service, subject, engine, engines, fields, shop }: Asked,
  filled: Filled,
  faults: readonly FieldFault[],
  answered: Markup = NOTHING,
): Promise<Response> {
  const form = formView({ book: service.book.book, subject, engine, engines, fields, filled, faults, mayEnter: shop !== undefined })
  const content = html`<h1>${subject.asks}</h1>
    <div class="counter">${answered}${form}</div>`
  return shown(c, faults.length > 0 ? 422 : 200, {
    title: subject.title,
    subject,
    engine: engine.id,
    shop,
    here: addressOf(subject, engine.id),
    content,
  })
}

/** Each fault at its field; one wrong position is a fault of every finding and is said once. */
function placed(made: FormSheet, refused: Refused): readonly FieldFault[] {
  const faults = new Map<string, FieldFault>()
  for (const fault of refused.faults) {
    const field = fieldOfFault(made.from, fault)
    faults.set(`${field} ${fault.code} ${fault.value ?? ''}`, { field, fault })
  }
  return [...faults.values()]
}
