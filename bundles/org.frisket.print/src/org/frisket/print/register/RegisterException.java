package org.frisket.print.register;

/** Why marks do not tell how a sheet lies, in one sentence for people. */
public final class RegisterException extends Exception {

	private static final long serialVersionUID = 1L;

	public RegisterException(String message) {
		super(message);
	}
}
