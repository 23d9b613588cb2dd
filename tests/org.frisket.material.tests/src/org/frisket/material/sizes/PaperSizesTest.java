package org.frisket.material.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.material.weights.MeasureException;
import org.junit.jupiter.api.Test;

class PaperSizesTest {

	private static void assertSizes(String series, String table) {
		List<String> rows = table.lines().toList();
		for (int n = 0; n < rows.size(); n++) {
			String[] sides = rows.get(n).split("x");
			assertEquals(new Format.Sheet(new BigDecimal(sides[0]), new BigDecimal(sides[1])),
					PaperSize.named(series + n).orElseThrow().sheet(), series + n);
		}
	}

	/** ISO 216:2007, from copies of its table. */
	@Test
	void trimmedSizes() {
		assertSizes("A", "841x1189\n594x841\n420x594\n297x420\n210x297\n148x210\n105x148\n74x105\n52x74");
		assertSizes("B", "1000x1414\n707x1000\n500x707\n353x500\n250x353\n176x250\n125x176\n88x125\n62x88");
	}

	/** ISO 217, from a copy of its table. */
	@Test
	void untrimmedSizes() {
		assertSizes("RA", "860x1220\n610x860\n430x610\n305x430\n215x305");
		assertSizes("SRA", "900x1280\n640x900\n450x640\n320x450\n225x320");
	}

	/** ISO 216, from a page that quotes it. */
	@Test
	void tolerancesOfTrimmedSizes() {
		assertEquals(new BigDecimal("1.5"), PaperSize.tolerance(new BigDecimal(150)));
		assertEquals(new BigDecimal(2), PaperSize.tolerance(new BigDecimal("150.1")));
		assertEquals(new BigDecimal(2), PaperSize.tolerance(new BigDecimal(600)));
		assertEquals(new BigDecimal(3), PaperSize.tolerance(new BigDecimal("600.1")));
	}

	/** From memory, craft squares by common practice; the inch is 25.4 mm by definition. */
	@Test
	void sizesInInches() {
		assertEquals("[215.9, 279.4]", sides("letter"));
		assertEquals("[215.9, 355.6]", sides("Legal"));
		assertEquals("[279.4, 431.8]", sides("tabloid"));
		assertEquals("[431.8, 558.8]", sides("ANSI C"));
		assertEquals("[863.6, 1117.6]", sides("ansi e"));
		assertEquals("[304.8, 304.8]", sides("12x12in"));
		assertEquals("[203.2, 203.2]", sides("8 x 8 in"));
		assertEquals("[152.4, 152.4]", sides("6in×6in"));
	}

	private static String sides(String text) {
		Format.Sheet sheet = Formats.sheet(text);
		return List.of(sheet.width(), sheet.height()).toString();
	}

	/** In the form of PWG 5101.1, from memory. */
	@Test
	void selfDescribingNames() {
		for (String name : List.of("iso_a4_210x297mm", "na_letter_8.5x11in", "iso_sra3_320x450mm")) {
			assertTrue(PaperSize.named(name).isPresent(), name);
		}
	}

	@Test
	void sheetsAndRollsAsPeopleWriteThem() {
		assertEquals(Formats.parse("A4"), Formats.parse("210x297mm"));
		assertEquals("A4", Formats.parse("21cm x 29.7cm").toString());
		assertEquals("297x210mm", Formats.parse("297 x 210 mm").toString());
		assertEquals("8.5x13in", Formats.parse("8.5x13in").toString());
		assertEquals(new Format.Roll(new BigDecimal(610), Optional.empty()), Formats.parse("roll 610mm"));
		assertEquals(new Format.Roll(new BigDecimal("304.8"), Optional.of(new BigDecimal(9144))),
				Formats.parse("Roll 12in x 30ft"));
		assertEquals("roll 12in x 9144mm", Formats.parse("Roll 12in x 30ft").toString());
	}

	@Test
	void whatIsNoSizeIsRefused() {
		for (String text : List.of("", "A11", "12x12", "0x5mm", "12x-3in", "roll", "roll 0mm", "1x1mile", "NaNxNaNmm",
				"99999x1mm", "1..2x3mm", "0.0000001x1mm", "12x12x12mm")) {
			assertThrows(MeasureException.class, () -> Formats.parse(text), text);
		}
	}

	@Test
	void textsAreReadAgainAsTheSame() {
		Random random = new Random(216);
		for (int i = 0; i < 3000; i++) {
			BigDecimal width = random(random);
			Format format = switch (random.nextInt(3)) {
			case 0 -> new Format.Sheet(width, random(random));
			case 1 -> new Format.Roll(width, Optional.empty());
			default -> new Format.Roll(width, Optional.of(random(random)));
			};
			assertEquals(format, Formats.parse(format.toString()), format.toString());
		}
		PaperSize.known().forEach(size -> assertEquals(size.sheet(), Formats.parse(size.sheet().toString())));
	}

	private static BigDecimal random(Random random) {
		BigDecimal number = BigDecimal.valueOf(1 + random.nextInt(40_000), random.nextInt(4));
		return random.nextBoolean() ? number.multiply(new BigDecimal("25.4")).remainder(new BigDecimal(4999))
				.add(BigDecimal.ONE).setScale(4, java.math.RoundingMode.DOWN) : number.min(new BigDecimal(5000));
	}
}
