/** Records of the example sheets, as the demo shop gets them; for tests of what is written about them. */
import { readFile } from 'node:fs/promises'
import type { Service } from '../../src/usecases/service.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import { decideSheet } from '../../src/usecases/decide.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { sheetFrom, sheetFromText } from '../../src/verdict/sheet.ts'

export const SHEETS = ['ql-6p-mixed-findings', 'ql-6p-mostly-unmeasured', 'ql-8s-cam-and-pump'] as const
export type SheetName = (typeof SHEETS)[number]

export const pathOf = (name: SheetName): string => new URL(`../../examples/sheets/${name}.json`, import.meta.url).pathname

export const textOf = (name: SheetName): Promise<string> => readFile(pathOf(name), 'utf8')

interface Keyed {
  readonly service: Service
  readonly key: string
}

export async function judged({ service, key }: Keyed, sheet: SheetName | object): Promise<DecisionRecord> {
  const read = typeof sheet === 'string' ? sheetFromText(await textOf(sheet)) : sheetFrom(sheet)
  return judgeSheet(service, await shopOfKey(service, key), read)
}

export async function entered({ service, key }: Keyed, sheet: SheetName): Promise<DecisionRecord> {
  const shop = await shopOfKey(service, key)
  if (shop === undefined) throw new Error('The demo shop is not there.')
  return (await decideSheet(service, shop, sheetFromText(await textOf(sheet)), { door: 'cli' })).record
}
