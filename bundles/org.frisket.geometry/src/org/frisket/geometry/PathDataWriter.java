package org.frisket.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes contours as compact SVG path data. */
final class PathDataWriter {

	private static final int MOST_DECIMALS = 12;
	/** As many as it takes. */
	private static final int EXACT = -1;
	/** Below this a double holds every whole number. */
	private static final double EXACT_WHOLE = 0x1p53;

	private final StringBuilder text = new StringBuilder();
	private final int decimals;
	private final double scale;
	private char command;

	/** Writes every coordinate exactly. */
	PathDataWriter() {
		decimals = EXACT;
		scale = 1;
	}

	PathDataWriter(int decimals) {
		if (decimals < 0 || decimals > MOST_DECIMALS) {
			throw new IllegalArgumentException("decimals must be 0 to " + MOST_DECIMALS + ", got " + decimals);
		}
		this.decimals = decimals;
		this.scale = Math.pow(10, decimals);
	}

	void write(Contour contour) {
		List<Segment> segments = contour.segments().stream().filter(this::hasExtent).toList();
		if (segments.isEmpty()) {
			return;
		}
		point('M', contour.start());
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			if (segment instanceof Cubic cubic) {
				point('C', cubic.control1());
				point('C', cubic.control2());
				point('C', cubic.end());
			} else if (!contour.isClosed() || i < segments.size() - 1) {
				point('L', segment.end());
			}
		}
		if (contour.isClosed()) {
			text.append('Z');
			command = 'Z';
		}
	}

	private boolean hasExtent(Segment segment) {
		return !same(segment.start(), segment.end()) || segment instanceof Cubic cubic
				&& !(same(cubic.start(), cubic.control1()) && same(cubic.start(), cubic.control2()));
	}

	private boolean same(Point one, Point other) {
		return number(one.x()).equals(number(other.x())) && number(one.y()).equals(number(other.y()));
	}

	private void point(char letter, Point point) {
		boolean first = letter != command;
		if (first) {
			text.append(letter);
			command = letter;
		}
		append(number(point.x()), first);
		append(number(point.y()), false);
	}

	private void append(String number, boolean afterLetter) {
		if (!afterLetter && number.charAt(0) != '-') {
			text.append(' ');
		}
		text.append(number);
	}

	private String number(double value) {
		if (decimals == EXACT && Double.isFinite(value)) {
			return exact(value);
		}
		double scaled = Math.rint(value * scale);
		if (!(Math.abs(scaled) < EXACT_WHOLE)) {
			if (!Double.isFinite(value)) {
				throw new IllegalArgumentException("coordinate is not finite: " + value);
			}
			BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
			return rounded.toPlainString();
		}
		return BigDecimal.valueOf((long) scaled, decimals).stripTrailingZeros().toPlainString();
	}

	private static String exact(double value) {
		BigDecimal shortest = BigDecimal.valueOf(value).stripTrailingZeros();
		String plain = shortest.toPlainString();
		String scientific = shortest.toString();
		return plain.length() <= scientific.length() ? plain : scientific;
	}

	@Override
	public String toString() {
		return text.toString();
	}
}
