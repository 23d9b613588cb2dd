package org.frisket.geometry.internal.repair;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.geometry.repair.RepairStep;

/** The built-in steps in their order, and artwork to try them on. */
final class Courses {

	static final Tolerance TOLERANCE = new Tolerance(0.02);

	private Courses() {
	}

	static RepairCourse recommended() {
		return with(Map.of());
	}

	/** All steps, with options of whichever of them. */
	static RepairCourse with(Map<String, String> options) {
		return new RepairCourse(Stream.of(new DoubledLines(), new LooseLines(), new OpenContours(), new ClosedLines(),
				new UnitedAreas(), new NarrowGaps(), new Specks(), new SimplerCurves(), new LevelLines())
				.map(step -> new RepairCourse.Stage(step, of(step, options))).toList());
	}

	private static OptionValues of(RepairStep step, Map<String, String> options) {
		Map<String, String> own = new HashMap<>(options);
		own.keySet().retainAll(step.options().stream().map(Option::name).toList());
		return OptionValues.of(step.options(), own);
	}

	static Mended run(Artwork artwork) {
		return recommended().run(artwork, TOLERANCE, Monitor.NONE);
	}

	static Mended step(RepairStep step, Artwork artwork, Map<String, String> options) {
		return step.mend(artwork, OptionValues.of(step.options(), options), TOLERANCE, Monitor.NONE);
	}

	static Mended step(RepairStep step, Artwork artwork) {
		return step(step, artwork, Map.of());
	}

	static Artwork lines(String pathData) {
		return new Artwork(List.of(), PathData.parse(pathData).contours());
	}

	static Artwork area(String pathData) {
		return new Artwork(List.of(new Artwork.Area(PathData.parse(pathData), FillRule.NON_ZERO)), List.of());
	}

	static double area(Artwork artwork) {
		return -artwork.areas().stream().flatMap(a -> a.outline().contours().stream()).mapToDouble(Contour::signedArea)
				.sum();
	}

	static double length(Artwork artwork) {
		return artwork.toOutline().contours().stream().mapToDouble(Contour::length).sum();
	}

	static List<String> kinds(Mended mended) {
		return mended.mends().stream().map(Mend::kind).distinct().sorted().toList();
	}
}
