package org.frisket.ui.views.internal.makeready;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Cure;
import org.frisket.ui.views.internal.SeverityText;

/** The menu of the list of findings: all cures of the line, its place, and which findings are listed. */
final class MakereadyMenu {

	private final MakereadyView view;
	private final Set<Severity> shown = EnumSet.allOf(Severity.class);

	MakereadyMenu(MakereadyView view) {
		this.view = view;
	}

	/** Whether findings of this severity are listed. */
	boolean shows(Severity severity) {
		return shown.contains(severity);
	}

	Menu create(Control control) {
		Menu menu = new Menu(control);
		menu.addListener(SWT.Show, event -> fill(menu));
		return menu;
	}

	private void fill(Menu menu) {
		for (MenuItem item : menu.getItems()) {
			item.dispose();
		}
		Finding finding = view.selected();
		if (finding != null && view.job() != null) {
			addCures(menu, finding);
			item(menu, SWT.PUSH, Messages.MakereadyMenu_goThere).addListener(SWT.Selection, event -> view.goThere());
			new MenuItem(menu, SWT.SEPARATOR);
		}
		for (Severity severity : Severity.values()) {
			MenuItem item = item(menu, SWT.CHECK,
					NLS.bind(Messages.MakereadyMenu_list, SeverityText.of(severity)));
			item.setSelection(shows(severity));
			item.addListener(SWT.Selection, event -> list(severity, item.getSelection()));
		}
	}

	private void addCures(Menu menu, Finding finding) {
		List<Cure> cures = view.job().cures(finding);
		for (Cure cure : cures) {
			String key = cure == cures.get(0) ? CureSelectedHandler.key() : ""; //$NON-NLS-1$
			item(menu, SWT.PUSH, cure.name() + key).addListener(SWT.Selection, event -> view.job().cure(cure));
		}
		if (cures.isEmpty()) {
			view.job().seekCures(finding);
			item(menu, SWT.PUSH, view.job().areCuresKnown(finding) ? NLS.bind(Messages.MakereadyView_byHand, finding.cure())
					: Messages.MakereadyMenu_soon).setEnabled(false);
		}
		new MenuItem(menu, SWT.SEPARATOR);
	}

	private static MenuItem item(Menu menu, int style, String text) {
		MenuItem item = new MenuItem(menu, style);
		item.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		return item;
	}

	private void list(Severity severity, boolean listed) {
		if (listed) {
			shown.add(severity);
		} else {
			shown.remove(severity);
		}
		view.refilter();
	}
}
