package org.frisket.typography.stroke;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.typography.UnreadableFontException;

/**
 * Reads {@code .jhf} files: a record for every glyph, with its number in columns 1 to 5, the count of coordinate pairs
 * in columns 6 to 8, and then the pairs, each coordinate as a letter's distance from R. The first pair holds the left
 * and right edge; a blank and R lift the pen. A record may go on in the next line.
 * <p>
 * Files of 95 or 96 records hold the characters from blank on in the order of ASCII, whatever their numbers say. Of
 * others the glyphs stand at U+E000 and on, in the private use area.
 */
public final class HersheyReader {

	/** What its makers ask to go with the data. */
	public static final String NOTICE = "The Hershey Fonts were originally created by Dr. A. V. Hershey while working "
			+ "at the U. S. National Bureau of Standards. The format of the Font data in this distribution was "
			+ "originally created by James Hurt, Cognition, Inc., 900 Technology Park Drive, Billerica, MA 01821.";

	private static final int HEAD = 8;
	private static final int ASCII = 96;
	private static final int PRIVATE_USE = 0xE000;
	private static final int MOST_GLYPHS = 6_400;
	private static final int LARGEST = 4 << 20;

	private final String font;
	private final List<Record> records = new ArrayList<>();

	private record Record(double left, double right, List<List<Point>> strokes) {
	}

	private HersheyReader(String font) {
		this.font = font;
	}

	/** @param name of the font, and what errors call it */
	public static StrokeFont read(byte[] file, String name) throws UnreadableFontException {
		if (file.length > LARGEST) {
			throw new UnreadableFontException(name, "it is too big for a stroke font");
		}
		HersheyReader reader = new HersheyReader(name);
		reader.readRecords(new String(file, StandardCharsets.ISO_8859_1));
		return reader.font();
	}

	private void readRecords(String text) throws UnreadableFontException {
		String[] lines = text.split("\\r?\\n|\\r", -1);
		for (int i = 0; i < lines.length; i++) {
			if (lines[i].isBlank()) {
				continue;
			}
			int number = i + 1;
			StringBuilder record = new StringBuilder(lines[i]);
			int pairs = pairs(lines[i], number);
			while (record.length() < HEAD + 2 * pairs && i + 1 < lines.length && !lines[i + 1].isEmpty()) {
				record.append(lines[++i]);
			}
			if (record.length() < HEAD + 2 * pairs) {
				throw new UnreadableFontException(font, "the record in line " + number + " is cut off: " + pairs
						+ " pairs of coordinates are said to be in it");
			}
			if (records.size() == MOST_GLYPHS) {
				throw new UnreadableFontException(font, "it has more than " + MOST_GLYPHS + " glyphs");
			}
			records.add(record(record.substring(HEAD, HEAD + 2 * pairs)));
		}
	}

	private int pairs(String line, int number) throws UnreadableFontException {
		String count = line.length() < HEAD + 2 ? "" : line.substring(HEAD - 3, HEAD).strip();
		if (!count.matches("\\d{1,3}") || Integer.parseInt(count) < 1) {
			throw new UnreadableFontException(font, "line " + number + " is no record of a stroke font");
		}
		return Integer.parseInt(count);
	}

	private static Record record(String pairs) {
		List<List<Point>> strokes = new ArrayList<>();
		List<Point> stroke = new ArrayList<>();
		for (int i = 2; i < pairs.length(); i += 2) {
			if (pairs.charAt(i) == ' ' && pairs.charAt(i + 1) == 'R') {
				strokes.add(stroke);
				stroke = new ArrayList<>();
			} else {
				stroke.add(new Point(pairs.charAt(i) - 'R', pairs.charAt(i + 1) - 'R'));
			}
		}
		strokes.add(stroke);
		return new Record(pairs.charAt(0) - 'R', pairs.charAt(1) - 'R', strokes);
	}

	private StrokeFont font() throws UnreadableFontException {
		boolean ascii = records.size() == ASCII || records.size() == ASCII - 1;
		if (records.isEmpty()) {
			throw new UnreadableFontException(font, "it holds no glyphs");
		}
		Record capital = ascii ? records.get('H' - ' ') : records.get(0);
		double top = bound(capital, true);
		double baseline = bound(capital, false);
		if (!(baseline > top)) {
			// the size that most of these fonts were drawn to
			top = -12;
			baseline = 9;
		}
		Map<String, StrokeGlyph> glyphs = new TreeMap<>();
		for (int i = 0; i < records.size(); i++) {
			Record record = records.get(i);
			Outline strokes = outline(record).transformed(Transform.translation(-record.left(), -baseline));
			glyphs.put(Character.toString(ascii ? ' ' + i : PRIVATE_USE + i),
					new StrokeGlyph(strokes, Math.max(0, record.right() - record.left())));
		}
		return new StrokeFont(font, glyphs, baseline - top, NOTICE);
	}

	private static double bound(Record record, boolean top) {
		double bound = top ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
		for (List<Point> stroke : record.strokes()) {
			for (Point point : stroke) {
				bound = top ? Math.min(bound, point.y()) : Math.max(bound, point.y());
			}
		}
		return bound;
	}

	/** A stroke of one point is a dot, which has no extent and is left out, as are repeated points. */
	private static Outline outline(Record record) {
		List<Contour> contours = new ArrayList<>();
		for (List<Point> stroke : record.strokes()) {
			List<Segment> segments = new ArrayList<>();
			for (int i = 1; i < stroke.size(); i++) {
				if (!stroke.get(i).equals(stroke.get(i - 1))) {
					segments.add(new Line(stroke.get(i - 1), stroke.get(i)));
				}
			}
			if (!segments.isEmpty()) {
				contours.add(Contour.open(segments));
			}
		}
		return new Outline(contours);
	}
}
