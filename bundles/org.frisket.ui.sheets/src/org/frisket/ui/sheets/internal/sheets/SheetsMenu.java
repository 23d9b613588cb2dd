package org.frisket.ui.sheets.internal.sheets;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** What can be done with sheets and parts, as commands with their keys. */
final class SheetsMenu {

	private static final String OWN = "org.frisket.ui.sheets.command.sheets."; //$NON-NLS-1$
	private static final String SHOW = "show"; //$NON-NLS-1$
	private static final String[][] GROUPS = { { "turnRight", "turnLeft", "pin" }, //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			{ "lay", "takeAlong", "keepOffcut", "leftoverUsed" }, //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
			{ "addSheet", "removeSheet", "forget" }, //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			{ "showPrint", "showMarks", "showCuts", "showGuides" } }; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$

	private SheetsMenu() {
	}

	/** Gives the surface its menu. */
	static void on(SheetsView view, Control control) {
		MenuManager menu = new MenuManager();
		add(menu, view, "org.frisket.ui.bench.command.duplicate"); //$NON-NLS-1$
		add(menu, view, "org.eclipse.ui.edit.delete"); //$NON-NLS-1$
		for (String[] group : GROUPS) {
			for (String command : group) {
				add(menu, view, OWN + command);
			}
			menu.add(new Separator());
		}
		add(menu, view, "org.frisket.ui.print.command.printAndCut"); //$NON-NLS-1$
		add(menu, view, "org.frisket.ui.print.command.printSheet"); //$NON-NLS-1$
		menu.add(new Separator());
		add(menu, view, "org.frisket.ui.bench.command.zoomFit"); //$NON-NLS-1$
		control.setMenu(menu.createContextMenu(control));
		control.addDisposeListener(event -> menu.dispose());
	}

	private static void add(MenuManager menu, SheetsView view, String command) {
		menu.add(new CommandContributionItem(new CommandContributionItemParameter(view.getSite(), null, command,
				command.startsWith(OWN + SHOW) ? CommandContributionItem.STYLE_CHECK : CommandContributionItem.STYLE_PUSH)));
	}
}
