-- History is append-only: the database itself refuses to change or delete it.
-- A later migration that rebuilds one of these tables drops its triggers and must create them again.
CREATE TRIGGER `facts_kept` BEFORE DELETE ON `facts` BEGIN SELECT RAISE(ABORT, 'facts are never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER `facts_fixed` BEFORE UPDATE ON `facts` BEGIN SELECT RAISE(ABORT, 'facts are never changed'); END;
--> statement-breakpoint
CREATE TRIGGER `voids_kept` BEFORE DELETE ON `voids` BEGIN SELECT RAISE(ABORT, 'voids are never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER `voids_fixed` BEFORE UPDATE ON `voids` BEGIN SELECT RAISE(ABORT, 'voids are never changed'); END;
--> statement-breakpoint
CREATE TRIGGER `fact_pieces_kept` BEFORE DELETE ON `fact_pieces` BEGIN SELECT RAISE(ABORT, 'fact pieces are never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER `fact_pieces_fixed` BEFORE UPDATE ON `fact_pieces` BEGIN SELECT RAISE(ABORT, 'fact pieces are never changed'); END;
--> statement-breakpoint
CREATE TRIGGER `notes_kept` BEFORE DELETE ON `notes` BEGIN SELECT RAISE(ABORT, 'notes are never deleted'); END;
