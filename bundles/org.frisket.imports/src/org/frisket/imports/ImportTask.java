package org.frisket.imports;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.WholeFile;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/** Reads one file with one importer. */
public final class ImportTask {

	private final Contribution<Importer> contribution;

	public ImportTask(Contribution<Importer> contribution) {
		this.contribution = contribution;
	}

	/**
	 * @param options texts by option name; defaults for what is missing
	 * @throws IllegalArgumentException if an option's text is not a value of it
	 * @throws UnreadableArtException   if the file is not what its ending says; the message says where and why
	 * @throws ContributionException    if the importer fails for a reason of its own
	 * @throws IOException              if the file cannot be read; the message names it
	 * @throws CancellationException    if the monitor cancels
	 */
	public ImportedArt read(ImportSource source, Map<String, String> options, Monitor monitor)
			throws IOException, UnreadableArtException, ContributionException {
		Importer importer = contribution.create();
		OptionValues values = OptionValues.of(options(importer), options);
		try {
			return importer.read(source, values, monitor);
		} catch (CancellationException e) {
			throw e;
		} catch (RuntimeException | LinkageError e) {
			throw contribution.failed(e);
		} catch (IOException e) {
			throw new IOException("cannot read " + source.name() + ": " + WholeFile.reason(e), e);
		}
	}

	private List<Option> options(Importer importer) throws ContributionException {
		try {
			return importer.options();
		} catch (RuntimeException | LinkageError e) {
			throw contribution.failed(e);
		}
	}
}
