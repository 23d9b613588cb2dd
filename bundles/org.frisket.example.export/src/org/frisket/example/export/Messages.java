package org.frisket.example.export;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language: the keys of messages.properties and, in German, messages_de.properties. */
final class Messages extends NLS {

	public static String CuttingListExporter_separator;
	public static String CuttingListExporter_unit;

	static {
		initializeMessages("org.frisket.example.export.messages", Messages.class);
	}

	private Messages() {
	}
}
