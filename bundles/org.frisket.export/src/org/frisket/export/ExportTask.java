package org.frisket.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
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

		Failed(Throwable cause) {
			super(cause);
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
	 * @throws CancellationException    if the monitor cancels
	 */
	public void write(Handoff handoff, Map<String, String> options, Monitor monitor, Path target)
			throws IOException, ContributionException {
		Exporter exporter = contribution.create();
		OptionValues values = values(exporter, options);
		try {
			WholeFile.write(out -> export(exporter, handoff, values, monitor, out), target);
		} catch (Failed e) {
			throw contribution.failed(e.getCause());
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

	private static void export(Exporter exporter, Handoff handoff, OptionValues values, Monitor monitor,
			OutputStream out) throws IOException {
		OutputStream buffered = new BufferedOutputStream(out, 1 << 16);
		try {
			exporter.export(handoff, values, monitor, buffered);
		} catch (CancellationException e) {
			throw e;
		} catch (RuntimeException | LinkageError e) {
			throw new Failed(e);
		}
		buffered.flush();
	}
}
