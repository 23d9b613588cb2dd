package org.frisket.ui.views.internal.fonts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.geometry.Monitor;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.FontSource;

/**
 * The fonts of one family.
 *
 * @param fonts the plain one first, the others by their style; each style once, from the source that is asked first
 */
public record FontFamily(String name, List<FontEntry> fonts) {

	public FontFamily {
		fonts = List.copyOf(fonts);
	}

	/** All families of a library by their names. It may have to be read: not for the UI thread. */
	public static List<FontFamily> of(FontLibrary library) {
		Map<String, Map<String, FontEntry>> families = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
		for (FontSource source : library.sources()) {
			for (FontEntry font : source.fonts(Monitor.NONE)) {
				families.computeIfAbsent(font.family(), name -> new TreeMap<>(String.CASE_INSENSITIVE_ORDER))
						.putIfAbsent(font.style(), font);
			}
		}
		List<FontFamily> list = new ArrayList<>();
		families.forEach((name, fonts) -> list.add(new FontFamily(name, fonts.values().stream()
				.sorted(Comparator.comparing(font -> !font.names().isPlain())).toList())));
		return list;
	}

	/** The one that is taken when only the family is chosen. */
	public FontEntry plain() {
		return fonts.get(0);
	}

	public List<String> styles() {
		return fonts.stream().map(FontEntry::style).toList();
	}

	/** The font of a style; null asks for the plain one. */
	public Optional<FontEntry> font(String style) {
		return style == null ? Optional.of(plain())
				: fonts.stream().filter(font -> font.style().equalsIgnoreCase(style)).findFirst();
	}

	/** Whether the name holds each of the words, in capitals or not. */
	public boolean matches(String words) {
		String lower = name.toLowerCase(Locale.ROOT);
		for (String word : words.strip().toLowerCase(Locale.ROOT).split("\\s+")) { //$NON-NLS-1$
			if (!lower.contains(word)) {
				return false;
			}
		}
		return true;
	}
}
