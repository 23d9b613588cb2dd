package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.material.tools.NativeScale;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;

/**
 * What was tried of a family of stock with one setup, as a chart: pressure across, weight or thickness upwards, and the
 * advised pressure with the window it lies in.
 *
 * @param pressure in the steps of the machine
 * @param stock    in g/m² or mm
 * @param marks    of the trials with as many passes as are advised, each place and verdict once
 * @param advised  what to begin with
 */
public record PressureChart(Axis pressure, Axis stock, List<Mark> marks, Advised advised) {

	private static final double[] NICE = { 1, 2, 5, 10 };
	private static final int TICKS = 6;

	/** An axis from one end to the other. @param unit as it is written; may be empty */
	public record Axis(String unit, double from, double to, List<Double> ticks) {

		/** From 0 at one end to 1 at the other. */
		public double share(double value) {
			return (value - from) / (to - from);
		}
	}

	/**
	 * Trials at one place with the same verdict.
	 *
	 * @param count how many they are
	 * @param slot  counts the other verdicts at this place, so that they can be drawn side by side
	 */
	public record Mark(double pressure, double stock, Verdict verdict, int count, int slot) {
	}

	/** @param window the pressures that go well; null if nothing comparable was tried */
	public record Advised(double pressure, double stock, Advice.PressureWindow window) {
	}

	public PressureChart {
		marks = List.copyOf(marks);
	}

	/** The chart of a piece of work; empty if neither weight nor thickness of its stock is known. */
	public static Optional<PressureChart> of(Collection<Trial> trials, Work work, Advice advice) {
		return Measure.of(work.stock()).map(measure -> of(trials, work, advice, measure));
	}

	private static PressureChart of(Collection<Trial> trials, Work work, Advice advice, Measure measure) {
		List<Trial> comparable = trials.stream()
				.filter(trial -> trial.stock().family() == work.stock().family() && trial.setup().equals(work.setup())
						&& trial.settings().passes() == advice.settings().passes() && measure.value(trial.stock()) > 0)
				.toList();
		double value = measure.value(work.stock());
		double least = value;
		double most = value;
		for (Trial trial : comparable) {
			least = Math.min(least, measure.value(trial.stock()));
			most = Math.max(most, measure.value(trial.stock()));
		}
		double margin = Math.max((most - least) * 0.2, most * 0.15);
		Axis pressures = pressures(comparable, work.machine().pressure(), advice);
		Axis stocks = axis(measure == Measure.GRAMMAGE ? "g/m²" : "mm", Math.max(0, least - margin), most + margin);
		return new PressureChart(pressures, stocks, marks(comparable, measure),
				new Advised(advice.settings().pressure(), value, advice.window()));
	}

	/** As much of the range of the machine as is spoken of, with some room beside it. */
	private static Axis pressures(List<Trial> trials, NativeScale scale, Advice advice) {
		double least = advice.settings().pressure();
		double most = least;
		for (Trial trial : trials) {
			least = Math.min(least, trial.settings().pressure());
			most = Math.max(most, trial.settings().pressure());
		}
		double room = Math.max((most - least) * 0.25, (scale.most() - scale.least()) * 0.1);
		return axis(scale.unit(), Math.max(scale.least(), least - room), Math.min(scale.most(), most + room));
	}

	private static List<Mark> marks(List<Trial> trials, Measure measure) {
		Map<List<Double>, Map<Verdict, Integer>> places = new HashMap<>();
		for (Trial trial : trials) {
			places.computeIfAbsent(List.of(trial.settings().pressure(), measure.value(trial.stock())), key -> new TreeMap<>())
					.merge(trial.verdict(), 1, Integer::sum);
		}
		List<Mark> marks = new ArrayList<>();
		places.entrySet().stream().sorted((a, b) -> {
			int byPressure = a.getKey().get(0).compareTo(b.getKey().get(0));
			return byPressure != 0 ? byPressure : a.getKey().get(1).compareTo(b.getKey().get(1));
		}).forEach(place -> {
			int slot = 0;
			for (Map.Entry<Verdict, Integer> each : place.getValue().entrySet()) {
				marks.add(new Mark(place.getKey().get(0), place.getKey().get(1), each.getKey(), each.getValue(), slot++));
			}
		});
		return marks;
	}

	private static Axis axis(String unit, double from, double to) {
		double rough = (to - from) / TICKS;
		double power = Math.pow(10, Math.floor(Math.log10(rough)));
		double step = power * NICE[NICE.length - 1];
		for (int i = NICE.length - 1; i >= 0; i--) {
			step = power * NICE[i] >= rough ? power * NICE[i] : step;
		}
		List<Double> ticks = new ArrayList<>();
		for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
			ticks.add(Math.rint(i * step * 1e9) / 1e9);
		}
		return new Axis(unit, from, to, ticks);
	}
}
