package org.frisket.run;

import java.util.List;

import org.frisket.material.tools.Machine;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.Timeline;

/**
 * The work of a sheet by a machine.
 *
 * @param run      the moves in their order, in mm from the upper left corner of the sheet, y down
 * @param work     for each leg of the run
 * @param timeline when what happens
 */
public record MachineRun(Machine machine, Carriage carriage, Run run, List<LegWork> work, Timeline timeline) {

	public MachineRun {
		work = List.copyOf(work);
	}
}
