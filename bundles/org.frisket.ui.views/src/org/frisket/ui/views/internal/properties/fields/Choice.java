package org.frisket.ui.views.internal.properties.fields;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** A field with a few values to choose from. */
public final class Choice<T> implements Field {

	private final Supplier<T> source;
	private final Combo combo;
	private List<T> values;
	private final Function<T, String> name;

	/** @param source the value; null where several elements differ or there is none */
	public Choice(Composite row, List<T> values, Function<T, String> name, Supplier<T> source, Consumer<T> sink) {
		this.source = source;
		this.name = name;
		combo = new Combo(row, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.setData(Form.NAME, row.getData(Form.NAME));
		combo.setToolTipText((String) row.getData(Form.NAME));
		Form.fill(combo);
		setValues(values);
		combo.addListener(SWT.Selection, event -> {
			int index = combo.getSelectionIndex();
			if (index >= 0 && index < this.values.size()) {
				sink.accept(this.values.get(index));
			}
			refresh();
		});
	}

	public void setValues(List<T> newValues) {
		values = List.copyOf(newValues);
		combo.setItems(values.stream().map(name).toArray(String[]::new));
		refresh();
	}

	public List<T> values() {
		return values;
	}

	@Override
	public void refresh() {
		T value = source.get();
		int index = value == null ? -1 : values.indexOf(value);
		boolean mixed = index < 0 && !values.isEmpty();
		if (mixed && combo.getItemCount() == values.size()) {
			// as the last item, for a choice shows nothing that is not in its list
			combo.add(Messages.Field_several);
		} else if (!mixed && combo.getItemCount() > values.size()) {
			combo.remove(values.size());
		}
		combo.select(mixed ? values.size() : index);
	}

	@Override
	public void reset() {
		refresh();
	}

	public Combo control() {
		return combo;
	}
}
