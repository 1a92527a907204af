/** The one place where a request's body is read: once, within a limit, as JSON text. Nobody else touches it. */
import { oneProblem, Stopped } from './problem.ts'

/**
 * A V8 with every property measured at every valve, with instrument, name and time to each finding, makes a sheet of about
 * 225 kB (1,290 findings); twice that leaves room for notes.
 */
export const BODY_LIMIT = 512 * 1024

export interface ReadBody {
  /** As they came: what a signature and a hash are about. */
  readonly bytes: Uint8Array<ArrayBuffer>
  /** The same as text, a byte order mark included. */
  readonly raw: string
  /** The text to read as JSON (RFC 8259, section 8.1, lets a reader pass over a byte order mark). */
  readonly text: string
}

/** How large a body may be, and what to do with a larger one. */
export interface BodyLimit {
  /** Bytes. */
  readonly most: number
  readonly mend: string
}

const SHEET: BodyLimit = { most: BODY_LIMIT, mend: 'Send one job a sheet, and split a sheet that is larger still by part class.' }

/** @throws Stopped with 415 for another content type, 413 over the limit (a finding sheet's where not given), 400 for bytes that are no UTF-8 */
export async function readBody(request: Request, limit: BodyLimit = SHEET): Promise<ReadBody> {
  assertJson(request.headers.get('content-type'))
  // What the sender says of the length may be wrong or missing, so the bytes are counted as well.
  if (Number(request.headers.get('content-length') ?? 0) > limit.most) throw tooLarge(limit)
  const bytes = await bytesOf(request, limit)
  const raw = textOf(bytes)
  return { bytes, raw, text: raw.startsWith('\uFEFF') ? raw.slice(1) : raw }
}

function assertJson(type: string | null): void {
  const [media = '', ...parameters] = (type ?? '')
    .toLowerCase()
    .split(';')
    .map((part) => part.trim())
  const charset = parameters.find((p) => p.startsWith('charset='))
  if (/^application\/(?:[a-z0-9.-]+\+)?json$/.test(media) && (charset === undefined || /^charset="?utf-8"?$/.test(charset))) return
  const says = type === null ? 'The body has no content type.' : 'The body is not sent as JSON in UTF-8.'
  throw new Stopped(
    oneProblem(415, 'content-type', says, 'Send it with "Content-Type: application/json".', type === null ? {} : { value: type }),
    {
      accept: 'application/json',
    },
  )
}

async function bytesOf(request: Request, limit: BodyLimit): Promise<Uint8Array<ArrayBuffer>> {
  if (request.body === null) return new Uint8Array()
  const chunks: Uint8Array[] = []
  let size = 0
  const reader = request.body.getReader()
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    size += value.length
    if (size > limit.most) {
      await reader.cancel()
      throw tooLarge(limit)
    }
    chunks.push(value)
  }
  const bytes = new Uint8Array(size)
  let at = 0
  for (const chunk of chunks) {
    bytes.set(chunk, at)
    at += chunk.length
  }
  return bytes
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    throw new Stopped(
      oneProblem(400, 'not-utf8', 'The body holds bytes that are no UTF-8 text.', 'Save the sheet as UTF-8 and send it again.'),
    )
  }
}

const tooLarge = ({ most, mend }: BodyLimit): Stopped =>
  new Stopped(oneProblem(413, 'body-too-large', `The body is larger than ${most} bytes.`, mend))
