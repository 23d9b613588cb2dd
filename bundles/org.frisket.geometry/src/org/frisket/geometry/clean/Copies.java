package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.internal.CanonicalOrder;

/**
 * Clusters that are moved copies of each other, as equal letters of a text are. What becomes of one becomes of all, if
 * its contours meet nowhere.
 */
final class Copies {

	private final FillRule rule;
	private final Tolerance tolerance;
	private final Memory memory;
	private final SimpleOverlay overlay;
	private final Map<List<Contour>, Optional<Overlay.Result>> known = new HashMap<>();
	private final Set<Contour> finite = new HashSet<>();

	private record Key(List<Contour> models, FillRule rule, Tolerance tolerance) {
	}

	/** @param memory of what became of contours that lie together */
	Copies(FillRule rule, Tolerance tolerance, Memory memory) {
		this.rule = rule;
		this.tolerance = tolerance;
		this.memory = memory;
		overlay = new SimpleOverlay(rule.inside(), tolerance.mm());
	}

	/** Nothing if the contours were not moved together, or meet, or hold a segment that is too short or hooked. */
	Optional<Overlay.Result> of(List<Contour> cluster, int[] windings, Monitor monitor) {
		Point offset = cluster.get(0).offset();
		for (Contour contour : cluster) {
			if (contour.model() == contour || !contour.offset().equals(offset)) {
				return Optional.empty();
			}
		}
		List<Contour> models = new ArrayList<>(cluster.size());
		for (Contour contour : cluster) {
			models.add(contour.model());
		}
		return known.computeIfAbsent(models,
				m -> memory.get(new Key(m, rule, tolerance), () -> ofModels(m, windings, monitor))).map(r -> moved(r, offset));
	}

	/**
	 * Contours that meet, as the letters of a joined word do. They are worked on where the first one's model stands, each
	 * as it stands to that one, so that the word is known again elsewhere.
	 *
	 * @param step what becomes of them
	 * @return nothing if the order of the pieces hangs on their place
	 */
	Optional<Overlay.Result> joined(List<Contour> cluster, Function<List<Contour>, Overlay.Result> step) {
		record Joined(List<Contour> models, List<Point> offsets, FillRule rule, Tolerance tolerance) {
		}
		Point place = cluster.get(0).offset();
		List<Contour> models = new ArrayList<>(cluster.size());
		List<Point> offsets = new ArrayList<>(cluster.size());
		for (Contour contour : cluster) {
			models.add(contour.model());
			offsets.add(contour.offsetFrom(place));
		}
		Optional<Overlay.Result> known = memory.get(new Joined(models, offsets, rule, tolerance), () -> {
			List<Contour> placed = new ArrayList<>(models.size());
			for (int i = 0; i < models.size(); i++) {
				placed.add(models.get(i).transformed(Transform.translation(offsets.get(i).x(), offsets.get(i).y())));
			}
			return Optional.of(step.apply(placed)).filter(r -> CanonicalOrder.outlastsMoves(r.pieces()));
		});
		return known.map(result -> moved(result, place));
	}

	private Optional<Overlay.Result> ofModels(List<Contour> models, int[] windings, Monitor monitor) {
		return overlay.of(models, windings, monitor).filter(r -> CanonicalOrder.outlastsMoves(r.pieces()));
	}

	private static Overlay.Result moved(Overlay.Result result, Point by) {
		Transform move = Transform.translation(by.x(), by.y());
		List<Piece> pieces = new ArrayList<>(result.pieces().size());
		for (Piece piece : result.pieces()) {
			List<Contour> holes = new ArrayList<>(piece.holes().size());
			for (Contour hole : piece.holes()) {
				holes.add(hole.transformed(move));
			}
			pieces.add(new Piece(piece.outer().transformed(move), holes));
		}
		List<Repair> repairs = new ArrayList<>(result.repairs().size());
		for (Repair repair : result.repairs()) {
			repairs.add(new Repair(repair.kind(), repair.place().plus(by), repair.amount()));
		}
		return new Overlay.Result(pieces, repairs);
	}

	/** Whether it is known of the contour's model that all its coordinates are finite, and its own place is. */
	boolean isFinite(Contour contour) {
		return finite.contains(contour.model()) && Double.isFinite(contour.offset().x() + contour.offset().y());
	}

	void noteFinite(Contour contour) {
		finite.add(contour.model());
	}
}
