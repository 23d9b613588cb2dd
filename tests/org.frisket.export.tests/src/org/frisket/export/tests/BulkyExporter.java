package org.frisket.export.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes a megabyte for each sheet whose stock is called so, and a word for the others. */
public final class BulkyExporter implements Exporter {

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		boolean bulky = handoff.sheet().map(sheet -> "bulky".equals(sheet.getStock())).orElse(true);
		out.write(new byte[bulky ? 1 << 20 : 4]);
	}
}
