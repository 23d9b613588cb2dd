package org.frisket.orders.work;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.orders.reports.Tables;

/**
 * What the runs of a studio come to: how long they took against what was thought, and what of the stock became parts. All
 * sums are exact.
 */
public record RunReports(List<Time> times, List<Use> uses) {

	private static final BigDecimal MM2_PER_M2 = BigDecimal.valueOf(1_000_000);
	private static final int SHARE_DECIMALS = 4;

	/**
	 * A run of which something was done.
	 *
	 * @param day      it was planned
	 * @param seconds  that it was thought to take
	 * @param measured that it took; empty if nobody said so
	 */
	public record Time(long run, LocalDate day, List<Long> jobs, BigDecimal seconds, Optional<BigDecimal> measured) {

		/** Measured over estimated; empty if either is missing. */
		public Optional<BigDecimal> ratio() {
			return measured.filter(took -> seconds.signum() > 0).map(took -> took.divide(seconds, SHARE_DECIMALS, RoundingMode.HALF_UP));
		}
	}

	/**
	 * A stock in a colour, of all runs of which something was done.
	 *
	 * @param used      sheets, or metres of rolls, without leftovers
	 * @param planned   of them
	 * @param leftovers that were used
	 * @param sheetArea of planned sheets and leftovers, in mm²
	 * @param partsArea of what was planned on them, in mm²
	 * @param pieces    that came out well
	 * @param spoiled   pieces
	 */
	public record Use(StockColour of, int runs, BigDecimal planned, BigDecimal used, int leftovers, BigDecimal sheetArea,
			BigDecimal partsArea, int pieces, int spoiled) {

		/** The parts' share of what they lay on; empty without sheets. */
		public Optional<BigDecimal> utilisation() {
			return sheetArea.signum() == 0 ? Optional.empty()
					: Optional.of(partsArea.divide(sheetArea, SHARE_DECIMALS, RoundingMode.HALF_UP));
		}

		private Use plus(Use other) {
			return new Use(of, runs + other.runs, planned.add(other.planned), used.add(other.used), leftovers + other.leftovers,
					sheetArea.add(other.sheetArea), partsArea.add(other.partsArea), pieces + other.pieces,
					spoiled + other.spoiled);
		}
	}

	public RunReports {
		times = List.copyOf(times);
		uses = List.copyOf(uses);
	}

	/** @param zone of the studio's calendar */
	public static RunReports of(List<PlannedRun> runs, ZoneId zone) {
		List<Time> times = new ArrayList<>();
		Map<StockColour, Use> uses = new TreeMap<>();
		for (PlannedRun run : runs) {
			boolean worked = !run.used().values().stream().allMatch(amount -> amount.signum() == 0)
					|| run.pieces().stream().anyMatch(piece -> piece.printed() + piece.cut() + piece.spoiled() > 0);
			if (worked) {
				times.add(new Time(run.number(), run.at().atZone(zone).toLocalDate(), run.numbers(), run.seconds(), run.measured()));
				ofRun(run).forEach((of, use) -> uses.merge(of, use, Use::plus));
			}
		}
		return new RunReports(times, new ArrayList<>(uses.values()));
	}

	private static Map<StockColour, Use> ofRun(PlannedRun run) {
		Map<StockColour, Use> uses = new TreeMap<>();
		for (RunSheet sheet : run.sheets()) {
			BigDecimal planned = sheet.isLeftover() ? BigDecimal.ZERO : sheet.amount();
			uses.merge(sheet.of(), new Use(sheet.of(), 0, planned, BigDecimal.ZERO, sheet.isLeftover() ? 1 : 0, sheet.area(),
					sheet.partsArea(), 0, 0), Use::plus);
		}
		for (RunPiece piece : run.pieces()) {
			uses.merge(piece.of(), new Use(piece.of(), 0, BigDecimal.ZERO, BigDecimal.ZERO, 0, BigDecimal.ZERO, BigDecimal.ZERO,
					piece.cut(), piece.spoiled()), Use::plus);
		}
		run.used().forEach((of, amount) -> uses.merge(of,
				new Use(of, 0, BigDecimal.ZERO, amount, 0, BigDecimal.ZERO, BigDecimal.ZERO, 0, 0), Use::plus));
		uses.replaceAll((of, use) -> use.plus(
				new Use(of, 1, BigDecimal.ZERO, BigDecimal.ZERO, 0, BigDecimal.ZERO, BigDecimal.ZERO, 0, 0)));
		return uses;
	}

	/** As a table with headers; a cell without a value is empty. */
	public String timesToCsv() {
		List<List<String>> table = new ArrayList<>();
		table.add(List.of("run", "day", "jobs", "estimated seconds", "measured seconds", "measured over estimated"));
		for (Time row : times) {
			table.add(List.of(Long.toString(row.run()), row.day().toString(),
					String.join(" ", row.jobs().stream().map(String::valueOf).toList()), plain(row.seconds()),
					row.measured().map(RunReports::plain).orElse(""), row.ratio().map(RunReports::plain).orElse("")));
		}
		return Tables.csv(table);
	}

	/** The same of stock; areas in m². */
	public String usesToCsv() {
		List<List<String>> table = new ArrayList<>();
		table.add(List.of("stock", "colour", "runs", "planned", "used", "leftovers", "sheets m2", "parts m2", "utilisation",
				"pieces", "spoiled"));
		for (Use row : uses) {
			table.add(List.of(row.of().stock(), row.of().colour(), Integer.toString(row.runs()), plain(row.planned()),
					plain(row.used()), Integer.toString(row.leftovers()), plain(row.sheetArea().divide(MM2_PER_M2)),
					plain(row.partsArea().divide(MM2_PER_M2)), row.utilisation().map(RunReports::plain).orElse(""),
					Integer.toString(row.pieces()), Integer.toString(row.spoiled())));
		}
		return Tables.csv(table);
	}

	private static String plain(BigDecimal value) {
		return value.stripTrailingZeros().toPlainString();
	}
}
