package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.LayApart;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.measure.Edges;
import org.frisket.geometry.measure.SharedStretches;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/** What helps where elements, or letters, come too near to each other. */
public final class ApartCures {

	/** Distances are given in steps of this, in mm. */
	private static final double STEP = 0.05;

	private ApartCures() {
	}

	/** Letters are spaced out, mats grow together, elements are moved off each other. */
	public static List<Cure> ofGap(Finding finding, Trial trial) {
		double missing = finding.limit().orElse(0)
				- LeastSize.least(trial.before(finding.element()), finding.id()) + trial.tolerance().mm();
		List<Cure> cures = new ArrayList<>();
		Element element = trial.element(finding).orElse(null);
		if (element instanceof Wording wording && !wording.isJoined()) {
			double scale = Math.sqrt(Math.abs(OwnPath.transform(wording.getTransform()).determinant()));
			double by = scale > 0 ? roundedUp(missing / scale) : 0;
			cures.add(Cure.of(NLS.bind(Messages.ApartCures_spaced, Figures.length(by * scale, 2)), finding.element(),
					Wording.class, w -> ChangeWording.tracking(w, Math.rint((w.getTracking() + by) * 1e6) / 1e6)));
		}
		if (element instanceof Mat) {
			// its pieces grow together
			cures.addAll(LeastSize.cures(finding, trial));
		}
		moved(finding, trial, missing).ifPresent(cures::add);
		return cures;
	}

	private static Optional<Cure> moved(Finding finding, Trial trial, double missing) {
		double by = roundedUp(missing);
		return trial.prepared(finding).flatMap(prepared -> nearest(prepared.region(), finding.place(), trial))
				.map(edge -> edge.minus(finding.place()).unit().times(by))
				.map(shift -> Cure.of(NLS.bind(Messages.ApartCures_moved, Figures.length(by, 2)), finding.element(),
						Element.class, element -> new MoveElements(List.of(element), shift.x(), shift.y())));
	}

	private static Optional<Point> nearest(Region region, Point place, Trial trial) {
		return region.pieces().stream().filter(piece -> piece.bounds().grown(1).contains(place))
				.map(piece -> Edges.nearest(piece, place, trial.tolerance()))
				.min(Comparator.comparingDouble(place::distance));
	}

	/** What overlaps others comes on a layer of its own. */
	public static List<Cure> ofOverlap(Finding finding) {
		return List.of(Cure.of(Messages.ApartCures_ownLayer, finding.element(), Element.class,
				element -> new LayApart(List.of(element))));
	}

	/** What runs along others in all its length is left out. */
	public static List<Cure> ofDoubleCut(Finding finding, Trial trial) {
		List<Contour> own = trial.prepared(finding).map(ApartCures::lines).orElse(List.of());
		boolean all = trial.neighbours(finding).stream()
				.anyMatch(other -> SharedStretches.of(own, lines(other), trial.tolerance(), trial.monitor())
						.filter(SharedStretches.Shared::isAll).isPresent());
		return all ? List.of(Cure.of(Messages.SizeCures_leaveOut, finding.element(), Element.class,
				element -> new DeleteElements(List.of(element)))) : List.of();
	}

	private static List<Contour> lines(PreparedElement element) {
		List<Contour> lines = new ArrayList<>(element.region().contours());
		lines.addAll(element.lines());
		return lines;
	}

	/** It is only drawn, or only cut. */
	public static List<Cure> ofDrawnCut(Finding finding, Trial trial) {
		return trial.element(finding).filter(element -> element.getOperations().size() > 1).map(both -> List.of(
				only(Messages.ApartCures_onlyDraw, finding, OperationKind.DRAW),
				only(Messages.ApartCures_onlyCut, finding, OperationKind.CUT))).orElse(List.of());
	}

	private static Cure only(String name, Finding finding, OperationKind kind) {
		return Cure.of(name, finding.element(), Element.class, element -> ChangeOperation.kind(List.of(element), kind));
	}

	private static double roundedUp(double mm) {
		return Math.rint(Math.ceil(mm / STEP - 1e-6) * STEP * 1e6) / 1e6;
	}
}
