package org.frisket.ui.orders.internal.backup;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.work.backup.BookContents;

/** What is said before a backup is brought back. */
final class RestoreWords {

	private static final DateTimeFormatter WHEN = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM,
			FormatStyle.SHORT);
	private static final int TOLD = 5;

	private RestoreWords() {
	}

	/**
	 * @param kept   where all that is here is kept first
	 * @param shared whether several desks use it
	 * @param open   names of the jobs of the book that lie on benches
	 * @param dirty  those of them that have changes which are not saved
	 */
	static String of(Path file, BookContents then, BookContents now, Path kept, boolean shared, List<String> open,
			List<String> dirty) {
		List<String> lines = new ArrayList<>();
		lines.add(contents(Messages.RestoreWords_then, Messages.RestoreWords_thenWhen, file.getFileName(), then));
		if (now.fresh()) {
			lines.add(Messages.RestoreWords_fresh);
		} else {
			lines.add(contents(Messages.RestoreWords_now, Messages.RestoreWords_nowWhen, "", now)); //$NON-NLS-1$
			lines.add(NLS.bind(Messages.RestoreWords_kept, kept));
		}
		if (shared) {
			lines.add(Messages.RestoreWords_shared);
		}
		if (!dirty.isEmpty()) {
			lines.add(NLS.bind(Messages.RestoreWords_dirty, names(dirty)));
		} else if (!open.isEmpty()) {
			lines.add(NLS.bind(Messages.RestoreWords_open, names(open)));
		}
		return String.join("\n\n", lines); //$NON-NLS-1$
	}

	private static String contents(String plain, String dated, Object name, BookContents of) {
		return of.changed().isPresent() ? NLS.bind(dated, new Object[] { name, of.jobs(), when(of.changed().get()) })
				: NLS.bind(plain, name, of.jobs());
	}

	private static String when(Instant at) {
		return WHEN.format(at.atZone(ZoneId.systemDefault()));
	}

	private static String names(List<String> all) {
		String some = String.join("; ", all.subList(0, Math.min(TOLD, all.size()))); //$NON-NLS-1$
		return all.size() <= TOLD ? some : NLS.bind(Messages.RestoreWords_more, some, all.size() - TOLD);
	}
}
