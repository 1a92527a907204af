import { readFile } from 'node:fs/promises'
import { fault, Refused } from '../quantity/fault.ts'
import { Ended, EXIT } from './exit.ts'

/** More than any engine's findings come to; a file beyond it is something else. */
const MOST_BYTES = 4 * 1024 * 1024

/**
 * The text of a sheet from a file, or from standard input where the name is "-".
 * @throws Ended when there is no such file; Refused when it is no UTF-8 text or too large
 */
export async function sheetText(file: string): Promise<string> {
  const bytes = file === '-' ? await fromStdin() : await fromFile(file)
  if (bytes.byteLength > MOST_BYTES) throw tooLarge()
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new Refused([fault('not-utf8', '', 'The sheet holds bytes that are no UTF-8 text.', 'Save it as UTF-8.')])
  }
}

async function fromFile(file: string): Promise<Uint8Array> {
  try {
    return await readFile(file)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    const says =
      code === 'ENOENT'
        ? 'There is no such file'
        : code === 'EISDIR'
          ? 'That is a folder'
          : code === 'EACCES'
            ? 'That file may not be read'
            : 'That file can’t be read'
    throw new Ended(EXIT.usage, `${says}: ${file}. Give the path of a finding sheet, or - to read one from standard input.`)
  }
}

async function fromStdin(): Promise<Uint8Array> {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of process.stdin) {
    const bytes = chunk as Buffer
    size += bytes.byteLength
    if (size > MOST_BYTES) throw tooLarge()
    chunks.push(bytes)
  }
  return Buffer.concat(chunks)
}

const tooLarge = (): Refused =>
  new Refused([fault('too-large', '', `The sheet is larger than ${MOST_BYTES} bytes.`, 'Send one job a sheet.')])
