package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.testkit.IndependentArea;
import org.frisket.testkit.SampleJobs;
import org.frisket.typography.FontFace;
import org.frisket.typography.Joiner;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/** Five typefaces or more, five texts, two sizes: what leaves is clean, keeps its area, and is not inflated. */
class LetteringTest {

	private static final List<String> BROUGHT = List.of("Liberation Sans", "Liberation Serif Italic",
			"DejaVu Sans Bold", "DejaVu Serif", "Liberation Mono");
	/** From Debian's packages: a joined script and a brush in CFF, a bold script, a slab, a poster face, symbols. */
	private static final List<Path> FILES = Stream.of("opentype/dancingscript/DancingScript-Regular.otf",
			"opentype/kaushanscript/KaushanScript-Regular.otf", "opentype/lobster/lobster.otf",
			"opentype/roboto/slab/RobotoSlab-Bold.otf", "opentype/bebas-neue/BebasNeue-Regular.otf",
			"truetype/ancient-scripts/Symbola_hint.ttf").map(Path.of("/usr/share/fonts")::resolve)
			.filter(Files::isReadable).toList();
	private static final List<String> TEXTS = List.of("Harbour Lane", "Fjord & Quay", "8 gifts, 50% off",
			"ferry\nanniversary", "WAVE traffic");
	private static final List<Double> HEIGHTS = List.of(6.0, 40.0);

	@TestFactory
	List<DynamicTest> regionsOfLetteringAreClean() throws Exception {
		List<FontFace> faces = new ArrayList<>();
		BROUGHT.forEach(name -> faces.add(SampleJobs.face(name)));
		for (Path file : FILES) {
			faces.add(FontFace.read(file));
		}
		List<DynamicTest> tests = new ArrayList<>();
		for (FontFace face : faces) {
			for (String text : TEXTS) {
				for (double height : HEIGHTS) {
					tests.add(DynamicTest.dynamicTest(
							"%s, %s, %s mm".formatted(face.fullName(), text.replace('\n', ' '), height),
							() -> check(face, text, height)));
				}
			}
		}
		return tests;
	}

	private static void check(FontFace face, String text, double height) {
		SetText set = TextSetter.set(text, face, Setting.ofCapHeight(height), Monitor.NONE);
		check(set, height);
		check(Joiner.join(set, 0.3, Tolerance.DEFAULT, Monitor.NONE).text(), height);
	}

	private static void check(SetText set, double height) {
		Region region = new OutlineCleaner().clean(set.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
		Geometry polygons = Polygons.of(region, 0.002);
		assertTrue(polygons.isValid(), "valid by JTS");
		assertTrue(new IsSimpleOp(polygons.getBoundary()).isSimple(), "no contour touches another");
		for (Piece piece : region.pieces()) {
			assertTrue(piece.outer().signedArea() < 0, "outer contours run counter-clockwise to the viewer");
			piece.holes().forEach(hole -> assertTrue(hole.signedArea() > 0, "holes run clockwise"));
		}
		for (Contour contour : region.contours()) {
			for (Segment segment : contour.segments()) {
				assertTrue(segment.length() >= Tolerance.DEFAULT.mm(), "no segment below the tolerance");
			}
		}
		double area = IndependentArea.nonZero(set.outline().contours());
		assertEquals(area, region.area(), Tolerance.DEFAULT.mm() * region.perimeter() * 0.1, "area by java.awt.geom");
		assertTrue(region.nodeCount() <= 1.3 * set.outline().nodeCount(),
				"nodes: %d of %d".formatted(region.nodeCount(), set.outline().nodeCount()));
	}
}
