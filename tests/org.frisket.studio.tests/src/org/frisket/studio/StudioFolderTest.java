package org.frisket.studio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudioFolderTest {

	@TempDir
	Path home;

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	private StudioFolder studio() {
		return new StudioFolder(home.resolve("Harbour Lane/studio"));
	}

	private static void assertReason(String reason, StudioFolder studio) {
		StudioException refused = assertThrows(StudioException.class, studio::open);
		assertTrue(refused.reason().contains(reason), refused.getMessage());
		assertTrue(refused.getMessage().contains(studio.path().toString()), refused.getMessage());
	}

	@Test
	void placeIsTheChosenOneElseThatOfTheEnvironmentElseInTheHome() {
		assertEquals(Path.of("/home/ada/Frisket Studio"), Studio.usual(Map.of(), "/home/ada"));
		assertEquals(Path.of("/srv/studio"), Studio.usual(Map.of("FRISKET_STUDIO", "/srv/studio"), "/home/ada"));
		assertEquals(Path.of("/home/ada/Frisket Studio"), Studio.usual(Map.of("FRISKET_STUDIO", " "), "/home/ada"));
		Studio.choose(Optional.of(home));
		assertEquals(home, Studio.folder().path());
		Studio.choose(Optional.empty());
		assertEquals(Studio.usual(System.getenv(), System.getProperty("user.home")).toAbsolutePath().normalize(),
				Studio.folder().path());
	}

	@Test
	void askingForTheFolderMakesNothing() throws Exception {
		studio().keptFonts().has("0".repeat(64));
		studio().preferences().get("colour");
		assertFalse(Files.exists(studio().path()));
	}

	@Test
	void missingFolderIsMadeWithWhatBelongsInIt() throws Exception {
		studio().open();
		try (Stream<Path> parts = Files.list(studio().path())) {
			assertEquals(List.of("fonts", "kept-fonts", "studio.properties"),
					parts.map(part -> part.getFileName().toString()).sorted().toList());
		}
		assertEquals(Optional.of("1"), studio().preferences().get("layout"));
		studio().preferences().put("colour", "blue");
		studio().open();
		studio().openForWriting();
		assertEquals(Optional.of("blue"), studio().preferences().get("colour"), "opening changes nothing");
	}

	@Test
	void folderOfSomebodyElseIsUsedAsItIs() throws Exception {
		Files.createDirectories(studio().path());
		studio().open();
		try (Stream<Path> parts = Files.list(studio().path())) {
			assertEquals(0, parts.count(), "only looked into");
		}
		studio().openForWriting();
		assertTrue(Files.isDirectory(studio().fonts()));
	}

	@Test
	void fileIsNoFolder() throws Exception {
		Files.createDirectories(studio().path().getParent());
		Files.writeString(studio().path(), "a letter");
		assertReason("it is no folder", studio());
		assertEquals("a letter", Files.readString(studio().path()));
	}

	@Test
	void fileInTheWayIsNamed() throws Exception {
		Files.writeString(home.resolve("Harbour Lane"), "a letter");
		assertReason("Harbour Lane", studio());
		Path other = Files.createDirectories(home.resolve("other"));
		Files.writeString(other.resolve("fonts"), "a letter");
		StudioException refused = assertThrows(StudioException.class, () -> new StudioFolder(other).openForWriting());
		assertTrue(refused.reason().contains(other.resolve("fonts") + "”"), refused.getMessage());
	}

	@Test
	void readOnlyFolderCanBeLookedIntoButNotWrittenTo() throws Exception {
		studio().open();
		assumeTrue(studio().path().toFile().setWritable(false, false) && !Files.isWritable(studio().path()),
				"this user may write everywhere");
		try {
			studio().open();
			StudioException refused = assertThrows(StudioException.class, () -> studio().openForWriting());
			assertEquals("writing to it is not permitted", refused.reason());
		} finally {
			studio().path().toFile().setWritable(true);
		}
	}

	@Test
	void folderThatCannotBeMadeSaysWhy() {
		assumeTrue(Files.isDirectory(Path.of("/proc")), "no such file system here");
		assertReason("it cannot be made", new StudioFolder(Path.of("/proc/frisket/studio")));
	}

	@Test
	void folderOfANewerFrisketIsLeftAlone() throws Exception {
		studio().open();
		for (String layout : List.of("2", "007", "one", "99999999999")) {
			studio().preferences().put("layout", layout);
			assertReason("made by a newer Frisket (layout " + layout + ")", studio());
		}
	}

	@Test
	void damagedPreferencesAreNamed() throws Exception {
		studio().open();
		Files.writeString(studio().path().resolve("studio.properties"), "layout=1\ncolour=\\u12");
		assertReason("studio.properties cannot be read", studio());
		Files.write(studio().path().resolve("studio.properties"), new byte[] { 'a', '=', (byte) 0xC3, 'x' });
		assertReason("studio.properties cannot be read", studio());
	}

	@Test
	void whatAnotherDeskHasWrittenIsSeenHoweverOldTheFileIs() throws Exception {
		studio().open();
		Path file = studio().path().resolve("studio.properties");
		for (String colour : List.of("red", "sky", "tan")) {
			Files.writeString(file, "layout=1\ncolour=" + colour);
			// as large as before, and long ago
			Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L + colour.charAt(0)));
			for (int again = 0; again < 2; again++) {
				assertEquals(Optional.of(colour), studio().preferences().get("colour"));
			}
			studio().preferences().put("colour", colour + "s");
			assertEquals(Optional.of(colour + "s"), studio().preferences().get("colour"));
		}
		Files.delete(file);
		assertEquals(Optional.empty(), studio().preferences().get("colour"));
	}

	/** Against the reader of the Java runtime. */
	@Test
	void anyPreferenceIsReadBack() throws Exception {
		studio().open();
		StudioPreferences preferences = studio().preferences();
		Random random = new Random(11);
		Map<String, String> all = new HashMap<>(Map.of("layout", "1"));
		String alphabet = " \t\n\r\f\\:=#!aé\u2028\uD83D\uDE00ß\"'u0";
		for (int i = 0; i < 150; i++) {
			String key = text(random, alphabet, 1);
			String value = text(random, alphabet, 0);
			all.put(key, value);
			preferences.put(key, value);
		}
		Properties outside = new Properties();
		outside.load(new StringReader(Files.readString(studio().path().resolve("studio.properties"))));
		assertEquals(all, outside);
		for (Map.Entry<String, String> entry : all.entrySet()) {
			assertEquals(Optional.of(entry.getValue()), preferences.get(entry.getKey()));
		}
	}

	private static String text(Random random, String alphabet, int least) {
		StringBuilder text = new StringBuilder();
		for (int n = least + random.nextInt(6); n > 0; n--) {
			int at = random.nextInt(alphabet.codePointCount(0, alphabet.length()));
			text.appendCodePoint(alphabet.codePointAt(alphabet.offsetByCodePoints(0, at)));
		}
		return text.toString();
	}

	@Test
	void sameValueIsNotWrittenAgain() throws IOException {
		studio().open();
		Path file = studio().path().resolve("studio.properties");
		Object before = Files.readAttributes(file, "lastModifiedTime,fileKey");
		studio().preferences().put("layout", "1");
		assertEquals(before, Files.readAttributes(file, "lastModifiedTime,fileKey"));
	}
}
