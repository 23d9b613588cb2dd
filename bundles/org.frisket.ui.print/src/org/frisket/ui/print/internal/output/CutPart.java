package org.frisket.ui.print.internal.output;

import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.material.desk.DeskState;
import org.frisket.prepare.extension.Contribution;
import org.frisket.ui.bench.internal.export.Formats;
import org.frisket.ui.bench.internal.export.MachinePart;
import org.frisket.ui.bench.internal.options.OptionForm;
import org.frisket.ui.bench.internal.options.OptionMemory;

/** What is cut by: a format, the machine it is for, and what the format itself lets choose. */
final class CutPart {

	private static final String NODE = "org.frisket.ui.print"; //$NON-NLS-1$

	private final Formats formats = new Formats(Exporters.all());
	private final OptionMemory memory = new OptionMemory(InstanceScope.INSTANCE.getNode(NODE).node("cut")); //$NON-NLS-1$
	private final Combo format;
	private final MachinePart machine;
	private final OptionForm options;

	/** @param parent of three columns @param refit called when the form needs another size */
	CutPart(Composite parent, Runnable changed, Runnable refit) {
		new Label(parent, SWT.NONE).setText(Messages.CutPart_format);
		format = new Combo(parent, SWT.READ_ONLY);
		format.setData("format"); //$NON-NLS-1$
		formats.all().forEach(each -> format.add(Exporters.name(each)));
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(format);
		machine = new MachinePart(parent, "", Map.of(), changed); //$NON-NLS-1$
		options = new OptionForm(parent, memory, changed);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, false).applyTo(options);
		format.addListener(SWT.Selection, event -> {
			shown();
			refit.run();
		});
		choose(null);
	}

	/** @param id of the format that was cut by last; the usual one if it is not there */
	void choose(String id) {
		if (!formats.all().isEmpty()) {
			format.select(formats.first(id, false));
			shown();
		}
	}

	/** Loads the exporter. */
	private void shown() {
		Contribution<Exporter> chosen = formats.all().get(format.getSelectionIndex());
		machine.show(Exporters.isForMachine(chosen));
		options.show(chosen.id(), () -> {
			Exporter exporter = chosen.create();
			try {
				return exporter.options();
			} catch (RuntimeException | LinkageError e) {
				throw chosen.failed(e);
			}
		});
	}

	void offer(DeskState desk) {
		machine.offer(desk);
	}

	/** Empty if this installation has none. */
	Optional<Contribution<Exporter>> format() {
		return formats.all().isEmpty() ? Optional.empty() : Optional.of(formats.all().get(format.getSelectionIndex()));
	}

	/** Id; empty for the one most likely meant. */
	String machine() {
		return format().filter(Exporters::isForMachine).isPresent() ? machine.machine() : ""; //$NON-NLS-1$
	}

	/** Shows at each option what is wrong with it. Whether nothing is. */
	boolean validate() {
		return options.validate();
	}

	/** Texts by the name of their option. */
	Map<String, String> options() {
		return options.values();
	}

	void remember() {
		format().ifPresent(each -> memory.keep(each.id(), options.values()));
	}
}
