package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/** What is too thin or too small is made larger, heavier, or left out. */
public final class SizeCures {

	private static final double STEP = 0.05;
	private static final int TRIES = 6;
	/** Heights and percentages are given in tenths. */
	private static final double STEPS = 10;

	private SizeCures() {
	}

	public static List<Cure> ofThinStroke(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>(LeastSize.cures(finding, trial));
		heavier(finding, trial).or(() -> heavierLetters(finding, trial)).ifPresent(cures::add);
		return cures;
	}

	public static List<Cure> ofSmallPiece(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>();
		leaveOut(finding, trial).ifPresent(cures::add);
		cures.addAll(LeastSize.cures(finding, trial));
		return cures;
	}

	/** It is filled, or all is made larger. */
	public static List<Cure> ofSlit(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>(OutlineCures.filledSlits(finding, trial));
		cures.addAll(LeastSize.cures(finding, trial));
		return cures;
	}

	/** A wording for the pen is set as high as its smallest letters need it. */
	public static List<Cure> ofSmallText(Finding finding, Trial trial) {
		double times = finding.limit().orElse(0) / finding.measured().orElse(1);
		return trial.element(finding).filter(Wording.class::isInstance).map(element -> {
			double height = Math.ceil(((Wording) element).getHeight() * times * STEPS - 1e-6) / STEPS;
			return List.of(Cure.of(NLS.bind(Messages.LeastSize_height, Figures.length(height, 1)), finding.element(),
					Wording.class, wording -> ChangeWording.height(wording, height)));
		}).orElse(List.of());
	}

	/** All of it is made smaller until its largest piece goes on a sheet. */
	public static List<Cure> ofLargePiece(Finding finding, Trial trial) {
		double worst = trial.before(finding.element()).stream().filter(f -> f.id().equals(finding.id()))
				.mapToDouble(f -> f.limit().orElse(0) / f.measured().orElse(1)).min().orElse(0);
		double percent = Math.floor(100 * worst * STEPS) / STEPS;
		if (!(percent >= 1)) {
			return List.of();
		}
		Point centre = trial.prepared(finding).map(PreparedElement::bounds).orElseThrow().centre();
		return trial.element(finding).filter(element -> !(element instanceof Mat)).map(element -> List.of(
				Cure.of(NLS.bind(Messages.SizeCures_onSheet, Figures.number(percent, 1)), finding.element(), Element.class,
						large -> TransformElements.scale(List.of(large), percent / 100, percent / 100, centre.x(), centre.y()))))
				.orElse(List.of());
	}

	/** All edges of an outline are moved outwards until its thinnest stroke is as wide as it has to be. */
	private static Optional<Cure> heavier(Finding finding, Trial trial) {
		record Key(String element) {
		}
		return trial.once(new Key(finding.element()),
				() -> OwnPath.of(finding, trial).flatMap(path -> heavier(path, finding, trial)));
	}

	private static Optional<Cure> heavier(OwnPath path, Finding finding, Trial trial) {
		double thinnest = LeastSize.least(trial.before(finding.element()), finding.id());
		double outset = Math.ceil(((finding.limit().getAsDouble() - thinnest) / 2 + trial.tolerance().mm()) / STEP) * STEP;
		PreparedElement prepared = trial.prepared(finding).orElseThrow();
		Region heavier = Offset.of(prepared.region(), outset, new Corners.Mitre(4), Holes.KEEP, trial.tolerance(),
				trial.monitor());
		String data = OwnPath.data(heavier.toOutline().plus(new Outline(prepared.lines()))
				.transformed(path.transform().inverse()));
		return Optional.of(Cure.of(NLS.bind(Messages.SizeCures_heavier, Figures.length(2 * outset, 2)),
				finding.element(), org.frisket.model.Outline.class,
				outline -> ChangePath.repaired(Messages.SizeCures_madeHeavier, outline, data)));
	}

	/** The letters of a wording are made heavier until nothing is too thin, unless they would fill or run together. */
	private static Optional<Cure> heavierLetters(Finding finding, Trial trial) {
		record Key(String element) {
		}
		return trial.once(new Key(finding.element()), () -> trial.element(finding).filter(Wording.class::isInstance)
				.flatMap(element -> heavierLetters((Wording) element, finding, trial)));
	}

	private static Optional<Cure> heavierLetters(Wording wording, Finding finding, Trial trial) {
		double scale = Math.sqrt(Math.abs(OwnPath.transform(wording.getTransform()).determinant()));
		double limit = finding.limit().getAsDouble();
		double thinnest = LeastSize.least(trial.before(finding.element()), finding.id());
		Region region = trial.prepared(finding).orElseThrow().region();
		double outset = 0;
		for (int i = 0; i < TRIES && scale > 0; i++) {
			trial.monitor().check();
			outset += roundedUp(((limit - thinnest) / 2 + trial.tolerance().mm()) / scale);
			Region heavier = Offset.of(region, outset * scale, Corners.MITRE, Holes.KEEP, trial.tolerance(),
					trial.monitor());
			if (heavier.pieces().size() != region.pieces().size()
					|| heavier.contours().size() != region.contours().size()) {
				return Optional.empty();
			}
			Cure cure = heavierLetters(finding, outset, scale);
			Optional<List<Finding>> after = trial.after(cure, finding.element());
			if (after.isEmpty()) {
				return Optional.empty();
			}
			thinnest = LeastSize.least(after.get(), finding.id());
			if (thinnest == Double.POSITIVE_INFINITY) {
				return Optional.of(cure);
			}
		}
		return Optional.empty();
	}

	/** @param outset in mm of the wording's own frame */
	private static Cure heavierLetters(Finding finding, double outset, double scale) {
		return Cure.of(NLS.bind(Messages.SizeCures_heavier, Figures.length(2 * outset * scale, 2)), finding.element(),
				Wording.class, wording -> ChangeWording.embolden(wording, rounded(wording.getEmbolden() + outset)));
	}

	private static double roundedUp(double mm) {
		return rounded(Math.ceil(mm / STEP - 1e-6) * STEP);
	}

	/** Without the digits that only adding up leaves. */
	private static double rounded(double mm) {
		return Math.rint(mm * 1e6) / 1e6;
	}

	/** The contours that make a small piece of an outline go; if there are no others, so does the outline. */
	static Optional<Cure> leaveOut(Finding finding, Trial trial) {
		Optional<OwnPath> path = OwnPath.of(finding, trial);
		Optional<Piece> small = trial.prepared(finding).flatMap(prepared -> prepared.region().pieces().stream()
				.filter(piece -> piece.bounds().centre().equals(finding.place())).findFirst());
		if (path.isEmpty() || small.isEmpty()) {
			return Optional.empty();
		}
		Bounds around = small.get().bounds().grown(trial.tolerance().mm());
		List<Contour> others = path.get().contours().stream()
				.filter(contour -> !isWithin(contour.transformed(path.get().transform()).bounds(), around)).toList();
		if (others.isEmpty()) {
			return Optional.of(Cure.of(Messages.SizeCures_leaveOut, finding.element(), Element.class,
					element -> new DeleteElements(List.of(element))));
		}
		String data = OwnPath.data(new Outline(others));
		return Optional.of(Cure.of(Messages.SizeCures_leaveOut, finding.element(), org.frisket.model.Outline.class,
				outline -> ChangePath.repaired(Messages.SizeCures_leftOut, outline, data)));
	}

	private static boolean isWithin(Bounds box, Bounds around) {
		return box.minX() >= around.minX() && box.maxX() <= around.maxX() && box.minY() >= around.minY()
				&& box.maxY() <= around.maxY();
	}
}
