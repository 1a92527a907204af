import { defineConfig } from 'drizzle-kit'

// After a change of the tables: `npx drizzle-kit generate --name <what changed>`, then `node .setup/embed-migrations.mjs`.
export default defineConfig({ dialect: 'sqlite', schema: './src/store/schema.ts', out: './src/store/migrations' })
