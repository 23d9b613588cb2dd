package org.frisket.run;

import java.util.List;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.toolpath.RunChoices;

/** What can be chosen for a run, described. */
public final class RunOptions {

	private RunOptions() {
	}

	public static List<Option> options() {
		return List.of();
	}

	/** @param values of {@link #options()} */
	public static RunChoices choices(OptionValues values) {
		return RunChoices.plain();
	}
}
