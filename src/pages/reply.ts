import type { Context } from 'hono'
import { page, addressOf, type PageOptions } from './layout.ts'
import type { Filled } from './read-form.ts'
import { SUBJECTS } from './subjects.ts'

/** Answers with a whole page. */
export const shown = async (c: Context, status: 200 | 403 | 404 | 413 | 422 | 503, options: PageOptions): Promise<Response> =>
  c.html(await page(options), status)

/** What a posted form holds: text only, trimmed, and nothing for what was left empty. */
export async function filledIn(c: Context): Promise<Filled> {
  const body = await c.req.parseBody()
  return new Map(
    Object.entries(body).flatMap(([name, value]) => (typeof value === 'string' && value.trim() !== '' ? [[name, value.trim()]] : [])),
  )
}

/** The address to go back to after a key: one of our own pages, whatever the form says. */
export function backTo(filled: Filled): string {
  const back = filled.get('back') ?? '/'
  if (/^\/decisions\/[\w-]+$/.test(back)) return back
  const [path = '/', query = ''] = back.split('?')
  const subject = SUBJECTS.find((s) => path === `/${s.path}`)
  return subject === undefined ? '/' : addressOf(subject, new URLSearchParams(query).get('engine') ?? undefined)
}
