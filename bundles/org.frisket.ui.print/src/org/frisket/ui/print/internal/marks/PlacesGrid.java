package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Point;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** The marks of a sheet one below the other: where they are to be, where they were found, and how far that is off. */
public final class PlacesGrid extends Composite implements MeasureField.Client {

	private static final int COLUMNS = 5;
	private static final int SPACE_PX = 4;
	private static final int OFF_PX = 84;

	/** What is told. */
	interface Client {

		/** A mark is being measured. @param mark from 0 */
		void measuring(int mark);

		/** Where a mark was found; empty if that was taken away. */
		void measured(int mark, Optional<Point> place);

		/** What is wrong with what was typed; empty if nothing is. */
		void problem(String words);
	}

	private record Row(Label designed, MeasureField x, MeasureField y, Label off) {
	}

	private final TextKeys keys;
	private final Client client;
	private final List<Row> rows = new ArrayList<>();
	private List<Optional<Point>> kept = List.of();
	/** A change that is told is shown at once; fields that lose the focus to it must not tell theirs again. */
	private boolean telling;

	PlacesGrid(Composite parent, TextKeys keys, Client client) {
		super(parent, SWT.NONE);
		this.keys = keys;
		this.client = client;
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(2 * SPACE_PX, SPACE_PX).applyTo(this);
	}

	/** What was typed by half is not of the sheet or the side that is shown next. */
	void forget() {
		for (Row row : rows) {
			row.x().show(Optional.empty());
			row.y().show(Optional.empty());
		}
	}

	/** @param measured null where there are no marks */
	void show(MeasuredSheet measured) {
		int count = measured == null ? 0 : measured.plan().marks().size();
		if (rows.size() != count) {
			build(count);
		}
		kept = measured == null ? List.of() : measured.measured();
		for (int i = 0; i < count; i++) {
			show(measured, i);
		}
		if (count > 0) {
			layout(true, true);
		}
	}

	private void show(MeasuredSheet measured, int i) {
		Row row = rows.get(i);
		Point designed = measured.plan().marks().get(i).place();
		row.designed().setText(LengthText.place(designed.x(), designed.y()));
		Optional<Point> place = kept.get(i);
		boolean half = place.isEmpty() && (row.x().isTouched() || row.y().isTouched());
		if (!half) {
			row.x().show(place.map(Point::x));
			row.y().show(place.map(Point::y));
		}
		row.off().setText(measured.residual(i).map(off -> LengthField.text(off.length())).orElse("")); //$NON-NLS-1$
	}

	private void build(int count) {
		for (Control child : getChildren()) {
			child.dispose();
		}
		rows.clear();
		if (count == 0) {
			return;
		}
		for (String heading : new String[] { Messages.PlacesGrid_mark, Messages.PlacesGrid_designed, Messages.PlacesGrid_x,
				Messages.PlacesGrid_y, Messages.PlacesGrid_off }) {
			new Label(this, SWT.NONE).setText(heading);
		}
		for (int i = 0; i < count; i++) {
			Label number = new Label(this, SWT.NONE);
			number.setText(String.valueOf(i + 1));
			Label designed = new Label(this, SWT.NONE);
			MeasureField x = new MeasureField(this, LengthField.ANY, keys, NLS.bind(Messages.PlacesGrid_xOf, i + 1), this);
			MeasureField y = new MeasureField(this, LengthField.ANY, keys, NLS.bind(Messages.PlacesGrid_yOf, i + 1), this);
			Label off = new Label(this, SWT.RIGHT);
			GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(OFF_PX, SWT.DEFAULT).applyTo(off);
			rows.add(new Row(designed, x, y, off));
		}
	}

	private int rowOf(MeasureField field) {
		for (int i = 0; i < rows.size(); i++) {
			if (rows.get(i).x() == field || rows.get(i).y() == field) {
				return i;
			}
		}
		throw new IllegalStateException();
	}

	@Override
	public void entered(MeasureField field) {
		client.measuring(rowOf(field));
	}

	/** A place is told when both of its numbers are there, or none is. */
	@Override
	public void left(MeasureField field) {
		if (telling || isDisposed()) {
			return;
		}
		int index = rowOf(field);
		Row row = rows.get(index);
		try {
			Optional<Double> x = row.x().value();
			Optional<Double> y = row.y().value();
			client.problem(""); //$NON-NLS-1$
			if (x.isPresent() == y.isPresent()) {
				Optional<Point> place = x.map(mm -> new Point(mm, y.orElseThrow()));
				if (!place.equals(kept.get(index))) {
					tell(index, place);
				} else {
					// another way to write the same
					row.x().show(x);
					row.y().show(y);
				}
			}
		} catch (IllegalArgumentException e) {
			client.problem(NLS.bind(Messages.PlacesGrid_problem, index + 1, e.getMessage()));
		}
	}

	private void tell(int index, Optional<Point> place) {
		telling = true;
		try {
			Row row = rows.get(index);
			row.x().show(place.map(Point::x));
			row.y().show(place.map(Point::y));
			client.measured(index, place);
		} finally {
			telling = false;
		}
	}

	@Override
	public void next(MeasureField field) {
		int index = rowOf(field);
		Row row = rows.get(index);
		Text next = field == row.x() ? row.y().text() : rows.get((index + 1) % rows.size()).x().text();
		next.setFocus();
		next.selectAll();
	}

	/** Puts the caret where a mark is measured. @param mark from 0 */
	void measure(int mark) {
		if (mark < rows.size()) {
			Row row = rows.get(mark);
			row.x().text().setFocus();
			row.x().text().selectAll();
		}
	}

	/** The two fields of a mark. @param mark from 0 */
	public List<Text> fields(int mark) {
		return List.of(rows.get(mark).x().text(), rows.get(mark).y().text());
	}

	/** How far a mark is off, as it is written. */
	public String off(int mark) {
		return rows.get(mark).off().getText();
	}
}
