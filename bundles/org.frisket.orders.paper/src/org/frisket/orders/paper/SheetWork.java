package org.frisket.orders.paper;

import java.util.Optional;

import org.frisket.run.Load;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;
import org.frisket.sheets.LaidSheet;

/**
 * What is put into the machine for a job, with its run.
 *
 * @param laid the sheet; empty for the job as it lies on the bench
 */
public record SheetWork(Optional<LaidSheet> laid, Load load, MachineRun run, RunCost cost) {

	/** What of the run falls to a job; empty if nothing of it is on the sheet. @param job its id */
	public Optional<RunCost.Share> share(String job) {
		return cost.shares().stream().filter(share -> share.job().equals(job)).findFirst();
	}

	/** Whether other jobs are on the sheet too. */
	public boolean isShared() {
		return cost.shares().size() > 1;
	}
}
