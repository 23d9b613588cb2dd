package org.frisket.export.hpgl;

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

/** Writes HP-GL/2. */
public final class HpglExporter implements Exporter {

	static final Option PENS = Option.text("pens", Messages.HpglExporter_pens, "");
	static final Option PEN = Option.count("pen", Messages.HpglExporter_pen, 0, 0, 999);
	static final Option CHANGE = Option.choice("change", Messages.HpglExporter_change, "not-ready", "none");
	static final Option SPEED = Option.choice("speed", Messages.HpglExporter_speed, "yes", "no");
	static final Option FORCE = Option.choice("force", Messages.HpglExporter_force, "no", "yes");
	static final Option ARCS = Option.choice("arcs", Messages.HpglExporter_arcs, "no", "yes");
	static final Option COORDINATES = Option.count("coordinates", Messages.HpglExporter_coordinates, 64, 1, 100_000);
	/** The longest instruction with one place, two coordinates of 8 digits and a sign, has to fit. */
	static final Option LINE = Option.count("line", Messages.HpglExporter_line, 240, 60, 1_000_000);
	/** A machine that does not know comments takes their letters for instructions, some of which move the tool. */
	static final Option COMMENTS = Option.choice("comments", Messages.HpglExporter_comments, "no", "yes");

	@Override
	public List<Option> options() {
		return List.of(PENS, PEN, CHANGE, SPEED, FORCE, ARCS, COORDINATES, LINE, COMMENTS);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
		new Plot(handoff, options, monitor, writer).write();
		writer.flush();
	}
}
