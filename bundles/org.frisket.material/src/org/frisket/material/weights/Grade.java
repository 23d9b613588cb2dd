package org.frisket.material.weights;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A grade of paper with the size of the sheets by which its basis weight is counted: so many pounds to the ream. The same
 * number of pounds is a different paper in each.
 * <p>
 * Ream of 500 sheets and sizes of bond, text, cover, tag and newsprint: TAPPI T 410. Sizes of index and bristol: secondary
 * sources. Wrapping, with the 24 × 36 in of newsprint: from memory. 1 lb = 453.59237 g and 1 in = 25.4 mm by definition.
 */
public enum Grade {
	/** Writing papers, 17 × 22 in. */
	BOND("17", "22", List.of("16", "20", "24", "28", "32"), "writing", "ledger", "copy"),
	/** Book and text papers, 25 × 38 in. */
	TEXT("25", "38", List.of("50", "60", "70", "80", "100"), "book", "offset"),
	/** Cover papers and most card, 20 × 26 in. */
	COVER("20", "26", List.of("50", "60", "65", "80", "90", "100", "110", "120", "130")),
	/** Printing bristols, 22.5 × 28.5 in. */
	BRISTOL("22.5", "28.5", List.of("57", "67", "80", "94", "100"), "vellum bristol", "printing bristol"),
	/** Index cards, 25.5 × 30.5 in. */
	INDEX("25.5", "30.5", List.of("90", "110", "140"), "index bristol"),
	/** Tags, 24 × 36 in. */
	TAG("24", "36", List.of("100", "125", "150"), "manila"),
	/** Newsprint, 24 × 36 in. */
	NEWSPRINT("24", "36", List.of(), "news"),
	/** Wrapping and bag papers, 24 × 36 in. */
	WRAPPING("24", "36", List.of(), "kraft", "bag"),
	/** Boards, by 1000 square feet instead of a ream. */
	BOARD(new BigDecimal(144_000), List.of(), "1000 ft2", "msf");

	/** Of divisions that do not come out even. */
	static final MathContext EXACT = MathContext.DECIMAL128;

	private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");
	private static final BigDecimal SQUARE_METRES_PER_SQUARE_INCH = new BigDecimal("0.00064516");
	private static final BigDecimal SHEETS_PER_REAM = new BigDecimal(500);

	private final BigDecimal squareInches;
	private final List<BigDecimal> usual;
	private final List<String> otherNames;

	Grade(String width, String height, List<String> usual, String... otherNames) {
		this(new BigDecimal(width).multiply(new BigDecimal(height)).multiply(new BigDecimal(500)), usual, otherNames);
	}

	/** @param squareInches of all that is weighed */
	Grade(BigDecimal squareInches, List<String> usual, String... otherNames) {
		this.squareInches = squareInches;
		this.usual = usual.stream().map(BigDecimal::new).toList();
		this.otherNames = List.of(otherNames);
	}

	/** The word for it in files and on the command line. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** Square inches of a basic sheet; of 1000 ft² for {@link #BOARD}. */
	public BigDecimal basicSize() {
		return this == BOARD ? squareInches : squareInches.divide(SHEETS_PER_REAM);
	}

	/** The weights it is usually sold in, in pounds: common practice, no source. */
	public List<BigDecimal> usual() {
		return usual;
	}

	/** The grade by one of its names, whatever the case. */
	public static Optional<Grade> named(String name) {
		String word = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replace('²', '2');
		return Arrays.stream(values()).filter(grade -> grade.word().equals(word) || grade.otherNames.contains(word))
				.findFirst();
	}

	/** @return g/m² of so many pounds */
	public BigDecimal grammage(BigDecimal pounds) {
		return pounds.multiply(GRAMS_PER_POUND).divide(squareMetres(), EXACT);
	}

	/** @return pounds of so many g/m² */
	public BigDecimal pounds(BigDecimal grammage) {
		return grammage.multiply(squareMetres()).divide(GRAMS_PER_POUND, EXACT);
	}

	private BigDecimal squareMetres() {
		return squareInches.multiply(SQUARE_METRES_PER_SQUARE_INCH);
	}
}
