package org.frisket.export.dxf;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes ASCII DXF of R12. */
public final class DxfExporter implements Exporter {

	static final Option UNIT = Option.choice("unit", Messages.DxfExporter_unit, "mm", "in");
	static final Option TOLERANCE = Option.length("tolerance", Messages.DxfExporter_tolerance, "0.01mm", 0.0005, 1);
	static final Option DECIMALS = Option.count("decimals", Messages.DxfExporter_decimals, 4, 2, 6);
	static final Option MARGIN = Option.length("margin", Messages.DxfExporter_margin, "5mm", 0, 1000);

	@Override
	public List<Option> options() {
		return List.of(UNIT, TOLERANCE, DECIMALS, MARGIN);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
		new Drawing(handoff, options, monitor, writer).write();
		writer.flush();
	}
}
