package org.frisket.cli;

/** Something is wrong with what was asked; the message is all that is shown. */
final class Refusal extends Exception {

	private static final long serialVersionUID = 1L;

	Refusal(String message) {
		super(message);
	}

	Refusal(Exception cause) {
		super(cause.getMessage(), cause);
	}
}
