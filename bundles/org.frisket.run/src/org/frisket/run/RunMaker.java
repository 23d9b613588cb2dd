package org.frisket.run;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.material.tools.Machine;
import org.frisket.prepare.PreparedJob;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.RunPlanner;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.motion.Drive;

/** Makes the run of what lies on a sheet. */
public final class RunMaker {

	private RunMaker() {
	}

	/**
	 * Of a job as it lies on the bench.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static MachineRun of(PreparedJob job, Workshop workshop, RunChoices choices, Monitor monitor) {
		return of(Load.bench(job), workshop, choices, monitor);
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public static MachineRun of(Load load, Workshop workshop, RunChoices choices, Monitor monitor) {
		Bed bed = Bed.of(workshop.machine(), load);
		Carriage carriage = carriage(workshop.machine(), bed);
		WorkList list = new WorkList(load, workshop, monitor);
		Map<String, ToolMotion> motions = list.motions();
		Run run = RunPlanner.plan(list.lines(), motions, carriage, choices, monitor);
		List<LegWork> work = run.legs().stream().map(list::work).toList();
		return new MachineRun(workshop.machine(), carriage, run, work, Timeline.of(run, motions, carriage),
				new RunFindings(load, workshop, bed, list, run, work).all());
	}

	private static Carriage carriage(Machine machine, Bed bed) {
		Machine.Motion motion = machine.motion();
		return new Carriage(new Drive(motion.travel(), motion.acceleration(), motion.deviation()), motion.lower(),
				motion.lift(), motion.change(), bed.zero(), motion.arcs(), motion.tolerance());
	}
}
