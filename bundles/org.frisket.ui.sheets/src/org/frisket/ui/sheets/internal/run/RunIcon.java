package org.frisket.ui.sheets.internal.run;

import org.eclipse.jface.resource.ImageDescriptor;

/** Icons of the run; drawings, sharp at every zoom. */
enum RunIcon {

	PLAY("runPlay"), PAUSE("runPause"), PREVIOUS_STROKE("runPreviousStroke"), NEXT_STROKE("runNextStroke"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
	PREVIOUS_PART("runPreviousPart"), NEXT_PART("runNextPart"), PREVIOUS_TOOL("runPreviousTool"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	NEXT_TOOL("runNextTool"), TRAVEL("runTravel"), CALM("runCalm"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	private final String file;

	RunIcon(String file) {
		this.file = file;
	}

	ImageDescriptor descriptor() {
		return ImageDescriptor.createFromURL(RunIcon.class.getResource("/icons/" + file + ".svg")); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
