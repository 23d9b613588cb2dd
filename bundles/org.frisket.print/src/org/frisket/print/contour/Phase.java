package org.frisket.print.contour;

import org.frisket.geometry.Monitor;

/** A part of a computation, told as the share from {@code from} to {@code to} of the whole. */
record Phase(Monitor whole, double from, double to) implements Monitor {

	@Override
	public boolean isCancelled() {
		return whole.isCancelled();
	}

	@Override
	public void worked(double fraction) {
		whole.worked(from + fraction * (to - from));
	}
}
