package org.frisket.material.tools;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * How a machine moves and what its control is told, as described values. The speeds and times are our own guess for no
 * particular machine; times of runs are as good as they are.
 */
final class MotionOptions {

	static final Option ACCELERATION = Option.number("acceleration", Messages.MotionOptions_acceleration, "mm/s²", 1000,
			1, 1_000_000);
	static final Option DEVIATION = Option.length("corner-deviation", Messages.MotionOptions_deviation, "0.02mm", 0, 1);
	static final Option TRAVEL = Option.number("travel-speed", Messages.MotionOptions_travel, "mm/s", 300, 1, 100_000);
	static final Option LOWER = Option.number("lower-time", Messages.MotionOptions_lower, "s", 0.1, 0, 60);
	static final Option LIFT = Option.number("lift-time", Messages.MotionOptions_lift, "s", 0.1, 0, 60);
	static final Option CHANGE = Option.number("change-time", Messages.MotionOptions_change, "s", 30, 0, 3600);
	static final Option ARCS = Option.choice("arcs", Messages.MotionOptions_arcs, "no", "yes");
	static final Option TOLERANCE = Option.length("tolerance", Messages.MotionOptions_tolerance, "0.02mm", 0.001, 1);
	/**
	 * In RS274/NGC M3 starts and M5 stops what works, and M0 waits for whoever stands there (NISTIR 6556, 3.6, from memory):
	 * the nearest that the standard has to a tool that goes down and up. Whatever the machine's manual says comes first.
	 */
	static final Option DOWN = Option.text("word-down", Messages.MotionOptions_down, "M3");
	static final Option UP = Option.text("word-up", Messages.MotionOptions_up, "M5");
	static final Option STOP = Option.text("word-stop", Messages.MotionOptions_stop, "M0");

	static final List<Option> MOVES = List.of(ACCELERATION, DEVIATION, TRAVEL, LOWER, LIFT, CHANGE, ARCS, TOLERANCE);
	static final List<Option> WORDS = List.of(DOWN, UP, STOP);
	/** One block of a line: nothing that begins a comment or another line. */
	private static final Pattern BLOCK = Pattern.compile("(?=.*\\S)[A-Za-z0-9 .+-]{1,60}");

	private MotionOptions() {
	}

	static List<Problem> problems(OptionValues values) {
		List<Problem> problems = new ArrayList<>();
		for (Option word : WORDS) {
			if (!BLOCK.matcher(values.text(word)).matches()) {
				problems.add(Checks.problem(word, Messages.MotionOptions_noWord));
			}
		}
		return problems;
	}

	static Machine.Motion motion(OptionValues values) {
		return new Machine.Motion(values.number(ACCELERATION), values.length(DEVIATION), values.number(TRAVEL),
				values.number(LOWER), values.number(LIFT), values.number(CHANGE), values.text(ARCS).equals("yes"),
				values.length(TOLERANCE));
	}

	static Machine.Words words(OptionValues values) {
		return new Machine.Words(values.text(DOWN).strip(), values.text(UP).strip(), values.text(STOP).strip());
	}

	static Map<String, String> texts(Machine.Motion motion, Machine.Words words) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(ACCELERATION.name(), Checks.number(motion.acceleration()));
		texts.put(DEVIATION.name(), Checks.length(motion.deviation()));
		texts.put(TRAVEL.name(), Checks.number(motion.travel()));
		texts.put(LOWER.name(), Checks.number(motion.lower()));
		texts.put(LIFT.name(), Checks.number(motion.lift()));
		texts.put(CHANGE.name(), Checks.number(motion.change()));
		texts.put(ARCS.name(), motion.arcs() ? "yes" : "no");
		texts.put(TOLERANCE.name(), Checks.length(motion.tolerance()));
		texts.put(DOWN.name(), words.down());
		texts.put(UP.name(), words.up());
		texts.put(STOP.name(), words.stop());
		return texts;
	}
}
