package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Real fonts after all kinds of damage, down to the native shaper: each is refused with a reason, or what is asked of it
 * stays within bounds. The shaper runs in this process, so that a crash of it ends the tests.
 * <p>
 * What a mutant may cost is counted. The limit of time is only there to end a test that hangs; it is some hundred times
 * what the test takes.
 */
@Timeout(value = 20, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HostileFontsTest {

	private static final int MUTANTS = 6_000;
	/** Of one glyph: more than the points a glyph of the format can have, and those of its parts. */
	private static final int MOST_SEGMENTS = 200_000;
	/** Of a short text. */
	private static final int MOST_GLYPHS = 20_000;
	private static final String TEXT = "AVo fix\u0301 \u00C4\u20AC";
	private static final int[] BAD = { 0, 1, 0x7F, 0x80, 0xFF };

	private static List<byte[]> fonts() throws IOException {
		List<byte[]> fonts = new ArrayList<>(List.of(Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf"),
				Fonts.embeddedBytes("net/sf/jasperreports/fonts/dejavu/DejaVuSansMono.ttf")));
		for (String system : List.of(Fonts.DANCING, Fonts.LOBSTER, Fonts.SLAB, "truetype/inter-vf/Inter-roman.var.ttf",
				"truetype/lohit-devanagari/Lohit-Devanagari.ttf")) {
			Path path = Path.of("/usr/share/fonts").resolve(system);
			if (Files.exists(path)) {
				fonts.add(Files.readAllBytes(path));
			}
		}
		return fonts;
	}

	/** A table's entry in the directory of a plain font. */
	private record Entry(int at, String tag, int offset, int length) {

		static List<Entry> all(byte[] font) {
			ByteBuffer buffer = ByteBuffer.wrap(font);
			List<Entry> entries = new ArrayList<>();
			for (int i = 0; i < buffer.getShort(4); i++) {
				int at = 12 + 16 * i;
				entries.add(new Entry(at, new String(font, at, 4, StandardCharsets.ISO_8859_1), buffer.getInt(at + 8),
						buffer.getInt(at + 12)));
			}
			return entries;
		}
	}

	/** Each kind of damage in turn. */
	private static byte[] mutant(byte[] font, int kind, Random random) {
		byte[] mutant = font.clone();
		ByteBuffer buffer = ByteBuffer.wrap(mutant);
		List<Entry> entries = Entry.all(font);
		Entry entry = entries.get(random.nextInt(entries.size()));
		switch (kind) {
		case 0 -> mutant = Arrays.copyOf(font, random.nextInt(font.length));
		case 1 -> buffer.putInt(entry.at() + 12, lie(entry.length(), random));
		case 2 -> buffer.putInt(entry.at() + 8, lie(entry.offset(), random));
		case 3 -> bytes(mutant, entry, random);
		case 4 -> {
			// the content of another table, in as much as it fits
			Entry other = entries.get(random.nextInt(entries.size()));
			System.arraycopy(font, other.offset(), mutant, entry.offset(), Math.min(entry.length(), other.length()));
		}
		case 5 -> {
			int from = entry.offset() + random.nextInt(Math.max(1, entry.length()));
			byte fill = (byte) BAD[random.nextInt(BAD.length)];
			Arrays.fill(mutant, from, Math.min(entry.offset() + entry.length(), from + 1 + random.nextInt(400)), fill);
		}
		default -> figures(buffer, entries, random);
		}
		return mutant;
	}

	private static int lie(int truth, Random random) {
		int[] lies = { 0, 1, 3, truth - 1, truth + 1, truth / 2, 2 * truth, Integer.MAX_VALUE, -1, random.nextInt() };
		return lies[random.nextInt(lies.length)];
	}

	/** Mostly near the start of the table, where the counts are. */
	private static void bytes(byte[] mutant, Entry entry, Random random) {
		for (int n = 1 + random.nextInt(12); n > 0; n--) {
			int reach = Math.max(1, random.nextInt(3) > 0 ? Math.min(entry.length(), 64) : entry.length());
			int value = random.nextBoolean() ? BAD[random.nextInt(BAD.length)] : random.nextInt(256);
			mutant[entry.offset() + random.nextInt(reach)] = (byte) value;
		}
	}

	/** The em, the form of loca, the numbers of glyphs and of advances. */
	private static void figures(ByteBuffer buffer, List<Entry> entries, Random random) {
		int[] values = { 0, 1, 15, 16, 0x4000, 0x4001, 0x7FFF, 0x8000, 0xFFFF, random.nextInt(0x10000) };
		short value = (short) values[random.nextInt(values.length)];
		record Figure(String table, int at) {
		}
		List<Figure> figures = List.of(new Figure("head", 18), new Figure("head", 50), new Figure("maxp", 4),
				new Figure("hhea", 34));
		Figure figure = figures.get(random.nextInt(figures.size()));
		entries.stream().filter(e -> e.tag().equals(figure.table()))
				.forEach(e -> buffer.putShort(e.offset() + figure.at(), value));
	}

	@Test
	void thousandsOfMutantsAreRefusedWithAReasonOrStayWithinBounds() throws Exception {
		List<byte[]> fonts = fonts();
		Random random = new Random(1884);
		int[] refused = new int[7];
		int[] usable = new int[7];
		for (int i = 0; i < MUTANTS; i++) {
			int kind = i % 7;
			(isUsable(mutant(fonts.get(i / 7 % fonts.size()), kind, random), random) ? usable : refused)[kind]++;
		}
		String counts = "refused " + Arrays.toString(refused) + ", usable " + Arrays.toString(usable);
		assertEquals(MUTANTS, Arrays.stream(refused).sum() + Arrays.stream(usable).sum());
		assertTrue(refused[0] > MUTANTS / 7 * 0.99, "whatever is cut off is refused: " + counts);
		for (int kind = 1; kind < 7; kind++) {
			assertTrue(refused[kind] > 50 && usable[kind] > 50, counts);
		}
	}

	/** @return false if it was refused */
	private static boolean isUsable(byte[] font, Random random) {
		FontFace face;
		try {
			face = FontFace.read(font, "mutant");
		} catch (UnreadableFontException refused) {
			assertTrue(refused.getMessage().startsWith("Font mutant cannot be read: "), refused.getMessage());
			assertTrue(refused.reason().length() > 8, refused.reason());
			return false;
		}
		for (int n = 0; n < 6; n++) {
			int glyph = n == 0 ? face.glyph('A') : random.nextInt(face.glyphCount());
			assertBounded(face, glyph);
		}
		char[] text = TEXT.toCharArray();
		List<PlacedGlyph> glyphs = face.engine().shape(text, new Run(0, text.length, false), new Shaping(true, true, ""));
		assertTrue(glyphs.size() <= MOST_GLYPHS, glyphs.size() + " glyphs");
		for (PlacedGlyph glyph : glyphs) {
			assertTrue(Double.isFinite(glyph.x()) && Double.isFinite(glyph.y()) && Double.isFinite(glyph.advance()));
			assertTrue(glyph.cluster() >= 0 && glyph.cluster() < text.length);
		}
		return true;
	}

	private static int assertBounded(FontFace face, int glyph) {
		int segments = 0;
		for (Contour contour : face.outline(glyph).contours()) {
			segments += contour.segments().size();
			assertTrue(segments <= MOST_SEGMENTS, "glyph " + glyph);
			for (Segment segment : contour.segments()) {
				assertTrue(segment.start().isFinite() && segment.end().isFinite() && segment.at(0.5).isFinite());
			}
		}
		return segments;
	}

	private static FontFace face(Map<Integer, byte[]> glyphs) throws Exception {
		return FontFace.read(Glyf.font(Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf"), glyphs), "made");
	}

	@Test
	void madeGlyphsAreReadAsTheyAre() throws Exception {
		int a = Fonts.sans().glyph('A');
		int b = Fonts.sans().glyph('B');
		FontFace face = face(Map.of(a, Glyf.composite(0.5, 100, b)));
		assertEquals(Fonts.sans().outline(b).bounds().height() / 2, face.outline(a).bounds().height(), 0.2);
		assertEquals(4, face(Map.of(a, Glyf.points(4))).outline(a).nodeCount());
	}

	@Test
	void glyphsMadeOfThemselvesEnd() throws Exception {
		int a = Fonts.sans().glyph('A');
		int b = Fonts.sans().glyph('B');
		int c = Fonts.sans().glyph('C');
		assertBounded(face(Map.of(a, Glyf.composite(1, 0, a))), a);
		assertBounded(face(Map.of(a, Glyf.composite(1, 0, a, a, a))), a);
		FontFace ring = face(Map.of(a, Glyf.composite(1, 1, b), b, Glyf.composite(1, 1, c, b), c, Glyf.composite(1, 1, a, b)));
		for (int glyph : new int[] { a, b, c }) {
			assertBounded(ring, glyph);
		}
		TextSetter.set("ABC", ring, Setting.ofCapHeight(10), Monitor.NONE);
	}

	@Test
	void partsOfPartsDoNotGrowWithoutBound() throws Exception {
		// each twice the one before it: the last would have 2 to the 40th times the points of the first
		int first = Fonts.sans().glyph('A');
		Map<Integer, byte[]> doubling = new HashMap<>();
		for (int i = 1; i <= 40; i++) {
			doubling.put(first + i, Glyf.composite(1, 1, first + i - 1, first + i - 1));
		}
		FontFace face = face(doubling);
		assertEquals(2 * assertBounded(face, first), assertBounded(face, first + 1));
		for (int i = 2; i <= 40; i++) {
			assertBounded(face, first + i);
		}
	}

	@Test
	void absurdCoordinatesStayFinite() throws Exception {
		int first = Fonts.sans().glyph('A');
		Map<Integer, byte[]> growing = new HashMap<>();
		for (int i = 1; i <= 60; i++) {
			growing.put(first + i, Glyf.composite(i % 2 == 0 ? 2 : -2, Short.MAX_VALUE, first + i - 1));
		}
		FontFace face = face(growing);
		for (int i = 0; i <= 60; i++) {
			assertBounded(face, first + i);
		}
		SetText set = TextSetter.set("AaZz", face, Setting.ofCapHeight(10), Monitor.NONE);
		assertTrue(Double.isFinite(set.outline().bounds().width()));
	}

	@Test
	void glyphOfAsManyPointsAsThereCanBeIsRead() throws Exception {
		int a = Fonts.sans().glyph('A');
		assertBounded(face(Map.of(a, Glyf.points(65_535))), a);
		assertTrue(assertBounded(face(Map.of(a, Glyf.points(10_000))), a) > 5_000);
		// says that it has all of them, and ends
		byte[] lie = Arrays.copyOf(Glyf.points(65_535), 400);
		assertBounded(face(Map.of(a, lie)), a);
	}

	@Test
	void senselessEmIsRefused() throws Exception {
		byte[] font = Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf");
		for (int em : new int[] { 0, 15, 16_385, 65_535 }) {
			byte[] head = new FontSurgery(font).table("head").clone();
			ByteBuffer.wrap(head).putShort(18, (short) em);
			byte[] other = new FontSurgery(font).with("head", head).font();
			assertEquals("it has " + em + " units per em, where 16 to 16384 are allowed",
					assertThrows(UnreadableFontException.class, () -> FontFace.read(other, "em")).reason());
		}
	}
}
