package org.frisket.typography.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.FontSurgery;
import org.frisket.typography.Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderFontSourceTest {

	@TempDir
	Path folder;

	private List<String> families(FontSource source) {
		return source.fonts(Monitor.NONE).stream().map(FontEntry::family).toList();
	}

	private static FontSurgery named(String family) throws Exception {
		return new FontSurgery(Fonts.embeddedBytes("liberation/LiberationMono-Regular.ttf"))
				.withNames(Map.of(1, family, 2, "Regular"));
	}

	@Test
	void droppedFileIsThereAndRemovedOneIsGone() throws Exception {
		FolderFontSource source = new FolderFontSource("studio", folder.resolve("fonts"));
		assertEquals(List.of(), families(source), "the folder is not there yet");
		Path below = Files.createDirectories(folder.resolve("fonts/of one customer"));
		Path file = Files.write(below.resolve("ferry.ttf"), named("Ferry").font());
		assertEquals(List.of("Ferry"), families(source));
		Files.write(below.resolve("buoy.ttf"), named("Buoy").font());
		assertEquals(List.of("Buoy", "Ferry"), families(source));
		Files.delete(file);
		assertEquals(List.of("Buoy"), families(source));
	}

	@Test
	void unchangedFileIsNotReadAgain() throws Exception {
		Path file = Files.write(folder.resolve("ferry.ttf"), named("Ferry").font());
		FolderFontSource source = new FolderFontSource("studio", folder);
		FontEntry first = source.fonts(Monitor.NONE).get(0);
		assertSame(first, source.fonts(Monitor.NONE).get(0));
		FileTime time = Files.getLastModifiedTime(file);
		Files.write(file, named("Other").font());
		Files.setLastModifiedTime(file, FileTime.fromMillis(time.toMillis() + 2000));
		FontEntry changed = source.fonts(Monitor.NONE).get(0);
		assertNotSame(first, changed);
		assertEquals("Other", changed.family());
		assertEquals(FontFace.read(file).digest(), changed.digest());
	}

	@Test
	void everyFaceOfACollectionIsListed() throws Exception {
		byte[] bold = Fonts.embeddedBytes("liberation/LiberationSerif-Bold.ttf");
		Files.write(folder.resolve("two.ttc"),
				FontSurgery.collection(List.of(named("Ferry"), new FontSurgery(bold))));
		FolderFontSource source = new FolderFontSource("studio", folder);
		assertEquals(List.of("Ferry", "Liberation Serif"), families(source));
		FontFace second = new FontLibrary(List.of(source)).find("Liberation Serif Bold");
		assertEquals(1, second.index());
		FontFace alone = FontFace.read(bold, "alone");
		assertEquals(alone.outline(alone.glyph('g')), second.outline(second.glyph('g')));
	}

	@Test
	void brokenFaceLeavesTheOthersOfItsCollection() throws Exception {
		Files.write(folder.resolve("two.otc"),
				FontSurgery.collection(List.of(named("Ferry"), named("Broken").without("maxp"))));
		FolderFontSource source = new FolderFontSource("studio", folder);
		assertEquals(List.of("Ferry"), families(source));
		assertEquals("table 'maxp' is missing", source.broken(Monitor.NONE).get(0).reason());
	}

	@Test
	void cancelledListingThrowsAndMayBeAskedAgain() throws Exception {
		Files.write(folder.resolve("ferry.ttf"), named("Ferry").font());
		FolderFontSource source = new FolderFontSource("studio", folder);
		assertThrows(CancellationException.class, () -> source.fonts(() -> true));
		assertTrue(families(source).contains("Ferry"));
	}

	@Test
	void faceOfAFileIsFoundByItsNameAndByItsContent() throws Exception {
		FontSurgery bold = new FontSurgery(Fonts.embeddedBytes("liberation/LiberationSerif-Bold.ttf"));
		Path file = Files.write(folder.resolve("two.ttc"), FontSurgery.collection(List.of(named("Ferry"), bold)));
		String digest = FontFace.read(file).digest();
		FontLibrary library = new FontLibrary(List.of(new FolderFontSource("studio", folder)));
		for (FontFace face : List.of(FontFile.read(file, "Liberation Serif", "Bold"),
				library.findByDigest(digest, "Liberation Serif", "Bold", Monitor.NONE))) {
			assertEquals("Liberation Serif", face.family());
			assertEquals(1, face.index());
		}
		for (FontFace face : List.of(FontFile.read(file, "Ferry", null), FontFile.read(file, "Ferry", "Regular"),
				FontFile.read(file, null, null), FontFile.read(file, "Nowhere", "Bold"), library.findByDigest(digest),
				library.findByDigest(digest, "Ferry", null, Monitor.NONE))) {
			assertEquals("Ferry", face.family());
			assertEquals(0, face.index());
		}
	}
}
