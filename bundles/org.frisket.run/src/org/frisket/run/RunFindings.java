package org.frisket.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.material.advice.Caution;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.tools.Process;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.BladeWear;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Move;

/** What speaks against a run. */
final class RunFindings {

	/**
	 * A blade about as far out as the stock is thick and a tenth of a millimetre more comes through (common practice, no
	 * source); from this much more on, in mm, it works in the mat. Our own limit.
	 */
	private static final double TOO_FAR_OUT = 0.3;
	private static final double SLACK = 1e-6;

	private final Load load;
	private final Workshop workshop;
	private final Machine machine;
	private final Bed bed;
	private final WorkList list;
	private final Run run;
	private final List<LegWork> work;
	private final List<Finding> found = new ArrayList<>();
	/** Messages that were said. */
	private final Set<String> said = new HashSet<>();

	RunFindings(Load load, Workshop workshop, Bed bed, WorkList list, Run run, List<LegWork> work) {
		this.load = load;
		this.workshop = workshop;
		this.bed = bed;
		this.list = list;
		this.run = run;
		this.work = work;
		machine = workshop.machine();
	}

	/** The gravest first. */
	List<Finding> all() {
		if (run.strokes().findAny().isEmpty()) {
			say("run-empty", Severity.NOTE, Messages.RunFindings_empty, Messages.RunFindings_emptyCure);
			return found;
		}
		heat();
		size();
		reach();
		tools();
		settings();
		edges();
		stocks();
		if (workshop.isPlain()) {
			say("run-machine-unknown", Severity.NOTE, Messages.RunFindings_plain, Messages.RunFindings_plainCure);
		} else if (machine.speed().means() == null) {
			say("run-speed-unknown", Severity.NOTE, NLS.bind(Messages.RunFindings_speed, machine.name()),
					Messages.RunFindings_speedCure);
		}
		found.sort(Comparator.comparing(Finding::severity));
		return found;
	}

	private void say(String id, Severity severity, String message, String cure) {
		if (said.add(message)) {
			found.add(Finding.plain(id, severity, "", new Point(load.page().minX(), load.page().minY()), message, cure));
		}
	}

	/** The end of a machine that nobody has described is a guess. */
	private Severity atTheEnd() {
		return workshop.isPlain() ? Severity.CAUTION : Severity.BLOCKING;
	}

	private void heat() {
		for (LegWork each : work) {
			each.cautions().stream().filter(Caution::isBlocking)
					.forEach(caution -> say("run-heat", Severity.BLOCKING, caution.text(), Messages.RunFindings_heatCure));
		}
	}

	private void size() {
		Machine.Area area = machine.area();
		load.sheet().filter(sheet -> sheet.getWidth() > area.width() + SLACK || sheet.getHeight() > area.height() + SLACK)
				.ifPresent(sheet -> say("run-sheet-too-large", atTheEnd(),
						bind(workshop.isPlain() ? Messages.RunFindings_largePlain : Messages.RunFindings_large, mm(sheet.getWidth()),
								mm(sheet.getHeight()), machine.name(), mm(area.width()), mm(area.height())),
						sheet.getWidth() <= area.height() + SLACK && sheet.getHeight() <= area.width() + SLACK
								? Messages.RunFindings_largeTurn
								: Messages.RunFindings_largeCure));
	}

	/** One for each element: where it stands out farthest. */
	private void reach() {
		Map<String, Finding> worst = new LinkedHashMap<>();
		run.strokes().forEach(stroke -> {
			double beyond = bed.beyond(bounds(stroke));
			String element = stroke.line().id();
			Finding before = worst.get(element);
			if (beyond > SLACK && (before == null || beyond > before.measured().getAsDouble())) {
				worst.put(element,
						Finding.measured("run-outside-area", atTheEnd(), element, farthest(stroke), beyond, 0,
								bind(workshop.isPlain() ? Messages.RunFindings_outsidePlain : Messages.RunFindings_outside, machine.name(),
										mm(beyond)),
								load.sheet().isPresent() ? Messages.RunFindings_outsideCure : Messages.RunFindings_outsideBench));
			}
		});
		found.addAll(worst.values());
	}

	private static Bounds bounds(Stroke stroke) {
		return places(stroke).map(Bounds::of).reduce(Bounds.EMPTY, Bounds::with);
	}

	/** Of the axis, which is what the machine leads; arcs at their middles too. */
	private static Stream<Point> places(Stroke stroke) {
		return stroke.axis().stream().flatMap(RunFindings::places);
	}

	private static Stream<Point> places(Move move) {
		return move.curvature() == 0 ? Stream.of(move.start(), move.end())
				: Stream.of(move.start(), move.at(move.length() / 4), move.at(move.length() / 2), move.at(move.length() * 3 / 4),
						move.end());
	}

	private Point farthest(Stroke stroke) {
		return places(stroke).max(Comparator.comparingDouble(place -> bed.beyond(Bounds.of(place)))).orElseThrow();
	}

	private void tools() {
		for (WorkList.Item item : list.items()) {
			Tool tool = item.tool();
			String named = Workshop.named(item.operation());
			boolean described = workshop.desk().tools().contains(tool);
			if (!named.isEmpty() && !named.equals(tool.id())) {
				say("run-tool-missing", Severity.CAUTION, bind(Messages.RunFindings_toolMissing, named, tool.name()),
						Messages.RunFindings_toolMissingCure);
			} else if (!described && !workshop.isPlain()) {
				say("run-tool-usual", Severity.NOTE, NLS.bind(Messages.RunFindings_toolUsual, tool.name()),
						Messages.RunFindings_toolUsualCure);
			}
			if (item.stage() == Stage.PERFORATE && tool instanceof Blade && !Workshop.isDashed(item.operation())) {
				say("run-perforation-whole", Severity.CAUTION, NLS.bind(Messages.RunFindings_whole, tool.name()),
						Messages.RunFindings_wholeCure);
			}
		}
	}

	private void settings() {
		for (int i = 0; i < work.size(); i++) {
			LegWork each = work.get(i);
			String tool = each.tool().name();
			range(tool, machine.pressure(), each.settings().pressure(), Messages.RunFindings_pressure);
			range(tool, machine.speed(), each.settings().speed(), Messages.RunFindings_speedRange);
			if (each.settings().passes() > machine.mostPasses()) {
				say("run-passes", Severity.CAUTION,
						bind(Messages.RunFindings_passes, tool, each.settings().passes(), machine.name(), machine.mostPasses()),
						Messages.RunFindings_passesCure);
			}
			exposure(run.legs().get(i).stage(), each);
		}
	}

	private void range(String tool, NativeScale scale, double value, String message) {
		if (!scale.has(value)) {
			say("run-setting-out-of-range", Severity.CAUTION,
					bind(message, tool, number(value), machine.name(), number(scale.least()), number(scale.most()),
							number(scale.step())),
					Messages.RunFindings_rangeCure);
		}
	}

	private void exposure(Stage stage, LegWork each) {
		double caliper = each.stock().caliperMm();
		double out = each.settings().exposure();
		if (!(each.tool() instanceof Blade) || machine.process() != Process.BLADE || caliper == 0) {
			return;
		}
		if (stage == Stage.CUT && out < caliper - SLACK) {
			say("run-exposure-short", Severity.CAUTION,
					bind(Messages.RunFindings_short, each.tool().name(), mm(out), mm(caliper)), Messages.RunFindings_shortCure);
		} else if (stage == Stage.KISS_CUT && out > caliper + SLACK || out > caliper + TOO_FAR_OUT + SLACK) {
			say("run-exposure-far", Severity.CAUTION,
					bind(Messages.RunFindings_far, each.tool().name(), mm(out), mm(caliper)), Messages.RunFindings_farCure);
		}
	}

	/** All legs of a tool wear the same edge. */
	private void edges() {
		Map<Tool, Double> worn = new LinkedHashMap<>();
		for (int i = 0; i < work.size(); i++) {
			worn.merge(work.get(i).tool(), MachineRun.metres(run.legs().get(i)) * work.get(i).stock().abrasion(), Double::sum);
		}
		worn.forEach((tool, metres) -> BladeWear.warning(tool, metres, 1)
				.ifPresent(warning -> say("run-edge", Severity.CAUTION, warning, Messages.RunFindings_edgeCure)));
	}

	private void stocks() {
		Set<String> stocks = new LinkedHashSet<>();
		list.items().forEach(item -> stocks.add(Objects.requireNonNullElse(item.stock(), "")));
		for (String stock : stocks) {
			if (!workshop.knows(stock)) {
				say("run-stock-unknown", machine.process().isHot() ? Severity.CAUTION : Severity.NOTE,
						stock.isEmpty() ? Messages.RunFindings_noStock : NLS.bind(Messages.RunFindings_unknownStock, stock),
						Messages.RunFindings_stockCure);
			}
		}
		if (stocks.size() > 1 && work.stream().map(LegWork::stock).distinct().count() > 1) {
			say("run-several-stocks", Severity.CAUTION, NLS.bind(Messages.RunFindings_stocks, stocks.size()),
					Messages.RunFindings_stocksCure);
		}
	}

	private static String mm(double mm) {
		return Figures.length(mm, 2);
	}

	private static String number(double value) {
		return Figures.number(value, 3);
	}

	private static String bind(String message, Object... values) {
		return NLS.bind(message, values);
	}
}
