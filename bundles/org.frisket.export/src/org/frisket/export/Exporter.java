package org.frisket.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * Writes sheets and jobs in one format. It has a constructor without arguments, holds no state between calls, knows no
 * screen, and writes the same bytes for the same input.
 */
public interface Exporter {

	/** The options it understands, in the order in which a form shows them. */
	List<Option> options();

	/**
	 * Writes one sheet or job. The stream belongs to the caller, who closes it and keeps the file only if this returns.
	 *
	 * @param options values for {@link #options()}, defaults filled in
	 * @throws IOException if the stream fails or the format cannot hold the job; the message says why
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException;
}
