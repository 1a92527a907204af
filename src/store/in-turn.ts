/**
 * Steadies the client of an embedded file. The native binding (libsql 0.5) does not finalise a statement that failed as busy; from then on
 * that connection can't commit ("SQL statements in progress", told as busy too) until the garbage collector comes by, and the client's pool
 * hands the same connection out again and again: https://github.com/tursodatabase/libsql-client-ts/issues/352.
 * So after a busy statement the connections are opened anew. Statements run one after another, which costs nothing, since the binding
 * is synchronous, and lets no other be under way while that happens.
 */
import type { Client, InArgs, InStatement, ResultSet, TransactionMode } from '@libsql/client'

type Execute = (statement: InStatement, args?: InArgs) => Promise<ResultSet>

/** Makes a file's client run `execute` and `batch` in turn, and reconnect after one that found the file busy. */
export function inTurn(client: Client): Client {
  const execute = client.execute.bind(client) as Execute
  const batch = client.batch.bind(client)
  let last: Promise<unknown> = Promise.resolve()

  function next<T>(run: () => Promise<T>): Promise<T> {
    const mine = last.then(run).catch(async (error: unknown) => {
      if (isBusy(error) && !client.closed) await client.reconnect()
      throw error
    })
    last = mine.catch(() => undefined)
    return mine
  }

  const own: { execute: Execute; batch: Client['batch'] } = {
    execute: (statement, args) => next(() => execute(statement, args)),
    batch: (statements, mode?: TransactionMode) => next(() => batch(statements, mode)),
  }
  return Object.assign(client, own)
}

function isBusy(error: unknown): boolean {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('SQLITE_BUSY')
}
