package org.frisket.ui.print.internal.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Exporter;
import org.frisket.export.names.NamePattern;
import org.frisket.export.names.SheetNames;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.extension.Contribution;
import org.frisket.print.output.PrintAndCut;
import org.frisket.print.output.WholeSet;

/**
 * What a filled-in form comes to.
 *
 * @param sheets  that are printed and cut; null while they are worked out, or cannot be
 * @param failure why they cannot be, for people; null if nothing is known against it
 */
record Outcome(List<PrintAndCut> sheets, String failure) {

	/** Nothing is known yet. */
	static final Outcome PENDING = new Outcome(null, null);

	boolean isThere() {
		return sheets != null;
	}

	/** What keeps anything from being made, in a sentence; null if nothing does. */
	String trouble() {
		if (!isThere()) {
			return failure;
		}
		for (PrintAndCut sheet : sheets) {
			Optional<Finding> blocking = sheet.findings().stream().filter(Finding::isBlocking).findFirst();
			if (blocking.isPresent()) {
				return NLS.bind(Messages.PrintAndCutDialog_blocked, sheet.print().faces().number(),
						FindingWords.sentence(blocking.get()));
			}
		}
		return null;
	}

	/** A sheet, if anything on it is printed. @param number of it, from 1 */
	Optional<PrintAndCut> printed(int number) {
		return isThere() ? sheets.stream()
				.filter(sheet -> sheet.print().faces().number() == number && sheet.print().isPrinted()).findFirst()
				: Optional.empty();
	}

	/**
	 * The files.
	 *
	 * @param machine id, for their names; empty for none
	 * @throws IllegalArgumentException if a sheet gets no name, or two the same; the message says why
	 */
	WholeSet set(Job job, Path folder, NamePattern names, String machine, Contribution<Exporter> format) {
		// a sheet on which a job is put as it lies is none of its own
		List<Sheet> own = sheets.stream().map(sheet -> sheet.print().faces().sheet()).filter(job.getSheets()::contains).toList();
		List<Path> bases = new SheetNames(job, machine, "").of(names, own).stream().map(folder::resolve).toList(); //$NON-NLS-1$
		return new WholeSet(sheets, bases, format);
	}
}
