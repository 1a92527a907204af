/** A browser without script, as far as the counter needs one: it posts forms from the page's own address and keeps a cookie. */
import type { House } from '../http/house.ts'

export interface Seen {
  readonly status: number
  readonly html: string
  /** What a reader sees: tags out, white space closed up, entities back. */
  readonly text: string
  readonly headers: Headers
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" }

export function textOf(html: string): string {
  const bare = html.replace(/<(style|svg)[\s\S]*?<\/\1>/g, ' ').replace(/<[^>]+>/g, ' ')
  return bare.replace(/&(amp|lt|gt|quot|#39);/g, (_whole, name: string) => ENTITIES[name] ?? '').replace(/\s+/g, ' ')
}

async function seen(response: Response | Promise<Response>): Promise<Seen> {
  const { status, headers } = await response
  const html = await (await response).text()
  return { status, html, text: textOf(html), headers }
}

export const ORIGIN = 'http://localhost'

export const look = ({ app }: House, path: string, cookie = ''): Promise<Seen> =>
  seen(app.request(path, { headers: cookie === '' ? {} : { cookie } }))

export const fill = (
  { app }: House,
  path: string,
  entries: Readonly<Record<string, string>>,
  headers: Readonly<Record<string, string>> = {},
): Promise<Seen> =>
  seen(
    app.request(path, {
      method: 'POST',
      body: new URLSearchParams(entries).toString(),
      headers: { 'content-type': 'application/x-www-form-urlencoded', origin: ORIGIN, ...headers },
    }),
  )

/** The cookie that a browser keeps after the shop's key was entered. */
export async function cookieFor(house: House, key: string): Promise<string> {
  const { status, headers } = await fill(house, '/key', { key, back: '/' })
  if (status !== 303) throw new Error(`The key was not taken: ${status}`)
  return (headers.get('set-cookie') ?? '').split(';')[0] ?? ''
}
