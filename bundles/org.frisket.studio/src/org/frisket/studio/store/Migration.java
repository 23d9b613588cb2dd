package org.frisket.studio.store;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One step of an area from nothing to its tables of today. */
record Migration(Area area, int number, String name, String sql) {

	private static final Pattern FILE = Pattern.compile("(\\d{3})-([a-z0-9-]+)\\.sql");

	static Migration of(Area area, String file, String sql) throws IOException {
		Matcher form = FILE.matcher(file);
		if (!form.matches()) {
			throw new IOException("“" + file + "” of area " + area.name() + " is not named like 001-name.sql");
		}
		return new Migration(area, Integer.parseInt(form.group(1)), form.group(2), sql);
	}

	/** As people are told of it. */
	String title() {
		return "%s %03d-%s".formatted(area.name(), number, name);
	}
}
