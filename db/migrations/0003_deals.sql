ALTER TABLE `facts` ADD `by` text;--> statement-breakpoint
ALTER TABLE `facts` ADD `repeat` integer REFERENCES facts(id);--> statement-breakpoint
ALTER TABLE `pieces` ADD `owed` integer DEFAULT 0 NOT NULL;