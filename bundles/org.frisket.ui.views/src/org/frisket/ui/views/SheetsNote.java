package org.frisket.ui.views;

/** What is known of the sheets of the job on a bench. The job adapts to it where a bundle brings it. */
public interface SheetsNote extends StationNote {
}
