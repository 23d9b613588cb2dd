package org.frisket.export.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** An exporter of another bundle that fails in the middle. */
public final class BrokenExporter implements Exporter {

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		out.write(new byte[100_000]);
		throw new IllegalStateException("out of breath");
	}
}
