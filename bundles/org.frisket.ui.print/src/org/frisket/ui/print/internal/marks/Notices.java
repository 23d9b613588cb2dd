package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.print.register.RegisterFinding;
import org.frisket.ui.Icon;
import org.frisket.ui.LengthText;

/** What is to be known of marks: a sign, what is wrong and where, and what helps. */
public final class Notices extends Composite {

	private static final int LEAST_PX = 60;

	/** A sentence and its sign. */
	record Notice(Icon icon, String text) {

		/** With its place, where that is one on the sheet and not all of it. */
		static Notice of(RegisterFinding finding, boolean placed) {
			String words = NLS.bind(Messages.Notices_finding, finding.message(), finding.cure());
			String place = LengthText.place(finding.place().x(), finding.place().y());
			return new Notice(icon(finding), placed ? NLS.bind(Messages.Notices_placed, words, place) : words);
		}

		private static Icon icon(RegisterFinding finding) {
			return switch (finding.severity()) {
			case BLOCKING -> Icon.BLOCKING;
			case CAUTION -> Icon.CAUTION;
			case NOTE -> Icon.NOTE;
			};
		}
	}

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), this);
	private List<Notice> shown = List.of();

	public Notices(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 4).applyTo(this);
	}

	/** Findings that were shown are told to whoever looks. */
	public void showFindings(List<RegisterFinding> findings) {
		show(findings.stream().map(finding -> Notice.of(finding, finding.id().startsWith("mark-"))).toList()); //$NON-NLS-1$
	}

	void show(List<Notice> notices) {
		if (notices.equals(shown)) {
			return;
		}
		shown = new ArrayList<>(notices);
		for (Control child : getChildren()) {
			child.dispose();
		}
		shown.forEach(this::line);
		if (getLayoutData() instanceof GridData data) {
			data.exclude = shown.isEmpty();
		}
		setVisible(!shown.isEmpty());
		requestLayout();
	}

	private void line(Notice notice) {
		Label icon = new Label(this, SWT.NONE);
		icon.setImage(images.create(notice.icon().descriptor()));
		icon.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
		Label words = new Label(this, SWT.WRAP);
		words.setText(notice.text().replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(words);
	}

	/** All that is said. */
	public List<String> words() {
		return shown.stream().map(Notice::text).toList();
	}
}
