package org.frisket.ui.bench;

import java.util.Map;

import org.eclipse.ui.IWorkbenchPage;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.jobs.ExportHandler;

/**
 * What is chosen already when it is asked how to export the job in front, because it was chosen elsewhere.
 *
 * @param forMachine whether a format for machines is meant
 * @param sheet      number of the sheet from 1; 0 for the bench, below for what is usual
 * @param machine    id of the machine; empty for the one most likely meant
 * @param run        texts by the name of the run's option
 */
public record ExportStart(boolean forMachine, int sheet, String machine, Map<String, String> run) {

	/** Nothing is chosen yet. */
	public static final ExportStart USUAL = new ExportStart(false, -1, "", Map.of()); //$NON-NLS-1$

	public ExportStart {
		run = Map.copyOf(run);
	}

	/** Asks for the rest. Nothing happens if no job is in front. */
	public void ask(IWorkbenchPage page) {
		if (page.getActiveEditor() instanceof BenchEditor bench && bench.document() != null) {
			ExportHandler.ask(bench, this);
		}
	}
}
