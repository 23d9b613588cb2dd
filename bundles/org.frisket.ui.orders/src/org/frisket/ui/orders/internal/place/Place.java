package org.frisket.ui.orders.internal.place;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.frisket.orders.work.StudioAreas;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.archive.StudioArchive;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;

/** Where a studio's order book is, and how it goes elsewhere. All of it may wait, so it is none for the UI thread. */
final class Place {

	private static final String TABLES = "SELECT COUNT(*) FROM information_schema.tables " //$NON-NLS-1$
			+ "WHERE LOWER(table_name) = 'orders_job' AND table_schema = CURRENT_SCHEMA"; //$NON-NLS-1$

	private Place() {
	}

	/**
	 * Has a look at a database without using it.
	 *
	 * @param password empty for the one that is kept
	 * @return what is there, in words
	 * @throws IOException with a message for people, if it cannot be used
	 */
	static String look(String address, Optional<String> password) throws IOException {
		try {
			Optional<Long> jobs = Databases.<Optional<Long>, SQLException>look(address, password, connection -> {
				boolean made = Sql.first(connection, TABLES, row -> row.getLong(1)).orElse(0L) > 0;
				return made ? Sql.first(connection, "SELECT COUNT(*) FROM orders_job", row -> row.getLong(1)) //$NON-NLS-1$
						: Optional.empty();
			});
			return jobs.isPresent() ? NLS.bind(Messages.Place_works, jobs.get()) : Messages.Place_worksEmpty;
		} catch (SQLException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	/**
	 * Has all desks of a studio use another database from now on. The one before stays as it is, and if anything goes
	 * wrong it is the one that is used.
	 *
	 * @param address empty for the one in the studio's folder
	 * @param copy    whether all that is kept now goes along; there must be nothing in the other then
	 * @throws IOException                with a message for people
	 * @throws OperationCanceledException if it was called off in time
	 */
	static void change(StudioFolder studio, Optional<String> address, boolean copy, IProgressMonitor monitor)
			throws IOException {
		Optional<String> before = Databases.address(studio);
		if (before.equals(address)) {
			return;
		}
		SubMonitor progress = SubMonitor.convert(monitor, Messages.Place_changing, 3);
		Path kept = copy ? Files.createTempFile("frisket-move", ".zip") : null; //$NON-NLS-1$ //$NON-NLS-2$
		try {
			StudioArchive archive = new StudioArchive(studio, StudioAreas.ALL);
			if (copy) {
				archive.write(kept);
			}
			progress.split(1);
			Databases.prefer(studio, address);
			boolean done = false;
			try {
				Store.open(studio, StudioAreas.ALL.toArray(Area[]::new)).close();
				progress.split(1);
				if (copy) {
					archive.restore(kept, false);
				}
				done = true;
			} finally {
				if (!done) {
					Databases.prefer(studio, before);
				}
			}
		} finally {
			if (copy) {
				Files.deleteIfExists(kept);
			}
		}
	}
}
