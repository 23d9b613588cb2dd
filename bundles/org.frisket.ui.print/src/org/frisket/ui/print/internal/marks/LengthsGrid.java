package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Point;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.LengthPairs;
import org.frisket.print.register.MeasuredLengths;
import org.frisket.print.register.MeasuredLengths.Between;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** How far marks are apart, measured with a ruler: their places follow from that and are taken over when asked. */
public final class LengthsGrid extends Composite implements MeasureField.Client {

	private static final int COLUMNS = 3;
	private static final int SPACE_PX = 4;
	private static final int LEAST_PX = 60;

	/** What is told. */
	interface Client {

		/** A length is being measured. @param one mark from 0 @param other from 0 */
		void measuring(int one, int other);

		/** Where the marks are, by their lengths. */
		void measured(List<Optional<Point>> places);
	}

	private record Row(int one, int other, MeasureField field) {
	}

	private final TextKeys keys;
	private final Client client;
	private final List<Row> rows = new ArrayList<>();
	private MarkPlan plan;
	private Label said;
	private Button take;
	private Optional<MeasuredLengths> found = Optional.empty();

	LengthsGrid(Composite parent, TextKeys keys, Client client) {
		super(parent, SWT.NONE);
		this.keys = keys;
		this.client = client;
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(2 * SPACE_PX, SPACE_PX).applyTo(this);
	}

	/** What was typed is not of the sheet or the side that is shown next, even if its marks are the same. */
	void forget() {
		rows.forEach(row -> row.field().show(Optional.empty()));
		rows.forEach(row -> row.field().text().setText("")); //$NON-NLS-1$
	}

	/** What was typed stays as long as the marks do. @param shown null for none */
	void show(MarkPlan shown) {
		if (shown == null ? plan == null : shown.equals(plan)) {
			return;
		}
		plan = shown;
		for (Control child : getChildren()) {
			child.dispose();
		}
		rows.clear();
		found = Optional.empty();
		if (plan != null) {
			build();
			study();
			layout(true, true);
		}
	}

	private void build() {
		for (String heading : new String[] { Messages.LengthsGrid_between, Messages.LengthsGrid_designed,
				Messages.LengthsGrid_measured }) {
			new Label(this, SWT.NONE).setText(heading);
		}
		List<Point> places = plan.places();
		for (LengthPairs.Pair pair : LengthPairs.of(places)) {
			String name = NLS.bind(Messages.LengthsGrid_pair, pair.one() + 1, pair.other() + 1);
			new Label(this, SWT.NONE).setText(name);
			new Label(this, SWT.NONE).setText(LengthText.of(places.get(pair.one()).distance(places.get(pair.other()))));
			MeasureField field = new MeasureField(this, LengthField.SIZE, keys, name, this);
			field.text().addListener(SWT.Modify, event -> study());
			rows.add(new Row(pair.one(), pair.other(), field));
		}
		said = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(said);
		take = new Button(this, SWT.PUSH);
		take.setText(Messages.LengthsGrid_take);
		take.addListener(SWT.Selection, event -> take());
		GridDataFactory.swtDefaults().span(COLUMNS, 1).applyTo(take);
	}

	private void study() {
		if (take == null || take.isDisposed()) {
			return;
		}
		found = Optional.empty();
		String words;
		try {
			List<Between> lengths = lengths();
			if (lengths.isEmpty()) {
				words = Messages.LengthsGrid_how;
			} else {
				found = Optional.of(MeasuredLengths.of(plan.places(), lengths));
				words = words(found.get());
			}
		} catch (RegisterException | IllegalArgumentException e) {
			words = e.getMessage();
		}
		if (!words.equals(said.getText())) {
			said.setText(words);
			said.requestLayout();
		}
		take.setEnabled(found.isPresent());
	}

	private List<Between> lengths() {
		List<Between> lengths = new ArrayList<>();
		for (Row row : rows) {
			row.field().value().ifPresent(mm -> lengths.add(new Between(row.one(), row.other(), mm)));
		}
		return lengths;
	}

	private static String words(MeasuredLengths lengths) {
		StringBuilder words = new StringBuilder(lengths.redundancy() == 0 ? Messages.LengthsGrid_enough
				: NLS.bind(Messages.LengthsGrid_agree, LengthField.text(lengths.rms()), lengths.redundancy()));
		for (RegisterFinding finding : lengths.findings()) {
			words.append('\n').append(finding.message()).append(' ').append(finding.cure());
		}
		return words.append('\n').append(Messages.LengthsGrid_nowhere).toString();
	}

	private void take() {
		found.ifPresent(lengths -> client.measured(lengths.places().stream().map(Optional::of).toList()));
	}

	private int rowOf(MeasureField field) {
		return rows.stream().map(Row::field).toList().indexOf(field);
	}

	@Override
	public void entered(MeasureField field) {
		Row row = rows.get(rowOf(field));
		client.measuring(row.one(), row.other());
	}

	@Override
	public void left(MeasureField field) {
		// read while it is typed
	}

	/** From the last one on to the button. */
	@Override
	public void next(MeasureField field) {
		int next = rowOf(field) + 1;
		if (next < rows.size()) {
			rows.get(next).field().text().setFocus();
			rows.get(next).field().text().selectAll();
		} else if (take.isEnabled()) {
			take.setFocus();
		}
	}

	/** The fields from above. */
	public List<Text> fields() {
		return rows.stream().map(row -> row.field().text()).toList();
	}

	/** What is said of the lengths. */
	public String said() {
		return said == null || said.isDisposed() ? "" : said.getText(); //$NON-NLS-1$
	}

	public Button takeButton() {
		return take;
	}

	/** Puts the caret into the first field. */
	void begin() {
		if (!rows.isEmpty()) {
			rows.get(0).field().text().setFocus();
		}
	}
}
