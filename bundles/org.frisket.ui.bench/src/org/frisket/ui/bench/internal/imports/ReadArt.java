package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.options.Option;
import org.frisket.imports.ImportedArt;
import org.frisket.ui.bench.internal.picture.Pixels;

/**
 * What came of reading a file.
 *
 * @param art     null if it could not be read
 * @param pixels  of its first pictures, as they lie; those that cannot be shown are missing
 * @param trouble why not: file, place and reason; empty if it could
 * @param asked   what the file should have told and did not; null for nothing
 * @param sizes   what its art measures for each answer to that, in the order of the answers
 */
record ReadArt(Path file, ImportedArt art, List<Pixels> pixels, String trouble, Option asked, Map<String, Bounds> sizes) {

	static ReadArt failed(Path file, String trouble) {
		return new ReadArt(file, null, List.of(), trouble, null, Map.of());
	}

	boolean isRead() {
		return art != null;
	}
}
