package org.frisket.export.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes SVG 1.1 that is also valid SVG 2. */
public final class SvgExporter implements Exporter {

	static final Option MARGIN = Option.length("margin", Messages.SvgExporter_margin, "5mm", 0, 1000);
	static final Option DECIMALS = Option.count("decimals", Messages.SvgExporter_decimals, 3, 1, 6);
	static final Option FILL = Option.choice("fill", Messages.SvgExporter_fill, "layer",
			"none");

	@Override
	public List<Option> options() {
		return List.of(MARGIN, DECIMALS, FILL);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		String document = new SvgDocument(handoff, options).text(monitor);
		out.write(document.getBytes(StandardCharsets.UTF_8));
	}
}
