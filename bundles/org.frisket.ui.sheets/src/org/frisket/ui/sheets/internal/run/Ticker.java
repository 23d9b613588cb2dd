package org.frisket.ui.sheets.internal.run;

import java.util.function.DoubleConsumer;
import java.util.function.LongSupplier;

import org.eclipse.swt.widgets.Control;

/** Tells a widget again and again how much of the day has gone by. */
final class Ticker {

	private static final int FRAME_MS = 33;
	/** Of a workbench that was busy; a run must not leap. */
	private static final double LONGEST = 0.25;
	private static final double NANOS = 1e-9;

	private final Control owner;
	private final DoubleConsumer tick;
	private LongSupplier clock = System::nanoTime;
	private long last;
	private boolean running;

	/** @param tick told the seconds since the last time */
	Ticker(Control owner, DoubleConsumer tick) {
		this.owner = owner;
		this.tick = tick;
	}

	/** @param nanos that go by */
	void useClock(LongSupplier nanos) {
		clock = nanos;
		last = clock.getAsLong();
	}

	void start() {
		if (!running) {
			running = true;
			last = clock.getAsLong();
			owner.getDisplay().timerExec(FRAME_MS, this::frame);
		}
	}

	void stop() {
		running = false;
	}

	private void frame() {
		if (running && !owner.isDisposed()) {
			long now = clock.getAsLong();
			double elapsed = Math.min(LONGEST, (now - last) * NANOS);
			last = now;
			owner.getDisplay().timerExec(FRAME_MS, this::frame);
			tick.accept(elapsed);
		}
	}
}
