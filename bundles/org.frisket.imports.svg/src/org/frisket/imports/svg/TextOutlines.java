package org.frisket.imports.svg;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.imports.Remarks;
import org.frisket.imports.UnreadableArtException;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/** Text as the outlines of its letters, in the pixels of its element: SVG 1.1, chapter 10. */
final class TextOutlines {

	private static final double USUAL_SIZE = 16;
	/** How far cubics may lie from arcs, in mm. */
	private static final double DEVIATION = 0.001;

	private final Cascade cascade;
	private final Fonts fonts;
	private final TextTracks tracks;
	private final Remarks remarks;
	private final Monitor monitor;

	TextOutlines(Cascade cascade, Fonts fonts, TextTracks tracks, Remarks remarks, Monitor monitor) {
		this.cascade = cascade;
		this.fonts = fonts;
		this.tracks = tracks;
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

	/** Of a {@code text} element. */
	Outline of(Node text, Scope scope) throws UnreadableArtException {
		LetterRow row = new LetterRow();
		add(text, scope.style(), scope.lengths(), new Drawn(row, DEVIATION / scope.pixel()));
		return row.outline();
	}

	/**
	 * What is being drawn.
	 *
	 * @param deviation how far cubics may lie from arcs, in pixels
	 */
	private record Drawn(LetterRow row, double deviation) {
	}

	/** The places that an element gives its characters; for each of them an empty list if it gives none. */
	private record Places(List<Double> xs, List<Double> ys, List<Double> dxs, List<Double> dys) {

		static Places of(Node node, Lengths lengths) {
			return new Places(list(node, "x", lengths, Lengths.Of.WIDTH), list(node, "y", lengths, Lengths.Of.HEIGHT),
					list(node, "dx", lengths, Lengths.Of.WIDTH), list(node, "dy", lengths, Lengths.Of.HEIGHT));
		}

		int size() {
			return Math.max(Math.max(xs.size(), ys.size()), Math.max(dxs.size(), dys.size()));
		}

		void place(int i, Style style, LetterRow row) {
			row.moveTo(i < xs.size() ? xs.get(i) : null, i < ys.size() ? ys.get(i) : null);
			row.moveBy(i < dxs.size() ? dxs.get(i) : 0, i < dys.size() ? dys.get(i) : 0, anchor(style));
		}
	}

	private static String anchor(Style style) {
		return style.get("text-anchor", "start");
	}

	private void add(Node node, Style style, Lengths outer, Drawn drawn) throws UnreadableArtException {
		monitor.check();
		Lengths lengths = outer.withFontSize(size(style, outer));
		LetterRow row = drawn.row();
		Places places = Places.of(node, lengths);
		places.place(0, style, row);
		int character = 0;
		for (Node child : node.children()) {
			if (child.is("tspan") || child.is("a")) {
				Style own = cascade.of(child, style);
				if (own.isShown()) {
					add(child, own, lengths, drawn);
				}
			} else if (child.is("textPath")) {
				along(child, style, lengths, drawn);
			} else if (!child.text().isEmpty()) {
				String text = row.collapsed(child.text(), preserves(node));
				int at = 0;
				for (; at < text.length() && character + 1 < places.size(); character++) {
					int next = text.offsetByCodePoints(at, 1);
					if (character > 0) {
						places.place(character, style, row);
					}
					set(text.substring(at, next), style, lengths, row, child);
					at = next;
				}
				if (at < text.length()) {
					if (character > 0) {
						places.place(character, style, row);
					}
					set(text.substring(at), style, lengths, row, child);
				}
			}
		}
	}

	/** Text on a path; without the path it is not drawn. */
	private void along(Node textPath, Style around, Lengths outer, Drawn drawn) throws UnreadableArtException {
		Style style = cascade.of(textPath, around);
		TextTrack track = style.isShown()
				? tracks.of(textPath, outer.withFontSize(size(style, outer)), drawn.deviation()) : null;
		if (track == null) {
			return;
		}
		if (textPath.attribute("method", "align").strip().equals("stretch")) {
			remarks.once(textPath.place(), Messages.TextOutlines_stretch);
		}
		drawn.row().enter(track, anchor(style));
		add(textPath, style, outer, drawn);
		drawn.row().leave(anchor(around));
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

	private void set(String whole, Style style, Lengths lengths, LetterRow row, Node node) {
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
		int trailing = text.length() - text.stripTrailing().length();
		double blanks = trailing * (face.advance(face.glyph(' ')) * perUnit + words + tracking);
		double width = set.lines().isEmpty() ? 0 : set.lines().get(0).width();
		row.set(style.isVisible() ? set.letters() : List.of(), width + (text.isBlank() ? 0 : tracking) + blanks, blanks);
	}

	private static double spacing(Style style, String property, Lengths lengths) {
		double value = lengths.parse(style.get(property, "0"), Lengths.Of.FONT);
		return Double.isNaN(value) ? 0 : value;
	}
}
