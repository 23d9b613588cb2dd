package org.frisket.cli.line;

/** Something is wrong with what was asked; the message is all that is shown. */
public final class Refusal extends Exception {

	private static final long serialVersionUID = 1L;

	public Refusal(String message) {
		super(message);
	}

	public Refusal(Exception cause) {
		super(cause.getMessage(), cause);
	}
}
