package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.ChangePath;
import org.frisket.editing.DeleteElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Element;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Trial;

/** What is too thin or too small is made larger, heavier, or left out. */
public final class SizeCures {

	private static final double STEP = 0.05;

	private SizeCures() {
	}

	public static List<Cure> ofThinStroke(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>(LeastSize.cures(finding, trial));
		heavier(finding, trial).ifPresent(cures::add);
		return cures;
	}

	public static List<Cure> ofSmallPiece(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>();
		leaveOut(finding, trial).ifPresent(cures::add);
		cures.addAll(LeastSize.cures(finding, trial));
		return cures;
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
		return Optional.of(Cure.of(NLS.bind(Messages.SizeCures_heavier, Length.text(2 * outset, 2)),
				finding.element(), org.frisket.model.Outline.class,
				outline -> ChangePath.repaired(Messages.SizeCures_madeHeavier, outline, data)));
	}

	/** The contours that make a small piece of an outline go; if there are no others, so does the outline. */
	private static Optional<Cure> leaveOut(Finding finding, Trial trial) {
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
