package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.index.FaceRecord;
import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.CharacterMap;
import org.frisket.typography.internal.sfnt.GlyphNames;
import org.frisket.typography.internal.sfnt.LayoutFeatures;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.StyleFigures;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.sfnt.Variations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Whatever stands in the tables, reading them ends soon and either gives something or a reason. How soon is counted; the
 * limit of time only ends a test that hangs.
 */
@Timeout(value = 20, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class DamagedTablesTest {

	private static final List<String> TABLES = List.of("cmap", "post", "name", "OS/2", "head", "GSUB", "GPOS", "fvar",
			"STAT", "CFF ");

	private static List<byte[]> fonts() throws IOException {
		List<byte[]> fonts = new ArrayList<>(List.of(Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf"),
				Fonts.embeddedBytes("net/sf/jasperreports/fonts/dejavu/DejaVuSansMono.ttf")));
		for (String system : List.of(Fonts.DANCING, Fonts.SLAB, "truetype/inter-vf/Inter-roman.var.ttf")) {
			var path = java.nio.file.Path.of("/usr/share/fonts").resolve(system);
			if (Files.exists(path)) {
				fonts.add(Files.readAllBytes(path));
			}
		}
		return fonts;
	}

	@Test
	void fiveThousandMutantsDoNoHarm() throws Exception {
		List<byte[]> fonts = fonts();
		Random random = new Random(20_26);
		int[] outcomes = new int[2];
		for (int i = 0; i < 5_000; i++) {
			byte[] mutant = fonts.get(i % fonts.size()).clone();
			mutate(mutant, random);
			outcomes[isRead(mutant) ? 0 : 1]++;
		}
		assertEquals(5_000, outcomes[0] + outcomes[1]);
		assertTrue(outcomes[0] > 1_000, "most damage leaves something: " + Arrays.toString(outcomes));
	}

	/** Counts what is read of a font: the tables are short, and each is to be read a few times only. */
	private static final class Counted implements ByteSource {

		private static final int MOST_READS = 1_000;
		private static final int MOST_TIMES = 8;

		private final ByteSource source;
		private final long size;
		private int reads;
		private long bytes;

		Counted(byte[] font) {
			source = ByteSource.of(font);
			size = font.length;
		}

		@Override
		public long size() throws IOException {
			return source.size();
		}

		@Override
		public ByteBuffer read(long offset, int length) throws IOException {
			reads++;
			bytes += length;
			assertTrue(reads <= MOST_READS && bytes <= MOST_TIMES * size, reads + " reads, " + bytes + " bytes of " + size);
			return source.read(offset, length);
		}
	}

	/** One to twelve places in one table, mostly near its start where the counts are, get bytes that often hurt. */
	private static void mutate(byte[] font, Random random) {
		ByteBuffer buffer = ByteBuffer.wrap(font);
		String tag = TABLES.get(random.nextInt(TABLES.size()));
		for (int at = 12; at < 12 + 16 * buffer.getShort(4); at += 16) {
			if (new String(font, at, 4, java.nio.charset.StandardCharsets.ISO_8859_1).equals(tag)) {
				int offset = buffer.getInt(at + 8);
				int length = buffer.getInt(at + 12);
				for (int n = 1 + random.nextInt(12); n > 0; n--) {
					int reach = random.nextInt(3) > 0 ? Math.min(length, 64) : length;
					byte[] values = { 0, 1, 0x7F, (byte) 0x80, (byte) 0xFF, (byte) random.nextInt(256) };
					font[offset + random.nextInt(reach)] = values[random.nextInt(values.length)];
				}
				if (random.nextInt(8) == 0) {
					buffer.putInt(at + 12, random.nextInt(length + 1));
				}
			}
		}
	}

	private static boolean isRead(byte[] font) throws IOException {
		try {
			TableDirectory tables = TableDirectory.read(new Counted(font), 0, "mutant");
			NameTable names = NameTable.read(tables);
			CodePoints characters = CharacterMap.read(tables).codePoints();
			assertTrue(characters.size() <= 0x110000);
			assertEquals(700, GlyphNames.read(tables, 700).size());
			LayoutFeatures.read(tables);
			StyleClass style = new StyleClass(StyleFigures.read(tables).weight(), 5, false);
			assertTrue(style.weight() >= 1 && style.weight() <= 1000);
			Variations variations = Variations.read(tables, names);
			assertTrue(variations.axes().stream().allMatch(a -> a.least() <= a.normal() && a.normal() <= a.most()));
			return true;
		} catch (UnreadableFontException refused) {
			assertTrue(refused.getMessage().startsWith("Font mutant cannot be read: "));
			return false;
		}
	}

	@Test
	void mutantsThatOpenCanBeIndexed() throws Exception {
		List<byte[]> fonts = fonts();
		Random random = new Random(77);
		int read = 0;
		for (int i = 0; i < 150; i++) {
			byte[] mutant = fonts.get(i % fonts.size()).clone();
			mutate(mutant, random);
			try {
				FaceRecord record = FaceRecord.of(FontFace.read(mutant, "mutant"));
				assertTrue(record.glyphs() > 0 && record.loneGlyphs() >= 0);
				read++;
			} catch (UnreadableFontException refused) {
				assertTrue(!refused.reason().isEmpty());
			}
		}
		assertTrue(read > 30, read + " read");
	}
}
