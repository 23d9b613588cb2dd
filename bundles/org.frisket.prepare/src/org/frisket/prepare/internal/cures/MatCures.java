package org.frisket.prepare.internal.cures;

import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.RemoveMat;
import org.frisket.editing.shapes.StandMatBehind;
import org.frisket.model.Mat;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Cures;
import org.frisket.prepare.checks.Trial;

/** Against what keeps a mat from having a shape. */
public final class MatCures implements Cures {

	private static final double STEPS = 10;

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return switch (finding.id()) {
		case "mat-behind-itself" -> outOfRing(finding, trial);
		case "mat-vanished" -> nearer(finding, trial).stream().toList();
		default -> List.of();
		};
	}

	private static List<Cure> outOfRing(Finding finding, Trial trial) {
		boolean hasOthers = trial.element(finding).map(Mat.class::cast).map(StandMatBehind::outOfRing)
				.filter(edit -> !edit.behind().isEmpty()).isPresent();
		Cure remove = Cure.of(Messages.MatCures_remove, finding.element(), Mat.class, RemoveMat::new);
		return hasOthers ? List.of(Cure.of(Messages.MatCures_outOfRing, finding.element(), Mat.class,
				StandMatBehind::outOfRing), remove) : List.of(remove);
	}

	/** The furthest inward distance, in tenths, at which the mat has a shape without findings, or else any shape. */
	private static Optional<Cure> nearer(Finding finding, Trial trial) {
		double distance = trial.element(finding).map(Mat.class::cast).map(Mat::getDistance).orElse(0.0);
		return furthest(finding, trial, distance, true).or(() -> furthest(finding, trial, distance, false));
	}

	private static Optional<Cure> furthest(Finding finding, Trial trial, double distance, boolean sound) {
		long near = 0;
		long far = (long) Math.floor(distance * STEPS);
		Cure best = null;
		while (far < near - 1) {
			trial.monitor().check();
			long middle = Math.floorDiv(near + far + 1, 2);
			Cure tried = cure(finding, middle / STEPS);
			boolean fits = trial.after(tried, finding.element()).map(after -> sound
					? after.stream().allMatch(f -> f.severity() == Severity.NOTE)
					: after.stream().noneMatch(f -> f.id().equals(finding.id()))).orElse(false);
			if (fits) {
				near = middle;
				best = tried;
			} else {
				far = middle;
			}
		}
		return Optional.ofNullable(best);
	}

	private static Cure cure(Finding finding, double distance) {
		return Cure.of(NLS.bind(Messages.MatCures_distance, Figures.length(distance, 1)), finding.element(), Mat.class,
				mat -> ChangeMat.distance(List.of(mat), distance));
	}
}
