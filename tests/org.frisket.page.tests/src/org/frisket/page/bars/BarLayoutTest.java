package org.frisket.page.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarLayoutTest {

	private static final double WIDTH = 180;
	private static final double CAP = 2;

	private static BarLayout layout(BarChart chart, double least) throws Exception {
		return BarLayout.of(chart, WIDTH, least, CAP, (text, height) -> text.length() * height * 0.7,
				(value, decimals) -> String.format("%." + decimals + "f", value));
	}

	private static BarChart chance(Random random) {
		int parts = 1 + random.nextInt(6);
		List<BarChart.Bar> bars = new ArrayList<>();
		double size = Math.pow(10, random.nextInt(6) - 2);
		for (int i = random.nextInt(12); i >= 0; i--) {
			List<OptionalDouble> values = new ArrayList<>();
			for (int part = 0; part < parts; part++) {
				values.add(random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble() * size));
			}
			bars.add(new BarChart.Bar("bar of any length".substring(random.nextInt(16)), values));
		}
		List<String> names = new ArrayList<>();
		for (int part = 0; part < parts; part++) {
			names.add("part " + part);
		}
		return new BarChart("Chart", "day", "unit", names, bars, random.nextBoolean(), random.nextInt(3), 0);
	}

	@Test
	void everythingIsInsideAndLengthsAreAsTheValues() throws Exception {
		Random random = new Random(7);
		for (int i = 0; i < 500; i++) {
			BarChart chart = chance(random);
			BarLayout layout = layout(chart, random.nextInt(300));
			double left = layout.lines().get(0).x();
			double perUnit = Double.NaN;
			for (BarLayout.Box box : layout.boxes()) {
				assertTrue(box.x() >= 0 && box.x() + box.width() <= WIDTH + 1e-9 && box.y() + box.height() <= layout.height(),
						box.toString());
				if (box.bar() >= 0) {
					double value = chart.bars().get(box.bar()).values().get(box.part()).getAsDouble();
					perUnit = Double.isNaN(perUnit) ? box.width() / value : perUnit;
					assertEquals(value * perUnit, box.width(), 1e-6 * WIDTH);
					assertTrue(box.x() >= left - 1e-9);
				}
			}
			for (BarLayout.Word word : layout.words()) {
				assertTrue(word.x() >= -1e-9 && word.baseline() <= layout.height(), word.toString());
			}
			notAcross(layout.boxes());
		}
	}

	private static void notAcross(List<BarLayout.Box> boxes) {
		for (BarLayout.Box one : boxes) {
			for (BarLayout.Box other : boxes) {
				boolean apart = one == other || one.x() + one.width() <= other.x() + 1e-9 || other.x() + other.width() <= one.x() + 1e-9
						|| one.y() + one.height() <= other.y() + 1e-9 || other.y() + other.height() <= one.y() + 1e-9;
				assertTrue(apart, one + " lies on " + other);
			}
		}
	}

	@ParameterizedTest
	@CsvSource({ "0, 0, 1, 1", "2, 0, 1, 2", "7, 0, 2, 8", "100, 0, 20, 100", "101, 0, 50, 150", "0.3, 2, 0.1, 0.3",
			"0.3, 0, 1, 1" })
	void scalesAreRound(double most, int decimals, double step, double end) {
		Scale scale = Scale.to(most, 5, decimals);
		assertEquals(step, scale.step(), 1e-9);
		assertEquals(end, scale.end(), 1e-9);
	}

	@Test
	void partsAreToldApartByTheirPattern() {
		Set<List<Pattern.Stroke>> seen = new HashSet<>();
		for (Pattern pattern : Pattern.values()) {
			List<Pattern.Stroke> strokes = pattern.strokes(10, 20, 30, 8, 2);
			assertTrue(strokes.isEmpty() == (pattern == Pattern.SOLID || pattern == Pattern.EMPTY), pattern.toString());
			for (Pattern.Stroke stroke : strokes) {
				assertTrue(inside(stroke.x1(), stroke.y1()) && inside(stroke.x2(), stroke.y2()), pattern + ": " + stroke);
			}
			seen.add(strokes);
		}
		assertEquals(4, seen.size(), "solid and empty have no strokes, and differ by their fill");
	}

	private static boolean inside(double x, double y) {
		return x >= 10 - 1e-9 && x <= 40 + 1e-9 && y >= 20 - 1e-9 && y <= 28 + 1e-9;
	}

	@Test
	void barsWithoutAllPartsAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> new BarChart("", "", "", List.of("a", "b"),
				List.of(new BarChart.Bar("x", List.of(OptionalDouble.of(1)))), true, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new BarChart.Bar("x", List.of(OptionalDouble.of(-1))));
	}
}
