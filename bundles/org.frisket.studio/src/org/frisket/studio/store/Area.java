package org.frisket.studio.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of the store that one bundle looks after. Its tables come from numbered SQL resources, {@code NNN-name.sql},
 * whose names stand in {@value #INDEX} beside them, one a line in the order of their numbers. A resource that has been
 * handed out is never changed again; the next one changes what it made.
 *
 * @param name   small letters, such as {@code material}
 * @param owner  the class whose loader finds the resources
 * @param folder of the resources, as seen from the owner's package
 */
public record Area(String name, Class<?> owner, String folder) {

	/** A list, since a bundle's folders cannot be listed the same way everywhere. */
	public static final String INDEX = "index.txt";

	private static final Pattern MADE = Pattern.compile("(?m)^CREATE TABLE ([a-z_]+) ");

	/** @throws IllegalArgumentException if the name has anything but small letters */
	public Area {
		if (!name.matches("[a-z]{1,32}")) {
			throw new IllegalArgumentException("“" + name + "” is no name of an area");
		}
	}

	/** What makes the tables of this area, by number. */
	List<Migration> migrations() throws IOException {
		List<Migration> migrations = new ArrayList<>();
		int last = 0;
		for (String file : text(INDEX).lines().map(String::strip).filter(line -> !line.isEmpty()).toList()) {
			Migration migration = Migration.of(this, file, text(file));
			if (migration.number() <= last) {
				throw new IOException("migrations of area " + name + ": " + file + " is out of order");
			}
			last = migration.number();
			migrations.add(migration);
		}
		return migrations;
	}

	/** The names of its tables, each after those it refers to. */
	public List<String> tables() throws IOException {
		List<String> tables = new ArrayList<>();
		for (Migration migration : migrations()) {
			Matcher made = MADE.matcher(migration.sql());
			while (made.find()) {
				tables.add(made.group(1));
			}
		}
		return tables;
	}

	private String text(String file) throws IOException {
		try (InputStream in = owner.getResourceAsStream(folder + '/' + file)) {
			if (in == null) {
				throw new FileNotFoundException("area " + name + " lacks its resource " + folder + '/' + file);
			}
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		}
	}
}
