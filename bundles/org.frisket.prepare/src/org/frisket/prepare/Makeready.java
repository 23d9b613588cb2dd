package org.frisket.prepare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.extension.ExtensionPoint;
import org.frisket.prepare.internal.cures.BridgeCures;
import org.frisket.prepare.internal.cures.FontCures;
import org.frisket.prepare.internal.cures.MatCures;
import org.frisket.prepare.internal.cures.PenCures;
import org.frisket.prepare.internal.cures.PictureCures;
import org.frisket.typography.source.FontLibrary;

/** Runs every contributed check over a prepared job. */
public final class Makeready {

	private static final ExtensionPoint<Check> CHECKS = new ExtensionPoint<>("org.frisket.prepare.checks", Check.class);

	private Makeready() {
	}

	/** What helps against the findings of the steps, which no check has found. */
	private static final List<Cures> OF_STEPS = List.of(new BridgeCures(), new FontCures(), new MatCures(),
			new PenCures(), new PictureCures());

	/**
	 * All findings, the gravest first: what the steps noticed, then what the checks find. Hidden elements are not handed
	 * out, and so have none. A check that fails becomes a finding itself, and the others go on. Where an element has many
	 * of a kind, the last of those that are told stands for the rest.
	 *
	 * @throws CancellationException if the monitor cancels
	 */
	public static List<Finding> findings(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor) {
		List<Finding> findings = new ArrayList<>(Gathering.gathered(all(job, limits, tolerance, monitor)));
		limits.problems().forEach(problem -> findings.add(Finding.plain("limits-unreadable", Severity.CAUTION, "",
				Point.ORIGIN, problem, Messages.Makeready_limitsCure)));
		findings.sort(Comparator.comparing(Finding::severity));
		return findings;
	}

	/** The same with one stock for all layers. */
	public static List<Finding> findings(PreparedJob job, Limits limits, Tolerance tolerance, Monitor monitor) {
		return findings(job, LayerLimits.same(limits), tolerance, monitor);
	}

	/** Every single one. */
	private static List<Finding> all(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor) {
		List<Finding> findings = new ArrayList<>(job.findings());
		List<Contribution<Check>> checks = CHECKS.contributions();
		for (int i = 0; i < checks.size(); i++) {
			monitor.worked((double) i / checks.size());
			findings.addAll(run(checks.get(i), check -> job, limits, tolerance, monitor));
		}
		return shown(findings, job);
	}

	/** Every single one on an element; what stands round it is there for those checks that look at it. */
	private static List<Finding> on(String element, PreparedJob job, LayerLimits limits, Tolerance tolerance,
			Monitor monitor) {
		PreparedJob alone = job.only(element);
		PreparedJob around = job.around(element);
		List<Finding> findings = new ArrayList<>(alone.findings());
		CHECKS.contributions().forEach(contribution -> findings.addAll(run(contribution,
				check -> check.looksAround() ? around : alone, limits, tolerance, monitor)));
		findings.removeIf(finding -> !finding.element().equals(element));
		return shown(findings, alone);
	}

	private static List<Finding> shown(List<Finding> findings, PreparedJob job) {
		Set<String> hidden = job.elements().map(PreparedElement::element).filter(element -> !Jobs.isShown(element))
				.map(Element::getId).collect(Collectors.toSet());
		findings.removeIf(finding -> hidden.contains(finding.element()));
		return findings;
	}

	/**
	 * What helps against a finding, the best first: what the check that found it offers, tried out. A cure that leaves
	 * the finding as it is, or makes graver ones, is not among them, nor is one of a check that fails.
	 *
	 * @throws CancellationException if the monitor of the trial cancels
	 */
	public static List<Cure> cures(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>();
		OF_STEPS.forEach(cure -> cures.addAll(cure.cures(finding, trial)));
		for (Contribution<Check> check : CHECKS.contributions()) {
			try {
				cures.addAll(check.create().cures(finding, trial));
			} catch (CancellationException e) {
				throw e;
			} catch (ContributionException | RuntimeException | LinkageError e) {
				// told as a finding already, or the cure is missed, which shows
				continue;
			}
		}
		return cures.stream().filter(cure -> trial.heals(cure, finding)).toList();
	}

	/**
	 * Where cures of the findings of a job are tried out.
	 *
	 * @param preparer the one that prepared the job, for what it remembers
	 * @param fonts    what can be set instead of a missing font
	 */
	public static Trial trial(PreparedJob job, JobPreparer preparer, FontLibrary fonts, LayerLimits limits,
			Tolerance tolerance, Monitor monitor) {
		return new Trial(job, preparer, fonts, limits, tolerance, monitor, (tried, element) -> on(element, tried, limits, tolerance, monitor));
	}

	/** The same with one stock for all layers. */
	public static Trial trial(PreparedJob job, JobPreparer preparer, FontLibrary fonts, Limits limits,
			Tolerance tolerance, Monitor monitor) {
		return trial(job, preparer, fonts, LayerLimits.same(limits), tolerance, monitor);
	}

	private static List<Finding> run(Contribution<Check> contribution, Function<Check, PreparedJob> job,
			LayerLimits limits, Tolerance tolerance, Monitor monitor) {
		List<Finding> findings = new ArrayList<>();
		try {
			Check check = contribution.create();
			check.check(job.apply(check), limits, tolerance, monitor, findings::add);
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
		return Finding.plain("check-failed", Severity.CAUTION, "", Point.ORIGIN,
				NLS.bind(Messages.Makeready_failed, e.getMessage()), Messages.Makeready_failedCure);
	}
}
