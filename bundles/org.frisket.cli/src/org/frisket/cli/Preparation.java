package org.frisket.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;

/** A job worked through and checked, as every verb needs it. */
record Preparation(PreparedJob prepared, List<Finding> findings) {

	static Preparation of(Job job, Tolerance tolerance) throws Refusal {
		return of(job, tolerance, Limits.CARD);
	}

	static Preparation of(Job job, Tolerance tolerance, Limits limits) throws Refusal {
		try {
			PreparedJob prepared = new JobPreparer(FontLibraries.installed()).prepare(job, tolerance, Monitor.NONE);
			return new Preparation(prepared, Makeready.findings(prepared, limits, tolerance, Monitor.NONE));
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	static Job load(Path file) throws Refusal {
		try {
			return JobFile.load(file);
		} catch (IOException e) {
			throw new Refusal(e);
		}
	}

	int status() {
		return findings.stream().anyMatch(Finding::isBlocking) ? Frisket.BLOCKED : Frisket.DONE;
	}
}
