package org.frisket.prepare.repair;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.extension.ContributionException;

/**
 * Works out what chosen steps would put right in outlines, each by itself and in mm as it is cut. An outline where no step
 * reports anything stays as it is, to the byte: nothing is changed that is not listed.
 */
public final class RepairPlanner {

	private final List<StepChoice> steps;
	private final Tolerance tolerance;

	/**
	 * @param steps     in the order in which they are taken
	 * @param tolerance how far anything may move, in mm; contours whose ends are no further apart are closed
	 */
	public RepairPlanner(List<StepChoice> steps, Tolerance tolerance) {
		this.steps = List.copyOf(steps);
		this.tolerance = tolerance;
	}

	/**
	 * The outlines that can be repaired: of those that are selected, or of all if nothing is. What is hidden or locked is
	 * left out, for nobody could see what happens to it, or nothing may.
	 */
	public static List<Outline> outlines(Job job, Collection<? extends Element> selection) {
		return Jobs.elements(job).stream().filter(Outline.class::isInstance).map(Outline.class::cast)
				.filter(outline -> selection.isEmpty() || selection.contains(outline))
				.filter(outline -> Jobs.isShown(outline) && !Jobs.isLocked(outline)).toList();
	}

	/**
	 * @param outlines nobody changes them meanwhile
	 * @throws IllegalArgumentException if the text of an option is no value of it, or no step has such an option
	 * @throws ContributionException    if a step fails; the message names it and its bundle
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public RepairPlan plan(List<Outline> outlines, Monitor monitor) throws ContributionException {
		List<OutlineRepair> repaired = new ArrayList<>();
		List<Untouched> untouched = new ArrayList<>();
		for (int i = 0; i < outlines.size(); i++) {
			monitor.check();
			plan(outlines.get(i), part(monitor, i, outlines.size()), repaired, untouched);
			monitor.worked((i + 1.0) / outlines.size());
		}
		return new RepairPlan(repaired, untouched, tolerance);
	}

	private void plan(Outline outline, Monitor monitor, List<OutlineRepair> repaired, List<Untouched> untouched)
			throws ContributionException {
		String data = outline.getPathData();
		if (data == null || data.isBlank()) {
			return;
		}
		Transform placement = OwnPath.placement(outline);
		if (placement.determinant() == 0) {
			untouched.add(new Untouched(outline.getId(), Messages.RepairPlanner_flat));
			return;
		}
		OutlineArt art;
		try {
			art = new OutlineArt(PathData.parse(data).transformed(placement), OutlineArt.isFilled(outline));
		} catch (PathDataException e) {
			untouched.add(new Untouched(outline.getId(), NLS.bind(Messages.RepairPlanner_unreadable, e.getMessage())));
			return;
		}
		NotedCourse course = NotedCourse.of(steps, art.isFilled());
		RepairCourse.Proved proved = RepairSteps.prove(course.course(), art.artwork(), tolerance, monitor);
		if (proved.mended().mends().isEmpty()) {
			return;
		}
		String after = OwnPath.of(art.written(proved.mended().artwork()), outline);
		if (after.isEmpty()) {
			untouched.add(new Untouched(outline.getId(), Messages.RepairPlanner_nothingLeft));
		} else if (!after.equals(data)) {
			repaired.add(new OutlineRepair(outline.getId(), data, after,
					course.noted(outline.getId(), proved.mended().mends()), proved.movement()));
		}
	}

	/** For one of several outlines; steps within steps may tell of less than before, which nobody need see. */
	private static Monitor part(Monitor whole, int index, int count) {
		return new Monitor() {

			private double most;

			@Override
			public boolean isCancelled() {
				return whole.isCancelled();
			}

			@Override
			public void worked(double fraction) {
				most = Math.max(most, fraction);
				whole.worked((index + most) / count);
			}
		};
	}
}
