package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Stage;
import org.frisket.orders.intake.OrderIntake;
import org.frisket.orders.intake.OrderMapping;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.reports.Reports;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.stages.StageRules;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes into the order book, and what must be so before it goes on, on both databases. */
class OrderDeskTest extends BothDatabases {

	private static Job made(String id, String text) {
		Job job = Jobs.create(id, text);
		Jobs.addWording(Jobs.addLayer(job, "Lettering"), text, 20);
		return job;
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void jobsThatWereCalledTheSameAreNotTheSame(boolean shared) throws Exception {
		OrderBook book = new OrderBook(studio(shared));
		Entry ferry = book.takeIn(made("job", "Ferry " + shared), "Ottoline");
		Entry tern = book.takeIn(made("job", "Tern " + shared), "Ottoline");
		assertNotEquals(ferry.id(), tern.id());
		assertNotEquals("job", ferry.id());
		assertEquals("Ferry " + shared, book.open(ferry.number()).job().getTitle());
		// a name that somebody chose is kept, until there is another job of that name
		Entry tag = book.takeIn(made("tag" + shared, "Tag " + shared), "Ottoline");
		assertEquals("tag" + shared, tag.id());
		assertNotEquals(tag.id(), book.takeIn(made("tag" + shared, "Other tag " + shared), "Ottoline").id());
		// references to elements still hold
		Job open = book.open(tern.number()).job();
		assertEquals(tern.id(), open.getId());
		assertEquals(1, Jobs.elements(open).size());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsThereIsNotTakenInAgain(boolean shared) throws Exception {
		OrderBook book = new OrderBook(studio(shared));
		Job file = made("job", "Window " + shared);
		Entry entry = book.takeIn(EcoreUtil.copy(file), "Ottoline");
		refused(book, EcoreUtil.copy(file), entry.number());
		// the file comes again after the job here has changed
		StoredJob open = book.open(entry.number());
		open.job().setTitle("Shop window");
		book.save(open.job(), open.entry().revision(), "Quill");
		book.stage(entry.number(), Stage.ORDERED, "Quill", "");
		refused(book, EcoreUtil.copy(file), entry.number());
		// a file that was handed out, changed elsewhere, comes back
		Job back = book.open(entry.number()).job();
		back.setNotes("by hand");
		refused(book, back, entry.number());
		assertEquals(List.of(entry.number() + 1),
				book.takeIn(List.of(EcoreUtil.copy(file)), true, "Ottoline").stream().map(Entry::number).toList());
	}

	private static void refused(OrderBook book, Job job, long number) {
		OrderException told = assertThrows(OrderException.class, () -> book.takeIn(job, "Ottoline"));
		assertTrue(told.getMessage().contains(Long.toString(number)), told.getMessage());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void severalComeAllOrNone(boolean shared) throws Exception {
		OrderBook book = new OrderBook(studio(shared));
		Entry first = book.takeIn(made("job", "First " + shared), "Ottoline");
		assertThrows(OrderException.class,
				() -> book.takeIn(List.of(made("job", "Second " + shared), made("job", "First " + shared)), false, "Quill"));
		assertEquals(first.number(), book.list(1).get(0).number());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void rulesHoldUntilTheyAreTurnedOff(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		StageRules rules = new StageRules(studio);
		rules.set("proof-before-approval", true);
		StageGate clean = rules.gate(List::of);
		long number = book.add(new NewOrder("Banner", "", Optional.empty(), 1, ""), "Ottoline").number();
		against("proof-before-approval", () -> book.stage(number, Stage.APPROVED, "Ottoline", "", clean));
		assertEquals(Stage.ENQUIRY, book.find(number).stage());
		book.handedOut(number, PaperKind.PROOF, "Ottoline", "by mail");
		assertEquals(Stage.APPROVED, book.stage(number, Stage.APPROVED, "Ottoline", "", clean).stage());
		assertEquals("by mail", book.papers(number).get(0).remark());
		StageGate blocked = rules.gate(() -> List.of("a stroke is too thin"));
		StageRuleException told = against("no-blocking-findings",
				() -> book.stage(number, Stage.CUT, "Ottoline", "", blocked));
		assertTrue(told.getMessage().contains("a stroke is too thin"), told.getMessage());
		assertTrue(told.getMessage().contains("frisket orders rules no-blocking-findings off"), told.getMessage());
		// neither by a leap, nor by way of a pause
		against("no-blocking-findings", () -> book.stage(number, Stage.DELIVERED, "Ottoline", "", blocked));
		book.stage(number, Stage.ON_HOLD, "Ottoline", "", blocked);
		against("no-blocking-findings", () -> book.stage(number, Stage.FINISHED, "Ottoline", "", blocked));
		against("remark-when-going-back", () -> book.stage(number, Stage.DESIGNED, "Ottoline", " ", clean));
		book.stage(number, Stage.DESIGNED, "Ottoline", "a letter is missing", clean);
		rules.set("no-blocking-findings", false);
		assertEquals(Stage.CUT, book.stage(number, Stage.CUT, "Ottoline", "", rules.gate(() -> {
			throw new AssertionError("nobody wanted to know");
		})).stage());
		rules.set("no-blocking-findings", true);
		assertThrows(OrderException.class, () -> rules.set("no-such", false));
	}

	private static StageRuleException against(String rule, Executable step) {
		StageRuleException told = assertThrows(StageRuleException.class, step);
		assertEquals(rule, told.rule());
		return told;
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whoeverChangesAJobWhileTheRulesAreAskedIsNotOverlooked(boolean shared) throws Exception {
		OrderBook book = new OrderBook(studio(shared));
		long number = book.add(new NewOrder("Banner", "", Optional.empty(), 1, ""), "Ottoline").number();
		assertThrows(JobChangedException.class, () -> book.stage(number, Stage.ORDERED, "Ottoline", "", step -> {
			StoredJob open = book.open(number);
			book.save(open.job(), open.entry().revision(), "Quill");
		}));
		assertEquals(Stage.ENQUIRY, book.find(number).stage());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void ordersOfATableComeOnce(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderIntake intake = new OrderIntake(studio);
		OrderMapping guess = new OrderMapping(Map.of(), Optional.empty());
		byte[] file = ("Auftrag;Kunde;Liefertermin;Menge;Bestellnummer\nBanner;Brindle Sound Ferries;1.3.2027;2;A-1" + shared
				+ "\n\"'; DROP TABLE orders_job; --\";Tern Bookshop;;;A-2" + shared + "\n").getBytes(StandardCharsets.UTF_8);
		OrderReading table = intake.read(file, guess, false);
		assertEquals(List.of(), table.problems());
		List<Entry> taken = intake.takeIn(table, "Ottoline");
		assertEquals(2, taken.size());
		assertEquals(Optional.of(LocalDate.of(2027, 3, 1)), taken.get(0).due());
		assertEquals(2, taken.get(0).quantity());
		assertEquals(Optional.of("A-1" + shared), new OrderBook(studio).reference(taken.get(0).number()));
		OrderReading again = intake.read(file, guess, false);
		assertEquals(2, again.problems().size());
		assertTrue(again.problems().get(0).toString().contains("Bestellnummer"), again.problems().toString());
		assertThrows(OrderException.class, () -> intake.takeIn(table, "Quill"));
		assertEquals(List.of(), intake.read(file, guess, true).rows());
		assertEquals(taken.get(1), new OrderBook(studio).list(1).get(0));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void reportsCountWhatWasDelivered(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		Reports reports = new Reports(studio);
		int before = reports.onTime().rows().stream().mapToInt(row -> row.delivered()).sum();
		long late = book.add(new NewOrder("Late", "", Optional.of(LocalDate.of(2001, 1, 1)), 1, ""), "Ottoline").number();
		long back = book.add(new NewOrder("Back", "", Optional.empty(), 1, ""), "Ottoline").number();
		book.stage(late, Stage.DELIVERED, "Ottoline", "");
		book.stage(back, Stage.DELIVERED, "Ottoline", "");
		book.undoStage(back, "Ottoline");
		assertEquals(before + 1, reports.onTime().rows().stream().mapToInt(row -> row.delivered()).sum());
		assertTrue(reports.stages().rows().stream().anyMatch(row -> row.stage() == Stage.ENQUIRY && row.jobs() > 0));
	}
}
