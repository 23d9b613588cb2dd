package org.frisket.ui.orders.internal.exchange;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.orders.intake.DateForm;
import org.frisket.orders.intake.OrderField;
import org.frisket.orders.intake.OrderMapping;
import org.frisket.orders.intake.OrderReading;
import org.frisket.ui.orders.internal.Named;

/** For each field of an order the column that holds it, and how days are written. */
final class IntakeColumns extends Composite {

	private static final int SPACE_PX = 8;
	private static final int WIDTH_PX = 190;

	private final Map<OrderField, Combo> columns = new EnumMap<>(OrderField.class);
	private final Combo dates;

	/** @param changed told when somebody has chosen something else */
	IntakeColumns(Composite parent, Runnable changed) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).spacing(SPACE_PX, SPACE_PX / 2).applyTo(this);
		for (OrderField field : OrderField.values()) {
			columns.put(field, combo(FieldWords.of(field), changed));
		}
		dates = combo(Messages.IntakeColumns_dates, changed);
		dates.setItems(Stream.concat(Stream.of(Messages.IntakeColumns_anyDate),
				Stream.of(DateForm.values()).map(FieldWords::of)).toArray(String[]::new));
		dates.select(0);
	}

	private Combo combo(String name, Runnable changed) {
		new Label(this, SWT.NONE).setText(name);
		Combo combo = new Combo(this, SWT.READ_ONLY);
		combo.setData(name);
		Named.as(name, combo);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(combo);
		combo.addListener(SWT.Selection, event -> changed.run());
		return combo;
	}

	/** Shows by what a table was read. */
	void show(OrderReading reading) {
		List<String> there = reading.head().columns();
		OrderMapping mapping = reading.mapping();
		columns.forEach((field, combo) -> {
			String header = mapping.headers().getOrDefault(field, ""); //$NON-NLS-1$
			int column = reading.head().column(header);
			// one that is said but is not there stays in sight, below those that are
			boolean lost = column < 0 && !header.isEmpty();
			combo.setItems(Stream.of(List.of(Messages.IntakeColumns_none), there, lost ? List.of(header) : List.<String>of())
					.flatMap(List::stream).toArray(String[]::new));
			combo.select(lost ? there.size() + 1 : column + 1);
		});
		dates.select(mapping.dates().map(form -> form.ordinal() + 1).orElse(0));
	}

	/** What is chosen. */
	OrderMapping mapping() {
		OrderMapping mapping = OrderMapping.GUESSED;
		for (Map.Entry<OrderField, Combo> each : columns.entrySet()) {
			Combo combo = each.getValue();
			mapping = mapping.with(each.getKey(), combo.getSelectionIndex() <= 0 ? "" : combo.getText()); //$NON-NLS-1$
		}
		Optional<DateForm> form = dates.getSelectionIndex() <= 0 ? Optional.empty()
				: Optional.of(DateForm.values()[dates.getSelectionIndex() - 1]);
		return form.map(mapping::withDates).orElse(mapping);
	}
}
