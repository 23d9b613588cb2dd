package org.frisket.ui.sheets.internal.run;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.frisket.material.advice.Caution;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.run.LegWork;
import org.frisket.ui.views.internal.SeverityText;

/** What to mind before the machine is started: what was found about the run, and what can hurt somebody. */
final class RunNotices extends Composite {

	private static final int LEAST_PX = 60;
	/** Above the picture more would leave no room for it. */
	private static final int MOST_BRIEF = 2;

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), this);

	/** A sentence and how much it matters. */
	private record Notice(Severity severity, String text) {
	}

	private final boolean brief;
	private List<Notice> shown = List.of();

	/** @param brief whether only what was found about the run is said, a line each */
	RunNotices(Composite parent, boolean brief) {
		super(parent, SWT.NONE);
		this.brief = brief;
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 2).applyTo(this);
	}

	/** Null for none. */
	void show(SheetRun run) {
		List<Notice> notices = run == null ? List.of() : notices(run);
		if (notices.equals(shown)) {
			return;
		}
		shown = notices;
		for (Control child : getChildren()) {
			child.dispose();
		}
		notices.forEach(this::line);
		((GridData) getLayoutData()).exclude = notices.isEmpty();
		setVisible(!notices.isEmpty());
		requestLayout();
	}

	private List<Notice> notices(SheetRun run) {
		List<Notice> notices = new ArrayList<>();
		for (Finding finding : run.findings()) {
			notices.add(new Notice(finding.severity(), NLS.bind(Messages.RunNotices_finding, finding.message(), finding.cure())));
		}
		if (brief) {
			return notices.stream().filter(notice -> notice.severity() != Severity.NOTE).distinct().limit(MOST_BRIEF).toList();
		}
		for (LegWork work : run.playback().run().work()) {
			for (Caution caution : work.cautions()) {
				notices.add(new Notice(caution.isBlocking() ? Severity.BLOCKING : Severity.CAUTION, caution.text()));
			}
		}
		return notices.stream().distinct().sorted(Comparator.comparing(Notice::severity)).toList();
	}

	private void line(Notice notice) {
		Label icon = new Label(this, SWT.NONE);
		icon.setImage(images.create(SeverityText.icon(notice.severity()).descriptor()));
		icon.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
		Label words = new Label(this, brief ? SWT.NONE : SWT.WRAP);
		words.setText(notice.text().replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		if (brief) {
			words.setToolTipText(words.getText());
		}
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(words);
	}

	/** All that is to be said, the gravest first. */
	List<String> words() {
		return shown.stream().map(Notice::text).toList();
	}
}
