package org.frisket.typography;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Fonts for tests: embedded ones always, Debian's where its packages are installed. */
final class Fonts {

	static final String DEJAVU_SANS = "truetype/dejavu/DejaVuSans.ttf";
	static final String DEJAVU_SERIF = "truetype/dejavu/DejaVuSerif.ttf";
	static final String SYMBOLA = "truetype/ancient-scripts/Symbola_hint.ttf";
	static final String DANCING = "opentype/dancingscript/DancingScript-Regular.otf";
	static final String LOBSTER = "opentype/lobster/lobster.otf";
	static final String KAUSHAN = "opentype/kaushanscript/KaushanScript-Regular.otf";
	static final String SLAB = "opentype/roboto/slab/RobotoSlab-Bold.otf";
	static final String BEBAS = "opentype/bebas-neue/BebasNeue-Regular.otf";
	static final String NO_CAPITALS = "truetype/droid/DroidSansFallbackFull.ttf";

	private Fonts() {
	}

	static Path path(String below) {
		Path path = Path.of(System.getProperty("frisket.test.fonts", "/usr/share/fonts")).resolve(below);
		assumeTrue(Files.exists(path), () -> path + " is not installed");
		return path;
	}

	static FontFace system(String below) throws UnreadableFontException {
		return FontFace.read(path(below));
	}

	static byte[] embeddedBytes(String resource) throws IOException {
		try (InputStream stream = EmbeddedFontSource.class.getClassLoader().getResourceAsStream(resource)) {
			return stream.readAllBytes();
		}
	}

	static FontFace sans() throws UnreadableFontException {
		return embedded("liberation/LiberationSans-Regular.ttf");
	}

	static FontFace serif() throws UnreadableFontException {
		return embedded("liberation/LiberationSerif-Regular.ttf");
	}

	static FontFace symbols() throws UnreadableFontException {
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
	static int entry(byte[] bytes, String tag) {
		for (int at = 12;; at += 16) {
			if (new String(bytes, at, 4, StandardCharsets.ISO_8859_1).equals(tag)) {
				return at;
			}
		}
	}
}
