package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.keys.IBindingService;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;

/** The menu of a row, made anew each time for the layer or the elements it is asked of. */
final class StackMenu {

	private static final String REPAIR_COMMAND = "org.frisket.ui.views.command.repairs"; //$NON-NLS-1$
	private static final String LAYER_COMMAND = "org.frisket.ui.views.command.layer."; //$NON-NLS-1$

	private final StackCanvas canvas;
	private final Menu menu;

	StackMenu(StackCanvas canvas) {
		this.canvas = canvas;
		menu = new Menu(canvas);
		menu.addListener(SWT.Show, event -> fill());
	}

	Menu menu() {
		return menu;
	}

	private void fill() {
		List.of(menu.getItems()).forEach(MenuItem::dispose);
		if (canvas.bench() == null) {
			return;
		}
		StackActions actions = canvas.actions();
		if (canvas.current() != null) {
			item(Messages.StackMenu_rename, "rename", actions::rename); //$NON-NLS-1$
			item(canvas.current().isVisible() ? Messages.StackMenu_hide : Messages.StackMenu_show, "visible", //$NON-NLS-1$
					actions::toggleVisible);
			item(canvas.current().isLocked() ? Messages.StackMenu_unpin : Messages.StackMenu_pin, "locked", //$NON-NLS-1$
					actions::toggleLocked);
			separator();
			item(Messages.StackMenu_raise, "raise", actions::raise); //$NON-NLS-1$
			item(Messages.StackMenu_lower, "lower", actions::lower); //$NON-NLS-1$
			item(Messages.StackMenu_duplicate, "duplicate", actions::duplicate); //$NON-NLS-1$
			item(Messages.StackMenu_remove, "remove", actions::remove); //$NON-NLS-1$
			separator();
		}
		if (!actions.elements().isEmpty()) {
			fillGroups(actions);
		}
		if (actions.elements().stream().anyMatch(Outline.class::isInstance)) {
			commandItem(Messages.StackMenu_repair, REPAIR_COMMAND, StackMenu::repair);
			separator();
		}
		if (canvas.currentLayer() != null) {
			MenuItem colours = new MenuItem(menu, SWT.CASCADE);
			colours.setText(Messages.StackMenu_colour);
			colours.setMenu(new Menu(menu));
			new StockColours(canvas, canvas.currentLayer()).fill(colours.getMenu());
			item(Messages.StackMenu_stock, "stock", actions::nameStock); //$NON-NLS-1$
		}
		item(Messages.StackMenu_add, "add", actions::addLayer); //$NON-NLS-1$
	}

	private void fillGroups(StackActions actions) {
		List<Element> elements = actions.elements();
		boolean grouped = elements.stream().anyMatch(element -> Jobs.groupOf(element).isPresent());
		item(Messages.StackMenu_group, null, actions::group).setEnabled(elements.size() > 1);
		item(Messages.StackMenu_ungroup, null, actions::ungroup).setEnabled(grouped);
		item(Messages.StackMenu_selectGroup, null, actions::selectGroup).setEnabled(grouped);
		separator();
	}

	/** @param command whose key is named in the item; null for none */
	private MenuItem item(String text, String command, Runnable action) {
		return commandItem(text, command == null ? null : LAYER_COMMAND + command, action);
	}

	private MenuItem commandItem(String text, String commandId, Runnable action) {
		MenuItem item = new MenuItem(menu, SWT.PUSH);
		String key = commandId == null ? null
				: PlatformUI.getWorkbench().getService(IBindingService.class).getBestActiveBindingFormattedFor(commandId);
		item.setText(key == null ? text : text + '\t' + key);
		item.addListener(SWT.Selection, event -> action.run());
		return item;
	}

	private static void repair() {
		try {
			PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(REPAIR_COMMAND, null);
		} catch (CommandException e) {
			ILog.of(StackMenu.class).error(e.getMessage(), e);
		}
	}

	private void separator() {
		new MenuItem(menu, SWT.SEPARATOR);
	}
}
