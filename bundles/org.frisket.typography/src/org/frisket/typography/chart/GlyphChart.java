package org.frisket.typography.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.typography.FontFace;

/** All glyphs of a face: those with characters in the order of these, then the others in the order of their numbers. */
public final class GlyphChart {

	private final FontFace face;
	private final List<GlyphEntry> entries;

	private GlyphChart(FontFace face, List<GlyphEntry> entries) {
		this.face = face;
		this.entries = List.copyOf(entries);
	}

	public static GlyphChart of(FontFace face) {
		List<String> names = face.glyphNames();
		SortedMap<Integer, List<Integer>> characters = face.charactersOfGlyphs();
		List<GlyphEntry> entries = new ArrayList<>();
		characters.forEach((glyph, its) -> entries
				.add(new GlyphEntry(glyph, names.get(glyph), its, GlyphKind.of(its.get(0)))));
		entries.sort((a, b) -> Integer.compare(a.characters().get(0), b.characters().get(0)));
		for (int glyph = 0; glyph < face.glyphCount(); glyph++) {
			if (!characters.containsKey(glyph)) {
				entries.add(new GlyphEntry(glyph, names.get(glyph), List.of(), GlyphKind.of(names.get(glyph))));
			}
		}
		return new GlyphChart(face, entries);
	}

	public FontFace face() {
		return face;
	}

	public List<GlyphEntry> entries() {
		return entries;
	}

	/** At a cap height in mm, with the origin on the baseline; empty for a blank. */
	public Outline outline(GlyphEntry entry, double capHeight) {
		return outline(entry.glyph(), capHeight);
	}

	/** The same by the glyph's number. */
	public Outline outline(int glyph, double capHeight) {
		double scale = capHeight / face.capHeight();
		return face.outline(glyph).transformed(Transform.scaling(scale, scale));
	}

	/**
	 * What is meant by some words: one character typed, a code point as in {@code U+2605} or {@code 2605}, a glyph's
	 * number as in {@code #12}, or words that all occur in a glyph's name or in the Unicode name of one of its
	 * characters. Everything for no words.
	 */
	public List<GlyphEntry> search(String text) {
		String wanted = text.strip();
		if (wanted.isEmpty()) {
			return entries;
		}
		if (wanted.codePointCount(0, wanted.length()) == 1) {
			int typed = wanted.codePointAt(0);
			return entries.stream().filter(e -> e.characters().contains(typed)).toList();
		}
		if (wanted.matches("#\\d{1,5}")) {
			int number = Integer.parseInt(wanted.substring(1));
			return entries.stream().filter(e -> e.glyph() == number).toList();
		}
		if (wanted.matches("(?i)(U\\+)?[0-9A-F]{4,6}")) {
			int code = Integer.parseInt(wanted.replaceFirst("(?i)U\\+", ""), 16);
			List<GlyphEntry> coded = entries.stream().filter(e -> e.characters().contains(code)).toList();
			if (!coded.isEmpty()) {
				return coded;
			}
		}
		String[] words = wanted.toLowerCase(Locale.ROOT).split("\\s+");
		return entries.stream().filter(e -> hasWords(e, words)).toList();
	}

	private static boolean hasWords(GlyphEntry entry, String[] words) {
		StringBuilder names = new StringBuilder(entry.name());
		for (int codePoint : entry.characters()) {
			names.append(' ').append(Character.getName(codePoint));
		}
		String all = names.toString().toLowerCase(Locale.ROOT);
		for (String word : words) {
			if (!all.contains(word)) {
				return false;
			}
		}
		return true;
	}
}
