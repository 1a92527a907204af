/** Starts a program of this project as its user does, and reads what it prints. */
import { spawn, type ChildProcess } from 'node:child_process'
import { createServer } from 'node:net'
import { join } from 'node:path'

const ROOT = new URL('../../', import.meta.url).pathname

export interface Started {
  readonly child: ChildProcess
  /** What it has printed so far, both streams. */
  readonly printed: () => string
  /** Resolves with the match once the output has one; rejects with the output when the program ends or time is up first. */
  readonly prints: (what: RegExp, withinMs?: number) => Promise<RegExpExecArray>
  /** The exit code, once it has ended. */
  readonly ended: Promise<number | null>
}

/** Runs a script of the project with this Node, in the project's folder or another. */
export function run(script: string, args: readonly string[], env: Readonly<Record<string, string>>, cwd = ROOT): Started {
  const inherited = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(PORT|HOST|DATABASE_|HOOK_|WEBHOOK_|VITEST|NODE_)/.test(name)),
  )
  const child = spawn(process.execPath, [join(ROOT, script), ...args], {
    cwd,
    env: { ...inherited, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let output = ''
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (output += text))
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve))
  const prints = async (what: RegExp, withinMs = 20_000): Promise<RegExpExecArray> => {
    let over = false
    void ended.then(() => (over = true))
    for (const deadline = Date.now() + withinMs; ;) {
      const found = what.exec(output)
      if (found !== null) return found
      if (over || Date.now() > deadline) throw new Error(`${script} did not print ${String(what)}; it printed:\n${output}`)
      await new Promise((resolve) => setTimeout(resolve, 20))
    }
  }
  return { child, printed: () => output, prints, ended }
}

/** A port that nobody listens at just now. */
export async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  await new Promise((resolve) => server.close(resolve))
  if (typeof address !== 'object' || address === null) throw new Error('No port was given.')
  return address.port
}
