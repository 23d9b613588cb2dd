package org.frisket.export.pdf;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.frisket.geometry.Bounds;

/**
 * One path or picture of a page as its operators say, read without the library that wrote them.
 *
 * @param groups    optional content it stands in, from the outside: names of the page's properties
 * @param operator  that painted it
 * @param space     of the colour of strokes: a name of the page's resources
 * @param state     the last graphics state set: a name of the page's resources
 * @param width     of lines
 * @param subpaths  how many there are
 * @param curves    how many cubic curves it has
 * @param closed    how many subpaths are closed
 * @param area      enclosed, with the sign of the way round
 * @param bounds    of all its points, those that only control included
 */
record Painted(List<String> groups, String operator, String space, String state, double width, int subpaths, int curves,
		int closed, double area, Bounds bounds) {

	/** The state of the reader; pushed by q and popped by Q. */
	private record State(String space, String graphics, double width) {
	}

	/** @throws IllegalArgumentException for an operator that it does not know */
	static List<Painted> of(String content) {
		return new Reader().read(content);
	}

	private static final class Reader {

		private final List<Painted> painted = new ArrayList<>();
		private final Deque<State> saved = new ArrayDeque<>();
		private final Deque<String> groups = new ArrayDeque<>();
		private final List<String> operands = new ArrayList<>();
		private State state = new State("", "", 1);
		private int subpaths;
		private int curves;
		private int closed;
		private double area;
		private Bounds bounds = Bounds.EMPTY;
		private double startX;
		private double startY;
		private double x;
		private double y;

		List<Painted> read(String content) {
			for (String token : content.trim().split("\\s+")) {
				if (token.matches("[-+.\\d].*|/.*|[\\[<(].*|true|false")) {
					operands.add(token);
				} else {
					operator(token);
					operands.clear();
				}
			}
			return painted;
		}

		private void operator(String operator) {
			switch (operator) {
			case "q" -> saved.push(state);
			case "Q" -> state = saved.pop();
			case "w" -> state = new State(state.space(), state.graphics(), number(0));
			case "gs" -> state = new State(state.space(), operands.get(0), state.width());
			case "CS" -> state = new State(operands.get(0), state.graphics(), state.width());
			case "RG" -> state = new State("/DeviceRGB", state.graphics(), state.width());
			case "BDC" -> groups.addLast(operands.get(1));
			case "EMC" -> groups.removeLast();
			case "m" -> {
				subpaths++;
				startX = number(0);
				startY = number(1);
				to(startX, startY);
			}
			case "l" -> line(number(0), number(1));
			case "c" -> curve(number(0), number(1), number(2), number(3), number(4), number(5));
			case "h" -> {
				closed++;
				line(startX, startY);
			}
			case "S", "f", "Do" -> paint(operator);
			case "SCN", "SC", "scn", "sc", "cs", "rg", "cm", "BT", "ET", "Tf", "Tm", "Tj" -> {
				// no matter here
			}
			default -> throw new IllegalArgumentException(operator + " of " + operands);
			}
		}

		private double number(int at) {
			return Double.parseDouble(operands.get(at));
		}

		private void to(double newX, double newY) {
			x = newX;
			y = newY;
			bounds = bounds.with(new Bounds(x, y, x, y));
		}

		private void line(double newX, double newY) {
			area += (x * newY - newX * y) / 2;
			to(newX, newY);
		}

		/** Green's theorem in closed form for a cubic of Bernstein polynomials. */
		private void curve(double x1, double y1, double x2, double y2, double x3, double y3) {
			curves++;
			area += (6 * cross(x, y, x1, y1) + 3 * cross(x, y, x2, y2) + cross(x, y, x3, y3) + 3 * cross(x1, y1, x2, y2)
					+ 3 * cross(x1, y1, x3, y3) + 6 * cross(x2, y2, x3, y3)) / 20;
			to(x1, y1);
			to(x2, y2);
			to(x3, y3);
		}

		private static double cross(double ax, double ay, double bx, double by) {
			return ax * by - bx * ay;
		}

		private void paint(String operator) {
			painted.add(new Painted(List.copyOf(groups), operator, state.space(), state.graphics(), state.width(), subpaths,
					curves, closed, area, bounds));
			subpaths = 0;
			curves = 0;
			closed = 0;
			area = 0;
			bounds = Bounds.EMPTY;
		}
	}
}
