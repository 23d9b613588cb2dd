package org.frisket.ui.bench.internal.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.export.names.NamePattern;
import org.frisket.export.plan.Destination;
import org.frisket.export.plan.HandoffRequest;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.options.OptionMemory;
import org.osgi.service.prefs.Preferences;

/** What was chosen at the last export: folder, format, and the options of each format. */
final class ExportMemory {

	private static final String NODE = "export"; //$NON-NLS-1$
	private static final String FOLDER = "folder"; //$NON-NLS-1$
	private static final String NAMES = "names"; //$NON-NLS-1$
	private static final String FORMAT = "format"; //$NON-NLS-1$

	private final Preferences node = InstanceScope.INSTANCE.getNode(BenchPreferences.NODE).node(NODE);

	/** The folder written to last, if it is still there. */
	Optional<Path> folder() {
		try {
			return Optional.ofNullable(node.get(FOLDER, null)).map(Path::of).filter(Files::isDirectory);
		} catch (InvalidPathException e) {
			return Optional.empty();
		}
	}

	/** The id of the format written last. */
	Optional<String> format() {
		return Optional.ofNullable(node.get(FORMAT, null));
	}

	/** What the options of formats were set to last. */
	OptionMemory options() {
		return new OptionMemory(node);
	}

	/** How files in a folder were named last. */
	String names() {
		return node.get(NAMES, NamePattern.USUAL);
	}

	void keep(HandoffRequest request) {
		Destination destination = request.destination();
		Path folder = destination.isFolder() ? destination.path() : destination.path().getParent();
		if (folder != null) {
			node.put(FOLDER, folder.toString());
		}
		if (destination.isFolder()) {
			node.put(NAMES, destination.names().toString());
		}
		node.put(FORMAT, request.format().id());
		options().keep(request.format().id(), request.options());
	}
}
