package org.frisket.ui.views;

/** What is known of the runs of the job on a bench. The job adapts to it where a bundle brings it. */
public interface RunNote extends StationNote {
}
