package org.frisket.imports;

import java.io.IOException;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * Reads the files of one format. It has a constructor without arguments, holds no state between calls, knows no screen,
 * opens nothing but the source it is given, and reads the same art from the same bytes.
 */
public interface Importer {

	/** The options it understands, in the order in which a form shows them. */
	List<Option> options();

	/**
	 * Reads the whole file. What cannot be taken over is left out and told in the remarks of the result.
	 *
	 * @param options values for {@link #options()}, defaults filled in
	 * @throws UnreadableArtException if the bytes are not of this format, or break off, or pass a limit
	 * @throws IOException            if the source cannot be read
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException;
}
