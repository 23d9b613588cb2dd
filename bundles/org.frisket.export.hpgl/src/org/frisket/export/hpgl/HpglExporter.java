package org.frisket.export.hpgl;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes HP-GL/2. */
public final class HpglExporter implements Exporter {

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		throw new IOException("not written yet");
	}
}
