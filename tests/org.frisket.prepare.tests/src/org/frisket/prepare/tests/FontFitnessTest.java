package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontFitness;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which fonts can be cut, each of them once. */
class FontFitnessTest {

	@TempDir
	Path folder;

	private static byte[] embedded(String name) throws Exception {
		return new FontLibrary(List.of(new EmbeddedFontSource())).find(name).bytes();
	}

	private List<String> ranked() {
		FontLibrary library = new FontLibrary(List.of(new FolderFontSource("folder", folder)));
		return new FontFitness(library, "Hal", 40, Tolerance.DEFAULT).ofAll(Limits.CARD, Monitor.NONE).fonts().stream()
				.map(FontFitness.Font::name).toList();
	}

	@Test
	void fontOfTwoFilesIsListedOnce() throws Exception {
		byte[] serif = embedded("Liberation Serif");
		Files.write(folder.resolve("a.ttf"), serif);
		Files.write(folder.resolve("b.ttf"), serif);
		Files.write(folder.resolve("c.ttf"), embedded("Liberation Mono"));
		assertEquals(List.of("Liberation Mono", "Liberation Serif"), ranked().stream().sorted().toList());
	}

	@Test
	void fontsOfOneNameAndOtherContentAreBothListed() throws Exception {
		byte[] serif = embedded("Liberation Serif");
		Files.write(folder.resolve("a.ttf"), serif);
		Files.write(folder.resolve("b.ttf"), Arrays.copyOf(serif, serif.length + 4));
		assertEquals(List.of("Liberation Serif", "Liberation Serif"), ranked());
	}

	@Test
	void fontThatIsNamedTwiceIsListedOnce() throws Exception {
		Files.write(folder.resolve("a.ttf"), embedded("Liberation Serif"));
		FontLibrary library = new FontLibrary(List.of(new FolderFontSource("folder", folder)));
		FontFitness fitness = new FontFitness(library, "Hal", 40, Tolerance.DEFAULT);
		assertEquals(1, fitness.of(List.of("Liberation Serif", folder.resolve("a.ttf").toString()), Limits.CARD, Monitor.NONE)
				.fonts().size());
	}
}
