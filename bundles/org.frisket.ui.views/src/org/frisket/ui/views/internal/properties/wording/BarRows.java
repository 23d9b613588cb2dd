package org.frisket.ui.views.internal.properties.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeHold;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Wording;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** The bars and frames of the selected wordings, one below the other, and a button for one more. */
final class BarRows {

	private static final int COLUMNS = 3;
	private static final int SPACE_PX = 4;

	private final WordingPart form;
	private final Composite list;
	private final List<Field> fields = new ArrayList<>();
	/** How many of the wordings have a bar at each place, and whether any of those is a frame. */
	private List<Row> listed = List.of();

	private record Row(long having, boolean frame) {
	}

	BarRows(WordingPart form) {
		this.form = form;
		list = new Composite(form.body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(SPACE_PX, SPACE_PX).applyTo(list);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(list);
		Button add = button(form.body(), Messages.BarRows_add, Messages.BarRows_addTip,
				() -> form.each(w -> ChangeHold.addBar(w, BarKind.UNDERLINE)));
		GridDataFactory.fillDefaults().span(2, 1).align(SWT.LEFT, SWT.CENTER).applyTo(add);
	}

	private List<Row> rows() {
		List<Row> rows = new ArrayList<>();
		int most = form.subject.wordings().stream().mapToInt(w -> w.getBars().size()).max().orElse(0);
		for (int place = 0; place < most; place++) {
			List<Bar> bars = bars(place);
			rows.add(new Row(bars.size(), bars.stream().allMatch(bar -> bar.getKind() == BarKind.FRAME)));
		}
		return rows;
	}

	private List<Bar> bars(int place) {
		return form.subject.wordings().stream().map(Wording::getBars).filter(bars -> bars.size() > place)
				.map(bars -> bars.get(place)).toList();
	}

	public void refresh() {
		if (rows().equals(listed)) {
			fields.forEach(Field::refresh);
		} else {
			reset();
		}
	}

	public void reset() {
		listed = rows();
		fields.clear();
		for (var child : list.getChildren()) {
			child.dispose();
		}
		for (int place = 0; place < listed.size(); place++) {
			addRow(place);
		}
		fields.forEach(Field::reset);
		Form.layout(list);
	}

	private void addRow(int place) {
		fields.add(new Choice<>(Form.cell(list, Messages.BarRows_kind, COLUMNS - 1), List.of(BarKind.values()), BarRows::name,
				() -> Subject.common(bars(place), Bar::getKind),
				kind -> form.each(w -> ChangeHold.barKind(w, place, kind))));
		button(list, Messages.BarRows_remove, Messages.BarRows_removeTip,
				() -> form.each(w -> ChangeHold.removeBar(w, place)));
		length(place, Messages.BarRows_thickness, null, LengthField.SIZE, Bar::getThickness,
				(w, mm) -> ChangeHold.barThickness(w, place, mm));
		boolean frame = listed.get(place).frame();
		length(place, Messages.BarRows_offset, frame ? Messages.BarRows_offsetFrameTip : Messages.BarRows_offsetTip,
				LengthField.ANY, Bar::getOffset, (w, mm) -> ChangeHold.barOffset(w, place, mm));
		if (!frame) {
			length(place, Messages.BarRows_overhang, Messages.BarRows_overhangTip, LengthField.ANY, Bar::getOverhang,
					(w, mm) -> ChangeHold.barOverhang(w, place, mm));
		}
		if (listed.get(place).having() < form.subject.wordings().size()) {
			Label some = Form.label(list, NLS.bind(Messages.OperationForm_some, listed.get(place).having(),
					form.subject.wordings().size()));
			GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(some);
		}
	}

	private void length(int place, String name, String tip, LengthField range, Function<Bar, Double> value,
			BiFunction<Wording, Double, Edit> change) {
		Form.label(list, name);
		Entry entry = new Entry(Form.cell(list, name, COLUMNS - 1), SWT.SINGLE, () -> {
			Double mm = Subject.common(bars(place), value);
			return mm == null ? null : LengthField.text(mm);
		}, typed -> form.each(w -> change.apply(w,
				w.getBars().size() > place ? range.parse(typed, value.apply(w.getBars().get(place))) : Double.NaN)));
		entry.control().setToolTipText(tip);
		fields.add(entry);
	}

	private static Button button(Composite parent, String name, String tip, Runnable pressed) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(name);
		button.setData(Form.NAME, name);
		button.setToolTipText(tip);
		button.addListener(SWT.Selection, event -> pressed.run());
		return button;
	}

	private static String name(BarKind kind) {
		return switch (kind) {
		case UNDERLINE -> Messages.BarRows_underline;
		case BASELINE -> Messages.BarRows_baseline;
		case FRAME -> Messages.BarRows_frame;
		};
	}
}
