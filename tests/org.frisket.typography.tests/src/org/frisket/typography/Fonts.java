package org.frisket.typography;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.typography.source.EmbeddedFontSource;

/** Fonts for tests: embedded ones always, Debian's where its packages are installed. */
public final class Fonts {

	public static final String DEJAVU_SANS = "truetype/dejavu/DejaVuSans.ttf";
	public static final String DEJAVU_SERIF = "truetype/dejavu/DejaVuSerif.ttf";
	public static final String SYMBOLA = "truetype/ancient-scripts/Symbola_hint.ttf";
	public static final String DANCING = "opentype/dancingscript/DancingScript-Regular.otf";
	public static final String LOBSTER = "opentype/lobster/lobster.otf";
	public static final String KAUSHAN = "opentype/kaushanscript/KaushanScript-Regular.otf";
	public static final String SLAB = "opentype/roboto/slab/RobotoSlab-Bold.otf";
	public static final String BEBAS = "opentype/bebas-neue/BebasNeue-Regular.otf";
	public static final String NO_CAPITALS = "truetype/droid/DroidSansFallbackFull.ttf";

	private Fonts() {
	}

	public static Path path(String below) {
		Path path = Path.of(System.getProperty("frisket.test.fonts", "/usr/share/fonts")).resolve(below);
		assumeTrue(Files.exists(path), () -> path + " is not installed");
		return path;
	}

	public static FontFace system(String below) throws UnreadableFontException {
		return FontFace.read(path(below));
	}

	public static byte[] embeddedBytes(String resource) throws IOException {
		try (InputStream stream = EmbeddedFontSource.class.getClassLoader().getResourceAsStream(resource)) {
			return stream.readAllBytes();
		}
	}

	public static FontFace sans() throws UnreadableFontException {
		return embedded("liberation/LiberationSans-Regular.ttf");
	}

	public static FontFace serif() throws UnreadableFontException {
		return embedded("liberation/LiberationSerif-Regular.ttf");
	}

	public static FontFace symbols() throws UnreadableFontException {
		return embedded("net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf");
	}

	private static FontFace embedded(String resource) throws UnreadableFontException {
		try {
			return FontFace.read(embeddedBytes(resource), resource);
		} catch (IOException missing) {
			throw new UnreadableFontException(resource, "not on the class path");
		}
	}

	/** Where the entry of a table stands in the directory of a font file. */
	public static int entry(byte[] bytes, String tag) {
		for (int at = 12;; at += 16) {
			if (new String(bytes, at, 4, StandardCharsets.ISO_8859_1).equals(tag)) {
				return at;
			}
		}
	}
}
