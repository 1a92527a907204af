// Written by .setup/embed-migrations.mjs from the SQL files in migrations/; change those, not this.

/** One step of the schema: its statements run in one batch. */
export interface Migration {
  readonly name: string
  readonly statements: readonly string[]
}

/** Every step, oldest first. */
export const MIGRATIONS: readonly Migration[] = [
  {
    name: '0000_start',
    statements: [
      `CREATE TABLE \`adoptions\` (
	\`shop\` text NOT NULL,
	\`part\` text NOT NULL,
	\`limit\` text NOT NULL,
	\`adopted_by\` text NOT NULL,
	\`adopted_on\` text NOT NULL,
	PRIMARY KEY(\`shop\`, \`part\`, \`limit\`)
);`,
      `CREATE TABLE \`api_keys\` (
	\`hash\` text PRIMARY KEY NOT NULL,
	\`shop\` text NOT NULL,
	\`label\` text NOT NULL,
	\`created_at\` text NOT NULL,
	\`revoked_at\` text
);`,
      `CREATE TABLE \`decisions\` (
	\`shop\` text NOT NULL,
	\`seq\` integer NOT NULL,
	\`id\` text NOT NULL,
	\`job\` text NOT NULL,
	\`engine\` text NOT NULL,
	\`stage\` text NOT NULL,
	\`hash\` text NOT NULL,
	\`body\` text NOT NULL,
	\`envelope\` text NOT NULL,
	\`received_at\` text NOT NULL,
	\`door\` text NOT NULL,
	PRIMARY KEY(\`shop\`, \`seq\`)
);`,
      `CREATE UNIQUE INDEX \`decisions_id_unique\` ON \`decisions\` (\`id\`);`,
      `CREATE INDEX \`decisions_of_job\` ON \`decisions\` (\`shop\`,\`job\`,\`seq\`);`,
      `CREATE TABLE \`disclosures\` (
	\`shop\` text NOT NULL,
	\`commitment\` text NOT NULL,
	\`kind\` text NOT NULL,
	\`salt\` text,
	\`text\` text,
	\`erased_at\` text,
	PRIMARY KEY(\`shop\`, \`commitment\`)
);`,
      `CREATE UNIQUE INDEX \`disclosures_one_salt\` ON \`disclosures\` (\`shop\`,\`kind\`,\`text\`);`,
      `CREATE TABLE \`editions\` (
	\`hash\` text PRIMARY KEY NOT NULL,
	\`content\` text NOT NULL,
	\`first_used_at\` text NOT NULL
);`,
      `CREATE TABLE \`hook_endpoints\` (
	\`id\` text PRIMARY KEY NOT NULL,
	\`shop\` text NOT NULL,
	\`secret\` text NOT NULL,
	\`created_at\` text NOT NULL
);`,
      `CREATE TABLE \`receipts\` (
	\`endpoint\` text NOT NULL,
	\`message_id\` text NOT NULL,
	\`body_hash\` text NOT NULL,
	\`decision_id\` text NOT NULL,
	\`received_at\` text NOT NULL,
	PRIMARY KEY(\`endpoint\`, \`message_id\`)
);`,
      `CREATE TABLE \`shop_limits\` (
	\`shop\` text NOT NULL,
	\`part\` text NOT NULL,
	\`limit\` text NOT NULL,
	\`value\` text NOT NULL,
	\`note\` text,
	\`set_by\` text NOT NULL,
	\`set_on\` text NOT NULL,
	PRIMARY KEY(\`shop\`, \`part\`, \`limit\`)
);`,
      `CREATE TABLE \`shops\` (
	\`id\` text PRIMARY KEY NOT NULL,
	\`name\` text NOT NULL,
	\`settings\` text NOT NULL,
	\`created_at\` text NOT NULL
);`,
    ],
  },
  {
    name: '0001_shop_engines',
    statements: [
      `CREATE TABLE \`shop_engines\` (
	\`shop\` text NOT NULL,
	\`id\` text NOT NULL,
	\`content\` text NOT NULL,
	\`put_by\` text NOT NULL,
	\`put_on\` text NOT NULL,
	PRIMARY KEY(\`shop\`, \`id\`)
);`,
    ],
  },
]
