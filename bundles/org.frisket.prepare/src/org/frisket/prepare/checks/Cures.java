package org.frisket.prepare.checks;

import java.util.List;

import org.frisket.prepare.Finding;

/** Knows what helps against findings. */
public interface Cures {

	/**
	 * What helps against a finding, the best first; empty where nothing does, or where the finding is another's. It need
	 * not be certain that a cure works: it is tried before it is shown.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor of the trial cancels
	 */
	List<Cure> cures(Finding finding, Trial trial);
}
