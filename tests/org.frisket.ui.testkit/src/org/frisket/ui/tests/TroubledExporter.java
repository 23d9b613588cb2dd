package org.frisket.ui.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.locks.LockSupport;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Never gets a file done: it fails, or goes on until it is called off. */
public final class TroubledExporter implements Exporter {

	static final String FAIL = "fail";
	static final String GO_ON = "go-on";

	private static final long A_WHILE_NS = 1_000_000;
	private static final Option TROUBLE = Option.choice("trouble", "what goes wrong", FAIL, GO_ON);

	@Override
	public List<Option> options() {
		return List.of(TROUBLE);
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		if (options.text(TROUBLE).equals(FAIL)) {
			throw new IllegalStateException("out of ink");
		}
		out.write(1);
		while (true) {
			monitor.check();
			LockSupport.parkNanos(A_WHILE_NS);
		}
	}
}
