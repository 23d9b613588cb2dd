package org.frisket.export.tests.gcode;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Follows a program as RS274/NGC says, with arithmetic of its own: lengths with the tool down and up, and all that a control
 * would stop at.
 */
final class GcodeReader {

	private static final Pattern WORD = Pattern.compile("([A-Z])([+-]?[0-9]*\\.?[0-9]*)");
	private static final Pattern LINE = Pattern.compile("(?:N\\d{1,5} )?((?:[A-Z][+-]?(?:\\d+\\.?\\d*|\\.\\d+) ?)*)");

	/** With Z below 0, or after M3: the tool is down. */
	private boolean down;
	private boolean known;
	private int motion = -1;
	private double x;
	private double y;
	private double feed;
	private boolean ended;

	double worked;
	double travelled;
	double worstArc;
	double seconds;
	int arcs;
	int strokes;
	int stops;
	final List<Integer> tools = new ArrayList<>();
	final List<String> faults = new ArrayList<>();
	double minX = Double.POSITIVE_INFINITY;
	double minY = Double.POSITIVE_INFINITY;
	double maxX = Double.NEGATIVE_INFINITY;
	double maxY = Double.NEGATIVE_INFINITY;

	GcodeReader(String program) {
		for (String line : program.split("\n")) {
			if (line.length() > 255) {
				faults.add("too long: " + line);
			}
			if (!line.equals("%")) {
				block(line);
			}
		}
		if (!ended) {
			faults.add("no end");
		}
		if (down || x != 0 || y != 0) {
			faults.add("left at " + x + ", " + y);
		}
	}

	private void block(String line) {
		String words = line.replaceAll("\\([^()]*\\)", "").strip();
		if (!LINE.matcher(words).matches()) {
			faults.add("not to be read: " + line);
			return;
		}
		if (ended && !words.isEmpty()) {
			faults.add("after the end: " + line);
		}
		Double toX = null;
		Double toY = null;
		Double toZ = null;
		Double i = null;
		Double j = null;
		Double radius = null;
		Double dwell = null;
		int given = -1;
		int tool = -1;
		Matcher word = WORD.matcher(words);
		while (word.find()) {
			double value = Double.parseDouble(word.group(2));
			switch (word.group(1)) {
			case "X" -> toX = value;
			case "Y" -> toY = value;
			case "Z" -> toZ = value;
			case "I" -> i = value;
			case "J" -> j = value;
			case "R" -> radius = value;
			case "F" -> feed = value;
			case "P" -> dwell = value;
			case "T" -> tool = (int) value;
			case "S", "N" -> {
			}
			case "G" -> {
				if (value <= 4) {
					given = (int) value;
				}
			}
			case "M" -> {
				switch ((int) value) {
				case 0 -> stops++;
				case 2 -> ended = true;
				case 3 -> down = true;
				case 5 -> {
					down = false;
					known = true;
				}
				case 6 -> tools.add(tool);
				default -> faults.add("not known: " + line);
				}
			}
			default -> faults.add("not known: " + line);
			}
		}
		if (given == 4) {
			seconds += dwell;
			return;
		}
		if (given >= 0) {
			motion = given;
		}
		if (toZ != null) {
			if (toX != null || toY != null) {
				faults.add("up or down while it moves: " + line);
			}
			down = toZ < 0;
			known = true;
		}
		if (toX != null || toY != null) {
			move(line, toX == null ? x : toX, toY == null ? y : toY, i, j, radius);
		}
	}

	private void move(String line, double toX, double toY, Double i, Double j, Double radius) {
		if (!known) {
			faults.add("moves before the tool is up: " + line);
		}
		if (motion == 0 && down || motion > 0 && !down) {
			faults.add((down ? "rapid with the tool down: " : "worked with the tool up: ") + line);
		}
		if (motion > 0 && !(feed > 0)) {
			faults.add("no feed: " + line);
		}
		double chord = Math.hypot(toX - x, toY - y);
		double length = motion < 2 ? chord : arc(line, toX, toY, chord, i, j, radius);
		if (motion == 0) {
			travelled += length;
		} else {
			strokes += worked == 0 || lastRapid ? 1 : 0;
			worked += length;
			seconds += length / feed * 60;
			minX = Math.min(minX, Math.min(x, toX));
			minY = Math.min(minY, Math.min(y, toY));
			maxX = Math.max(maxX, Math.max(x, toX));
			maxY = Math.max(maxY, Math.max(y, toY));
		}
		lastRapid = motion == 0;
		x = toX;
		y = toY;
	}

	private boolean lastRapid;

	private double arc(String line, double toX, double toY, double chord, Double i, Double j, Double radius) {
		arcs++;
		boolean clockwise = motion == 2;
		if (chord == 0) {
			faults.add("a whole circle: " + line);
		}
		if (radius != null) {
			// from the chord and the radius, the shorter way round
			if (radius < chord / 2 - 1e-3) {
				faults.add("a radius below half the chord: " + line);
			}
			return 2 * radius * Math.asin(Math.min(1, chord / 2 / radius));
		}
		double cx = x + i;
		double cy = y + j;
		double first = Math.hypot(i, j);
		worstArc = Math.max(worstArc, Math.abs(first - Math.hypot(toX - cx, toY - cy)));
		double turn = Math.atan2(toY - cy, toX - cx) - Math.atan2(y - cy, x - cx);
		if (clockwise) {
			turn = -turn;
		}
		if (turn <= 0) {
			turn += 2 * Math.PI;
		}
		if (turn > Math.PI) {
			faults.add("more than half a turn: " + line);
		}
		return first * turn;
	}
}
