package org.frisket.material.weights;

/** A number or its unit makes no sense; the message says why, for people. */
public final class MeasureException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	public MeasureException(String message) {
		super(message);
	}
}
