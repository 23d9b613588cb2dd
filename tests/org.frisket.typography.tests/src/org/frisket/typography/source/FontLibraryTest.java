package org.frisket.typography.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.Fonts;
import org.frisket.typography.UnreadableFontException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FontLibraryTest {

	@TempDir
	Path folder;

	private final FontLibrary embedded = new FontLibrary(List.of(new EmbeddedFontSource()));

	@Test
	void embeddedFontsAreWhatTheListSays() throws Exception {
		List<FontEntry> fonts = new EmbeddedFontSource().fonts(Monitor.NONE);
		assertEquals(24, fonts.size());
		for (FontEntry font : fonts) {
			FontFace face = font.open();
			assertEquals(font.family(), face.family(), font.place());
			assertEquals(font.style(), face.style(), font.place());
			assertEquals(font.digest(), face.digest());
		}
	}

	@Test
	void licencesLieBesideTheFonts() {
		for (EmbeddedFontSource.Family family : EmbeddedFontSource.families()) {
			assertNotNull(getClass().getClassLoader().getResource(family.licenceText()), family.licenceText());
		}
	}

	@Test
	void fontIsFoundByAnyOfItsNames() throws Exception {
		for (String name : List.of("Liberation Sans", "liberation sans", " Liberation Sans Regular ")) {
			assertEquals("LiberationSans", embedded.find(name).postScriptName());
		}
		assertEquals("LiberationSerif-BoldItalic", embedded.find("liberation serif bold italic").postScriptName());
		assertEquals("DejaVuSans", embedded.find("DejaVu Sans").postScriptName());
	}

	@Test
	void unknownNameGetsTheNearestSuggested() {
		UnknownFontException unknown = assertThrows(UnknownFontException.class, () -> embedded.find("Liberaton Serif"));
		assertEquals("Liberation Serif", unknown.suggestions().get(0));
		assertTrue(unknown.getMessage().startsWith("No font called 'Liberaton Serif'; nearest: Liberation Serif"),
				unknown.getMessage());
		assertEquals("No font called 'Qwxzy'.",
				assertThrows(UnknownFontException.class, () -> embedded.find("Qwxzy")).getMessage());
		assertThrows(UnknownFontException.class, () -> embedded.find(""));
	}

	@Test
	void pathIsReadAsAFile() throws Exception {
		Path file = Files.write(folder.resolve("odd name"), Fonts.embeddedBytes("liberation/LiberationMono-Bold.ttf"));
		FontFace face = embedded.find(file.toString());
		assertEquals("LiberationMono-Bold", face.postScriptName());
		assertEquals(file, face.source().orElseThrow());
		assertThrows(UnreadableFontException.class, () -> embedded.find(folder.resolve("no").toString()));
		assertThrows(UnreadableFontException.class, () -> embedded.find("nosuchfont.otf"));
		assertThrows(UnreadableFontException.class, () -> embedded.find("bad\0name.ttf"));
	}

	@Test
	void laterSourceIsNotAskedInVain() throws Exception {
		FontSource never = new FontSource() {

			@Override
			public String id() {
				return "never";
			}

			@Override
			public List<FontEntry> fonts(Monitor monitor) {
				throw new AssertionError("asked");
			}
		};
		FontLibrary library = new FontLibrary(List.of(new EmbeddedFontSource(), never));
		assertEquals("LiberationMono", library.find("Liberation Mono").postScriptName());
	}

	@Test
	void foldersAreSearchedAndBrokenFilesToldApart() throws Exception {
		Path below = Files.createDirectories(folder.resolve("a/b"));
		Files.write(below.resolve("one.ttf"), Fonts.embeddedBytes("liberation/LiberationSans-Bold.ttf"));
		Files.write(below.resolve("TWO.TTF"), Fonts.embeddedBytes("liberation/LiberationSerif-Bold.ttf"));
		Files.writeString(folder.resolve("broken.otf"), "no font, this");
		Files.writeString(folder.resolve("readme.txt"), "not looked at");
		SystemFontSource source = new SystemFontSource("mine", List.of(folder, folder.resolve("missing")));
		assertEquals(List.of("Liberation Serif", "Liberation Sans"),
				source.fonts(Monitor.NONE).stream().map(FontEntry::family).toList());
		assertEquals(1, source.broken(Monitor.NONE).size());
		assertEquals("it is not a TrueType or OpenType font", source.broken(Monitor.NONE).get(0).reason());
		FontFace face = new FontLibrary(List.of(source)).find("Liberation Sans");
		assertEquals("Bold", face.style(), "the only style there is");
		Files.delete(below.resolve("TWO.TTF"));
		source.refresh();
		assertEquals(1, source.fonts(Monitor.NONE).size());
	}

	@Test
	void fontIsFoundByItsDigest() throws Exception {
		String digest = Fonts.symbols().digest();
		assertEquals("DejaVuSans", embedded.findByDigest(digest.toUpperCase()).postScriptName());
		assertThrows(UnknownFontException.class, () -> embedded.findByDigest("00"));
	}

	@Test
	void systemNamesAreThoseOfTheOpenedFace() throws Exception {
		SystemFontSource source = new SystemFontSource();
		for (FontEntry font : source.fonts(Monitor.NONE).stream().limit(100).toList()) {
			try {
				assertEquals(font.names(), font.open().names(), font.place());
			} catch (UnreadableFontException unreadable) {
				assertEquals(font.place(), unreadable.font());
			}
		}
	}
}
