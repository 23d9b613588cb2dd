package org.frisket.ui.bench.internal.export;

import java.io.IOException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.export.preset.Preset;
import org.frisket.export.preset.Presets;

/** The studio's presets: choose one, keep what is in the form as one, and delete one. */
final class PresetPart {

	private static final int SPACING_PX = 8;

	private final Combo choice;
	private final Button save;
	private final Button delete;
	private final Consumer<Preset> chosen;
	private final Function<String, Preset> made;
	private final Supplier<String> suggested;
	private Presets presets;

	/**
	 * @param parent of three columns
	 * @param chosen called with what is to be in the form
	 * @param made   says, by a name, what is in the form; throws an IllegalArgumentException if it cannot be kept
	 * @param suggested what to call it unless the user says otherwise
	 */
	PresetPart(Composite parent, Consumer<Preset> chosen, Function<String, Preset> made, Supplier<String> suggested) {
		this.chosen = chosen;
		this.made = made;
		this.suggested = suggested;
		new Label(parent, SWT.NONE).setText(Messages.PresetPart_preset);
		choice = new Combo(parent, SWT.READ_ONLY);
		choice.setData("preset"); //$NON-NLS-1$
		choice.add(Messages.PresetPart_none);
		choice.select(0);
		choice.addListener(SWT.Selection, event -> selected());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(choice);
		Composite buttons = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACING_PX, 0).applyTo(buttons);
		save = button(buttons, Messages.PresetPart_save, this::save);
		save.setEnabled(false);
		delete = button(buttons, Messages.PresetPart_delete, this::delete);
		delete.setEnabled(false);
	}

	private static Button button(Composite parent, String text, Runnable pressed) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> pressed.run());
		return button;
	}

	/** Presets that have been read meanwhile. */
	void offer(Presets read) {
		presets = read;
		save.setEnabled(true);
		list(choice.getText());
	}

	private void list(String selected) {
		choice.setItems(Messages.PresetPart_none);
		presets.all().forEach(preset -> choice.add(preset.name()));
		choice.select(Math.max(0, choice.indexOf(selected)));
		delete.setEnabled(choice.getSelectionIndex() > 0);
	}

	private void selected() {
		delete.setEnabled(choice.getSelectionIndex() > 0);
		if (choice.getSelectionIndex() > 0) {
			presets.find(choice.getText()).ifPresent(chosen);
		}
	}

	private void save() {
		InputDialog dialog = new InputDialog(choice.getShell(), Messages.PresetPart_saveTitle, Messages.PresetPart_saveMessage,
				choice.getSelectionIndex() > 0 ? choice.getText() : suggested.get(), name -> name.isBlank() ? "" : null); //$NON-NLS-1$
		if (dialog.open() == Window.OK) {
			try {
				Preset preset = made.apply(dialog.getValue());
				work(() -> presets.save(preset), preset.name());
			} catch (IllegalArgumentException e) {
				MessageDialog.openError(choice.getShell(), Messages.PresetPart_saveTitle, e.getMessage());
			}
		}
	}

	private void delete() {
		String name = choice.getText();
		work(() -> presets.delete(name), Messages.PresetPart_none);
	}

	/** What may fail while files are written. */
	private interface Work {
		void run() throws IOException;
	}

	/** The folder may be on another computer, which takes its time. */
	private void work(Work work, String selected) {
		Job.createSystem(Messages.PresetPart_saveTitle, monitor -> {
			String trouble = trouble(work);
			choice.getDisplay().asyncExec(() -> {
				if (!choice.isDisposed()) {
					list(trouble == null ? selected : choice.getText());
					if (trouble != null) {
						MessageDialog.openError(choice.getShell(), Messages.PresetPart_saveTitle, trouble);
					}
				}
			});
		}).schedule();
	}

	private static String trouble(Work work) {
		try {
			work.run();
			return null;
		} catch (IOException e) {
			return e.getMessage();
		}
	}
}
