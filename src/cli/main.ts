/** The command `witnessmark`: arguments in, a report or a record out, and an exit code that scripts can rely on. */
import { Command, CommanderError } from 'commander'
import { Refused } from '../quantity/fault.ts'
import { StoreTrouble } from '../store/trouble.ts'
import { Ended, EXIT } from './exit.ts'
import { faultsReport } from './faults.ts'
import { inkFor, wrap } from './layout.ts'
import { report } from './report.ts'
import { answer, type Verb } from './run.ts'

const WIDEST = 96
const NARROWEST = 60
const WITHOUT_TERMINAL = 88

interface Options {
  readonly json?: true
  readonly shop?: string
}

const columnsOf = (stream: NodeJS.WriteStream): number => Math.max(NARROWEST, Math.min(WIDEST, stream.columns ?? WITHOUT_TERMINAL))

const program = new Command('witnessmark')
  .description('Cylinder-head and valve-train findings in, a traceable recommendation for every part out.')
  .exitOverride()
  .configureOutput({ writeErr: (text) => process.stderr.write(text) })
  .showHelpAfterError('(witnessmark --help says more)')

verb('decide', 'judge a finding sheet, enter the decision in the shop’s ledger, and report it')
verb('judge', 'judge a finding sheet and report it; nothing is recorded')

// Whoever reads us may stop reading: that is no fault of anybody's.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit()
    throw error
  })
}

try {
  await program.parseAsync()
} catch (error) {
  process.exitCode = said(error)
}

function verb(name: Verb, description: string): void {
  program
    .command(name)
    .description(description)
    .argument('<file>', 'a finding sheet in JSON, or - for standard input')
    .option('--json', 'print the record as JSON and nothing else')
    .option('--shop <id>', 'the shop to speak for (the only one where not given)')
    .action(async (file: string, options: Options) => {
      const record = await answer(name, file, options.shop, process.env)
      const { stdout } = process
      // In one piece, once all of it is known: half an answer is worse than none.
      stdout.write(
        options.json === true
          ? `${JSON.stringify(record, null, 2)}\n`
          : report(record, { columns: columnsOf(stdout), ink: inkFor(stdout, process.env) }),
      )
    })
}

/** Says what went wrong on standard error. @returns the exit code for it */
function said(error: unknown): number {
  const { stderr } = process
  const columns = columnsOf(stderr)
  const say = (words: string): void => void stderr.write(`${wrap(`witnessmark: ${words}`, columns).join('\n')}\n`)
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.usage // commander has said it
  if (error instanceof Refused) {
    stderr.write(faultsReport(error.faults, columns, inkFor(stderr, process.env)))
    return EXIT.refused
  }
  if (error instanceof Ended) {
    say(error.message)
    return error.code
  }
  if (error instanceof StoreTrouble) {
    say(error.message)
    return EXIT.database
  }
  say(`this is a fault of the program, not of the sheet: ${error instanceof Error ? error.message : String(error)}`)
  if (error instanceof Error && error.stack !== undefined) stderr.write(`${error.stack}\n`)
  return EXIT.fault
}
