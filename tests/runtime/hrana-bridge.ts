/**
 * A libSQL server for tests: speaks enough of Hrana over HTTP (versions 2 and 3, JSON) for @libsql/client's HTTP form, backed by an
 * embedded libSQL file. Requests are what @libsql/hrana-client 0.x sends; errors are worded and coded as libsql-server does it
 * (tursodatabase/libsql, libsql-server/src/hrana/stmt.rs: "SQLite error: …" with the primary result code). A stream has one SQL
 * connection. A pipeline runs synchronously, so no other comes in between; locks still hold from one stream to another.
 */
import { randomUUID } from 'node:crypto'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { text } from 'node:stream/consumers'
import { HranaStream } from './hrana-stream.ts'
import type { StreamRequest } from './hrana-stream.ts'

export interface HranaBridge {
  /** As given to the client: "http://127.0.0.1:40213". */
  readonly url: string
  readonly close: () => Promise<void>
}

export interface BridgeOptions {
  /** Path of the database file; made when it is not there. */
  readonly file: string
  /** When given, a request without `Authorization: Bearer <token>` is answered 401. */
  readonly token?: string
  /** Port to listen at on 127.0.0.1; any free one when not given. */
  readonly port?: number
}

interface Pipeline {
  readonly baton?: string | null
  readonly requests: readonly StreamRequest[]
}

interface Answer {
  readonly status: number
  readonly json: unknown
}

/** A stream that nobody continues is given up after so many milliseconds, and with it its transaction. */
const STREAM_LIFE_MS = 10_000

/** Starts the bridge. `close` ends it and every stream still open. */
export async function startHranaBridge({ file, token, port = 0 }: BridgeOptions): Promise<HranaBridge> {
  const waiting = new Map<string, { readonly stream: HranaStream; readonly timer: NodeJS.Timeout }>()

  function pipeline(body: string): Answer {
    let asked: Pipeline
    try {
      asked = JSON.parse(body) as Pipeline
    } catch {
      return { status: 400, json: { message: 'The request body is not JSON', code: 'HTTP_BODY_INVALID' } }
    }
    if (!Array.isArray(asked.requests)) return { status: 400, json: { message: 'There is no list of requests', code: 'HTTP_BODY_INVALID' } }
    const stream = streamOf(asked.baton ?? undefined)
    if (stream === undefined) return { status: 400, json: { message: 'The baton is unknown or expired', code: 'BATON_INVALID' } }
    const results = asked.requests.map((request) => stream.answer(request))
    return { status: 200, json: { baton: stream.closed ? null : park(stream), base_url: null, results } }
  }

  function streamOf(baton: string | undefined): HranaStream | undefined {
    if (baton === undefined) return new HranaStream(file)
    const parked = waiting.get(baton)
    if (parked === undefined) return undefined
    clearTimeout(parked.timer)
    waiting.delete(baton)
    return parked.stream
  }

  function park(stream: HranaStream): string {
    const baton = randomUUID()
    const timer = setTimeout(() => {
      waiting.delete(baton)
      stream.close()
    }, STREAM_LIFE_MS)
    timer.unref()
    waiting.set(baton, { stream, timer })
    return baton
  }

  function answer(route: string, authorization: string | undefined, body: string): Answer {
    if (token !== undefined && authorization !== `Bearer ${token}`) {
      return { status: 401, json: { error: 'Unauthorized' } }
    }
    switch (route) {
      case 'GET /v2':
      case 'GET /v3':
        return { status: 200, json: {} }
      case 'POST /v2/pipeline':
      case 'POST /v3/pipeline':
        return pipeline(body)
      default:
        return { status: 404, json: { error: 'Not found' } }
    }
  }

  const server = createServer((request, response) => {
    void text(request).then((body) => {
      const { status, json } = answer(`${request.method} ${request.url}`, request.headers.authorization, body)
      response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(json))
    })
  })
  await new Promise<void>((resolve) => {
    server.listen(port, '127.0.0.1', resolve)
  })

  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: async () => {
      for (const { stream, timer } of waiting.values()) {
        clearTimeout(timer)
        stream.close()
      }
      waiting.clear()
      server.closeAllConnections()
      await new Promise<void>((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)))
      })
    },
  }
}
