package org.frisket.ui.views.internal.properties;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.function.DoubleSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.RoundCorners;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** The rows for the shape that a mat makes of what it follows; only those that matter for that shape are seen. */
final class MatShape {

	private final Composite list;
	private final Subject subject;
	private final Mat mat;
	private final int columns;
	private final Consumer<Field> fields;

	/** @param list a grid of so many columns */
	MatShape(Composite list, int columns, Subject subject, Mat mat, Consumer<Field> fields) {
		this.list = list;
		this.subject = subject;
		this.mat = mat;
		this.columns = columns;
		this.fields = fields;
	}

	/** What the mat makes, and how. */
	void addForm() {
		List<Mat> one = List.of(mat);
		Form.label(list, Messages.MatShape_form);
		fields.accept(new Choice<>(Form.cell(list, Messages.MatShape_form, columns - 1), List.of(MatForm.values()),
				MatShape::name, mat::getForm, form -> subject.execute(ChangeMat.form(one, form))));
		length(Messages.MatShape_reach, LengthField.AMOUNT, mat::getReach, value -> ChangeMat.reach(one, value),
				() -> mat.getForm() == MatForm.HOLLOW_HULL);
		BooleanSupplier shadow = () -> mat.getForm() == MatForm.SHADOW;
		length(Messages.MatShape_shadowX, LengthField.ANY, mat::getShadowX,
				value -> ChangeMat.shadow(one, value, mat.getShadowY()), shadow);
		length(Messages.MatShape_shadowY, LengthField.ANY, mat::getShadowY,
				value -> ChangeMat.shadow(one, mat.getShadowX(), value), shadow);
		BooleanSupplier frame = () -> mat.getForm() == MatForm.FRAME;
		Label kind = Form.label(list, Messages.MatShape_frame);
		Composite cell = Form.cell(list, Messages.MatShape_frame, columns - 1);
		fields.accept(new Choice<>(cell, List.of(FrameKind.values()), MatShape::name, mat::getFrameKind,
				chosen -> subject.execute(ChangeMat.frameKind(one, chosen))));
		showWhen(frame, kind, cell);
		length(Messages.MatShape_margin, LengthField.ANY, mat::getFrameMargin,
				value -> ChangeMat.frameMargin(one, value), frame);
		length(Messages.MatShape_width, LengthField.SIZE, mat::getFrameWidth, value -> ChangeMat.frameWidth(one, value),
				frame);
	}

	/** What is done to the shape afterwards. */
	void addFinish() {
		length(Messages.MatShape_smallestHole, LengthField.SIZE, mat::getSmallestHole,
				value -> ChangeMat.smallestHole(List.of(mat), value), () -> mat.getHoles() == HoleRule.FILL_SMALL);
		length(Messages.MatShape_radius, LengthField.AMOUNT, mat::getCornerRadius,
				value -> new RoundCorners(List.of(mat), value), () -> true);
	}

	private void length(String name, LengthField range, DoubleSupplier value, DoubleFunction<Edit> edit,
			BooleanSupplier when) {
		Label label = Form.label(list, name);
		Composite cell = Form.cell(list, name, columns - 1);
		fields.accept(new Entry(cell, SWT.SINGLE, () -> LengthField.text(value.getAsDouble()),
				typed -> subject.execute(edit.apply(range.parse(typed, value.getAsDouble())))));
		showWhen(when, label, cell);
	}

	private void showWhen(BooleanSupplier when, Label label, Composite cell) {
		fields.accept(Form.shownWhen(when, label, cell));
	}

	private static String name(MatForm form) {
		return switch (form) {
		case FOLLOW -> Messages.MatShape_follow;
		case CONVEX_HULL -> Messages.MatShape_hull;
		case HOLLOW_HULL -> Messages.MatShape_hollowHull;
		case FRAME -> Messages.MatShape_frameForm;
		case SHADOW -> Messages.MatShape_shadow;
		};
	}

	private static String name(FrameKind kind) {
		return kind == FrameKind.ELLIPSE ? Messages.MatShape_ellipse : Messages.MatShape_rectangle;
	}
}
