-- Rows that are found by their whole key alone live in the key's own tree: one page to write instead of two.
-- The schema's own tool cannot say so; all else of these tables is as it was made. Nothing refers to them.
CREATE TABLE `__new_seen_updates` (
	`key` text PRIMARY KEY NOT NULL
) WITHOUT ROWID;
--> statement-breakpoint
INSERT INTO `__new_seen_updates` SELECT `key` FROM `seen_updates`;
--> statement-breakpoint
DROP TABLE `seen_updates`;
--> statement-breakpoint
ALTER TABLE `__new_seen_updates` RENAME TO `seen_updates`;
--> statement-breakpoint
DROP TRIGGER `fact_pieces_kept`;
--> statement-breakpoint
DROP TRIGGER `fact_pieces_fixed`;
--> statement-breakpoint
CREATE TABLE `__new_fact_pieces` (
	`fact` integer NOT NULL,
	`position` integer NOT NULL,
	`piece` integer NOT NULL,
	PRIMARY KEY(`fact`, `position`),
	FOREIGN KEY (`fact`) REFERENCES `facts`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fact_pieces_piece_number" CHECK(typeof("piece") = 'integer' and "piece" > 0)
) WITHOUT ROWID;
--> statement-breakpoint
INSERT INTO `__new_fact_pieces` SELECT `fact`, `position`, `piece` FROM `fact_pieces`;
--> statement-breakpoint
DROP TABLE `fact_pieces`;
--> statement-breakpoint
ALTER TABLE `__new_fact_pieces` RENAME TO `fact_pieces`;
--> statement-breakpoint
CREATE TRIGGER `fact_pieces_kept` BEFORE DELETE ON `fact_pieces` BEGIN SELECT RAISE(ABORT, 'fact pieces are never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER `fact_pieces_fixed` BEFORE UPDATE ON `fact_pieces` BEGIN SELECT RAISE(ABORT, 'fact pieces are never changed'); END;
--> statement-breakpoint
CREATE TABLE `__new_postings` (
	`fact` integer NOT NULL,
	`leg` integer NOT NULL,
	`day` text NOT NULL,
	`account` text NOT NULL,
	`cents` integer NOT NULL,
	`piece` integer,
	`detail` text,
	PRIMARY KEY(`fact`, `leg`),
	FOREIGN KEY (`fact`) REFERENCES `facts`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "postings_day" CHECK("day" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("day") = "day"),
	CONSTRAINT "postings_cents" CHECK(typeof("cents") = 'integer')
) WITHOUT ROWID;
--> statement-breakpoint
INSERT INTO `__new_postings` SELECT `fact`, `leg`, `day`, `account`, `cents`, `piece`, `detail` FROM `postings`;
--> statement-breakpoint
DROP TABLE `postings`;
--> statement-breakpoint
ALTER TABLE `__new_postings` RENAME TO `postings`;
