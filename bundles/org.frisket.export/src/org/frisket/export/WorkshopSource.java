package org.frisket.export;

import java.io.IOException;

import org.frisket.run.Workshop;

/** Tells what is known of machine and tools when a run is made; what needs no run is handed out without it. */
@FunctionalInterface
public interface WorkshopSource {

	/** @throws IOException with a message for people, if it cannot be looked up */
	Workshop get() throws IOException;
}
