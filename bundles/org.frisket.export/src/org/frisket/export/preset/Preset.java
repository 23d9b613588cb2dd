package org.frisket.export.preset;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * An export by name.
 *
 * @param name    for people; no two have the same
 * @param format  id of the exporter
 * @param options texts by the name of the format's option; the rest is as the format has it
 * @param run     the same of the run's options
 * @param machine id of the machine; empty for the one most likely meant
 * @param names   how files are named; see {@link org.frisket.export.names.NamePattern}
 * @param folder  where files go; empty to leave that open
 */
public record Preset(String name, String format, Map<String, String> options, Map<String, String> run, String machine,
		String names, String folder) {

	/** @throws IllegalArgumentException for a preset without a name or a format */
	public Preset {
		options = Collections.unmodifiableMap(new TreeMap<>(options));
		run = Collections.unmodifiableMap(new TreeMap<>(run));
		name = name.strip();
		if (name.isEmpty()) {
			throw new IllegalArgumentException(Messages.Preset_noName);
		}
		if (format.isBlank()) {
			throw new IllegalArgumentException(Messages.Preset_noFormat);
		}
	}
}
