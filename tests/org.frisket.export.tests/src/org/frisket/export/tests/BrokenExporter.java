package org.frisket.export.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.prepare.PreparedJob;

/** An exporter of another bundle that fails in the middle. */
public final class BrokenExporter implements Exporter {

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public void export(PreparedJob job, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		out.write(new byte[100_000]);
		throw new IllegalStateException("out of breath");
	}
}
