package org.frisket.cli.runs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.material.advice.Caution;
import org.frisket.prepare.Finding;
import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;
import org.frisket.toolpath.Timeline;

/**
 * A sheet of a job with its run.
 *
 * @param number of the sheet, from 1; 0 for the bench
 * @param laid   what is wrong with how parts lie on it
 */
record SheetRun(int number, Load load, MachineRun run, RunCost cost, List<Finding> laid) {

	/** All that is wrong, that of the run last. */
	List<Finding> findings() {
		List<Finding> all = new ArrayList<>(laid);
		all.addAll(run.findings());
		return all;
	}

	boolean isBlocked() {
		return findings().stream().anyMatch(Finding::isBlocking);
	}

	/** Those of all legs, each once; that the manual comes first is said at the end. */
	List<Caution> cautions() {
		Map<String, Caution> cautions = new LinkedHashMap<>();
		run.work().forEach(work -> work.cautions().forEach(caution -> {
			Caution before = cautions.remove(caution.text());
			cautions.put(caution.text(), before == null ? caution : before);
		}));
		return List.copyOf(cautions.values());
	}

	/** With the tool lifted, in metres. */
	double travel() {
		return run.timeline().travelLength() / 1000;
	}

	/** How often somebody has to change or set a tool. */
	long stops() {
		return run.timeline().spans().stream().filter(span -> span.kind() == Timeline.Kind.STOP).count();
	}
}
