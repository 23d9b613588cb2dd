package org.frisket.cli.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.prepare.fonts.FontLibraries;

/** A job worked through and checked, as every verb needs it. */
public record Preparation(PreparedJob prepared, List<Finding> findings, Map<PreparedElement, Fitness> wordings) {

	public static Preparation of(Job job, Tolerance tolerance) throws Refusal {
		return of(job, tolerance, Stocks.ofLayers());
	}

	public static Preparation of(Job job, Tolerance tolerance, LayerLimits limits) throws Refusal {
		try {
			PreparedJob prepared = new JobPreparer(FontLibraries.installed()).prepare(job, tolerance, Monitor.NONE);
			return new Preparation(prepared, Makeready.findings(prepared, limits, tolerance, Monitor.NONE), Map.of());
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** With how the letters of each wording measure. */
	public static Preparation measured(Job job, Tolerance tolerance, LayerLimits limits) throws Refusal {
		try {
			JobPreparer preparer = new JobPreparer(FontLibraries.installed());
			PreparedJob prepared = preparer.prepare(job, tolerance, Monitor.NONE);
			Map<PreparedElement, Fitness> wordings = new LinkedHashMap<>();
			prepared.elements().forEach(element -> preparer.fitness(element, limits.of(element.element()), tolerance, Monitor.NONE)
					.ifPresent(fitness -> wordings.put(element, fitness)));
			return new Preparation(prepared, Makeready.findings(prepared, limits, tolerance, Monitor.NONE), wordings);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** Everything that is measured of each element, in the job's frame. */
	public Map<PreparedElement, RegionMeasures> measures(Tolerance tolerance) {
		Map<PreparedElement, RegionMeasures> measures = new LinkedHashMap<>();
		prepared.elements().forEach(element -> measures.put(element, RegionMeasures.of(element.region(), element.lines(),
				tolerance, Memory.NONE, Monitor.NONE)));
		return measures;
	}

	public static Job load(Path file) throws Refusal {
		if (Files.isDirectory(file)) {
			throw new Refusal(file + ": this is a folder");
		}
		try {
			return JobFile.load(file);
		} catch (IOException e) {
			throw new Refusal(e);
		}
	}

	public int status() {
		return findings.stream().anyMatch(Finding::isBlocking) ? Status.BLOCKED : Status.DONE;
	}
}
