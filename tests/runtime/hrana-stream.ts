/** One Hrana stream of the test bridge: one SQL connection, the SQL texts stored on it, and an answer to each request. */
import Libsql from 'libsql'

export type HranaValue =
  | { readonly type: 'null' }
  | { readonly type: 'integer'; readonly value: string }
  | { readonly type: 'float'; readonly value: number }
  | { readonly type: 'text'; readonly value: string }
  | { readonly type: 'blob'; readonly base64: string }

interface Sql {
  readonly sql?: string | null
  readonly sql_id?: number | null
}

interface Stmt extends Sql {
  readonly args?: readonly HranaValue[]
  readonly named_args?: readonly { readonly name: string; readonly value: HranaValue }[]
  readonly want_rows?: boolean
}

type Cond =
  | { readonly type: 'ok' | 'error'; readonly step: number }
  | { readonly type: 'not'; readonly cond: Cond }
  | { readonly type: 'and' | 'or'; readonly conds: readonly Cond[] }
  | { readonly type: 'is_autocommit' }

interface Batch {
  readonly steps: readonly { readonly condition?: Cond | null; readonly stmt: Stmt }[]
}

export type StreamRequest =
  | { readonly type: 'close' | 'get_autocommit' }
  | { readonly type: 'execute'; readonly stmt: Stmt }
  | { readonly type: 'batch'; readonly batch: Batch }
  | ({ readonly type: 'sequence' | 'describe' } & Sql)
  | { readonly type: 'store_sql'; readonly sql_id: number; readonly sql: string }
  | { readonly type: 'close_sql'; readonly sql_id: number }

interface HranaError {
  readonly message: string
  readonly code: string
}

/** How long a statement waits for another stream's lock, in milliseconds. Short: the wait stops the bridge itself. */
const BUSY_TIMEOUT_MS = 100

class ProtocolFault extends Error {
  readonly code: string
  constructor(message: string, code: string) {
    super(message)
    this.code = code
  }
}

export class HranaStream {
  readonly #db: InstanceType<typeof Libsql>
  readonly #sqls = new Map<number, string>()

  constructor(file: string) {
    this.#db = new Libsql(file, { timeout: BUSY_TIMEOUT_MS })
  }

  get closed(): boolean {
    return !this.#db.open
  }

  /** Ends the connection; an open transaction is rolled back by it. */
  close(): void {
    if (this.#db.open) this.#db.close()
  }

  /** The answer to one request of a pipeline: a Hrana `StreamResult`. */
  answer(request: StreamRequest): unknown {
    try {
      return { type: 'ok', response: { type: request.type, ...this.#respond(request) } }
    } catch (error) {
      return { type: 'error', error: hranaError(error) }
    }
  }

  #respond(request: StreamRequest): object {
    switch (request.type) {
      case 'close':
        this.close()
        return {}
      case 'get_autocommit':
        return { is_autocommit: !this.#db.inTransaction }
      case 'execute':
        return { result: this.#execute(request.stmt) }
      case 'batch':
        return { result: this.#batch(request.batch) }
      case 'sequence':
        this.#db.exec(this.#text(request))
        return {}
      case 'store_sql':
        this.#sqls.set(request.sql_id, request.sql)
        return {}
      case 'close_sql':
        this.#sqls.delete(request.sql_id)
        return {}
      case 'describe':
        throw new ProtocolFault('The test bridge does not describe statements', 'NOT_SUPPORTED')
    }
  }

  #batch({ steps }: Batch): object {
    const results: unknown[] = []
    const errors: (HranaError | null)[] = []
    const holds = (cond: Cond): boolean => {
      switch (cond.type) {
        case 'ok':
          return (results[cond.step] ?? null) !== null
        case 'error':
          return (errors[cond.step] ?? null) !== null
        case 'not':
          return !holds(cond.cond)
        case 'and':
          return cond.conds.every(holds)
        case 'or':
          return cond.conds.some(holds)
        case 'is_autocommit':
          return !this.#db.inTransaction
      }
    }
    for (const { condition, stmt } of steps) {
      let result: unknown = null
      let error: HranaError | null = null
      if (condition === undefined || condition === null || holds(condition)) {
        try {
          result = this.#execute(stmt)
        } catch (thrown) {
          error = hranaError(thrown)
        }
      }
      results.push(result)
      errors.push(error)
    }
    return { step_results: results, step_errors: errors }
  }

  #execute(stmt: Stmt): object {
    const prepared = this.#db.prepare(this.#text(stmt))
    prepared.safeIntegers(true)
    const args = argumentsOf(stmt)
    if (!prepared.reader) {
      const { changes, lastInsertRowid } = prepared.run(args)
      return { cols: [], rows: [], affected_row_count: changes, last_insert_rowid: String(lastInsertRowid) }
    }
    const before = this.#changes()
    const rows = prepared.raw(true).all(args) as unknown[][]
    const cols = prepared.columns().map(({ name, type }) => ({ name, decltype: type }))
    return {
      cols,
      rows: stmt.want_rows === false ? [] : rows.map((row) => row.map(toHrana)),
      affected_row_count: this.#changes() - before,
      last_insert_rowid: null,
    }
  }

  /** Rows changed on this connection so far; a statement that returns rows does not say how many it changed. */
  #changes(): number {
    const [row] = this.#db.prepare('select total_changes()').raw(true).all() as number[][]
    return row?.[0] ?? 0
  }

  #text({ sql, sql_id: id }: Sql): string {
    const found = sql ?? (typeof id === 'number' ? this.#sqls.get(id) : undefined)
    if (found === undefined) throw new ProtocolFault('The SQL text was not given or not stored', 'SQL_NOT_FOUND')
    return found
  }
}

type Bound = bigint | number | string | Buffer | null

function argumentsOf({ args = [], named_args: named = [] }: Stmt): Bound[] | Record<string, Bound> {
  if (named.length === 0) return args.map(fromHrana)
  return Object.fromEntries(named.map(({ name, value }) => [name.replace(/^[:@$]/, ''), fromHrana(value)]))
}

function fromHrana(value: HranaValue): Bound {
  switch (value.type) {
    case 'null':
      return null
    case 'integer':
      return BigInt(value.value)
    case 'blob':
      return Buffer.from(value.base64, 'base64')
    default:
      return value.value
  }
}

function toHrana(value: unknown): HranaValue {
  if (value === null || value === undefined) return { type: 'null' }
  if (typeof value === 'bigint') return { type: 'integer', value: String(value) }
  if (typeof value === 'number') return { type: 'float', value }
  if (typeof value === 'string') return { type: 'text', value }
  if (Buffer.isBuffer(value)) return { type: 'blob', base64: value.toString('base64') }
  throw new ProtocolFault(`A ${typeof value} came out of the database`, 'INTERNAL_ERROR')
}

function hranaError(error: unknown): HranaError {
  if (error instanceof ProtocolFault) return { message: error.message, code: error.code }
  const { message, code } = error as { readonly message: string; readonly code?: string }
  // As the server does, only the primary result code: SQLITE_CONSTRAINT, not SQLITE_CONSTRAINT_UNIQUE.
  const primary = /^SQLITE_[A-Z]+/.exec(code ?? '')?.[0]
  return { message: `SQLite error: ${message}`, code: primary ?? 'SQLITE_UNKNOWN' }
}
