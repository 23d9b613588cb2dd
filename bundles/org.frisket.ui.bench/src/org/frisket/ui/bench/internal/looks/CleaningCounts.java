package org.frisket.ui.bench.internal.looks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Outline;
import org.frisket.geometry.clean.Repair;
import org.frisket.prepare.Uncleaned;

/**
 * How much cleaning did.
 *
 * @param crossings  places where contours crossed each other or themselves
 * @param stretches  stretches that lay within the union and are gone
 * @param duplicates contours that lay exactly on others
 * @param closed     gaps that were closed
 */
record CleaningCounts(long crossings, long stretches, long duplicates, long closed) {

	static final CleaningCounts NONE = new CleaningCounts(0, 0, 0, 0);

	static CleaningCounts of(Uncleaned uncleaned, Outline removed) {
		return new CleaningCounts(uncleaned.count(Repair.Kind.CROSSING_RESOLVED), removed.contours().size(),
				uncleaned.count(Repair.Kind.DUPLICATE_REMOVED), uncleaned.count(Repair.Kind.CONTOUR_CLOSED));
	}

	CleaningCounts plus(CleaningCounts other) {
		return new CleaningCounts(crossings + other.crossings, stretches + other.stretches,
				duplicates + other.duplicates, closed + other.closed);
	}

	/** In words, a line each; one line that says so where there was nothing to do. */
	List<String> lines() {
		List<String> lines = new ArrayList<>();
		if (crossings > 0) {
			lines.add(crossings == 1 ? Messages.CleaningCounts_oneCrossing
					: NLS.bind(Messages.CleaningCounts_crossings, crossings));
		}
		if (stretches > 0) {
			lines.add(stretches == 1 ? Messages.CleaningCounts_oneStretch
					: NLS.bind(Messages.CleaningCounts_stretches, stretches));
		}
		if (duplicates > 0) {
			lines.add(duplicates == 1 ? Messages.CleaningCounts_oneDuplicate
					: NLS.bind(Messages.CleaningCounts_duplicates, duplicates));
		}
		if (closed > 0) {
			lines.add(closed == 1 ? Messages.CleaningCounts_oneGap : NLS.bind(Messages.CleaningCounts_gaps, closed));
		}
		return lines.isEmpty() ? List.of(Messages.CleaningCounts_nothing) : lines;
	}
}
