package org.frisket.material.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * What to begin with where nothing was tried. All of it is common practice without a source, or our own guess where
 * there is no practice, and the studio's to change.
 *
 * @param exposureOver  how far the blade stands out beyond the stock's thickness, in mm
 * @param onePassTo     up to this grammage one pass is enough
 * @param twoPassesTo   up to this one two are; above it three
 * @param startPressure share of the machine's range in percent; our own guess
 * @param startSpeed    share of the machine's range in percent; our own guess
 * @param bulk          thickness of a stock whose caliper nobody measured, in cm³/g
 */
public record RulesOfThumb(double exposureOver, double onePassTo, double twoPassesTo, double startPressure,
		double startSpeed, double bulk) {

	static final Option EXPOSURE = Option.length("exposure-over", Messages.RulesOfThumb_exposureOver, "0.1mm", 0, 2);
	static final Option ONE_PASS = Option.number("one-pass-to", Messages.RulesOfThumb_onePassTo, "g/m²", 216, 0, 5000);
	static final Option TWO_PASSES = Option.number("two-passes-to", Messages.RulesOfThumb_twoPassesTo, "g/m²", 300, 0,
			5000);
	static final Option PRESSURE = Option.number("start-pressure", Messages.RulesOfThumb_startPressure, "%", 30, 0,
			100);
	static final Option SPEED = Option.number("start-speed", Messages.RulesOfThumb_startSpeed, "%", 30, 0, 100);
	/** Smooth uncoated card has 1.1 to 1.3; common practice, no source. */
	static final Option BULK = Option.number("bulk", Messages.RulesOfThumb_bulk, "cm³/g", 1.2, 0.1, 50);

	private static final List<Option> ALL = List.of(EXPOSURE, ONE_PASS, TWO_PASSES, PRESSURE, SPEED, BULK);

	/** As they come. */
	public static final RulesOfThumb USUAL = of(Map.of());

	public static List<Option> options() {
		return ALL;
	}

	/**
	 * The rules these texts describe; the usual ones for what is not said.
	 *
	 * @throws IllegalArgumentException if a text is no value of its option
	 */
	public static RulesOfThumb of(Map<String, String> texts) {
		OptionValues values = OptionValues.of(ALL, texts);
		return new RulesOfThumb(values.length(EXPOSURE), values.number(ONE_PASS), values.number(TWO_PASSES),
				values.number(PRESSURE), values.number(SPEED), values.number(BULK));
	}

	/** What {@link #of} makes the same rules of. */
	public Map<String, String> texts() {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(EXPOSURE.name(), Measure.plain(exposureOver, 6) + "mm");
		texts.put(ONE_PASS.name(), Measure.plain(onePassTo, 6));
		texts.put(TWO_PASSES.name(), Measure.plain(twoPassesTo, 6));
		texts.put(PRESSURE.name(), Measure.plain(startPressure, 6));
		texts.put(SPEED.name(), Measure.plain(startSpeed, 6));
		texts.put(BULK.name(), Measure.plain(bulk, 6));
		return texts;
	}

	/** Whether a rule is another than comes with the product. @param name of its option */
	public boolean isOwn(String name) {
		return !USUAL.texts().get(name).equals(texts().get(name));
	}

	int passes(double grammage) {
		return grammage <= onePassTo ? 1 : grammage <= twoPassesTo ? 2 : 3;
	}
}
