CREATE TABLE `fact_pieces` (
	`fact` integer NOT NULL,
	`position` integer NOT NULL,
	`piece` integer NOT NULL,
	PRIMARY KEY(`fact`, `position`),
	FOREIGN KEY (`fact`) REFERENCES `facts`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fact_pieces_piece_number" CHECK(typeof("fact_pieces"."piece") = 'integer' and "fact_pieces"."piece" > 0)
);
--> statement-breakpoint
CREATE INDEX `fact_pieces_piece` ON `fact_pieces` (`piece`);--> statement-breakpoint
CREATE TABLE `facts` (
	`id` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`day` text NOT NULL,
	`place` integer NOT NULL,
	`author` integer NOT NULL,
	`note` integer NOT NULL,
	`root` integer NOT NULL,
	`amount` integer,
	`data` text NOT NULL,
	FOREIGN KEY (`author`) REFERENCES `members`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`note`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`root`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "facts_day" CHECK("facts"."day" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("facts"."day") = "facts"."day"),
	CONSTRAINT "facts_place" CHECK(typeof("facts"."place") = 'integer'),
	CONSTRAINT "facts_amount" CHECK(typeof("facts"."amount") in ('integer', 'null')),
	CONSTRAINT "facts_data" CHECK(typeof("facts"."data") = 'text' and json_valid("facts"."data"))
);
--> statement-breakpoint
CREATE INDEX `facts_note` ON `facts` (`note`);--> statement-breakpoint
CREATE INDEX `facts_root` ON `facts` (`root`);--> statement-breakpoint
CREATE TABLE `invitations` (
	`hash` text PRIMARY KEY NOT NULL,
	`role` text NOT NULL,
	`expires` integer NOT NULL,
	`used` integer,
	`tries` integer DEFAULT 0 NOT NULL,
	CONSTRAINT "invitations_role" CHECK("invitations"."role" in ('owner', 'member'))
);
--> statement-breakpoint
CREATE TABLE `loans` (
	`name` text PRIMARY KEY NOT NULL,
	`opened` text NOT NULL,
	`rate` text NOT NULL,
	`rate_unknown` integer NOT NULL,
	`days` text NOT NULL,
	`principal` integer NOT NULL,
	`accrued` integer NOT NULL,
	`since` text NOT NULL,
	`stretches` text NOT NULL,
	`paid` integer NOT NULL,
	`interest_paid` integer NOT NULL,
	CONSTRAINT "loans_opened" CHECK("loans"."opened" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("loans"."opened") = "loans"."opened"),
	CONSTRAINT "loans_since" CHECK("loans"."since" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("loans"."since") = "loans"."since"),
	CONSTRAINT "loans_principal" CHECK(typeof("loans"."principal") = 'integer'),
	CONSTRAINT "loans_accrued" CHECK(typeof("loans"."accrued") = 'integer'),
	CONSTRAINT "loans_paid" CHECK(typeof("loans"."paid") = 'integer'),
	CONSTRAINT "loans_interest_paid" CHECK(typeof("loans"."interest_paid") = 'integer'),
	CONSTRAINT "loans_stretches" CHECK(typeof("loans"."stretches") = 'text' and json_valid("loans"."stretches"))
);
--> statement-breakpoint
CREATE TABLE `members` (
	`id` integer PRIMARY KEY NOT NULL,
	`user` text NOT NULL,
	`name` text NOT NULL,
	`role` text NOT NULL,
	`joined` integer NOT NULL,
	`removed` integer,
	`tell_owner` integer DEFAULT true NOT NULL,
	CONSTRAINT "members_role" CHECK("members"."role" in ('owner', 'member'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `members_user_unique` ON `members` (`user`);--> statement-breakpoint
CREATE TABLE `notes` (
	`id` integer PRIMARY KEY NOT NULL,
	`chat` text NOT NULL,
	`message` text NOT NULL,
	`revision` integer NOT NULL,
	`root` integer NOT NULL,
	`text` text NOT NULL,
	`author` integer NOT NULL,
	`said` integer NOT NULL,
	`handled` integer NOT NULL,
	`state` text NOT NULL,
	`outcome` text,
	FOREIGN KEY (`author`) REFERENCES `members`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "notes_said" CHECK(typeof("notes"."said") = 'integer'),
	CONSTRAINT "notes_handled" CHECK(typeof("notes"."handled") = 'integer')
);
--> statement-breakpoint
CREATE INDEX `notes_author` ON `notes` (`author`,`handled`);--> statement-breakpoint
CREATE UNIQUE INDEX `notes_message` ON `notes` (`chat`,`message`,`revision`);--> statement-breakpoint
CREATE TABLE `outbox` (
	`id` integer PRIMARY KEY NOT NULL,
	`chat` text NOT NULL,
	`body` text NOT NULL,
	`note` integer,
	`reply_to` text,
	`key` text,
	`queued` integer NOT NULL,
	`tries` integer DEFAULT 0 NOT NULL,
	`not_before` integer,
	`sent` integer,
	`message` text,
	`gave_up` text,
	FOREIGN KEY (`note`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "outbox_body" CHECK(typeof("outbox"."body") = 'text' and json_valid("outbox"."body"))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `outbox_key_unique` ON `outbox` (`key`);--> statement-breakpoint
CREATE INDEX `outbox_unsent` ON `outbox` (`chat`,`id`) WHERE sent is null and gave_up is null;--> statement-breakpoint
CREATE INDEX `outbox_message` ON `outbox` (`chat`,`message`);--> statement-breakpoint
CREATE INDEX `outbox_note` ON `outbox` (`note`);--> statement-breakpoint
CREATE TABLE `pictures` (
	`id` integer PRIMARY KEY NOT NULL,
	`note` integer NOT NULL,
	`piece` integer,
	`file` text NOT NULL,
	`unique_file` text NOT NULL,
	`taken` integer NOT NULL,
	FOREIGN KEY (`note`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `pictures_of_note` ON `pictures` (`note`,`unique_file`) WHERE piece is null;--> statement-breakpoint
CREATE UNIQUE INDEX `pictures_of_piece` ON `pictures` (`piece`,`unique_file`) WHERE piece is not null;--> statement-breakpoint
CREATE TABLE `pieces` (
	`number` integer PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`traits` text NOT NULL,
	`lot` integer,
	`set` integer NOT NULL,
	`source` text,
	`bought` text NOT NULL,
	`started` text,
	`finished` text,
	`listed` text,
	`list_price` integer,
	`first_list_price` integer,
	`first_listed` text,
	`hold_since` text,
	`hold_buyer` text,
	`hold_until` text,
	`sold` text,
	`gone` text,
	`gone_on` text,
	`price` integer NOT NULL,
	`materials` integer NOT NULL,
	`fees` integer NOT NULL,
	`deposit` integer NOT NULL,
	`deposits_kept` integer NOT NULL,
	`sales` integer NOT NULL,
	`refunds` integer NOT NULL,
	`minutes` integer NOT NULL,
	`miles` text NOT NULL,
	CONSTRAINT "pieces_traits" CHECK(typeof("pieces"."traits") = 'text' and json_valid("pieces"."traits")),
	CONSTRAINT "pieces_bought" CHECK("pieces"."bought" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("pieces"."bought") = "pieces"."bought"),
	CONSTRAINT "pieces_sold" CHECK("pieces"."sold" is null or ("pieces"."sold" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("pieces"."sold") = "pieces"."sold")),
	CONSTRAINT "pieces_price" CHECK(typeof("pieces"."price") = 'integer'),
	CONSTRAINT "pieces_materials" CHECK(typeof("pieces"."materials") = 'integer'),
	CONSTRAINT "pieces_fees" CHECK(typeof("pieces"."fees") = 'integer'),
	CONSTRAINT "pieces_deposit" CHECK(typeof("pieces"."deposit") = 'integer'),
	CONSTRAINT "pieces_deposits_kept" CHECK(typeof("pieces"."deposits_kept") = 'integer'),
	CONSTRAINT "pieces_sales" CHECK(typeof("pieces"."sales") = 'integer'),
	CONSTRAINT "pieces_refunds" CHECK(typeof("pieces"."refunds") = 'integer'),
	CONSTRAINT "pieces_list_price" CHECK(typeof("pieces"."list_price") in ('integer', 'null'))
);
--> statement-breakpoint
CREATE TABLE `postings` (
	`fact` integer NOT NULL,
	`leg` integer NOT NULL,
	`day` text NOT NULL,
	`account` text NOT NULL,
	`cents` integer NOT NULL,
	`piece` integer,
	`detail` text,
	PRIMARY KEY(`fact`, `leg`),
	FOREIGN KEY (`fact`) REFERENCES `facts`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "postings_day" CHECK("postings"."day" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("postings"."day") = "postings"."day"),
	CONSTRAINT "postings_cents" CHECK(typeof("postings"."cents") = 'integer')
);
--> statement-breakpoint
CREATE TABLE `questions` (
	`id` integer PRIMARY KEY NOT NULL,
	`person` integer NOT NULL,
	`chat` text NOT NULL,
	`note` integer NOT NULL,
	`matter` text NOT NULL,
	`ask` text NOT NULL,
	`asked` integer NOT NULL,
	`closed` integer,
	`prompt` integer,
	`token` text NOT NULL,
	FOREIGN KEY (`person`) REFERENCES `members`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`note`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`prompt`) REFERENCES `outbox`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "questions_matter" CHECK(typeof("questions"."matter") = 'text' and json_valid("questions"."matter")),
	CONSTRAINT "questions_ask" CHECK(typeof("questions"."ask") = 'text' and json_valid("questions"."ask"))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `questions_token_unique` ON `questions` (`token`);--> statement-breakpoint
CREATE INDEX `questions_open` ON `questions` (`person`,`id`) WHERE closed is null;--> statement-breakpoint
CREATE TABLE `reminders` (
	`day` text NOT NULL,
	`kind` text NOT NULL,
	`claimed` integer NOT NULL,
	PRIMARY KEY(`day`, `kind`),
	CONSTRAINT "reminders_day" CHECK("reminders"."day" glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date("reminders"."day") = "reminders"."day")
);
--> statement-breakpoint
CREATE TABLE `seen_updates` (
	`key` text PRIMARY KEY NOT NULL
);
--> statement-breakpoint
CREATE TABLE `settings` (
	`key` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL,
	CONSTRAINT "settings_value" CHECK(typeof("settings"."value") = 'text' and json_valid("settings"."value"))
);
--> statement-breakpoint
CREATE TABLE `strangers` (
	`id` integer PRIMARY KEY NOT NULL,
	`count` integer NOT NULL,
	CONSTRAINT "strangers_one_row" CHECK("strangers"."id" = 1)
);
--> statement-breakpoint
CREATE TABLE `voids` (
	`fact` integer PRIMARY KEY NOT NULL,
	`note` integer NOT NULL,
	`author` integer NOT NULL,
	`voided` integer NOT NULL,
	FOREIGN KEY (`fact`) REFERENCES `facts`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`note`) REFERENCES `notes`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`author`) REFERENCES `members`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "voids_voided" CHECK(typeof("voids"."voided") = 'integer')
);
--> statement-breakpoint
CREATE INDEX `voids_note` ON `voids` (`note`);