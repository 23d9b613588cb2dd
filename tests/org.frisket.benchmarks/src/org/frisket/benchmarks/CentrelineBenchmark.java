package org.frisket.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.axis.Centreline;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.Joiner;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

/** The line of the pen through joined script, against the Voronoi diagrams of points as close along the same edges. */
final class CentrelineBenchmark {

	/** 40 letters without the spaces. */
	private static final String LINE = "harbour lane paperworks ferry anniversary tag";
	private static final double CHORD_ERROR = 0.01;
	/** Points a mean width of the strokes, as the centreline takes them. */
	private static final double SAMPLES = 16;

	private CentrelineBenchmark() {
	}

	static void run() throws Exception {
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/opentype/dancingscript/DancingScript-Regular.otf"));
		SetText set = TextSetter.set(LINE, face, Setting.ofCapHeight(20), Monitor.NONE);
		SetText text = Joiner.join(set, 0.3, Tolerance.DEFAULT, Monitor.NONE).text();
		Region region = new OutlineCleaner().clean(text.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
		List<Geometry> samples = region.pieces().stream().map(CentrelineBenchmark::samples).toList();
		double[] ms = Stopwatch.mediansOfFew(() -> Centreline.of(region, 0, Tolerance.DEFAULT, Monitor.NONE),
				() -> samples.stream().map(CentrelineBenchmark::voronoi).toList());
		List<Contour> lines = Centreline.of(region, 0, Tolerance.DEFAULT, Monitor.NONE);
		int nodes = lines.stream().mapToInt(line -> line.segments().size() + 1).sum();
		System.out.printf("centreline of %d joined letters: %.0f ms, %.2f times the Voronoi diagrams of JTS (%.0f ms)%n",
				text.letters().size(), ms[0], ms[0] / ms[1], ms[1]);
		System.out.printf("  %d lines of %d points; %.3f of the %d points along the edges%n", lines.size(), nodes,
				(double) nodes / points(samples), points(samples));
	}

	private static int points(List<Geometry> samples) {
		return samples.stream().mapToInt(Geometry::getNumPoints).sum();
	}

	private static Geometry samples(Piece piece) {
		GeometryFactory factory = new GeometryFactory();
		double perimeter = piece.contours().stream().mapToDouble(Contour::length).sum();
		double spacing = Math.max(2 * piece.area() / perimeter / SAMPLES, Tolerance.DEFAULT.mm() / 2);
		List<Geometry> rings = new ArrayList<>();
		for (Contour contour : piece.contours()) {
			List<Point> points = contour.flattened(CHORD_ERROR);
			Coordinate[] ring = new Coordinate[points.size() + 1];
			for (int i = 0; i < ring.length; i++) {
				Point point = points.get(i % points.size());
				ring[i] = new Coordinate(point.x(), point.y());
			}
			rings.add(factory.createLinearRing(ring));
		}
		return Densifier.densify(factory.buildGeometry(rings), spacing);
	}

	private static Geometry voronoi(Geometry samples) {
		VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
		builder.setSites(samples);
		return builder.getDiagram(samples.getFactory());
	}
}
