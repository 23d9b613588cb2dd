package org.frisket.imports.svg;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.imports.Remarks;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.UnknownFontException;

/** The faces that styles ask for, or others in their place. */
final class Fonts {

	private static final int BOLD = 600;
	/** They come with the program. */
	private static final String SANS = "DejaVu Sans";
	private static final String SERIF = "Liberation Serif";
	private static final String MONO = "Liberation Mono";

	private final FontLibrary library;
	private final Remarks remarks;
	private final Map<String, FontFace> found = new HashMap<>();

	Fonts(FontLibrary library, Remarks remarks) {
		this.library = library;
		this.remarks = remarks;
	}

	/** Null if not even the fonts of the program are here; what is taken instead of another is told. */
	FontFace face(Style style, Node node) {
		String manner = manner(style);
		String families = style.get("font-family", "sans-serif");
		for (String family : families.split(",")) {
			String name = family.strip().replaceAll("^['\"]|['\"]$", "").strip();
			FontFace face = find(generic(name), manner);
			if (face != null) {
				return face;
			}
		}
		FontFace instead = find(SANS, manner);
		remarks.once(node.place(), NLS.bind(Messages.TextOutlines_font, families, instead == null ? "–" : instead.fullName()));
		return instead;
	}

	private static String manner(Style style) {
		String weight = style.get("font-weight", "normal").strip().toLowerCase(Locale.ROOT);
		double number = Numbers.parse(weight);
		boolean bold = weight.equals("bold") || weight.equals("bolder") || number >= BOLD;
		String slant = style.get("font-style", "normal").strip();
		boolean italic = slant.startsWith("italic") || slant.startsWith("oblique");
		return bold ? italic ? "Bold Italic" : "Bold" : italic ? "Italic" : "";
	}

	private static String generic(String name) {
		return switch (name.toLowerCase(Locale.ROOT)) {
		case "sans-serif", "cursive", "fantasy", "system-ui" -> SANS;
		case "serif" -> SERIF;
		case "monospace" -> MONO;
		default -> name;
		};
	}

	/** Only fonts by name: a file that names another file would lead out of itself. */
	private FontFace find(String family, String manner) {
		if (family.isEmpty() || family.indexOf('/') >= 0 || family.indexOf('\\') >= 0 || family.indexOf('.') >= 0) {
			return null;
		}
		return found.computeIfAbsent(family + "|" + manner, key -> {
			FontFace face = manner.isEmpty() ? null : open(family + " " + manner);
			if (face == null && manner.contains("Italic")) {
				face = open(family + " " + manner.replace("Italic", "Oblique"));
			}
			return face == null ? open(family) : face;
		});
	}

	private FontFace open(String name) {
		try {
			return library.find(name);
		} catch (UnknownFontException | UnreadableFontException e) {
			return null;
		}
	}
}
