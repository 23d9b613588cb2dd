package org.frisket.orders.work;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.sheets.LaySheets;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Sheet;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StageStep;
import org.frisket.orders.StoredJob;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.Origin;
import org.frisket.orders.internal.Transactions;
import org.frisket.orders.stages.StageRules;
import org.frisket.orders.work.internal.LaidPieces;
import org.frisket.orders.work.internal.RunRows;
import org.frisket.orders.work.internal.RunWork;
import org.frisket.orders.work.internal.Tally;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.run.MachineRun;
import org.frisket.run.Workshop;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.imposing.JobImposer;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.sheets.imposing.Supply;
import org.frisket.studio.StudioFolder;

/**
 * Lays jobs of the order book together: as many pieces of each as it still lacks and no run has. The layout is a job of its
 * own in the order book, which has no layers and whose guests the others are, by their ids; so it is opened, looked at and
 * laid anew as any job is, at every desk.
 */
public final class Gang {

	private static final int DECIMALS = 3;
	private static final BigDecimal MM_PER_M = BigDecimal.valueOf(1000);
	/** Of a title; the others are in the layout. */
	private static final int NAMED = 8;

	private final StudioFolder studio;
	private final JobPreparer preparer;
	private final LayerLimits limits;
	private final Transactions transactions;

	/**
	 * Jobs that were laid, and nothing kept of it.
	 *
	 * @param layout   with sheets and guests
	 * @param entries  of the jobs as they were when they were read
	 * @param sheets   as they come to
	 * @param runs     of each sheet
	 * @param offcuts  what is left of each sheet
	 * @param blocking findings of the jobs, by id, because of which they must not be cut
	 */
	public record Laid(Job layout, Map<String, PreparedJob> jobs, List<Entry> entries, SheetPlan plan, LayingChoices choices,
			List<LaidSheet> sheets, List<MachineRun> runs, List<Optional<Bounds>> offcuts, List<RunPiece> pieces,
			Map<String, List<String>> blocking) {

		/** That the machine is thought to take, with a tool down or not. */
		public double seconds() {
			return runs.stream().mapToDouble(run -> run.timeline().seconds()).sum();
		}

		/** What is wrong with how parts lie and with the runs. */
		public List<Finding> findings() {
			List<Finding> findings = new ArrayList<>();
			sheets.forEach(sheet -> findings.addAll(sheet.findings()));
			runs.forEach(run -> findings.addAll(run.findings()));
			return findings;
		}
	}

	/**
	 * @param preparer works jobs through
	 * @param limits   of their stocks
	 */
	public Gang(StudioFolder studio, Clock clock, JobPreparer preparer, LayerLimits limits) {
		this.studio = studio;
		this.preparer = preparer;
		this.limits = limits;
		transactions = new Transactions(studio, clock, OrderBook.AREA, RunArea.AREA);
	}

	/** What is read of the order book in one go. */
	private record Read(List<StoredJob> jobs, Map<String, Map<StockColour, TodayLine>> lacking,
			Map<String, Map<StockColour, Need>> needs) {

		int wanted(String job, StockColour of) {
			TodayLine line = lacking.get(job).get(of);
			return line == null ? 0 : line.unplanned();
		}
	}

	private Read read(List<Long> numbers) throws IOException, OrderException {
		return transactions.read(connection -> {
			List<StoredJob> jobs = new ArrayList<>();
			Map<String, Map<StockColour, TodayLine>> lacking = new LinkedHashMap<>();
			Map<String, Map<StockColour, Need>> needs = new LinkedHashMap<>();
			List<String> layouts = RunRows.layouts(connection);
			for (long number : new TreeSet<>(numbers)) {
				Entry entry = KeptJobs.find(connection, number);
				if (layouts.contains(entry.id())) {
					throw new OrderException(NLS.bind(Messages.Gang_layout, number));
				}
				if (entry.stage() != Stage.APPROVED && entry.stage() != Stage.PRINTED) {
					throw new OrderException(NLS.bind(Messages.Gang_stage, number, entry.stage().getLiteral()));
				}
				Job job = KeptJobs.load(connection, entry);
				List<Need> own = Need.of(job);
				needs.put(entry.id(), own.stream().collect(Collectors.toMap(Need::of, need -> need)));
				lacking.put(entry.id(), TodayList.lacking(entry, own, Tally.ofJob(connection, entry.id()), Step.CUT).stream()
						.collect(Collectors.toMap(TodayLine::of, line -> line)));
				jobs.add(new StoredJob(job, entry));
			}
			return new Read(jobs, lacking, needs);
		});
	}

	/**
	 * How many sheets the jobs need about: a first layout, without looking for a better one.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public SheetPlan estimate(List<Long> numbers, LayingChoices choices, Monitor monitor) throws IOException, OrderException {
		Read read = read(numbers);
		Job layout = layout(read);
		return plan(read, layout, prepared(read, layout, monitor), choices, Budget.steps(0, choices.seed()), better -> {
			// the first will do
		}, monitor);
	}

	/**
	 * Lays them. Nothing is kept of it.
	 *
	 * @param better told of each better plan, on the calling thread
	 * @throws OrderException           if a job is neither approved nor printed, or nothing is to be cut of any
	 * @throws IllegalArgumentException with a sentence for people, if parts cannot be laid like that at all
	 * @throws java.util.concurrent.CancellationException if the monitor cancels before there is a layout
	 */
	public Laid lay(List<Long> numbers, LayingChoices choices, Budget budget, Consumer<SheetPlan> better, Monitor monitor)
			throws IOException, OrderException {
		Read read = read(numbers);
		Job layout = layout(read);
		Map<String, PreparedJob> jobs = prepared(read, layout, monitor);
		Map<String, List<String>> blocking = new LinkedHashMap<>();
		jobs.forEach((id, job) -> blocking.put(id, Makeready.findings(job, limits, Tolerance.DEFAULT, Monitor.NONE).stream()
				.filter(Finding::isBlocking).map(Finding::message).toList()));
		SheetPlan plan = plan(read, layout, jobs, choices, budget, better, monitor);
		List<Guest> guests = read.jobs().stream().map(stored -> GuestFiles.shelved(stored.job())).toList();
		new LaySheets(layout, plan.toSheets(), guests, choices.toLaying()).apply();
		List<LaidSheet> sheets = LaidSheets.of(layout, jobs, Tolerance.DEFAULT, Monitor.NONE);
		List<Optional<Bounds>> offcuts = sheets.stream().map(sheet -> LaidPieces.offcut(sheet)).toList();
		return new Laid(layout, jobs, read.jobs().stream().map(StoredJob::entry).toList(), plan, choices, sheets,
				RunWork.of(sheets, Workshop.of(SettingsDesk.look(studio)), Monitor.NONE), offcuts,
				LaidPieces.of(plan, read.jobs(), read.needs(), jobs, choices.apart()), blocking);
	}

	private static Job layout(Read read) throws OrderException {
		boolean nothing = read.jobs().stream().allMatch(stored -> read.lacking().get(stored.entry().id()).values().stream()
				.allMatch(line -> line.unplanned() == 0));
		if (nothing) {
			throw new OrderException(Messages.Gang_nothing);
		}
		String named = read.jobs().stream().limit(NAMED).map(stored -> Long.toString(stored.entry().number()))
				.collect(Collectors.joining(", ")) + (read.jobs().size() > NAMED ? ", \u2026" : "");
		Job layout = Jobs.create(UUID.randomUUID().toString(), NLS.bind(Messages.Gang_title, named));
		layout.setStage(Stage.APPROVED);
		return layout;
	}

	private Map<String, PreparedJob> prepared(Read read, Job layout, Monitor monitor) {
		Map<String, PreparedJob> jobs = new LinkedHashMap<>();
		jobs.put(layout.getId(), preparer.prepare(layout, Tolerance.DEFAULT, monitor));
		for (StoredJob stored : read.jobs()) {
			jobs.put(stored.entry().id(), preparer.prepare(stored.job(), Tolerance.DEFAULT, monitor));
		}
		return jobs;
	}

	private SheetPlan plan(Read read, Job layout, Map<String, PreparedJob> jobs, LayingChoices choices, Budget budget,
			Consumer<SheetPlan> better, Monitor monitor) throws IOException {
		return JobImposer.lay(layout, jobs, (job, part) -> read.wanted(job, StockColour.of(part.layer())), choices,
				Supply.ofStudio(studio), budget, better, Tolerance.DEFAULT, monitor);
	}

	/**
	 * Keeps a layout as a job of the order book, and as a run that is to be made.
	 *
	 * @param anyway even if a rule of the studio is against cutting one of the jobs
	 * @throws org.frisket.orders.stages.StageRuleException if a rule is against it
	 * @throws JobChangedException if somebody has changed one of the jobs since they were laid
	 * @throws OrderException      if somebody has planned pieces of them meanwhile, or nothing is on the sheets
	 */
	public PlannedRun keep(Laid laid, String person, boolean anyway) throws IOException, OrderException {
		if (laid.pieces().isEmpty()) {
			throw new OrderException(Messages.Gang_nothing);
		}
		if (!anyway) {
			for (Entry entry : laid.entries()) {
				List<String> against = laid.blocking().getOrDefault(entry.id(), List.of());
				new StageRules(studio).gate(() -> against)
						.pass(new StageStep(entry, entry.stage(), Stage.CUT, Messages.Gang_remark, true));
			}
		}
		Origin origin = Origin.of(laid.layout());
		return transactions.change(connection -> {
			for (Entry entry : laid.entries()) {
				Entry now = JobRows.find(connection, entry.id()).orElseThrow(() -> KeptJobs.noJob(entry.number()));
				if (now.revision() != entry.revision() || now.stage() != entry.stage()) {
					throw new JobChangedException(now);
				}
			}
			for (RunPiece piece : laid.pieces()) {
				Tally tally = Tally.ofJob(connection, piece.job());
				Entry entry = KeptJobs.find(connection, piece.number());
				int free = new TodayLine(entry, piece.of(), entry.quantity(), tally.made(piece.job(), piece.of(), Step.CUT),
						tally.coming(piece.job(), piece.of(), Step.CUT)).unplanned();
				if (piece.pieces() > free) {
					throw new OrderException(NLS.bind(Messages.Gang_planned, piece.number()));
				}
			}
			Entry layout = KeptJobs.takeIn(connection, laid.layout(), origin, true, transactions.now(), person);
			long number = RunRows.nextNumber(connection);
			RunRows.insert(connection, number, layout.id(), transactions.now(), person, exact(laid.seconds()), laid.pieces(),
					sheets(laid));
			return RunRows.find(connection, number).orElseThrow();
		});
	}

	private static List<RunSheet> sheets(Laid laid) {
		List<RunSheet> sheets = new ArrayList<>();
		for (int i = 0; i < laid.sheets().size(); i++) {
			Sheet sheet = laid.sheets().get(i).sheet();
			Optional<Bounds> offcut = laid.offcuts().get(i);
			BigDecimal width = exact(sheet.getWidth());
			sheets.add(new RunSheet(StockColour.of(sheet), sheet.getLeftover() == null ? "" : sheet.getLeftover(),
					sheet.isRoll() ? width.divide(MM_PER_M, DECIMALS, RoundingMode.UP) : BigDecimal.ONE, width,
					exact(sheet.getHeight()), exact(laid.sheets().get(i).partsArea()),
					offcut.map(box -> down(box.width())).orElse(BigDecimal.ZERO),
					offcut.map(box -> down(box.height())).orElse(BigDecimal.ZERO)));
		}
		return sheets;
	}

	private static BigDecimal exact(double value) {
		return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
	}

	/** What is left is no larger than it is; a hair of rounding is none. */
	private static BigDecimal down(double mm) {
		return BigDecimal.valueOf(mm + 1e-6).setScale(DECIMALS, RoundingMode.DOWN);
	}
}
