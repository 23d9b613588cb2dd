package org.frisket.ui.bench.internal.editor;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.ui.Icon;

/** What the editor shows in place of a job that is not there: what happened, where, and what to do. */
final class MessagePage extends Composite {

	private static final int MARGIN_PX = 24;
	private static final int SPACING_PX = 12;
	private static final int LINE_PX = 520;

	private final Text message;

	/** While it is on its way. */
	MessagePage(Composite parent, String title, String text) {
		this(parent, Icon.JOB, title, text, ""); //$NON-NLS-1$
	}

	/** It could not be opened. */
	MessagePage(Composite parent, String title, String text, String advice) {
		this(parent, Icon.DAMAGED, title, text, advice);
	}

	/** It could not be opened just now. @param label of a button that takes the way out */
	MessagePage(Composite parent, String title, String text, String advice, String label, Runnable wayOut) {
		this(parent, title, text, advice);
		new Label(this, SWT.NONE);
		Button button = new Button(this, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, event -> wayOut.run());
	}

	private MessagePage(Composite parent, Icon picture, String title, String text, String advice) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(SPACING_PX, SPACING_PX)
				.applyTo(this);
		Label icon = new Label(this, SWT.NONE);
		icon.setImage(new LocalResourceManager(JFaceResources.getResources(), this).create(picture.descriptor()));
		Label heading = new Label(this, SWT.WRAP);
		heading.setText(title);
		heading.setFont(JFaceResources.getBannerFont());
		new Label(this, SWT.NONE);
		// a text and not a label, so that the place can be copied
		message = new Text(this, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI);
		message.setText(text);
		message.setBackground(getBackground());
		new Label(this, SWT.NONE);
		Label help = new Label(this, SWT.WRAP);
		help.setText(advice);
		GridDataFactory.fillDefaults().grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(message);
		GridDataFactory.fillDefaults().grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(help);
	}

	String message() {
		return message.getText();
	}

	@Override
	public boolean setFocus() {
		return message.setFocus();
	}
}
