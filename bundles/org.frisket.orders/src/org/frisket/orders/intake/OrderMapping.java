package org.frisket.orders.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

/**
 * Which column of a table holds what.
 *
 * @param headers of the columns; empty for what the table is said not to tell, and none for what is left to guess
 * @param dates   how days are written; empty if that is left to the days
 */
public record OrderMapping(Map<OrderField, String> headers, Optional<DateForm> dates) {

	/** Nothing is said: all is guessed. */
	public static final OrderMapping GUESSED = new OrderMapping(Map.of(), Optional.empty());

	private static final String DATES = "dates";

	/** A comma may stand in a header, so only those count that a field follows. */
	private static final Pattern PART = Pattern.compile(",(?=\\s*(?:" + DATES + '|'
			+ Arrays.stream(OrderField.values()).map(OrderField::word).collect(Collectors.joining("|")) + ")\\s*=)");

	public OrderMapping {
		headers = headers.isEmpty() ? Map.of() : new EnumMap<>(headers);
	}

	/**
	 * From a text such as {@code title=Name,due=Date,notes=,dates=dmy}, in which the table has no notes.
	 *
	 * @throws IllegalArgumentException if it is none; the message is for people
	 */
	public static OrderMapping parse(String text) {
		Map<OrderField, String> headers = new EnumMap<>(OrderField.class);
		Optional<DateForm> dates = Optional.empty();
		for (String part : PART.split(text)) {
			int equals = part.indexOf('=');
			String word = equals < 0 ? part.strip() : part.substring(0, equals).strip();
			String value = equals < 0 ? "" : part.substring(equals + 1).strip();
			Optional<OrderField> field = Arrays.stream(OrderField.values()).filter(each -> each.word().equals(word))
					.findFirst();
			if (word.equals(DATES)) {
				dates = Optional.of(DateForm.of(value));
			} else if (field.isEmpty() || equals < 0 || value.isEmpty() && field.get() == OrderField.TITLE) {
				throw new IllegalArgumentException(NLS.bind(Messages.OrderMapping_unreadable, part.strip(), words()));
			} else if (headers.put(field.get(), value) != null) {
				throw new IllegalArgumentException(NLS.bind(Messages.OrderMapping_twice, word));
			}
		}
		return new OrderMapping(headers, dates);
	}

	private static String words() {
		return Arrays.stream(OrderField.values()).map(OrderField::word).collect(Collectors.joining(", "));
	}

	/** What {@link #parse} reads. */
	@Override
	public String toString() {
		return Stream
				.concat(headers.entrySet().stream().map(entry -> entry.getKey().word() + '=' + entry.getValue()),
						dates.stream().map(form -> DATES + '=' + form.word()))
				.collect(Collectors.joining(","));
	}

	/** The columns that are said. */
	Map<OrderField, String> columns() {
		Map<OrderField, String> columns = new EnumMap<>(OrderField.class);
		headers.forEach((field, header) -> {
			if (!header.isEmpty()) {
				columns.put(field, header);
			}
		});
		return columns;
	}

	/** The same with another column. @param header of it; empty for none */
	public OrderMapping with(OrderField field, String header) {
		Map<OrderField, String> other = new EnumMap<>(OrderField.class);
		other.putAll(headers);
		other.put(field, header);
		return new OrderMapping(other, dates);
	}

	/** The same with the form of days left to the days. */
	public OrderMapping withoutDates() {
		return new OrderMapping(headers, Optional.empty());
	}

	/** The same with another form of days. */
	public OrderMapping withDates(DateForm form) {
		return new OrderMapping(headers, Optional.of(form));
	}

	/** With guesses for what is not said, from columns that are not taken. @param all headers of the table */
	OrderMapping guessed(List<String> all) {
		Map<OrderField, String> guessed = new EnumMap<>(OrderField.class);
		guessed.putAll(headers);
		for (OrderField field : OrderField.values()) {
			if (!guessed.containsKey(field)) {
				all.stream().filter(header -> field.guess(header) >= 0)
						.filter(header -> guessed.values().stream().noneMatch(taken -> isSame(taken, header)))
						.min((one, other) -> Integer.compare(field.guess(one), field.guess(other)))
						.ifPresent(header -> guessed.put(field, header.strip()));
			}
		}
		return new OrderMapping(guessed, dates);
	}

	static boolean isSame(String header, String other) {
		return OrderField.key(header).equals(OrderField.key(other));
	}
}
