package org.frisket.ui.views.internal.properties;

import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.MoveElements;
import org.frisket.editing.TransformElements;
import org.frisket.geometry.Bounds;

/** Where the selection lies and how large it is. */
final class PlaceForm extends Form {

	private final Subject subject;
	private boolean proportional = true;

	PlaceForm(Composite parent, Subject subject) {
		super(parent, Messages.PlaceForm_title);
		this.subject = subject;
		add(new Entry(this, Messages.PlaceForm_left, SWT.SINGLE, length(Bounds::minX), this::setLeft));
		add(new Entry(this, Messages.PlaceForm_top, SWT.SINGLE, length(Bounds::minY), this::setTop));
		add(new Entry(this, Messages.PlaceForm_width, SWT.SINGLE, length(Bounds::width), this::setWidth));
		add(new Entry(this, Messages.PlaceForm_height, SWT.SINGLE, length(Bounds::height), this::setHeight));
		add(new Tick(wide(Messages.PlaceForm_proportional), Messages.PlaceForm_proportional, () -> proportional,
				value -> proportional = value));
	}

	private Supplier<String> length(ToDoubleFunction<Bounds> measure) {
		return () -> {
			Bounds bounds = subject.bounds();
			return bounds.isEmpty() ? "" : LengthField.text(measure.applyAsDouble(bounds)); //$NON-NLS-1$
		};
	}

	private Bounds known() {
		Bounds bounds = subject.bounds();
		if (bounds.isEmpty()) {
			throw new IllegalArgumentException(Messages.PlaceForm_nothing);
		}
		return bounds;
	}

	private void setLeft(String typed) {
		double left = known().minX();
		subject.execute(new MoveElements(subject.elements(), LengthField.ANY.parse(typed, left) - left, 0));
	}

	private void setTop(String typed) {
		double top = known().minY();
		subject.execute(new MoveElements(subject.elements(), 0, LengthField.ANY.parse(typed, top) - top));
	}

	private void setWidth(String typed) {
		double factor = factor(typed, known().width());
		scale(factor, proportional ? factor : 1);
	}

	private void setHeight(String typed) {
		double factor = factor(typed, known().height());
		scale(proportional ? factor : 1, factor);
	}

	private static double factor(String typed, double size) {
		double wanted = LengthField.SIZE.parse(typed, size);
		if (!(size > 0)) {
			throw new IllegalArgumentException(Messages.PlaceForm_flat);
		}
		return wanted / size;
	}

	private void scale(double sx, double sy) {
		Bounds bounds = known();
		subject.execute(TransformElements.scale(subject.elements(), sx, sy, bounds.minX(), bounds.minY()));
	}
}
