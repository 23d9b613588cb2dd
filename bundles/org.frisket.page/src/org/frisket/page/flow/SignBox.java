package org.frisket.page.flow;

import java.util.List;

/**
 * A box that somebody writes in.
 *
 * @param word    what for, at its upper left
 * @param written in it already, at its lower left; empty for nothing
 * @param share   of the width that it takes, with the gap behind it
 */
public record SignBox(String word, String written, double share) {

	private static final double HEIGHT = 13.5;
	private static final double GAP = 2;
	private static final double INSET = 1.2;
	private static final double SMALL = Column.TEXT * 0.8;

	/** Boxes of one width. */
	public static List<SignBox> alike(List<String> words) {
		return words.stream().map(word -> new SignBox(word, "", 1.0 / words.size())).toList();
	}

	/** Boxes beside each other. */
	public static Block row(Column column, List<SignBox> boxes) {
		List<String> texts = boxes.stream().flatMap(box -> List.of(box.word(), box.written()).stream())
				.filter(text -> !text.isEmpty()).toList();
		return new Block(HEIGHT + GAP, texts, (painter, top) -> {
			double x = column.left();
			for (SignBox box : boxes) {
				double step = (column.width() + GAP) * box.share();
				double width = step - GAP;
				Column.box(painter, x, top + 1, width, HEIGHT);
				painter.words(box.word(), x + INSET, top + 1 + INSET + SMALL, SMALL, width - 2 * INSET, Column.DARK);
				painter.words(box.written(), x + INSET, top + 1 + HEIGHT - INSET - 0.4, SMALL, width - 2 * INSET, Column.BLACK);
				x += step;
			}
		});
	}
}
