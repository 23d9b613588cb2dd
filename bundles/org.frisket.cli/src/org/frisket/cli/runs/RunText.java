package org.frisket.cli.runs;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.cli.work.Report;
import org.frisket.geometry.Length;
import org.frisket.material.Price;
import org.frisket.material.advice.Caution;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.trials.Settings;
import org.frisket.model.Sheet;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.run.Rate;
import org.frisket.run.RunCost;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Stage;

/** Runs as they are read: one fact a line. */
final class RunText {

	private final PrintWriter out;
	private final Optional<Rate> rate;

	RunText(PrintWriter out, Optional<Rate> rate) {
		this.out = out;
		this.rate = rate;
	}

	void print(SheetRun sheet) {
		MachineRun run = sheet.run();
		boolean plain = run.machine().id().equals(Machine.plain().id());
		out.println(head(sheet) + ", run by " + (plain ? "no particular machine" : run.machine().name()));
		for (int i = 0; i < run.work().size(); i++) {
			leg(run, i);
		}
		RunCost.Seconds seconds = sheet.cost().seconds();
		out.printf(Locale.ROOT, "time %s: strokes %s, travel %s over %.2f m, lowering and lifting %s, %s%n",
				time(seconds.all()), time(seconds.strokes()), time(seconds.travel()), sheet.travel(), time(seconds.lifts()),
				sheet.stops() == 0 ? "no stop" : sheet.stops() + (sheet.stops() == 1 ? " stop " : " stops ") + time(seconds.stops()));
		sheet.cost().tools().forEach(this::tool);
		cost(sheet.cost());
		for (Caution caution : sheet.cautions()) {
			out.println((caution.isBlocking() ? "blocking: " : "caution: ") + caution.text());
		}
		new Report(out).findings(sheet.findings());
	}

	private static String head(SheetRun run) {
		if (run.load().sheet().isEmpty()) {
			return "the bench as it lies: " + Length.text(run.load().page().width(), 1) + " by "
					+ Length.text(run.load().page().height(), 1);
		}
		Sheet sheet = run.load().sheet().get();
		return "sheet " + run.number() + (sheet.getName() == null ? "" : " (" + sheet.getName() + ")") + ": "
				+ (sheet.getStock() == null ? "no stock chosen" : sheet.getStock()) + ", " + Length.text(sheet.getWidth(), 1)
				+ " by " + Length.text(sheet.getHeight(), 1);
	}

	private void leg(MachineRun run, int number) {
		Leg leg = run.run().legs().get(number);
		LegWork work = run.work().get(number);
		int strokes = leg.strokes().size();
		out.printf(Locale.ROOT, "%d. %s with %s: %s; %d %s, %.2f m (%s)%n", number + 1, stage(leg.stage()), work.tool().name(),
				settings(work.settings(), run.machine()), strokes, strokes == 1 ? "stroke" : "strokes", run.metres(number), basis(work.basis()));
		work.reasons().forEach(reason -> out.println("   " + reason));
	}

	private static String stage(Stage stage) {
		return stage.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	private static String basis(LegWork.Basis basis) {
		return switch (basis) {
		case RUN -> "worked before";
		case TRIALS -> "by trials";
		case RULES -> "rules of thumb";
		};
	}

	private static String settings(Settings settings, Machine machine) {
		return (settings.exposure() > 0 ? "exposure " + Length.text(settings.exposure(), 2) + ", " : "") + "pressure "
				+ step(settings.pressure(), machine.pressure()) + ", speed " + step(settings.speed(), machine.speed()) + ", passes "
				+ settings.passes();
	}

	private static String step(double value, NativeScale scale) {
		String number = Length.text(value, 3).replace(" mm", "");
		return scale.unit().isEmpty() ? number : number + ' ' + scale.unit();
	}

	private void tool(RunCost.ToolUse use) {
		out.printf(Locale.ROOT, "%s: %.2f m%s%n", use.tool().name(), use.metres(),
				use.edge().map(edge -> String.format(Locale.ROOT, ", worn %.1f of %.0f m after it", edge.wornMetres(), edge.dullAfter()))
						.orElse(""));
	}

	private void cost(RunCost cost) {
		out.println("cost: material " + price(cost.material(), "not known") + ", time " + price(cost.time(), "no rate")
				+ (rate.isPresent() ? " at " + rate.get() + " an hour" : "") + together(cost.total(), cost.material(), cost.time()));
		if (cost.shares().size() > 1) {
			for (RunCost.Share share : cost.shares()) {
				out.printf(Locale.ROOT, "share of %s: %.0f mm², %s; material %s, time %s%s%n", share.name(), share.area(),
						time(share.seconds()), price(share.material(), "not known"), price(share.time(), "no rate"),
						together(share.total(), share.material(), share.time()));
			}
		}
	}

	private static String price(Optional<Price> price, String none) {
		return price.map(RunCost::text).orElse(none);
	}

	/** Nothing is added up where one is not known. */
	private static String together(Optional<Price> total, Optional<Price> material, Optional<Price> time) {
		return material.isPresent() && time.isPresent() ? total.map(sum -> ", together " + RunCost.text(sum)).orElse("") : "";
	}

	/** Such as {@code 2 min 05 s}, or {@code 4.2 s}. */
	private static String time(double seconds) {
		if (seconds < 60) {
			return String.format(Locale.ROOT, "%.1f s", seconds);
		}
		long whole = Math.round(seconds);
		return whole < 3600 ? String.format(Locale.ROOT, "%d min %02d s", whole / 60, whole % 60)
				: String.format(Locale.ROOT, "%d h %02d min", whole / 3600, whole % 3600 / 60);
	}

	void problems(List<String> problems) {
		problems.forEach(problem -> out.println("caution: " + problem));
	}
}
