package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;

import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.testkit.PostgresServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Four programs at one order book, on a server that is stopped and started again twice while they work. All that they were
 * told is kept is there once, in their order, and nothing else is. {@code FRISKET_EDITS} says how many edits they do.
 */
class FourDesksTest {

	private static final int DESKS = 4;
	private static final int DESKS_IN_FOLDER = 2;
	private static final int FEW = 80;
	private static final int FEW_IN_FOLDER = 16;
	private static final int JOBS = 6;

	@TempDir
	Path home;

	@AfterEach
	void folderAgain() {
		Databases.choose(Optional.empty());
	}

	/** What a desk said of an edit. */
	private record Said(String desk, String edit, List<String> words) {

		static Said of(String line) {
			List<String> words = List.of(line.split(" "));
			return new Said(words.get(0).split("/")[0], words.get(0), words.subList(1, words.size()));
		}

		boolean is(String what) {
			return words.get(0).equals(what);
		}

		boolean is(String what, long job) {
			return is(what) && words.get(1).equals(Long.toString(job));
		}
	}

	private static int edits(int few) {
		return Integer.parseInt(System.getenv().getOrDefault("FRISKET_EDITS", Integer.toString(few)));
	}

	@Test
	void nothingIsLostOrDoneTwiceOnAServerThatIsStartedAgain() throws Exception {
		int edits = edits(FEW);
		PostgresServer server = PostgresServer.shared();
		String address = server.addressOfNew();
		StudioFolder studio = studio(address);
		List<Path> logs = new ArrayList<>();
		List<Process> desks = start(studio, address, DESKS, edits, logs);
		for (int third = 1; third < 3; third++) {
			await(desks, logs, edits * third / 3);
			server.restart();
		}
		List<Said> said = end(desks, logs);
		System.out.println(edits + " edits at " + DESKS + " desks: " + said.stream()
				.collect(Collectors.groupingBy(each -> each.words().get(0), Collectors.counting())));
		assertEquals(edits, said.size());
		compare(studio, said);
		assertTrue(said.stream().filter(each -> each.is("changed")).count() > 0, "desks were never in each other's way");
	}

	@Test
	void nothingIsLostOrDoneTwiceInAFolder() throws Exception {
		StudioFolder studio = studio("");
		List<Path> logs = new ArrayList<>();
		List<Said> said = end(start(studio, "", DESKS_IN_FOLDER, FEW_IN_FOLDER, logs), logs);
		assertEquals(FEW_IN_FOLDER, said.size());
		compare(studio, said);
	}

	/** With jobs that all desks work on. */
	private StudioFolder studio(String address) throws Exception {
		Databases.choose(Optional.of(address));
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		OrderBook book = new OrderBook(studio);
		for (int job = 1; job <= JOBS; job++) {
			book.add(new NewOrder("Card " + job, "Brindle Sound Ferries", Optional.empty(), 1, ""), "Ottoline");
		}
		return studio;
	}

	private List<Process> start(StudioFolder studio, String address, int count, int edits, List<Path> logs) throws IOException {
		List<Process> desks = new ArrayList<>();
		for (int desk = 0; desk < count; desk++) {
			List<String> arguments = new ArrayList<>(List.of(studio.path().toString(), address, "Desk" + desk,
					Integer.toString(desk), Integer.toString(edits / count)));
			LongStream.rangeClosed(1, JOBS).forEach(job -> arguments.add(Long.toString(job)));
			logs.add(home.resolve("desk" + desk + ".txt"));
			desks.add(OtherProgram.of(Desk.class, arguments.toArray(String[]::new)).redirectOutput(logs.get(desk).toFile())
					.start());
		}
		return desks;
	}

	private static List<String> lines(List<Path> logs) throws IOException {
		List<String> lines = new ArrayList<>();
		for (Path log : logs) {
			lines.addAll(Files.readAllLines(log));
		}
		return lines;
	}

	private static void await(List<Process> desks, List<Path> logs, int edits) throws Exception {
		while (lines(logs).size() < edits) {
			assertTrue(desks.stream().anyMatch(Process::isAlive), "desks ended early");
			Thread.sleep(20);
		}
	}

	private static List<Said> end(List<Process> desks, List<Path> logs) throws Exception {
		try {
			for (Process desk : desks) {
				assertEquals(0, desk.waitFor());
			}
		} finally {
			desks.forEach(Process::destroyForcibly);
		}
		return lines(logs).stream().map(Said::of).toList();
	}

	private static void compare(StudioFolder studio, List<Said> said) throws Exception {
		for (Said each : said) {
			assertTrue(!each.is(Desk.UNSURE) && !each.is("failed"), each.toString());
			if (each.is("changed")) {
				// the words name the one who was quicker
				String quicker = each.words().get(2);
				assertTrue(quicker.startsWith("Desk") || quicker.equals("Ottoline"), each.toString());
				assertNotEquals(each.desk(), quicker.split("/")[0]);
				assertTrue(String.join(" ", each.words().subList(3, each.words().size())).contains(quicker), each.toString());
			}
		}
		OrderBook book = new OrderBook(studio);
		List<Entry> all = book.list(Long.MAX_VALUE);
		added(all, said);
		for (long number = 1; number <= JOBS; number++) {
			saved(book.open(number), number, said);
			staged(book.history(number), book.find(number), said);
			handedOut(book.papers(number), number, said);
		}
		customers(new Customers(studio), said);
	}

	private static List<String> edits(List<Said> said, Function<Said, Boolean> which) {
		return said.stream().filter(which::apply).map(Said::edit).toList();
	}

	private static void assertOnce(List<String> told, List<String> there) {
		assertEquals(told.size(), there.size());
		assertEquals(Set.copyOf(told), Set.copyOf(there));
		// what a desk did is in its order
		Map<String, List<String>> ofDesks = new HashMap<>();
		there.forEach(edit -> ofDesks.computeIfAbsent(edit.split("/")[0], none -> new ArrayList<>()).add(edit));
		ofDesks.forEach((desk, edits) -> assertEquals(told.stream().filter(edit -> edit.startsWith(desk + "/")).toList(),
				edits));
	}

	/** Without gaps in their numbers. */
	private static void added(List<Entry> all, List<Said> said) {
		List<Said> told = said.stream().filter(each -> each.is("add")).toList();
		Map<Long, String> titles = all.stream().collect(Collectors.toMap(Entry::number, Entry::title));
		told.forEach(each -> assertEquals(each.edit(), titles.get(Long.parseLong(each.words().get(1)))));
		assertEquals(LongStream.rangeClosed(1, JOBS + told.size()).boxed().collect(Collectors.toSet()), titles.keySet());
	}

	/** Every save put its name behind those before. */
	private static void saved(StoredJob job, long number, List<Said> said) {
		List<Said> told = said.stream().filter(each -> each.is("save", number)).toList();
		assertEquals(1 + told.size(), job.entry().revision());
		assertEquals(told.size(), told.stream().map(each -> each.words().get(2)).distinct().count());
		String notes = job.job().getNotes() == null ? "" : job.job().getNotes();
		List<String> there = Stream.of(notes.split(" ")).filter(text -> !text.isEmpty()).toList();
		assertOnce(told.stream().map(Said::edit).toList(), there);
		told.forEach(each -> assertEquals(each.edit(), there.get(Integer.parseInt(each.words().get(2)) - 2)));
	}

	private static void staged(List<StageChange> history, Entry entry, List<Said> said) {
		assertOnce(edits(said, each -> each.is("stage", entry.number())), history.stream().map(StageChange::getWho).toList());
		Stage stage = Stage.ENQUIRY;
		for (StageChange change : history) {
			assertEquals(stage, change.getFrom());
			stage = change.getTo();
		}
		assertEquals(stage, entry.stage());
	}

	private static void handedOut(List<Paper> papers, long number, List<Said> said) {
		assertOnce(edits(said, each -> each.is("paper", number)), papers.stream().map(Paper::remark).toList());
	}

	private static void customers(Customers customers, List<Said> said) throws Exception {
		Set<String> names = customers.list().stream().map(Customer::name).collect(Collectors.toSet());
		Set<String> told = new HashSet<>(edits(said, each -> each.is("customer")));
		told.add("Brindle Sound Ferries");
		assertEquals(told, names);
		List<Said> notes = said.stream().filter(each -> each.is("note")).toList();
		Customer noted = customers.find("Brindle Sound Ferries");
		assertEquals(1 + notes.size(), noted.revision());
		notes.stream().filter(each -> each.words().get(1).equals(Long.toString(noted.revision())))
				.forEach(last -> assertEquals(last.edit(), noted.notes()));
	}
}
