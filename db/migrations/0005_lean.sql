DROP INDEX `fact_pieces_piece`;--> statement-breakpoint
DROP INDEX `notes_author`;--> statement-breakpoint
CREATE INDEX `notes_handled` ON `notes` (`handled`);--> statement-breakpoint
DROP INDEX `outbox_key_unique`;--> statement-breakpoint
DROP INDEX `outbox_note`;--> statement-breakpoint
DROP INDEX `outbox_message`;--> statement-breakpoint
CREATE UNIQUE INDEX `outbox_key` ON `outbox` (`key`) WHERE key is not null;--> statement-breakpoint
CREATE INDEX `outbox_message` ON `outbox` (`chat`,`message`) WHERE message is not null;--> statement-breakpoint
DROP INDEX `voids_note`;