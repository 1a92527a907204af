CREATE TABLE `shop_engines` (
	`shop` text NOT NULL,
	`id` text NOT NULL,
	`content` text NOT NULL,
	`put_by` text NOT NULL,
	`put_on` text NOT NULL,
	PRIMARY KEY(`shop`, `id`)
);
