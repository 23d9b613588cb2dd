package org.frisket.typography.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.lines.ArcLength;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.layout.PathLayout.Options;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PathLayoutTest {

	private static FontFace face;

	@BeforeAll
	static void openFont() throws Exception {
		face = new FontLibrary(List.of(new EmbeddedFontSource())).find("Liberation Serif");
	}

	private static SetText set(String text, Alignment alignment) {
		return TextSetter.set(text, face, Setting.ofCapHeight(10).withAlignment(alignment), Monitor.NONE);
	}

	private static Contour line(double x1, double y1, double x2, double y2) {
		return Contour.open(List.of(new Line(new Point(x1, y1), new Point(x2, y2))));
	}

	/** Points at equal steps, summed up finely: slow, simple, and nothing in common with what is tested. */
	private static Point walked(Contour contour, double wanted) {
		double done = 0;
		Point at = contour.start();
		for (Segment segment : contour.segments()) {
			for (int i = 1; i <= 20_000; i++) {
				Point next = segment.at(i / 20_000.0);
				double step = at.distance(next);
				if (done + step >= wanted) {
					return at.towards(next, (wanted - done) / step);
				}
				done += step;
				at = next;
			}
		}
		return at;
	}

	@Test
	void placesAreAtTheirLengthAlongTheCurve() {
		Random random = new Random(8);
		for (int round = 0; round < 30; round++) {
			List<Segment> segments = new ArrayList<>();
			Point at = Point.ORIGIN;
			for (int i = 0; i < 3; i++) {
				Point[] p = new Point[3];
				for (int k = 0; k < 3; k++) {
					p[k] = new Point(random.nextDouble() * 100, random.nextDouble() * 100);
				}
				segments.add(random.nextInt(4) == 0 ? new Line(at, p[2]) : new Cubic(at, p[0], p[1], p[2]));
				at = p[2];
			}
			Contour contour = Contour.open(segments);
			ArcLength lengths = new ArcLength(contour);
			assertEquals(contour.length(), lengths.length(), 1e-9);
			for (int i = 0; i < 10; i++) {
				double wanted = random.nextDouble() * lengths.length();
				ArcLength.Place place = lengths.at(wanted);
				assertTrue(walked(contour, wanted).distance(place.point()) < 1e-3,
						() -> walked(contour, wanted) + " and " + place.point());
				assertEquals(1, place.direction().length(), 1e-9);
				Point ahead = lengths.at(wanted + 1e-4).point().minus(place.point()).unit();
				assertTrue(ahead.dot(place.direction()) > 0.99 || wanted + 1e-4 > lengths.length());
			}
		}
	}

	@Test
	void straightPathKeepsTheLineAsItIs() {
		SetText straight = set("Harbour", Alignment.LEFT);
		Laid laid = PathLayout.along(straight, line(5, 7, 300, 7), Options.PLAIN);
		for (int i = 0; i < straight.letters().size(); i++) {
			Point expected = straight.letters().get(i).origin().plus(new Point(5, 7));
			assertEquals(0, expected.distance(laid.text().letters().get(i).origin()), 1e-9);
		}
		assertEquals(List.of(), laid.overflowing());
		assertEquals(295, laid.available(), 1e-9);
	}

	@Test
	void slopeTurnsTheLetters() {
		SetText straight = set("H", Alignment.LEFT);
		Letter turned = PathLayout.along(straight, line(0, 0, 0, 100), Options.PLAIN).text().letters().get(0);
		// reading downwards the heads point to the right
		assertEquals(straight.letters().get(0).outline().bounds().height(), turned.outline().bounds().width(), 1e-9);
		assertEquals(10, turned.outline().bounds().maxX(), 1e-9);
		assertEquals(0, turned.outline().bounds().minX(), 1e-9);
	}

	@Test
	void sideAndDirectionCanBeTurned() {
		SetText straight = set("H", Alignment.LEFT);
		Letter hanging = PathLayout.along(straight, line(0, 0, 100, 0), new Options(20, false, true)).text().letters()
				.get(0);
		assertEquals(0, hanging.outline().bounds().minY(), 1e-9);
		assertEquals(10, hanging.outline().bounds().maxY(), 1e-9);
		assertEquals(20, hanging.origin().x(), 1e-9);
		Letter back = PathLayout.along(straight, line(0, 0, 100, 0), new Options(20, true, false)).text().letters()
				.get(0);
		assertEquals(80, back.origin().x(), 1e-9);
		assertEquals(10, back.outline().bounds().maxY(), 1e-9);
	}

	@Test
	void circleAsAPathIsAnArc() {
		double k = 4.0 / 3 * Math.tan(Math.PI / 8) * 50;
		Contour circle = Contour.closed(List.of(
				new Cubic(new Point(0, -50), new Point(k, -50), new Point(50, -k), new Point(50, 0)),
				new Cubic(new Point(50, 0), new Point(50, k), new Point(k, 50), new Point(0, 50)),
				new Cubic(new Point(0, 50), new Point(-k, 50), new Point(-50, k), new Point(-50, 0)),
				new Cubic(new Point(-50, 0), new Point(-50, -k), new Point(-k, -50), new Point(0, -50))));
		SetText straight = set("Round the ferry", Alignment.CENTRE);
		List<Letter> path = PathLayout.along(straight, circle, Options.PLAIN).text().letters();
		List<Letter> arc = ArcLayout.along(straight, Arc.over(50)).text().letters();
		for (int i = 0; i < path.size(); i++) {
			assertEquals(0, path.get(i).origin().distance(arc.get(i).origin()), 0.03);
		}
	}

	@Test
	void overflowIsToldAndNothingIsLost() {
		SetText straight = set("HHHHH", Alignment.LEFT);
		double one = straight.letters().get(0).advance();
		Laid laid = PathLayout.along(straight, line(0, 0, 3.5 * one, 0), Options.PLAIN);
		assertEquals(List.of(3, 4), laid.overflowing());
		assertEquals(5, laid.text().letters().size());
		assertEquals(4 * one, laid.text().letters().get(4).origin().x(), 1e-9);
		assertEquals(List.of(0), PathLayout.along(straight, line(0, 0, 900, 0), new Options(-1, false, false))
				.overflowing());
		assertEquals(List.of(), PathLayout.along(straight, line(0, 0, 5 * one, 0), Options.PLAIN).overflowing());
		assertTrue(laid.needed() > laid.available());
	}

	@Test
	void closedPathIsGoneRoundFromAnyStart() {
		Contour square = Contour.polygon(
				List.of(new Point(0, 0), new Point(40, 0), new Point(40, 40), new Point(0, 40)));
		Laid laid = PathLayout.along(set("HHH", Alignment.LEFT), square, new Options(155, false, false));
		assertEquals(List.of(), laid.overflowing());
		Letter last = laid.text().letters().get(2);
		assertEquals(0, last.origin().y(), 1e-9);
	}

	@Test
	void pathWithoutLengthIsRefused() {
		SetText straight = set("H", Alignment.LEFT);
		assertThrows(IllegalArgumentException.class, () -> PathLayout.along(straight, line(3, 3, 3, 3), Options.PLAIN));
		assertThrows(IllegalArgumentException.class,
				() -> PathLayout.along(straight, Contour.open(List.of()), Options.PLAIN));
		assertThrows(IllegalArgumentException.class, () -> new Options(Double.NaN, false, false));
	}

	@Test
	void pathDataOfAJobServes() throws Exception {
		Contour wave = PathData.parse("M0 0C30 -40 60 40 90 0S150 -40 180 0").contours().get(0);
		Laid laid = PathLayout.along(set("Over the waves", Alignment.CENTRE), wave,
				new Options(wave.length() / 2, false, false));
		assertEquals(List.of(), laid.overflowing());
		double middle = laid.text().bounds().centre().x();
		assertEquals(90, middle, 8);
	}
}
