package org.frisket.print.output;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Region;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.PreparedElement;

/**
 * Something that lies on one side of a sheet, seen from the front.
 *
 * @param element where it lies on the sheet
 * @param layer   it comes from
 * @param part    number of the part it belongs to, from 0; -1 for what belongs to none
 * @param covered what pieces of layers above will cover, on the sheet; empty where nothing does
 */
record FaceItem(PreparedElement element, Layer layer, int part, Region covered) {

	/** What blade, creasing tool and pen do; empty for what is only printed. */
	List<Operation> worked() {
		return element.operations().stream().filter(operation -> operation.getKind() != OperationKind.PRINT)
				.toList();
	}

	Optional<Picture> picture() {
		return element.element() instanceof Picture picture ? Optional.of(picture) : Optional.empty();
	}
}
