package org.frisket.run;

import java.util.List;

import org.frisket.material.tools.Machine;
import org.frisket.prepare.Finding;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;

/**
 * The work of a sheet by a machine. A leg's tool is called by its id; where one tool is needed with several settings, what
 * differs stands behind it, and somebody stops the machine to set it.
 *
 * @param run      the moves in their order, in mm from the upper left corner of the sheet, y down
 * @param work     for each leg of the run
 * @param timeline when what happens
 * @param findings what speaks against it, the gravest first; places in the frame of the run
 */
public record MachineRun(Machine machine, Carriage carriage, Run run, List<LegWork> work, Timeline timeline,
		List<Finding> findings) {

	public MachineRun {
		work = List.copyOf(work);
		findings = List.copyOf(findings);
	}

	/** One that nothing speaks against. */
	public MachineRun(Machine machine, Carriage carriage, Run run, List<LegWork> work, Timeline timeline) {
		this(machine, carriage, run, work, timeline, List.of());
	}

	/** Of line that the tool of a leg follows, all passes counted, in metres. @param leg from 0 */
	public double metres(int leg) {
		return metres(run.legs().get(leg));
	}

	static double metres(Leg leg) {
		return leg.strokes().stream().mapToDouble(Stroke::length).sum() / 1000;
	}

	/** Whether the sheet cannot be run like this. */
	public boolean isBlocked() {
		return findings.stream().anyMatch(Finding::isBlocking);
	}
}
