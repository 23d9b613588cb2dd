package org.frisket.material.sizes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A size that has a name. ISO 216 and ISO 217 by their rule, each half of the one before and rounded down to whole mm; US
 * sizes and those of ASME Y14.1 from memory; squares of the craft trade by common practice, no source.
 *
 * @param name           as it is said
 * @param selfDescribing as files say it, in the form of PWG 5101.1 (from memory), such as {@code iso_a4_210x297mm}
 */
public record PaperSize(String name, String selfDescribing, Format.Sheet sheet) {

	private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
	private static final List<PaperSize> ALL = all();

	/** ISO 216: A0 to A10, B0 to B10; ISO 217: RA0 to RA4, SRA0 to SRA4; then US sizes and craft squares. */
	public static List<PaperSize> known() {
		return ALL;
	}

	/** By either name, whatever the case. */
	public static Optional<PaperSize> named(String name) {
		String word = name.strip().toLowerCase(Locale.ROOT);
		return ALL.stream().filter(size -> size.name.toLowerCase(Locale.ROOT).equals(word)
				|| size.selfDescribing.equals(word)).findFirst();
	}

	/** The name of a sheet of just this size that stands this way. */
	static Optional<PaperSize> of(Format.Sheet sheet) {
		return ALL.stream().filter(size -> size.sheet.equals(sheet)).findFirst();
	}

	/**
	 * How far a trimmed sheet of ISO 216 may be off along a side, in mm: 1.5 up to 150 mm, 2 up to 600 mm, 3 beyond. So
	 * print is registered to marks, not to the edge of the sheet.
	 */
	public static BigDecimal tolerance(BigDecimal side) {
		if (side.compareTo(new BigDecimal(150)) <= 0) {
			return new BigDecimal("1.5");
		}
		return side.compareTo(new BigDecimal(600)) <= 0 ? new BigDecimal(2) : new BigDecimal(3);
	}

	private static List<PaperSize> all() {
		List<PaperSize> sizes = new ArrayList<>();
		halves(sizes, "A", 841, 1189, 10);
		halves(sizes, "B", 1000, 1414, 10);
		halves(sizes, "RA", 860, 1220, 4);
		halves(sizes, "SRA", 900, 1280, 4);
		inches(sizes, "letter", "na", "8.5", "11");
		inches(sizes, "legal", "na", "8.5", "14");
		inches(sizes, "tabloid", "na", "11", "17");
		inches(sizes, "ANSI C", "na", "17", "22");
		inches(sizes, "ANSI D", "na", "22", "34");
		inches(sizes, "ANSI E", "na", "34", "44");
		inches(sizes, "12x18in", "na", "12", "18");
		inches(sizes, "13x19in", "na", "13", "19");
		inches(sizes, "12x12in", "custom", "12", "12");
		inches(sizes, "8x8in", "custom", "8", "8");
		inches(sizes, "6x6in", "custom", "6", "6");
		return List.copyOf(sizes);
	}

	private static void halves(List<PaperSize> sizes, String series, int width, int height, int last) {
		int w = width;
		int h = height;
		for (int i = 0; i <= last; i++) {
			String name = series + i;
			sizes.add(new PaperSize(name, "iso_%s_%dx%dmm".formatted(name.toLowerCase(Locale.ROOT), w, h),
					new Format.Sheet(new BigDecimal(w), new BigDecimal(h))));
			int half = h / 2;
			h = w;
			w = half;
		}
	}

	private static void inches(List<PaperSize> sizes, String name, String region, String width, String height) {
		sizes.add(new PaperSize(name,
				"%s_%s_%sx%sin".formatted(region, name.toLowerCase(Locale.ROOT).replace(' ', '-'), width, height),
				new Format.Sheet(new BigDecimal(width).multiply(MM_PER_INCH), new BigDecimal(height).multiply(MM_PER_INCH))));
	}
}
