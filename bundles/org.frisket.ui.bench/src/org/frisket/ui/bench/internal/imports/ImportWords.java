package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.ui.LengthText;

/** How files and their sizes are called. */
final class ImportWords {

	private ImportWords() {
	}

	/** Its name, or how many they are. */
	static String of(List<Path> files) {
		return files.size() == 1 ? files.get(0).getFileName().toString() : NLS.bind(Messages.ImportWords_files, files.size());
	}

	/** The name of a file without its ending, as a job is titled. */
	static String title(Path file) {
		String name = file.getFileName().toString();
		int dot = name.lastIndexOf('.');
		return dot > 0 ? name.substring(0, dot) : name;
	}

	static String size(Bounds box) {
		return box.isEmpty() ? Messages.ImportWords_nothing
				: NLS.bind(Messages.ImportWords_size, LengthText.of(box.width()), LengthText.of(box.height()));
	}
}
