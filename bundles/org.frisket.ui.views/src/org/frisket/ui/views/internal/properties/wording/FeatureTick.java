package org.frisket.ui.views.internal.properties.wording;

import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/** A feature that is on, off, or as the font has it: each press goes on to the next. */
final class FeatureTick implements Field {

	private final String name;
	private final Supplier<OptionalInt> source;
	private final Button button;

	/** @param source nothing where nothing is said of it; null where several differ */
	FeatureTick(Composite row, String name, Supplier<OptionalInt> source, Consumer<OptionalInt> sink) {
		this.name = name;
		this.source = source;
		button = new Button(row, SWT.CHECK);
		button.setText(name);
		button.setData(Form.NAME, name);
		Form.fill(button);
		button.addListener(SWT.Selection, event -> {
			sink.accept(next(source.get()));
			refresh();
		});
	}

	private static OptionalInt next(OptionalInt value) {
		if (value == null || value.isEmpty()) {
			return OptionalInt.of(1);
		}
		return value.getAsInt() > 0 ? OptionalInt.of(0) : OptionalInt.empty();
	}

	@Override
	public void refresh() {
		OptionalInt value = source.get();
		boolean open = value == null || value.isEmpty();
		button.setGrayed(open);
		button.setSelection(open || value.getAsInt() > 0);
		String state = value == null ? Messages.Field_several
				: open ? Messages.FeatureTick_usual
						: value.getAsInt() == 0 ? Messages.FeatureTick_off
								: value.getAsInt() == 1 ? Messages.FeatureTick_on
										: NLS.bind(Messages.FeatureTick_form, value.getAsInt());
		button.setToolTipText(NLS.bind(Messages.FeatureTick_tip, name, state));
	}

	@Override
	public void reset() {
		refresh();
	}
}
