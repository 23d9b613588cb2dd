package org.frisket.ui.views.internal.properties;

import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.Matrix;
import org.frisket.ui.views.internal.properties.fields.AngleField;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.Tick;

/** Where the selection lies and how large it is. */
final class PlaceForm extends Form {

	private static final double HALF = 180;

	private final Subject subject;
	private boolean proportional = true;
	/** About which the selection is turned while the slider is dragged, which changes its box. */
	private Point pivot = Point.ORIGIN;

	PlaceForm(Composite parent, Subject subject) {
		super(parent, Messages.PlaceForm_title);
		this.subject = subject;
		add(new Entry(this, Messages.PlaceForm_left, SWT.SINGLE, length(Bounds::minX), this::setLeft));
		add(new Entry(this, Messages.PlaceForm_top, SWT.SINGLE, length(Bounds::minY), this::setTop));
		add(new Entry(this, Messages.PlaceForm_width, SWT.SINGLE, length(Bounds::width), this::setWidth));
		add(new Entry(this, Messages.PlaceForm_height, SWT.SINGLE, length(Bounds::height), this::setHeight));
		add(new Tick(wide(Messages.PlaceForm_proportional), Messages.PlaceForm_proportional, () -> proportional,
				value -> proportional = value));
		Composite turn = row(Messages.PlaceForm_turn);
		add(new Entry(turn, SWT.SINGLE, this::turnText, this::setTurn));
		add(new Slide(turn, subject, -HALF, HALF, 1, this::turn, this::turned));
	}

	/** Degrees clockwise; null where elements differ. */
	private Double turn() {
		return Subject.common(subject.elements(), PlaceForm::turn);
	}

	private static double turn(Element element) {
		Matrix matrix = element.getTransform();
		double degrees = matrix == null ? 0 : Math.toDegrees(Math.atan2(matrix.b(), matrix.a()));
		return Math.rint(degrees * 1e6) / 1e6;
	}

	private String turnText() {
		Double turn = turn();
		return turn == null ? null : AngleField.text(turn);
	}

	/** What is turned alike is turned together; else each element to the same angle, about its own middle. */
	private void setTurn(String typed) {
		if (turn() != null) {
			double wanted = AngleField.parse(typed, turn());
			pivot = known().centre();
			subject.execute(turned(wanted));
		} else {
			subject.execute(subject.elements(), element -> {
				Point middle = subject.bench().bounds(List.of(element)).centre();
				double more = AngleField.parse(typed, turn(element)) - turn(element);
				return TransformElements.rotate(List.of(element), Math.toRadians(more), middle.x(), middle.y());
			});
		}
	}

	private Edit turned(double degrees) {
		Double now = turn();
		return TransformElements.rotate(subject.elements(), Math.toRadians(degrees - (now == null ? 0 : now)), pivot.x(),
				pivot.y());
	}

	@Override
	public void refresh() {
		if (subject.bench() != null && !subject.draft().isShown() && !subject.bounds().isEmpty()) {
			pivot = subject.bounds().centre();
		}
		super.refresh();
	}

	@Override
	public void reset() {
		super.reset();
		refresh();
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
