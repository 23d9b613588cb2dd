package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;

class StackSetterTest {

	private static final Setting TEN = Setting.ofCapHeight(10);

	private static SetText set(String text, FontFace face, Setting setting) {
		return StackSetter.set(text, face, setting, Monitor.NONE);
	}

	@Test
	void lettersStandUnderEachOtherCentredByTheirAdvances() throws Exception {
		FontFace face = Fonts.sans();
		SetText stack = set("WIM", face, TEN);
		double widest = face.advance(face.glyph('W')) * stack.scale();
		for (int i = 0; i < 3; i++) {
			Letter letter = stack.letters().get(i);
			assertEquals(16.0 * i, letter.origin().y(), 1e-9);
			assertEquals(widest / 2, letter.origin().x() + letter.advance() / 2, 1e-9);
			Letter across = TextSetter.set(stack.characters(letter), face, TEN, Monitor.NONE).letters().get(0);
			assertEquals(across.outline().bounds().minX(),
					letter.outline().bounds().minX() - letter.origin().x(), 1e-6);
			assertEquals(across.outline().bounds().minY(),
					letter.outline().bounds().minY() - letter.origin().y(), 1e-6);
		}
		assertEquals(widest, stack.lines().get(0).width(), 1e-9);
	}

	@Test
	void trackingLineSpacingAndBlanksSetTheDistance() throws Exception {
		FontFace face = Fonts.sans();
		SetText stack = set("A BC", face, TEN.withTracking(2).withLineSpacing(0.75).withWordSpacing(1));
		assertEquals(List.of(0.0, 12 + 2 + 6 + 1.0, 2 * 14 + 7.0),
				stack.letters().stream().map(l -> Math.round(l.origin().y() * 1e9) / 1e9).toList());
		assertEquals(List.of(0, 1, 1), stack.letters().stream().map(Letter::word).toList());
	}

	@Test
	void accentsStayWithTheirLetter() throws Exception {
		FontFace face = Fonts.symbols();
		for (String text : List.of("\u00E9", "e\u0301", "q\u0308\u0301")) {
			SetText stack = set(text + "x", face, TEN);
			assertEquals(2, stack.letters().size());
			Bounds across = TextSetter.set(text, face, TEN, Monitor.NONE).letters().get(0).outline().bounds();
			Bounds down = stack.letters().get(0).outline().bounds();
			assertEquals(across.width(), down.width(), 0.02, text);
			assertEquals(across.height(), down.height(), 0.02, text);
			assertEquals(16, stack.letters().get(1).origin().y(), 1e-9);
		}
	}

	@Test
	void columnsFollowEachOther() throws Exception {
		FontFace face = Fonts.sans();
		SetText stack = set("MM\nI\n\nW", face, TEN);
		double first = face.advance(face.glyph('M')) * stack.scale();
		assertEquals(List.of(0, 0, 1, 3), stack.letters().stream().map(Letter::line).toList());
		assertEquals(first + 6, stack.letters().get(2).origin().x(), 1e-9);
		assertEquals(4, stack.lines().size());
	}

	@Test
	void alignmentIsTopMiddleBottom() throws Exception {
		FontFace face = Fonts.sans();
		for (Alignment alignment : Alignment.values()) {
			SetText stack = set("ABC\nDE", face, TEN.withAlignment(alignment));
			List<Double> expected = switch (alignment) {
			case LEFT -> List.of(0.0, 16.0);
			case CENTRE -> List.of(8.0, 24.0);
			case RIGHT -> List.of(16.0, 32.0);
			case JUSTIFY -> List.of(0.0, 32.0);
			};
			assertEquals(expected, stack.letters().subList(3, 5).stream().map(l -> l.origin().y()).toList());
		}
	}

	@Test
	void missingGlyphIsReported() throws Exception {
		SetText stack = set("A\u4E00B", Fonts.sans(), TEN);
		assertEquals(2, stack.letters().size());
		assertEquals(1, stack.missing().get(0).index());
	}

	/** A font with a form of its own for lines that run down: its feature vert makes a B of every A. */
	@Test
	void formsForLinesThatRunDownAreTaken() throws Exception {
		byte[] bytes = Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf");
		FontFace plain = FontFace.read(bytes, "plain");
		int a = plain.glyph('A');
		int b = plain.glyph('B');
		ByteBuffer gsub = ByteBuffer.allocate(80);
		gsub.putInt(0x10000).putShort((short) 10).putShort((short) 30).putShort((short) 44);
		gsub.putShort((short) 1).put("DFLT".getBytes()).putShort((short) 8);
		gsub.putShort((short) 4).putShort((short) 0);
		gsub.putShort((short) 0).putShort((short) 0xFFFF);
		gsub.position(26);
		gsub.putShort((short) 1).putShort((short) 0);
		gsub.position(30);
		gsub.putShort((short) 1).put("vert".getBytes()).putShort((short) 8);
		gsub.putShort((short) 0).putShort((short) 1).putShort((short) 0);
		gsub.position(44);
		gsub.putShort((short) 1).putShort((short) 4);
		gsub.putShort((short) 1).putShort((short) 0).putShort((short) 1).putShort((short) 8);
		gsub.putShort((short) 1).putShort((short) 6).putShort((short) (b - a));
		gsub.putShort((short) 1).putShort((short) 1).putShort((short) a);
		FontFace face = FontFace.read(new FontSurgery(bytes).with("GSUB", gsub.array()).font(), "vertical");
		assertEquals(List.of(b), set("A", face, TEN).letters().get(0).glyphs());
		assertEquals(List.of(a), TextSetter.set("A", face, TEN, Monitor.NONE).letters().get(0).glyphs());
	}
}
