package org.frisket.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/**
 * An exporter at work on a thread of its own, so that one that does not ask whether it is called off holds up nobody: after
 * a short while it is left to itself, and what it still writes goes nowhere.
 */
final class FencedExport {

	private static final int BUFFER = 1 << 16;
	private static final long LOOK_MS = 50;
	/** Long enough for one that asks now and then; short for somebody who waits. */
	private static final long PATIENCE_MS = 1500;

	/** Lets through what the exporter writes, until nobody wants it any more. */
	private static final class Gate extends OutputStream {

		private final OutputStream out;
		private final Monitor monitor;
		private volatile boolean shut;

		Gate(OutputStream out, Monitor monitor) {
			this.out = out;
			this.monitor = monitor;
		}

		private void check() {
			monitor.check();
			if (shut) {
				throw new CancellationException();
			}
		}

		@Override
		public void write(int b) throws IOException {
			check();
			out.write(b);
		}

		@Override
		public void write(byte[] bytes, int offset, int length) throws IOException {
			check();
			out.write(bytes, offset, length);
		}
	}

	private final Contribution<Exporter> contribution;
	private final Monitor monitor;
	private final Gate gate;

	FencedExport(Contribution<Exporter> contribution, Monitor monitor, OutputStream out) {
		this.contribution = contribution;
		this.monitor = monitor;
		gate = new Gate(out, monitor);
	}

	/**
	 * @throws ContributionException if the exporter fails for a reason of its own
	 * @throws AbandonedExportException if it was called off and did not stop
	 * @throws CancellationException if the monitor cancels
	 */
	void run(Exporter exporter, Handoff handoff, OptionValues values) throws IOException, ContributionException {
		FutureTask<Void> work = new FutureTask<>(() -> {
			OutputStream buffered = new BufferedOutputStream(gate, BUFFER);
			exporter.export(handoff, values, monitor, buffered);
			buffered.flush();
			return null;
		});
		Thread thread = new Thread(work, "export by " + contribution.bundle());
		// one that never ends does not keep the program from ending
		thread.setDaemon(true);
		thread.start();
		try {
			await(work);
		} catch (ExecutionException e) {
			rethrow(e.getCause());
		} finally {
			gate.shut = true;
		}
		monitor.check();
	}

	private void await(FutureTask<Void> work) throws ExecutionException {
		long calledOff = 0;
		while (true) {
			try {
				work.get(LOOK_MS, TimeUnit.MILLISECONDS);
				return;
			} catch (TimeoutException e) {
				if (monitor.isCancelled()) {
					long now = System.nanoTime();
					calledOff = calledOff == 0 ? now : calledOff;
					if (now - calledOff > TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS)) {
						throw new AbandonedExportException(contribution.bundle());
					}
				}
			} catch (InterruptedException e) {
				Thread.currentThread().interrupt();
				throw new CancellationException();
			}
		}
	}

	private void rethrow(Throwable cause) throws IOException, ContributionException {
		if (cause instanceof CancellationException cancelled) {
			throw cancelled;
		}
		if (cause instanceof IOException failed) {
			throw failed;
		}
		if (cause instanceof UncheckedIOException failed) {
			throw failed.getCause();
		}
		throw contribution.failed(cause);
	}
}
