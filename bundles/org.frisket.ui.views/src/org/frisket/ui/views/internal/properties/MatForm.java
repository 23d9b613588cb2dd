package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.RemoveMat;
import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.NumberField;

/** The mats behind the selection, the narrowest first, each with what can be set of it. */
final class MatForm extends Form {

	private static final double FIRST_STEP = 3;
	private static final int SPACE_PX = 4;
	private static final int COLUMNS = 4;
	private static final double NEAREST = -10;
	private static final double FURTHEST = 30;
	private static final double STEP = 0.1;
	private static final double LONGEST_MITRE = 100;

	private final Subject subject;
	private final Composite list;
	private final Button add;
	private final List<Field> fields = new ArrayList<>();
	private final List<MatHeading> headings = new ArrayList<>();
	private List<Mat> listed = List.of();

	MatForm(Composite parent, Subject subject) {
		super(parent, Messages.MatForm_title);
		this.subject = subject;
		list = new Composite(body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(SPACE_PX, SPACE_PX).applyTo(list);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(list);
		add = new Button(body(), SWT.PUSH);
		add.setData(NAME, Messages.MatForm_title);
		GridDataFactory.fillDefaults().span(2, 1).align(SWT.LEFT, SWT.CENTER).applyTo(add);
		add.addListener(SWT.Selection, event -> addMat());
	}

	/** As far from the last mat as that is from the one before it. */
	private double nextDistance() {
		List<Double> distances = listed.stream().map(Mat::getDistance).filter(distance -> distance > 0).distinct()
				.toList();
		if (distances.isEmpty()) {
			return FIRST_STEP;
		}
		double last = distances.get(distances.size() - 1);
		return last + (distances.size() > 1 ? last - distances.get(distances.size() - 2) : last);
	}

	private void addMat() {
		List<Element> leaders = subject.leaders();
		subject.execute(new AddMatBehind(leaders, List.of(nextDistance()),
				distance -> NLS.bind(Messages.MatForm_layer, LengthField.text(distance))));
	}

	@Override
	public void refresh() {
		List<Mat> mats = subject.mats();
		if (mats.size() != listed.size() || !listed.containsAll(mats)) {
			rebuild(mats);
		} else {
			fields.forEach(Field::refresh);
			headings.forEach(heading -> heading.show(subject.elements()));
		}
		showNext();
	}

	@Override
	public void reset() {
		rebuild(subject.mats());
		showNext();
	}

	private void showNext() {
		String label = NLS.bind(Messages.MatForm_add, LengthField.text(nextDistance()));
		if (!label.equals(add.getText())) {
			add.setText(label);
			add.requestLayout();
		}
	}

	private void rebuild(List<Mat> mats) {
		listed = mats;
		fields.clear();
		headings.clear();
		for (var child : list.getChildren()) {
			child.dispose();
		}
		for (Mat mat : mats) {
			addRow(mat);
		}
		fields.forEach(Field::reset);
		headings.forEach(heading -> heading.show(subject.elements()));
		Form.layout(list);
	}

	private void addRow(Mat mat) {
		List<Mat> one = List.of(mat);
		headings.add(new MatHeading(list, mat, COLUMNS - 1));
		Button remove = new Button(list, SWT.PUSH);
		remove.setText(Messages.MatForm_remove);
		remove.setData(NAME, Messages.MatForm_remove);
		remove.setToolTipText(Messages.MatForm_removeTip);
		remove.addListener(SWT.Selection, event -> subject.execute(new RemoveMat(mat)));
		MatShape shape = new MatShape(list, COLUMNS, subject, mat, fields::add);
		shape.addForm();
		label(list, Messages.MatForm_distance);
		Composite distance = cell(list, Messages.MatForm_distance, COLUMNS - 1);
		fields.add(new Entry(distance, SWT.SINGLE, () -> LengthField.text(mat.getDistance()),
				typed -> subject.execute(ChangeMat.distance(one, LengthField.ANY.parse(typed, mat.getDistance())))));
		fields.add(new Slide(distance, subject, NEAREST, FURTHEST, STEP, mat::getDistance,
				value -> ChangeMat.distance(one, value)));
		label(list, Messages.MatForm_corners);
		fields.add(new Choice<>(cell(list, Messages.MatForm_corners, COLUMNS - 1), List.of(CornerJoin.values()),
				MatForm::name, mat::getCorners, corners -> subject.execute(ChangeMat.corners(one, corners))));
		label(list, Messages.MatForm_holes);
		fields.add(new Choice<>(cell(list, Messages.MatForm_holes, COLUMNS - 1), List.of(HoleRule.values()),
				MatForm::name, mat::getHoles, holes -> subject.execute(ChangeMat.holes(one, holes))));
		shape.addFinish();
		label(list, Messages.MatForm_smoothing);
		fields.add(new Entry(cell(list, Messages.MatForm_smoothing, 1), SWT.SINGLE,
				() -> LengthField.text(mat.getSmoothing()), typed -> subject.execute(
						ChangeMat.smoothing(one, LengthField.AMOUNT.parse(typed, mat.getSmoothing())))));
		label(list, Messages.MatForm_mitreLimit).setToolTipText(Messages.MatForm_mitreLimitTip);
		Entry mitre = new Entry(cell(list, Messages.MatForm_mitreLimit, 1), SWT.SINGLE,
				() -> LengthField.number(mat.getMitreLimit()), typed -> subject.execute(
						ChangeMat.mitreLimit(one, NumberField.parse(typed, 1, LONGEST_MITRE))));
		mitre.control().setToolTipText(Messages.MatForm_mitreLimitTip);
		fields.add(mitre);
		fields.add(enabling(mitre, () -> mat.getCorners() == CornerJoin.MITRE));
	}

	/** Only sharp corners have a mitre. */
	private static Field enabling(Entry entry, BooleanSupplier when) {
		return new Field() {

			@Override
			public void refresh() {
				entry.control().setEnabled(when.getAsBoolean());
			}

			@Override
			public void reset() {
				refresh();
			}
		};
	}

	private static String name(CornerJoin corners) {
		return switch (corners) {
		case ROUND -> Messages.MatForm_round;
		case MITRE -> Messages.MatForm_mitre;
		case BEVEL -> Messages.MatForm_bevel;
		};
	}

	private static String name(HoleRule holes) {
		return switch (holes) {
		case KEEP -> Messages.MatForm_keepHoles;
		case FILL -> Messages.MatForm_fillHoles;
		case FILL_SMALL -> Messages.MatForm_fillSmallHoles;
		};
	}
}
