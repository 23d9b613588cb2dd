package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.model.MarkKind;
import org.frisket.print.marks.LayoutSearch.Layout;
import org.frisket.print.picture.Grey;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;

/**
 * Finds the marks of a plan in a scan or a photograph of the sheet, whichever way it lies: turned, upside down, on its face,
 * seen from aslant; under uneven light, blurred, with noise. Beside the picture it needs a reduced copy of it, at most one
 * byte a pixel, and little else: 50 million pixels with 3000 other spots were searched in less than 110 MB besides their own
 * 50 MB.
 */
public final class MarkFinder {

	/** The thinnest strokes stay so many coarse pixels wide. */
	private static final double STROKE_LEFT = 2.5;
	private static final int MOST_REDUCED = 8;
	/** The guess of the scale may be off by so much, as a sheet rarely fills the picture. */
	private static final double SMALLEST = 0.45;
	private static final double LARGEST = 1.6;
	/** Of the fullness that the design has: blur and threshold change it. */
	private static final double FORM_DIFFERS = 1.45;
	private static final int MOST_CANDIDATES = 60;
	private static final int MOST_LAYOUTS = 80;
	/** So much of an outline must be an edge. */
	private static final double EDGE = 0.72;
	private static final int REFINEMENTS = 4;
	private static final double DEVIATION = 0.01;
	private static final double MM_PER_INCH = 25.4;

	private final MarkPlan plan;
	private final Grey picture;
	private final double scale;
	private final Monitor monitor;
	private final List<Spot> shapes = new ArrayList<>();
	private final List<EdgeFit> edges = new ArrayList<>();

	private MarkFinder(MarkPlan plan, Grey picture, double scale, Monitor monitor) {
		this.plan = plan;
		this.picture = picture;
		this.scale = scale;
		this.monitor = monitor;
		for (Mark mark : plan.marks()) {
			shapes.add(Spot.of(mark.region().pieces().get(0).outer().flattened(DEVIATION)));
			edges.add(new EdgeFit(picture, mark, scale));
		}
	}

	/** The scale is guessed from the sizes of picture and sheet, which is right if the sheet fills the picture. */
	public static FoundMarks find(MarkPlan plan, Grey picture, Monitor monitor) {
		double scale = Math.sqrt((double) picture.width() * picture.height() / (plan.width() * plan.height()));
		return new MarkFinder(plan, picture, scale, monitor).find();
	}

	/** @param dpi of the picture on the sheet, roughly: between half and one and a half times the true one */
	public static FoundMarks find(MarkPlan plan, Grey picture, double dpi, Monitor monitor) {
		return new MarkFinder(plan, picture, dpi / MM_PER_INCH, monitor).find();
	}

	/** A layout with its marks found for sure. */
	private record Trial(Projection map, List<Optional<Point>> places, int count, double share, Layout layout) {
	}

	private FoundMarks find() {
		List<List<Spot>> candidates = candidates(spots());
		List<Layout> layouts = new LayoutSearch(shapes, candidates, scale * SMALLEST, scale * LARGEST).find(monitor);
		Trial best = null;
		for (Layout layout : layouts.subList(0, Math.min(MOST_LAYOUTS, layouts.size()))) {
			monitor.check();
			if (best != null && layout.found() < Math.min(best.count(), MarkPlan.LEAST_MARKS)) {
				break;
			}
			Trial trial = trial(layout);
			if (best == null || isBetter(trial, best)) {
				best = trial;
			}
		}
		return best == null ? FindReport.none(plan) : FindReport.of(plan, picture, best.map(), best.places());
	}

	/** Layouts come with the least tilt first, and on their backs: another must be clearly better. */
	private static boolean isBetter(Trial trial, Trial best) {
		return trial.count() > best.count() || trial.count() == best.count() && trial.share() > best.share() + 0.03;
	}

	private List<Spot> spots() {
		double thinnest = plan.marks().stream().map(Mark::design)
				.mapToDouble(design -> design.kind() == MarkKind.DISC ? design.size() / 2 : design.weight()).min().orElse(1);
		int factor = (int) Math.max(1, Math.min(MOST_REDUCED, thinnest * scale * SMALLEST / STROKE_LEFT * 1.5));
		double largest = plan.marks().stream().mapToDouble(mark -> mark.design().size()).max().orElse(1);
		double smallest = shapes.stream().mapToDouble(Spot::area).min().orElse(1);
		int reach = (int) Math.max(3, largest * scale / factor);
		int least = (int) Math.max(4, smallest * scale * scale * SMALLEST * SMALLEST / factor / factor / 2);
		return SpotFinder.find(new Reduced(picture, factor, monitor), reach, least, monitor);
	}

	/** For each mark those of about its form and size, the likest first. */
	private List<List<Spot>> candidates(List<Spot> spots) {
		return shapes.stream().map(shape -> spots.stream()
				.filter(spot -> unlike(spot.fullness() / shape.fullness()) < Math.log(FORM_DIFFERS)
						&& spot.size() > shape.size() * scale * SMALLEST / FORM_DIFFERS
						&& spot.size() < shape.size() * scale * LARGEST * FORM_DIFFERS)
				.sorted(Comparator.comparingDouble(spot -> unlike(spot.fullness() / shape.fullness())))
				.limit(MOST_CANDIDATES).toList()).toList();
	}

	private static double unlike(double ratio) {
		return Math.abs(Math.log(ratio));
	}

	private Trial trial(Layout layout) {
		List<Point> from = new ArrayList<>();
		List<Point> to = new ArrayList<>();
		for (int i = 0; i < shapes.size(); i++) {
			if (layout.spots().get(i) != null) {
				from.add(shapes.get(i).centre());
				to.add(layout.spots().get(i).centre());
			}
		}
		Projection map = fitted(from, to, layout.mirrored());
		List<Optional<Point>> places = List.of();
		double share = 0;
		for (int round = 0; round < REFINEMENTS && map != null; round++) {
			places = new ArrayList<>();
			from.clear();
			to.clear();
			share = 0;
			for (int i = 0; i < shapes.size(); i++) {
				Optional<Point> place = place(i, map, layout.spots().get(i) != null || round > 0);
				places.add(place);
				if (place.isPresent()) {
					from.add(plan.marks().get(i).place());
					to.add(place.get());
					share += edges.get(i).share(map, place.get().minus(map.apply(plan.marks().get(i).place())));
				}
			}
			map = from.size() < 2 ? null : fitted(from, to, layout.mirrored());
		}
		int count = map == null ? 0 : from.size();
		return new Trial(map, places, count, count == 0 ? 0 : share / count, layout);
	}

	/** A mark that is no spot of its own, as one that dirt has run together with, is looked for where it should be. */
	private Optional<Point> place(int index, Projection map, boolean near) {
		Point expected = map.apply(plan.marks().get(index).place());
		if (!picture.contains(expected.x(), expected.y())) {
			return Optional.empty();
		}
		EdgeFit.Result result = near ? edges.get(index).fit(map, Point.ORIGIN) : edges.get(index).fit(map, around(index, map));
		return result.share() >= EDGE ? Optional.of(expected.plus(result.shift())) : Optional.empty();
	}

	private Point around(int index, Projection map) {
		int reach = (int) Math.ceil(plan.marks().get(index).design().size() * scale / 3);
		Point best = Point.ORIGIN;
		double most = 0;
		for (int y = -reach; y <= reach; y += 2) {
			for (int x = -reach; x <= reach; x += 2) {
				double share = edges.get(index).share(map, new Point(x, y));
				if (share > most) {
					most = share;
					best = new Point(x, y);
				}
			}
		}
		return best;
	}

	/** As much as the marks tell; null if they do not. */
	private static Projection fitted(List<Point> from, List<Point> to, boolean mirrored) {
		try {
			return Registration.fit(from.size() >= FitKind.PROJECTIVE.leastMarks() ? FitKind.PROJECTIVE
					: from.size() >= FitKind.AFFINE.leastMarks() ? FitKind.AFFINE : FitKind.SIMILARITY, from, to).map();
		} catch (RegisterException degenerate) {
			return null;
		}
	}
}
