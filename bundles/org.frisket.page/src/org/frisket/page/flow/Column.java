package org.frisket.page.flow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.page.Words;

/** Blocks below each other in a column of the page, and how they come to pages. */
public final class Column {

	/** Greys of words. */
	public static final double BLACK = 0;
	public static final double DARK = 0.25;
	/** Heights of capitals, in mm. */
	public static final double TITLE = 3.6;
	public static final double HEADING = 2.6;
	public static final double TEXT = 2;
	/** From baseline to baseline, in capitals. */
	private static final double LEADING = 2;
	private static final double GAP = 3;
	private static final double RULE = 0.15;

	private final double left;
	private final double width;
	private final List<Block> blocks = new ArrayList<>();

	/** @param left edge on the page, in mm */
	public Column(double left, double width) {
		this.left = left;
		this.width = width;
	}

	/** Its left edge, in mm. */
	public double left() {
		return left;
	}

	/** In mm. */
	public double width() {
		return width;
	}

	/** Puts a block below the others. */
	public void add(Block block) {
		blocks.add(block);
	}

	/** Room, with which no page begins. */
	public void gap() {
		add(Block.room(GAP));
	}

	/** A line of large words over a rule; it stays with the block that follows. */
	public void heading(String text) {
		gap();
		add(new Block(Block.Kind.HEADING, HEADING * LEADING + 1.2, List.of(text), (painter, top) -> {
			painter.words(text, left, top + HEADING, HEADING, width, BLACK);
			painter.fill(rectangle(left, top + HEADING + 1.4, width, RULE), BLACK);
		}));
	}

	/** A text in as many lines as it takes, all of them on one page. */
	public void text(String text, double indent, double grey) throws IOException {
		add(text(text, indent, 0, grey));
	}

	/** @param less how much of the width is left free at the end */
	public Block text(String text, double indent, double less, double grey) throws IOException {
		List<String> lines = Words.lines(text, TEXT, width - indent - less);
		return new Block(lines.size() * TEXT * LEADING, List.of(text), (painter, top) -> {
			double baseline = top + TEXT;
			for (String line : lines) {
				painter.words(line, left + indent, baseline, TEXT, width - indent - less, grey);
				baseline += TEXT * LEADING;
			}
		});
	}

	/** Blocks that stay together, below each other. */
	public void together(List<Block> parts) {
		add(joined(parts));
	}

	private static Block joined(List<Block> parts) {
		return new Block(height(parts), parts.stream().flatMap(part -> part.texts().stream()).toList(), (painter, top) -> {
					double at = top;
					for (Block part : parts) {
						part.content().paint(painter, at);
						at += part.height();
					}
				});
	}

	/** A text with a thick frame, which nobody reads over. */
	public void framed(String text) throws IOException {
		Block inner = text(text, 3, 3, BLACK);
		double height = inner.height() + 3.2;
		add(new Block(height + 1.5, inner.texts(), (painter, top) -> {
			painter.stroke(rectangle(left, top, width, height), new Ink("#000000", 0.5, List.of()));
			inner.content().paint(painter, top + 2.4);
		}));
	}

	/** A row of cells. @param shares of the width that each cell takes */
	public void row(List<String> cells, double[] shares, double grey) {
		add(new Block(TEXT * LEADING, cells, (painter, top) -> {
			double x = left;
			for (int i = 0; i < cells.size(); i++) {
				painter.words(cells.get(i), x, top + TEXT, TEXT, width * shares[i] - 2, grey);
				x += width * shares[i];
			}
		}));
	}

	/**
	 * The blocks of each page, from above. A heading at the foot of a page goes over with what it heads.
	 *
	 * @param height of the column on a page
	 */
	public List<List<Block>> pages(double height) {
		List<List<Block>> pages = new ArrayList<>();
		List<Block> page = new ArrayList<>();
		List<Block> waiting = new ArrayList<>();
		double used = 0;
		for (Block block : blocks) {
			waiting.add(block);
			if (block.kind() != Block.Kind.OTHER) {
				continue;
			}
			double needed = height(waiting);
			if (used + needed > height && !page.isEmpty()) {
				pages.add(page);
				page = new ArrayList<>();
				used = 0;
			}
			if (page.isEmpty()) {
				waiting.removeIf(each -> each.kind() == Block.Kind.ROOM);
				needed = height(waiting);
			}
			page.addAll(waiting);
			used += needed;
			waiting.clear();
		}
		pages.add(page);
		return pages;
	}

	private static double height(List<Block> blocks) {
		return blocks.stream().mapToDouble(Block::height).sum();
	}

	/** All words, in their order. */
	public List<String> texts() {
		return blocks.stream().flatMap(block -> block.texts().stream()).toList();
	}

	/** @param x its left edge @param y its upper one, in mm */
	public static Outline rectangle(double x, double y, double width, double height) {
		return Outline.of(Contour.polygon(List.of(new Point(x, y), new Point(x, y + height),
				new Point(x + width, y + height), new Point(x + width, y))));
	}

	/** A box to tick, or to write in. */
	public static void box(PagePainter painter, double x, double y, double width, double height) throws IOException {
		painter.frame(new Bounds(x, y, x + width, y + height), BLACK);
	}
}
