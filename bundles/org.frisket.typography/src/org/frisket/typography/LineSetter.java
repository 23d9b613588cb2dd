package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/** Sets one line from x = 0 on the baseline y = 0. */
final class LineSetter {

	private final Paragraph paragraph;
	private final int from;
	private final int to;
	private final boolean lastOfSeveral;
	private final List<Cell> cells;
	private final List<MissingGlyph> missing;
	private final int blanks;
	private final int gaps;
	private final double width;
	private double stretched;

	/** @param lastOfSeveral whether it is what remained of a paragraph that was broken into lines */
	LineSetter(Paragraph paragraph, int from, int to, boolean lastOfSeveral) {
		this.paragraph = paragraph;
		this.from = from;
		this.to = to;
		this.lastOfSeveral = lastOfSeveral;
		CellShaper shaper = new CellShaper(paragraph, from, to);
		cells = shaper.cells();
		missing = shaper.missing();
		blanks = (int) cells.stream().filter(Cell::blank).count();
		gaps = (int) Math.max(0, cells.stream().filter(c -> !c.unseen()).count() - 1);
		width = cells.stream().mapToDouble(Cell::advance).sum() + gaps * paragraph.setting().tracking()
				+ blanks * paragraph.setting().wordSpacing();
	}

	/** Index of the first character in the whole text. */
	int start() {
		return paragraph.start() + from;
	}

	/** Index after the last character. */
	int end() {
		return paragraph.start() + to;
	}

	boolean isLastOfSeveral() {
		return lastOfSeveral;
	}

	boolean runsToTheLeft() {
		return paragraph.runsToTheLeft();
	}

	/** From the left end to the last letter's advance in mm. */
	double width() {
		return width + stretched;
	}

	/** The tallest cap height in it in mm. */
	double capHeight() {
		return cells.stream().mapToDouble(c -> c.style().capHeight()).max()
				.orElse(paragraph.setting().capHeight());
	}

	List<MissingGlyph> missing() {
		return missing;
	}

	/** Widens the blanks, or for want of blanks the gaps between letters, until the line is as wide as asked. */
	void stretchTo(double wanted) {
		if (wanted > width && gaps > 0) {
			stretched = wanted - width;
		}
	}

	/** @param number of the line */
	List<Letter> letters(int number) {
		List<Letter> letters = new ArrayList<>();
		int[] words = words();
		double perBlank = paragraph.setting().wordSpacing() + (blanks > 0 ? stretched / blanks : 0);
		double perGap = paragraph.setting().tracking() + (blanks == 0 && gaps > 0 ? stretched / gaps : 0);
		double pen = 0;
		boolean first = true;
		for (Cell cell : cells) {
			pen += first || cell.unseen() ? 0 : perGap;
			first &= cell.unseen();
			Outline outline = cell.outline();
			if (!outline.isEmpty()) {
				letters.add(new Letter(paragraph.start() + cell.start(), paragraph.start() + cell.end(), number,
						words[cell.start() - from], cell.numbers(), outline.transformed(Transform.translation(pen, 0)),
						new Point(pen, 0), cell.advance(), cell.style().span()));
			}
			pen += cell.advance() + (cell.blank() ? perBlank : 0);
		}
		return letters;
	}

	/** The number of the word each character of the line belongs to. */
	private int[] words() {
		int[] numbers = new int[to - from];
		int word = 0;
		boolean letterBefore = false;
		for (int i = 0; i < numbers.length; i++) {
			boolean blank = paragraph.isBlankAt(from + i);
			if (!blank && i > 0 && letterBefore && paragraph.isBlankAt(from + i - 1)) {
				word++;
			}
			letterBefore |= !blank;
			numbers[i] = word;
		}
		return numbers;
	}
}
