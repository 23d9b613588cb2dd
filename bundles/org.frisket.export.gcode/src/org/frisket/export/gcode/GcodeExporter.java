package org.frisket.export.gcode;

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

/** Writes G-code. What sets the tool down and lifts it is the machine's own and can be said. */
public final class GcodeExporter implements Exporter {

	static final Option UP = Option.text("up", Messages.GcodeExporter_up, "");
	static final Option DOWN = Option.text("down", Messages.GcodeExporter_down, "");
	static final Option STOP = Option.text("stop", Messages.GcodeExporter_stop, "");
	static final Option DWELL = Option.choice("dwell", Messages.GcodeExporter_dwell, "yes", "no");
	static final Option START = Option.text("start", Messages.GcodeExporter_start, "");
	static final Option END = Option.text("end", Messages.GcodeExporter_end, "");
	static final Option CHANGE = Option.choice("change", Messages.GcodeExporter_change, "stop", "tool", "none");
	static final Option TOOLS = Option.text("tools", Messages.GcodeExporter_tools, "");
	static final Option ARCS = Option.choice("arcs", Messages.GcodeExporter_arcs, "machine", "centre", "radius", "none");
	/** Fewer than 3 make ends of arcs that do not fit their centre (CHECK-VALUES of RS274/NGC). */
	static final Option DECIMALS = Option.count("decimals", Messages.GcodeExporter_decimals, 4, 3, 6);
	static final Option NUMBERS = Option.count("line-numbers", Messages.GcodeExporter_numbers, 0, 0, 100);
	static final Option PERCENT = Option.choice("percent", Messages.GcodeExporter_percent, "no", "yes");

	@Override
	public List<Option> options() {
		return List.of(UP, DOWN, STOP, DWELL, START, END, CHANGE, TOOLS, ARCS, DECIMALS, NUMBERS, PERCENT);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
		new Program(handoff, options, monitor, writer).write();
		writer.flush();
	}
}
