package org.frisket.material.weights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

import org.junit.jupiter.api.Test;

/**
 * Values against tables. Definitions: 1 lb = 453.59237 g, 1 in = 25.4 mm (exact); basis weight in pounds per ream of a
 * given size, TAPPI T 410; grammage ISO 536; thickness ISO 534.
 */
class WeightTablesTest {

	private static BigDecimal number(String text) {
		return new BigDecimal(text);
	}

	private static void assertRounds(String printed, BigDecimal value) {
		assertEquals(number(printed), value.setScale(number(printed).scale(), RoundingMode.HALF_EVEN), value.toString());
	}

	/**
	 * Computed from the definitions to six digits. Those of bond, cover, tag and text agree with the table in printwiki.org,
	 * “Grammage”; its factor for 1000 ft², 4.831, contradicts its own inverse and is not followed.
	 */
	@Test
	void factorsOfEachGrade() {
		String table = """
				BOND 374 3.759730 0.265977
				TEXT 950 1.480146 0.675609
				COVER 520 2.704114 0.369807
				BRISTOL 641.25 2.192810 0.456036
				INDEX 777.75 1.807958 0.553110
				TAG 864 1.627476 0.614448
				NEWSPRINT 864 1.627476 0.614448
				WRAPPING 864 1.627476 0.614448
				BOARD 144000 4.882428 0.204816""";
		for (String line : table.lines().toList()) {
			String[] row = line.split(" ");
			Grade grade = Grade.valueOf(row[0]);
			assertEquals(0, number(row[1]).compareTo(grade.basicSize()), line);
			assertRounds(row[2], grade.grammage(BigDecimal.ONE));
			assertRounds(row[3], grade.pounds(BigDecimal.ONE));
		}
		assertEquals(Grade.values().length, table.lines().count());
	}

	/** The constant of all reams of 500: g/m² per lb, times the square inches of the basic sheet. */
	@Test
	void constantOfReams() {
		assertRounds("1406.1391592783186", Grade.BOND.grammage(BigDecimal.ONE).multiply(number("374")));
	}

	/** Computed from the exact factors, to two decimals. */
	@Test
	void usualWeights() {
		String table = """
				BOND 16=60.16 20=75.19 24=90.23 28=105.27 32=120.31
				TEXT 50=74.01 60=88.81 70=103.61 80=118.41 100=148.01
				COVER 50=135.21 60=162.25 65=175.77 80=216.33 90=243.37 100=270.41 110=297.45 120=324.49 130=351.53
				BRISTOL 57=124.99 67=146.92 80=175.42 94=206.12 100=219.28
				INDEX 90=162.72 110=198.88 140=253.11
				TAG 100=162.75 125=203.43 150=244.12""";
		for (String line : table.lines().toList()) {
			String[] row = line.split(" ");
			Grade grade = Grade.valueOf(row[0]);
			assertEquals(row.length - 1, grade.usual().size(), line);
			for (int i = 1; i < row.length; i++) {
				String[] pair = row[i].split("=");
				assertRounds(pair[1], grade.grammage(number(pair[0])));
				assertEquals(number(pair[0]), grade.usual().get(i - 1));
			}
		}
	}

	/** As pages of the trade often print them, from rounded factors: 0.3 g/m² may lie between. */
	@Test
	void printedTablesThatDisagree() {
		for (String line : new String[] { "80 COVER 216.4", "67 BRISTOL 147.2", "110 INDEX 198.8" }) {
			String[] row = line.split(" ");
			BigDecimal off = Grade.valueOf(row[1]).grammage(number(row[0])).subtract(number(row[2])).abs();
			assertTrue(off.compareTo(number("0.3")) <= 0 && off.compareTo(number("0.005")) > 0, line + ": " + off);
		}
	}

	/** Computed from the definitions. */
	@Test
	void oneGradeInAnother() {
		assertRounds("46.75", new BasisWeight(number("65"), Grade.COVER).in(Grade.BOND).pounds());
		assertRounds("73.55", new BasisWeight(number("110"), Grade.INDEX).in(Grade.COVER).pounds());
		assertRounds("110.94", Grade.COVER.pounds(number("300")));
		assertRounds("21.28", Grade.BOND.pounds(number("80")));
	}

	/** Grammage times area; a letter sheet is a quarter of 17 × 22 in, so that 500 of 20 lb weigh 5 lb. */
	@Test
	void massOfSheets() {
		assertRounds("4.9896", new Pack(number("210"), number("297"), 1).sheetMass(number("80")));
		assertRounds("16.3293",
				new Pack(number("304.8"), number("304.8"), 1).sheetMass(Grade.COVER.grammage(number("65"))));
		BigDecimal letters = new Pack(number("215.9"), number("279.4"), 500).mass(Grade.BOND.grammage(number("20")));
		assertRounds("5.000", letters.divide(number("453.59237"), Grade.EXACT));
	}

	/** 1 point = 1 mil = 0.001 in = 25.4 µm exactly. The pair of 10 pt and 250 g/m²: encyclopedias, “Card stock”. */
	@Test
	void caliperBulkAndDensity() {
		assertEquals(number("254"), Thickness.ofMils(number("10")).micrometres());
		assertEquals(number("0.254"), Thickness.ofMils(number("10")).mm());
		assertEquals(number("10"), Thickness.ofMicrometres(number("254")).mils());
		Bulk tenPoint = Bulk.of(Thickness.ofMils(number("10")), number("250"));
		assertRounds("1.016", tenPoint.value());
		assertRounds("0.9843", tenPoint.density());
		assertRounds("1.3407", Bulk.of(Thickness.ofMicrometres(number("290")), number("216.3")).value());
		assertRounds("1.3564", Bulk.of(Thickness.ofMicrometres(number("102")), number("75.2")).value());
	}

	/** Thickness in µm = grammage × bulk, computed, in points to two decimals. */
	@Test
	void pointsFromGrammageAndBulk() {
		String[] bulks = { "0.9", "1.1", "1.3", "1.5" };
		String table = """
				120 4.25 5.20 6.14 7.09
				176 6.24 7.62 9.01 10.39
				216 7.65 9.35 11.06 12.76
				270 9.57 11.69 13.82 15.94
				300 10.63 12.99 15.35 17.72
				350 12.40 15.16 17.91 20.67""";
		for (String line : table.lines().toList()) {
			String[] row = line.split(" ");
			for (int i = 0; i < bulks.length; i++) {
				assertRounds(row[i + 1], new Bulk(number(bulks[i])).thickness(number(row[0])).mils());
			}
		}
	}

	@Test
	void gradesByTheNamesOfTheTrade() {
		assertEquals(Grade.BOND, Grade.named(" Writing ").orElseThrow());
		assertEquals(Grade.TEXT, Grade.named("BOOK").orElseThrow());
		assertEquals(Grade.WRAPPING, Grade.named("kraft").orElseThrow());
		assertEquals(Grade.BOARD, Grade.named("1000 ft²").orElseThrow());
		assertTrue(Grade.named("blotting").isEmpty());
		for (Grade grade : Grade.values()) {
			assertEquals(grade, Grade.named(grade.name().toLowerCase(Locale.ROOT)).orElseThrow());
		}
	}
}
