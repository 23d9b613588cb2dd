package org.frisket.typography.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.Character.UnicodeScript;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FontIndexTest {

	private static final List<FontSource> EMBEDDED = List.of(new EmbeddedFontSource());

	@TempDir
	Path folder;

	private static List<String> labels(FontIndex index, FontQuery query) {
		return index.search(query).stream().map(f -> f.face().names().label()).toList();
	}

	/** The embedded fonts, counting how often one is opened. */
	private static final class Counting implements FontSource {

		final AtomicInteger opened = new AtomicInteger();

		@Override
		public String id() {
			return "counting";
		}

		@Override
		public List<FontEntry> fonts(Monitor monitor) {
			return new EmbeddedFontSource().fonts(monitor).stream().map(f -> new FontEntry(f.names(), f.place(), () -> {
				opened.incrementAndGet();
				return f.open();
			}, f::digest)).toList();
		}
	}

	@Test
	void recordTellsWhatTheFaceTells() throws Exception {
		FontIndex index = FontIndexer.withoutMemory().index(EMBEDDED, Monitor.NONE);
		assertEquals(24, index.fonts().size());
		for (IndexedFont font : index.fonts()) {
			FontFace face = font.entry().open();
			FaceRecord record = font.face();
			assertEquals(face.names(), record.names());
			assertEquals(face.digest(), record.digest());
			assertEquals(face.capHeight() / face.unitsPerEm(), record.capHeight());
			assertEquals(face.xHeight() / face.unitsPerEm(), record.xHeight());
			assertEquals(face.glyphCount(), record.glyphs());
			assertEquals(face.embedding(), record.embeddingBits());
			assertTrue(face.licence().startsWith(record.licence()));
			assertTrue(record.scripts().contains(UnicodeScript.LATIN));
			assertEquals(0, record.axes());
			assertEquals("embedded", font.source());
		}
	}

	@Test
	void searchIsByNameStyleScriptAndCharacters() {
		FontIndex index = FontIndexer.withoutMemory().index(EMBEDDED, Monitor.NONE);
		assertEquals(24, index.search(FontQuery.ALL).size());
		assertEquals(List.of("Liberation Serif", "Liberation Serif Italic", "Liberation Serif Bold",
				"Liberation Serif Bold Italic"), labels(index, FontQuery.named(" sérif LIBER")));
		assertEquals(List.of("Liberation Mono Bold"),
				labels(index, FontQuery.named("liberation mono").withWeights(600, 1000).withItalic(false)));
		assertTrue(labels(index, FontQuery.ALL.withScript(UnicodeScript.ARABIC)).stream()
				.allMatch(f -> f.startsWith("DejaVu Sans")));
		assertFalse(labels(index, FontQuery.ALL.withScript(UnicodeScript.ARABIC)).isEmpty());
		assertEquals(Set.of(), Set.copyOf(labels(index, FontQuery.ALL.withScript(UnicodeScript.DEVANAGARI))));
		assertEquals(List.of(), labels(index, FontQuery.named("nosuch")));
		List<String> withStar = labels(index, FontQuery.ALL.withCharacters("Ferry \u2605\n"));
		assertTrue(withStar.contains("DejaVu Sans"));
		assertFalse(withStar.contains("Liberation Sans"));
	}

	@Test
	void aFewSymbolsMakeNoScript() {
		assertEquals(Set.of(UnicodeScript.LATIN),
				Scripts.of(CodePoints.in("ABCDEFGHIJKLMNOPQRSTUVWXYZ\u03A9\u03C0\u00B5")));
		assertEquals(Set.of(), Scripts.of(CodePoints.in("ABC123!?")));
		assertEquals(Set.of(UnicodeScript.HEBREW),
				Scripts.of(CodePoints.in("\u05D0\u05D1\u05D2\u05D3\u05D4\u05D5\u05D6\u05D7\u05D8\u05D9\u05DA\u05DB")));
	}

	@Test
	void whatIsKnownIsNotOpenedAgain() throws Exception {
		Counting source = new Counting();
		FontIndexer indexer = FontIndexer.rememberingIn(folder.resolve("made if need be"));
		FontIndex cold = indexer.index(List.of(source), Monitor.NONE);
		assertEquals(24, source.opened.get());
		FontIndex warm = indexer.index(List.of(source), Monitor.NONE);
		assertEquals(24, source.opened.get());
		assertEquals(cold.fonts().stream().map(IndexedFont::face).toList(),
				warm.fonts().stream().map(IndexedFont::face).toList());
	}

	@Test
	void damagedMemoryCountsAsEmpty() throws Exception {
		Counting source = new Counting();
		FontIndexer indexer = FontIndexer.rememberingIn(folder);
		FontIndex whole = indexer.index(List.of(source), Monitor.NONE);
		Path file = folder.resolve("faces.index");
		byte[] bytes = Files.readAllBytes(file);
		byte[] flipped = bytes.clone();
		flipped[bytes.length / 2] ^= 4;
		byte[] newer = bytes.clone();
		newer[7]++;
		for (byte[] damaged : List.of(new byte[0], java.util.Arrays.copyOf(bytes, bytes.length - 9), flipped, newer,
				"no index".getBytes())) {
			Files.write(file, damaged);
			int before = source.opened.get();
			FontIndex again = indexer.index(List.of(source), Monitor.NONE);
			assertEquals(before + 24, source.opened.get());
			assertEquals(whole.fonts().size(), again.fonts().size());
		}
		assertEquals(List.of(file), Files.list(folder).toList(), "no halves are left behind");
	}

	@Test
	void folderThatCannotBeWrittenDoesNoHarm() throws Exception {
		Path file = Files.writeString(folder.resolve("a file"), "in the way");
		FontIndex index = FontIndexer.rememberingIn(file.resolve("below")).index(EMBEDDED, Monitor.NONE);
		assertEquals(24, index.fonts().size());
	}

	@Test
	void cancellingKeepsWhatWasLearned() {
		Counting source = new Counting();
		FontIndexer indexer = FontIndexer.rememberingIn(folder);
		List<Double> progress = new ArrayList<>();
		Monitor monitor = new Monitor() {

			@Override
			public boolean isCancelled() {
				return source.opened.get() >= 10;
			}

			@Override
			public void worked(double fraction) {
				progress.add(fraction);
			}
		};
		assertThrows(CancellationException.class, () -> indexer.index(List.of(source), monitor));
		assertEquals(10, source.opened.get());
		assertEquals(progress.stream().sorted().toList(), progress);
		assertEquals(10 / 24.0, progress.get(progress.size() - 1), 1e-9);
		List<String> told = new ArrayList<>();
		indexer.index(List.of(source), Monitor.NONE, font -> told.add(font.entry().place()));
		assertEquals(24, source.opened.get());
		assertEquals(24, told.size());
	}

	@Test
	void brokenFontsAndSourcesAreListedAndTheRestGoesOn() throws Exception {
		byte[] good = new EmbeddedFontSource().fonts(Monitor.NONE).get(0).open().bytes();
		Files.write(folder.resolve("a.ttf"), java.util.Arrays.copyOf(good, good.length / 2));
		Files.write(folder.resolve("b.ttf"), good);
		byte[] headless = good.clone();
		int head = java.nio.ByteBuffer.wrap(good).getInt(entry(good, "head") + 8);
		headless[head + 12] = 0;
		Files.write(folder.resolve("c.ttf"), headless);
		FontSource failing = new FontSource() {

			@Override
			public String id() {
				return "failing";
			}

			@Override
			public List<FontEntry> fonts(Monitor monitor) {
				throw new IllegalStateException("the shelf fell down");
			}
		};
		FontEntry hurtful = new FontEntry(new FontNames("Hurtful", "", "Hurtful", ""), "nowhere", () -> {
			throw new IllegalArgumentException("ouch");
		}, () -> "00");
		FontSource strange = new FontSource() {

			@Override
			public String id() {
				return "strange";
			}

			@Override
			public List<FontEntry> fonts(Monitor monitor) {
				return List.of(hurtful);
			}
		};
		for (int pass = 0; pass < 2; pass++) {
			FontIndex index = FontIndexer.rememberingIn(folder.resolve("memory"))
					.index(List.of(failing, strange, new FolderFontSource("studio", folder)), Monitor.NONE);
			assertEquals(1, index.fonts().size());
			List<String> reasons = index.broken().stream().map(UnreadableFontException::reason).toList();
			assertEquals(4, reasons.size(), reasons.toString());
			assertEquals("this source of fonts failed: the shelf fell down", reasons.get(0));
			assertTrue(reasons.get(1).startsWith("it is cut off or damaged"), reasons.get(1));
			assertEquals("it cannot be measured: ouch", reasons.get(2));
			assertEquals("table 'head' is damaged", reasons.get(3));
		}
	}

	private static int entry(byte[] bytes, String tag) {
		for (int at = 12;; at += 16) {
			if (new String(bytes, at, 4, java.nio.charset.StandardCharsets.ISO_8859_1).equals(tag)) {
				return at;
			}
		}
	}

	@Test
	void twoThousandFontsAreSearchedByAllAtOnce() {
		List<FaceRecord> real = FontIndexer.withoutMemory().index(EMBEDDED, Monitor.NONE).fonts().stream()
				.map(IndexedFont::face).toList();
		List<IndexedFont> many = new ArrayList<>();
		for (int i = 0; i < 2_000; i++) {
			FaceRecord r = real.get(i % real.size());
			FontNames names = new FontNames("Harbour " + i, r.names().style(), "Harbour " + i + " " + r.names().style(),
					"");
			FaceRecord renamed = new FaceRecord(names, r.digest(), new StyleClass(1 + i % 1000, 5, i % 2 == 0),
					r.capHeight(), r.xHeight(), r.unitsPerEm(), r.glyphs(), r.loneGlyphs(), 0, 0, "", "",
					r.characters(), r.scripts(), false);
			FontEntry unopened = new FontEntry(names, "memory", () -> {
				throw new AssertionError("a search opens no font");
			}, () -> {
				throw new AssertionError("a search reads no file");
			});
			many.add(new IndexedFont(unopened, renamed, "many"));
		}
		FontIndex index = new FontIndex(many, List.of());
		String everyday = "The quick brown fox jumps over 1234567890 lazy dogs \u00E4\u00F6\u00FC\u20AC\u2605";
		FontQuery query = FontQuery.named("harb 7").withScript(UnicodeScript.CYRILLIC).withCharacters(everyday);
		int found = index.search(query).size();
		assertTrue(found > 20, "found " + found);
		assertEquals(List.of(), index.search(query.withScript(UnicodeScript.DEVANAGARI)));
	}
}
