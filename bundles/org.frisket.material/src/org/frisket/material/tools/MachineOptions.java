package org.frisket.material.tools;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Machines as described values. The defaults are those of no particular machine; the studio sets what its manual says. */
public final class MachineOptions {

	static final Option NAME = Option.text("name", Messages.MachineOptions_name, "");
	static final Option PROCESS = Option.choice("process", Messages.MachineOptions_process, "blade", "foil", "laser");
	static final Option WIDTH = Option.length("width", Messages.MachineOptions_width, "210mm", 10, 20_000);
	static final Option HEIGHT = Option.length("height", Messages.MachineOptions_height, "297mm", 10, 100_000);
	/** 5 to 10 mm a side is common practice, no source; the wider is safe. */
	static final Option LEFT = Option.length("margin-left", Messages.MachineOptions_left, "10mm", 0, 1000);
	static final Option TOP = Option.length("margin-top", Messages.MachineOptions_top, "10mm", 0, 1000);
	static final Option RIGHT = Option.length("margin-right", Messages.MachineOptions_right, "10mm", 0, 1000);
	static final Option BOTTOM = Option.length("margin-bottom", Messages.MachineOptions_bottom, "10mm", 0, 1000);
	static final ScaleOptions SPEED = new ScaleOptions("speed", "mm/s");
	static final ScaleOptions PRESSURE = new ScaleOptions("pressure", "g");
	static final Option PASSES = Option.count("passes-most", Messages.MachineOptions_passes, 10, 1, 100);
	/** HP-GL's plotter unit is 0.025 mm: 40 in a millimetre. */
	static final Option UNITS = Option.number("units-per-mm", Messages.MachineOptions_units, "", 40, 0.01, 100_000);
	static final Option X = Option.choice("x-grows", Messages.MachineOptions_x, "right", "left");
	static final Option Y = Option.choice("y-grows", Messages.MachineOptions_y, "away", "near");
	static final Option ORIGIN = Option.choice("origin", Messages.MachineOptions_origin, "lower-left", "lower-right",
			"upper-left", "upper-right", "centre");
	static final Option ZERO = Option.choice("zero-within", Messages.MachineOptions_zero, "area", "margins");
	/** A machine that is off by more than a tenth is broken, not out of scale. */
	static final Option SCALE_X = Option.number("scale-x", Messages.MachineOptions_scaleX, "", 1, 0.9, 1.12);
	static final Option SCALE_Y = Option.number("scale-y", Messages.MachineOptions_scaleY, "", 1, 0.9, 1.12);
	static final Option MARKS = Option.choice("register-marks", Messages.MachineOptions_marks, "no", "yes");

	private static final List<Option> ALL = all();

	private MachineOptions() {
	}

	private static List<Option> all() {
		List<Option> all = new ArrayList<>(List.of(NAME, PROCESS, WIDTH, HEIGHT, LEFT, TOP, RIGHT, BOTTOM));
		all.addAll(SPEED.all());
		all.addAll(PRESSURE.all());
		all.addAll(List.of(PASSES, UNITS, X, Y, ORIGIN, ZERO, SCALE_X, SCALE_Y));
		all.addAll(MotionOptions.MOVES);
		all.addAll(MotionOptions.WORDS);
		all.add(MARKS);
		return List.copyOf(all);
	}

	/** What can be said of a machine. */
	public static List<Option> options() {
		return ALL;
	}

	/** All that is wrong with these texts; empty if a machine can be made of them. */
	public static List<Problem> problems(Map<String, String> texts) {
		List<Problem> problems = new ArrayList<>(Checks.each(ALL, texts));
		if (problems.isEmpty()) {
			OptionValues values = OptionValues.of(ALL, texts);
			if (values.length(LEFT) + values.length(RIGHT) >= values.length(WIDTH)) {
				problems.add(Checks.problem(WIDTH, Messages.MachineOptions_allMargin));
			}
			if (values.length(TOP) + values.length(BOTTOM) >= values.length(HEIGHT)) {
				problems.add(Checks.problem(HEIGHT, Messages.MachineOptions_allMargin));
			}
			problems.addAll(SPEED.problems(values));
			problems.addAll(PRESSURE.problems(values));
			problems.addAll(MotionOptions.problems(values));
		}
		return problems;
	}

	/**
	 * The machine these texts describe; defaults for what is not said, the id for a missing name.
	 *
	 * @throws IllegalArgumentException if there are {@linkplain #problems problems}; the message is the first
	 */
	public static Machine machine(String id, Map<String, String> texts) {
		Checks.refuse(problems(texts));
		OptionValues values = OptionValues.of(ALL, texts);
		return new Machine(id, values.text(NAME).isBlank() ? id : values.text(NAME).strip(),
				Process.valueOf(values.text(PROCESS).toUpperCase(Locale.ROOT)),
				new Machine.Area(values.length(WIDTH), values.length(HEIGHT), values.length(LEFT), values.length(TOP),
						values.length(RIGHT), values.length(BOTTOM)),
				SPEED.scale(values), PRESSURE.scale(values), values.count(PASSES),
				new Machine.Plotting(values.number(UNITS), values.text(X).equals("right"),
						values.text(Y).equals("away"),
						Corner.valueOf(values.text(ORIGIN).toUpperCase(Locale.ROOT).replace('-', '_')),
						values.text(ZERO).equals("margins"), values.number(SCALE_X), values.number(SCALE_Y)),
				MotionOptions.motion(values), MotionOptions.words(values), values.text(MARKS).equals("yes"));
	}

	/** What {@link #machine} makes the same machine of. */
	public static Map<String, String> texts(Machine machine) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(NAME.name(), machine.name());
		texts.put(PROCESS.name(), machine.process().word());
		Machine.Area area = machine.area();
		texts.put(WIDTH.name(), Checks.length(area.width()));
		texts.put(HEIGHT.name(), Checks.length(area.height()));
		texts.put(LEFT.name(), Checks.length(area.left()));
		texts.put(TOP.name(), Checks.length(area.top()));
		texts.put(RIGHT.name(), Checks.length(area.right()));
		texts.put(BOTTOM.name(), Checks.length(area.bottom()));
		texts.putAll(SPEED.texts(machine.speed()));
		texts.putAll(PRESSURE.texts(machine.pressure()));
		texts.put(PASSES.name(), Integer.toString(machine.mostPasses()));
		Machine.Plotting plotting = machine.plotting();
		texts.put(UNITS.name(), Checks.number(plotting.unitsPerMm()));
		texts.put(X.name(), plotting.xRight() ? "right" : "left");
		texts.put(Y.name(), plotting.yUp() ? "away" : "near");
		texts.put(ORIGIN.name(), plotting.origin().word());
		texts.put(ZERO.name(), plotting.inMargins() ? "margins" : "area");
		texts.put(SCALE_X.name(), Checks.number(plotting.scaleX()));
		texts.put(SCALE_Y.name(), Checks.number(plotting.scaleY()));
		texts.putAll(MotionOptions.texts(machine.motion(), machine.words()));
		texts.put(MARKS.name(), machine.readsMarks() ? "yes" : "no");
		return texts;
	}
}
