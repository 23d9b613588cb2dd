package org.frisket.imports;

import java.util.List;

import org.frisket.geometry.Bounds;

/**
 * What was read from a file: layers of shapes in millimetres, y downwards, the lowest first.
 *
 * @param page    the sheet that the file speaks of; empty bounds if it speaks of none
 * @param remarks in the order of the file
 * @param guessed names of the importer's options that the file should have told and did not, so that somebody who knows
 *                has to be asked
 */
public record ImportedArt(List<ImportedLayer> layers, Bounds page, List<Remark> remarks, List<String> guessed) {

	public ImportedArt {
		layers = List.copyOf(layers);
		remarks = List.copyOf(remarks);
		guessed = List.copyOf(guessed);
	}

	/** Of a file that tells all that there is to know. */
	public ImportedArt(List<ImportedLayer> layers, Bounds page, List<Remark> remarks) {
		this(layers, page, remarks, List.of());
	}

	/** Around all shapes, in mm. */
	public Bounds bounds() {
		return layers.stream().flatMap(layer -> layer.shapes().stream()).map(ImportedShape::bounds).reduce(Bounds.EMPTY,
				Bounds::with);
	}
}
