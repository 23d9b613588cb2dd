package org.frisket.export;

import java.util.concurrent.CancellationException;

/** An export was called off, and its exporter goes on all the same. Nothing of it is kept. */
public final class AbandonedExportException extends CancellationException {

	private static final long serialVersionUID = 1L;

	private final String bundle;

	AbandonedExportException(String bundle) {
		super(bundle);
		this.bundle = bundle;
	}

	/** The bundle whose exporter it is. */
	public String bundle() {
		return bundle;
	}
}
