package org.frisket.imports;

import java.util.List;

import org.frisket.geometry.Bounds;

/**
 * What was read from a file: layers of shapes in millimetres, y downwards, the lowest first.
 *
 * @param page    the sheet that the file speaks of; empty bounds if it speaks of none
 * @param remarks in the order of the file
 */
public record ImportedArt(List<ImportedLayer> layers, Bounds page, List<Remark> remarks) {

	public ImportedArt {
		layers = List.copyOf(layers);
		remarks = List.copyOf(remarks);
	}
}
