package org.frisket.prepare.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.extension.ExtensionPoint;

/** The steps of repair at hand, built in or brought by a studio's own bundle. */
public final class RepairSteps {

	private static final ExtensionPoint<RepairStep> POINT = new ExtensionPoint<>("org.frisket.geometry.repairSteps",
			RepairStep.class);

	/** As the schema says. */
	private static final int USUAL_ORDER = 550;

	private RepairSteps() {
	}

	/** All of them, in the recommended order; no step is loaded for this. */
	public static List<Contribution<RepairStep>> all() {
		return POINT.contributions().stream().sorted(Comparator.comparingInt(RepairSteps::order)).toList();
	}

	private static int order(Contribution<RepairStep> step) {
		String order = step.attribute("order").orElse("");
		return order.matches("-?\\d{1,6}") ? Integer.parseInt(order) : USUAL_ORDER;
	}

	/** What a step does, in a few words. */
	public static String name(Contribution<RepairStep> step) {
		return step.attribute("name").orElse(step.id());
	}

	/** @throws ContributionException if the step fails to tell */
	public static List<Option> options(Contribution<RepairStep> step) throws ContributionException {
		return options(step, step.create());
	}

	private static List<Option> options(Contribution<RepairStep> contribution, RepairStep step)
			throws ContributionException {
		try {
			return step.options();
		} catch (RuntimeException | LinkageError e) {
			throw contribution.failed(e);
		}
	}

	/**
	 * All steps in the recommended order.
	 *
	 * @param options texts by option name, for whichever steps have such an option; defaults for what is missing
	 * @throws IllegalArgumentException if a text is no value of its option, or no step has such an option
	 * @throws ContributionException    if a step fails to be made
	 */
	public static RepairCourse course(Map<String, String> options) throws ContributionException {
		List<RepairCourse.Stage> stages = new ArrayList<>();
		TreeSet<String> known = new TreeSet<>();
		for (Contribution<RepairStep> contribution : all()) {
			RepairStep step = contribution.create();
			List<Option> own = options(contribution, step);
			Map<String, String> given = new LinkedHashMap<>(options);
			given.keySet().retainAll(own.stream().map(Option::name).toList());
			own.forEach(option -> known.add(option.name()));
			stages.add(new RepairCourse.Stage(new Fenced(contribution, step), OptionValues.of(own, given)));
		}
		for (String name : options.keySet()) {
			if (!known.contains(name)) {
				throw new IllegalArgumentException(
						"there is no option “" + name + "” here; there are " + String.join(", ", known));
			}
		}
		return new RepairCourse(stages);
	}

	/**
	 * One step with its options, as a course takes it.
	 *
	 * @param options texts by option name; defaults for what is missing
	 * @throws IllegalArgumentException if a text is no value of its option, or the step has no such option
	 * @throws ContributionException    if the step fails to be made
	 */
	public static RepairCourse.Stage stage(Contribution<RepairStep> contribution, Map<String, String> options)
			throws ContributionException {
		RepairStep step = contribution.create();
		return new RepairCourse.Stage(new Fenced(contribution, step),
				OptionValues.of(options(contribution, step), options));
	}

	/**
	 * A course at work.
	 *
	 * @throws ContributionException if a step fails; the message names it and its bundle
	 * @throws CancellationException if the monitor cancels
	 */
	public static Mended run(RepairCourse course, Artwork artwork, Tolerance tolerance, Monitor monitor)
			throws ContributionException {
		try {
			return course.run(artwork, tolerance, monitor);
		} catch (Failure e) {
			throw e.reason;
		}
	}

	/** As {@link #run}, and measures how far anything was moved. */
	public static RepairCourse.Proved prove(RepairCourse course, Artwork artwork, Tolerance tolerance, Monitor monitor)
			throws ContributionException {
		try {
			return course.prove(artwork, tolerance, monitor);
		} catch (Failure e) {
			throw e.reason;
		}
	}

	/** Carries the failure of a step out of a course. */
	private static final class Failure extends RuntimeException {

		private static final long serialVersionUID = 1L;

		private final transient ContributionException reason;

		Failure(ContributionException reason) {
			super(reason);
			this.reason = reason;
		}
	}

	private record Fenced(Contribution<RepairStep> contribution, RepairStep step) implements RepairStep {

		@Override
		public List<Option> options() {
			return step.options();
		}

		@Override
		public Moves moves(OptionValues options) {
			try {
				return step.moves(options);
			} catch (RuntimeException | LinkageError e) {
				throw new Failure(contribution.failed(e));
			}
		}

		@Override
		public boolean settles() {
			try {
				return step.settles();
			} catch (RuntimeException | LinkageError e) {
				throw new Failure(contribution.failed(e));
			}
		}

		@Override
		public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
			try {
				return step.mend(artwork, options, tolerance, monitor);
			} catch (CancellationException e) {
				throw e;
			} catch (RuntimeException | LinkageError e) {
				throw new Failure(contribution.failed(e));
			}
		}
	}
}
