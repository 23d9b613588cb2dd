package org.frisket.export.tests;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.CountDownLatch;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** An exporter of another bundle that never asks whether it is called off. */
public final class DeafExporter implements Exporter {

	static volatile CountDownLatch mayEnd = new CountDownLatch(0);
	static volatile CountDownLatch begun = new CountDownLatch(1);
	static volatile CountDownLatch ended = new CountDownLatch(1);

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		try {
			out.write(new byte[100_000]);
			begun.countDown();
			boolean waiting = true;
			while (waiting) {
				try {
					mayEnd.await();
					waiting = false;
				} catch (InterruptedException e) {
					// nor does this one listen
				}
			}
			out.write(new byte[100_000]);
		} finally {
			ended.countDown();
		}
	}
}
