package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Turns sources into lines whose ends lie on a grid and which meet at their ends only, by snap rounding. It works on
 * anything, but curves are lost.
 */
final class GridNoder {

	private final double cell;
	private final double deviation;

	GridNoder(double cell, double deviation) {
		this.cell = cell;
		this.deviation = deviation;
	}

	List<Source> node(List<Source> sources) {
		List<NodedSegmentString> strings = new ArrayList<>(sources.size());
		for (Source source : sources) {
			strings.add(new NodedSegmentString(polyline(source.segment()), source));
		}
		SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(1 / cell));
		noder.computeNodes(strings);
		List<Source> lines = new ArrayList<>();
		for (SegmentString string : substrings(noder)) {
			Source source = (Source) string.getData();
			for (int i = 1; i < string.size(); i++) {
				Point start = point(string.getCoordinate(i - 1));
				Point end = point(string.getCoordinate(i));
				if (!start.equals(end)) {
					lines.add(new Source(new Line(start, end), source.contour(), source.winding()));
				}
			}
		}
		return lines;
	}

	@SuppressWarnings("unchecked")
	private static Collection<SegmentString> substrings(SnapRoundingNoder noder) {
		return noder.getNodedSubstrings();
	}

	private Coordinate[] polyline(Segment segment) {
		List<Coordinate> corners = new ArrayList<>();
		corners.add(new Coordinate(segment.start().x(), segment.start().y()));
		segment.flatten(deviation, t -> {
			Point p = segment.at(t);
			corners.add(new Coordinate(p.x(), p.y()));
		});
		return corners.toArray(Coordinate[]::new);
	}

	private static Point point(Coordinate c) {
		return new Point(c.x, c.y);
	}
}
