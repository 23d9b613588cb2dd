package org.frisket.prepare.tests;

import java.util.List;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;

/** A check from another bundle that fails. */
public final class ThrowingCheck implements Check {

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		throw new IllegalStateException("the wheels came off");
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		throw new IllegalStateException("and the doors");
	}
}
