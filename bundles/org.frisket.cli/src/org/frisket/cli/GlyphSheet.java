package org.frisket.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.typography.FontFace;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;

/** A page of a glyph chart as a picture: each glyph on the baseline of its cell, and what it is called below. */
final class GlyphSheet {

	private static final int COLUMNS = 12;
	private static final int ROWS = 16;
	/** How many glyphs a page holds. */
	static final int PAGE = COLUMNS * ROWS;

	private static final int CELL_WIDTH = 100;
	private static final int CELL_HEIGHT = 116;
	private static final int HEAD = 48;
	/** Of capitals, in pixels; the cell leaves room for ascenders, accents and descenders. */
	private static final double CAPITAL = 36;
	private static final double BASELINE = 68;
	private static final double LABEL_CAPITAL = 8;
	private static final double TITLE_CAPITAL = 14;
	private static final int MARGIN = 6;
	private static final Color LINES = new Color(0xC8C8C8);

	private final GlyphChart chart;
	private final FontFace labels;

	/** @param labels the font that names are written in */
	GlyphSheet(GlyphChart chart, FontFace labels) {
		this.chart = chart;
		this.labels = labels;
	}

	BufferedImage page(List<GlyphEntry> entries, String title) {
		int rows = (entries.size() + COLUMNS - 1) / COLUMNS;
		BufferedImage image = new BufferedImage(COLUMNS * CELL_WIDTH + 1, HEAD + rows * CELL_HEIGHT + 1,
				BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		write(graphics, title, MARGIN, HEAD - 16, TITLE_CAPITAL, COLUMNS * CELL_WIDTH - 2 * MARGIN);
		for (int i = 0; i < entries.size(); i++) {
			cell(graphics, entries.get(i), i % COLUMNS * CELL_WIDTH, HEAD + i / COLUMNS * CELL_HEIGHT);
		}
		graphics.dispose();
		return image;
	}

	private void cell(Graphics2D graphics, GlyphEntry entry, int left, int top) {
		graphics.setColor(LINES);
		graphics.drawRect(left, top, CELL_WIDTH, CELL_HEIGHT);
		Outline glyph = chart.outline(entry, CAPITAL);
		Bounds bounds = glyph.bounds();
		if (!bounds.isEmpty()) {
			double room = Math.min(1, Math.min((CELL_WIDTH - 2.0 * MARGIN) / bounds.width(),
					(CELL_HEIGHT - 24.0 - 2 * MARGIN) / bounds.height()));
			double y = Math.min(top + BASELINE, top + CELL_HEIGHT - 24 - MARGIN - room * bounds.maxY());
			y = Math.max(y, top + MARGIN - room * bounds.minY());
			AffineTransform place = new AffineTransform(room, 0, 0, room,
					left + CELL_WIDTH / 2.0 - room * bounds.centre().x(), y);
			graphics.setColor(Color.BLACK);
			graphics.fill(place.createTransformedShape(path(glyph)));
		}
		write(graphics, entry.label(), left + MARGIN, top + CELL_HEIGHT - 8, LABEL_CAPITAL, CELL_WIDTH - 2 * MARGIN);
	}

	private void write(Graphics2D graphics, String words, double x, double y, double capital, double room) {
		Outline outline = TextSetter.set(words, labels, Setting.ofCapHeight(capital), Monitor.NONE).outline();
		if (outline.isEmpty()) {
			return;
		}
		double narrower = Math.min(1, room / outline.bounds().maxX());
		graphics.setColor(Color.DARK_GRAY);
		graphics.fill(new AffineTransform(narrower, 0, 0, 1, x, y).createTransformedShape(path(outline)));
	}

	private static Path2D path(Outline outline) {
		Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Contour contour : outline.contours()) {
			if (contour.isEmpty()) {
				continue;
			}
			path.moveTo(contour.start().x(), contour.start().y());
			for (Segment segment : contour.segments()) {
				Point end = segment.end();
				if (segment instanceof Cubic cubic) {
					path.curveTo(cubic.control1().x(), cubic.control1().y(), cubic.control2().x(), cubic.control2().y(),
							end.x(), end.y());
				} else {
					path.lineTo(end.x(), end.y());
				}
			}
			path.closePath();
		}
		return path;
	}
}
