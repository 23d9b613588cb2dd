package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.Bounds;

/** What files should have told and did not: a choice for each, with the size that every answer comes to. */
final class UnitQuestion extends Composite {

	private final Runnable answered;
	/** By file, the name of the option and the answer. */
	private final Map<Path, Map<String, String>> answers = new HashMap<>();
	private final Map<Path, ReadArt> asked = new LinkedHashMap<>();

	UnitQuestion(Composite parent, Runnable answered) {
		super(parent, SWT.NONE);
		this.answered = answered;
		GridLayoutFactory.fillDefaults().applyTo(this);
	}

	/** Adds a question for a file that has not been asked about yet. */
	void ask(ReadArt art) {
		if (art.asked() == null || asked.putIfAbsent(art.file(), art) != null) {
			return;
		}
		Label label = new Label(this, SWT.WRAP);
		label.setText(NLS.bind(Messages.UnitQuestion_asked, art.file().getFileName(), art.asked().description()));
		GridDataFactory.fillDefaults().grab(true, false).hint(360, SWT.DEFAULT).applyTo(label);
		Composite choices = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(choices);
		for (Map.Entry<String, Bounds> size : art.sizes().entrySet()) {
			Button choice = new Button(choices, SWT.RADIO);
			choice.setText(NLS.bind(Messages.UnitQuestion_choice, size.getKey(), ImportWords.size(size.getValue())));
			choice.addListener(SWT.Selection, event -> {
				if (choice.getSelection()) {
					answers.put(art.file(), Map.of(art.asked().name(), size.getKey()));
					answered.run();
				}
			});
		}
	}

	/** What was answered about a file; nothing before that. */
	Map<String, String> answer(Path file) {
		return answers.getOrDefault(file, Map.of());
	}

	/** Whether a file waits for its answer. */
	boolean isWaiting() {
		return !answers.keySet().containsAll(asked.keySet());
	}

	@Override
	public boolean setFocus() {
		for (Control child : getChildren()) {
			if (child instanceof Composite choices && choices.setFocus()) {
				return true;
			}
		}
		return super.setFocus();
	}
}
