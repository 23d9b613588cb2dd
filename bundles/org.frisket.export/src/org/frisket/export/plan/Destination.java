package org.frisket.export.plan;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.names.NamePattern;
import org.frisket.export.names.SheetNames;
import org.frisket.model.Sheet;

/**
 * Where files go.
 *
 * @param path  of the one file, or of the folder
 * @param names how files in the folder are named; null for one file
 */
public record Destination(Path path, NamePattern names) {

	public static Destination file(Path file) {
		return new Destination(file, null);
	}

	public static Destination folder(Path folder, NamePattern names) {
		return new Destination(folder, names);
	}

	public boolean isFolder() {
		return names != null;
	}

	/**
	 * A file for each sheet; one for the bench if there are none.
	 *
	 * @throws IllegalArgumentException if they cannot all have one; the message says why
	 */
	List<Path> targets(SheetNames naming, List<Sheet> sheets) {
		if (isFolder()) {
			return naming.of(names, sheets).stream().map(path::resolve).toList();
		}
		if (sheets.size() > 1) {
			throw new IllegalArgumentException(NLS.bind(Messages.Destination_oneFile, sheets.size(), path));
		}
		return List.of(path);
	}
}
