package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.internal.text.LineBreaks;

/**
 * Breaks a paragraph into lines no wider than the measure, each filled as far as it goes. Lines are broken where
 * {@link LineBreaks} allows it. A word wider than the
 * measure stands in a line by itself and juts out.
 */
final class LineBreaker {

	/** Of the measure; for the sums of rounded widths. */
	private static final double ROUNDING = 1e-9;

	private final Paragraph paragraph;
	private final Monitor monitor;
	private final double measure;
	private final int[] places;
	private final double[] widths;

	LineBreaker(Paragraph paragraph, Monitor monitor) {
		this.paragraph = paragraph;
		this.monitor = monitor;
		measure = paragraph.setting().measure() * (1 + ROUNDING);
		places = LineBreaks.places(new String(paragraph.shaped()));
		widths = widths();
	}

	static List<LineSetter> lines(Paragraph paragraph, Monitor monitor) {
		LineSetter whole = new LineSetter(paragraph, 0, paragraph.length(), false);
		double measure = paragraph.setting().measure();
		return measure == 0 || whole.width() <= measure * (1 + ROUNDING) ? List.of(whole)
				: new LineBreaker(paragraph, monitor).lines();
	}

	/** The advance up to each character when all is set in one line: near enough to choose a place to look at. */
	private double[] widths() {
		double[] sums = new double[paragraph.length() + 1];
		Setting setting = paragraph.setting();
		for (Cell cell : new CellShaper(paragraph, 0, paragraph.length()).cells()) {
			sums[cell.start() + 1] += cell.advance() + (cell.blank() ? setting.wordSpacing() : 0)
					+ (cell.unseen() ? 0 : setting.tracking());
		}
		for (int i = 1; i < sums.length; i++) {
			sums[i] += sums[i - 1];
		}
		return sums;
	}

	private List<LineSetter> lines() {
		List<LineSetter> lines = new ArrayList<>();
		int from = 0;
		for (int first = 0; first < places.length;) {
			monitor.check();
			int last = first;
			while (last + 1 < places.length
					&& widths[paragraph.trimmed(from, places[last + 1])] - widths[from] <= measure
							+ Math.max(0, paragraph.setting().tracking())) {
				last++;
			}
			LineSetter line = line(from, last);
			while (last > first && line.width() > measure) {
				line = line(from, --last);
			}
			lines.add(line);
			from = places[last];
			first = last + 1;
		}
		return lines;
	}

	private LineSetter line(int from, int place) {
		return new LineSetter(paragraph, from, places[place], from > 0 && place == places.length - 1);
	}
}
