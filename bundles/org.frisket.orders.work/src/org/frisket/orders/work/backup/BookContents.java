package org.frisket.orders.work.backup;

import java.time.Instant;
import java.util.Optional;

import org.frisket.studio.archive.ArchiveContents;

/**
 * How much of an order book there is, here or in a backup.
 *
 * @param jobs    how many
 * @param changed when one of them was changed last
 * @param fresh   whether there is nothing at all: no job, and no customer, stock or setting either
 */
public record BookContents(long jobs, Optional<Instant> changed, boolean fresh) {

	private static final String JOBS = "orders_job";

	static BookContents of(ArchiveContents contents) {
		return new BookContents(contents.rows(JOBS), contents.changed(JOBS), contents.isNew());
	}
}
