package org.frisket.ui.bench.internal.options;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.options.Option;
import org.frisket.prepare.extension.ContributionException;

/** The options of one thing as a form. One that cannot say its options gets a line that says so instead. */
public final class OptionForm extends Composite {

	private static final int SPACING_PX = 8;
	private static final int LINE_PX = 440;

	private final OptionMemory memory;
	private final Runnable changed;
	private final List<OptionField> fields = new ArrayList<>();
	private boolean broken;
	private boolean stacked;

	public OptionForm(Composite parent, OptionMemory memory, Runnable changed) {
		super(parent, SWT.NONE);
		this.memory = memory;
		this.changed = changed;
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACING_PX, SPACING_PX).applyTo(this);
	}

	/** Has each label stand above its field and not beside it, where there is little room. Call it before {@link #show}. */
	public OptionForm stacked() {
		stacked = true;
		GridLayoutFactory.fillDefaults().spacing(SPACING_PX, SPACING_PX / 2).applyTo(this);
		return this;
	}

	/** Says what can be set about a thing. */
	@FunctionalInterface
	public interface Source {

		List<Option> options() throws ContributionException;
	}

	/**
	 * Shows what can be set about a thing.
	 *
	 * @param id of it, by which is remembered what was set last
	 */
	public void show(String id, Source source) {
		show(id, source, Map.of());
	}

	/**
	 * The same, where some of it is answered already.
	 *
	 * @param answers texts by the name of their option, before what was set last
	 */
	public void show(String id, Source source, Map<String, String> answers) {
		for (Control child : getChildren()) {
			child.dispose();
		}
		fields.clear();
		broken = false;
		try {
			for (Option option : source.options()) {
				fields.add(new OptionField(this, option,
						answers.getOrDefault(option.name(), memory.value(id, option)), changed));
			}
		} catch (ContributionException e) {
			broken = true;
			Label message = new Label(this, SWT.WRAP);
			message.setText(e.getMessage());
			GridDataFactory.fillDefaults().span(2, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(message);
		}
		if (stacked) {
			for (Control child : getChildren()) {
				if (child instanceof Label && child.getLayoutData() == null) {
					GridDataFactory.fillDefaults().grab(true, false).applyTo(child);
				}
			}
		}
	}

	/** Shows at each field what is wrong with it. Whether nothing is. */
	public boolean validate() {
		boolean valid = !broken;
		for (OptionField field : fields) {
			valid &= field.validate();
		}
		return valid;
	}

	/** Sets all options. @param values texts by the name of their option; the defaults for what is missing */
	public void fill(Map<String, String> values) {
		fields.forEach(field -> field.fill(values));
	}

	/** Texts by the name of their option. */
	public Map<String, String> values() {
		Map<String, String> values = new LinkedHashMap<>();
		fields.forEach(field -> values.put(field.name(), field.value()));
		return values;
	}
}
