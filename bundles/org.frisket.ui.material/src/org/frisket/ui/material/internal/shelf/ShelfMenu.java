package org.frisket.ui.material.internal.shelf;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;

/** What can be done to the selected stock, and at the shelf. */
final class ShelfMenu {

	private static final String COMMAND = "org.frisket.ui.material.command.shelf."; //$NON-NLS-1$

	private final Menu menu;

	ShelfMenu(ShelfCanvas canvas, ShelfActions actions) {
		menu = new Menu(canvas);
		menu.addListener(SWT.Show, event -> {
			for (MenuItem item : menu.getItems()) {
				item.dispose();
			}
			boolean some = canvas.selection().isPresent();
			item(Messages.ShelfMenu_edit, "edit", actions::edit).setEnabled(some); //$NON-NLS-1$
			item(Messages.ShelfMenu_duplicate, "duplicate", actions::duplicate).setEnabled(some); //$NON-NLS-1$
			item(Messages.ShelfMenu_remove, "remove", actions::remove).setEnabled(some); //$NON-NLS-1$
			new MenuItem(menu, SWT.SEPARATOR);
			item(Messages.ShelfMenu_create, "create", actions::create); //$NON-NLS-1$
			item(Messages.ShelfMenu_catalogue, "catalogue", actions::takeFromCatalogue); //$NON-NLS-1$
			item(Messages.ShelfMenu_pack, "pack", actions::studyPack); //$NON-NLS-1$
			new MenuItem(menu, SWT.SEPARATOR);
			item(Messages.ShelfMenu_low, "low", actions::toggleLow); //$NON-NLS-1$
			item(Messages.ShelfMenu_import, "import", actions::importTable); //$NON-NLS-1$
			item(Messages.ShelfMenu_export, "export", actions::exportTable); //$NON-NLS-1$
		});
	}

	Menu menu() {
		return menu;
	}

	private MenuItem item(String text, String command, Runnable action) {
		String key = PlatformUI.getWorkbench().getService(IBindingService.class)
				.getBestActiveBindingFormattedFor(COMMAND + command);
		MenuItem item = new MenuItem(menu, SWT.PUSH);
		item.setText(key == null ? text : text + '\t' + key);
		item.addListener(SWT.Selection, event -> action.run());
		return item;
	}
}
