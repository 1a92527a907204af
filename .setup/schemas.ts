// JSON Schema 2020-12 for editors, from the same zod objects that the loader and the doors use.
import * as z from 'zod'
import { SCHEMAS } from '../src/rulebook/load.ts'
import { sheetSchema } from '../src/verdict/sheet.ts'

/** File name under schemas/ → its text. */
export function schemaFiles(): ReadonlyMap<string, string> {
  const all = new Map<string, z.ZodType>([...SCHEMAS, ['finding-sheet', sheetSchema]])
  return new Map([...all].map(([name, schema]) => [`${name}.schema.json`, `${JSON.stringify(schemaOf(schema), null, 2)}\n`] as const))
}

const schemaOf = (schema: z.ZodType): unknown =>
  z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    unrepresentable: 'any',
    // A number of the sheet keeps its digits as typed; for an editor it is a number.
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema._zod.def.type === 'custom') jsonSchema.type = 'number'
    },
  })
