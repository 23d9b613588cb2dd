package org.frisket.ui.material.internal.machines;

import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.tools.ManualQuestions;

/** One question about a machine: why it is asked, where the manual says it, and the answers. */
final class QuestionPage extends WizardPage {

	private static final int MARGIN_PX = 12;
	private static final int NOTE_PX = 480;
	private final ManualQuestions.Question question;
	private final boolean isLast;
	private OptionRows rows;

	QuestionPage(int number, int count, ManualQuestions.Question question) {
		super("question" + number); //$NON-NLS-1$
		this.question = question;
		isLast = number == count;
		setTitle(NLS.bind(Messages.QuestionPage_title, number, count));
		setDescription(Messages.QuestionPage_how);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, MARGIN_PX).applyTo(page);
		// the head of a wizard cuts long questions off
		note(page, question.words());
		rows = new OptionRows(page, new OptionRows.Client() {
			@Override
			public void typed() {
				check();
			}
		});
		GridDataFactory.fillDefaults().grab(true, false).applyTo(rows);
		rows.show(question.options(), Map.of());
		note(page, NLS.bind(Messages.QuestionPage_why, question.why()));
		note(page, NLS.bind(Messages.QuestionPage_where, question.where()));
		setControl(page);
	}

	private static void note(Composite page, String text) {
		Label label = new Label(page, SWT.WRAP);
		label.setText(text);
		GridDataFactory.fillDefaults().hint(NOTE_PX, SWT.DEFAULT).applyTo(label);
	}

	Map<String, String> answers() {
		return rows == null ? Map.of() : rows.texts();
	}

	private void check() {
		MachineWizard wizard = (MachineWizard) getWizard();
		boolean right = rows.say(wizard.problems(question, isLast));
		setPageComplete(right);
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			rows.setFocus();
			check();
		}
	}
}
