package org.frisket.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.measure.Straying;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.prepare.repair.RepairSteps;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/** Curves given back to shapes that came as short strokes, against the segments that a person draws them with. */
final class RefitBenchmark {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	private static final double STROKES = 0.001;
	private static final double EXACT = 2e-4;
	private static final String LETTERS = "harbourlanepaperworksferrytag";

	private RefitBenchmark() {
	}

	static void run() throws Exception {
		RepairCourse course = RepairSteps.course(Map.of());
		Map<String, List<Contour>> shapes = new LinkedHashMap<>();
		shapes.put("circle", List.of(Flattened.circle(20, 20, 15)));
		shapes.put("rounded rectangle", PathData.parse("M5 0H45A5 5 0 0 1 50 5V25A5 5 0 0 1 45 30H5A5 5 0 0 1 0 25V5A5 5 0 0 1 5 0Z")
				.contours());
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"));
		List<Contour> letters = new ArrayList<>();
		for (Letter letter : TextSetter.set(LETTERS, face, Setting.ofCapHeight(20), Monitor.NONE).letters()) {
			letters.addAll(letter.outline().contours());
		}
		shapes.put("letters", letters);
		for (Map.Entry<String, List<Contour>> shape : shapes.entrySet()) {
			List<Contour> strokes = shape.getValue().stream().map(each -> Contour.polygon(each.flattened(STROKES))).toList();
			Artwork artwork = new Artwork(List.of(new Artwork.Area(new Outline(strokes), FillRule.NON_ZERO)), List.of());
			List<Contour> found = course.run(artwork, TOLERANCE, Monitor.NONE).artwork().toOutline().contours();
			double error = Math.max(Straying.of(found, shape.getValue(), EXACT, Monitor.NONE).mm(),
					Straying.of(shape.getValue(), found, EXACT, Monitor.NONE).mm());
			double ms = Stopwatch.mediansOfFew(() -> course.run(artwork, TOLERANCE, Monitor.NONE))[0];
			int drawn = Flattened.segments(shape.getValue());
			System.out.printf("refit of %s from %d strokes: %d segments, %.2f of the %d it is drawn with; error %.4f mm; %.1f ms%n",
					shape.getKey(), Flattened.segments(strokes), Flattened.segments(found),
					(double) Flattened.segments(found) / drawn, drawn, error, ms);
		}
	}
}
