/**
 * The names and notes behind the commitments that stand in hashed bodies (see ledger/commitment.ts). A shop's name has one
 * salt, so that one person is one commitment there; another shop's salt for the same name is another.
 * Erasing takes the text and the salt and leaves the row: "erased on" can then be told from "lost".
 */
import { and, eq, inArray, isNotNull, isNull, sql } from 'drizzle-orm'
import { primaryKey, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import { together } from './database.ts'
import type { Database, Write } from './database.ts'
import { guarded, StoreTrouble } from './trouble.ts'

const KINDS = ['name', 'note'] as const
export type DisclosureKind = (typeof KINDS)[number]

export const disclosures = sqliteTable(
  'disclosures',
  {
    shop: text('shop').notNull(),
    commitment: text('commitment').notNull(),
    kind: text('kind', { enum: KINDS }).notNull(),
    /** Null once erased. */
    salt: text('salt'),
    /** Null once erased. */
    text: text('text'),
    erasedAt: text('erased_at'),
  },
  (t) => [primaryKey({ columns: [t.shop, t.commitment] }), unique('disclosures_one_salt').on(t.shop, t.kind, t.text)],
)
export type StoredDisclosure = typeof disclosures.$inferSelect

/** What a commitment stands for, as it is written beside a record. */
export interface Disclosure {
  readonly commitment: string
  readonly kind: DisclosureKind
  readonly salt: string
  readonly text: string
}

/** What came of a write with disclosures. `resalt`: ask `saltFor` again, commit again, write again; nothing was written. */
export type Disclosed = { readonly kind: 'written' } | { readonly kind: 'resalt' }

/**
 * The statement that writes a disclosure unless exactly that one is already there. It breaks the batch when the
 * text has another salt by now (somebody else was first), or when the commitment was erased in between.
 */
export function disclosing(db: Database, shop: string, d: Disclosure): Write {
  return db.insert(disclosures).select(sql`
    select ${shop}, ${d.commitment}, ${d.kind}, ${d.salt}, ${d.text}, null
    where not exists (
      select 1 from ${disclosures} where ${disclosures.shop} = ${shop} and ${disclosures.commitment} = ${d.commitment}
        and ${disclosures.kind} = ${d.kind} and ${disclosures.salt} = ${d.salt} and ${disclosures.text} = ${d.text})`)
}

/** True when a batch failed because a disclosure's salt is not the one in force. */
export function wantsResalt(trouble: StoreTrouble): boolean {
  return trouble.broken?.startsWith('disclosures.') ?? false
}

/** Writes statements together with the disclosures that they lean on. @throws StoreTrouble */
export async function writeDisclosing(
  db: Database,
  during: string,
  shop: string,
  said: readonly Disclosure[],
  writes: readonly Write[],
): Promise<Disclosed> {
  try {
    await together(db, during, [...writes, ...said.map((d) => disclosing(db, shop, d))])
    return { kind: 'written' }
  } catch (error) {
    if (error instanceof StoreTrouble && wantsResalt(error)) return { kind: 'resalt' }
    throw error
  }
}

/** What a shop's commitments stand for, in no particular order; unknown ones are left out. @throws StoreTrouble */
export async function disclosuresFor(db: Database, shop: string, commitments: readonly string[]): Promise<readonly StoredDisclosure[]> {
  if (commitments.length === 0) return []
  const asked = and(eq(disclosures.shop, shop), inArray(disclosures.commitment, [...commitments]))
  return guarded('reading names and notes', () => db.select().from(disclosures).where(asked).all())
}

/** Salts that a shop already has: text → salt (lower-case hexadecimal). A text without one is left out. @throws StoreTrouble */
export async function saltFor(
  db: Database,
  shop: string,
  kind: DisclosureKind,
  texts: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  if (texts.length === 0) return new Map()
  const asked = and(
    eq(disclosures.shop, shop),
    eq(disclosures.kind, kind),
    inArray(disclosures.text, [...texts]),
    isNotNull(disclosures.salt),
  )
  const rows = await guarded('reading salts', () => db.select().from(disclosures).where(asked).all())
  return new Map(rows.flatMap((row) => (row.text === null || row.salt === null ? [] : [[row.text, row.salt] as const])))
}

/**
 * Erases the name or note behind a commitment. Records that hold the commitment still verify.
 * The database may keep the old bytes in free pages, and backups keep them, until those are overwritten.
 * @returns false when there is nothing to erase. @throws StoreTrouble
 */
export async function eraseDisclosure(db: Database, shop: string, commitment: string, on: string): Promise<boolean> {
  const standing = and(eq(disclosures.shop, shop), eq(disclosures.commitment, commitment), isNull(disclosures.erasedAt))
  const [erased] = await together(db, 'erasing a name or note', [
    db.update(disclosures).set({ salt: null, text: null, erasedAt: on }).where(standing),
  ])
  return erased === 1
}
