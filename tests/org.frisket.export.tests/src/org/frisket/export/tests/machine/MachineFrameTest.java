package org.frisket.export.tests.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.export.Handoff;
import org.frisket.export.machine.MachineFrame;
import org.frisket.export.tests.Runs;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.model.OperationKind;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.junit.jupiter.api.Test;

class MachineFrameTest {

	private static final double TOLERANCE = 0.02;
	private static final List<String> CORNERS = List.of("lower-left", "lower-right", "upper-left", "upper-right",
			"centre");

	/** Where zero is on a sheet as large as the machine. */
	private static Point zero(String corner) {
		return switch (corner) {
		case "lower-left" -> new Point(0, 400);
		case "lower-right" -> new Point(600, 400);
		case "upper-left" -> new Point(0, 0);
		case "upper-right" -> new Point(600, 0);
		default -> new Point(300, 200);
		};
	}

	private static Stroke stroke(Move... moves) {
		Point end = new Point(1, 1);
		Contour contour = Contour.open(List.of(new Line(Point.ORIGIN, end)));
		return new Stroke(new org.frisket.toolpath.Line("shape", "job", "shape", contour, Stage.CUT, "blade", 1), 1,
				List.of(moves), List.of(moves), Collections.nCopies(moves.length, 50.0));
	}

	private static MachineFrame frame(Machine machine, Point zero, Stroke stroke) {
		Handoff handoff = Runs.planned("M0 0H10V10H0Z", OperationKind.CUT)
				.with(new Runs(machine, zero, true).leg(Stage.CUT, Runs.blade(), 50, List.of(stroke)).run());
		return new MachineFrame(handoff, handoff.run(() -> false));
	}

	@Test
	void placesAreCountedFromZeroAlongTheAxes() {
		// 50 mm from the left and 30 from the front of an area of 600 by 400
		Point place = new Point(50, 370);
		Map<String, Point> away = Map.of("lower-left", new Point(50, 30), "lower-right", new Point(-550, 30),
				"upper-left", new Point(50, -370), "upper-right", new Point(-550, -370), "centre", new Point(-250, -170));
		for (String corner : CORNERS) {
			for (int x : new int[] { 1, -1 }) {
				for (int y : new int[] { 1, -1 }) {
					Machine machine = Runs.desk(Map.of("origin", corner, "x-grows", x > 0 ? "right" : "left", "y-grows",
							y > 0 ? "away" : "near", "scale-x", "1.01", "scale-y", "0.99"));
					Point found = frame(machine, zero(corner), stroke(new Straight(place, new Point(60, 370)))).place(place);
					assertEquals(x * 1.01 * away.get(corner).x(), found.x(), 1e-9, corner);
					assertEquals(y * 0.99 * away.get(corner).y(), found.y(), 1e-9, corner);
				}
			}
		}
	}

	/** Each place of a move is that of the machine's move, be it an arc of a circle or of an ellipse. */
	@Test
	void movesAreLedAsTheirPlacesAre() throws IOException {
		Random random = new Random(5);
		int arcs = 0;
		for (int i = 0; i < 200; i++) {
			String corner = CORNERS.get(i % 5);
			Machine machine = Runs.desk(Map.of("origin", corner, "x-grows", random.nextBoolean() ? "right" : "left",
					"y-grows", random.nextBoolean() ? "away" : "near", "scale-x", i % 2 == 0 ? "1" : "1.004", "scale-y",
					i % 4 < 2 ? "1" : "0.997"));
			Move move = i % 7 == 0
					? new Straight(new Point(random.nextDouble(600), random.nextDouble(400)), new Point(20, 20))
					: new Arc(new Point(250 + random.nextDouble(100), 200), 0.25 + random.nextDouble(190),
							random.nextDouble(7) - 3, random.nextDouble(12) - 6);
			Stroke stroke = stroke(move);
			MachineFrame frame = frame(machine, zero(corner), stroke);
			List<Move> led = frame.axis(stroke, TOLERANCE);
			assertEquals(0, frame.place(move.start()).distance(led.get(0).start()), 1e-9, move.toString());
			assertEquals(0, frame.place(move.end()).distance(led.get(led.size() - 1).end()), 1e-9, move.toString());
			double length = led.stream().mapToDouble(Move::length).sum();
			for (int j = 1; j < 20; j++) {
				Point expected = frame.place(move.at(move.length() * j / 20));
				// an ellipse is not gone along at the same pace as its circle
				assertTrue(distance(expected, led, length * j / 20) < TOLERANCE, move + " after " + j + " of 20");
			}
			arcs += led.stream().anyMatch(Arc.class::isInstance) ? 1 : 0;
		}
		assertTrue(arcs > 150, arcs + " runs of arcs");
	}

	/** From the moves, near a way along them. */
	private static double distance(Point place, List<Move> moves, double way) {
		double least = Double.POSITIVE_INFINITY;
		for (double near = -3; near <= 3; near += 0.01) {
			double left = Math.max(0, way + near);
			for (Move move : moves) {
				if (left <= move.length()) {
					least = Math.min(least, move.at(left).distance(place));
					break;
				}
				left -= move.length();
			}
		}
		return least;
	}

	@Test
	void chordsAreWithinTheTolerance() {
		for (double radius : new double[] { 0.01, 0.25, 1, 30, 500 }) {
			for (double sweep : new double[] { 0.1, 1.5, -3.1, 6.2 }) {
				Arc arc = new Arc(new Point(3, 4), radius, 1, sweep);
				List<Point> chords = MachineFrame.chords(arc, TOLERANCE);
				assertEquals(0, chords.get(chords.size() - 1).distance(arc.end()), 1e-12);
				Point last = arc.start();
				for (Point end : chords) {
					double sagitta = radius - last.towards(end, 0.5).distance(arc.centre());
					assertTrue(sagitta <= Math.max(TOLERANCE, radius / 2) + 1e-9 && (radius < 0.05 || sagitta <= TOLERANCE + 1e-9),
							arc + ": " + sagitta);
					last = end;
				}
			}
		}
	}

	@Test
	void whatTheMachineDoesNotReachIsRefusedByName() throws IOException {
		Machine machine = Runs.desk(Map.of());
		Move inside = new Arc(new Point(590, 200), 9.9, -1.5, 3);
		frame(machine, Runs.LOWER_LEFT, stroke(inside)).axis(stroke(inside), TOLERANCE);
		// both ends lie within: only its belly stands out
		Move belly = new Arc(new Point(605, 200), 9.9, -1.5, 3);
		IOException refusal = assertThrows(IOException.class,
				() -> frame(machine, Runs.LOWER_LEFT, stroke(belly)).axis(stroke(belly), TOLERANCE));
		for (String word : List.of("shape", "Desk plotter", "600", "400")) {
			assertTrue(refusal.getMessage().contains(word), refusal.getMessage());
		}
		frame(Machine.plain(), new Point(0, 297), stroke(belly)).axis(stroke(belly), TOLERANCE);
	}

	@Test
	void whatNoMachineReachesIsRefusedByName() {
		Move far = new Straight(new Point(1, 1), new Point(1, -1e12));
		IOException refusal = assertThrows(IOException.class,
				() -> frame(Machine.plain(), Point.ORIGIN, stroke(far)).axis(stroke(far), TOLERANCE));
		assertTrue(refusal.getMessage().contains("shape"), refusal.getMessage());
	}

	@Test
	void placesThatAreNoneAreRefused() {
		Move nowhere = new Straight(new Point(1, 1), new Point(Double.NaN, 3));
		IOException refusal = assertThrows(IOException.class,
				() -> frame(Machine.plain(), Point.ORIGIN, stroke(nowhere)).axis(stroke(nowhere), TOLERANCE));
		assertTrue(refusal.getMessage().contains("shape"), refusal.getMessage());
		assertFalse(refusal.getMessage().contains("NaN"), refusal.getMessage());
	}
}
