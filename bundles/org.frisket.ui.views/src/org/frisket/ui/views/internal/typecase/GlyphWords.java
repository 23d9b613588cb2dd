package org.frisket.ui.views.internal.typecase;

import java.util.Locale;

import org.eclipse.osgi.util.NLS;
import org.frisket.typography.chart.GlyphEntry;

/** What a glyph is called on the screen. */
final class GlyphWords {

	private GlyphWords() {
	}

	/** Code point and name, such as {@code U+2767 rotated floral heart bullet}; else its name in the font and number. */
	static String of(GlyphEntry entry) {
		if (entry.characters().isEmpty()) {
			return entry.name().isEmpty() ? NLS.bind(Messages.GlyphWords_number, entry.glyph())
					: NLS.bind(Messages.GlyphWords_lone, entry.name(), entry.glyph());
		}
		int character = entry.characters().get(0);
		String name = Character.getName(character);
		return NLS.bind(Messages.GlyphWords_character, entry.label(),
				name == null ? entry.name() : name.toLowerCase(Locale.ROOT));
	}

}
