package org.frisket.ui.bench.internal.export;

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
import org.frisket.export.Exporter;
import org.frisket.geometry.options.Option;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/** The options of one format as a form. A format that cannot say its options gets a line that says so instead. */
final class OptionForm extends Composite {

	private static final int SPACING_PX = 8;
	private static final int LINE_PX = 440;

	private final ExportMemory memory;
	private final Runnable changed;
	private final List<OptionField> fields = new ArrayList<>();
	private boolean broken;

	OptionForm(Composite parent, ExportMemory memory, Runnable changed) {
		super(parent, SWT.NONE);
		this.memory = memory;
		this.changed = changed;
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACING_PX, SPACING_PX).applyTo(this);
	}

	/** Loads the exporter, and shows what can be set about it. */
	void show(Contribution<Exporter> format) {
		for (Control child : getChildren()) {
			child.dispose();
		}
		fields.clear();
		broken = false;
		try {
			for (Option option : options(format)) {
				fields.add(new OptionField(this, option, memory.value(format.id(), option), changed));
			}
		} catch (ContributionException e) {
			broken = true;
			Label message = new Label(this, SWT.WRAP);
			message.setText(e.getMessage());
			GridDataFactory.fillDefaults().span(2, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(message);
		}
	}

	private static List<Option> options(Contribution<Exporter> format) throws ContributionException {
		Exporter exporter = format.create();
		try {
			return exporter.options();
		} catch (RuntimeException | LinkageError e) {
			throw format.failed(e);
		}
	}

	/** Shows at each field what is wrong with it. Whether nothing is. */
	boolean validate() {
		boolean valid = !broken;
		for (OptionField field : fields) {
			valid &= field.validate();
		}
		return valid;
	}

	/** Texts by the name of their option. */
	Map<String, String> values() {
		Map<String, String> values = new LinkedHashMap<>();
		fields.forEach(field -> values.put(field.name(), field.value()));
		return values;
	}
}
