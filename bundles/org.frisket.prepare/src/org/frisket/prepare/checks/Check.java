package org.frisket.prepare.checks;

import java.util.List;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;

/**
 * One makeready check, contributed to {@code org.frisket.prepare.checks}. It has a constructor without arguments, holds
 * no state between calls and changes nothing.
 */
public interface Check extends Cures {

	/**
	 * Looks at a prepared job and reports what it finds, in the order of the elements.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor, Consumer<Finding> findings);

	/**
	 * Whether what it finds on an element hangs on the others of its layer. Where a cure is tried, they are then there too;
	 * other checks are shown the element alone.
	 */
	default boolean looksAround() {
		return false;
	}

	/** None unless a check says otherwise: what its findings say is then done by hand. */
	@Override
	default List<Cure> cures(Finding finding, Trial trial) {
		return List.of();
	}
}
