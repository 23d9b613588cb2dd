package org.frisket.prepare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.extension.ExtensionPoint;

/** Runs every contributed check over a prepared job. */
public final class Makeready {

	private static final ExtensionPoint<Check> CHECKS = new ExtensionPoint<>("org.frisket.prepare.checks", Check.class);

	private Makeready() {
	}

	/**
	 * All findings, the gravest first: what the steps noticed, then what the checks find. A check that fails becomes a
	 * finding itself, and the others go on.
	 *
	 * @throws CancellationException if the monitor cancels
	 */
	public static List<Finding> findings(PreparedJob job, Limits limits, Tolerance tolerance, Monitor monitor) {
		List<Finding> findings = new ArrayList<>(job.findings());
		List<Contribution<Check>> checks = CHECKS.contributions();
		for (int i = 0; i < checks.size(); i++) {
			monitor.worked((double) i / checks.size());
			findings.addAll(run(checks.get(i), job, limits, tolerance, monitor));
		}
		findings.sort(Comparator.comparing(Finding::severity));
		return findings;
	}

	private static List<Finding> run(Contribution<Check> contribution, PreparedJob job, Limits limits,
			Tolerance tolerance, Monitor monitor) {
		List<Finding> findings = new ArrayList<>();
		try {
			contribution.create().check(job, limits, tolerance, monitor, findings::add);
		} catch (CancellationException e) {
			throw e;
		} catch (ContributionException e) {
			return List.of(failure(e));
		} catch (RuntimeException | LinkageError e) {
			return List.of(failure(contribution.failed(e)));
		}
		return findings;
	}

	private static Finding failure(ContributionException e) {
		return Finding.plain("check-failed", Severity.CAUTION, "", Point.ORIGIN, "A check could not be made: " + e.getMessage() + ".",
				"Tell the maker of the bundle; the other checks were made.");
	}
}
