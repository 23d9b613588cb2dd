package org.frisket.ui.orders.internal.docket;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DateTime;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.orders.Entry;
import org.frisket.orders.paper.quote.QuoteSheet;
import org.frisket.orders.paper.quote.StudioQuote;
import org.frisket.ui.bench.internal.options.OptionForm;
import org.frisket.ui.bench.internal.options.OptionMemory;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** How the quote of a job is made: as the studio keeps it, or otherwise this once. It says at once what it comes to. */
final class QuoteDialog extends TitleAreaDialog {

	/** Nothing is ever kept there: what is, is the studio's. */
	static final String NODE = "org.frisket.ui.orders/quote"; //$NON-NLS-1$

	private static final int LINE_PX = 560;

	private final Entry entry;
	private final QuoteRun.Start start;
	private final Consumer<QuoteDialog> done;
	private OptionForm form;
	private DateTime day;
	private Button keep;
	private Map<String, String> texts = Map.of();
	private Optional<LocalDate> date = Optional.empty();
	private boolean kept;

	/** @param done told once it is to be written */
	QuoteDialog(Shell shell, Entry entry, QuoteRun.Start start, Consumer<QuoteDialog> done) {
		super(shell);
		this.entry = entry;
		this.start = start;
		this.done = done;
		setBlockOnOpen(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(NLS.bind(Messages.QuoteDialog_title, entry.number()));
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(NLS.bind(Messages.QuoteDialog_title, entry.number()));
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(12, 12).spacing(8, 8).applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		if (!start.agreement().isBlank()) {
			Label note = new Label(area, SWT.WRAP);
			note.setText(NLS.bind(Messages.QuoteDialog_agreement, entry.customer(), start.agreement())
					.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			GridDataFactory.fillDefaults().grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(note);
		}
		form = new OptionForm(area, new OptionMemory(InstanceScope.INSTANCE.getNode(NODE)), this::changed);
		form.show("form", StudioQuote::options); //$NON-NLS-1$
		Named.byLabels(form);
		form.fill(start.texts());
		GridDataFactory.fillDefaults().grab(true, true).hint(LINE_PX, SWT.DEFAULT).applyTo(form);
		Composite line = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
		new Label(line, SWT.NONE).setText(Messages.QuoteDialog_date);
		day = new DateTime(line, SWT.DATE | SWT.DROP_DOWN);
		Named.as(Messages.QuoteDialog_date, day);
		day.addListener(SWT.Selection, event -> changed());
		keep = new Button(area, SWT.CHECK);
		keep.setText(Messages.QuoteDialog_keep);
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.QuoteDialog_write, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
		changed();
	}

	private void changed() {
		if (day == null || getButton(IDialogConstants.OK_ID) == null) {
			return;
		}
		boolean valid = form.validate();
		String wrong = valid ? "" : Messages.QuoteDialog_wrong; //$NON-NLS-1$
		texts = new LinkedHashMap<>(form.values());
		date = Optional.of(LocalDate.of(day.getYear(), day.getMonth() + 1, day.getDay()));
		if (valid) {
			try {
				say(QuoteSheet.of(start.work().at(StudioQuote.rate(texts)), StudioQuote.rate(texts),
						StudioQuote.check(texts), date));
			} catch (IllegalArgumentException e) {
				valid = false;
				wrong = Words.sentence(String.valueOf(e.getMessage()));
			}
		}
		setErrorMessage(wrong.isEmpty() ? null : wrong);
		getButton(IDialogConstants.OK_ID).setEnabled(valid);
		form.requestLayout();
	}

	private void say(QuoteSheet sheet) {
		String total = NLS.bind(Messages.QuoteDialog_total, sheet.sums().total().toPlainString(),
				sheet.currency().getCurrencyCode());
		setMessage(
				sheet.isDraft() ? NLS.bind(Messages.QuoteDialog_draft, total, String.join(" ", sheet.gaps())) //$NON-NLS-1$
						: total,
				sheet.isDraft() ? IMessageProvider.WARNING : IMessageProvider.NONE);
	}

	@Override
	protected void okPressed() {
		kept = keep.getSelection();
		super.okPressed();
		done.accept(this);
	}

	/** What was answered, by the names of {@link StudioQuote#options()}. */
	Map<String, String> texts() {
		return texts;
	}

	Optional<LocalDate> date() {
		return date;
	}

	/** Whether that is how all quotes of the studio are made from now on. */
	boolean isKept() {
		return kept;
	}
}
