package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.PictureCures;

/**
 * Where print and cuts of a layer come together: a cut through a picture whose print ends soon beyond it, and print that
 * ends shortly before a cut. Areas in one colour are given bleed when they are printed.
 */
public final class PrintedEdgeCheck implements Check {

	private static final String BLEED = "bleed-missing";
	private static final String NEAR = "print-near-cut";
	/** Along cuts, in mm. */
	private static final double STEP = 0.5;
	private static final double FLATNESS = 0.05;
	/** Of a line that runs along the edge of the art itself. */
	private static final double SAME = 0.1;

	@Override
	public boolean looksAround() {
		return true;
	}

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		for (PreparedLayer layer : job.layers()) {
			List<PreparedElement> printed = layer.shown().stream()
					.filter(element -> element.has(OperationKind.PRINT) && !element.region().isEmpty()).toList();
			List<PreparedElement> cut = layer.shown().stream()
					.filter(element -> Worked.isCut(element) || element.has(OperationKind.PERFORATE)).toList();
			if (printed.isEmpty() || cut.isEmpty()) {
				continue;
			}
			double safe = limits.of(layer.layer()).get(Limit.SAFE_AREA);
			double bleed = limits.of(layer.layer()).get(Limit.BLEED);
			for (PreparedElement element : printed) {
				monitor.check();
				new Meeting(element, safe, bleed, tolerance, monitor).with(cut).told(findings);
			}
		}
	}

	/** Of the art of an element with cuts. */
	private static final class Meeting {

		private final PreparedElement element;
		private final double safe;
		private final double bleed;
		private final Monitor monitor;
		private final NearestChord edge;
		private final List<PieceLocator> pieces;
		private Point through;
		private Point near;
		private double beyond = Double.POSITIVE_INFINITY;
		private double before = Double.POSITIVE_INFINITY;

		Meeting(PreparedElement element, double safe, double bleed, Tolerance tolerance, Monitor monitor) {
			this.element = element;
			this.safe = safe;
			this.bleed = bleed;
			this.monitor = monitor;
			Region art = art(element, tolerance, monitor);
			edge = new NearestChord(art.contours(), FLATNESS, Math.max(1, Math.max(safe, bleed)));
			pieces = art.pieces().stream().map(piece -> new PieceLocator(piece, tolerance)).toList();
		}

		/** Round the art of a picture may be a border of bare paper. */
		private static Region art(PreparedElement element, Tolerance tolerance, Monitor monitor) {
			if (!(element.element() instanceof Picture picture) || picture.getEdge() == null
					|| !(picture.getEdge().getBorder() > 0)) {
				return element.region();
			}
			Transform place = element.uncleaned().placement();
			double border = picture.getEdge().getBorder() * Math.sqrt(Math.abs(place.determinant()));
			return Offset.of(element.region(), -border, Corners.ROUND, Holes.KEEP, tolerance, monitor);
		}

		Meeting with(List<PreparedElement> cut) {
			for (PreparedElement other : cut) {
				if (other == element && !(element.element() instanceof Picture)) {
					continue;
				}
				for (Contour contour : Worked.lines(other)) {
					if (contour.bounds().grown(Math.max(safe, bleed)).intersects(element.bounds())) {
						monitor.check();
						List<Point> corners = NearestChord.corners(contour, FLATNESS);
						for (int i = 1; i < corners.size(); i++) {
							along(corners.get(i - 1), corners.get(i));
						}
					}
				}
			}
			return this;
		}

		private void along(Point from, Point to) {
			int steps = Math.max(1, (int) Math.ceil(from.distance(to) / STEP));
			for (int i = 0; i < steps; i++) {
				Point place = from.towards(to, (double) i / steps);
				double distance = edge.distance(place);
				boolean inside = pieces.stream().anyMatch(piece -> piece.holds(place));
				meet(place, distance, inside || distance <= SAME);
			}
		}

		private void meet(Point place, double distance, boolean within) {
			if (within && distance < beyond) {
				beyond = distance;
				through = place;
			} else if (!within && distance < before) {
				before = distance;
				near = place;
			}
		}

		void told(Consumer<Finding> findings) {
			String id = element.element().getId();
			if (through != null) {
				boolean bled = !(element.element() instanceof Picture picture) || picture.getBleed() > 0;
				if (!bled && beyond < bleed) {
					findings.accept(Finding.measured(BLEED, Severity.NOTE, id, through, beyond, bleed,
							NLS.bind(Messages.PrintedEdgeCheck_bleed, Figures.length(beyond, 1)),
							Messages.PrintedEdgeCheck_bleedCure));
				}
			} else if (near != null && before < safe - SAME) {
				findings.accept(Finding.measured(NEAR, Severity.CAUTION, id, near, before, safe,
						NLS.bind(Messages.PrintedEdgeCheck_near, Figures.length(before, 1)), Messages.PrintedEdgeCheck_nearCure));
			}
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return switch (finding.id()) {
		case BLEED -> PictureCures.ofMissingBleed(finding);
		case NEAR -> PictureCures.ofUnsafe(finding, trial);
		default -> List.of();
		};
	}
}
