package org.frisket.prepare.extension;

/** A contributed class failed; the message names it and the bundle it came with. */
public final class ContributionException extends Exception {

	private static final long serialVersionUID = 1L;

	ContributionException(Contribution<?> contribution, Throwable cause) {
		super("“%s” of bundle %s failed: %s".formatted(contribution.id(), contribution.bundle(), reason(cause)), cause);
	}

	private static String reason(Throwable cause) {
		return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
	}
}
