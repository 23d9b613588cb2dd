package org.frisket.print.internal.drawn;

import java.io.IOException;

/** Art that cannot be drawn; the message is the reason and the cure, in the user's language, without the file's name. */
public final class ArtException extends IOException {

	private static final long serialVersionUID = 1L;

	ArtException(String reason) {
		super(reason);
	}

	ArtException(String reason, Throwable cause) {
		super(reason, cause);
	}
}
