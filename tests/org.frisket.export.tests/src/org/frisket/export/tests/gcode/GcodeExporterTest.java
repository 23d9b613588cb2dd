package org.frisket.export.tests.gcode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.export.tests.Format;
import org.frisket.export.tests.Runs;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.run.MachineRun;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.track.Arc;
import org.junit.jupiter.api.Test;

class GcodeExporterTest extends ExporterContract {

	private static final Format NGC = new Format("ngc");
	private static final String SQUARE = "M10 390H20V380H10Z";
	private static final String CURVED = "M60 200C60 100 200 100 200 200S340 320 340 200V380H60Z "
			+ "M400 200A40 40 0 0 1 480 200A40 40 0 0 1 400 200Z M20 20L25 20L25 20.3L24.9 20Z";

	@Override
	protected Exporter exporter() {
		return NGC.exporter();
	}

	private static Handoff penThenBlade() {
		return Runs.onDesk(true).leg(Stage.DRAW, Runs.pen(), 0, 120, "M10 390H20").leg(Stage.PERFORATE, Runs.blade(), 0.25,
				30, "M10 350H90").leg(Stage.CUT, Runs.blade(), 0.25, 50, SQUARE + CURVED).handoff();
	}

	private static GcodeReader read(Handoff handoff, Map<String, String> options) throws IOException {
		GcodeReader reader = new GcodeReader(NGC.text(handoff, options));
		assertEquals(List.of(), reader.faults);
		return reader;
	}

	@Test
	void squareIsWrittenLineByLine() throws IOException {
		List<String> lines = NGC.text(Runs.onDesk(false).leg(Stage.CUT, Runs.blade(), 0, 50, SQUARE).handoff(),
				Map.of("decimals", "3")).lines().toList();
		assertEquals(List.of("G17 G21 G40 G90 G94", "M5", "G4 P0.2",
				"(T1 Blade: cut, pressure 12 %, speed 50 mm/s, blade out 0.3 mm)", "G0 X10.000 Y10.000", "M3", "G4 P0.1",
				"G1 X20.000 Y10.000 F3000", "G1 X20.000 Y20.000", "G1 X10.000 Y20.000", "G1 X10.000 Y10.000", "M5", "G4 P0.2",
				"G0 X0.000 Y0.000", "M2"), lines.subList(2, lines.size()));
		assertTrue(lines.get(0).startsWith("(") && lines.get(0).contains("blade"), lines.get(0));
		assertTrue(lines.get(1).contains("manual"), lines.get(1));
	}

	/** An independent reader goes as far as the axis does, whichever way arcs are written. */
	@Test
	void lengthIsThatOfTheAxis() throws IOException {
		for (Handoff handoff : List.of(penThenBlade(), Handoff.of(SampleJobs.prepared(SampleJobs.giftTag())))) {
			double length = Runs.axisLength(handoff);
			MachineRun run = handoff.run(Monitor.NONE);
			boolean any = run.run().strokes().flatMap(stroke -> stroke.axis().stream()).anyMatch(Arc.class::isInstance);
			for (String arcs : List.of("machine", "centre", "radius", "none")) {
				for (String decimals : List.of("3", "4", "6")) {
					GcodeReader reader = read(handoff, Map.of("arcs", arcs, "decimals", decimals));
					assertEquals(length, reader.worked, length * 1e-3, arcs);
					assertEquals(run.run().strokes().count(), reader.strokes);
					assertEquals(any && !arcs.equals("none") && (!arcs.equals("machine") || run.carriage().arcs()),
							reader.arcs > 0, arcs);
					assertTrue(reader.worstArc < (decimals.equals("3") ? 0.002 : 0.0002), reader.worstArc + " mm");
				}
			}
		}
	}

	/** Rounding at its worst: many arcs of all sizes, from those of a blade's axis on. */
	@Test
	void endsOfArcsFitTheirCentres() throws IOException {
		Random random = new Random(9);
		StringBuilder paths = new StringBuilder();
		for (int i = 0; i < 200; i++) {
			double x = 50 + random.nextDouble(400);
			double y = 50 + random.nextDouble(300);
			double size = Math.pow(10, random.nextDouble(4) - 2.3);
			paths.append(String.format(Locale.ROOT, "M%.4f %.4fq%.4f %.4f %.4f %.4ft%.4f %.4f", x, y, size * random.nextGaussian(),
					size * random.nextGaussian(), size, size * random.nextGaussian(), size, size * random.nextGaussian()));
		}
		Handoff handoff = new Runs(Machine.plain(), new Point(0, 400), true)
				.leg(Stage.CUT, Runs.blade(), 0.25, 50, paths.toString()).handoff();
		GcodeReader reader = read(handoff, Map.of("decimals", "3"));
		assertTrue(reader.arcs > 500, reader.arcs + " arcs");
		assertTrue(reader.worstArc < 0.002, reader.worstArc + " mm");
		assertEquals(Runs.axisLength(handoff), reader.worked, reader.worked * 1e-3);
		read(handoff, Map.of("arcs", "radius", "decimals", "3"));
	}

	@Test
	void mirroredAndScaledAxesKeepTheirArcs() throws IOException {
		for (String y : List.of("away", "near")) {
			for (String x : List.of("right", "left")) {
				Machine machine = Runs.desk(Map.of("x-grows", x, "y-grows", y, "scale-x", "1.003", "scale-y", "0.998"));
				Handoff handoff = new Runs(machine, Runs.LOWER_LEFT, true)
						.leg(Stage.CUT, Runs.pen(), 0, 50, "M400 200A40 40 0 0 1 480 200A40 40 0 0 1 400 200Z").handoff();
				GcodeReader reader = read(handoff, Map.of());
				assertTrue(reader.arcs > 4, reader.arcs + " arcs");
				assertEquals(80 * 1.003, reader.maxX - reader.minX, 0.05);
				// Ramanujan's first approximation of an ellipse's circumference
				double a = 40 * 1.003;
				double b = 40 * 0.998;
				assertEquals(Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b))), reader.worked, 0.1);
			}
		}
	}

	@Test
	void machineStopsForAnotherTool() throws IOException {
		GcodeReader reader = read(penThenBlade(), Map.of());
		assertEquals(1, reader.stops);
		assertEquals(List.of(), reader.tools);
		reader = read(penThenBlade(), Map.of("change", "tool", "tools", "cut=7"));
		assertEquals(0, reader.stops);
		assertEquals(List.of(1, 2, 7), reader.tools);
		reader = read(penThenBlade(), Map.of("change", "none"));
		assertEquals(0, reader.stops + reader.tools.size());
	}

	@Test
	void wordsAreTheStudiosOwn() throws IOException {
		Map<String, String> words = Map.of("up", "G0 Z5", "down", "G1 Z-0.5 F300", "start", "G54|T{tool}", "end",
				"G0 Z20", "stop", "(swap)|M0", "dwell", "no");
		String text = NGC.text(penThenBlade(), words);
		read(penThenBlade(), words);
		assertTrue(text.contains("G54\nT0\nG0 Z5\n"), text.substring(0, 300));
		assertTrue(text.contains("(swap)\nM0\n"), text.substring(0, 600));
		assertTrue(text.endsWith("G0 Z20\nM2\n"));
		assertFalse(text.contains("G4 P") || text.contains("M3") || text.contains("M5"));
		// after the word that lowers, the feed is told again
		assertTrue(text.contains("G1 Z-0.5 F300\nG1 X20.0000 Y10.0000 F7200\n"), text);
		assertTrue(NGC.text(penThenBlade(), Map.of("down", "M3 S{pressure}")).contains("M3 S12\n"));
	}

	@Test
	void wordsOfTheProfileAreTaken() throws IOException {
		Machine machine = Runs.desk(Map.of("word-up", "G0 Z3", "word-down", "G1 Z-1 F100", "word-stop", "M1"));
		Handoff handoff = new Runs(machine, Runs.LOWER_LEFT, false).leg(Stage.DRAW, Runs.pen(), 0, 120, "M10 390H20")
				.leg(Stage.CUT, Runs.blade(), 0, 50, SQUARE).handoff();
		String text = NGC.text(handoff, Map.of());
		assertTrue(text.contains("G0 Z3\n") && text.contains("G1 Z-1 F100\n") && text.contains("\nM1\n"), text);
		assertFalse(text.contains("M3") || text.contains("M5") || text.contains("M0"), text);
		assertFalse(NGC.text(handoff, Map.of("up", "M5", "down", "M3")).contains("Z"), text);
	}

	@Test
	void wordsThatCannotBeFilledAreRefused() {
		for (Map<String, String> wrong : List.of(Map.of("down", "M3 S{force}"), Map.of("up", "M5 {tool"),
				Map.of("start", "G54\nG55"), Map.of("end", "größer"))) {
			IOException refusal = assertThrows(IOException.class, () -> NGC.text(penThenBlade(), wrong));
			assertTrue(refusal.getMessage().startsWith(wrong.keySet().iterator().next()), refusal.getMessage());
		}
		IOException refusal = assertThrows(IOException.class, () -> NGC.text(penThenBlade(), Map.of("down", "{force}")));
		assertTrue(refusal.getMessage().contains("{pressure}"), refusal.getMessage());
	}

	@Test
	void linesAreNumberedAndWrapped() throws IOException {
		List<String> lines = NGC.text(penThenBlade(), Map.of("line-numbers", "10", "percent", "yes")).lines().toList();
		assertEquals("%", lines.get(0));
		assertEquals("%", lines.get(lines.size() - 1));
		for (int i = 1; i < lines.size() - 1; i++) {
			assertTrue(lines.get(i).startsWith("N" + 10 * i + " "), lines.get(i));
		}
		read(penThenBlade(), Map.of("line-numbers", "10", "percent", "yes"));
		read(penThenBlade(), Map.of("line-numbers", "100"));
	}

	@Test
	void feedIsThatOfEachMove() throws IOException {
		Handoff handoff = Runs.onDesk(false).leg(Stage.CUT, Runs.blade(), 0, 50, "M0 100H100").leg(Stage.CUT, Runs.blade(), 0,
				20, "M0 200H100").handoff();
		GcodeReader reader = read(handoff, Map.of("dwell", "no"));
		assertEquals(100 / 50.0 + 100 / 20.0, reader.seconds, 1e-9);
	}

	@Test
	void toolStaysDownFromPassToPassWhereTheLineComesBack() throws IOException {
		Handoff handoff = Runs.onDesk(true).leg(Stage.CUT, Runs.blade(), 0.25, 50, SQUARE + "M10 350H20", 3).handoff();
		GcodeReader reader = read(handoff, Map.of());
		assertEquals(1 + 3, reader.strokes);
		assertEquals(Runs.axisLength(handoff), reader.worked, 0.01);
	}

	@Test
	void commentsAreClosedAndPlain() throws IOException {
		String text = NGC.text(penThenBlade(), Map.of());
		List<String> comments = new ArrayList<>(text.lines().filter(line -> line.startsWith("(")).toList());
		assertEquals(5, comments.size());
		comments.forEach(comment -> assertTrue(comment.matches("\\([ -'*-~]*\\)"), comment));
		assertTrue(text.contains("(T1 Fuller [fein]: draw"), text);
	}

	@Test
	void numbersAreTheSameInEveryCountry() throws IOException {
		byte[] bytes = exported(SampleJobs.giftTag());
		Locale before = Locale.getDefault();
		Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
		try {
			assertArrayEquals(bytes, exported(SampleJobs.giftTag()));
		} finally {
			Locale.setDefault(before);
		}
	}
}
