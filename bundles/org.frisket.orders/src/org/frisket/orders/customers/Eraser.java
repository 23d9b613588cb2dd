package org.frisket.orders.customers;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.orders.Entry;
import org.frisket.orders.internal.CustomerRows;
import org.frisket.orders.internal.FactRows;
import org.frisket.orders.internal.RemarkRows;
import org.frisket.studio.NameKey;

/** Takes a customer's name, and how to reach it, out of its jobs. */
final class Eraser {

	/** What is shorter stands for too much else. */
	private static final int SHORTEST = 3;

	private final List<Pattern> traces;
	private final String instead;
	private final List<Long> jobs = new ArrayList<>();
	private final List<Long> stillNamed = new ArrayList<>();

	Eraser(Customer before, String instead) {
		this.instead = instead;
		// the longest first, since a name may be part of an address of mail
		traces = Stream.of(before.mail(), before.name(), before.contact(), before.phone()).map(String::strip)
				.filter(text -> text.length() >= SHORTEST).distinct().sorted(Comparator.comparing(String::length).reversed())
				.map(Eraser::trace).toList();
	}

	/** However it is spaced and written, but not within a word. */
	private static Pattern trace(String text) {
		String[] words = text.split("\\s+");
		StringBuilder trace = new StringBuilder("(?<![\\p{L}\\p{N}])");
		for (int i = 0; i < words.length; i++) {
			trace.append(i == 0 ? "" : "\\s+").append(Pattern.quote(words[i]));
		}
		return Pattern.compile(trace.append("(?![\\p{L}\\p{N}])").toString(),
				Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
	}

	/** The customer with nothing but the first number that is free. */
	static Customer blank(Connection connection, Customer before) throws SQLException {
		int number = 1;
		String name = NLS.bind(Messages.Eraser_name, number);
		while (CustomerRows.find(connection, NameKey.of(name)).isPresent()) {
			name = NLS.bind(Messages.Eraser_name, ++number);
		}
		return new Customer(before.id(), before.revision(), name, "", "", "", "", "", "", Instant.EPOCH);
	}

	/** Whether it is one that was made {@link #blank}, by a desk of the same language. */
	static boolean isBlank(Customer customer) {
		String number = "0";
		String[] around = NLS.bind(Messages.Eraser_name, number).split(number, -1);
		return customer.name().matches(Pattern.quote(around[0]) + "\\d+" + Pattern.quote(around[1]))
				&& Stream.of(CustomerField.values()).filter(field -> field != CustomerField.NAME)
						.allMatch(field -> customer.get(field).isBlank());
	}

	void erase(Job job) {
		job.setCustomer(instead);
		job.setTitle(erased(job.getTitle()));
		job.setNotes(erased(job.getNotes()));
		long number = Long.parseLong(job.getNumber());
		jobs.add(number);
		Stream<String> made = Stream.concat(job.getLayers().stream().map(layer -> layer.getName()),
				Jobs.elements(job).stream().flatMap(element -> element instanceof Wording wording
						? Stream.of(element.getName() == null ? "" : element.getName(), wording.getText())
						: Stream.of(element.getName() == null ? "" : element.getName())));
		if (made.anyMatch(text -> text != null && !erased(text).equals(text))) {
			stillNamed.add(number);
		}
	}

	private String erased(String text) {
		String erased = text;
		if (text != null) {
			for (Pattern trace : traces) {
				erased = trace.matcher(erased).replaceAll(Matcher.quoteReplacement(instead));
			}
		}
		return erased;
	}

	/** Those of the history, and of what was handed out; and what was known of the customer when a job was made. */
	void remarks(Connection connection, Entry entry) throws SQLException {
		RemarkRows.replace(connection, entry.id(), this::erased);
		FactRows.forgetCustomer(connection, entry.id());
	}

	List<Long> jobs() {
		return jobs;
	}

	List<Long> stillNamed() {
		return stillNamed;
	}
}
