package org.frisket.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.tools.Blade;
import org.frisket.model.OperationKind;
import org.frisket.toolpath.RunChoices;

/**
 * What can be chosen for a run, described. A closed cut begins and ends as far over its start as the blade's tip trails:
 * common practice, no source. Tabs, and slowing down in curves, are our own guess of what to begin with.
 */
public final class RunOptions {

	/** The usual offset of a blade; common practice, no source. */
	private static final String OFFSET = "0.25mm";
	private static final double LONGEST = 20;

	static final Option LEAD_IN = Option.length("lead-in", Messages.RunOptions_leadIn, OFFSET, 0, LONGEST);
	static final Option OVERCUT = Option.length("overcut", Messages.RunOptions_overcut, OFFSET, 0, LONGEST);
	static final Option SWING = Option.number("swing-from", Messages.RunOptions_swing, "°", Workshop.USUAL_THRESHOLD, 0, 90);
	static final Option SHARED = Option.choice("shared-once", Messages.RunOptions_shared, "yes", "no");
	static final Option DIRECTION = Option.choice("direction", Messages.RunOptions_direction, "either", "clockwise",
			"counter-clockwise");
	static final Option PASSES = Option.choice("pass-order", Messages.RunOptions_passes, "part", "sheet");
	static final Option TABS = Option.count("tabs", Messages.RunOptions_tabs, 0, 0, 100);
	static final Option TAB_WIDTH = Option.length("tab-width", Messages.RunOptions_tabWidth, "0.5mm", 0.05, 20);
	static final Option TABS_FROM = Option.length("tabs-from", Messages.RunOptions_tabsFrom, "40mm", 0, 100_000);
	static final Option TIGHT = Option.length("tight-radius", Messages.RunOptions_tight, "0mm", 0, 1000);
	static final Option TIGHT_SPEED = Option.number("tight-speed", Messages.RunOptions_tightSpeed, "%", 50, 1, 100);
	/** On 500 scattered squares it saves 1.7 % of the time of travel; ten times as much saves no more than another 0.3 %. */
	static final Option EFFORT = Option.count("effort", Messages.RunOptions_effort, 20_000, 0, 100_000_000);
	static final Option SEED = Option.count("seed", Messages.RunOptions_seed, 1, 0, 1_000_000);

	private static final List<Option> ALL = List.of(LEAD_IN, OVERCUT, SWING, SHARED, DIRECTION, PASSES, TABS, TAB_WIDTH,
			TABS_FROM, TIGHT, TIGHT_SPEED, EFFORT, SEED);

	private RunOptions() {
	}

	/** For a usual blade. */
	public static List<Option> options() {
		return ALL;
	}

	/** The same for the blade that a workshop usually cuts with. */
	public static List<Option> options(Workshop workshop) {
		double offset = workshop.desk().usualTool(OperationKind.CUT, "").filter(Blade.class::isInstance)
				.map(tool -> ((Blade) tool).offset()).orElse(-1.0);
		if (offset < 0) {
			return ALL;
		}
		String text = offset + "mm";
		List<Option> options = new ArrayList<>(ALL);
		options.set(ALL.indexOf(LEAD_IN), Option.length(LEAD_IN.name(), LEAD_IN.description(), text, 0, LONGEST));
		options.set(ALL.indexOf(OVERCUT), Option.length(OVERCUT.name(), OVERCUT.description(), text, 0, LONGEST));
		return options;
	}

	/** What a run is planned by. @param values of {@link #options()}, or of those for a workshop */
	public static RunChoices choices(OptionValues values) {
		RunChoices.Tabs tabs = values.count(TABS) == 0 ? RunChoices.Tabs.NONE
				: new RunChoices.Tabs(values.count(TABS), values.length(TAB_WIDTH), values.length(TABS_FROM));
		return new RunChoices(values.length(LEAD_IN), values.length(OVERCUT), values.text(SHARED).equals("yes"), tabs,
				RunChoices.PassOrder.valueOf(constant(values.text(PASSES))), values.length(TIGHT),
				values.number(TIGHT_SPEED) / 100, RunChoices.Direction.valueOf(constant(values.text(DIRECTION))),
				values.count(EFFORT), values.count(SEED));
	}

	/** The workshop that swings its blades round corners as chosen. @param values as for {@link #choices} */
	public static Workshop workshop(Workshop workshop, OptionValues values) {
		return workshop.swingingFrom(Math.toRadians(values.number(SWING)));
	}

	private static String constant(String word) {
		return word.toUpperCase(Locale.ROOT).replace('-', '_');
	}
}
