package org.frisket.studio;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.osgi.util.NLS;

/** The studio folder cannot be used; the message names it and says why. */
public final class StudioException extends IOException {

	private static final long serialVersionUID = 1L;

	private final String reason;

	StudioException(Path folder, String reason) {
		this(folder, reason, null);
	}

	StudioException(Path folder, String reason, IOException cause) {
		super(NLS.bind(Messages.StudioException_unusable, folder, reason), cause);
		this.reason = reason;
	}

	/** Why, without the folder's name. */
	public String reason() {
		return reason;
	}
}
