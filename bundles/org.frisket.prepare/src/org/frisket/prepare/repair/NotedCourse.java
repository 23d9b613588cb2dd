package org.frisket.prepare.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.prepare.extension.ContributionException;

/** A course that remembers which of its steps did what. It is run once. */
final class NotedCourse {

	/** The option that says whether closed lines become areas; and its value for those that do not. */
	private static final String CLOSED = "closed";
	private static final String STAY_LINES = "lines";

	private final List<RepairCourse.Stage> stages = new ArrayList<>();
	/** The step of each mend, in the order in which they were made. */
	private final List<String> makers = new ArrayList<>();

	private NotedCourse() {
	}

	/** @param filled whether closed lines may become areas */
	static NotedCourse of(List<StepChoice> steps, boolean filled) throws ContributionException {
		NotedCourse course = new NotedCourse();
		for (StepChoice choice : steps) {
			RepairCourse.Stage stage = RepairSteps.stage(choice.step(), options(choice, filled));
			course.stages.add(new RepairCourse.Stage(
					new Noting(RepairSteps.name(choice.step()), stage.step(), course.makers), stage.options()));
		}
		return course;
	}

	private static Map<String, String> options(StepChoice choice, boolean filled) throws ContributionException {
		if (filled || RepairSteps.options(choice.step()).stream().noneMatch(
				option -> option.name().equals(CLOSED) && option.choices().contains(STAY_LINES))) {
			return choice.options();
		}
		Map<String, String> staying = new LinkedHashMap<>(choice.options());
		staying.put(CLOSED, STAY_LINES);
		return staying;
	}

	RepairCourse course() {
		return new RepairCourse(stages);
	}

	/**
	 * What came out of the run, with the steps that did it. A last round may have been given up, so that more was noted
	 * than came out; what came out is always the first of it.
	 */
	List<PlannedRepair> noted(String element, List<Mend> mends) {
		List<PlannedRepair> repairs = new ArrayList<>();
		for (int i = 0; i < mends.size(); i++) {
			repairs.add(new PlannedRepair(element, makers.get(i), mends.get(i)));
		}
		return repairs;
	}

	private record Noting(String name, RepairStep step, List<String> makers) implements RepairStep {

		@Override
		public List<Option> options() {
			return step.options();
		}

		@Override
		public Moves moves(OptionValues options) {
			return step.moves(options);
		}

		@Override
		public boolean settles() {
			return step.settles();
		}

		@Override
		public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
			Mended mended = step.mend(artwork, options, tolerance, monitor);
			mended.mends().forEach(mend -> makers.add(name));
			return mended;
		}

		/** A course remembers steps in sets: each stands for itself alone. */
		@Override
		public boolean equals(Object other) {
			return this == other;
		}

		@Override
		public int hashCode() {
			return System.identityHashCode(this);
		}
	}
}
