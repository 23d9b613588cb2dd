package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.graphics.Point;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.geometry.shapes.ShapePath;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PreviewColours;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays a shape to start from into the middle of what is seen, and selects it. */
public final class ShapeHandler extends BenchHandler {

	private static final String SHAPE = "org.frisket.ui.bench.command.shape.shape"; //$NON-NLS-1$

	/** Sizes in mm that are easily seen and easily changed. */
	private enum Shape {

		RECTANGLE(60, 40), ROUNDED(60, 40), ELLIPSE(60, 40), POLYGON(50, 50), STAR(50, 50), BANNER(100, 25), TAG(80, 40);

		private final double width;
		private final double height;

		Shape(double width, double height) {
			this.width = width;
			this.height = height;
		}

		String path() {
			return switch (this) {
			case RECTANGLE -> ShapePath.rectangle(width, height);
			case ROUNDED -> ShapePath.roundedRectangle(width, height, 6);
			case ELLIPSE -> ShapePath.ellipse(width, height);
			case POLYGON -> ShapePath.polygon(width, height, 6);
			case STAR -> ShapePath.star(width, height, 5, 0.45);
			case BANNER -> ShapePath.banner(width, height, 10);
			case TAG -> ShapePath.tag(width, height, 12, 5);
			};
		}
	}

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		bench.typing().end(false);
		Shape shape = ElementHandler.choice(event, SHAPE, Shape.class);
		Point size = bench.viewer().getControl().getSize();
		org.frisket.geometry.Point middle = bench.zoom().toMm(size.x / 2.0, size.y / 2.0);
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData(shape.path());
		// to whole millimetres, so that its size and place are easily read
		outline.setTransform(Matrix.translation(Math.rint(middle.x() - shape.width / 2),
				Math.rint(middle.y() - shape.height / 2)));
		Jobs.addOperation(outline, OperationKind.CUT);
		bench.commandStack().execute(new EditCommand(new PlaceElement(bench.document().job(), outline,
				Messages.ShapeHandler_layer, PreviewColours.mat(shape.ordinal()))));
		Selection.select(bench.viewer(), List.of(outline));
	}
}
