package org.frisket.ui.orders.internal.docket;

import java.io.IOException;
import java.util.Map;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.frisket.orders.paper.quote.StudioQuote;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.internal.options.OptionForm;
import org.frisket.ui.bench.internal.options.OptionMemory;
import org.frisket.ui.orders.internal.Named;

/** How quotes are made, for all desks of the studio. */
public final class QuotePage extends PreferencePage implements IWorkbenchPreferencePage {

	private static final int LINE_PX = 460;

	private OptionForm form;

	@Override
	public void init(IWorkbench workbench) {
		setDescription(Messages.QuotePage_description);
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(area);
		form = new OptionForm(area, new OptionMemory(InstanceScope.INSTANCE.getNode(QuoteDialog.NODE)), this::check);
		form.show("page", StudioQuote::options); //$NON-NLS-1$
		Named.byLabels(form);
		GridDataFactory.fillDefaults().grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(form);
		Label where = new Label(area, SWT.WRAP);
		where.setText(Messages.QuotePage_where);
		GridDataFactory.fillDefaults().grab(true, false).hint(LINE_PX, SWT.DEFAULT).applyTo(where);
		try {
			form.fill(new StudioQuote(Studio.folder()).texts());
		} catch (IOException e) {
			setErrorMessage(e.getMessage());
		}
		return area;
	}

	private void check() {
		String wrong = null;
		try {
			if (form.validate()) {
				StudioQuote.check(form.values());
			} else {
				wrong = Messages.QuoteDialog_wrong;
			}
		} catch (IllegalArgumentException e) {
			wrong = e.getMessage();
		}
		setErrorMessage(wrong);
		setValid(wrong == null);
		form.requestLayout();
	}

	@Override
	protected void performDefaults() {
		form.fill(Map.of());
		super.performDefaults();
	}

	@Override
	public boolean performOk() {
		if (form == null) {
			return true;
		}
		try {
			new StudioQuote(Studio.folder()).keep(form.values());
			return true;
		} catch (IOException | IllegalArgumentException e) {
			setErrorMessage(e.getMessage());
			return false;
		}
	}
}
