package org.frisket.model.migration;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.model.impl.FrisketPackageImpl;

/** All migrations there are, in order, and the versions they lead to. */
public final class Migrations {

	/** One for every version before the current one, the oldest first. A new one is added at the end. */
	private static final List<Migration> ALL = List.of(new CapHeightToHeight());

	private static final Pattern NAMESPACE = Pattern.compile("urn:frisket:job:(0|[1-9][0-9]{0,5})");

	private Migrations() {
	}

	/** The version of the format that is written. */
	public static int currentVersion() {
		return version(FrisketPackageImpl.eNS_URI).orElseThrow();
	}

	/** The version a namespace stands for; empty if it is not one of a job file. */
	public static OptionalInt version(String namespace) {
		Matcher matcher = NAMESPACE.matcher(namespace);
		return matcher.matches() ? OptionalInt.of(Integer.parseInt(matcher.group(1))) : OptionalInt.empty();
	}

	/** What leads from a version to the current one, in the order to be applied. */
	public static List<Migration> since(int version) {
		return ALL.stream().filter(migration -> migration.from() >= version).toList();
	}
}
