/** The service on workerd, over a remote libSQL database named by the bindings DATABASE_URL and DATABASE_TOKEN. */
import { createApp, createService } from './app.ts'
import { oneProblem, problemResponse } from './http/problem.ts'
import { Refused } from './quantity/fault.ts'
import { openRemote } from './store/client.web.ts'
import { migrate } from './store/migrate.ts'

export interface Bindings {
  readonly DATABASE_URL?: string
  readonly DATABASE_TOKEN?: string
}

interface Running {
  readonly url: string
  readonly token: string | undefined
  readonly app: ReturnType<typeof createApp>
}

/** Kept for as long as the isolate lives. Set only once the schema stands; two first requests may both see to that. */
let running: Running | undefined

export default {
  async fetch(request: Request, bindings: Bindings): Promise<Response> {
    try {
      running = await runningFor(bindings)
    } catch (error) {
      return notRunning(error)
    }
    return running.app.fetch(request)
  },
}

async function runningFor({ DATABASE_URL: url = '', DATABASE_TOKEN: token }: Bindings): Promise<Running> {
  if (running !== undefined && running.url === url && running.token === token) return running
  const db = openRemote(url, { token })
  try {
    await migrate(db)
  } catch (error) {
    db.close()
    throw error
  }
  return { url, token, app: createApp(createService({ db })) }
}

/** Told in full to the log only: what is wrong is the deployment, which the sender of a request can't mend. */
function notRunning(error: unknown): Response {
  console.error(error instanceof Error ? `${error.name}: ${error.message}` : 'The service did not start.')
  if (error instanceof Refused)
    return problemResponse(oneProblem(500, 'unexpected', 'The service is not set up.', 'Whoever runs it finds the reason in its log.'))
  return problemResponse(
    oneProblem(503, 'store-unreachable', 'The ledger can’t be reached, so there is no answer.', 'Send the same request again in a moment.'),
  )
}
