package org.frisket.export.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** An exporter of another bundle: writes how many pieces there are. */
public final class CountExporter implements Exporter {

	private static final Option UNIT = Option.text("unit", "what the pieces are called", "pieces");
	private static final Option TIMES = Option.count("times", "how often it is written", 1, 1, 3);

	@Override
	public List<Option> options() {
		return List.of(UNIT, TIMES);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		int pieces = handoff.job().elements().mapToInt(element -> element.region().pieces().size()).sum();
		out.write((pieces + " " + options.text(UNIT)).repeat(options.count(TIMES)).getBytes(StandardCharsets.UTF_8));
	}
}
