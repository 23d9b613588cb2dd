package org.frisket.export.tests.hpgl;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.export.tests.Format;
import org.frisket.export.tests.Runs;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.model.OperationKind;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.Stage;
import org.junit.jupiter.api.Test;

class HpglExporterTest extends ExporterContract {

	private static final Format PLT = new Format("plt");
	/** 10 mm square, 10 mm from the lower left corner of an area 400 mm high. */
	private static final String SQUARE = "M10 390H20V380H10Z";

	@Override
	protected Exporter exporter() {
		return PLT.exporter();
	}

	private static Runs square() {
		return Runs.onDesk(false).leg(Stage.CUT, Runs.blade(), 0, 50, SQUARE);
	}

	private static Runs penThenBlade() {
		return Runs.onDesk(false).leg(Stage.DRAW, Runs.pen(), 0, 120, "M10 390H20").leg(Stage.CREASE, Runs.pen(), 0, 120,
				"M10 380H20").leg(Stage.CUT, Runs.blade(), 0, 50, SQUARE);
	}

	private static String joined(String text) {
		return text.replace("\n", "");
	}

	/** The coordinates are those of the check value: 10 mm are 400 units. */
	@Test
	void squareOfTenMillimetres() throws IOException {
		assertEquals("IN;PA;PU;SP1;VS5;PU400,400;PD800,400,800,800,400,800,400,400;PU;PU0,0;SP0;",
				joined(PLT.text(square().handoff(), Map.of())));
	}

	@Test
	void penIsChangedAtAStopAndSpeedWhereItDiffers() throws IOException {
		assertEquals("IN;PA;PU;SP1;VS12;PU400,400;PD800,400;PU;PU400,800;PD800,800;PU;"
				+ "NR;SP2;VS5;PU400,400;PD800,400,800,800,400,800,400,400;PU;PU0,0;SP0;",
				joined(PLT.text(penThenBlade().handoff(), Map.of())));
	}

	@Test
	void whatAMachineDoesNotKnowIsLeftOut() throws IOException {
		String text = PLT.text(penThenBlade().handoff(), Map.of("change", "none", "speed", "no", "pens", "cut=1, draw=8"));
		assertFalse(text.contains("NR") || text.contains("VS") || text.contains("FS") || text.contains("CO"), text);
		assertTrue(text.indexOf("SP8") < text.indexOf("SP2") && text.indexOf("SP2") < text.indexOf("SP1"), text);
	}

	@Test
	void forceIsInTheStepsOfTheMachine() throws IOException {
		String text = PLT.text(square().handoff(), Map.of("force", "yes"));
		assertTrue(text.contains("SP1;VS5;FS12;PU"), text);
	}

	@Test
	void speedThatNobodyKnowsIsLeftOut() throws IOException {
		assertFalse(PLT.text(Runs.planned(SQUARE, OperationKind.CUT), Map.of()).contains("VS"));
	}

	@Test
	void oneToolCanHaveItsOwnFile() throws IOException {
		String text = joined(PLT.text(penThenBlade().handoff(), Map.of("pen", "2")));
		assertEquals("IN;PA;PU;SP2;VS5;PU400,400;PD800,400,800,800,400,800,400,400;PU;PU0,0;SP0;", text);
		IOException refusal = assertThrows(IOException.class,
				() -> PLT.text(penThenBlade().handoff(), Map.of("pen", "3")));
		assertTrue(refusal.getMessage().contains("1, 2"), refusal.getMessage());
	}

	@Test
	void commentsNameToolsInPlainLetters() throws IOException {
		String text = PLT.text(penThenBlade().handoff(), Map.of("comments", "yes"));
		assertTrue(text.contains("CO\"Pen 1: Fuller (fein)\";SP1;"), text);
		assertTrue(text.contains("manual"), text);
	}

	@Test
	void unitsAndAxesAreThoseOfTheMachine() throws IOException {
		Machine machine = Runs.desk(Map.of("units-per-mm", "20", "origin", "upper-right", "x-grows", "left", "y-grows",
				"near", "scale-x", "1.01"));
		String text = joined(PLT.text(new Runs(machine, new Point(600, 0), false)
				.leg(Stage.CUT, Runs.blade(), 0, 50, "M500 100H400V110").handoff(), Map.of()));
		assertTrue(text.contains("PU2020,2000;PD4040,2000,4040,2200;"), text);
	}

	@Test
	void linesAndInstructionsStayShort() throws IOException {
		StringBuilder zigzag = new StringBuilder("M10 390");
		for (int i = 0; i < 500; i++) {
			zigzag.append("L").append(10 + i).append(' ').append(i % 2 == 0 ? 300 : 310);
		}
		Handoff handoff = Runs.onDesk(false).leg(Stage.DRAW, Runs.pen(), 0, 100, zigzag.toString()).handoff();
		String whole = PLT.text(handoff, Map.of("coordinates", "100000", "line", "1000000"));
		for (int places : new int[] { 1, 7, 64 }) {
			for (int line : new int[] { 60, 80, 240 }) {
				String text = PLT.text(handoff,
						Map.of("coordinates", Integer.toString(places), "line", Integer.toString(line)));
				text.lines().forEach(one -> assertTrue(one.length() <= line && one.endsWith(";"), one));
				for (String instruction : joined(text).split(";")) {
					assertTrue(instruction.split(",").length <= 2 * places, instruction);
				}
				assertEquals(joined(whole), joined(text).replaceAll("(?<=[0-9]);PD", ",").replaceFirst("(PU[0-9]+,[0-9]+),",
						"$1;PD"));
			}
		}
	}

	@Test
	void whatIsTooFarAwayIsRefusedByName() {
		Handoff handoff = new Runs(Machine.plain(), Point.ORIGIN, false)
				.leg(Stage.CUT, Runs.blade(), 0, 50, "M0 0H300000").handoff();
		IOException refusal = assertThrows(IOException.class, () -> PLT.text(handoff, Map.of()));
		assertTrue(refusal.getMessage().contains("shape"), refusal.getMessage());
	}

	@Test
	void toolStaysDownFromPassToPassWhereTheLineComesBack() throws IOException {
		String twice = "PD800,400,800,800,400,800,400,400,800,400,800,800,400,800,400,400;";
		assertEquals("IN;PA;PU;SP1;VS5;PU400,400;" + twice + "PU;PU400,2000;PD800,2000;PU;PU400,2000;PD800,2000;PU;PU0,0;SP0;",
				joined(PLT.text(Runs.onDesk(false).leg(Stage.CUT, Runs.blade(), 0, 50, SQUARE + "M10 350H20", 2).handoff(),
						Map.of())));
	}

	@Test
	void dotsAreMade() throws IOException {
		String text = joined(PLT.text(Runs.onDesk(false).leg(Stage.DRAW, Runs.pen(), 0, 50, "M10 390h0.001").handoff(),
				Map.of()));
		assertTrue(text.contains("PU400,400;PD400,400;PU;"), text);
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

	/** Arcs drift nowhere: after each stands where its end is. The importer draws the same lengths from either. */
	@Test
	void importerReadsTheSameLinesBack() throws Exception {
		String curved = "M60 200C60 100 200 100 200 200S340 320 340 200V380H60Z M400 200A40 40 0 0 1 480 200A40 40 0 0 1 400 200Z";
		for (boolean followed : new boolean[] { true, false }) {
			Handoff handoff = Runs.onDesk(followed).leg(Stage.CUT, Runs.blade(), 0.25, 50, curved).handoff();
			double length = Runs.axisLength(handoff);
			for (String arcs : List.of("no", "yes")) {
				byte[] bytes = PLT.bytes(handoff, Map.of("arcs", arcs, "comments", "yes"));
				boolean any = Stream.of(new String(bytes).split(";")).anyMatch(one -> one.startsWith("AA"));
				assertEquals(arcs.equals("yes"), any);
				assertEquals(length, Format.length(PLT.readBack(bytes, Map.of())), length * 1e-3, arcs);
			}
		}
	}
}
