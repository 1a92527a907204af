/** The service in workerd, as wrangler.toml has it, with nothing sent anywhere: no telemetry, no look-up of where this machine stands. */
import { tmpdir } from 'node:os'
import { join } from 'node:path'

Object.assign(process.env, {
  WRANGLER_SEND_METRICS: 'false',
  WRANGLER_SEND_ERROR_REPORTS: 'false',
  WRANGLER_LOG: 'error',
  WRANGLER_LOG_PATH: join(tmpdir(), 'witnessmark-wrangler-logs'),
  CLOUDFLARE_CF_FETCH_ENABLED: 'false',
})

export interface Workerd {
  readonly fetch: (path: string, init?: RequestInit) => Promise<Response>
  /** What the worker has logged. */
  readonly logs: () => string
  readonly stop: () => Promise<void>
}

/** Starts it with these bindings in the place of wrangler.toml's. */
export async function startWorkerd(bindings: Readonly<Record<string, string>>): Promise<Workerd> {
  // Imported late, since it reads the environment as it is loaded.
  const { createTestHarness } = await import('wrangler')
  const harness = createTestHarness({
    root: new URL('../../', import.meta.url).pathname,
    workers: [{ configPath: 'wrangler.toml', vars: { ...bindings } }],
  })
  const { url } = await harness.listen()
  return {
    fetch: (path, init) => fetch(new URL(path, url), init),
    logs: () => JSON.stringify(harness.getLogs()),
    stop: () => harness.close(),
  }
}
