package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** The jobs of the studio. */
@Command(name = "list", description = "Lists jobs, the latest number first.", sortOptions = false)
final class OrdersListVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Option(names = "--stage", paramLabel = "STAGE", description = "Only those at this stage; may be given several times.")
	private List<String> stages = List.of();

	@Option(names = "--open", description = "Only those that are neither delivered nor cancelled.")
	private boolean open;

	@Option(names = "--due-before", paramLabel = "DAY", description = "Only those due before this day, such as 2027-03-01.")
	private LocalDate before;

	@Option(names = "--find", paramLabel = "WORDS", description = "Only those in whose texts all of these words are.")
	private String find;

	@Option(names = "--most", paramLabel = "COUNT", defaultValue = "1000000", description = "How many at most.")
	private long most;

	@Override
	public Integer call() throws Refusal {
		List<Stage> wanted = new java.util.ArrayList<>();
		for (String stage : stages) {
			wanted.add(OrderReport.stage(stage));
		}
		LocalDate today = LocalDate.now();
		List<Entry> all = orders.book(book -> book.list(Long.MAX_VALUE));
		List<Entry> entries = all.stream().filter(entry -> wanted.isEmpty() || wanted.contains(entry.stage()))
				.filter(entry -> !open || !entry.isClosed())
				.filter(entry -> before == null || entry.due().filter(due -> due.isBefore(before)).isPresent())
				.filter(this::hasWords).limit(Math.max(0, most)).toList();
		new OrderReport(orders.out(), orders.isJson()).list(entries, today);
		for (long number : orders.book(OrderBook::unreadable)) {
			orders.err().println("job " + number + " is missing in this list: it cannot be read. orders show " + number
					+ " says why.");
		}
		return Status.DONE;
	}

	private boolean hasWords(Entry entry) {
		if (find == null) {
			return true;
		}
		String words = entry.number() + " " + entry.words();
		for (String word : find.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
			if (!words.contains(word)) {
				return false;
			}
		}
		return true;
	}
}
