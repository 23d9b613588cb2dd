package org.frisket.orders.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.geometry.Monitor;
import org.frisket.impose.Budget;
import org.frisket.material.trials.JdbcSettingsStore;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.SettingsArea;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.store.Store;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs are laid together, run, and the order book, the shelf and the leftovers follow; on both databases. */
class RunBookTest extends BothDatabases {

	private static final StockColour CARD = new StockColour(SampleStudio.CARD, "");

	private SampleStudio studio;

	private SampleStudio open(boolean shared) throws Exception {
		studio = new SampleStudio(emptyStudio(shared));
		studio.shelve(SampleStudio.CARD, "20");
		return studio;
	}

	private static RunMark with(RunMark mark, List<RunMark.Count> pieces, boolean closes) {
		return new RunMark(mark.step(), pieces, mark.used(), mark.seconds(), closes, mark.wentWell(), mark.keepOffcuts(),
				mark.remark());
	}

	private static BigDecimal number(String text) {
		return new BigDecimal(text).stripTrailingZeros();
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsCutIsCutEverywhereAtOnce(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 4, SampleStudio.DAY.plusDays(1), SampleStudio.CARD);
		long cards = studio.approved("Place cards", 6, SampleStudio.DAY, SampleStudio.CARD);
		Today before = studio.today();
		assertEquals(1, before.cut().size());
		assertEquals(List.of(cards, tags), before.cut().get(0).lines().stream().map(line -> line.entry().number()).toList());
		assertEquals(10, before.cut().get(0).missing());

		PlannedRun run = studio.plan(tags, cards);
		assertEquals(PlannedRun.State.PLANNED, run.state());
		assertEquals(List.of(tags, cards), run.numbers());
		assertTrue(run.seconds().signum() > 0);
		assertEquals(number("1"), run.planned().get(CARD).stripTrailingZeros());
		Today planned = studio.today();
		assertTrue(planned.cut().get(0).lines().stream().allMatch(line -> line.unplanned() == 0 && line.missing() > 0));
		assertEquals(1, planned.runs().size());

		RunMark whole = RunMark.whole(run);
		RunResult done = studio.runs().mark(run.number(), new RunMark(whole.step(), whole.pieces(), whole.used(),
				Optional.of(new BigDecimal("95.5")), true, false, false, "new blade"), SampleStudio.WHO);
		assertEquals(List.of(), done.notes());
		assertEquals(2, done.moves().size());
		assertEquals(PlannedRun.State.DONE, done.run().state());
		assertEquals(number("95.5"), done.run().measured().orElseThrow().stripTrailingZeros());
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		assertEquals(Stage.CUT, studio.entry(cards).stage());
		assertEquals(Stage.DELIVERED, studio.entry(run.job()).stage());
		StageChange last = studio.book().history(tags).get(0);
		assertEquals("run " + run.number() + " cut: new blade", last.getRemark());
		assertEquals(number("19"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		Today after = studio.today();
		assertTrue(after.cut().isEmpty() && after.runs().isEmpty());
		assertEquals(List.of(cards, tags), after.finish().stream().map(line -> line.entry().number()).toList());

		assertThrows(OrderException.class, () -> studio.runs().mark(run.number(), whole, SampleStudio.WHO));
		RunResult back = studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(PlannedRun.State.PLANNED, back.run().state());
		assertEquals(Optional.empty(), back.run().measured());
		assertEquals(Stage.APPROVED, studio.entry(tags).stage());
		assertEquals(Stage.APPROVED, studio.entry(run.job()).stage());
		assertEquals(number("20"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		assertEquals(2, studio.book().history(tags).size());
		assertThrows(OrderException.class, () -> studio.runs().takeBack(run.number(), SampleStudio.WHO));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsSpoiledComesBackToTheList(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 5, null, SampleStudio.CARD);
		PlannedRun run = studio.plan(tags);
		String id = run.pieces().get(0).job();
		studio.runs().mark(run.number(), with(RunMark.whole(run), List.of(new RunMark.Count(id, CARD, 2, 1)), false),
				SampleStudio.WHO);
		PlannedRun partly = studio.runs().find(run.number());
		assertEquals(PlannedRun.State.PARTLY, partly.state());
		assertEquals(3, partly.pieces().get(0).left(Step.CUT));
		assertEquals(1, partly.pieces().get(0).spoiled());
		assertEquals(0, studio.today().cut().get(0).lines().get(0).unplanned());
		assertEquals(BigDecimal.ZERO, partly.unused().get(CARD).stripTrailingZeros());
		RunResult closed = studio.runs().mark(run.number(),
				with(RunMark.whole(partly), List.of(new RunMark.Count(id, CARD, 2, 1)), true), SampleStudio.WHO);
		assertEquals(List.of(), closed.moves());
		assertEquals(Stage.APPROVED, studio.entry(tags).stage());
		TodayLine line = studio.today().cut().get(0).lines().get(0);
		assertEquals(1, line.missing());
		assertEquals(1, line.unplanned());
		assertEquals(number("19"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());

		PlannedRun rest = studio.plan(tags);
		assertEquals(1, rest.pieces().get(0).pieces());
		studio.runs().mark(rest.number(), RunMark.whole(rest), SampleStudio.WHO);
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		// the first run is taken back by one, and the job lacks what it made
		RunResult back = studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(List.of(new RunResult.Move(tags, Stage.CUT, Stage.APPROVED)), back.moves());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void printedSheetsAreUsedOnceAndCutLater(boolean shared) throws Exception {
		open(shared);
		Job job = SampleStudio.job("Printed tags", 3, null, SampleStudio.CARD);
		Jobs.addOperation(job.getLayers().get(0).getElements().get(0), OperationKind.PRINT);
		long tags = studio.approved(job);
		assertEquals(1, studio.today().print().size());
		assertTrue(studio.today().cut().isEmpty());
		PlannedRun run = studio.plan(tags);
		assertEquals(Step.PRINT, run.next().orElseThrow());
		studio.runs().mark(run.number(), RunMark.whole(run), SampleStudio.WHO);
		assertEquals(Stage.PRINTED, studio.entry(tags).stage());
		assertEquals(number("19"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		PlannedRun printed = studio.runs().find(run.number());
		assertEquals(Step.CUT, printed.next().orElseThrow());
		assertEquals(1, studio.today().cut().size());
		studio.runs().mark(run.number(), RunMark.whole(printed), SampleStudio.WHO);
		assertEquals(Stage.CUT, studio.entry(tags).stage());
		assertEquals(number("19"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(Stage.PRINTED, studio.entry(tags).stage());
		studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(Stage.APPROVED, studio.entry(tags).stage());
		assertEquals(number("20"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void leftoversGoAndOffcutsCome(boolean shared) throws Exception {
		open(shared);
		try (Store store = Store.open(studio.folder(), Leftovers.AREA)) {
			new Leftovers(store).keep(SampleStudio.CARD, null, 80, 80);
		}
		long tags = studio.approved("Gift tags", 2, null, SampleStudio.CARD);
		PlannedRun run = studio.plan(tags);
		assertEquals(2, run.sheets().size());
		assertTrue(run.sheets().get(0).isLeftover());
		RunMark mark = RunMark.whole(run);
		studio.runs().mark(run.number(), new RunMark(mark.step(), mark.pieces(), mark.used(), Optional.empty(), true, false,
				true, ""), SampleStudio.WHO);
		List<Leftover> kept = leftovers();
		assertEquals(1, kept.size());
		assertEquals("leftover-2", kept.get(0).id());
		assertEquals(number("19"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(List.of("leftover-1"), leftovers().stream().map(Leftover::id).toList());
	}

	private List<Leftover> leftovers() throws Exception {
		try (Store store = Store.openForReading(studio.folder(), Leftovers.AREA)) {
			return new Leftovers(store).atHand();
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void settingsThatWentWellAreKeptOnce(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 2, null, SampleStudio.CARD);
		long cards = studio.approved("Place cards", 2, null, SampleStudio.CARD);
		PlannedRun run = studio.plan(tags, cards);
		RunMark mark = RunMark.whole(run);
		RunMark well = new RunMark(mark.step(), mark.pieces(), mark.used(), Optional.empty(), true, true, false, "clean");
		studio.runs().mark(run.number(), well, SampleStudio.WHO);
		studio.runs().takeBack(run.number(), SampleStudio.WHO);
		studio.runs().mark(run.number(), well, SampleStudio.WHO);
		List<Run> runs;
		try (Store store = Store.openForReading(studio.folder(), SettingsArea.AREA)) {
			runs = store.read(connection -> new JdbcSettingsStore(connection).runs());
		}
		assertEquals(2, runs.size());
		assertEquals(List.of(studio.entry(tags).id(), studio.entry(cards).id()).stream().sorted().toList(),
				runs.stream().map(Run::job).sorted().toList());
		// four squares of 60 mm, each closed by a little more than its 240 mm, in all passes
		double metres = runs.stream().mapToDouble(each -> each.metres() / each.settings().passes()).sum();
		assertTrue(metres >= 0.96 && metres < 0.98, String.valueOf(metres));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void nobodyPlansTheSamePiecesTwice(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 5, null, SampleStudio.CARD);
		Gang gang = studio.gang();
		Gang.Laid mine = lay(gang, tags);
		Gang.Laid theirs = lay(gang, tags);
		PlannedRun run = gang.keep(mine, SampleStudio.WHO, false);
		assertThrows(OrderException.class, () -> gang.keep(theirs, "Peregrine", false));
		assertThrows(OrderException.class, () -> studio.plan(tags));
		assertThrows(OrderException.class, () -> studio.plan(run.job()));
		// called off, they are free again
		RunResult off = studio.runs().mark(run.number(), RunMark.off(run), SampleStudio.WHO);
		assertEquals(PlannedRun.State.DONE, off.run().state());
		assertEquals(Stage.CANCELLED, studio.entry(run.job()).stage());
		assertEquals(number("20"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		Gang.Laid again = lay(gang, tags);
		StoredJob open = studio.book().open(tags);
		open.job().setQuantity(6);
		studio.book().save(open.job(), open.entry().revision(), "Peregrine");
		assertThrows(JobChangedException.class, () -> gang.keep(again, SampleStudio.WHO, false));
	}

	private static Gang.Laid lay(Gang gang, long number) throws Exception {
		return gang.lay(List.of(number), SampleStudio.sheets(210, 297), Budget.steps(0, 1), better -> {
			// the first will do
		}, Monitor.NONE);
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void mistakesKeepNothing(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 5, null, SampleStudio.CARD, SampleStudio.FILM);
		PlannedRun run = studio.plan(tags);
		String id = run.pieces().get(0).job();
		RunMark whole = RunMark.whole(run);
		for (RunMark.Count wrong : List.of(new RunMark.Count(id, CARD, 6, 0), new RunMark.Count(id, CARD, -1, 0),
				new RunMark.Count(id, CARD, 0, -1), new RunMark.Count("nobody", CARD, 1, 0))) {
			assertThrows(OrderException.class,
					() -> studio.runs().mark(run.number(), with(whole, List.of(wrong), true), SampleStudio.WHO));
		}
		TreeMap<StockColour, BigDecimal> less = new TreeMap<>(whole.used());
		less.put(CARD, new BigDecimal("-1"));
		assertThrows(OrderException.class, () -> studio.runs().mark(run.number(), new RunMark(Step.CUT, whole.pieces(), less,
				Optional.empty(), true, false, false, ""), SampleStudio.WHO));
		assertThrows(OrderException.class,
				() -> studio.runs().mark(run.number(), new RunMark(Step.CUT, List.of(), new TreeMap<>(), Optional.empty(), false,
						false, false, ""), SampleStudio.WHO));
		assertThrows(OrderException.class, () -> studio.runs().mark(77, whole, SampleStudio.WHO));
		assertEquals(0, studio.runs().find(run.number()).marks());
		assertEquals(number("20"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
		// the shelf knows nothing of the film, and has too little card
		TreeMap<StockColour, BigDecimal> much = new TreeMap<>(whole.used());
		much.put(CARD, new BigDecimal("25"));
		RunResult done = studio.runs().mark(run.number(), new RunMark(Step.CUT, whole.pieces(), much, Optional.empty(), true,
				false, false, ""), SampleStudio.WHO);
		assertEquals(2, done.notes().size());
		assertEquals(0, studio.onHand(SampleStudio.CARD).signum());
		studio.runs().takeBack(run.number(), SampleStudio.WHO);
		assertEquals(number("20"), studio.onHand(SampleStudio.CARD).stripTrailingZeros());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void theLayoutFindsItsGuestsInTheBook(boolean shared) throws Exception {
		open(shared);
		long tags = studio.approved("Gift tags", 2, null, SampleStudio.CARD);
		PlannedRun run = studio.plan(tags);
		Job layout = studio.book().open(run.job()).job();
		assertTrue(layout.getLayers().isEmpty());
		assertFalse(layout.getSheets().isEmpty());
		GuestFiles.Guests guests = GuestFiles.load(layout, null, GuestFiles.Shelf.of(studio.folder()));
		assertEquals(List.of(), guests.problems());
		assertEquals(List.of("Gift tags"), guests.jobs().values().stream().map(Job::getTitle).toList());
		layout.getGuests().get(0).setJob("nobody");
		assertEquals(1, GuestFiles.load(layout, null, GuestFiles.Shelf.of(studio.folder())).problems().size());
	}
}
