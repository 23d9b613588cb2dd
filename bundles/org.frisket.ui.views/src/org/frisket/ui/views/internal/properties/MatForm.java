package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.AddMatBehind;
import org.frisket.editing.ChangeMat;
import org.frisket.editing.RemoveMat;
import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;

/** The mats behind the selection, the narrowest first, each with what can be set of it. */
final class MatForm extends Form {

	private static final double FIRST_STEP = 3;
	private static final int SPACE_PX = 4;

	private final Subject subject;
	private final Composite list;
	private final Button add;
	private final List<Field> fields = new ArrayList<>();
	private List<Mat> listed = List.of();

	MatForm(Composite parent, Subject subject) {
		super(parent, Messages.MatForm_title);
		this.subject = subject;
		list = new Composite(body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(SPACE_PX, SPACE_PX).applyTo(list);
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
		List<Element> elements = subject.elements();
		subject.execute(new AddMatBehind(elements, List.of(nextDistance()),
				distance -> NLS.bind(Messages.MatForm_layer, LengthField.text(distance))));
	}

	@Override
	void refresh() {
		List<Mat> mats = subject.mats();
		if (mats.size() != listed.size() || !listed.containsAll(mats)) {
			rebuild(mats);
		} else {
			fields.forEach(Field::refresh);
		}
		showNext();
	}

	@Override
	void reset() {
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
		for (var child : list.getChildren()) {
			child.dispose();
		}
		for (Mat mat : mats) {
			addRow(mat);
		}
		fields.forEach(Field::reset);
		Form.layout(list);
	}

	private void addRow(Mat mat) {
		List<Mat> one = List.of(mat);
		fields.add(new Entry(cell(Messages.MatForm_distance, 2), SWT.SINGLE,
				() -> LengthField.text(mat.getDistance()), typed -> subject
						.execute(ChangeMat.distance(one, LengthField.ANY.parse(typed, mat.getDistance())))));
		Button remove = new Button(list, SWT.PUSH);
		remove.setText(Messages.MatForm_remove);
		remove.setData(NAME, Messages.MatForm_remove);
		remove.setToolTipText(Messages.MatForm_removeTip);
		remove.addListener(SWT.Selection, event -> subject.execute(new RemoveMat(mat)));
		fields.add(new Choice<>(cell(Messages.MatForm_corners, 1), List.of(CornerJoin.values()), MatForm::name,
				mat::getCorners, corners -> subject.execute(ChangeMat.corners(one, corners))));
		fields.add(new Choice<>(cell(Messages.MatForm_holes, 2), List.of(HoleRule.values()), MatForm::name,
				mat::getHoles, holes -> subject.execute(ChangeMat.holes(one, holes))));
	}

	private Composite cell(String name, int span) {
		Composite cell = new Composite(list, SWT.NONE);
		cell.setData(NAME, name);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(cell);
		GridDataFactory.fillDefaults().grab(true, false).span(span, 1).applyTo(cell);
		return cell;
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
		};
	}
}
