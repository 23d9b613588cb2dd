package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.CurveFitter;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * Gives curves back to contours that came as many short strokes: as few cubics as the tolerance allows, corners staying
 * corners. A contour is changed only if at least half of its segments go by it; what somebody has drawn with care is left
 * alone, and what has been fitted once is not fitted again.
 */
public final class SimplerCurves implements RepairStep {

	private static final String ON = "on";
	private static final Option SIMPLIFY = Option.choice("simplify", Words.of("SimplerCurves_simplify"), ON, "off");

	/** Parts of the tolerance: for the fit, for flattening before it, and for putting areas in order after it. */
	private static final double FIT = 0.6;
	private static final double FLATTENING = 0.15;
	private static final double ORDER = 0.25;
	private static final double GAIN = 2;
	/** Cosine of a turn that is a corner in any neighbourhood, and what a long segment is, in tolerances. */
	private static final double SHARP = 0.7;
	private static final double LONG = 20;

	@Override
	public List<Option> options() {
		return List.of(SIMPLIFY);
	}

	@Override
	public Moves moves(OptionValues options) {
		return options.text(SIMPLIFY).equals(ON) ? Moves.ALL : Moves.NOTHING;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		if (!options.text(SIMPLIFY).equals(ON)) {
			return new Mended(artwork, List.of());
		}
		List<Mend> mends = new ArrayList<>();
		List<Contour> lines = simplified(artwork.lines(), tolerance, monitor, mends);
		List<Area> areas = artwork.areas();
		int before = mends.size();
		areas = areas.stream().map(area -> new Area(
				new Outline(Apart.kept(area.outline().contours(),
						simplified(area.outline().contours(), tolerance, monitor, mends), FLATTENING * tolerance.mm(), mends)),
				area.rule())).toList();
		if (mends.size() == before) {
			return new Mended(new Artwork(artwork.areas(), lines), mends);
		}
		Region region = UnitedAreas.region(areas, tolerance.share(ORDER), monitor, new ArrayList<>());
		return new Mended(new Artwork(List.of(Area.of(region)), lines), mends);
	}

	private static List<Contour> simplified(List<Contour> contours, Tolerance tolerance, Monitor monitor,
			List<Mend> mends) {
		List<Contour> simplified = new ArrayList<>();
		for (Contour contour : contours) {
			monitor.check();
			Contour simpler = simpler(contour, tolerance);
			simplified.add(simpler);
			if (simpler != contour) {
				mends.add(new Mend("curve-simplified", contour.start(),
						contour.segments().size() - simpler.segments().size(), ""));
			}
		}
		return simplified;
	}

	/** The contour itself if not enough is gained. */
	private static Contour simpler(Contour contour, Tolerance tolerance) {
		if (GAIN * sharpCorners(contour, tolerance) > contour.segments().size()) {
			// they all stay, so that not enough can go
			return contour;
		}
		boolean straight = contour.segments().stream().allMatch(Line.class::isInstance);
		double sampling = straight ? tolerance.mm() * FIT / 2 : tolerance.mm() * FLATTENING;
		List<Point> points = contour.flattened(sampling);
		if (contour.segments().size() < GAIN || points.size() <= GAIN) {
			return contour;
		}
		CurveFitter fitter = new CurveFitter(tolerance.share(FIT), sampling, CurveFitter.DEFAULT_CORNER_ANGLE);
		Contour fitted = contour.isClosed() ? fitter.fitRing(points) : Contour.open(fitter.fitRun(points));
		boolean gained = fitted.segments().size() * GAIN <= contour.segments().size()
				&& fitted.segments().stream().allMatch(segment -> segment.length() > tolerance.mm())
				&& (!contour.isClosed() || fitted.signedArea() * contour.signedArea() > 0);
		return gained ? fitted : contour;
	}

	/** Between segments long enough, so that no rounding makes them. */
	private static int sharpCorners(Contour contour, Tolerance tolerance) {
		int corners = 0;
		List<Segment> segments = contour.segments();
		for (int i = 0; i < segments.size(); i++) {
			Segment one = segments.get(i);
			Segment next = segments.get((i + 1) % segments.size());
			boolean meet = contour.isClosed() || i + 1 < segments.size();
			if (meet && isLong(one, tolerance) && isLong(next, tolerance)
					&& one.endTangent().dot(next.startTangent()) < SHARP) {
				corners++;
			}
		}
		return corners;
	}

	private static boolean isLong(Segment segment, Tolerance tolerance) {
		return segment.start().distance(segment.end()) > LONG * tolerance.mm();
	}
}
