package org.frisket.ui.bench.internal.options;

import java.util.Map;

import org.frisket.geometry.options.Option;
import org.osgi.service.prefs.Preferences;

/**
 * What options were set to last, for each thing that has options.
 *
 * @param node where it is kept
 */
public record OptionMemory(Preferences node) {

	/** What the option of a thing was set to last, or what it is at first. */
	public String value(String id, Option option) {
		return node.node(id).get(option.name(), option.initial());
	}

	public void keep(String id, Map<String, String> values) {
		values.forEach(node.node(id)::put);
	}
}
