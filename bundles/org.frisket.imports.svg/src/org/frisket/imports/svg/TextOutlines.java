package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.imports.Remarks;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/** Text as the outlines of its letters, in the pixels of its element: SVG 1.1, chapter 10. */
final class TextOutlines {

	private static final double USUAL_SIZE = 16;

	private final Cascade cascade;
	private final Fonts fonts;
	private final Remarks remarks;
	private final Monitor monitor;

	TextOutlines(Cascade cascade, Fonts fonts, Remarks remarks, Monitor monitor) {
		this.cascade = cascade;
		this.fonts = fonts;
		this.remarks = remarks;
		this.monitor = monitor;
	}

	/** The size that em is of. */
	static double size(Style style, Lengths lengths) {
		String text = style.get("font-size", "medium").strip();
		double size = switch (text) {
		case "medium" -> USUAL_SIZE;
		case "small" -> USUAL_SIZE * 8 / 9;
		case "large" -> USUAL_SIZE * 6 / 5;
		default -> lengths.parse(text, Lengths.Of.FONT);
		};
		return size > 0 && Double.isFinite(size) ? size : USUAL_SIZE;
	}

	/** @param style of the element */
	Outline of(Node text, Style style, Lengths lengths) {
		Line line = new Line();
		add(text, style, lengths, line);
		line.finish();
		return line.all;
	}

	/** What is set one after the other, until a place of its own is given. */
	private static final class Line {

		private Outline all = Outline.EMPTY;
		private Outline chunk = Outline.EMPTY;
		/** Where the chunk begins and where the pen is. */
		private double start;
		private double x;
		private double y;
		private String anchor = "start";
		private boolean afterBlank = true;

		void finish() {
			double width = x - start;
			double shift = switch (anchor) {
			case "middle" -> -width / 2;
			case "end" -> -width;
			default -> 0;
			};
			all = all.plus(chunk.transformed(Transform.translation(shift, 0)));
			chunk = Outline.EMPTY;
			x += shift;
			start = x;
		}

		void moveTo(Double newX, Double newY) {
			if (newX != null || newY != null) {
				finish();
				x = newX == null ? x : newX;
				y = newY == null ? y : newY;
				start = x;
			}
		}
	}

	private void add(Node node, Style style, Lengths outer, Line line) {
		monitor.check();
		Lengths lengths = outer.withFontSize(size(style, outer));
		List<Double> xs = list(node, "x", lengths, Lengths.Of.WIDTH);
		List<Double> ys = list(node, "y", lengths, Lengths.Of.HEIGHT);
		List<Double> dxs = list(node, "dx", lengths, Lengths.Of.WIDTH);
		List<Double> dys = list(node, "dy", lengths, Lengths.Of.HEIGHT);
		int placed = Math.max(Math.max(xs.size(), ys.size()), Math.max(dxs.size(), dys.size()));
		place(0, xs, ys, dxs, dys, style, line);
		int character = 0;
		for (Node child : node.children()) {
			if (child.is("tspan") || child.is("a")) {
				Style own = cascade.of(child, style);
				if (own.isShown()) {
					add(child, own, lengths, line);
				}
			} else if (child.is("textPath")) {
				remarks.once(child.place(), Messages.TextOutlines_path);
			} else if (!child.text().isEmpty()) {
				String text = blanks(child.text(), preserves(node), line);
				int at = 0;
				for (; at < text.length() && character + 1 < placed; character++) {
					int next = text.offsetByCodePoints(at, 1);
					if (character > 0) {
						place(character, xs, ys, dxs, dys, style, line);
					}
					set(text.substring(at, next), style, lengths, line, child);
					at = next;
				}
				if (at < text.length()) {
					if (character > 0) {
						place(character, xs, ys, dxs, dys, style, line);
					}
					set(text.substring(at), style, lengths, line, child);
				}
			}
		}
	}

	private static void place(int i, List<Double> xs, List<Double> ys, List<Double> dxs, List<Double> dys, Style style,
			Line line) {
		line.moveTo(i < xs.size() ? xs.get(i) : null, i < ys.size() ? ys.get(i) : null);
		line.x += i < dxs.size() ? dxs.get(i) : 0;
		line.y += i < dys.size() ? dys.get(i) : 0;
		if (line.chunk.isEmpty()) {
			line.anchor = style.get("text-anchor", "start");
			line.start = line.x;
		}
	}

	private static List<Double> list(Node node, String attribute, Lengths lengths, Lengths.Of of) {
		List<Double> values = new ArrayList<>();
		for (String word : node.attribute(attribute, "").strip().split("[\\s,]+")) {
			double value = lengths.parse(word, of);
			if (!Double.isNaN(value)) {
				values.add(value);
			}
		}
		return values;
	}

	private static boolean preserves(Node node) {
		for (Node at = node; at != null; at = at.parent()) {
			String space = at.attribute("space");
			if (space != null) {
				return space.equals("preserve");
			}
		}
		return false;
	}

	/** Runs of blanks are one blank, none at the beginning: SVG 1.1, section 10.15. */
	private static String blanks(String text, boolean preserve, Line line) {
		if (preserve) {
			line.afterBlank = false;
			return text.replaceAll("[\\r\\n\\t]", " ");
		}
		StringBuilder out = new StringBuilder();
		for (char c : text.toCharArray()) {
			boolean blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
			if (!blank) {
				out.append(c);
			} else if (!line.afterBlank) {
				out.append(' ');
			}
			line.afterBlank = blank;
		}
		return out.toString();
	}

	private void set(String whole, Style style, Lengths lengths, Line line, Node node) {
		FontFace face = fonts.face(style, node);
		if (face == null || whole.isEmpty()) {
			return;
		}
		String text = whole.length() > TextSetter.LONGEST_TEXT ? whole.substring(0, TextSetter.LONGEST_TEXT) : whole;
		double perUnit = lengths.fontSize() / face.unitsPerEm();
		double tracking = spacing(style, "letter-spacing", lengths);
		double words = spacing(style, "word-spacing", lengths);
		Setting setting = Setting.ofCapHeight(face.capHeight() * perUnit).withAlignment(Alignment.LEFT)
				.withTracking(tracking).withWordSpacing(words);
		SetText set = TextSetter.set(text, face, setting, monitor);
		for (MissingGlyph glyph : set.missing()) {
			remarks.once(node.place(), NLS.bind(Messages.TextOutlines_glyph,
					new String(Character.toChars(text.codePointAt(glyph.index()))), face.fullName()));
		}
		if (style.isVisible()) {
			line.chunk = line.chunk.plus(set.outline().transformed(Transform.translation(line.x, line.y)));
		}
		int trailing = text.length() - text.stripTrailing().length();
		double blank = face.advance(face.glyph(' ')) * perUnit + words + tracking;
		double width = set.lines().isEmpty() ? 0 : set.lines().get(0).width();
		line.x += width + (text.isBlank() ? 0 : tracking) + trailing * blank;
	}

	private static double spacing(Style style, String property, Lengths lengths) {
		double value = lengths.parse(style.get(property, "0"), Lengths.Of.FONT);
		return Double.isNaN(value) ? 0 : value;
	}
}
