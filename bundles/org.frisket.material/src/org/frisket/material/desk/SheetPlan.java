package org.frisket.material.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Problem;
import org.frisket.material.trials.Parameter;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.SheetLayout;
import org.frisket.material.trials.Sweep;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.TestSheetJob;
import org.frisket.model.Job;

/**
 * A test sheet that is being thought of, as it is typed.
 *
 * @param base settings of what is not swept
 * @param size side of the square of a trial, as typed
 */
public record SheetPlan(Work work, Settings base, SweepText across, SweepText down, String size) {

	/** Where a problem stands: these, and one of the sweeps with what is wrong in it. */
	public static final String SIZE = "size";
	public static final String SHEET = "sheet";
	public static final String ACROSS = "across";
	public static final String DOWN = "down";
	public static final String PARAMETER = "-parameter";
	public static final String FROM = "-from";
	public static final String TO = "-to";
	public static final String STEP = "-step";

	private static final String MM = "mm";
	private static final int COLUMNS = 5;
	private static final int ROWS = 4;

	/** What to begin with: pressure across and speed down, about what is advised. */
	public static SheetPlan usual(Work work, Settings advised) {
		return new SheetPlan(work, advised, usual(Parameter.PRESSURE, work, advised), usual(Parameter.SPEED, work, advised),
				Sweep.plain(SheetLayout.USUAL_SIZE));
	}

	/** Values of one parameter to begin with. */
	public static SweepText usual(Parameter parameter, Work work, Settings advised) {
		Machine machine = work.machine();
		return switch (parameter) {
		case PRESSURE -> SweepText.about(parameter, advised.pressure(), machine.pressure(), COLUMNS);
		case SPEED -> SweepText.about(parameter, advised.speed(), machine.speed(), ROWS);
		case PASSES -> SweepText.passes(machine.mostPasses());
		case EXPOSURE -> SweepText.exposure(advised.exposure());
		};
	}

	/** The unit in which a parameter is typed; empty if it has none. */
	public static String unit(Parameter parameter, Machine machine) {
		return switch (parameter) {
		case EXPOSURE -> MM;
		case PRESSURE -> machine.pressure().unit();
		case SPEED -> machine.speed().unit();
		case PASSES -> "";
		};
	}

	/** All that is wrong, each at its place; empty if a sheet can be made. */
	public List<Problem> problems() {
		List<Problem> problems = new ArrayList<>();
		check(ACROSS, across, problems);
		check(DOWN, down, problems);
		if (across.parameter() == down.parameter()) {
			problems.add(new Problem(DOWN + PARAMETER, Messages.SheetPlan_same));
		}
		try {
			sizeMm();
		} catch (IllegalArgumentException e) {
			problems.add(new Problem(SIZE, e.getMessage()));
		}
		if (problems.isEmpty()) {
			try {
				job(sheet(SHEET, LocalDate.EPOCH));
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(SHEET, e.getMessage()));
			}
		}
		return problems;
	}

	private void check(String which, SweepText text, List<Problem> problems) {
		int before = problems.size();
		String unit = unit(text.parameter(), work.machine());
		Double from = number(which + FROM, text.from(), unit, problems);
		Double to = number(which + TO, text.to(), unit, problems);
		Double step = number(which + STEP, text.step(), unit, problems);
		if (problems.size() > before) {
			return;
		}
		if (to < from) {
			problems.add(new Problem(which + TO, NLS.bind(Messages.SheetPlan_order, Sweep.plain(from))));
		} else if (!(step > 0)) {
			problems.add(new Problem(which + STEP, Messages.SheetPlan_step));
		} else if ((to - from) / step > Sweep.MOST - 1 + 1e-9) {
			problems.add(new Problem(which + STEP, NLS.bind(Messages.SheetPlan_many, Sweep.MOST)));
		} else {
			try {
				TestSheetJob.check(sweep(text), work.machine());
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(which + FROM, e.getMessage()));
			}
		}
	}

	private static Double number(String place, String text, String unit, List<Problem> problems) {
		try {
			double number = TypedNumber.parse(text, unit);
			if (number < 0) {
				throw new IllegalArgumentException(Messages.SheetPlan_negative);
			}
			return number;
		} catch (IllegalArgumentException e) {
			problems.add(new Problem(place, e.getMessage()));
			return null;
		}
	}

	private Sweep sweep(SweepText text) {
		String unit = unit(text.parameter(), work.machine());
		double from = TypedNumber.parse(text.from(), unit);
		double to = TypedNumber.parse(text.to(), unit);
		double step = TypedNumber.parse(text.step(), unit);
		return Sweep.parse(text.parameter().word() + '=' + Sweep.plain(from) + ".." + Sweep.plain(to) + '/'
				+ Sweep.plain(step));
	}

	/** @throws IllegalArgumentException if it is no size */
	public double sizeMm() {
		double mm = TypedNumber.parse(size, MM);
		if (!(mm >= SheetLayout.LEAST_SIZE && mm <= SheetLayout.MOST_SIZE)) {
			throw new IllegalArgumentException(NLS.bind(Messages.SheetPlan_size, Sweep.plain(SheetLayout.LEAST_SIZE),
					Sweep.plain(SheetLayout.MOST_SIZE)));
		}
		return mm;
	}

	/**
	 * The sheet, with no verdicts yet.
	 *
	 * @throws IllegalArgumentException if there are {@linkplain #problems problems}
	 */
	public TestSheet sheet(String id, LocalDate day) {
		return new TestSheet(id, day, work.stock(), work.setup(), base, sweep(across), sweep(down),
				work.tool().edge().map(Edge::share).orElse(0.0), new TreeMap<>());
	}

	/** A sheet of this plan as a job. */
	public Job job(TestSheet sheet) {
		return TestSheetJob.of(sheet, work.machine(), sizeMm());
	}
}
