package org.frisket.ui.orders.internal.docket;

import java.nio.file.Path;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** The docket as a column that scrolls: below the buttons what is known of the job. */
final class DocketPage extends Composite {

	private static final int MARGIN_PX = 8;
	private static final int LEAST_PX = 60;
	private static final int MOST_PICTURE_PX = 340;

	private final DocketButtons buttons;
	private final Link notice;
	private final ScrolledComposite scroller;
	private Path written;
	private String said = ""; //$NON-NLS-1$

	DocketPage(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(this);
		buttons = new DocketButtons(this);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
		notice = new Link(this, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(MARGIN_PX, 0).hint(LEAST_PX, SWT.DEFAULT).exclude(true)
				.applyTo(notice);
		notice.setVisible(false);
		notice.addListener(SWT.Selection, event -> {
			if (written != null) {
				Program.launch(written.toString());
			}
		});
		scroller = new ScrolledComposite(this, SWT.V_SCROLL);
		scroller.setExpandHorizontal(true);
		scroller.setExpandVertical(true);
		scroller.setShowFocusedControl(true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(scroller);
		scroller.addListener(SWT.Resize, event -> fit());
		show(null, true);
	}

	/** @param sight null for none @param top whether its beginning is to be seen */
	void show(Sight sight, boolean top) {
		setRedraw(false);
		try {
			int at = top ? 0 : scroller.getOrigin().y;
			Control before = scroller.getContent();
			Composite content = new Composite(scroller, SWT.NONE);
			GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, 4).applyTo(content);
			if (sight == null) {
				Label hint = new Label(content, SWT.WRAP);
				hint.setText(Messages.DocketPage_nothing);
				GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(hint);
			} else {
				new DocketLines(content).fill(sight);
			}
			scroller.setContent(content);
			if (before != null) {
				before.dispose();
			}
			fit();
			scroller.setOrigin(0, at);
			buttons.show(sight);
		} finally {
			setRedraw(true);
		}
	}

	/** How wide a picture can be, in pixels; more than that would be too much beside the words. */
	int pictureWidth() {
		return Math.max(LEAST_PX, Math.min(MOST_PICTURE_PX, getClientArea().width - 5 * MARGIN_PX));
	}

	private void fit() {
		Control content = scroller.getContent();
		if (content != null) {
			scroller.setMinHeight(content.computeSize(Math.max(LEAST_PX, scroller.getClientArea().width), SWT.DEFAULT)
					.y);
			scroller.getVerticalBar().setIncrement(3 * MARGIN_PX);
		}
	}

	/** @param file that can be opened from there; null for none */
	void say(String text, Path file) {
		said = text;
		written = file;
		String plain = text.replace("&", "&&").replace("<", "‹").replace(">", "›"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
		notice.setText(file == null ? plain : plain + " <a>" + Messages.DocketPage_open + "</a>"); //$NON-NLS-1$ //$NON-NLS-2$
		((GridData) notice.getLayoutData()).exclude = text.isEmpty();
		notice.setVisible(!text.isEmpty());
		layout();
		fit();
	}

	String said() {
		return said;
	}

	@Override
	public boolean setFocus() {
		return buttons.setFocus() || scroller.setFocus();
	}
}
