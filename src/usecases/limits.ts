import { show } from '../quantity/show.ts'
import type { LimitEntry } from '../rulebook/book.ts'
import { literalMeasure } from '../rulebook/literal.ts'
import { adoptionsOf, limitsOf, type Adoption, type ShopLimit } from '../store/limits.ts'
import type { Shop } from '../store/shops.ts'
import { namesBehind } from './people.ts'
import type { Service } from './service.ts'

/** A default of the trade, as a shop sees it. */
export interface DefaultLine {
  /** As the rulebook writes it, and in both unit systems. */
  readonly value: string
  readonly shows: string
  /** The conditions it holds under; the first default that fits speaks. */
  readonly for: Readonly<Record<string, string | readonly string[]>>
  readonly provenance: string
  readonly source: { readonly id: string; readonly title: string }
  readonly where?: string
  readonly verifiedOn?: string
  /** False while it is only remembered and nobody of the shop has adopted it: it may question, and neither condemns nor clears. */
  readonly decides: boolean
}

/** Who answers for something of the shop's; null where the name was erased. */
export interface Answerable {
  readonly by: string | null
  readonly on: string
}

/** One limit as it stands for a shop. A maker's sheet and the card of the part fitted stand over all of it. */
export interface LimitLine {
  readonly part: string
  readonly limit: string
  readonly label: string
  readonly kind: string
  readonly whenTooClose: string
  readonly defaults: readonly DefaultLine[]
  readonly adopted?: Answerable
  /** The shop's own figure, which stands over the defaults. */
  readonly own?: Answerable & { readonly value: string; readonly shows: string; readonly note?: string }
}

/** Every limit of the rulebook as it stands for a shop, by part and limit. @throws StoreTrouble */
export async function listLimits(service: Service, shop: Shop): Promise<readonly LimitLine[]> {
  const { book } = service.book
  const kept = await keptLimits(service, shop)
  return [...book.parts.values()]
    .sort(byId)
    .flatMap((cls) => [...cls.limits.values()].sort(byId).map((limit) => line(service, cls.id, limit, kept)))
}

/** One limit as it stands for a shop; undefined where the rulebook has none of that name. @throws StoreTrouble */
export async function readLimit(service: Service, shop: Shop, part: string, limit: string): Promise<LimitLine | undefined> {
  const entry = service.book.book.parts.get(part)?.limits.get(limit)
  return entry === undefined ? undefined : line(service, part, entry, await keptLimits(service, shop))
}

const byId = (a: { readonly id: string }, b: { readonly id: string }): number => (a.id < b.id ? -1 : 1)

interface KeptLimits {
  readonly adoptions: readonly Adoption[]
  readonly limits: readonly ShopLimit[]
  readonly names: ReadonlyMap<string, string | null>
}

async function keptLimits(service: Service, shop: Shop): Promise<KeptLimits> {
  const [adoptions, limits] = await Promise.all([adoptionsOf(service.db, shop.id), limitsOf(service.db, shop.id)])
  const people = [...adoptions, ...limits].map((row) => row.by)
  return { adoptions, limits, names: await namesBehind(service, shop.id, people) }
}

function line({ book }: Service, part: string, entry: LimitEntry, { adoptions, limits, names }: KeptLimits): LimitLine {
  const { id: limit, label, kind, whenTooClose } = entry
  const ofThis = (row: { readonly part: string; readonly limit: string }): boolean => row.part === part && row.limit === limit
  const [adoption, own] = [adoptions.find(ofThis), limits.find(ofThis)]
  const answerable = ({ by, on }: { readonly by: string; readonly on: string }): Answerable => ({ by: names.get(by) ?? null, on })
  return {
    part,
    limit,
    label,
    kind,
    whenTooClose,
    defaults: entry.defaults.map(({ value, kept, provenance, source, where, verifiedOn, ...standard }) => ({
      value,
      shows: show(kept, kind, { typed: value }),
      for: standard.for,
      provenance,
      source: { id: source, title: book.book.sources.get(source)?.title ?? source },
      ...(where === undefined ? {} : { where }),
      ...(verifiedOn === undefined ? {} : { verifiedOn }),
      decides: provenance !== 'from memory' || adoption !== undefined,
    })),
    ...(adoption === undefined ? {} : { adopted: answerable(adoption) }),
    ...(own === undefined
      ? {}
      : {
          own: {
            value: own.value,
            shows: show(literalMeasure(own.value, kind), kind, { typed: own.value }),
            ...(own.note === null ? {} : { note: own.note }),
            ...answerable(own),
          },
        }),
  }
}
