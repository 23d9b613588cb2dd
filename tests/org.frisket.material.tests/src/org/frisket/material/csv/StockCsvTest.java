package org.frisket.material.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.frisket.material.Stock;
import org.frisket.studio.csv.CsvProblem;
import org.junit.jupiter.api.Test;

class StockCsvTest {

	private static CsvReading read(String text) {
		return StockCsv.read(text.getBytes(StandardCharsets.UTF_8), Set.of());
	}

	private static Stock only(String text) {
		CsvReading reading = read(text);
		assertEquals(List.of(), reading.problems());
		assertEquals(1, reading.rows().size());
		return reading.rows().get(0).stock();
	}

	private static String problems(CsvReading reading) {
		return String.join("\n", reading.problems().stream().map(CsvProblem::toString).toList());
	}

	@Test
	void roundTripIsExact() throws Exception {
		Random random = new Random(99);
		List<Stock> stocks = new ArrayList<>();
		for (int i = 0; i < 400; i++) {
			stocks.add(RandomStock.of(random, i));
		}
		StringWriter out = new StringWriter();
		StockCsv.write(stocks, out);
		for (String text : List.of(out.toString(), "\uFEFF" + out)) {
			CsvReading reading = read(text);
			assertEquals("", problems(reading));
			assertEquals(stocks, reading.rows().stream().map(CsvReading.Row::stock).toList());
		}
	}

	@Test
	void separatorsAreFoundAndColumnsStandInAnyOrder() {
		Stock expected = only("name,family,grammage g/m²,caliper mm\nHarbour white,card,216.5,0.254\n");
		assertEquals(new BigDecimal("216.5"), expected.statedGrammage().orElseThrow());
		assertEquals(expected, only("caliper (mil);Name;FAMILY;Grammage [gsm]\r\n10;Harbour white;Card;216,5\r\n"));
		assertEquals(expected, only("family\tcaliper µm\tgrammage\tname\ncard\t254\t216.5\tHarbour white"));
		assertEquals(expected, only("\"name\";\"caliper pt\";\"family\";\"grammage\"\n\"Harbour white\";\"10,0\";card;216,50"));
	}

	@Test
	void priceHasItsCurrencyInTheHeaderOrBesideIt() {
		assertEquals("0.45 EUR", only("name;family;grammage;price EUR\nA;card;80;0,45").price().orElseThrow().toString());
		assertEquals("0.45 USD", only("name,family,grammage,price,currency\nA,card,80,0.45,usd").price().orElseThrow().toString());
	}

	@Test
	void encodings() {
		String text = "name,family,grammage\nStraße grün,card,80\n";
		for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.UTF_8)) {
			CsvReading reading = StockCsv.read(("\uFEFF" + text).getBytes(charset), Set.of());
			assertEquals("Straße grün", reading.rows().get(0).stock().name(), charset.name());
			assertEquals(List.of(), reading.remarks());
		}
		CsvReading latin = StockCsv.read(text.getBytes(StandardCharsets.ISO_8859_1), Set.of());
		assertEquals("Straße grün", latin.rows().get(0).stock().name());
		assertTrue(latin.remarks().get(0).contains("Latin-1"));
		byte[] odd = { (byte) 0xFF, (byte) 0xFE, 'n' };
		assertFalse(StockCsv.read(odd, Set.of()).usable());
	}

	@Test
	void whatIsWrongIsToldByRowAndColumnAndTheRestIsThere() {
		CsvReading reading = read("""
				name,family,grammage g/m²,caliper mm,notes
				Good one,card,216,0.29,"two
				lines"
				Bad weight,card,heavy,0.29,
				Bad family,wool,216,0.29,
				Bad both,card,-3,NaN,
				Short,card
				Good one,card,120,,
				,card,120,,
				"Open,card,216,0.29,
				Broken "quotes,card,216,0.29,
				"Ended" badly,card,216,0.29,

				Good two,card,216,,
				""");
		assertEquals(List.of("Good one", "Broken \"quotes", "Good two"),
				reading.rows().stream().map(row -> row.stock().name()).toList());
		assertEquals("""
				row 3, column “grammage g/m²”: “heavy” is no number
				row 4, column “family”: “wool” is not known here; there are card, paper, label, film, fabric, board, foam, other
				row 5, column “caliper mm”: “NaN” is no number
				row 6: there are 2 cells, but 5 headers
				row 7, column “name”: row 2 has the same
				row 8, column “name”: name is missing
				row 9: quotes do not match in this row
				row 11: quotes do not match in this row""", problems(reading));
	}

	@Test
	void headersThatMeanNothingAreTold() {
		assertTrue(problems(read("name,family,weight\nA,card,80")).contains("row 1, column “weight”: this column is not known"));
		assertTrue(problems(read("name,family,caliper\nA,card,80")).contains("needs a unit: mm, mil"));
		assertTrue(problems(read("name,family,caliper furlong\nA,card,80")).contains("is none of mm"));
		assertTrue(problems(read("name,name,family,grammage\nA,B,card,80")).contains("a column for this already"));
		assertFalse(read("family,grammage\ncard,80").usable());
		assertFalse(read("").usable());
		assertFalse(read("\n\n").usable());
		assertFalse(read("\"name").usable());
	}

	@Test
	void pointsAndCommasAreNotMixed() {
		CsvReading reading = read("name;family;grammage\nA;card;216,5\nB;card;216.5\n");
		assertEquals(1, reading.rows().size());
		assertTrue(problems(reading).contains("row 3, column “grammage”: “216.5” has a point"));
	}

	@Test
	void stockWithoutAnIdGetsAFreeOne() {
		CsvReading reading = StockCsv.read("id,name,family,grammage\n,Card,card,80\ncard-2,Else,card,80\n".getBytes(
				StandardCharsets.UTF_8), Set.of("card"));
		assertEquals(List.of("card-3", "card-2"), reading.rows().stream().map(row -> row.stock().id()).toList());
	}

	@Test
	void anythingIsReadWithoutTrouble() {
		Random random = new Random(7);
		String letters = "name,family;grammage\t\"\"\"\n\r\n 0129.,card";
		for (int i = 0; i < 3000; i++) {
			StringBuilder text = new StringBuilder("name,family,grammage\n");
			for (int n = random.nextInt(60); n > 0; n--) {
				text.append(letters.charAt(random.nextInt(letters.length())));
			}
			read(text.toString());
			byte[] bytes = new byte[random.nextInt(40)];
			random.nextBytes(bytes);
			StockCsv.read(bytes, Set.of());
		}
	}
}
