package org.frisket.studio;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.UnknownFontException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The studio's own fonts, and those its jobs were made with. */
class StudioFontsTest {

	@TempDir
	Path home;

	private final StudioFontSource source = new StudioFontSource();

	@BeforeEach
	void chooseStudio() throws Exception {
		Studio.choose(Optional.of(home.resolve("studio")));
		Studio.folder().open();
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	/** A font of the product in another file of its own, told by bytes after its end. */
	private static byte[] font(String name, int mark) throws Exception {
		byte[] bytes = new FontLibrary(List.of(new EmbeddedFontSource())).find(name).bytes();
		byte[] marked = Arrays.copyOf(bytes, bytes.length + 4);
		marked[bytes.length] = (byte) mark;
		return marked;
	}

	private List<String> families() {
		return source.fonts(Monitor.NONE).stream().map(FontEntry::family).toList();
	}

	@Test
	void fontDroppedIntoTheFolderIsThere() throws Exception {
		assertEquals(List.of(), families());
		Path fonts = Studio.folder().fonts();
		Files.write(fonts.resolve("buoy.ttf"), font("Liberation Mono", 1));
		assertEquals(List.of("Liberation Mono"), families());
		Files.write(fonts.resolve("ferry.ttf"), font("Liberation Serif", 1));
		assertEquals(List.of("Liberation Mono", "Liberation Serif"), families());
		Files.delete(fonts.resolve("buoy.ttf"));
		assertEquals(List.of("Liberation Serif"), families());
		assertEquals(FontFace.read(fonts.resolve("ferry.ttf")).digest(),
				new FontLibrary(List.of(source)).find("liberation serif").digest());
	}

	@Test
	void brokenFontIsListedWithTheReason() throws Exception {
		Path fonts = Studio.folder().fonts();
		Files.write(fonts.resolve("cut.ttf"), Arrays.copyOf(font("Liberation Mono", 1), 4000));
		Files.writeString(fonts.resolve("letter.otf"), "Dear customer, here is the font you asked for.");
		Files.writeString(fonts.resolve("readme.txt"), "not a font, and not meant to be one");
		assertEquals(List.of(), families());
		List<UnreadableFontException> broken = source.broken(Monitor.NONE);
		assertEquals(2, broken.size());
		assertTrue(broken.get(0).reason().startsWith("it is cut off or damaged"), broken.get(0).getMessage());
		assertTrue(broken.get(0).getMessage().contains("cut.ttf"), broken.get(0).getMessage());
		assertEquals("it is not a TrueType or OpenType font", broken.get(1).reason());
	}

	@Test
	void anotherStudioHasOtherFonts() throws Exception {
		Files.write(Studio.folder().fonts().resolve("buoy.ttf"), font("Liberation Mono", 1));
		assertEquals(1, families().size());
		Studio.choose(Optional.of(home.resolve("other")));
		assertEquals(List.of(), families());
		Studio.choose(Optional.of(home.resolve("studio")));
		assertEquals(List.of("Liberation Mono"), families());
	}

	@Test
	void keptFontIsFoundByItsContentAndNotByItsName() throws Exception {
		FontFace face = FontFace.read(font("Liberation Serif", 7), "ferry");
		KeptFonts kept = Studio.folder().keptFonts();
		assertFalse(kept.has(face.digest()));
		kept.keep(face);
		assertTrue(kept.has(face.digest()));
		assertEquals(List.of(), families(), "it is not offered");
		FontLibrary library = new FontLibrary(List.of(source));
		FontFace found = library.findByDigest(face.digest().toUpperCase(Locale.ROOT));
		assertArrayEquals(face.bytes(), found.bytes());
		assertThrows(UnknownFontException.class, () -> library.findByDigest("0".repeat(64)));
		assertThrows(UnknownFontException.class, () -> library.find("Liberation Serif"));
	}

	@Test
	void damagedKeptFontIsNotTakenForTheRealOne() throws Exception {
		FontFace face = FontFace.read(font("Liberation Serif", 7), "ferry");
		KeptFonts kept = Studio.folder().keptFonts();
		kept.keep(face);
		Files.write(kept.folder().resolve(face.digest() + ".font"), font("Liberation Mono", 7));
		assertThrows(UnknownFontException.class, () -> new FontLibrary(List.of(source)).findByDigest(face.digest()));
	}

	@Test
	void whatIsNoDigestLeadsNowhere() throws Exception {
		KeptFonts kept = Studio.folder().keptFonts();
		Files.write(home.resolve("studio/x.font"), font("Liberation Mono", 1));
		for (String digest : Arrays.asList("../x", "", null, "g".repeat(64), "0".repeat(63))) {
			assertFalse(kept.has(digest), digest);
			assertEquals(List.of(), kept.faces(digest));
		}
	}
}
