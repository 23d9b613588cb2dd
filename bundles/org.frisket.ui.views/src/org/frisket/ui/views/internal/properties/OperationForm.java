package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.ui.OperationName;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.NumberField;

/** What is done along the outlines of the selection, one operation after the other, with what and how often. */
final class OperationForm extends Form {

	private static final int COLUMNS = 4;
	private static final int SPACE_PX = 4;

	private final Subject subject;
	private final Composite list;
	private final List<Field> fields = new ArrayList<>();
	/** How many of the elements have an operation at each place. */
	private List<Long> listed = List.of();

	OperationForm(Composite parent, Subject subject) {
		super(parent, Messages.OperationForm_title);
		this.subject = subject;
		list = new Composite(body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(SPACE_PX, SPACE_PX).applyTo(list);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(list);
		Button add = button(body(), Messages.OperationForm_add, Messages.OperationForm_addTip,
				() -> ChangeOperation.add(subject.elements(), nextKind()));
		GridDataFactory.fillDefaults().span(2, 1).align(SWT.LEFT, SWT.CENTER).applyTo(add);
	}

	/** What is cut already is mostly to be creased or drawn too; what has nothing yet is mostly to be cut. */
	private OperationKind nextKind() {
		return listed.isEmpty() ? OperationKind.CUT : OperationKind.DRAW;
	}

	private List<Long> places() {
		List<Long> places = new ArrayList<>();
		for (int place = 0; places.isEmpty() || places.get(places.size() - 1) > 0; place++) {
			int each = place;
			places.add(subject.elements().stream().filter(element -> element.getOperations().size() > each).count());
		}
		return places.subList(0, places.size() - 1);
	}

	@Override
	public void refresh() {
		if (places().equals(listed)) {
			fields.forEach(Field::refresh);
		} else {
			reset();
		}
	}

	@Override
	public void reset() {
		listed = List.copyOf(places());
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
		Composite kind = cell(list, Messages.OperationForm_kind, 2);
		fields.add(new Choice<>(kind, List.of(OperationKind.values()), OperationName::of,
				() -> common(place, Operation::getKind),
				chosen -> subject.execute(ChangeOperation.kind(subject.elements(), place, chosen))));
		Button earlier = button(list, Messages.OperationForm_earlier, Messages.OperationForm_earlierTip,
				() -> ChangeOperation.earlier(subject.elements(), place));
		earlier.setEnabled(place > 0);
		button(list, Messages.OperationForm_remove, Messages.OperationForm_removeTip,
				() -> ChangeOperation.remove(subject.elements(), place));
		label(list, Messages.OperationForm_tool);
		fields.add(new Entry(cell(list, Messages.OperationForm_tool, COLUMNS - 1), SWT.SINGLE,
				() -> common(place, operation -> Objects.requireNonNullElse(operation.getTool(), "")), //$NON-NLS-1$
				typed -> subject.execute(ChangeOperation.tool(subject.elements(), place, typed)))
				.withHint(Messages.OperationForm_toolOpen));
		label(list, Messages.OperationForm_passes);
		fields.add(new Entry(cell(list, Messages.OperationForm_passes, COLUMNS - 1), SWT.SINGLE, () -> passes(place),
				typed -> subject.execute(ChangeOperation.passes(subject.elements(), place,
						NumberField.parseWhole(typed, 1, ChangeOperation.MOST_PASSES)))));
		addDashes(place);
		fields.add(new AdviceLine(this, list, COLUMNS, () -> question(place)));
		if (listed.get(place) < subject.elements().size()) {
			Label some = label(list, NLS.bind(Messages.OperationForm_some, listed.get(place), subject.elements().size()));
			GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(some);
		}
	}

	/** Of a crease or a perforation, which a machine may break up by itself or be given in dashes. */
	private void addDashes(int place) {
		BooleanSupplier broken = () -> {
			OperationKind kind = common(place, Operation::getKind);
			return kind == OperationKind.CREASE || kind == OperationKind.PERFORATE;
		};
		length(place, Messages.OperationForm_dash, Operation::getDash, ChangeOperation::dash, broken);
		length(place, Messages.OperationForm_gap, Operation::getGap, ChangeOperation::gap, broken);
	}

	/** How a length of an operation is changed. */
	private interface Change {
		Edit to(List<Element> elements, int place, double mm);
	}

	private void length(int place, String name, Function<Operation, Double> value, Change change, BooleanSupplier when) {
		Label label = label(list, name);
		label.setToolTipText(Messages.OperationForm_dashTip);
		Composite cell = cell(list, name, COLUMNS - 1);
		fields.add(new Entry(cell, SWT.SINGLE, () -> {
			Double mm = common(place, value);
			return mm == null ? null : mm == 0 ? "" : LengthField.text(mm); //$NON-NLS-1$
		}, typed -> {
			Double now = common(place, value);
			subject.execute(change.to(subject.elements(), place,
					typed.isBlank() ? 0 : LengthField.AMOUNT.parse(typed, now == null ? 0 : now)));
		}).withHint(Messages.OperationForm_whole));
		fields.add(shownWhen(when, label, cell));
	}

	/** Of the elements that have the operation; null if they differ. */
	private <V> V common(int place, Function<Operation, V> value) {
		return Subject.common(subject.elements().stream().map(Element::getOperations)
				.filter(operations -> operations.size() > place).map(operations -> operations.get(place)).toList(), value);
	}

	/** Advice for an operation that is the same of all, in one stock. */
	private Optional<AdviceLine.Question> question(int place) {
		String stock = Subject.common(subject.elements(), OperationForm::stock);
		OperationKind kind = common(place, Operation::getKind);
		String tool = common(place, operation -> Objects.requireNonNullElse(operation.getTool(), "")); //$NON-NLS-1$
		return stock == null || kind == null || kind == OperationKind.PRINT || tool == null ? Optional.empty()
				: Optional.of(new AdviceLine.Question(stock, kind, tool));
	}

	private static String stock(Element element) {
		Layer layer = Jobs.layerOf(element);
		return layer == null ? null : layer.getStock();
	}

	private String passes(int place) {
		Integer passes = common(place, Operation::getPasses);
		return passes == null ? null : String.valueOf(passes);
	}

	private Button button(Composite parent, String name, String tip, Supplier<Edit> edit) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(name);
		button.setData(NAME, name);
		button.setToolTipText(tip);
		button.addListener(SWT.Selection, event -> subject.execute(edit.get()));
		return button;
	}
}
