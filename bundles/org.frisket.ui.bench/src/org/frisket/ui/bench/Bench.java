package org.frisket.ui.bench;

/** Ids that the rest of the screen needs of the bench. */
public final class Bench {

	/** The editor that shows a job. */
	public static final String EDITOR_ID = "org.frisket.ui.bench.editor"; //$NON-NLS-1$

	/** The context in which the keys of the bench hold. */
	public static final String CONTEXT_ID = "org.frisket.ui.bench.context"; //$NON-NLS-1$

	/** The command that asks for a job file and opens it. */
	public static final String OPEN_JOB_COMMAND_ID = "org.frisket.ui.bench.command.openJob"; //$NON-NLS-1$

	private Bench() {
	}
}
