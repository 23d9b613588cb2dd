package org.frisket.typography.face;

/**
 * How heavy, wide and slanted a face is.
 *
 * @param weight 1 to 1000; 400 is regular, 700 bold
 * @param width  1 (narrowest) to 9 (widest); 5 is normal
 */
public record StyleClass(int weight, int width, boolean italic) {

	/** Widths in percent of the normal one at which the classes stand (ISO/IEC 14496-22, usWidthClass). */
	private static final double[] PERCENT = { 50, 62.5, 75, 87.5, 100, 112.5, 125, 150, 200 };

	/** With what the registered axes {@code wght}, {@code wdth}, {@code ital} and {@code slnt} say. */
	public StyleClass at(AxisSettings settings) {
		var values = settings.values();
		int newWeight = values.containsKey("wght") ? (int) Math.max(1, Math.min(1000, Math.round(values.get("wght"))))
				: weight;
		int newWidth = values.containsKey("wdth") ? widthClass(values.get("wdth")) : width;
		boolean newItalic = values.containsKey("ital") ? values.get("ital") >= 0.5 : italic;
		return new StyleClass(newWeight, newWidth, newItalic || values.getOrDefault("slnt", 0.0) < 0);
	}

	private static int widthClass(double percent) {
		int nearest = 0;
		for (int i = 1; i < PERCENT.length; i++) {
			if (Math.abs(PERCENT[i] - percent) < Math.abs(PERCENT[nearest] - percent)) {
				nearest = i;
			}
		}
		return nearest + 1;
	}
}
