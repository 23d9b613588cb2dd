package org.frisket.imports;

import java.util.List;

/**
 * A layer of a file.
 *
 * @param name   its name there, or one made for it
 * @param colour as {@code #rrggbb}, or empty
 * @param shapes the lowest first
 */
public record ImportedLayer(String name, String colour, List<ImportedShape> shapes) {

	public ImportedLayer {
		shapes = List.copyOf(shapes);
	}
}
