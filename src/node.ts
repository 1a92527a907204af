/** `npm start`: the service on Node. Settings come from the environment: PORT, HOST, DATABASE_URL, DATABASE_TOKEN. */
import { serve, type ServerType } from '@hono/node-server'
import { createApp } from './app.ts'
import { demoAccess } from './node/demo-access.ts'
import { greeting } from './node/greeting.ts'
import { openService } from './node/service.ts'
import { Refused } from './quantity/fault.ts'
import { StoreTrouble } from './store/trouble.ts'

const DEFAULT_PORT = 8787
const HIGHEST_PORT = 65_535
/** Requests under way may take so long to end once the service is asked to stop, in milliseconds. */
const GRACE_MS = 5_000

try {
  await start(process.env)
} catch (error) {
  console.error(`\nwitnessmark did not start. ${reasonOf(error)}\n`)
  process.exitCode = 1
}

async function start(env: NodeJS.ProcessEnv): Promise<void> {
  const [port, host] = [portOf(env['PORT']), env['HOST'] || '127.0.0.1']
  const { service, url, migrated } = await openService(env)
  try {
    const demo = await demoAccess(service, url)
    const server = await listening(serve({ fetch: createApp(service).fetch, port, hostname: host }))
    stopOnSignal(server, () => service.db.close())
    const address = server.address()
    const shown = typeof address === 'object' && address !== null ? address.port : port
    console.log(
      greeting({
        address: `http://${host.includes(':') ? `[${host}]` : host}:${shown}`,
        url,
        migrated: migrated.length > 0,
        rules: service.book.rules.size,
        demo,
      }),
    )
  } catch (error) {
    service.db.close()
    throw error
  }
}

function portOf(text: string | undefined): number {
  if (text === undefined || text === '') return DEFAULT_PORT
  const port = Number(text)
  if (!/^\d+$/.test(text) || port > HIGHEST_PORT)
    throw new Error(`PORT is "${text}", which is no port. Give a whole number up to ${HIGHEST_PORT}: PORT=8788 npm start`)
  return port
}

function listening(server: ServerType): Promise<ServerType> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.once('listening', () => {
      server.off('error', reject)
      resolve(server)
    })
  })
}

/** Takes no new requests, lets those under way end, then closes the database. */
function stopOnSignal(server: ServerType, close: () => void): void {
  let stopping = false
  const stop = (): void => {
    if (stopping) return
    stopping = true
    console.log('\nStopping …')
    const impatient = setTimeout(() => 'closeAllConnections' in server && server.closeAllConnections(), GRACE_MS)
    server.close(() => {
      clearTimeout(impatient)
      close()
    })
    if ('closeIdleConnections' in server) server.closeIdleConnections()
  }
  process.on('SIGINT', stop)
  process.on('SIGTERM', stop)
}

function reasonOf(error: unknown): string {
  if (error instanceof StoreTrouble || error instanceof Refused || !(error instanceof Error))
    return error instanceof Error ? error.message : String(error)
  const { code, port, address } = error as NodeJS.ErrnoException & { readonly port?: number; readonly address?: string }
  if (code === 'EADDRINUSE')
    return `Port ${port ?? ''} is taken. Stop what listens there, or choose another: PORT=${(port ?? DEFAULT_PORT) + 1} npm start`
  if (code === 'EACCES' && port !== undefined)
    return `Port ${port} may not be used by this user. Choose one above 1023: PORT=${DEFAULT_PORT} npm start`
  if (code === 'EADDRNOTAVAIL') return `This machine has no address ${address ?? ''}. Leave HOST out, or give one that it has.`
  return error.message
}
