package org.frisket.page.bars;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where everything of a chart lies. All lengths are in the unit of the size it is laid out for, from its upper left corner,
 * y down.
 *
 * @param height of all of it
 */
public record BarLayout(double width, double height, List<Box> boxes, List<Line> lines, List<Word> words) {

	/**
	 * A part of a bar, or what explains it.
	 *
	 * @param bar  number of the bar; -1 for an explanation
	 * @param part number of the part
	 */
	public record Box(int bar, int part, double x, double y, double width, double height) {

		public Pattern pattern() {
			return Pattern.of(part);
		}
	}

	/** Of the scale: upright. */
	public record Line(double x, double top, double bottom, boolean first) {
	}

	/** @param x its left end @param capHeight of its capitals @param room how wide it may be */
	public record Word(String text, double x, double baseline, double capHeight, double room) {
	}

	/** How wide words are. */
	public interface Ruler {
		double width(String text, double capHeight) throws IOException;
	}

	/** How numbers are written in the user's language. */
	public interface Figures {
		String text(double value, int decimals);
	}

	public BarLayout {
		boxes = List.copyOf(boxes);
		lines = List.copyOf(lines);
		words = List.copyOf(words);
	}

	/**
	 * @param capHeight of the words
	 * @param least     height it is to fill at least; bars become thicker, up to a measure
	 */
	public static BarLayout of(BarChart chart, double width, double least, double capHeight, Ruler ruler, Figures figures)
			throws IOException {
		return new Making(chart, width, capHeight, ruler, figures).layout(least);
	}

	private static final class Making {

		/** How words stand to their place. */
		private enum Side {
			/** They begin there. */
			LEFT,
			/** They end there. */
			RIGHT,
			/** Their middle is there. */
			MIDDLE
		}

		private static final double LEADING = 2.2;
		private static final double TITLE = 1.4;
		private static final int STEPS = 5;
		private static final double WIDEST_NAME = 0.35;

		private final BarChart chart;
		private final double width;
		private final double cap;
		private final Ruler ruler;
		private final Figures figures;
		private final List<Box> boxes = new ArrayList<>();
		private final List<Line> lines = new ArrayList<>();
		private final List<Word> words = new ArrayList<>();
		private double y;

		Making(BarChart chart, double width, double cap, Ruler ruler, Figures figures) {
			this.chart = chart;
			this.width = width;
			this.cap = cap;
			this.ruler = ruler;
			this.figures = figures;
		}

		BarLayout layout(double least) throws IOException {
			word(chart.title(), 0, cap * TITLE, cap * TITLE, width, Side.LEFT);
			y = cap * TITLE + LEADING * cap;
			word(chart.foot(), 0, y, cap, width, Side.LEFT);
			y += cap;
			explanations();
			y += cap;
			double foot = 2 * LEADING * cap;
			int rows = Math.max(1, chart.bars().size());
			int beside = chart.stacked() ? 1 : Math.max(1, chart.parts().size());
			double thinnest = cap * (1.6 * beside + 0.8);
			double band = Math.min(2 * thinnest, Math.max(thinnest, (least - y - foot) / rows));
			bars(band, beside);
			return new BarLayout(width, y + foot, boxes, lines, words);
		}

		/** What each pattern stands for; a chart of one part says so in its title. */
		private void explanations() throws IOException {
			if (chart.parts().size() < 2) {
				return;
			}
			double x = 0;
			y += cap;
			for (int i = 0; i < chart.parts().size(); i++) {
				double room = ruler.width(chart.parts().get(i), cap);
				double all = cap * 3 + room;
				if (x > 0 && x + all > width) {
					x = 0;
					y += LEADING * cap;
				}
				boxes.add(new Box(-1, i, x, y, cap * 2, cap * 1.2));
				word(chart.parts().get(i), x + cap * 2.6, y + cap * 1.1, cap, width - x - cap * 2.6, Side.LEFT);
				x += all + cap * 2;
			}
			y += cap * 1.2;
		}

		private void bars(double band, int beside) throws IOException {
			double names = 0;
			for (BarChart.Bar bar : chart.bars()) {
				names = Math.max(names, ruler.width(bar.name(), cap));
			}
			names = Math.min(names, width * WIDEST_NAME);
			double left = names + cap;
			Scale scale = Scale.to(Math.max(chart.most(), chart.least()), STEPS, chart.decimals());
			double values = ruler.width(figures.text(scale.end(), chart.decimals()), cap) + cap;
			double full = Math.max(cap, width - left - values);
			double top = y;
			for (int i = 0; i < chart.bars().size(); i++) {
				BarChart.Bar bar = chart.bars().get(i);
				word(bar.name(), names, y + band / 2 + cap / 2, cap, names, Side.RIGHT);
				bar(i, bar, left, band, beside, full / scale.end());
				y += band;
			}
			for (double mark : scale.marks()) {
				double x = left + mark * full / scale.end();
				lines.add(new Line(x, top, y + cap * 0.4, mark == 0));
				word(figures.text(mark, chart.decimals()), x, y + cap * 1.8, cap, full / 2, Side.MIDDLE);
			}
			word(chart.unit(), left + full, y + cap * 4, cap, full, Side.RIGHT);
		}

		private void bar(int number, BarChart.Bar bar, double left, double band, int beside, double perUnit)
				throws IOException {
			double gap = cap * 0.4;
			double thick = (band - 2 * gap) / beside;
			double x = left;
			for (int part = 0; part < bar.values().size(); part++) {
				double value = bar.values().get(part).orElse(0);
				double at = chart.stacked() ? y + gap : y + gap + part * thick;
				if (value > 0) {
					boxes.add(new Box(number, part, x, at, value * perUnit, thick));
				}
				if (chart.stacked()) {
					x += value * perUnit;
				} else if (bar.values().get(part).isPresent()) {
					value(value, left + value * perUnit, at + thick / 2);
				}
			}
			if (chart.stacked()) {
				value(bar.sum(), x, y + band / 2);
			}
		}

		private void value(double value, double x, double middle) throws IOException {
			word(figures.text(value, chart.decimals()), x + cap * 0.5, middle + cap / 2, cap, width - x, Side.LEFT);
		}

		private void word(String text, double x, double baseline, double capHeight, double room, Side side)
				throws IOException {
			if (text.isBlank()) {
				return;
			}
			double wide = Math.min(room, ruler.width(text, capHeight));
			double begin = switch (side) {
			case LEFT -> x;
			case RIGHT -> x - wide;
			case MIDDLE -> x - wide / 2;
			};
			words.add(new Word(text, begin, baseline, capHeight, room));
		}
	}
}
