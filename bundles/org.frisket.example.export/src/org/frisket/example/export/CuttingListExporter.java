package org.frisket.example.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes a cutting list: a line for each part and each thing that is done to it, as a table of separated values. */
public final class CuttingListExporter implements Exporter {

	// The form, the flags of the command line and their help are made of these.
	static final Option SEPARATOR = Option.choice("separator", Messages.CuttingListExporter_separator, "comma", "semicolon");
	static final Option UNIT = Option.choice("unit", Messages.CuttingListExporter_unit, "mm", "in");

	@Override
	public List<Option> options() {
		return List.of(SEPARATOR, UNIT);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		String separator = options.text(SEPARATOR).equals("comma") ? "," : ";";
		double unit = options.text(UNIT).equals("in") ? 25.4 : 1;
		CuttingList list = CuttingList.of(handoff.job(), monitor);
		out.write(list.text(separator, options.text(UNIT), unit).getBytes(StandardCharsets.UTF_8));
	}
}
