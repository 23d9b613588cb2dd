package org.frisket.ui.bench.internal.export;

import java.util.List;
import java.util.Locale;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.prepare.extension.Contribution;

/**
 * The formats that can be chosen.
 *
 * @param all of them, in the order in which they are listed
 */
public record Formats(List<Contribution<Exporter>> all) {

	/** What a job is most often exported for. */
	private static final String USUAL_ENDING = "svg"; //$NON-NLS-1$

	/**
	 * Where the one is that is chosen at first: the last one, or else the usual one.
	 *
	 * @param last       id of the one that was written last; null for none
	 * @param forMachine whether it is to be one for machines, if there is any
	 */
	public int first(String last, boolean forMachine) {
		int found = -1;
		for (int i = 0; i < all.size(); i++) {
			Contribution<Exporter> each = all.get(i);
			if (forMachine && !Exporters.isForMachine(each)) {
				continue;
			}
			if (each.id().equals(last)) {
				return i;
			}
			if (found < 0 && forMachine || !forMachine && Exporters.ending(each).equals(USUAL_ENDING)) {
				found = i;
			}
		}
		return found >= 0 || !forMachine ? Math.max(0, found) : first(last, false);
	}

	/** Where the format of this id is; -1 if it is not there. */
	int indexOf(String id) {
		return all.stream().map(Contribution::id).toList().indexOf(id);
	}

	/** A path with another ending in place of that of any format, or else after what there is. @param dotEnding with its dot */
	String withEnding(String path, String dotEnding) {
		for (Contribution<Exporter> each : all) {
			String ending = "." + Exporters.ending(each); //$NON-NLS-1$
			if (path.toLowerCase(Locale.ROOT).endsWith(ending)) {
				return path.substring(0, path.length() - ending.length()) + dotEnding;
			}
		}
		return path + dotEnding;
	}
}
