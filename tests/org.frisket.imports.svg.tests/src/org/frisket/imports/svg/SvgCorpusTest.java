package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.frisket.imports.ImportedArt;
import org.frisket.imports.UnreadableArtException;
import org.frisket.testkit.Mutants;
import org.junit.jupiter.api.Test;

/**
 * Files of others with pictures of what they show, from Debian's package {@code librsvg2-tests}: icons, files that once
 * were read wrongly, and a part of the test suite of the W3C for SVG 1.1.
 */
class SvgCorpusTest {

	private static final Path CORPUS = Path.of("/usr/libexec/installed-tests/RSVG/fixtures");
	private static final String PICTURE = "-ref.png";
	/** What is no outline and not read, or needs fonts that are not here. */
	private static final Pattern OTHER = Pattern.compile("<(\\w+:)?(filter|text|marker|pattern|image|foreignObject)\\b|marker-"
			+ "|url\\((?!#)|opacity\\s*[:=]\\s*['\"]?0*(0|\\.0+)['\";]");

	/** A dot of the pen has no outline here; files in files are not fetched; a gradient may leave a part unpainted. */
	private static final Set<String> BEYOND = Set.of("165-zero-length-subpath-square-linecap.svg", "include-compressed.svg",
			"gradient-01-b.svg");
	/** To a mm. */
	private static final double PIXELS = 96 / 25.4;
	/** Larger ones take long, and are read as they are by another test. */
	private static final int LARGEST_SEED = 16_000;

	private static List<Path> files() throws IOException {
		try (Stream<Path> all = Files.walk(CORPUS)) {
			return all.filter(file -> file.toString().endsWith(".svg")).sorted().toList();
		}
	}

	private static Path picture(Path file) {
		String name = file.getFileName().toString();
		return file.resolveSibling(name.substring(0, name.length() - ".svg".length()) + PICTURE);
	}

	@Test
	void outlinesCoverWhatThePicturesShow() throws Exception {
		assumeTrue(Files.isDirectory(CORPUS), "librsvg2-tests is not installed");
		int compared = 0;
		for (Path file : files()) {
			byte[] bytes = Files.readAllBytes(file);
			if (!Files.exists(picture(file)) || BEYOND.contains(file.getFileName().toString())
					|| OTHER.matcher(new String(bytes, StandardCharsets.UTF_8)).find()) {
				continue;
			}
			BufferedImage picture = ImageIO.read(picture(file).toFile());
			ImportedArt art = Svg.read(bytes, "strokes", "outlines");
			// some were painted in another size than the files say
			if (Math.abs(art.page().width() * PIXELS - picture.getWidth()) <= 1
					&& Math.abs(art.page().height() * PIXELS - picture.getHeight()) <= 1) {
				compared++;
				double share = otherwise(art, picture);
				assertTrue(share <= 0.001, CORPUS.relativize(file) + ": " + share + " of the pixels are otherwise");
			}
		}
		assertTrue(compared > 400, compared + " compared");
	}

	/** All that is not meant to break a reader is read, whatever it holds. */
	@Test
	void everyFileIsReadOrRefusedWithAReason() throws Exception {
		assumeTrue(Files.isDirectory(CORPUS), "librsvg2-tests is not installed");
		int read = 0;
		List<String> refused = new ArrayList<>();
		for (Path file : files()) {
			try {
				Svg.read(Files.readAllBytes(file));
				read++;
			} catch (UnreadableArtException e) {
				refused.add(CORPUS.relativize(file) + ": " + e.getMessage());
			}
		}
		assertTrue(read > 800, read + " read");
		for (String each : refused) {
			assertTrue(each.matches("(crash|errors|loading)/.*") || each.contains("entity"), each);
		}
	}

	/** Either shapes come out of a damaged file, or a reason; never anything else. */
	@Test
	void mutantsNeitherCrashNorHang() throws Exception {
		assumeTrue(Files.isDirectory(CORPUS), "librsvg2-tests is not installed");
		Random random = new Random(20_261_129);
		int read = 0;
		int refused = 0;
		for (Path file : files()) {
			byte[] whole = Files.readAllBytes(file);
			for (int i = whole.length > LARGEST_SEED ? 4 : 0; i < 4; i++) {
				try {
					Svg.read(Mutants.of(whole, random), "strokes", random.nextBoolean() ? "lines" : "outlines");
					read++;
				} catch (UnreadableArtException e) {
					assertTrue(e.getMessage().startsWith("leaf.svg"), e.getMessage());
					refused++;
				}
			}
		}
		assertTrue(read + refused > 2_600 && read > 500 && refused > 500, read + " read, " + refused + " refused");
	}

	/** The share of the pixels that are covered here and not there, or there and not here; edges may be beside by one. */
	private static double otherwise(ImportedArt art, BufferedImage picture) {
		BufferedImage ours = Painting.black(picture.getWidth(), picture.getHeight(), PIXELS, Svg.shapes(art));
		int other = 0;
		for (int y = 0; y < picture.getHeight(); y++) {
			for (int x = 0; x < picture.getWidth(); x++) {
				int theirs = picture.getColorModel().hasAlpha() ? picture.getRGB(x, y) >>> 24 : 255;
				int most = 255;
				int least = 0;
				for (int v = Math.max(0, y - 1); v <= Math.min(picture.getHeight() - 1, y + 1); v++) {
					for (int u = Math.max(0, x - 1); u <= Math.min(picture.getWidth() - 1, x + 1); u++) {
						int here = ours.getRaster().getSample(u, v, 0);
						most = Math.min(most, here);
						least = Math.max(least, here);
					}
				}
				other += most > 250 && theirs > 64 || least < 5 && theirs < 8 ? 1 : 0;
			}
		}
		return (double) other / (picture.getWidth() * picture.getHeight());
	}
}
