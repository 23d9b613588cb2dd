package org.frisket.ui.bench.internal.parts;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchDocument;

/** Makes the part for each thing on the bench. */
public final class BenchPartFactory implements EditPartFactory {

	@Override
	public EditPart createEditPart(EditPart context, Object model) {
		if (model instanceof BenchDocument document) {
			return new JobPart(document);
		}
		if (model instanceof Element element) {
			return new ElementPart(element);
		}
		throw new IllegalArgumentException("nothing on the bench shows " + model); //$NON-NLS-1$
	}
}
