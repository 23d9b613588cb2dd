package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnreadableFontTest {

	private static final String SERIF = "liberation/LiberationSerif-Regular.ttf";

	@TempDir
	Path folder;

	@Test
	void missingFileIsNamed() {
		assertReason("there is no such file", folder.resolve("nowhere.ttf"));
	}

	@Test
	void folderIsNoFont() {
		assertReason("it is a folder", folder);
	}

	@Test
	void emptyFileIsNoFont() throws IOException {
		assertReason("it is empty", Files.createFile(folder.resolve("empty.ttf")));
	}

	@Test
	void textFileIsNoFont() throws IOException {
		assertReason("it is not a TrueType or OpenType font",
				Files.writeString(folder.resolve("letter.otf"), "Dear customer, here is the font you asked for."));
		assertReason("it is not a font (5 bytes only)", Files.writeString(folder.resolve("short.otf"), "hello"));
	}

	@Test
	void webFontAndTypeOneAreTold() throws IOException {
		assertReason("it is a packed web font (WOFF); use its .ttf or .otf file",
				Files.writeString(folder.resolve("web.ttf"), "wOF2".repeat(20)));
		assertReason("it is a Type 1 font; use a .ttf or .otf file",
				Files.writeString(folder.resolve("old.ttf"), "%!PS-AdobeFont-1.0: Whatever"));
	}

	@Test
	void enormousFileIsRefusedUnread() throws IOException {
		Path file = folder.resolve("enormous.ttf");
		try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
			sparse.setLength(3L << 30);
		}
		assertReason("it is too big (3072 MB; at most 64 MB are read)", file);
	}

	@Test
	void pictureFontHasNoOutlines() throws IOException {
		byte[] bytes = rename(Fonts.embeddedBytes(SERIF), "glyf", "CBDT");
		assertReason("it holds no outlines (pictures of letters only)", bytes);
	}

	@ParameterizedTest
	@ValueSource(strings = { "cmap", "head", "hhea", "hmtx", "maxp", "loca" })
	void missingTableIsNamed(String tag) throws IOException {
		assertReason("table '" + tag + "' is missing", rename(Fonts.embeddedBytes(SERIF), tag, "zzzz"));
	}

	@Test
	void senselessFiguresAreRefused() throws IOException {
		byte[] bytes = Fonts.embeddedBytes(SERIF);
		ByteBuffer edit = ByteBuffer.wrap(bytes);
		int head = edit.getInt(Fonts.entry(bytes, "head") + 8);
		edit.putShort(head + 18, (short) 15);
		assertReason("it has 15 units per em, where 16 to 16384 are allowed", bytes);
		edit.putShort(head + 18, (short) 2048).putInt(head + 12, 0);
		assertReason("table 'head' is damaged", bytes);
	}

	@Test
	void outlineOutsideItsTableIsFound() throws IOException {
		byte[] bytes = Fonts.embeddedBytes(SERIF);
		ByteBuffer edit = ByteBuffer.wrap(bytes);
		int loca = edit.getInt(Fonts.entry(bytes, "loca") + 8);
		edit.putInt(loca + 4 * 40, Integer.MAX_VALUE);
		assertReason("the outline of glyph 39 lies outside table 'glyf'", bytes);
	}

	@Test
	void lyingTableLengthsAreFoundOrHarmless() throws Exception {
		byte[] whole = Fonts.embeddedBytes(SERIF);
		int tables = ByteBuffer.wrap(whole).getShort(4);
		int refused = 0;
		for (int i = 0; i < tables; i++) {
			for (int length : new int[] { 0, 1, 7, 1 << 20, Integer.MAX_VALUE, -1 }) {
				byte[] bytes = whole.clone();
				ByteBuffer.wrap(bytes).putInt(12 + 16 * i + 12, length);
				refused += refusedOrUsable(bytes) ? 1 : 0;
			}
			for (int offset : new int[] { whole.length - 1, whole.length + 1, Integer.MIN_VALUE, -1 }) {
				byte[] bytes = whole.clone();
				ByteBuffer.wrap(bytes).putInt(12 + 16 * i + 8, offset);
				refused += refusedOrUsable(bytes) ? 1 : 0;
			}
		}
		assertTrue(refused >= 7 * tables, refused + " of " + 10 * tables);
	}

	@Test
	void fontCutOffAnywhereIsRefused() throws Exception {
		byte[] whole = Fonts.embeddedBytes(SERIF);
		Random random = new Random(7);
		for (int i = 0; i < 200; i++) {
			int length = i < 60 ? i * 8 : random.nextInt(whole.length - 4);
			byte[] bytes = Arrays.copyOf(whole, length);
			assertThrows(UnreadableFontException.class, () -> FontFace.read(bytes, "cut"), () -> "cut at " + length);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DANCING, Fonts.LOBSTER, Fonts.SLAB, Fonts.DEJAVU_SERIF })
	void damagedFontIsRefusedOrUsable(String font) throws Exception {
		byte[] whole = Files.readAllBytes(Fonts.path(font));
		Random random = new Random(font.hashCode());
		for (int i = 0; i < 100; i++) {
			byte[] bytes = whole.clone();
			int count = 1 + random.nextInt(40);
			// every third font is damaged in its first kilobytes, where directories and headers are
			int reach = i % 3 == 0 ? 4096 : bytes.length;
			for (int k = 0; k < count; k++) {
				bytes[random.nextInt(reach)] = (byte) random.nextInt(256);
			}
			refusedOrUsable(bytes);
		}
	}

	/** @return whether it was refused; a usable face must give finite outlines for all it is asked */
	private static boolean refusedOrUsable(byte[] bytes) {
		FontFace face;
		try {
			face = FontFace.read(bytes, "damaged");
		} catch (UnreadableFontException refused) {
			assertTrue(refused.getMessage().startsWith("Font damaged cannot be read: "), refused.getMessage());
			return true;
		}
		for (int glyph = 0; glyph < face.glyphCount(); glyph += 1 + face.glyphCount() / 40) {
			for (Contour contour : face.outline(glyph).contours()) {
				for (Segment segment : contour.segments()) {
					assertTrue(segment.start().isFinite() && segment.at(0.5).isFinite());
				}
			}
		}
		SetText set = TextSetter.set("AVo fix\nHé", face, Setting.ofCapHeight(10), Monitor.NONE);
		Joined joined = Joiner.join(set, 0.3, new Tolerance(0.2), Monitor.NONE);
		assertEquals(set.letters().size(), joined.shifts().size());
		assertFalse(joined.shifts().stream().anyMatch(s -> !Double.isFinite(s)));
		return false;
	}

	private static byte[] rename(byte[] bytes, String from, String to) {
		byte[] renamed = bytes.clone();
		for (int i = 0; i < 4; i++) {
			renamed[Fonts.entry(bytes, from) + i] = (byte) to.charAt(i);
		}
		return renamed;
	}

	private static void assertReason(String reason, Path file) {
		UnreadableFontException refused = assertThrows(UnreadableFontException.class, () -> FontFace.read(file));
		assertEquals(reason, refused.reason());
		assertEquals("Font " + file + " cannot be read: " + reason, refused.getMessage());
	}

	private static void assertReason(String reason, byte[] bytes) {
		UnreadableFontException refused = assertThrows(UnreadableFontException.class,
				() -> FontFace.read(bytes, "this"));
		assertEquals(reason, refused.reason());
	}
}
