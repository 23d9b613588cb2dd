package org.frisket.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.WholeFile;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/** Writes one file with one exporter: whole, or not at all. */
public final class ExportTask {

	/** Carries an exporter's own failure through the writing of the file. */
	private static final class Failed extends RuntimeException {
		private static final long serialVersionUID = 1L;

		private final transient ContributionException failure;

		Failed(ContributionException failure) {
			super(failure);
			this.failure = failure;
		}
	}

	private final Contribution<Exporter> contribution;

	public ExportTask(Contribution<Exporter> contribution) {
		this.contribution = contribution;
	}

	/**
	 * Writes a sheet or job to a new file beside {@code target} and puts it in its place when it is complete; until then, and
	 * when anything fails, whatever stood there stays.
	 *
	 * @param options texts by option name; defaults for what is missing
	 * @throws IllegalArgumentException if an option's text is not a value of it
	 * @throws ContributionException    if the exporter fails for a reason of its own
	 * @throws IOException              if the file cannot be written; the message names it
	 * @throws CancellationException    if the monitor cancels; an {@link AbandonedExportException} if the exporter does not
	 *                                  mind that
	 */
	public void write(Handoff handoff, Map<String, String> options, Monitor monitor, Path target)
			throws IOException, ContributionException {
		Exporter exporter = contribution.create();
		OptionValues values = values(exporter, options);
		try {
			WholeFile.write(out -> {
				try {
					new FencedExport(contribution, monitor, out).run(exporter, handoff, values);
				} catch (ContributionException e) {
					throw new Failed(e);
				}
			}, target);
		} catch (Failed e) {
			throw e.failure;
		} catch (IOException e) {
			throw new IOException("cannot write " + target + ": " + WholeFile.reason(e), e);
		}
	}

	private OptionValues values(Exporter exporter, Map<String, String> options) throws ContributionException {
		List<Option> described;
		try {
			described = exporter.options();
		} catch (RuntimeException | LinkageError e) {
			throw contribution.failed(e);
		}
		return OptionValues.of(described, options);
	}
}
