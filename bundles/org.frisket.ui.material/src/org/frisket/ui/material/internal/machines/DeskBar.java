package org.frisket.ui.material.internal.machines;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.ui.ThemeColour;

/** Says over a page why nothing can be kept just now, and offers to try again; not there while all is well. */
public final class DeskBar extends Composite {

	private static final int MARGIN_PX = 8;
	private final Label message;

	/** @param parent with a grid of one column */
	public DeskBar(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX / 2).applyTo(this);
		message = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(message);
		Button again = new Button(this, SWT.PUSH);
		again.setText(Messages.DeskBar_again);
		again.addListener(SWT.Selection, event -> StudioDesk.get().refresh());
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(this);
		setVisible(false);
		StudioDesk.Listener listener = this::show;
		StudioDesk.get().addListener(listener);
		addListener(SWT.Dispose, event -> StudioDesk.get().removeListener(listener));
		show();
	}

	private void show() {
		StudioDesk desk = StudioDesk.get();
		String text = !desk.trouble().isEmpty() ? NLS.bind(Messages.DeskBar_trouble, desk.trouble())
				: desk.state().readOnly() ? Messages.DeskBar_readOnly : ""; //$NON-NLS-1$
		message.setForeground(ThemeColour.FINDING_MESSAGE.colour());
		message.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		boolean shown = !text.isEmpty();
		GridData data = (GridData) getLayoutData();
		if (data.exclude == shown) {
			data.exclude = !shown;
			setVisible(shown);
		}
		requestLayout();
	}

	/** What is said; empty while all is well. */
	public String text() {
		return message.getText();
	}
}
