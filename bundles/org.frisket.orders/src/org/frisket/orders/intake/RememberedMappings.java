package org.frisket.orders.intake;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.studio.StudioFolder;

/** Mappings that a studio uses again, by name, in its preferences and so for all its desks. */
public record RememberedMappings(StudioFolder studio) {

	private static final String PREFERENCE = "orders.mapping.";
	private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,64}");

	/** @throws IllegalArgumentException if it is no name; the message is for people */
	public void remember(String name, OrderMapping mapping) throws IOException {
		studio.openForWriting();
		studio.preferences().put(key(name), mapping.toString());
	}

	/** @throws IllegalArgumentException if it is no name; the message is for people */
	public Optional<OrderMapping> recall(String name) throws IOException {
		return studio.preferences().get(key(name)).map(OrderMapping::parse);
	}

	/** What mappings are remembered by, in the order of the alphabet. */
	public List<String> names() throws IOException {
		return studio.preferences().keys(PREFERENCE).stream().map(key -> key.substring(PREFERENCE.length()))
				.filter(NAME.asMatchPredicate()).toList();
	}

	/** The first whose columns a table all has. */
	public Optional<String> fitting(TableHead head) throws IOException {
		for (String name : names()) {
			Map<OrderField, String> columns = recall(name).map(OrderMapping::columns).orElse(Map.of());
			if (columns.containsKey(OrderField.TITLE) && columns.values().stream().allMatch(each -> head.column(each) >= 0)) {
				return Optional.of(name);
			}
		}
		return Optional.empty();
	}

	/** Whether a mapping can be remembered by it. */
	public static boolean isName(String name) {
		return NAME.matcher(name).matches();
	}

	private static String key(String name) {
		if (!NAME.matcher(name).matches()) {
			throw new IllegalArgumentException(NLS.bind(Messages.RememberedMappings_name, name));
		}
		return PREFERENCE + name;
	}
}
