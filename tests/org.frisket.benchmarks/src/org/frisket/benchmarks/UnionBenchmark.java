package org.frisket.benchmarks;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.Joiner;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Clean union of a line of joined script, curves in and curves out, against unions of the same letters. */
final class UnionBenchmark {

	/** 40 letters without the spaces. */
	private static final String LINE = "harbour lane paperworks ferry anniversary tag";
	private static final double CHORD_ERROR = 0.01;

	private UnionBenchmark() {
	}

	static void run() throws Exception {
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/opentype/dancingscript/DancingScript-Regular.otf"));
		SetText set = TextSetter.set(LINE, face, Setting.ofCapHeight(20), Monitor.NONE);
		SetText text = Joiner.join(set, 0.3, Tolerance.DEFAULT, Monitor.NONE).text();
		Outline outline = text.outline();
		Path2D path = path(outline.contours());
		List<Geometry> letters = letters(text);
		double[] ms = Stopwatch.medians(
				() -> new OutlineCleaner().clean(outline, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE),
				() -> OverlayNGRobust.union(letters), () -> new Area(path));
		Region region = new OutlineCleaner().clean(outline, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
		Geometry union = OverlayNGRobust.union(letters);
		double faster = Math.min(ms[1], ms[2]);
		System.out.printf("clean union of %d joined letters: %.2f ms; JTS OverlayNG %.2f ms; AWT Area %.2f ms%n",
				text.letters().size(), ms[0], ms[1], ms[2]);
		System.out.printf("  ratio to JTS %.2f, to Area %.2f, to the faster %.2f (goal 1.5)%n", ms[0] / ms[1],
				ms[0] / ms[2], ms[0] / faster);
		System.out.printf("  nodes: in %d, out %d (%.2f); JTS out %d%n", outline.nodeCount(), region.nodeCount(),
				(double) region.nodeCount() / outline.nodeCount(), union.getNumPoints());
		System.out.printf("  area: %.3f mm2; JTS %.3f mm2%n", region.area(), union.getArea());
	}

	/** Each letter as a polygon by the even-odd rule, which for these letters is the same; chords within 0.01 mm. */
	private static List<Geometry> letters(SetText text) {
		GeometryFactory factory = new GeometryFactory();
		List<Geometry> letters = new ArrayList<>();
		for (Letter letter : text.letters()) {
			Geometry whole = factory.createPolygon();
			for (Contour contour : letter.outline().contours()) {
				whole = whole.symDifference(factory.createPolygon(ring(factory, contour)));
			}
			letters.add(whole);
		}
		return letters;
	}

	private static LinearRing ring(GeometryFactory factory, Contour contour) {
		List<Point> points = contour.flattened(CHORD_ERROR);
		Coordinate[] coordinates = new Coordinate[points.size() + 1];
		for (int i = 0; i < coordinates.length; i++) {
			Point point = points.get(i % points.size());
			coordinates[i] = new Coordinate(point.x(), point.y());
		}
		return factory.createLinearRing(coordinates);
	}

	static Path2D path(List<Contour> contours) {
		Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Contour contour : contours) {
			path.moveTo(contour.start().x(), contour.start().y());
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					path.curveTo(c.control1().x(), c.control1().y(), c.control2().x(), c.control2().y(), c.end().x(),
							c.end().y());
				} else {
					path.lineTo(segment.end().x(), segment.end().y());
				}
			}
			path.closePath();
		}
		return path;
	}
}
