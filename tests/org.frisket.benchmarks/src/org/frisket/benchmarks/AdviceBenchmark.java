package org.frisket.benchmarks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.material.StockFamily;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;
import org.frisket.model.OperationKind;

/** Settings for a whole shelf from all trials of a studio, and how that grows with them. */
final class AdviceBenchmark {

	private static final int STOCKS = 1000;
	private static final int TRIALS = 50_000;
	private static final Tool BLADE = ToolOptions.usual(ToolKind.BLADE);
	private static final Machine MACHINE = Machine.plain();

	private AdviceBenchmark() {
	}

	static void run() {
		List<StockFacts> shelf = shelf(STOCKS);
		List<Trial> half = trials(shelf, TRIALS / 2);
		List<Trial> all = trials(shelf, TRIALS);
		double[] ms = Stopwatch.mediansOfFew(() -> advise(shelf, all), () -> advise(shelf, half), () -> sorted(all));
		System.out.printf("advice for %d stocks from %d trials: %.1f ms (goal 200), %.1f times as long as sorting the trials; "
				+ "twice the trials take %.2f times as long%n", STOCKS, TRIALS, ms[0], ms[0] / ms[2], ms[0] / ms[1]);
	}

	/** The least that anybody has to do who wants to know what was tried where. */
	private static List<Trial> sorted(List<Trial> trials) {
		return trials.stream().sorted(Comparator.comparing((Trial trial) -> trial.stock().family())
				.thenComparingInt(trial -> trial.settings().passes())
				.thenComparingDouble(trial -> trial.stock().grammage())
				.thenComparingDouble(trial -> trial.settings().pressure())).toList();
	}

	private static List<Advice> advise(List<StockFacts> shelf, List<Trial> trials) {
		SettingsAdvisor advisor = new SettingsAdvisor(trials, RulesOfThumb.of(Map.of()));
		return shelf.stream().map(stock -> advisor.advise(new Work(stock, MACHINE, BLADE, OperationKind.CUT))).toList();
	}

	/** Cards and papers, no two of the same weight. */
	private static List<StockFacts> shelf(int stocks) {
		List<StockFacts> shelf = new ArrayList<>();
		for (int i = 0; i < stocks; i++) {
			shelf.add(new StockFacts("stock-" + i, i % 2 == 0 ? StockFamily.CARD : StockFamily.PAPER, 60 + 0.3 * i, 0, 1));
		}
		return shelf;
	}

	private static List<Trial> trials(List<StockFacts> shelf, int count) {
		Random random = new Random(1);
		Setup setup = new Setup(MACHINE.id(), BLADE.id(), OperationKind.CUT);
		List<Trial> trials = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			StockFacts stock = shelf.get(random.nextInt(shelf.size()));
			double pressure = random.nextInt(101);
			double excess = pressure - stock.grammage() / 8 + 8 * random.nextGaussian();
			Verdict verdict = excess < 0 ? Verdict.NOT_THROUGH : excess > 35 ? Verdict.CARRIER_CUT : Verdict.THROUGH;
			trials.add(new Trial("t" + i, LocalDate.of(2031, 5, 17), stock, setup,
					new Settings(0.4, pressure, random.nextInt(101), 1 + random.nextInt(2)), verdict, 0, ""));
		}
		return trials;
	}
}
