package org.frisket.ui.bench.internal.nodes;

import java.util.Map;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.frisket.geometry.nodes.NodeChange;

/** The menu under the pointer while nodes are edited: what can be done to those that are selected, with its key. */
public final class NodeMenu {

	/** The command that makes a change of nodes. */
	public static final String COMMAND_ID = "org.frisket.ui.bench.command.node"; //$NON-NLS-1$

	/** Its parameter: the name of a {@link NodeChange}. */
	public static final String CHANGE = COMMAND_ID + ".change"; //$NON-NLS-1$

	private final NodeMode mode;

	NodeMenu(NodeMode mode) {
		this.mode = mode;
	}

	void open(Control control) {
		MenuManager manager = new MenuManager();
		for (NodeChange change : NodeChange.values()) {
			if (change == NodeChange.CORNER || change == NodeChange.LINE || change == NodeChange.BREAK) {
				manager.add(new Separator());
			}
			manager.add(item(change));
		}
		Menu menu = manager.createContextMenu(control);
		manager.updateAll(true);
		showChords(menu);
		menu.addListener(org.eclipse.swt.SWT.Hide,
				event -> control.getDisplay().asyncExec(() -> dispose(manager, menu)));
		menu.setVisible(true);
	}

	/** GTK shows only keys of one stroke beside an item; those of two are written into its text. */
	private static void showChords(Menu menu) {
		for (MenuItem item : menu.getItems()) {
			String[] words = item.getText().split("\t", 2); //$NON-NLS-1$
			if (words.length == 2 && words[1].contains(" ")) { //$NON-NLS-1$
				item.setText(NLS.bind(Messages.NodeMenu_chord, words[0], words[1]));
			}
		}
	}

	/** After the item that was chosen has done its work. */
	private static void dispose(MenuManager manager, Menu menu) {
		if (!menu.isDisposed()) {
			manager.dispose();
		}
	}

	private CommandContributionItem item(NodeChange change) {
		CommandContributionItemParameter item = new CommandContributionItemParameter(
				PlatformUI.getWorkbench().getActiveWorkbenchWindow(), null, COMMAND_ID,
				CommandContributionItem.STYLE_PUSH);
		item.parameters = Map.of(CHANGE, change.name());
		item.label = label(change);
		boolean possible = mode.canChange(change);
		return new CommandContributionItem(item) {
			@Override
			public boolean isEnabled() {
				return possible && super.isEnabled();
			}
		};
	}

	private static String label(NodeChange change) {
		return switch (change) {
		case ADD -> Messages.NodeMenu_add;
		case DELETE -> Messages.NodeMenu_delete;
		case CORNER -> Messages.NodeMenu_corner;
		case SMOOTH -> Messages.NodeMenu_smooth;
		case SYMMETRIC -> Messages.NodeMenu_symmetric;
		case LINE -> Messages.NodeMenu_line;
		case CURVE -> Messages.NodeMenu_curve;
		case BREAK -> Messages.NodeMenu_break;
		case JOIN -> Messages.NodeMenu_join;
		case CLOSE -> Messages.NodeMenu_close;
		case REVERSE -> Messages.NodeMenu_reverse;
		};
	}
}
