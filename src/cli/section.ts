import type { DecisionRecord } from '../usecases/record.ts'
import type { Ink } from './layout.ts'

export interface ReportOptions {
  /** Widest line, in columns. */
  readonly columns: number
  readonly ink: Ink
}

/** What every section is written with. */
export type Section = (record: DecisionRecord, options: ReportOptions) => readonly string[]

/** A section's title, in capitals so that it stands out without colour too. */
export const titleLine = (title: string, { ink }: ReportOptions): string => ink.heading(title.toUpperCase())
