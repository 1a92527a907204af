import * as z from 'zod'

/** Ids are kebab-case words of the trade; the file that holds a unit is named by its id. */
export const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use lower-case words joined by hyphens')

/** A property of a part: one or two kebab-case words joined by a dot, "shoulder.groove-felt". */
export const propertyName = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)?$/, 'write it like "shoulder.groove-felt"')

/**
 * What a condition may ask about: a property or derived figure of the part itself ("margin"), or of another part
 * at the same place ("job:oil-pump", "camshaft:lobe-lift"). `port` is intake or exhaust, known from the position.
 */
export const factName = z
  .string()
  .regex(/^([a-z0-9]+(-[a-z0-9]+)*:)?[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)?$/, 'write it like "margin" or "job:oil-pump"')

/** A limit by name: "limit.margin-min" of this part's limits, or "spring:limit.bind-margin-min" of another's. */
export const limitName = z.string().regex(/^([a-z0-9]+(-[a-z0-9]+)*:)?limit\.[a-z0-9]+(-[a-z0-9]+)*$/, 'write it like "limit.margin-min"')

/** A rule by its id: "valve.tip-spalled". */
export const ruleId = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*\.[a-z0-9]+(-[a-z0-9]+)*$/, 'write it like "valve.tip-spalled"')

/** Shorter than this says nothing. */
const SHORTEST = 3
export const sentence = z.string().min(SHORTEST)

/** Where a figure or rule comes from, and how far it may decide by itself. */
export const provenance = z.enum(['published', 'common practice', 'from memory'])
export type Provenance = z.infer<typeof provenance>

export const day = z.iso.date()

/** A value as a person types it ("0.005 in", "30 deg", true, "pressed"). */
export const typedValue = z.union([z.string(), z.boolean()])

/** The editor's pointer to its schema, first line of every data file. */
export const $schema = z.string().optional()

export const quantityKind = z.enum([
  'length',
  'force',
  'stiffness',
  'torque',
  'pressure',
  'angle',
  'temperature',
  'volume',
  'area',
  'stress',
  'flow',
  'mass',
  'ratio',
  'count',
])
