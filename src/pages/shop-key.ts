import type { Context } from 'hono'
import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import type { Shop } from '../store/shops.ts'
import { shopOfKey } from '../usecases/api-key.ts'
import type { Service } from '../usecases/service.ts'
import { trouble } from './layout.ts'
import { backTo, filledIn, shown } from './reply.ts'

const NAME = 'witnessmark-key'
/** A working day and a little more: who closes the shop need not forget the key by hand. */
const SECONDS = 12 * 60 * 60

/** The shop whose key this browser was given; none for no key, or one that is not in force any more. @throws StoreTrouble */
export async function shopOfBrowser(service: Service, c: Context): Promise<Shop | undefined> {
  const key = getCookie(c, NAME)
  return key === undefined ? undefined : shopOfKey(service, key)
}

/** Keeps a key in the browser: out of reach of any script, and sent with requests from our own pages only. */
function keepKey(c: Context, key: string): void {
  setCookie(c, NAME, key, {
    httpOnly: true,
    sameSite: 'Strict',
    path: '/',
    maxAge: SECONDS,
    secure: new URL(c.req.url).protocol === 'https:',
  })
}

const forgetKey = (c: Context): void => void deleteCookie(c, NAME, { path: '/' })

/** POST /key: takes a shop's key and goes back to where it was asked for. @throws StoreTrouble */
export async function takeKey(service: Service, c: Context): Promise<Response> {
  const filled = await filledIn(c)
  const key = filled.get('key') ?? ''
  if ((await shopOfKey(service, key)) === undefined) {
    return shown(c, 403, {
      title: 'Shop key',
      here: backTo(filled),
      content: trouble(
        'No shop has this key',
        'It may be mistyped, or it was revoked.',
        'Enter it again below, or ask whoever runs the service.',
      ),
    })
  }
  keepKey(c, key)
  return c.redirect(backTo(filled), 303)
}

/** POST /key/forget */
export async function dropKey(c: Context): Promise<Response> {
  forgetKey(c)
  return c.redirect(backTo(await filledIn(c)), 303)
}
