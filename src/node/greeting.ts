import type { DemoStart } from './demo-access.ts'

export interface Started {
  /** "http://127.0.0.1:8787" */
  readonly address: string
  /** The database's URL. */
  readonly url: string
  /** True when the schema was made or brought up to date. */
  readonly migrated: boolean
  readonly rules: number
  readonly demo: DemoStart | undefined
}

/** The sheet that the example request sends. */
export const EXAMPLE_SHEET = 'examples/sheets/ql-6p-mixed-findings.json'

/** What is printed once the service listens: where it is, with which key to speak to it, and a request to paste. */
export function greeting({ address, url, migrated, rules, demo }: Started): string {
  // A remote URL may hold a token; its host says enough.
  const ledger = url.startsWith('file:') ? url.slice('file:'.length) : new URL(url).host
  const lines = [
    `witnessmark   ${address}   (the form, in a browser)`,
    `ledger        ${ledger}${migrated ? ' (made or brought up to date just now)' : ''}`,
    `rulebook      ${rules} rules`,
  ]
  if (demo !== undefined) {
    lines.push(
      `demo shop     ${demo.name}${demo.loaded ? ', loaded just now' : ''}`,
      `demo key      ${demo.key}`,
      `              (kept in ${demo.keptIn}, with the secret for signed messages)`,
      '',
      'In another terminal, from this folder:',
      '',
      `  curl -s ${address}/v1/judgements \\`,
      `    -H 'Authorization: Bearer ${demo.key}' \\`,
      `    -H 'Content-Type: application/json' \\`,
      `    --data-binary @${EXAMPLE_SHEET}`,
    )
  } else lines.push('', 'This database holds shops of its own, and none of them is the demo shop; use a key of theirs.')
  return `\n${[...lines, '', 'Ctrl-C stops it.'].map((line) => (line === '' ? '' : `  ${line}`)).join('\n')}\n`
}
