package org.frisket.orders.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

import org.frisket.studio.NameKey;
import org.frisket.studio.StudioFolder;

import com.google.gson.Gson;
import com.google.gson.JsonParseException;

/** Filters that a studio has given names to, in its preferences and so for all its desks; sorted by name. */
public final class SavedFilters {

	private static final String PREFERENCE = "orders.filters";
	private static final int LONGEST = 60;
	private static final Gson GSON = new Gson();

	/** As it is written; what is missing or unknown is as if nothing was asked for. */
	private record Written(String name, String text, String choice, String column, boolean descending,
			String grouping) {

		static Written of(SavedFilter filter) {
			BookQuery query = filter.query();
			return new Written(filter.name(), query.text(), query.choice().name(), query.column().name(),
					query.descending(),
					query.grouping().name());
		}

		SavedFilter filter() {
			return new SavedFilter(name, new BookQuery(text == null ? "" : text, constant(BookChoice.ALL, choice),
					constant(BookColumn.NUMBER, column), descending, constant(BookGrouping.NONE, grouping)));
		}

		private static <E extends Enum<E>> E constant(E usual, String name) {
			for (E each : usual.getDeclaringClass().getEnumConstants()) {
				if (each.name().equals(name)) {
					return each;
				}
			}
			return usual;
		}
	}

	private final StudioFolder studio;

	public SavedFilters(StudioFolder studio) {
		this.studio = studio;
	}

	/** @throws IOException if the preferences cannot be read; what is written of filters but is none is left out */
	public List<SavedFilter> list() throws IOException {
		try {
			Written[] written = GSON.fromJson(studio.preferences().get(PREFERENCE).orElse("[]"), Written[].class);
			List<SavedFilter> filters = new ArrayList<>();
			for (Written each : written == null ? new Written[0] : written) {
				if (each != null && each.name() != null && !each.name().isBlank()) {
					filters.add(each.filter());
				}
			}
			filters.sort(Comparator.comparing(filter -> SortKey.of(filter.name())));
			return filters;
		} catch (JsonParseException damaged) {
			return List.of();
		}
	}

	/** Keeps a filter, in the place of one of the same name. */
	public void put(SavedFilter filter) throws IOException {
		change(filters -> {
			filters.removeIf(each -> isCalled(each, filter.name()));
			filters.add(filter);
			return filters;
		});
	}

	public void remove(String name) throws IOException {
		change(filters -> {
			filters.removeIf(each -> isCalled(each, name));
			return filters;
		});
	}

	/** What is against a name, for people; empty if it will do. */
	public static String objection(String name) {
		if (name.isBlank()) {
			return Messages.SavedFilters_noName;
		}
		return name.strip().length() > LONGEST ? Messages.SavedFilters_tooLong : "";
	}

	private static boolean isCalled(SavedFilter filter, String name) {
		return NameKey.of(filter.name()).equals(NameKey.of(name));
	}

	private void change(UnaryOperator<List<SavedFilter>> change) throws IOException {
		studio.openForWriting();
		List<SavedFilter> now = change.apply(new ArrayList<>(list()));
		studio.preferences().put(PREFERENCE, GSON.toJson(now.stream().map(Written::of).toList()));
	}
}
