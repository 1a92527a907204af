CREATE TABLE `adoptions` (
	`shop` text NOT NULL,
	`part` text NOT NULL,
	`limit` text NOT NULL,
	`adopted_by` text NOT NULL,
	`adopted_on` text NOT NULL,
	PRIMARY KEY(`shop`, `part`, `limit`)
);
--> statement-breakpoint
CREATE TABLE `api_keys` (
	`hash` text PRIMARY KEY NOT NULL,
	`shop` text NOT NULL,
	`label` text NOT NULL,
	`created_at` text NOT NULL,
	`revoked_at` text
);
--> statement-breakpoint
CREATE TABLE `decisions` (
	`shop` text NOT NULL,
	`seq` integer NOT NULL,
	`id` text NOT NULL,
	`job` text NOT NULL,
	`engine` text NOT NULL,
	`stage` text NOT NULL,
	`hash` text NOT NULL,
	`body` text NOT NULL,
	`envelope` text NOT NULL,
	`received_at` text NOT NULL,
	`door` text NOT NULL,
	PRIMARY KEY(`shop`, `seq`)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `decisions_id_unique` ON `decisions` (`id`);--> statement-breakpoint
CREATE INDEX `decisions_of_job` ON `decisions` (`shop`,`job`,`seq`);--> statement-breakpoint
CREATE TABLE `disclosures` (
	`shop` text NOT NULL,
	`commitment` text NOT NULL,
	`kind` text NOT NULL,
	`salt` text,
	`text` text,
	`erased_at` text,
	PRIMARY KEY(`shop`, `commitment`)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `disclosures_one_salt` ON `disclosures` (`shop`,`kind`,`text`);--> statement-breakpoint
CREATE TABLE `editions` (
	`hash` text PRIMARY KEY NOT NULL,
	`content` text NOT NULL,
	`first_used_at` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `hook_endpoints` (
	`id` text PRIMARY KEY NOT NULL,
	`shop` text NOT NULL,
	`secret` text NOT NULL,
	`created_at` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `receipts` (
	`endpoint` text NOT NULL,
	`message_id` text NOT NULL,
	`body_hash` text NOT NULL,
	`decision_id` text NOT NULL,
	`received_at` text NOT NULL,
	PRIMARY KEY(`endpoint`, `message_id`)
);
--> statement-breakpoint
CREATE TABLE `shop_limits` (
	`shop` text NOT NULL,
	`part` text NOT NULL,
	`limit` text NOT NULL,
	`value` text NOT NULL,
	`note` text,
	`set_by` text NOT NULL,
	`set_on` text NOT NULL,
	PRIMARY KEY(`shop`, `part`, `limit`)
);
--> statement-breakpoint
CREATE TABLE `shops` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`settings` text NOT NULL,
	`created_at` text NOT NULL
);
