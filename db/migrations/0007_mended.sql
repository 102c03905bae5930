CREATE INDEX `notes_mended` ON `notes` (`author`,`id`) WHERE outcome = 'mended';--> statement-breakpoint
CREATE INDEX `outbox_note` ON `outbox` (`note`);