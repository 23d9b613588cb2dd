package org.frisket.typography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * Sets a text letter under letter. Every line of the text becomes a column, the first one at the left; letters are
 * centred in their column by their advances, upright, with the forms that the font has for lines that run down
 * (feature {@code vert}).
 * <p>
 * From one letter's baseline to the next is the line distance of the setting, by the cap height of the lower one, and
 * the tracking. A blank moves on by half a line distance and the word spacing. Between columns the same room is left
 * as between lines set across. The alignment's left, centre and right mean top, middle and bottom here; justified
 * columns are stretched to the tallest one. The measure has no effect.
 */
public final class StackSetter {

	private static final double BLANK_SHARE = 0.5;

	private StackSetter() {
	}

	/** @see #set(String, FontFace, Setting, List, Monitor) */
	public static SetText set(String text, FontFace face, Setting setting, Monitor monitor) {
		return set(text, face, setting, List.of(), monitor);
	}

	/**
	 * The first baseline of the tallest column lies at y = 0, the left end of the first column at x = 0. A line of the
	 * result is a column: its left end and width, and as its baseline that of its first letter.
	 *
	 * @throws IllegalArgumentException if the text is longer than {@value TextSetter#LONGEST_TEXT} characters, or
	 *                                  spans overlap
	 */
	public static SetText set(String text, FontFace face, Setting setting, List<TextSpan> spans, Monitor monitor) {
		List<TextSpan> ordered = TextSpan.ordered(spans);
		List<Column> columns = new ArrayList<>();
		List<MissingGlyph> missing = new ArrayList<>();
		for (Paragraph paragraph : TextSetter.paragraphs(text, face, setting, ordered, true)) {
			monitor.check();
			CellShaper shaper = new CellShaper(paragraph, 0, paragraph.length());
			missing.addAll(shaper.missing());
			columns.add(new Column(paragraph, shaper.cells(), setting));
		}
		double tallest = columns.stream().mapToDouble(Column::depth).max().orElse(0);
		double room = Math.max(0, setting.lineDistance() - setting.capHeight());
		List<Letter> letters = new ArrayList<>();
		List<TextLine> lines = new ArrayList<>();
		double left = 0;
		for (Column column : columns) {
			double top = setting.alignment() == Alignment.JUSTIFY ? 0
					: TextSetter.left(setting.alignment(), tallest, column.depth());
			double stretch = setting.alignment() == Alignment.JUSTIFY ? column.stretch(tallest) : 0;
			column.addLetters(lines.size(), left, top, stretch, letters);
			lines.add(new TextLine(column.paragraph.start(), column.paragraph.start() + column.paragraph.length(), left,
					column.width, top));
			left += column.width + room;
		}
		missing.sort(Comparator.comparingInt(MissingGlyph::index));
		return new SetText(text, face, setting, letters, missing, lines, ordered);
	}

	private static final class Column {

		final Paragraph paragraph;
		final double width;
		private final List<Placed> placed = new ArrayList<>();

		/** @param width of the letter, across */
		private record Placed(Cell cell, Outline outline, double width, double baseline, int word) {
		}

		Column(Paragraph paragraph, List<Cell> cells, Setting setting) {
			this.paragraph = paragraph;
			double pen = 0;
			double widest = 0;
			int word = 0;
			boolean afterBlank = false;
			for (Cell cell : cells) {
				if (cell.unseen()) {
					continue;
				}
				double distance = Setting.LINE_DISTANCE * setting.lineSpacing() * cell.style().capHeight();
				if (cell.blank()) {
					pen += placed.isEmpty() ? 0 : BLANK_SHARE * distance + setting.wordSpacing();
					afterBlank = !placed.isEmpty();
					continue;
				}
				pen += placed.isEmpty() ? 0 : distance + setting.tracking();
				word += afterBlank ? 1 : 0;
				afterBlank = false;
				double across = across(cell);
				placed.add(new Placed(cell, upright(cell), across, pen, word));
				widest = Math.max(widest, across);
			}
			width = widest;
		}

		/** From the first baseline to the last one in mm. */
		double depth() {
			return placed.isEmpty() ? 0 : placed.get(placed.size() - 1).baseline();
		}

		/** By how much more every letter stands below the one before it. */
		double stretch(double wanted) {
			return placed.size() < 2 ? 0 : (wanted - depth()) / (placed.size() - 1);
		}

		void addLetters(int number, double left, double top, double stretch, List<Letter> letters) {
			for (int i = 0; i < placed.size(); i++) {
				Placed letter = placed.get(i);
				if (!letter.outline().isEmpty()) {
					double x = left + (width - letter.width()) / 2;
					double y = top + letter.baseline() + i * stretch;
					letters.add(new Letter(paragraph.start() + letter.cell().start(),
							paragraph.start() + letter.cell().end(), number, letter.word(), letter.cell().numbers(),
							letter.outline().transformed(Transform.translation(x, y)), new Point(x, y), letter.width(),
							letter.cell().style().span()));
				}
			}
		}

		/** The sum of the glyphs' own advances across, which a line that runs down does not tell. */
		private static double across(Cell cell) {
			return cell.glyphs().stream().mapToDouble(g -> cell.style().face().advance(g.glyph())).max().orElse(0)
					* cell.style().scale();
		}

		/** The glyphs at their places to each other, the first one's own origin at 0. */
		private static Outline upright(Cell cell) {
			if (cell.glyphs().isEmpty()) {
				return Outline.EMPTY;
			}
			double scale = cell.style().scale();
			double x = cell.glyphs().get(0).x();
			double y = cell.glyphs().get(0).y();
			Outline outline = Outline.EMPTY;
			for (var glyph : cell.glyphs()) {
				outline = outline.plus(cell.style().face().outline(glyph.glyph(), scale)
						.transformed(Transform.translation((glyph.x() - x) * scale, (glyph.y() - y) * scale)));
			}
			return outline;
		}
	}
}
