package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Closed lines become areas: those that cross, or come within the tolerance of each other, are united; those that stand
 * in each other are shape and hole in turn. A line that stands inside an area that is filled already stays a line: united with it, it would be lost.
 */
public final class ClosedLines implements RepairStep {

	private static final String AREAS = "areas";

	private static final Option CLOSED = Option.choice("closed", Words.of("ClosedLines_closed"), AREAS, "lines");
	private static final double FLATNESS = 0.1;
	/** A line inside another that stands off it by no more than this, in tolerances, repeats it and is no hole. */
	private static final double NEARLY_SAME = 8;

	@Override
	public List<Option> options() {
		return List.of(CLOSED);
	}

	@Override
	public Moves moves(OptionValues options) {
		return options.text(CLOSED).equals(AREAS) ? Moves.ALL : Moves.NOTHING;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		if (!options.text(CLOSED).equals(AREAS) || artwork.lines().stream().noneMatch(ClosedLines::bounds)) {
			// what is filled is asked for closed lines only, and takes a union of all areas to tell
			return new Mended(artwork, List.of());
		}
		List<Mend> mends = new ArrayList<>();
		FilledPlaces filled = FilledPlaces.of(artwork.areas(), tolerance, monitor);
		List<Contour> closed = new ArrayList<>();
		List<Contour> lines = new ArrayList<>();
		for (Contour line : artwork.lines()) {
			if (bounds(line) && !filled.surround(line)) {
				closed.add(line);
			} else {
				lines.add(line);
			}
		}
		if (closed.isEmpty()) {
			return new Mended(artwork, mends);
		}
		List<Contour> taken = new ArrayList<>();
		List<Area> areas = new ArrayList<>(artwork.areas());
		areas.add(new Area(shapes(closed, tolerance, monitor, mends, taken), FillRule.EVEN_ODD));
		return new Mended(new Artwork(areas, lines), mends, taken, List.of());
	}

	private static boolean bounds(Contour line) {
		return line.isClosed() && !line.isEmpty();
	}

	private static Outline shapes(List<Contour> closed, Tolerance tolerance, Monitor monitor, List<Mend> mends,
			List<Contour> taken) {
		List<LinearRing> rings = closed.stream().map(line -> Polygons.ring(line, FLATNESS * tolerance.mm())).toList();
		Map<Integer, List<Contour>> clusters = new LinkedHashMap<>();
		int[] cluster = crossing(rings, tolerance.mm(), monitor);
		for (int i = 0; i < closed.size(); i++) {
			clusters.computeIfAbsent(cluster[i], first -> new ArrayList<>()).add(sameWay(closed.get(i)));
		}
		List<Contour> shapes = new ArrayList<>();
		for (Map.Entry<Integer, List<Contour>> each : clusters.entrySet()) {
			List<Contour> contours = each.getValue();
			if (contours.size() == 1 && rings.get(each.getKey()).isSimple()) {
				shapes.add(contours.get(0));
			} else {
				CleanResult united = new OutlineCleaner().clean(new Outline(contours), FillRule.NON_ZERO, tolerance,
						monitor);
				shapes.addAll(united.region().contours());
				mends.addAll(RepairMends.of(united.repairs()));
				taken.addAll(Covered.stretches(List.of(new Area(new Outline(contours), FillRule.NON_ZERO)),
						united.region().contours(), tolerance.mm(), monitor));
			}
		}
		return new Outline(shapes);
	}

	private static Contour sameWay(Contour contour) {
		return contour.signedArea() > 0 ? contour.reversed() : contour;
	}

	/** For each ring the first of those that it hangs together with. One inside another, hardly apart, is no hole. */
	private static int[] crossing(List<LinearRing> rings, double reach, Monitor monitor) {
		STRtree tree = new STRtree();
		for (int i = 0; i < rings.size(); i++) {
			tree.insert(rings.get(i).getEnvelopeInternal(), i);
		}
		int[] first = new int[rings.size()];
		for (int i = 0; i < first.length; i++) {
			monitor.check();
			first[i] = i;
			IndexedFacetDistance near = new IndexedFacetDistance(rings.get(i));
			Envelope around = rings.get(i).getEnvelopeInternal();
			around.expandBy(reach);
			for (Object found : tree.query(around)) {
				int other = (Integer) found;
				if (other < i && root(first, other) != root(first, i)
						&& (isNearlySame(rings.get(i), rings.get(other), NEARLY_SAME * reach)
								|| near.isWithinDistance(rings.get(other), reach))) {
					int one = root(first, i);
					int two = root(first, other);
					first[Math.max(one, two)] = Math.min(one, two);
				}
			}
		}
		for (int i = 0; i < first.length; i++) {
			first[i] = root(first, i);
		}
		return first;
	}

	/** Whether two rings stand nowhere far apart, by their boxes and what they enclose. */
	private static boolean isNearlySame(LinearRing one, LinearRing other, double reach) {
		Envelope box = one.getEnvelopeInternal();
		Envelope around = other.getEnvelopeInternal();
		double areas = Math.abs(ringArea(one) - ringArea(other));
		return Math.abs(box.getMinX() - around.getMinX()) <= reach && Math.abs(box.getMaxX() - around.getMaxX()) <= reach
				&& Math.abs(box.getMinY() - around.getMinY()) <= reach
				&& Math.abs(box.getMaxY() - around.getMaxY()) <= reach && areas <= reach * one.getLength();
	}

	private static double ringArea(LinearRing ring) {
		return org.locationtech.jts.algorithm.Area.ofRing(ring.getCoordinateSequence());
	}

	private static int root(int[] first, int index) {
		int root = index;
		while (first[root] != root) {
			root = first[root];
		}
		return root;
	}
}
