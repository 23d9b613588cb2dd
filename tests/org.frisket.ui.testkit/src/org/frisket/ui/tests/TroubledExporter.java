package org.frisket.ui.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Never gets a file done: it fails, or goes on until it is called off, or until a test lets it end. */
public final class TroubledExporter implements Exporter {

	static final String FAIL = "fail";
	static final String GO_ON = "go-on";
	static final String DEAF = "deaf";
	/** Of the last deaf one. */
	static volatile CountDownLatch mayEnd;

	private static final long A_WHILE_NS = 1_000_000;
	private static final Option TROUBLE = Option.choice("trouble", "what goes wrong", FAIL, GO_ON, DEAF);

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
		CountDownLatch end = new CountDownLatch(1);
		mayEnd = end;
		boolean deaf = options.text(TROUBLE).equals(DEAF);
		while (end.getCount() > 0) {
			if (!deaf) {
				monitor.check();
			}
			LockSupport.parkNanos(A_WHILE_NS);
		}
	}
}
