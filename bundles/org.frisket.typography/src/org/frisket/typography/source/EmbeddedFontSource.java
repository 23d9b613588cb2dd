package org.frisket.typography.source;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;

/**
 * The fonts that come with the program, inside libraries on its class path: Liberation for letters (SIL Open Font
 * Licence 1.1) and DejaVu for symbols and ornaments (Bitstream Vera terms). Both licence texts lie beside the fonts.
 */
public final class EmbeddedFontSource implements FontSource {

	/**
	 * A family inside a library.
	 *
	 * @param folder        of the font files on the class path, with a slash at its end
	 * @param filePrefix    what all its files begin with
	 * @param licence       name of the licence
	 * @param licenceText   resource that holds the text of the licence
	 */
	public record Family(String name, String folder, String filePrefix, String licence, String licenceText,
			List<Style> styles) {

		public Family {
			styles = List.copyOf(styles);
		}
	}

	/** @param fileSuffix what follows the prefix in the name of the file */
	public record Style(String name, String fileSuffix) {
	}

	private static final String LIBERATION = "liberation/";
	private static final String DEJAVU = "net/sf/jasperreports/fonts/dejavu/";

	private static final List<Style> ITALIC_STYLES = List.of(new Style("Regular", "-Regular.ttf"),
			new Style("Bold", "-Bold.ttf"), new Style("Italic", "-Italic.ttf"),
			new Style("Bold Italic", "-BoldItalic.ttf"));
	private static final List<Style> OBLIQUE_STYLES = List.of(new Style("Book", ".ttf"),
			new Style("Bold", "-Bold.ttf"), new Style("Oblique", "-Oblique.ttf"),
			new Style("Bold Oblique", "-BoldOblique.ttf"));
	private static final List<Style> SERIF_STYLES = List.of(new Style("Book", ".ttf"),
			new Style("Bold", "-Bold.ttf"), new Style("Italic", "-Italic.ttf"),
			new Style("Bold Italic", "-BoldItalic.ttf"));

	private static final List<Family> FAMILIES = List.of(
			liberation("Liberation Sans", "LiberationSans"), liberation("Liberation Serif", "LiberationSerif"),
			liberation("Liberation Mono", "LiberationMono"), dejaVu("DejaVu Sans", "DejaVuSans", OBLIQUE_STYLES),
			dejaVu("DejaVu Serif", "DejaVuSerif", SERIF_STYLES),
			dejaVu("DejaVu Sans Mono", "DejaVuSansMono", OBLIQUE_STYLES));

	private final ClassLoader loader;

	/** Fonts as this bundle sees them. */
	public EmbeddedFontSource() {
		this(EmbeddedFontSource.class.getClassLoader());
	}

	public EmbeddedFontSource(ClassLoader loader) {
		this.loader = Objects.requireNonNull(loader);
	}

	private static Family liberation(String name, String prefix) {
		return new Family(name, LIBERATION, prefix, "SIL Open Font Licence 1.1", LIBERATION + "LICENSE",
				ITALIC_STYLES);
	}

	private static Family dejaVu(String name, String prefix, List<Style> styles) {
		return new Family(name, DEJAVU, prefix, "Bitstream Vera and DejaVu terms", DEJAVU + "LICENSE", styles);
	}

	/** What this source knows of, whether or not the libraries are there. */
	public static List<Family> families() {
		return FAMILIES;
	}

	@Override
	public String id() {
		return "embedded";
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		return FAMILIES.stream().flatMap(this::entries).toList();
	}

	private Stream<FontEntry> entries(Family family) {
		List<FontEntry> entries = new ArrayList<>();
		for (Style style : family.styles()) {
			String resource = family.folder() + family.filePrefix() + style.fileSuffix();
			if (loader.getResource(resource) != null) {
				String full = family.name() + " " + style.name();
				FontNames names = new FontNames(family.name(), style.name(), full, "");
				entries.add(new FontEntry(names, resource, () -> open(resource),
						() -> FontFace.digest(read(resource))));
			}
		}
		return entries.stream();
	}

	private FontFace open(String resource) throws UnreadableFontException {
		try {
			return FontFace.read(read(resource), resource);
		} catch (IOException broken) {
			throw new UnreadableFontException(resource, "it is not in this installation");
		}
	}

	private byte[] read(String resource) throws IOException {
		try (InputStream stream = loader.getResourceAsStream(resource)) {
			if (stream == null) {
				throw new IOException(resource);
			}
			return stream.readAllBytes();
		}
	}
}
