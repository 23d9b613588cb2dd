package org.frisket.typography.chart;

import java.util.List;

/**
 * One glyph of a face.
 *
 * @param name       as the font has it; may be empty
 * @param characters it stands for by itself, ascending; none for an alternate, most ligatures and ornaments
 */
public record GlyphEntry(int glyph, String name, List<Integer> characters, GlyphKind kind) {

	public GlyphEntry {
		characters = List.copyOf(characters);
	}

	/** Its first character as in {@code U+0041}, else its name, else its number. */
	public String label() {
		if (!characters.isEmpty()) {
			return "U+%04X".formatted(characters.get(0));
		}
		return name.isEmpty() ? "#" + glyph : name;
	}
}
