package org.frisket.imports.job;

import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedShape;
import org.frisket.model.FrisketFactory;
import org.frisket.model.ImageBytes;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;

/** Pictures of art as elements of a job. */
public final class ArtPictures {

	private ArtPictures() {
	}

	/** Whether there was anything to add: a picture that is flat shows nothing. */
	public static boolean add(Layer layer, ImportedShape.Picture source) {
		return add(layer, source, OperationKind.PRINT);
	}

	/** @param along what is done along the edge of its art; {@code PRINT} for nothing */
	static boolean add(Layer layer, ImportedShape.Picture source, OperationKind along) {
		Transform place = source.place();
		double width = Math.hypot(place.a(), place.b());
		double height = Math.hypot(place.c(), place.d());
		if (!(Math.abs(place.determinant()) > 0) || !Double.isFinite(width * height)) {
			return false;
		}
		Picture picture = Jobs.addPicture(layer, ImageBytes.of(source.bytes()), source.mediaType(), width, height);
		picture.setName(source.name().isEmpty() ? null : source.name());
		Transform own = Transform.scaling(1 / width, 1 / height).then(place);
		picture.setTransform(new Matrix(own.a(), own.b(), own.c(), own.d(), own.e(), own.f()));
		if (along != OperationKind.PRINT) {
			picture.setEdge(FrisketFactory.INSTANCE.createPictureEdge());
			Jobs.addOperation(picture, along);
		}
		return true;
	}
}
