package org.frisket.material.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.tools.Problem;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.Verdict;

/**
 * A run as somebody tells of it, as it is typed.
 *
 * @param job      id of the job
 * @param exposure in mm; blank for what is not a blade
 * @param pressure in the machine's steps, as is {@code speed}
 * @param metres   of line worked, all passes counted
 */
public record RunPlan(Work work, String job, String exposure, String pressure, String speed, String passes,
		Verdict verdict, String metres, String remark) {

	/** Where a problem stands. */
	public static final String EXPOSURE = "exposure";
	public static final String PRESSURE = "pressure";
	public static final String SPEED = "speed";
	public static final String PASSES = "passes";
	public static final String METRES = "metres";

	private static final String M = "m";
	private static final String MM = "mm";
	private static final int MOST_PASSES = 99;
	private static final double MOST_METRES = 1e6;
	private static final double MOST_EXPOSURE = 10;

	/** All that is wrong, each at its place; empty if the run can be kept. */
	public List<Problem> problems() {
		List<Problem> problems = new ArrayList<>();
		check(EXPOSURE, problems, this::exposureMm);
		Machine machine = work.machine();
		check(PRESSURE, problems, () -> on(machine.pressure(), pressure));
		check(SPEED, problems, () -> on(machine.speed(), speed));
		check(PASSES, problems, this::times);
		check(METRES, problems, this::worked);
		return problems;
	}

	private interface Value {
		double get();
	}

	private static void check(String place, List<Problem> problems, Value value) {
		try {
			value.get();
		} catch (IllegalArgumentException wrong) {
			problems.add(new Problem(place, wrong.getMessage()));
		}
	}

	/** Any value that the machine can be set to, be it between the steps its manual names: somebody did set it. */
	private static double on(NativeScale scale, String text) {
		return within(TypedNumber.parse(text, scale.unit()), scale.least(), scale.most());
	}

	private static double within(double value, double least, double most) {
		if (!(value >= least && value <= most)) {
			throw new IllegalArgumentException(NLS.bind(Messages.RunPlan_range, Sweep.plain(least), Sweep.plain(most)));
		}
		return value;
	}

	private double exposureMm() {
		return exposure.isBlank() ? 0 : within(TypedNumber.parse(exposure, MM), 0, MOST_EXPOSURE);
	}

	/** How often the lines were gone over. @throws IllegalArgumentException if that is not typed */
	public int times() {
		double times = within(TypedNumber.parse(passes, ""), 1, MOST_PASSES);
		if (times != Math.rint(times)) {
			throw new IllegalArgumentException(NLS.bind(Messages.RunPlan_range, 1, MOST_PASSES));
		}
		return (int) times;
	}

	private double worked() {
		return within(TypedNumber.parse(metres, M), 0, MOST_METRES);
	}

	/**
	 * The run.
	 *
	 * @throws IllegalArgumentException if there are {@linkplain #problems problems}
	 */
	public Run run(String id, Instant at) {
		Machine machine = work.machine();
		Settings settings = new Settings(exposureMm(), on(machine.pressure(), pressure), on(machine.speed(), speed),
				times());
		return new Run(id, at, job, work.stock(), work.setup(), settings, verdict, worked(), remark.strip());
	}

	/** A length of line as it is typed: metres with two decimals. @param mm in mm */
	public static String metres(double mm) {
		return Sweep.plain(Math.rint(mm / 10) / 100);
	}
}
