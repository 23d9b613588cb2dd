package org.frisket.export.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.names.SheetNames;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.prepare.extension.Contribution;
import org.frisket.run.RunOptions;
import org.frisket.toolpath.RunChoices;

/**
 * What somebody wants handed out.
 *
 * @param options texts by the name of the format's option
 * @param run     the same of the run's options
 */
public record HandoffRequest(SheetChoice sheets, Contribution<Exporter> format, Map<String, String> options,
		Destination destination, Map<String, String> run) {

	public HandoffRequest {
		options = Map.copyOf(options);
		run = Map.copyOf(run);
	}

	/**
	 * The files it comes to, in the order of the sheets; nothing is looked up for this.
	 *
	 * @param machine id of the machine they are for; only names need it
	 * @throws IllegalArgumentException if sheets, names or place do not go together; the message says why
	 */
	public List<Path> targets(Job job, String machine) {
		return destination.targets(new SheetNames(job, machine, Exporters.ending(format)), sheets.of(job));
	}

	/** @throws IllegalArgumentException if a text is no value of its option */
	RunChoices choices() {
		return RunOptions.choices(OptionValues.of(RunOptions.options(), run));
	}
}
