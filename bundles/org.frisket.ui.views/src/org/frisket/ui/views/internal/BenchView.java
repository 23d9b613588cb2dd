package org.frisket.ui.views.internal;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.JobOnBench;

/**
 * A view of the job on the bench in front. It stays with that bench when the view itself is activated, and says what to
 * do where there is nothing to show.
 */
public abstract class BenchView extends ViewPart implements JobOnBench.Listener {

	private static final int MARGIN_PX = 12;

	private FrontBench front;
	private Composite pages;
	private Composite notePage;
	private Label note;
	private Control content;
	private Runnable unitUnwatched;

	@Override
	public final void createPartControl(Composite parent) {
		pages = new Composite(parent, SWT.NONE);
		pages.setLayout(new StackLayout());
		notePage = new Composite(pages, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(notePage);
		note = new Label(notePage, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(note);
		content = createContent(pages);
		front = new FrontBench(getSite().getPage(), getSite().getPage()::getActiveEditor, this, this::benchChanged);
		unitUnwatched = LengthUnit.whenChanged(() -> parent.getDisplay().asyncExec(this::unitChanged));
		benchChanged();
	}

	private void unitChanged() {
		if (!pages.isDisposed() && bench() != null) {
			pictureChanged();
		}
	}

	/** Makes what is shown of a job. */
	protected abstract Control createContent(Composite parent);

	/** Another bench is in front, or none; everything shown has to be brought up to date. */
	protected abstract void benchChanged();

	/** The job on the bench in front; null if there is none. */
	protected final JobOnBench bench() {
		return front == null ? null : front.bench();
	}

	/** Shows a sentence in place of the content. */
	protected final void showNote(String text) {
		if (!note().equals(text)) {
			note.setText(text);
			notePage.layout();
			show(notePage);
		}
	}

	protected final void showContent() {
		show(content);
	}

	/** What the view says in place of its content; empty if the content is shown. */
	public final String note() {
		return ((StackLayout) pages.getLayout()).topControl == notePage ? note.getText() : ""; //$NON-NLS-1$
	}

	private void show(Control page) {
		StackLayout layout = (StackLayout) pages.getLayout();
		if (layout.topControl != page) {
			layout.topControl = page;
			pages.layout();
		}
	}

	@Override
	public void setFocus() {
		Control page = ((StackLayout) pages.getLayout()).topControl;
		if (page == content) {
			content.setFocus();
		} else {
			pages.forceFocus();
		}
	}

	@Override
	public void dispose() {
		if (front != null) {
			front.dispose();
			unitUnwatched.run();
		}
		super.dispose();
	}
}
