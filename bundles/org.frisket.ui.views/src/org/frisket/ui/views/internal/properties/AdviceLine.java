package org.frisket.ui.views.internal.properties;

import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.model.OperationKind;
import org.frisket.ui.views.OperationAdvice;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/** A quiet line below an operation: what to begin with in the layer's stock. It takes no room while nothing is known. */
final class AdviceLine implements Field {

	/** What advice is asked for. */
	record Question(String stock, OperationKind kind, String tool) {
	}

	private static final int WIDTH_PX = 160;

	private final Label label;
	private final Supplier<Optional<Question>> question;
	private final OperationAdvice advice;
	private Optional<Question> asked = Optional.empty();
	private Runnable stop = () -> {
		// nothing was asked yet
	};

	/**
	 * @param form     whose adapter advises
	 * @param columns  of the parent's grid
	 * @param question empty where there is no one answer
	 */
	AdviceLine(OperationForm form, Composite parent, int columns, Supplier<Optional<Question>> question) {
		this.question = question;
		advice = (OperationAdvice) Platform.getAdapterManager().loadAdapter(form, OperationAdvice.class.getName());
		label = new Label(parent, SWT.WRAP);
		label.setData(Form.NAME, Messages.OperationForm_advice);
		label.setForeground(label.getDisplay().getSystemColor(SWT.COLOR_TITLE_INACTIVE_FOREGROUND));
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(WIDTH_PX, SWT.DEFAULT).exclude(true)
				.applyTo(label);
		label.setVisible(false);
		label.addListener(SWT.Dispose, event -> stop.run());
	}

	@Override
	public void refresh() {
		Optional<Question> now = question.get();
		if (advice == null || now.equals(asked)) {
			return;
		}
		stop.run();
		say(""); //$NON-NLS-1$
		asked = now;
		stop = now.map(each -> advice.ask(each.stock(), each.kind(), each.tool(), this::say)).orElse(() -> {
			// nothing is asked
		});
	}

	@Override
	public void reset() {
		refresh();
	}

	private void say(String text) {
		label.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		if (Form.show(label, !text.isEmpty()) || !text.isEmpty()) {
			Form.layout(label);
		}
	}
}
