package org.frisket.material.trials;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Figures and capitals of single strokes for labels that a pen draws, made for this. Each stands on a grid of four by
 * six; a table entry names the points of its strokes as column and row, strokes parted by a slash.
 */
final class StrokeFigures {

	private static final int COLUMNS = 4;
	private static final double ROWS = 6;
	/** From one character to the next, in columns of the grid. */
	private static final double ADVANCE = 5.6;
	private static final Map<Character, String> STROKES = new TreeMap<>();

	static {
		String[] figures = { "10 30 41 45 36 16 05 01 10", "11 20 26/16 36", "01 10 30 41 42 06 46",
				"00 40 23 33 44 45 36 16 05", "36 30 04 44", "40 00 03 33 44 45 36 06",
				"30 11 03 05 16 36 45 44 33 03", "00 40 16", "13 02 01 10 30 41 42 33 13 04 05 16 36 45 44 33",
				"43 13 02 01 10 30 41 43 35 16" };
		String[] capitals = { "06 20 46/14 34", "06 00 30 41 42 33 03/33 44 45 36 06", "41 30 10 01 05 16 36 45",
				"06 00 20 42 44 26 06", "40 00 06 46/03 33", "40 00 06/03 33", "41 30 10 01 05 16 36 45 43 23",
				"00 06/40 46/03 43", "10 30/20 26/16 36", "30 35 26 16 05", "00 06/40 03 46", "00 06 46",
				"06 00 23 40 46", "06 00 46 40", "10 30 41 45 36 16 05 01 10", "06 00 30 41 42 33 03",
				"10 30 41 45 36 16 05 01 10/34 46", "06 00 30 41 42 33 03/23 46",
				"41 30 10 01 02 13 33 44 45 36 16 05", "00 40/20 26", "00 05 16 36 45 40", "00 26 40",
				"00 16 23 36 40", "00 46/40 06", "00 23 40/23 26", "00 40 06 46" };
		for (int i = 0; i < figures.length; i++) {
			STROKES.put((char) ('0' + i), figures[i]);
		}
		for (int i = 0; i < capitals.length; i++) {
			STROKES.put((char) ('A' + i), capitals[i]);
		}
		STROKES.put('.', "25 26");
		STROKES.put('-', "13 33");
		STROKES.put('/', "06 40");
	}

	private StrokeFigures() {
	}

	/** Width of a text in mm. */
	static double width(String text, double height) {
		return text.isEmpty() ? 0 : ((text.length() - 1) * ADVANCE + COLUMNS) * height / ROWS;
	}

	/**
	 * Adds the strokes of a text as path data; small letters become capitals, what is not in the table a space.
	 *
	 * @param x      left end in mm
	 * @param y      top in mm, y down
	 * @param height of a capital in mm
	 */
	static void write(String text, double x, double y, double height, StringBuilder path) {
		double unit = height / ROWS;
		String capitals = text.toUpperCase(Locale.ROOT);
		for (int i = 0; i < capitals.length(); i++) {
			String strokes = STROKES.getOrDefault(capitals.charAt(i), "");
			for (String stroke : strokes.isEmpty() ? new String[0] : strokes.split("/")) {
				char command = 'M';
				for (String point : stroke.split(" ")) {
					path.append(command).append(Sweep.plain(x + (i * ADVANCE + point.charAt(0) - '0') * unit)).append(' ')
							.append(Sweep.plain(y + (point.charAt(1) - '0') * unit));
					command = 'L';
				}
			}
		}
	}
}
