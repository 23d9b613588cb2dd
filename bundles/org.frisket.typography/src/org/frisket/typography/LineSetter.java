package org.frisket.typography;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;

/** Sets one line from x = 0 on the baseline y = 0. */
final class LineSetter {

	/** Shaped like any character that no font has: a noncharacter. */
	private static final char NOTHING = '\uFFFF';
	private static final double BLANK_SHARE_OF_EM = 0.25;

	private final FontFace face;
	private final Setting setting;
	private final double scale;
	private final int start;
	private final int end;
	private final int number;
	private final String text;
	private final char[] shaped;
	private final int[] words;
	private final List<Letter> letters = new ArrayList<>();
	private final List<MissingGlyph> missing = new ArrayList<>();
	private double pen;
	private boolean empty = true;

	LineSetter(String text, int start, int end, FontFace face, Setting setting, int number) {
		this.text = text.substring(start, end);
		this.start = start;
		this.end = end;
		this.face = face;
		this.setting = setting;
		this.number = number;
		scale = setting.capHeight() / face.capHeight();
		shaped = shapedText();
		words = words();
		Shaping shaping = new Shaping(setting.kerning(), setting.ligatures(), setting.language());
		for (Run run : Run.of(shaped)) {
			set(run, face.engine().shape(shaped, run, shaping));
		}
	}

	int start() {
		return start;
	}

	int end() {
		return end;
	}

	double width() {
		return pen;
	}

	List<Letter> letters() {
		return letters;
	}

	List<MissingGlyph> missing() {
		return missing;
	}

	private char[] shapedText() {
		char[] chars = text.toCharArray();
		int length = chars.length;
		for (int i = 0; i < length; i++) {
			if (Character.isISOControl(chars[i])) {
				chars[i] = ' ';
			} else if (Character.isHighSurrogate(chars[i]) && i + 1 < length
					&& Character.isLowSurrogate(chars[i + 1])) {
				i++;
			} else if (Character.isSurrogate(chars[i])) {
				chars[i] = NOTHING;
			}
		}
		while (length > 0 && isBlank(chars[length - 1])) {
			length--;
		}
		return Arrays.copyOf(chars, length);
	}

	private static boolean isBlank(int c) {
		return Character.isWhitespace(c) || Character.isSpaceChar(c);
	}

	/** The number of the word each character belongs to. */
	private int[] words() {
		int[] numbers = new int[shaped.length];
		int word = 0;
		for (int i = 0; i < shaped.length; i++) {
			if (i > 0 && isBlank(shaped[i - 1]) && !isBlank(shaped[i]) && hasLetterBefore(i)) {
				word++;
			}
			numbers[i] = word;
		}
		return numbers;
	}

	private boolean hasLetterBefore(int i) {
		int at = i;
		while (at > 0 && isBlank(shaped[at - 1])) {
			at--;
		}
		return at > 0;
	}

	private void set(Run run, List<PlacedGlyph> glyphs) {
		double fontPen = 0;
		int[] ends = clusterEnds(run, glyphs);
		for (int from = 0; from < glyphs.size();) {
			int cluster = glyphs.get(from).cluster();
			int to = from;
			double width = 0;
			while (to < glyphs.size() && glyphs.get(to).cluster() == cluster) {
				width += glyphs.get(to++).advance();
			}
			Cluster group = new Cluster(cluster, ends[from], glyphs.subList(from, to), fontPen, width);
			pen += set(group, pen);
			fontPen += width;
			from = to;
		}
	}

	/**
	 * @param pen   the font's own pen position before the cluster, in font units from the left end of the run
	 * @param width by how much the font moves the pen on
	 */
	private record Cluster(int start, int end, List<PlacedGlyph> glyphs, double pen, double width) {
	}

	/** @return by how much the pen moves on, in mm, tracking before the letter included */
	private double set(Cluster cluster, double left) {
		List<PlacedGlyph> present = new ArrayList<>(cluster.glyphs());
		double width = cluster.width();
		if (present.stream().anyMatch(g -> g.glyph() == 0)) {
			int first = Character.codePointAt(shaped, cluster.start(), cluster.end());
			if (isBlank(first)) {
				present.clear();
				width = BLANK_SHARE_OF_EM * face.unitsPerEm();
			} else if (reportMissing(cluster, first)) {
				return 0;
			}
			for (PlacedGlyph glyph : cluster.glyphs()) {
				if (glyph.glyph() == 0 && present.remove(glyph)) {
					width -= glyph.advance();
				}
			}
		}
		boolean unseen = width == 0 && isUnseen(shaped[cluster.start()]);
		double gap = empty || unseen ? 0 : setting.tracking();
		empty &= unseen;
		addLetter(cluster, present, left + gap, width);
		return gap + width * scale;
	}

	/** @return whether the letter itself is missing, so that nothing of the cluster is set */
	private boolean reportMissing(Cluster cluster, int first) {
		boolean whole = !face.covers(first);
		int reported = missing.size();
		for (int i = cluster.start(); i < cluster.end();) {
			int codePoint = Character.codePointAt(shaped, i, cluster.end());
			if ((whole || !face.covers(codePoint)) && !isUnseen(codePoint)) {
				missing.add(new MissingGlyph(text.codePointAt(i), start + i));
			}
			i += Character.charCount(codePoint);
		}
		if (missing.size() == reported) {
			missing.add(new MissingGlyph(text.codePointAt(cluster.start()), start + cluster.start()));
			return true;
		}
		return whole;
	}

	/** Joiners, direction marks and variation selectors, which no font needs to show. */
	private static boolean isUnseen(int codePoint) {
		return Character.getType(codePoint) == Character.FORMAT || codePoint >= 0xFE00 && codePoint <= 0xFE0F
				|| codePoint >= 0xE0100 && codePoint <= 0xE01EF;
	}

	private void addLetter(Cluster cluster, List<PlacedGlyph> glyphs, double left, double width) {
		List<Contour> contours = new ArrayList<>();
		List<Integer> numbers = new ArrayList<>();
		for (PlacedGlyph glyph : glyphs) {
			Transform place = new Transform(scale, 0, 0, scale, left + (glyph.x() - cluster.pen()) * scale,
					glyph.y() * scale);
			contours.addAll(face.outline(glyph.glyph()).transformed(place).contours());
			numbers.add(glyph.glyph());
		}
		if (!contours.isEmpty()) {
			letters.add(new Letter(start + cluster.start(), start + cluster.end(), number, words[cluster.start()],
					numbers, new Outline(contours), new Point(left, 0), width * scale));
		}
	}

	/** For each glyph the end of its cluster, which is where the next cluster of the run begins in the text. */
	private static int[] clusterEnds(Run run, List<PlacedGlyph> glyphs) {
		int[] starts = glyphs.stream().mapToInt(PlacedGlyph::cluster).sorted().distinct().toArray();
		int[] ends = new int[glyphs.size()];
		for (int i = 0; i < ends.length; i++) {
			int next = Arrays.binarySearch(starts, glyphs.get(i).cluster()) + 1;
			ends[i] = next < starts.length ? starts[next] : run.limit();
		}
		return ends;
	}
}
