package org.frisket.typography;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;

/** Shapes a stretch of a paragraph to cells, from left to right, and finds out what its fonts lack. */
final class CellShaper {

	private static final double BLANK_SHARE_OF_EM = 0.25;

	private final Paragraph paragraph;
	private final char[] shaped;
	private final List<Cell> cells = new ArrayList<>();
	private final List<MissingGlyph> missing = new ArrayList<>();

	/** Blanks before {@code to} are left out. */
	CellShaper(Paragraph paragraph, int from, int to) {
		this.paragraph = paragraph;
		shaped = paragraph.shaped();
		for (Run run : paragraph.runs(from, paragraph.trimmed(from, to))) {
			TextStyle style = paragraph.style(run.start());
			shape(run, style, style.face().engine().shape(shaped, run, style.shaping()));
		}
	}

	List<Cell> cells() {
		return cells;
	}

	/** In no particular order. */
	List<MissingGlyph> missing() {
		return missing;
	}

	private void shape(Run run, TextStyle style, List<PlacedGlyph> glyphs) {
		double pen = 0;
		int[] ends = clusterEnds(run, glyphs);
		for (int from = 0; from < glyphs.size();) {
			int cluster = glyphs.get(from).cluster();
			int to = from;
			double width = 0;
			while (to < glyphs.size() && glyphs.get(to).cluster() == cluster) {
				width += glyphs.get(to++).advance();
			}
			add(cluster, ends[from], glyphs.subList(from, to), pen, width, style);
			pen += width;
			from = to;
		}
	}

	/** @param width by how much the font moves the pen on, in font units */
	private void add(int start, int end, List<PlacedGlyph> glyphs, double pen, double width, TextStyle style) {
		List<PlacedGlyph> present = new ArrayList<>(glyphs);
		int first = Character.codePointAt(shaped, start, end);
		double left = width;
		if (present.stream().anyMatch(g -> g.glyph() == 0)) {
			if (Paragraph.isBlank(first)) {
				present.clear();
				left = BLANK_SHARE_OF_EM * style.face().unitsPerEm();
			} else if (reportMissing(start, end, first, style.face())) {
				return;
			}
			for (PlacedGlyph glyph : glyphs) {
				if (glyph.glyph() == 0 && present.remove(glyph)) {
					left -= glyph.advance();
				}
			}
		}
		boolean unseen = left == 0 && isUnseen(shaped[start]);
		cells.add(new Cell(start, end, present, pen, left * style.scale(), Paragraph.isBlank(first), unseen, style));
	}

	/** @return whether the letter itself is missing, so that nothing of the cluster is set */
	private boolean reportMissing(int start, int end, int first, FontFace face) {
		boolean whole = !face.covers(first);
		int reported = missing.size();
		for (int i = start; i < end;) {
			int codePoint = Character.codePointAt(shaped, i, end);
			if ((whole || !face.covers(codePoint)) && !isUnseen(codePoint)) {
				missing.add(missing(i));
			}
			i += Character.charCount(codePoint);
		}
		if (missing.size() == reported) {
			missing.add(missing(start));
			return true;
		}
		return whole;
	}

	private MissingGlyph missing(int index) {
		return new MissingGlyph(paragraph.text().codePointAt(index), paragraph.start() + index);
	}

	/** Joiners, direction marks and variation selectors, which no font needs to show. */
	private static boolean isUnseen(int codePoint) {
		return Character.getType(codePoint) == Character.FORMAT || codePoint >= 0xFE00 && codePoint <= 0xFE0F
				|| codePoint >= 0xE0100 && codePoint <= 0xE01EF;
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
